using Glazewright.Design.Contracts;

namespace Glazewright.Design.Calibration;

/// <summary>A size of the house that a log can tell.</summary>
public enum FittedSize
{
    /// <summary>Effective vent area (with its discharge), times the house's own.</summary>
    Vents,

    /// <summary>Sun that gets in, times the house's own.</summary>
    Sun,

    /// <summary>Leaf area, times the house's own.</summary>
    Leaves,

    /// <summary>Leakage, times the house's own.</summary>
    Leaks,

    /// <summary>Slow mass.</summary>
    Mass,

    /// <summary>Share of the floor that is always wet.</summary>
    WetFloor,

    /// <summary>Conductance of the cover's sheet, times the house's own.</summary>
    Cover,

    /// <summary>What a closed curtain lets through by radiation and by its pores, times its own.</summary>
    Curtain,

    /// <summary>Flow of the exhaust fans, times the plant's own.</summary>
    Fans,

    /// <summary>Transfer units of the wet wall, times the plant's own.</summary>
    Pad,

    /// <summary>Heat of heaters or pipes, times the stated.</summary>
    Heat,

    /// <summary>Least resistance of the leaves to vapour.</summary>
    Stomata,
}

/// <summary>A size with the range it is looked for in: stated before any log is read.</summary>
/// <param name="Size">Which.</param>
/// <param name="Word">Its word in a column map.</param>
/// <param name="What">What it is, in plain words.</param>
/// <param name="StartValue">Where the search starts.</param>
/// <param name="LeastValue">Least.</param>
/// <param name="MostValue">Most.</param>
/// <param name="UnitText">What it is measured in.</param>
public sealed record SizeRange(FittedSize Size, string Word, string What, double StartValue, double LeastValue, double MostValue, string UnitText)
{
    /// <summary>Most sizes that may be fitted at once.</summary>
    public const int Most = 6;

    /// <summary>All sizes, in the order of the enumeration.</summary>
    public static EqList<SizeRange> All { get; } =
    [
        new(FittedSize.Vents, "vents", "effective vent area", 1, 0.3, 3, "× stated"),
        new(FittedSize.Sun, "sun", "sun that gets in", 1, 0.5, 1.5, "× stated"),
        new(FittedSize.Leaves, "leaves", "leaf area", 1, 0.25, 2.5, "× stated"),
        new(FittedSize.Leaks, "leaks", "leakage", 1, 0.2, 5, "× stated"),
        new(FittedSize.Mass, "mass", "slow thermal mass", 60, 2, 250, "kJ/m²K of floor"),
        new(FittedSize.WetFloor, "wet-floor", "floor that is always wet", 0.1, 0, 0.5, "of the floor"),
        new(FittedSize.Cover, "cover", "conductance of the cover's sheet", 1, 0.5, 2, "× stated"),
        new(FittedSize.Curtain, "curtain", "heat and air through the closed curtain", 1, 0.3, 1.8, "× stated"),
        new(FittedSize.Fans, "fans", "flow of the exhaust fans", 1, 0.4, 1.3, "× stated"),
        new(FittedSize.Pad, "pad", "transfer units of the wet wall", 1, 0.2, 1.5, "× stated"),
        new(FittedSize.Heat, "heat", "heat of heaters or pipes", 1, 0.5, 1.5, "× stated"),
        new(FittedSize.Stomata, "stomata", "least resistance of the leaves to vapour", 82, 40, 300, "s/m"),
    ];

    /// <summary>The range of a size.</summary>
    /// <param name="size">Which.</param>
    /// <returns>Its range.</returns>
    public static SizeRange Of(FittedSize size) => All[(int)size];
}
