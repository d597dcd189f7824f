using Glazewright.Science.Guards;

namespace Glazewright.Science.Light;

/// <summary>Where sunlight ends in a house, for every sun direction and for the sky's even part, its horizon band and the ground.</summary>
/// <param name="Grid">Nodes of the beam rows.</param>
/// <param name="Beam">One row a node, per unit of beam-normal irradiance.</param>
/// <param name="Dome">Per unit of the even sky's horizontal irradiance.</param>
/// <param name="Horizon">Per unit of the horizon band's irradiance on an upright wall.</param>
/// <param name="Ground">Per unit of the ground's irradiance on a plane facing down.</param>
/// <param name="BeamDirectOnCropM2">Part of each beam row's light that meets the crop plane unscattered, before it is absorbed or reflected.</param>
/// <param name="DomeDirectOnCropM2">The same for the dome.</param>
/// <param name="SetFree">Diffuse light that each piece sets free: what <see cref="RoomLight"/> spreads over a plane.</param>
public sealed record EnclosureGainTable(
    SunGrid Grid,
    IReadOnlyList<GainRow> Beam,
    GainRow Dome,
    GainRow Horizon,
    GainRow Ground,
    IReadOnlyList<double> BeamDirectOnCropM2,
    double DomeDirectOnCropM2,
    LightSetFree SetFree)
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

/// <summary>Diffuse light that each piece of a house sets free before further reflection (scattered by covers, thrown back once), m² per unit of a source.</summary>
/// <param name="BeamM2">Node then piece.</param>
/// <param name="DomeM2">By piece.</param>
/// <param name="HorizonM2">By piece.</param>
/// <param name="GroundM2">By piece.</param>
public sealed record LightSetFree(
    IReadOnlyList<double> BeamM2, IReadOnlyList<double> DomeM2, IReadOnlyList<double> HorizonM2, IReadOnlyList<double> GroundM2);
