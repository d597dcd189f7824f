using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.LightMaps;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Science.Sun;

namespace Glazewright.Papers.Light;

/// <summary>Sunrise, noon, sunset and day length through the year, by the site's clock.</summary>
public static class SunTable
{
    /// <summary>The table.</summary>
    /// <param name="site">The site.</param>
    public static Table Of(Site site) => new(
        [
            new Column("Day", 30), new Column("Sunrise", 22, Along.End), new Column("Highest", 22, Along.End), new Column("Sunset", 22, Along.End),
            new Column("Day length", 26, Along.End), new Column("Noon sun", 24, Along.End), new Column("in the section", 28, Along.End),
        ],
        [.. SunDays.Of(site).Select(Row)]);

    /// <summary>What stands under it.</summary>
    /// <param name="site">The site.</param>
    public static string Note(Site site)
    {
        ArgumentNullException.ThrowIfNull(site);
        TimeSpan offset = TimeSpan.FromHours(Math.Abs(site.ZoneHours));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"Standard time, UTC{(site.ZoneHours < 0 ? "−" : "+")}{offset.Hours}:{offset.Minutes:00}; add the hour while summer time is kept. Flat horizon, upper edge of the sun, usual refraction; years differ by up to 2 min. In the section: angle of the noon rays across the ridge, and the side they come from.");
    }

    private static IReadOnlyList<string> Row(SunOfDay day)
    {
        string name = $"{SunDays.Day} {Said.Month(day.Month)}";
        string noon = string.Create(CultureInfo.InvariantCulture, $"{day.NoonElevationDeg:0.0}°").Replace('-', '−');
        string section = day.ProfileDeg is double p ? string.Create(CultureInfo.InvariantCulture, $"{p:0.0}° {(day.FromLeft ? "left" : "right")}") : "–";
        return day.Sun switch
        {
            SunDay.RisesAndSets s => [name, Clock(s.SunriseH), Clock(s.TransitH), Clock(s.SunsetH), Length(s.DayLengthH), noon, section],
            SunDay.StaysUp s => [name, "stays up", Clock(s.TransitH), "–", Length(24), noon, section],
            _ => [name, "stays down", Clock(day.Sun.TransitH), "–", Length(0), noon, "–"],
        };
    }

    private static string Clock(double timeH)
    {
        int minute = (int)Math.Floor((timeH * 60) + 0.5);
        minute = ((minute % 1440) + 1440) % 1440;
        return string.Create(CultureInfo.InvariantCulture, $"{minute / 60}:{minute % 60:00}");
    }

    private static string Length(double lengthH)
    {
        int minutes = (int)Math.Floor((lengthH * 60) + 0.5);
        return string.Create(CultureInfo.InvariantCulture, $"{minutes / 60} h {minutes % 60:00} min");
    }
}
