namespace Glazewright.Science.Optics;

/// <summary>Where a catalogue number comes from.</summary>
public enum NumberMark
{
    /// <summary>Read in a published page.</summary>
    Read,

    /// <summary>Remembered from a published standard or handbook.</summary>
    FromMemory,

    /// <summary>Common practice.</summary>
    CommonPractice,

    /// <summary>Computed here from stated material values.</summary>
    Computed,
}

/// <summary>A generic covering: no maker's product, to be confirmed with the supplier.</summary>
/// <param name="Id">Short name used in jobs.</param>
/// <param name="Name">Plain words.</param>
/// <param name="Make">How light sees it.</param>
/// <param name="NominalTransmittanceFraction">Light at normal incidence, new and clean.</param>
/// <param name="NominalMark">Where that comes from.</param>
/// <param name="HazeFraction">Scattered share of what passes (common practice).</param>
/// <param name="CentreUWm2K">Centre-of-sheet U with standard films, W/m²K.</param>
/// <param name="CentreUMark">Where that comes from.</param>
/// <param name="PracticeUWm2K">U used for heating greenhouses, W/m²K, with its films and sky.</param>
/// <param name="PracticeUMark">Where that comes from.</param>
/// <param name="MassKgPerM2">Mass, kg/m².</param>
/// <param name="LongWaveTransmittanceFraction">Of heat radiation (from memory).</param>
/// <param name="Note">What a reader must know.</param>
public sealed record GenericCover(
    string Id,
    string Name,
    CoverMake Make,
    double NominalTransmittanceFraction,
    NumberMark NominalMark,
    double HazeFraction,
    double CentreUWm2K,
    NumberMark CentreUMark,
    double PracticeUWm2K,
    NumberMark PracticeUMark,
    double MassKgPerM2,
    double LongWaveTransmittanceFraction,
    string Note)
{
    /// <summary>The table of this cover in a state of use.</summary>
    /// <param name="condition">Dirt and ageing.</param>
    /// <returns>Shares by angle.</returns>
    public CoverOptics Optics(CoverCondition condition) => CoverTable.Of(Make, condition, HazeFraction);
}

/// <summary>
/// The closed set of generic covers. Multiwall light and U: published data pages of one North American sheet (read; two pages of one maker differ by up to
/// 8 points); heavier sheets after European declarations to EN 16153 (from memory). Ribs 6 mm apart in 6 mm sheet, 10.5 in 8 and 10, 16 to 20 in thicker (common practice). Practice U: greenhouse heating tables (from memory).
/// </summary>
public static class GenericCovers
{
    private static readonly Sheet GlassSheet = new(1.526, 0.0125);
    private static readonly Sheet SolidSheet = new(1.585, 0.015);
    private static readonly Sheet ThinWall = new(1.585, 0.005);
    private static readonly Sheet FilmSheet = new(1.51, 0.020);

    /// <summary>All of them, light ones first.</summary>
    public static IReadOnlyList<GenericCover> All { get; } = Array.AsReadOnly(new[]
    {
        new GenericCover(
            "glass-4", "single glass, 4 mm, low iron", new CoverMake.Plain(GlassSheet, 1), 0.905, NumberMark.Computed, 0,
            5.8, NumberMark.FromMemory, 6.2, NumberMark.FromMemory, 10, 0, "Light from index 1.526 and K·L 0.0125."),
        new GenericCover(
            "glass-4-double", "double glass, two 4 mm panes", new CoverMake.Plain(GlassSheet, 2), 0.825, NumberMark.Computed, 0,
            2.8, NumberMark.FromMemory, 3.7, NumberMark.FromMemory, 20, 0, "No coating."),
        new GenericCover(
            "polycarbonate-single", "single polycarbonate, corrugated or flat", new CoverMake.Plain(SolidSheet, 1), 0.889, NumberMark.Computed, 0.05,
            5.8, NumberMark.FromMemory, 6.2, NumberMark.FromMemory, 1.2, 0.02, "Area by developed surface if corrugated."),
        Ribbed("polycarbonate-6-twin", "6 mm twin-wall polycarbonate", 2, 0.80, 1.0, NumberMark.Read, 3.5, NumberMark.Read, 3.6, NumberMark.FromMemory, 1.3),
        Ribbed("polycarbonate-8-twin", "8 mm twin-wall polycarbonate", 2, 0.80, 0.75, NumberMark.Read, 3.4, NumberMark.Read, 3.5, NumberMark.FromMemory, 1.5),
        Ribbed("polycarbonate-10-twin", "10 mm twin-wall polycarbonate", 2, 0.80, 0.95, NumberMark.Read, 3.2, NumberMark.Read, 3.3, NumberMark.CommonPractice, 1.7),
        Ribbed("polycarbonate-16-triple", "16 mm triple-wall polycarbonate", 3, 0.73, 0.9, NumberMark.Read, 2.4, NumberMark.FromMemory, 2.6, NumberMark.FromMemory, 2.7),
        Ribbed("polycarbonate-16-multi", "16 mm multi-wall polycarbonate, crossed ribs", 4, 0.59, 1.0, NumberMark.Read, 2.2, NumberMark.FromMemory, 2.4, NumberMark.CommonPractice, 2.7),
        Ribbed("polycarbonate-25-multi", "25 mm multi-wall polycarbonate", 5, 0.58, 1.25, NumberMark.FromMemory, 1.5, NumberMark.FromMemory, 1.7, NumberMark.CommonPractice, 3.5),
        new GenericCover(
            "film-single", "single polyethylene film, 0.2 mm", new CoverMake.Plain(FilmSheet, 1), 0.902, NumberMark.Computed, 0.25,
            6.2, NumberMark.FromMemory, 6.5, NumberMark.FromMemory, 0.19, 0.45, "Heat film: long-wave transmittance near 0.2."),
        new GenericCover(
            "film-double", "double inflated polyethylene film", new CoverMake.Plain(FilmSheet, 2), 0.819, NumberMark.Computed, 0.35,
            4.0, NumberMark.FromMemory, 4.0, NumberMark.FromMemory, 0.38, 0.25, "Blower running."),
        new GenericCover(
            "panel-76", "76 mm (3 in) insulated metal panel, white inside", new CoverMake.Opaque(0.70), 0, NumberMark.CommonPractice, 0,
            0.32, NumberMark.Computed, 0.35, NumberMark.CommonPractice, 12, 0,
            "Foam 76 mm at 0.026 W/mK aged plus films; joints and fasteners raise it. Inside reflectance 0.70, white coating."),
        new GenericCover(
            "panel-102", "102 mm (4 in) insulated metal panel, white inside", new CoverMake.Opaque(0.70), 0, NumberMark.CommonPractice, 0,
            0.25, NumberMark.Computed, 0.28, NumberMark.CommonPractice, 13, 0,
            "Foam 102 mm at 0.026 W/mK aged plus films; joints and fasteners raise it. Inside reflectance 0.70, white coating."),
    });

    /// <summary>Finds a cover by its short name.</summary>
    /// <param name="id">Short name.</param>
    /// <param name="cover">The cover, when there is one.</param>
    /// <returns>False when no cover has that name.</returns>
    public static bool TryFind(string id, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out GenericCover? cover)
    {
        cover = All.FirstOrDefault(c => string.Equals(c.Id, id, StringComparison.Ordinal));
        return cover is not null;
    }

    private static GenericCover Ribbed(
        string id, string name, int walls, double nominalFraction, double ribDepthRatio, NumberMark nominalMark,
        double centreUWm2K, NumberMark centreMark, double practiceUWm2K, NumberMark practiceMark, double massKgPerM2) =>
        new(id, name, new CoverMake.Ribbed(ThinWall, walls, nominalFraction, ribDepthRatio), nominalFraction, nominalMark, 0.15,
            centreUWm2K, centreMark, practiceUWm2K, practiceMark, massKgPerM2, 0.02, "Typical; confirm with the supplier.");
}
