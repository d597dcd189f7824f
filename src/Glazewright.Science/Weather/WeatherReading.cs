namespace Glazewright.Science.Weather;

/// <summary>What came of reading a weather file.</summary>
public abstract record WeatherReading
{
    private WeatherReading()
    {
    }

    /// <summary>The year was read; what was made up stands in its gaps.</summary>
    public sealed record Read(WeatherYear Year) : WeatherReading;

    /// <summary>The file cannot serve; every problem found, in file order.</summary>
    public sealed record Refused(IReadOnlyList<WeatherProblem> Problems) : WeatherReading;
}

/// <summary>One thing wrong with a weather file.</summary>
/// <param name="Kind">What sort.</param>
/// <param name="Line">1-based line of the uncompressed file; 0 when it is about the whole file.</param>
/// <param name="Column">1-based comma field; 0 when it is about the whole line.</param>
/// <param name="What">What is wrong.</param>
/// <param name="Right">What would be right.</param>
public sealed record WeatherProblem(WeatherProblemKind Kind, int Line, int Column, string What, string Right);

/// <summary>Sorts of problems.</summary>
public enum WeatherProblemKind
{
    /// <summary>Not a weather file that is read here.</summary>
    NotAWeatherFile,

    /// <summary>Compressed data broken off or damaged.</summary>
    DamagedCompression,

    /// <summary>A header line is absent or cannot be read.</summary>
    Header,

    /// <summary>Steps other than one hour, several periods, or several years.</summary>
    Period,

    /// <summary>A row has the wrong number of fields.</summary>
    FieldCount,

    /// <summary>Rows end early, skip or repeat an hour.</summary>
    Sequence,

    /// <summary>A field is not a number.</summary>
    NotANumber,

    /// <summary>A number outside what the field can be.</summary>
    OutOfRange,

    /// <summary>Missing values that the gap rule does not let us make up.</summary>
    Missing,
}

/// <summary>How missing hours of dry bulb, dew point, pressure and wind may be made up.</summary>
/// <param name="LongestFilledHours">Longest run filled by a straight line; 0 refuses every hole. Radiation is never filled so.</param>
public sealed record GapRule(int LongestFilledHours)
{
    /// <summary>Runs up to six hours (common practice for typical years); each is listed.</summary>
    public static GapRule Short { get; } = new(6);

    /// <summary>No hole at all.</summary>
    public static GapRule RefuseAny { get; } = new(0);
}
