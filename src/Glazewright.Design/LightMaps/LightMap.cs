using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.LightMaps;

/// <summary>Light inside one house through the year, past every member and piece of equipment, with the curtain open.</summary>
/// <param name="House">House id.</param>
/// <param name="CountX">Cells along the house.</param>
/// <param name="CountY">Cells across.</param>
/// <param name="HeightM">Height of the map, m: the benches', or 0 for the floor.</param>
/// <param name="Months">January first.</param>
/// <param name="OutsideMolPerM2Day">Outside, by month, mol/m²d.</param>
/// <param name="Others">The floor below the benches, and the wall away from the equator.</param>
/// <param name="Fates">What becomes of the light that would fall on the map in open country, by month.</param>
/// <param name="Carpet">The year hour by hour.</param>
/// <param name="Shadows">The largest member shadow and how it moves.</param>
/// <param name="Moments">Direct sun at single moments.</param>
/// <param name="Framings">The same house in other framings.</param>
/// <param name="Drawn">The map with the curtain drawn all year; null without a curtain above the map.</param>
/// <param name="Report">Figures, findings, what is left out.</param>
public sealed record LightMap(
    string House,
    int CountX,
    int CountY,
    double HeightM,
    EqList<LightMonth> Months,
    EqList<double> OutsideMolPerM2Day,
    EqList<LightPlane> Others,
    EqList<LightFate> Fates,
    LightCarpet Carpet,
    EqList<ShadowTrack> Shadows,
    EqList<LightMoment> Moments,
    EqList<FramingLight> Framings,
    DrawnLight? Drawn,
    StageReport Report)
{
    /// <summary>Light that most leafy crops no longer use in full, µmol/m²s (common practice: 600 to 1,000): hours above it are hours for shade.</summary>
    public const double StrongUmolPerM2S = 800;

    /// <summary>The darkest month outside. Where several are without any light (polar night), the one half a year from the brightest.</summary>
    /// <param name="outsideMolPerM2Day">Twelve months, January first.</param>
    /// <returns>0 to 11.</returns>
    public static int DarkestMonth(EqList<double> outsideMolPerM2Day)
    {
        int dark = Enumerable.Range(0, 12).MinBy(m => outsideMolPerM2Day[m]);
        int opposite = (Enumerable.Range(0, 12).MaxBy(m => outsideMolPerM2Day[m]) + 6) % 12;
        return outsideMolPerM2Day[opposite] > outsideMolPerM2Day[dark] ? dark : opposite;
    }
}

/// <summary>One month's light.</summary>
/// <param name="MeanMolPerM2Day">Mean over the grid, mol/m²d.</param>
/// <param name="LeastMolPerM2Day">Darkest point, mol/m²d.</param>
/// <param name="EvennessRatio">Darkest over mean.</param>
/// <param name="PointMolPerM2Day">Each point, x fastest, mol/m²d.</param>
public sealed record LightMonth(
    double MeanMolPerM2Day, double LeastMolPerM2Day, double EvennessRatio, EqList<double> PointMolPerM2Day);

/// <summary>Light on the map with the curtain drawn from wall to wall, as if it were never opened.</summary>
/// <param name="Months">January first.</param>
/// <param name="Fates">Where each month's light goes: the curtain's share is what its cloth takes or turns back of the direct light.</param>
public sealed record DrawnLight(EqList<LightMonth> Months, EqList<LightFate> Fates);

/// <summary>Another plane that light was mapped on.</summary>
/// <param name="Name">What it is, in plain words.</param>
/// <param name="Face">The wall, or the floor.</param>
/// <param name="CountU">Cells along: along the house for the floor, left to right seen from inside for a wall.</param>
/// <param name="CountV">Cells across, or upwards.</param>
/// <param name="LengthUM">Length along, m.</param>
/// <param name="LengthVM">Length across or up, m.</param>
/// <param name="Months">January first.</param>
public sealed record LightPlane(
    string Name, FaceName Face, int CountU, int CountV, double LengthUM, double LengthVM, EqList<LightMonth> Months);

/// <summary>
/// Where a month's light goes on its straight way to the map, as fractions of the light outside; these sum to 1. What scatters and is thrown back comes
/// back in part.
/// </summary>
/// <param name="AroundFraction">Skyline and neighbours.</param>
/// <param name="OpaqueRoofFraction">Opaque roof.</param>
/// <param name="OpaqueWallFraction">Opaque walls, doors, fans, wet wall.</param>
/// <param name="FrameFraction">Members and sheet joints.</param>
/// <param name="EquipmentFraction">Heaters, fans, lamps overhead.</param>
/// <param name="CurtainFraction">The parked curtain.</param>
/// <param name="CoverFraction">The clean covering.</param>
/// <param name="StateFraction">Dirt and ageing.</param>
/// <param name="ScatteredFraction">Scattered by the covering: not lost yet.</param>
/// <param name="DirectFraction">Arrives unscattered.</param>
/// <param name="ReturnedFraction">Arrives scattered or thrown back inside; beside the sum.</param>
public sealed record LightFate(
    double AroundFraction,
    double OpaqueRoofFraction,
    double OpaqueWallFraction,
    double FrameFraction,
    double EquipmentFraction,
    double CurtainFraction,
    double CoverFraction,
    double StateFraction,
    double ScatteredFraction,
    double DirectFraction,
    double ReturnedFraction);

/// <summary>Light of the 8,760 hours, µmol/m²s of the hour's mean.</summary>
/// <param name="DarkestCell">The cell that is darkest in the month that is darkest outside.</param>
/// <param name="Outside">On level ground outside.</param>
/// <param name="Mean">Mean of the map.</param>
/// <param name="Darkest">At that cell.</param>
public sealed record LightCarpet(int DarkestCell, EqList<double> Outside, EqList<double> Mean, EqList<double> Darkest);

/// <summary>One member's shadow through a day.</summary>
/// <param name="Day">The day in words.</param>
/// <param name="MemberId">Path id.</param>
/// <param name="Moments">By solar hour; only those with the sun up and the shadow on the plan.</param>
public sealed record ShadowTrack(string Day, string MemberId, EqList<ShadowMoment> Moments);

/// <summary>A shadow at one solar hour, on the map's level.</summary>
/// <param name="SolarHour">12 is noon.</param>
/// <param name="WidthM">Across its length, m.</param>
/// <param name="LengthM">Along it, m; part of it may fall beside the map.</param>
/// <param name="CentreXM">Middle of the shadow along the house, m.</param>
/// <param name="CentreYM">Across, m.</param>
public sealed record ShadowMoment(double SolarHour, double WidthM, double LengthM, double CentreXM, double CentreYM);

/// <summary>The house in one framing.</summary>
/// <param name="Name">Framing in plain words.</param>
/// <param name="DecemberMolPerM2Day">Mean of the map in the darkest month, mol/m²d.</param>
/// <param name="JuneMolPerM2Day">Mean in the month half a year away, mol/m²d.</param>
/// <param name="EvennessRatio">Darkest over mean in the darkest month.</param>
/// <param name="FrameFraction">Light on its straight way that members and joints take in the darkest month.</param>
/// <param name="ShadowWidthM">Broadest member shadow at noon of the darkest month's solstice, m.</param>
public sealed record FramingLight(
    string Name, double DecemberMolPerM2Day, double JuneMolPerM2Day, double EvennessRatio, double FrameFraction, double ShadowWidthM);

/// <summary>Direct sun at one moment of a clear day.</summary>
/// <param name="Day">The day in words.</param>
/// <param name="SolarHour">12 is noon.</param>
/// <param name="ElevationDeg">Of the sun.</param>
/// <param name="AzimuthDeg">Bearing of the sun.</param>
/// <param name="CountX">Spots along the house.</param>
/// <param name="CountY">Spots across.</param>
/// <param name="SpotFraction">Share of the direct sun outdoors that falls on each spot, x fastest.</param>
/// <param name="MeanFraction">Mean of the map.</param>
public sealed record LightMoment(
    string Day, double SolarHour, double ElevationDeg, double AzimuthDeg, int CountX, int CountY, EqList<float> SpotFraction, double MeanFraction);
