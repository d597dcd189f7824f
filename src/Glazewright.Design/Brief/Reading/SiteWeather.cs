using Glazewright.Science.Weather;

namespace Glazewright.Design.Brief.Reading;

/// <summary>A job's hourly year when it has no file, and what a file says of the place.</summary>
public static class SiteWeather
{
    // Normals seldom say where the wind comes from; west is common in the middle latitudes (common practice).
    private const double PrevailingWindFromDeg = 270;

    /// <summary>What a weather year's header says of the place.</summary>
    /// <param name="year">The year.</param>
    /// <returns>Defaults for a job that does not say.</returns>
    public static SiteHint HintOf(WeatherYear year)
    {
        ArgumentNullException.ThrowIfNull(year);
        WeatherStation s = year.Station;
        return new SiteHint(s.Name, s.LatitudeDeg, s.LongitudeDeg, s.ElevationM, s.ZoneH, WindRose.WarmDaylight(year));
    }

    /// <summary>The synthetic year of a site with normals.</summary>
    /// <param name="site">The site; its weather must be normals.</param>
    /// <returns>A year that says it is not measured.</returns>
    /// <exception cref="ArgumentException">The site names a file.</exception>
    public static WeatherYear Synthetic(Site site)
    {
        ArgumentNullException.ThrowIfNull(site);
        if (site.Weather is not WeatherChoice.Normals normals)
        {
            throw new ArgumentException("The site names a weather file.", nameof(site));
        }

        WeatherStation station = new(site.Place, "", "", "synthetic", "", site.LatitudeDeg, site.LongitudeDeg, site.ZoneHours, site.ElevationM);
        MonthlyNormals[] months = [.. normals.Months.Select((m, i) => MonthlyNormals.FromGlobal(
            station, i + 1, m.MeanC, m.MeanMaxC, m.MeanMinC, m.DayToDaySdK, m.DayToDayLag1Fraction, m.DewPointC, m.GlobalWhPerM2Day, m.ClearnessSdFraction, m.WindMs))];
        return SyntheticYear.Make(station, months, (ulong)normals.Seed, PrevailingWindFromDeg);
    }
}
