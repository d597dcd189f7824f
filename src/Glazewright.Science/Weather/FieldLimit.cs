namespace Glazewright.Science.Weather;

/// <summary>What a field of a weather file can be; a value beyond it is impossible, not merely rare.</summary>
/// <param name="Target">Column of <see cref="RawYear"/>.</param>
/// <param name="Field">Name in words.</param>
/// <param name="Unit">Unit of the limits.</param>
/// <param name="Least">Least.</param>
/// <param name="Most">Most.</param>
/// <param name="Filled">How such an hour is filled, in words.</param>
internal sealed record FieldLimit(int Target, string Field, string Unit, double Least, double Most, string Filled)
{
    private const string Line = "filled by a straight line between the hours before and after";
    private const string Sun = "filled from the other two of global, direct and diffuse, or split from the global; no beam in the dark";

    /// <summary>Limits in the order of <see cref="RawYear"/>'s columns; wider than any record on Earth.</summary>
    public static FieldLimit[] All { get; } =
    [
        new(RawYear.DryBulb, "Dry bulb", "°C", -90, 60, Line),
        new(RawYear.DewPoint, "Dew point", "°C", -100, 40, "computed from dry bulb and relative humidity, or " + Line),
        new(RawYear.Rh, "Relative humidity", "%", 0, 110, "computed from dry bulb and dew point"),
        new(RawYear.Pressure, "Station pressure", "Pa", 31_000, 120_000, Line),
        new(RawYear.Infrared, "Horizontal infrared", "W/m²", 0, 700, "computed from dry bulb, dew point and cloud (Clark and Allen)"),
        new(RawYear.Ghi, "Global radiation", "Wh/m²", 0, 1600, Sun),
        new(RawYear.Dni, "Direct radiation", "Wh/m²", 0, 1400, Sun),
        new(RawYear.Dhi, "Diffuse radiation", "Wh/m²", 0, 1200, Sun),
        new(RawYear.WindFrom, "Wind direction", "°", 0, 360, "the last direction before held on"),
        new(RawYear.Wind, "Wind speed", "m/s", 0, 75, Line),
        new(RawYear.Opaque, "Opaque sky cover", "tenths", 0, 10, "left unknown"),
        new(RawYear.Snow, "Snow depth", "cm", 0, 900, "left unknown"),
    ];
}
