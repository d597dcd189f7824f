namespace Glazewright.Design.Calibration;

/// <summary>A curtain by its properties.</summary>
/// <param name="SunTransmittance">Sun that passes when it is closed.</param>
/// <param name="Emissivity">Emissivity of both faces.</param>
/// <param name="LongWaveTransmittance">Long wave that passes.</param>
/// <param name="PermeabilityMPerSK">Air through the closed cloth, m/s at 1 K (to the power ⅔).</param>
public sealed record PlainCurtain(double SunTransmittance, double Emissivity, double LongWaveTransmittance, double PermeabilityMPerSK);

/// <summary>A built house by its sizes, for which there is no job.</summary>
/// <param name="FloorM2">Floor area.</param>
/// <param name="BelowM">Mean height of the air below the curtain's level, m.</param>
/// <param name="AboveM">Mean height of the air above it, m.</param>
/// <param name="RoofShare">Clear roof area over floor area.</param>
/// <param name="WallShare">Clear wall area that meets the outside, over floor area.</param>
/// <param name="CoverWm2K">U of the covering at the centre of a sheet, standard films.</param>
/// <param name="CoverJPerM2K">Heat capacity of the covering.</param>
/// <param name="SunFraction">Share of the outside sun that reaches crop and floor, screens open.</param>
/// <param name="CurtainTravelM">Distance over which the curtain's gap opens, m.</param>
/// <param name="First">The curtain.</param>
/// <param name="Second">A second curtain.</param>
/// <param name="RoofVentFraction">Roof vents' largest opening over floor area.</param>
/// <param name="SideVentFraction">Side vents' largest opening over floor area.</param>
/// <param name="VentHeightM">Height of one roof opening, m.</param>
/// <param name="LeakPerHour">Air changes by leakage at 4 m/s.</param>
/// <param name="EdgeWPerMK">Loss at the floor's edge.</param>
/// <param name="DeepGroundC">Ground at 1.6 m, °C.</param>
/// <param name="WindFactor">Wind at the house over wind at the mast.</param>
/// <param name="FirstLeafAreaIndex">Leaf area index (of the floor) on the first day.</param>
/// <param name="GrownLeafAreaIndex">Leaf area index when grown.</param>
/// <param name="LeafDays">Days from the first to the grown.</param>
/// <param name="LampsWm2">Electric power of the lamps on the floor area.</param>
/// <param name="HeatersWm2">Heat of all heaters on the floor area.</param>
/// <param name="RailWPerM2K">Heat of the lower pipes for each K above the air, on the floor area.</param>
/// <param name="GrowWPerM2K">The same of the upper pipes.</param>
/// <param name="FansPerHour">Air changes with all fans.</param>
/// <param name="PadEffectiveness">Effectiveness of the wet wall at full flow, 0 for none.</param>
/// <param name="FogKgPerM2H">Full spray on the floor area, kg/m²h.</param>
/// <param name="LatitudeDeg">North positive; used where light is not logged.</param>
/// <param name="LongitudeDeg">East positive.</param>
/// <param name="ElevationM">Above sea level, m.</param>
/// <param name="ClearnessFraction">Light outside over that above the atmosphere, where none is logged.</param>
public sealed record PlainHouse(
    double FloorM2,
    double BelowM,
    double AboveM,
    double RoofShare,
    double WallShare,
    double CoverWm2K,
    double CoverJPerM2K,
    double SunFraction,
    double CurtainTravelM,
    PlainCurtain First,
    PlainCurtain Second,
    double RoofVentFraction,
    double SideVentFraction,
    double VentHeightM,
    double LeakPerHour,
    double EdgeWPerMK,
    double DeepGroundC,
    double WindFactor,
    double FirstLeafAreaIndex,
    double GrownLeafAreaIndex,
    double LeafDays,
    double LampsWm2,
    double HeatersWm2,
    double RailWPerM2K,
    double GrowWPerM2K,
    double FansPerHour,
    double PadEffectiveness,
    double FogKgPerM2H,
    double LatitudeDeg,
    double LongitudeDeg,
    double ElevationM,
    double ClearnessFraction);
