using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Science.Sun;

namespace Glazewright.Design.LightMaps;

/// <summary>The sun of one day, by the site's clock.</summary>
/// <param name="Month">1 to 12.</param>
/// <param name="Sun">Sunrise, highest stand and sunset in hours of the site's standard time; or that it stays up or down.</param>
/// <param name="NoonElevationDeg">Refracted elevation at the highest stand, degrees.</param>
/// <param name="NoonAzimuthDeg">Its bearing then, degrees clockwise from north.</param>
/// <param name="ProfileDeg">Elevation of the noon sun as the house's cross-section shows it, degrees; null with the sun down or shining along the ridge.</param>
/// <param name="FromLeft">The noon sun shines on the left wall's side.</param>
public readonly record struct SunOfDay(int Month, SunDay Sun, double NoonElevationDeg, double NoonAzimuthDeg, double? ProfileDeg, bool FromLeft);

/// <summary>Sunrise, noon and sunset at the site.</summary>
public static class SunDays
{
    /// <summary>The year whose sun is told; other years differ by up to 2 minutes.</summary>
    public const int Year = 2011;

    /// <summary>The day of each month that is told: the solstices and equinoxes fall on or beside it.</summary>
    public const int Day = 21;

    // Within a degree of the ridge's direction the section shows the sun overhead, whatever its height.
    private const double LeastAcrossDeg = 1;

    /// <summary>The 21st of each month.</summary>
    /// <param name="site">The site.</param>
    /// <returns>Twelve days, January first.</returns>
    /// <remarks>Events as in Reda &amp; Andreas 2004, appendix A.2: a flat horizon, 34′ of refraction, 16′ of disc. Standard time all year.</remarks>
    public static EqList<SunOfDay> Of(Site site)
    {
        ArgumentNullException.ThrowIfNull(site);
        return Enumerable.Range(1, 12).Select(month => Of(site, month)).ToEqList();
    }

    private static SunOfDay Of(Site site, int month)
    {
        var day = DaySpan.Of(Year, month, Day, site.LatitudeDeg, site.LongitudeDeg, site.ZoneHours, SolarPosition.DeltaTSeconds);
        double elevationM = Math.Clamp(site.ElevationM, -500, 9000);
        SunPosition noon = SolarPosition.At(
            JulianDay.Of(Year, month, Day, day.TransitH, site.ZoneHours), site.LatitudeDeg, site.LongitudeDeg, elevationM,
            101_325 * Math.Pow(1 - (2.25577e-5 * elevationM), 5.25588), 10, SolarPosition.DeltaTSeconds);
        double leftDeg = site.RangeBearingDeg + 90;
        double acrossDeg = Math.Abs(Math.IEEERemainder(noon.AzimuthDeg - leftDeg, 360));
        bool fromLeft = acrossDeg < 90;
        double? profileDeg = Math.Abs(acrossDeg - 90) > LeastAcrossDeg
            && PlaneToSun.TryProfileAngle(noon.ElevationDeg, noon.AzimuthDeg, fromLeft ? leftDeg : leftDeg + 180, out double found) ? found : null;
        return new SunOfDay(month, day, noon.ElevationDeg, noon.AzimuthDeg, profileDeg, fromLeft);
    }
}
