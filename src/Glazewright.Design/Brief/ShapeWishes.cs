namespace Glazewright.Design.Brief;

/// <summary>Whether summer light is wanted or is more than the crop can use.</summary>
public enum SummerLight
{
    /// <summary>A surplus that shade must take away: less is better.</summary>
    Less,

    /// <summary>Wanted: more is better.</summary>
    More,
}

/// <summary>What the shape finder may change.</summary>
public enum ShapeFreedom
{
    /// <summary>Kept as drawn.</summary>
    AsDrawn,

    /// <summary>Searched.</summary>
    Search,
}

/// <summary>Wishes of a house's shape, as typed; null is "not said": the finder's defaults stand in (docs/methods/shape.md).</summary>
/// <param name="NoonReachM">Direct light this far up the wall away from the equator at solar noon; null when not asked.</param>
/// <param name="NoonDate">On this date (2027-06-21); empty for the longest day.</param>
/// <param name="RidgeAtMostM">Ridge no higher; null: the drawn ridge.</param>
/// <param name="EaveAtLeastM">Eaves no lower; null: the lower drawn eave.</param>
/// <param name="EaveAtMostM">Eaves no higher; null: 2 ft over the higher drawn eave.</param>
/// <param name="ShedPitchRatio">Clear slopes at least this steep: they shed snow and do not drip.</param>
/// <param name="WaterPitchRatio">Every slope at least this steep: joints stay tight.</param>
/// <param name="SteepestPitchRatio">No slope steeper.</param>
/// <param name="GlazingAtMostM2">Clear area no larger; null when not asked.</param>
/// <param name="DarkestMonthMolPerM2Day">Bench light of the dark solstice's month at least, mol/m²d; null when not asked.</param>
/// <param name="EvennessAtLeastRatio">Darkest over mean across the house in that month; null when not asked.</param>
/// <param name="LightGivenUpFraction">Winter light given up for less glazing.</param>
/// <param name="SummerLight">What summer light is worth.</param>
/// <param name="ShadeAboveUmolPerM2S">Bench light above which shade is drawn, µmol/m²s.</param>
/// <param name="Faces">Whether clear and opaque faces are searched.</param>
/// <param name="Bearing">Whether the ridge may be turned, up to 30° either way.</param>
public sealed record ShapeWishes(
    double? NoonReachM,
    string NoonDate,
    double? RidgeAtMostM,
    double? EaveAtLeastM,
    double? EaveAtMostM,
    double ShedPitchRatio,
    double WaterPitchRatio,
    double SteepestPitchRatio,
    double? GlazingAtMostM2,
    double? DarkestMonthMolPerM2Day,
    double? EvennessAtLeastRatio,
    double LightGivenUpFraction,
    SummerLight SummerLight,
    double ShadeAboveUmolPerM2S,
    ShapeFreedom Faces,
    ShapeFreedom Bearing)
{
    /// <summary>What holds for a job that says nothing: 6:12 to shed (26.6°, drip and snow; common practice), 2:12 for tight joints, at most 12:12.</summary>
    public static ShapeWishes Unsaid { get; } = new(
        null, "", null, null, null, 6 / 12.0, 2 / 12.0, 1, null, null, null, 0.03, SummerLight.Less, 800, ShapeFreedom.Search, ShapeFreedom.AsDrawn);
}
