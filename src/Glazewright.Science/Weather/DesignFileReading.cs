namespace Glazewright.Science.Weather;

/// <summary>What came of reading a design-day file.</summary>
public abstract record DesignFileReading
{
    private DesignFileReading()
    {
    }

    /// <summary>The file has no design days: some stations have none.</summary>
    public sealed record None : DesignFileReading;

    /// <summary>Design values of the yearly design days.</summary>
    /// <param name="Values">The values; those a design-day file does not print are null.</param>
    /// <param name="Station">Coordinates of the file's place; null when it has no place.</param>
    public sealed record Read(DesignConditions Values, DesignPlace? Station) : DesignFileReading;

    /// <summary>The file cannot serve: every problem found, in file order.</summary>
    /// <param name="Problems">The problems, with lines.</param>
    public sealed record Refused(IReadOnlyList<WeatherProblem> Problems) : DesignFileReading;
}

/// <summary>Place of a design-day file.</summary>
/// <param name="LatitudeDeg">North positive.</param>
/// <param name="LongitudeDeg">East positive.</param>
public sealed record DesignPlace(double LatitudeDeg, double LongitudeDeg);
