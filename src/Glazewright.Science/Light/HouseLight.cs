using Glazewright.Science.Guards;
using Glazewright.Science.Light.Shadows;

namespace Glazewright.Science.Light;

/// <summary>A house made ready for light, its curtain in one position: its pieces, how diffuse light goes between them, and what stands around.</summary>
public sealed class HouseLight
{
    private readonly Enclosure enclosure;
    private readonly Surroundings surroundings;
    private readonly CurtainPlane? curtain;
    private readonly bool withParked;
    private readonly IReadOnlyList<SkyPatch> sky;
    private readonly List<Piece> pieces;
    private readonly InsideViews views;
    private Inside? inside;

    /// <summary>Prepares a house.</summary>
    /// <param name="enclosure">The house with its bars.</param>
    /// <param name="curtain">A drawn curtain, or null.</param>
    /// <param name="surroundings">Bodies and skyline.</param>
    /// <exception cref="ArgumentException">The curtain misses the house.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Curtain fractions out of range.</exception>
    public HouseLight(Enclosure enclosure, CurtainPlane? curtain, Surroundings surroundings)
        : this(enclosure, curtain, true, surroundings, SkyPatches.UpperHalf, null)
    {
    }

    private HouseLight(
        Enclosure enclosure, CurtainPlane? curtain, bool withParked, Surroundings surroundings, IReadOnlyList<SkyPatch> sky, InsideViews? views)
    {
        ArgumentNullException.ThrowIfNull(enclosure);
        ArgumentNullException.ThrowIfNull(surroundings);
        this.enclosure = enclosure;
        this.curtain = curtain;
        this.withParked = withParked;
        this.surroundings = surroundings;
        this.sky = sky;
        pieces = Pieces.Of(enclosure, Checked(curtain));
        this.views = views ?? InsideViews.Of(pieces);
        Within.Require(this.views.ExchangeAreasM2.Count, pieces.Count * pieces.Count, pieces.Count * pieces.Count);
    }

    /// <summary>Prepares a house in several positions of its curtain. Where it is drawn, the bundles of the parked one are gone.</summary>
    /// <param name="enclosure">The house with its bars, parked bundles among them.</param>
    /// <param name="positions">Drawn curtains; null for an open one.</param>
    /// <param name="surroundings">Bodies and skyline.</param>
    /// <param name="views">What the faces see of each other, one a position.</param>
    /// <returns>One a position, in order.</returns>
    /// <exception cref="ArgumentException">A curtain misses the house.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Curtain fractions out of range, or the views are not those of the positions.</exception>
    public static IReadOnlyList<HouseLight> InPositions(
        Enclosure enclosure, IReadOnlyList<CurtainPlane?> positions, Surroundings surroundings, IReadOnlyList<InsideViews> views)
    {
        ArgumentNullException.ThrowIfNull(enclosure);
        ArgumentNullException.ThrowIfNull(positions);
        ArgumentNullException.ThrowIfNull(views);
        Within.Require(views.Count, positions.Count, positions.Count);
        return [.. positions.Select((p, i) => new HouseLight(enclosure, p, p is null, surroundings, SkyPatches.UpperHalf, views[i]))];
    }

    /// <summary>Prepares a house of which something is known already.</summary>
    /// <param name="enclosure">The house with its bars.</param>
    /// <param name="curtain">A drawn curtain, or null; its parked bundles are gone then.</param>
    /// <param name="surroundings">Bodies and skyline.</param>
    /// <param name="known">From the same house, whatever its crop.</param>
    /// <exception cref="ArgumentException">The curtain misses the house.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Curtain fractions out of range, or what is known is another house's.</exception>
    public static HouseLight Of(Enclosure enclosure, CurtainPlane? curtain, Surroundings surroundings, KnownLight known)
    {
        ArgumentNullException.ThrowIfNull(known);
        var light = new HouseLight(enclosure, curtain, curtain is null, surroundings, SkyPatches.UpperHalf, known.Views);
        light.Settle([.. known.CaughtSkyFraction]);
        return light;
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
            ? new HouseLight(enclosure, curtain, withParked, surroundings, SkyPatches.Coarse, views)
            : throw new ArgumentException("The faces are not the same.", nameof(enclosure));
    }

    /// <summary>Where sunlight from each direction ends.</summary>
    /// <param name="grid">Sun nodes.</param>
    /// <param name="wanted">One a node: false leaves its row empty; null for all.</param>
    /// <returns>Rows whose parts sum to their aperture within 1e-9.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not one flag a node.</exception>
    public EnclosureGainTable Gains(SunGrid grid, IReadOnlyList<bool>? wanted) => Gains([this], grid, wanted)[0];

    /// <summary>The same for positions of the curtain made ready together: each direction's picture of the bars is drawn once.</summary>
    /// <param name="positions">From <see cref="InPositions"/>.</param>
    /// <param name="grid">Sun nodes.</param>
    /// <param name="wanted">One a node: false leaves its row empty; null for all.</param>
    /// <returns>One table a position.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not one flag a node.</exception>
    /// <exception cref="ArgumentException">Positions of different houses.</exception>
    public static IReadOnlyList<EnclosureGainTable> Gains(IReadOnlyList<HouseLight> positions, SunGrid grid, IReadOnlyList<bool>? wanted)
    {
        ArgumentNullException.ThrowIfNull(positions);
        ArgumentNullException.ThrowIfNull(grid);
        Within.Require(wanted?.Count ?? grid.Count, grid.Count, grid.Count);
        HouseLight first = positions[0];
        if (positions.Any(p => p.enclosure != first.enclosure || p.surroundings != first.surroundings || p.sky != first.sky))
        {
            throw new ArgumentException("Positions of different houses.", nameof(positions));
        }

        // At the zenith all azimuths are one direction. Behind the sun's nodes: the sky, the ground, the horizon.
        int suns = grid.Count - grid.Azimuths + 1;
        int patches = first.sky.Count;
        Vector3d[] towards =
        [
            .. Enumerable.Range(0, suns).Select(grid.Direction),
            .. first.sky.Select(p => p.Towards),
            .. first.sky.Select(p => p.Towards with { Z = -p.Towards.Z }),
            .. Enumerable.Range(0, SkyPatches.Azimuths).Select(a => Vector3d.Towards((a + 0.5) * 360 / SkyPatches.Azimuths, 0)),
        ];
        TracedBeams[] traced = [.. positions.Select(p => new TracedBeams(towards.Length, p.pieces.Count))];
        Parallel.For(0, towards.Length, new ParallelOptions { TaskScheduler = TaskScheduler.Current }, () => Tracers(positions), (i, _, tracers) =>
        {
            for (int p = 0; p < tracers.Length && (i >= suns || (wanted?[i] ?? true)); p++)
            {
                tracers[p].Follow(towards[i]);
                traced[p].Keep(i, tracers[p]);
            }

            return tracers;
        }, _ => { });
        for (int p = 0; p < traced.Length; p++)
        {
            if (positions[p].inside is null)
            {
                positions[p].Settle(positions[p].CaughtOfEvenLight(traced[p], suns));
            }

            traced[p].Spread(positions[p].inside!.Radiosity);
        }

        // Radiance 1/π over a half space: unit irradiance on a level plane facing it. A thin band on the horizon, half a unit per radian of azimuth: unit irradiance on an upright wall.
        double[] even = [.. first.sky.Select(p => p.IrradianceFactor)];
        double[] band = [.. Enumerable.Repeat(0.5 * 2 * Math.PI / SkyPatches.Azimuths, SkyPatches.Azimuths)];
        return
        [
            .. positions.Select((p, i) => traced[i].Table(
                grid, traced[i].Sum(suns, even), traced[i].Sum(suns + (2 * patches), band), traced[i].Sum(suns + patches, even))),
        ];
    }

    /// <summary>What of this house a year under another crop need not find again.</summary>
    /// <param name="table">Its table.</param>
    /// <returns>What is known.</returns>
    public KnownLight Known(EnclosureGainTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        return new KnownLight(views, Ready().CaughtSkyFraction, table.SetFree);
    }

    /// <summary>Light set free in this house, from what is known of it under another crop: what meets the crop straight is thrown back by its own reflectance.</summary>
    /// <param name="known">From the same house.</param>
    /// <param name="cropReflectanceFraction">Of the other crop, above 0.</param>
    /// <returns>Light set free.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No reflectance, or another house's.</exception>
    public LightSetFree SetFree(KnownLight known, double cropReflectanceFraction)
    {
        ArgumentNullException.ThrowIfNull(known);
        Within.Require(cropReflectanceFraction, 1e-9, 1);
        LightSetFree free = known.SetFree;
        Within.Require(free.DomeM2.Count, pieces.Count, pieces.Count);
        double[] scale = [.. pieces.Select(p => p.Covering is FaceCovering.CropPlane crop ? crop.ReflectanceFraction / cropReflectanceFraction : 1)];
        return new LightSetFree(Scaled(free.BeamM2), Scaled(free.DomeM2), Scaled(free.HorizonM2), Scaled(free.GroundM2));

        double[] Scaled(IReadOnlyList<double> m2) => [.. m2.Select((x, i) => x * scale[i % scale.Length])];
    }

    /// <summary>How much light bars take, over all clear faces by area.</summary>
    /// <returns>Of light that comes straight on to each face, and of an even sky; both 0 without clear faces.</returns>
    public (double StraightOnFraction, double SkyFraction) CaughtByBars()
    {
        var bars = new BarCatch(pieces, new BarPicture(enclosure), withParked);
        var caught = new double[pieces.Count];
        double[] caughtSky = Ready().CaughtSkyFraction;
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
    public RoomLight On(ReceivingPlane plane) => RoomLight.Of(pieces, Ready().Radiosity, plane);

    // One a position, all looking at one picture of the bars.
    private static BeamTracer[] Tracers(IReadOnlyList<HouseLight> positions)
    {
        var picture = new BarPicture(positions[0].enclosure);
        return [.. positions.Select(p => new BeamTracer(p.pieces, new BarCatch(p.pieces, picture, p.withParked), p.surroundings))];
    }

    // The even sky alone is followed where nobody has asked for the sun yet.
    private Inside Ready()
    {
        if (inside is null)
        {
            SunGrid none = SunGrid.Even(4, 2);
            Gains(none, new bool[none.Count]);
        }

        return inside!;
    }

    private void Settle(double[] caughtSkyFraction)
    {
        Within.Require(caughtSkyFraction.Length, pieces.Count, pieces.Count);
        for (int i = 0; i < pieces.Count; i++)
        {
            if (pieces[i].Covering is FaceCovering.Clear)
            {
                pieces[i].MeetBars(caughtSkyFraction[i]);
            }
        }

        inside = new Inside(caughtSkyFraction, Radiosity.Solve(pieces, views.Square(pieces.Count)));
    }

    // The share of even light from inside that bars before a clear piece catch: as of even light from outside, by reciprocity.
    private double[] CaughtOfEvenLight(TracedBeams traced, int first)
    {
        var sum = new double[pieces.Count];
        var flux = new double[pieces.Count];
        for (int k = 0; k < SkyPatches.Coarse.Count; k++)
        {
            SkyPatch patch = SkyPatches.Coarse[k];
            int row = first + (sky.Count == SkyPatches.Coarse.Count ? k : SkyPatches.CoarseInUpperHalf[k]);
            for (int side = -1; side <= 1; side += 2)
            {
                Vector3d from = patch.Towards with { Z = side * patch.Towards.Z };
                for (int i = 0; i < sum.Length; i++)
                {
                    double weight = patch.IrradianceFactor * Math.Max(0, pieces[i].Normal.Dot(from));
                    sum[i] += weight * traced.OnBarsFraction(side < 0 ? row + sky.Count : row, i);
                    flux[i] += weight;
                }
            }
        }

        return [.. sum.Select((s, i) => flux[i] > 0 ? s / flux[i] : 0)];
    }

    private static CurtainPlane? Checked(CurtainPlane? curtain)
    {
        if (curtain is not null)
        {
            Within.Require(curtain.TransmittanceFraction, 0, 1);
            Within.Require(curtain.ScatterFraction, 0, 1);
            Within.Require(curtain.ReflectanceAboveFraction, 0, 1 - curtain.TransmittanceFraction);
            Within.Require(curtain.ReflectanceBelowFraction, 0, 1 - curtain.TransmittanceFraction);
        }

        return curtain;
    }

    /// <summary>How scattered light fares inside, once it is known what bars catch of it.</summary>
    private sealed record Inside(double[] CaughtSkyFraction, Radiosity Radiosity);
}

/// <summary>What is known of a house in one position of its curtain that does not rest on its crop.</summary>
/// <param name="Views">What its faces see of each other.</param>
/// <param name="CaughtSkyFraction">Share of an even sky's light that bars one by one catch before each piece.</param>
/// <param name="SetFree">Diffuse light set free; on the crop plane it goes by the crop's reflectance.</param>
public sealed record KnownLight(InsideViews Views, IReadOnlyList<double> CaughtSkyFraction, LightSetFree SetFree);
