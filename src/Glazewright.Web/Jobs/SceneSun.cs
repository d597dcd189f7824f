using Glazewright.Design.Brief;
using Glazewright.Design.Form;
using Glazewright.Science.Sun;

namespace Glazewright.Web.Jobs;

/// <summary>Where the sun stands in the view in three dimensions.</summary>
/// <param name="ElevationDeg">Above the horizon, corrected for refraction, degrees.</param>
/// <param name="AzimuthDeg">Clockwise from true north, 0 to 360.</param>
public sealed record SceneSun(double ElevationDeg, double AzimuthDeg)
{
    // An ordinary year of 365 days: which one moves the sun by less than the width of a slider's step.
    private const int Year = 2026;

    /// <summary>The sun over a site.</summary>
    /// <param name="site">The site; its standard offset from UTC is used all year.</param>
    /// <param name="dayOfYear">1 to 365.</param>
    /// <param name="clockH">Standard time, h, 0 to 24.</param>
    /// <remarks>Reda &amp; Andreas 2004, Solar Energy 76:577, at 1,013 hPa and 10 °C: refraction differs by less than 0.1° at the horizon elsewhere.</remarks>
    public static SceneSun Of(Site site, int dayOfYear, double clockH)
    {
        ArgumentNullException.ThrowIfNull(site);
        DateOnly day = new DateOnly(Year, 1, 1).AddDays(Math.Clamp(dayOfYear, 1, 365) - 1);
        double julian = JulianDay.Of(Year, day.Month, day.Day, Math.Clamp(clockH, 0, 24), site.ZoneHours);
        SunPosition sun = SolarPosition.At(julian, site.LatitudeDeg, site.LongitudeDeg, site.ElevationM, 101_325, 10, SolarPosition.DeltaTSeconds);
        return new SceneSun(sun.ElevationDeg, sun.AzimuthDeg);
    }

    /// <summary>A unit vector to the sun: x east, y up, z south.</summary>
    public (double X, double Y, double Z) Toward
    {
        get
        {
            (double up, double flat) = Math.SinCos(ElevationDeg * Math.PI / 180);
            (double east, double north) = Math.SinCos(AzimuthDeg * Math.PI / 180);
            return (flat * east, up, -flat * north);
        }
    }

    /// <summary>The nearest of eight points of the compass.</summary>
    public string From => Compass.Word(AzimuthDeg);
}
