using Glazewright.Science.Guards;
using Glazewright.Science.Light.Shadows;

namespace Glazewright.Science.Light;

/// <summary>A house made ready for light: its pieces, how diffuse light goes between them, and what stands around.</summary>
public sealed class HouseLight
{
    private readonly Enclosure enclosure;
    private readonly Surroundings surroundings;
    private readonly List<Piece> pieces;
    private readonly Radiosity radiosity;
    private readonly IReadOnlyList<string> ids;
    private readonly double[] caughtSky;
    private readonly double[,] exchangeAreas;
    private readonly CurtainPlane? curtain;
    private readonly IReadOnlyList<SkyPatch> sky;

    /// <summary>Prepares a house.</summary>
    /// <param name="enclosure">The house with its bars.</param>
    /// <param name="curtain">A drawn curtain, or null.</param>
    /// <param name="surroundings">Bodies and skyline.</param>
    /// <exception cref="ArgumentException">The curtain misses the house.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Curtain fractions out of range.</exception>
    public HouseLight(Enclosure enclosure, CurtainPlane? curtain, Surroundings surroundings)
        : this(enclosure, curtain, surroundings, null, SkyPatches.UpperHalf)
    {
    }

    private HouseLight(Enclosure enclosure, CurtainPlane? curtain, Surroundings surroundings, double[,]? exchangeAreas, IReadOnlyList<SkyPatch> sky)
    {
        this.sky = sky;
        ArgumentNullException.ThrowIfNull(enclosure);
        ArgumentNullException.ThrowIfNull(surroundings);
        if (curtain is not null)
        {
            Within.Require(curtain.TransmittanceFraction, 0, 1);
            Within.Require(curtain.ScatterFraction, 0, 1);
            Within.Require(curtain.ReflectanceAboveFraction, 0, 1 - curtain.TransmittanceFraction);
            Within.Require(curtain.ReflectanceBelowFraction, 0, 1 - curtain.TransmittanceFraction);
        }

        this.enclosure = enclosure;
        this.surroundings = surroundings;
        this.curtain = curtain;
        pieces = Pieces.Of(enclosure, curtain);
        caughtSky = MeetBars();
        this.exchangeAreas = exchangeAreas ?? ViewFactors.ExchangeAreas(pieces, EnclosureGains.Rays);
        radiosity = Radiosity.Solve(pieces, this.exchangeAreas);
        ids = Pieces.SurfaceIds(enclosure);
    }

    /// <summary>The same house with other bars inside, to be compared: what its faces see of each other stays, and the sky is taken in 96 directions.</summary>
    /// <param name="enclosure">The same faces, other bars or another reflectance of bars.</param>
    /// <returns>Ready for light.</returns>
    /// <exception cref="ArgumentException">Other faces.</exception>
    public HouseLight With(Enclosure enclosure)
    {
        ArgumentNullException.ThrowIfNull(enclosure);
        bool same = enclosure.Faces.Count == this.enclosure.Faces.Count
            && enclosure.Faces.Zip(this.enclosure.Faces).All(f => f.First.Id == f.Second.Id && f.First.Polygon.SequenceEqual(f.Second.Polygon));
        return same
            ? new HouseLight(enclosure, curtain, surroundings, exchangeAreas, SkyPatches.Coarse)
            : throw new ArgumentException("The faces are not the same.", nameof(enclosure));
    }

    /// <summary>Where sunlight from each direction ends.</summary>
    /// <param name="grid">Sun nodes.</param>
    /// <param name="wanted">One a node: false leaves its row empty; null for all.</param>
    /// <returns>Rows whose parts sum to their aperture within 1e-9.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not one flag a node.</exception>
    public EnclosureGainTable Gains(SunGrid grid, IReadOnlyList<bool>? wanted)
    {
        ArgumentNullException.ThrowIfNull(grid);
        Within.Require(wanted?.Count ?? grid.Count, grid.Count, grid.Count);
        var beam = new GainRow[grid.Count];
        var beamSurfaces = new double[grid.Count * ids.Count];
        var beamDirect = new double[grid.Count];
        var setFree = new double[grid.Count * pieces.Count];

        // At the zenith all azimuths are one direction.
        int single = grid.Count - grid.Azimuths;
        Parallel.For(0, single + 1, Tracer, (node, _, tracer) =>
        {
            if (wanted?[node] ?? true)
            {
                beam[node] = tracer.Trace(grid.Direction(node));
                beamDirect[node] = tracer.DirectOnCropM2;
                tracer.AddSurfaces(1, beamSurfaces.AsSpan(node * ids.Count, ids.Count));
                tracer.SetFreeM2.CopyTo(setFree.AsSpan(node * pieces.Count));
            }

            return tracer;
        }, _ => { });
        for (int node = single + 1; node < grid.Count; node++)
        {
            beam[node] = beam[single];
            beamDirect[node] = beamDirect[single];
            beamSurfaces.AsSpan(single * ids.Count, ids.Count).CopyTo(beamSurfaces.AsSpan(node * ids.Count));
            setFree.AsSpan(single * pieces.Count, pieces.Count).CopyTo(setFree.AsSpan(node * pieces.Count));
        }

        Sum dome = default!;
        Sum ground = default!;
        Sum horizon = default!;
        Parallel.Invoke(() => dome = Hemisphere(1), () => ground = Hemisphere(-1), () => horizon = Band());
        return new EnclosureGainTable(
            grid, ids, beam, dome.Row, horizon.Row, ground.Row, beamSurfaces, dome.Surfaces, horizon.Surfaces, ground.Surfaces,
            beamDirect, dome.Direct, new LightSetFree(setFree, dome.SetFree, horizon.SetFree, ground.SetFree));
    }

    /// <summary>How much light bars take, over all clear faces by area.</summary>
    /// <returns>Of light that comes straight on to each face, and of an even sky; both 0 without clear faces.</returns>
    public (double StraightOnFraction, double SkyFraction) CaughtByBars()
    {
        var bars = new BarCatch(pieces, enclosure.Bars);
        var caught = new double[pieces.Count];
        double area = 0;
        double straightOn = 0;
        double sky = 0;
        for (int i = 0; i < pieces.Count; i++)
        {
            if (pieces[i].Covering is FaceCovering.Clear clear)
            {
                bars.Of(pieces[i].Normal, caught);
                area += pieces[i].AreaM2;
                straightOn += pieces[i].AreaM2 * (1 - ((1 - caught[i]) * (1 - clear.CaughtFraction(pieces[i].Normal, pieces[i].Normal))));
                sky += pieces[i].AreaM2 * (1 - ((1 - caughtSky[i]) * (1 - clear.CaughtDiffuseFraction(pieces[i].Normal))));
            }
        }

        return area > 0 ? (straightOn / area, sky / area) : (0, 0);
    }

    /// <summary>Scattered and reflected light on a plane in the house.</summary>
    /// <param name="plane">The plane; below the curtain when it is drawn.</param>
    /// <returns>The room as the plane's cells see it.</returns>
    public RoomLight On(ReceivingPlane plane) => RoomLight.Of(pieces, radiosity, plane);

    private BeamTracer Tracer() => new(pieces, enclosure.Bars, radiosity, ids.Count, surroundings);

    // The share of even light from inside that bars before a clear piece catch: as of even light from outside, by reciprocity.
    private double[] MeetBars()
    {
        var bars = new BarCatch(pieces, enclosure.Bars);
        var caught = new double[pieces.Count];
        var sum = new double[pieces.Count];
        var flux = new double[pieces.Count];
        foreach (SkyPatch patch in bars.Any ? SkyPatches.Coarse : [])
        {
            for (int side = -1; side <= 1; side += 2)
            {
                Vector3d from = patch.Towards with { Z = side * patch.Towards.Z };
                bars.Of(from, caught);
                for (int i = 0; i < pieces.Count; i++)
                {
                    double weight = patch.IrradianceFactor * Math.Max(0, pieces[i].Normal.Dot(from));
                    sum[i] += weight * caught[i];
                    flux[i] += weight;
                }
            }
        }

        for (int i = 0; i < pieces.Count; i++)
        {
            if (flux[i] > 0 && pieces[i].Covering is FaceCovering.Clear)
            {
                sum[i] /= flux[i];
                pieces[i].MeetBars(sum[i]);
            }
        }

        return sum;
    }

    // Radiance 1/π over the half space: unit irradiance on a level plane facing it.
    private Sum Hemisphere(int side)
    {
        BeamTracer tracer = Tracer();
        var sum = new Sum(ids.Count, pieces.Count);
        foreach (SkyPatch patch in sky)
        {
            sum.Add(tracer, patch.Towards with { Z = side * patch.Towards.Z }, patch.IrradianceFactor);
        }

        return sum;
    }

    // A thin band on the horizon, half a unit per radian of azimuth: unit irradiance on an upright wall.
    private Sum Band()
    {
        BeamTracer tracer = Tracer();
        var sum = new Sum(ids.Count, pieces.Count);
        const double weight = 0.5 * 2 * Math.PI / SkyPatches.Azimuths;
        for (int a = 0; a < SkyPatches.Azimuths; a++)
        {
            sum.Add(tracer, Vector3d.Towards((a + 0.5) * 360 / SkyPatches.Azimuths, 0), weight);
        }

        return sum;
    }

    private sealed class Sum(int surfaces, int pieces)
    {
        internal GainRow Row { get; private set; }

        internal double Direct { get; private set; }

        internal double[] Surfaces { get; } = new double[surfaces];

        internal double[] SetFree { get; } = new double[pieces];

        internal void Add(BeamTracer tracer, Vector3d from, double weight)
        {
            Row += weight * tracer.Trace(from);
            Direct += weight * tracer.DirectOnCropM2;
            tracer.AddSurfaces(weight, Surfaces);
            ReadOnlySpan<double> free = tracer.SetFreeM2;
            for (int i = 0; i < free.Length; i++)
            {
                SetFree[i] += weight * free[i];
            }
        }
    }
}
