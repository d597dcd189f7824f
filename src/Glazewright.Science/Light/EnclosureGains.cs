using Glazewright.Science.Guards;

namespace Glazewright.Science.Light;

/// <summary>Where sunlight ends in a house, for every sun direction and for the sky's even part, its horizon band and the ground.</summary>
/// <param name="Grid">Nodes of the beam rows.</param>
/// <param name="SurfaceIds">Faces and patches in order.</param>
/// <param name="Beam">One row a node, per unit of beam-normal irradiance.</param>
/// <param name="Dome">Per unit of the even sky's horizontal irradiance.</param>
/// <param name="Horizon">Per unit of the horizon band's irradiance on an upright wall.</param>
/// <param name="Ground">Per unit of the ground's irradiance on a plane facing down.</param>
/// <param name="BeamBySurfaceM2">Absorbed by each surface's own material: row-major, node then surface.</param>
/// <param name="DomeBySurfaceM2">The same for the dome.</param>
/// <param name="HorizonBySurfaceM2">The same for the horizon band.</param>
/// <param name="GroundBySurfaceM2">The same for the ground.</param>
/// <param name="BeamDirectOnCropM2">Part of each beam row's light that meets the crop plane unscattered, before it is absorbed or reflected.</param>
/// <param name="DomeDirectOnCropM2">The same for the dome.</param>
public sealed record EnclosureGainTable(
    SunGrid Grid,
    IReadOnlyList<string> SurfaceIds,
    IReadOnlyList<GainRow> Beam,
    GainRow Dome,
    GainRow Horizon,
    GainRow Ground,
    IReadOnlyList<double> BeamBySurfaceM2,
    IReadOnlyList<double> DomeBySurfaceM2,
    IReadOnlyList<double> HorizonBySurfaceM2,
    IReadOnlyList<double> GroundBySurfaceM2,
    IReadOnlyList<double> BeamDirectOnCropM2,
    double DomeDirectOnCropM2)
{
    /// <summary>Beam row at a sun direction, bilinear between nodes.</summary>
    /// <param name="houseAzimuthDeg">Anticlockwise from the house's +x.</param>
    /// <param name="elevationDeg">Refracted elevation; none below the horizon.</param>
    /// <returns>The row; all zero below the horizon.</returns>
    public GainRow BeamAt(double houseAzimuthDeg, double elevationDeg)
    {
        if (!(elevationDeg > 0))
        {
            return default;
        }

        SunGridPlace p = Grid.At(houseAzimuthDeg, elevationDeg);
        return (p.Weight0Fraction * Beam[p.Node0]) + (p.Weight1Fraction * Beam[p.Node1])
            + (p.Weight2Fraction * Beam[p.Node2]) + (p.Weight3Fraction * Beam[p.Node3]);
    }
}

/// <summary>
/// The gain of a convex house. The beam is exact: each clear face is projected along the sun on every inside face and the common areas are taken;
/// what is reflected or scattered is then followed as diffuse light between all faces (radiosity).
/// </summary>
/// <remarks>
/// Limits: reflections inside are treated as diffuse; bars are even gratings of width and depth, not single shadows; what shades from outside is dark itself; the crop has no
/// height. Sky and ground rows are sums of beam rows over the hemisphere, so all rows follow the same physics.
/// </remarks>
public static class EnclosureGains
{
    /// <summary>Rays a piece for the view factors: 8192 keep them within about 0.003 of the closed forms.</summary>
    public const int Rays = 8192;

    /// <summary>Computes the table.</summary>
    /// <param name="enclosure">The house.</param>
    /// <param name="curtain">A drawn curtain, or null.</param>
    /// <param name="grid">Sun nodes.</param>
    /// <returns>Rows whose parts sum to their aperture within 1e-9.</returns>
    /// <exception cref="ArgumentException">The curtain misses the house.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Curtain fractions out of range.</exception>
    public static EnclosureGainTable Compute(Enclosure enclosure, CurtainPlane? curtain, SunGrid grid) =>
        Compute(enclosure, curtain, grid, Surroundings.None);

    /// <summary>Computes the table with what stands around the house.</summary>
    /// <param name="enclosure">The house.</param>
    /// <param name="curtain">A drawn curtain, or null.</param>
    /// <param name="grid">Sun nodes.</param>
    /// <param name="surroundings">Bodies and skyline; what they take is no part of the aperture.</param>
    /// <returns>Rows whose parts sum to their aperture within 1e-9.</returns>
    /// <exception cref="ArgumentException">The curtain misses the house.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Curtain fractions out of range.</exception>
    public static EnclosureGainTable Compute(Enclosure enclosure, CurtainPlane? curtain, SunGrid grid, Surroundings surroundings)
    {
        ArgumentNullException.ThrowIfNull(enclosure);
        ArgumentNullException.ThrowIfNull(surroundings);
        ArgumentNullException.ThrowIfNull(grid);
        if (curtain is not null)
        {
            Within.Require(curtain.TransmittanceFraction, 0, 1);
            Within.Require(curtain.ScatterFraction, 0, 1);
            Within.Require(curtain.ReflectanceAboveFraction, 0, 1 - curtain.TransmittanceFraction);
            Within.Require(curtain.ReflectanceBelowFraction, 0, 1 - curtain.TransmittanceFraction);
        }

        List<Piece> pieces = Pieces.Of(enclosure, curtain);
        Radiosity radiosity = Radiosity.Solve(pieces, ViewFactors.ExchangeAreas(pieces, Rays));
        IReadOnlyList<string> ids = Pieces.SurfaceIds(enclosure);
        var tracer = new BeamTracer(pieces, radiosity, ids.Count, surroundings);

        var beam = new GainRow[grid.Count];
        var beamSurfaces = new double[grid.Count * ids.Count];
        var beamDirect = new double[grid.Count];
        for (int node = 0; node < grid.Count; node++)
        {
            // At the zenith all azimuths are one direction.
            if (node > grid.Count - grid.Azimuths)
            {
                beam[node] = beam[node - 1];
                beamDirect[node] = beamDirect[node - 1];
                beamSurfaces.AsSpan((node - 1) * ids.Count, ids.Count).CopyTo(beamSurfaces.AsSpan(node * ids.Count));
                continue;
            }

            beam[node] = tracer.Trace(grid.Direction(node));
            beamDirect[node] = tracer.DirectOnCropM2;
            tracer.AddSurfaces(1, beamSurfaces.AsSpan(node * ids.Count, ids.Count));
        }

        (GainRow dome, double[] domeSurfaces, double domeDirect) = Hemisphere(tracer, ids.Count, 1);
        (GainRow ground, double[] groundSurfaces, _) = Hemisphere(tracer, ids.Count, -1);
        (GainRow horizon, double[] horizonSurfaces) = Band(tracer, ids.Count);
        return new EnclosureGainTable(
            grid, ids, beam, dome, horizon, ground, beamSurfaces, domeSurfaces, horizonSurfaces, groundSurfaces,
            beamDirect, domeDirect);
    }

    // Radiance 1/π over the half space: unit irradiance on a level plane facing it.
    private static (GainRow Row, double[] Surfaces, double DirectOnCrop) Hemisphere(BeamTracer tracer, int surfaces, int side)
    {
        var row = default(GainRow);
        var bySurface = new double[surfaces];
        double direct = 0;
        foreach (SkyPatch patch in SkyPatches.UpperHalf)
        {
            Vector3d from = patch.Towards with { Z = side * patch.Towards.Z };
            row += patch.IrradianceFactor * tracer.Trace(from);
            tracer.AddSurfaces(patch.IrradianceFactor, bySurface);
            direct += patch.IrradianceFactor * tracer.DirectOnCropM2;
        }

        return (row, bySurface, direct);
    }

    // A thin band on the horizon, half a unit per radian of azimuth: unit irradiance on an upright wall.
    private static (GainRow Row, double[] Surfaces) Band(BeamTracer tracer, int surfaces)
    {
        var row = default(GainRow);
        var bySurface = new double[surfaces];
        const double weight = 0.5 * 2 * Math.PI / SkyPatches.Azimuths;
        for (int a = 0; a < SkyPatches.Azimuths; a++)
        {
            row += weight * tracer.Trace(Vector3d.Towards((a + 0.5) * 360 / SkyPatches.Azimuths, 0));
            tracer.AddSurfaces(weight, bySurface);
        }

        return (row, bySurface);
    }
}
