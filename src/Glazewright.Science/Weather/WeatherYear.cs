namespace Glazewright.Science.Weather;

/// <summary>
/// One year of hourly weather at a place. Hour h (0 to 8,759) ends at its stamp; dry bulb, dew point, humidity, pressure and wind hold
/// <em>at</em> the stamp, radiation is the energy of the hour (Wh/m² = mean W/m²) centred <see cref="RadiationOffsetH"/> from the stamp.
/// Local standard time always; daylight saving never enters.
/// </summary>
public sealed record WeatherYear
{
    /// <summary>Where it was measured or made for.</summary>
    public required WeatherStation Station { get; init; }

    /// <summary>Where the numbers come from.</summary>
    public required WeatherProvenance Provenance { get; init; }

    /// <summary>Design values printed in the file's header, or <see cref="HeaderConditions.None"/>.</summary>
    public required HeaderConditions Conditions { get; init; }

    /// <summary>Dry bulb at the stamp, °C. Complete.</summary>
    public required HourlyColumn DryBulbC { get; init; }

    /// <summary>Dew point at the stamp, °C, never above the dry bulb. Complete.</summary>
    public required HourlyColumn DewPointC { get; init; }

    /// <summary>Relative humidity as the file gives it, % (the dew point is the master; the two may differ by rounding).</summary>
    public required HourlyColumn RhPercent { get; init; }

    /// <summary>Station pressure, Pa. Complete.</summary>
    public required HourlyColumn PressurePa { get; init; }

    /// <summary>Global horizontal radiation, Wh/m² in the hour. Complete.</summary>
    public required HourlyColumn GhiWhm2 { get; init; }

    /// <summary>Direct normal radiation, Wh/m² in the hour. Complete.</summary>
    public required HourlyColumn DniWhm2 { get; init; }

    /// <summary>Diffuse horizontal radiation, Wh/m² in the hour. Complete.</summary>
    public required HourlyColumn DhiWhm2 { get; init; }

    /// <summary>Horizontal infrared from the sky, Wh/m² in the hour. Complete (rebuilt hours are listed in <see cref="Gaps"/>).</summary>
    public required HourlyColumn HorizontalInfraredWhm2 { get; init; }

    /// <summary>Wind speed at the station's height (10 m by convention), m/s. Complete.</summary>
    public required HourlyColumn WindMs { get; init; }

    /// <summary>Direction the wind comes from, degrees from north, 0 to 360. Complete.</summary>
    public required HourlyColumn WindFromDeg { get; init; }

    /// <summary>Opaque sky cover, tenths, 0 to 10. May be missing.</summary>
    public required HourlyColumn OpaqueCoverTenths { get; init; }

    /// <summary>Snow on the ground, m. May be missing; zero in every hour of a snowy place means "not recorded" and is turned to missing.</summary>
    public required HourlyColumn SnowDepthM { get; init; }

    /// <summary>Rain: 1 in hours with liquid precipitation, 0 in dry ones, not-a-number where the file does not say.</summary>
    public HourlyColumn RainFraction { get; init; } = HourlyColumn.Unknown;

    /// <summary>Hours from the stamp to the centre of the radiation's hour: −0.5 for hour-ending means, the convention of EPW and TMY3.</summary>
    public double RadiationOffsetH { get; init; } = -0.5;

    /// <summary>What was missing and how it was made up. Nothing is made up without an entry.</summary>
    public required IReadOnlyList<WeatherGap> Gaps { get; init; }

    /// <summary>Impossible values that were taken out, field by field, and how those hours were filled.</summary>
    public IReadOnlyList<WeatherRejected> Rejected { get; init; } = [];

    /// <summary>Oddities of the file that a reader of the results should know.</summary>
    public required IReadOnlyList<WeatherNote> Notes { get; init; }

    /// <summary>The same year with the sun moved: for a file whose closure shows that its radiation is not the mean of the hour that ends at the stamp.</summary>
    /// <param name="offsetH">Hours from stamp to centre of the radiation's hour, −1 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside −1 to 1.</exception>
    public WeatherYear WithRadiationOffset(double offsetH)
    {
        Guards.Within.Require(offsetH, -1, 1);
        return this with { RadiationOffsetH = offsetH, Notes = [.. Notes, new WeatherNote(WeatherWords.SunMoved(offsetH))] };
    }
}

/// <summary>A place.</summary>
/// <param name="Name">As the file names it.</param>
/// <param name="Region">State or province as the file gives it.</param>
/// <param name="Country">As the file gives it.</param>
/// <param name="Source">Data source as the file gives it.</param>
/// <param name="StationId">Station number as the file gives it.</param>
/// <param name="LatitudeDeg">North positive, −90 to 90.</param>
/// <param name="LongitudeDeg">East positive, −180 to 180.</param>
/// <param name="ZoneH">Standard time less universal time, hours, −12 to 14; fractions occur.</param>
/// <param name="ElevationM">Above sea level, m.</param>
public sealed record WeatherStation(
    string Name, string Region, string Country, string Source, string StationId,
    double LatitudeDeg, double LongitudeDeg, double ZoneH, double ElevationM)
{
    /// <summary>From a place to the station along the ground, km.</summary>
    /// <param name="latitudeDeg">North positive.</param>
    /// <param name="longitudeDeg">East positive.</param>
    public double ApartKm(double latitudeDeg, double longitudeDeg)
    {
        const double Rad = Math.PI / 180, EarthKm = 6371;
        double cosine = Math.Sin(latitudeDeg * Rad) * Math.Sin(LatitudeDeg * Rad)
            + Math.Cos(latitudeDeg * Rad) * Math.Cos(LatitudeDeg * Rad) * Math.Cos((longitudeDeg - LongitudeDeg) * Rad);
        return EarthKm * Math.Acos(Math.Clamp(cosine, -1, 1));
    }
}

/// <summary>Where a weather year comes from.</summary>
/// <param name="Kind">File or synthetic.</param>
/// <param name="Label">One line for every output that rests on it.</param>
/// <param name="ContentSha256">Lower-case hex hash of the uncompressed file, or of the normals and seed of a synthetic year.</param>
/// <param name="RowYears">Distinct years in the file's year column, ascending; empty when it has none.</param>
public sealed record WeatherProvenance(WeatherOrigin Kind, string Label, string ContentSha256, IReadOnlyList<int> RowYears);

/// <summary>Kinds of origin.</summary>
public enum WeatherOrigin
{
    /// <summary>An EPW file.</summary>
    EpwFile,

    /// <summary>A TMY3 CSV file.</summary>
    Tmy3File,

    /// <summary>Made from monthly normals with a seed; not measured.</summary>
    Synthetic,
}

/// <summary>Hours that the file does not have and how they were made up.</summary>
/// <param name="Field">The quantity.</param>
/// <param name="Hours">How many hours.</param>
/// <param name="FirstHour">First such hour, 0 to 8,759.</param>
/// <param name="How">How it was made up, in words.</param>
/// <param name="FirstLine">Line of the file that holds the first; 0 when there is no file.</param>
public sealed record WeatherGap(string Field, int Hours, int FirstHour, string How, int FirstLine = 0);

/// <summary>Values of a file that cannot be: taken out and filled.</summary>
/// <param name="Field">The quantity.</param>
/// <param name="Unit">Unit of value and limits.</param>
/// <param name="Hours">How many hours.</param>
/// <param name="FirstHour">First such hour, 0 to 8,759.</param>
/// <param name="FirstLine">Its line in the file.</param>
/// <param name="FirstValue">What stands there.</param>
/// <param name="LeastValue">Least that can be.</param>
/// <param name="MostValue">Most that can be.</param>
/// <param name="How">How the hours were filled, in words.</param>
public sealed record WeatherRejected(string Field, string Unit, int Hours, int FirstHour, int FirstLine, double FirstValue, double LeastValue, double MostValue, string How);

/// <summary>Something about the file that its user should know.</summary>
/// <param name="Text">In words.</param>
/// <param name="Gravity">How grave.</param>
public sealed record WeatherNote(string Text, WeatherGravity Gravity = WeatherGravity.Note);
