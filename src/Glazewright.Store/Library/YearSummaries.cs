using System.Globalization;
using Glazewright.Science.Weather;
using Microsoft.EntityFrameworkCore;

namespace Glazewright.Store.Library;

/// <summary>What a weather year is chosen by.</summary>
/// <param name="Station">Where it was measured or made for.</param>
/// <param name="Kind">File or synthetic.</param>
/// <param name="RowYears">Distinct years in the file's year column, ascending; empty when it has none.</param>
public sealed record YearSummary(WeatherStation Station, WeatherOrigin Kind, IReadOnlyList<int> RowYears)
{
    /// <summary>That of a year.</summary>
    /// <param name="year">The year.</param>
    public static YearSummary Of(WeatherYear year)
    {
        ArgumentNullException.ThrowIfNull(year);
        return new YearSummary(year.Station, year.Provenance.Kind, year.Provenance.RowYears);
    }
}

/// <summary>Summaries of the library's years, beside them in the store.</summary>
internal static class YearSummaries
{
    // Another number when what is read from a file's head changes: the rows are then made anew.
    private const int Form = 1;

    public static async Task<Dictionary<string, YearSummary>> AllAsync(StoreContext context, CancellationToken cancel)
    {
        LibraryYearRow[] rows = await context.LibraryYears.AsNoTracking().Where(r => r.Form == Form).ToArrayAsync(cancel);
        return rows.ToDictionary(r => r.Sha256, Of);
    }

    // In words that both databases know: two programs may read one year at once.
    public static Task KeepAsync(StoreContext context, string sha256, YearSummary year, CancellationToken cancel)
    {
        WeatherStation at = year.Station;
        string origin = year.Kind.ToString();
        string years = string.Join(' ', year.RowYears.Select(y => y.ToString(CultureInfo.InvariantCulture)));
        return context.Database.ExecuteSqlAsync(
            $"""
            INSERT INTO library_years (sha256, form, name, region, country, source, station_id, latitude_deg, longitude_deg, zone_h, elevation_m, origin, row_years)
            VALUES ({sha256}, {Form}, {at.Name}, {at.Region}, {at.Country}, {at.Source}, {at.StationId}, {at.LatitudeDeg}, {at.LongitudeDeg}, {at.ZoneH}, {at.ElevationM}, {origin}, {years})
            ON CONFLICT (sha256) DO UPDATE SET form = excluded.form, name = excluded.name, region = excluded.region, country = excluded.country, source = excluded.source, station_id = excluded.station_id,
                latitude_deg = excluded.latitude_deg, longitude_deg = excluded.longitude_deg, zone_h = excluded.zone_h, elevation_m = excluded.elevation_m, origin = excluded.origin, row_years = excluded.row_years
            """,
            cancel);
    }

    private static YearSummary Of(LibraryYearRow row) => new(
        new WeatherStation(row.Name, row.Region, row.Country, row.Source, row.StationId, row.LatitudeDeg, row.LongitudeDeg, row.ZoneH, row.ElevationM),
        Enum.Parse<WeatherOrigin>(row.Origin),
        [.. row.RowYears.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(y => int.Parse(y, CultureInfo.InvariantCulture))]);
}
