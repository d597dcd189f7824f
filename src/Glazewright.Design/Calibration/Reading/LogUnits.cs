namespace Glazewright.Design.Calibration.Reading;

/// <summary>Units a column may be in, by kind: inside value = typed × factor + offset.</summary>
internal static class LogUnits
{
    private static readonly (LoggedKind Kind, string Word, double Factor, double Offset)[] s_all =
    [
        (LoggedKind.Temperature, "C", 1, 0),
        (LoggedKind.Temperature, "F", 5 / 9.0, -160 / 9.0),
        (LoggedKind.Temperature, "K", 1, -273.15),
        (LoggedKind.Share, "%", 0.01, 0),
        (LoggedKind.Share, "0-1", 1, 0),
        (LoggedKind.Flux, "W/m2", 1, 0),
        (LoggedKind.Flux, "kJ/m2h", 1 / 3.6, 0),
        (LoggedKind.Flux, "Btu/h ft2", 3.154591, 0),
        (LoggedKind.Speed, "m/s", 1, 0),
        (LoggedKind.Speed, "km/h", 1 / 3.6, 0),
        (LoggedKind.Speed, "mph", 0.44704, 0),
        (LoggedKind.Speed, "kn", 0.514444, 0),
        (LoggedKind.Pressure, "Pa", 1, 0),
        (LoggedKind.Pressure, "hPa", 100, 0),
        (LoggedKind.Pressure, "kPa", 1000, 0),
        (LoggedKind.Pressure, "inHg", 3386.389, 0),
        (LoggedKind.PhotonFlux, "umol/m2s", 1, 0),
        (LoggedKind.Gas, "ppm", 1, 0),
    ];

    /// <summary>Every word, for the reader of a map.</summary>
    public static string[] Words { get; } = [.. s_all.Select(u => u.Word)];

    /// <summary>Words of a kind.</summary>
    public static string Of(LoggedKind kind) => string.Join(", ", s_all.Where(u => u.Kind == kind).Select(u => u.Word));

    /// <summary>Finds a unit of a kind.</summary>
    public static bool TryFind(string word, LoggedKind kind, out double factor, out double offset)
    {
        foreach ((LoggedKind of, string name, double f, double o) in s_all)
        {
            if (of == kind && name == word)
            {
                (factor, offset) = (f, o);
                return true;
            }
        }

        (factor, offset) = (1, 0);
        return false;
    }
}
