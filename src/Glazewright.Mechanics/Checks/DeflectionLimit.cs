namespace Glazewright.Mechanics.Checks;

/// <summary>A deflection limit: span over a number.</summary>
/// <param name="SpanOverRatio">The number n of span/n.</param>
/// <param name="Source">Where it stands.</param>
public sealed record DeflectionLimit(double SpanOverRatio, string Source)
{
    /// <summary>Roof members without ceiling under live or snow load. Read.</summary>
    public static DeflectionLimit RoofLiveOrSnow { get; } = new(180, "IBC table 1604.3, no ceiling, live, snow or wind (read)");

    /// <summary>Roof members without ceiling under dead and live load. Read.</summary>
    public static DeflectionLimit RoofTotal { get; } = new(120, "IBC table 1604.3, no ceiling, dead + live (read)");

    /// <summary>Greenhouses, under dead and live load. Read in the table of 2000.</summary>
    public static DeflectionLimit Greenhouse { get; } = new(120, "IBC table 1604.3, greenhouses, dead + live (read, edition 2000)");

    /// <summary>Girts carrying formed metal siding. Read.</summary>
    public static DeflectionLimit Girt { get; } = new(90, "AISC Design Guide 3, girts under metal siding (read)");

    /// <summary>Sway of an industrial frame under service wind. Common practice.</summary>
    public static DeflectionLimit Sway { get; } = new(60, "eave height over 60 under ten-year wind: common practice for metal cladding");
}
