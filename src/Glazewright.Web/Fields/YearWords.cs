using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Quantities;
using Glazewright.Science.Weather;
using Glazewright.Store.Library;

namespace Glazewright.Web.Fields;

/// <summary>A name that a field's word may be, and what it is.</summary>
/// <param name="Name">What is put into the field.</param>
/// <param name="Words">What it is; empty where the name says it.</param>
public sealed record Offer(string Name, string Words = "");

/// <summary>A weather year in words to choose it by: place, kind of file, its years, how far from the site.</summary>
public static class YearWords
{
    private const double KmPerMile = 1.609344;

    /// <summary>A year in one line.</summary>
    /// <param name="name">Its file's name.</param>
    /// <param name="year">The year.</param>
    /// <param name="site">Latitude and longitude of the site, °, north and east positive; null where they are not known.</param>
    /// <param name="units">Readers' units.</param>
    public static string Of(string name, YearSummary year, (double LatitudeDeg, double LongitudeDeg)? site, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(year);
        WeatherStation at = year.Station;
        string[] place = [.. ((string[])[at.Name, at.Region, at.Country]).Where(w => w.Any(char.IsLetterOrDigit))];
        string degrees = $"{Degrees(at.LatitudeDeg, "N", "S")} {Degrees(at.LongitudeDeg, "E", "W")}";
        string[] all =
        [
            place.Length > 0 ? string.Join(", ", place) : name, degrees, Kind(year), Years(year.RowYears),
            site is { } here ? Far(at.ApartKm(here.LatitudeDeg, here.LongitudeDeg), units) : "",
        ];
        return string.Join(" · ", all.Where(w => w.Length > 0));
    }

    /// <summary>Latitude and longitude of the site as typed, or null.</summary>
    /// <param name="document">The job.</param>
    public static (double LatitudeDeg, double LongitudeDeg)? SiteOf(JobDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        return Angle(document, "/site/latitude") is { } latitude && Angle(document, "/site/longitude") is { } longitude ? (latitude, longitude) : null;
    }

    private static double? Angle(JobDocument document, string pointer) =>
        document.Find(pointer) is TextNode text && QuantityReader.TryRead(text.Text, QuantityKind.Angle, out Quantity angle, out _) ? angle.Inside : null;

    // An EPW file says what it was made from.
    private static string Kind(YearSummary year) => year.Kind switch
    {
        WeatherOrigin.Tmy3File => "TMY3",
        WeatherOrigin.EpwFile when year.Station.Source.Any(char.IsLetterOrDigit) => $"EPW of {year.Station.Source}",
        WeatherOrigin.EpwFile => "EPW",
        _ => "",
    };

    // A typical year is put together of months of several.
    private static string Years(IReadOnlyList<int> years) =>
        years.Count == 0 ? ""
        : years.Count == 1 ? years[0].ToString(CultureInfo.InvariantCulture)
        : string.Create(CultureInfo.InvariantCulture, $"months of {years[0]} to {years[^1]}");

    private static string Far(double km, UnitSystem units)
    {
        double far = units == UnitSystem.Us ? km / KmPerMile : km;
        string unit = units == UnitSystem.Us ? "mi" : "km";
        return far < 1 ? $"less than 1 {unit} from the site" : string.Create(CultureInfo.InvariantCulture, $"{far:#,0} {unit} from the site");
    }

    private static string Degrees(double degrees, string plus, string minus) => string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(degrees):0.0}° {(degrees >= 0 ? plus : minus)}");
}
