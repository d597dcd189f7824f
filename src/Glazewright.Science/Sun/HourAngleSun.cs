using Glazewright.Science.Guards;
using static Glazewright.Science.Sun.Degrees;

namespace Glazewright.Science.Sun;

/// <summary>Elevation and azimuth from declination and hour angle: the textbook's spherical triangle.</summary>
/// <param name="ElevationDeg">Above the horizon, degrees.</param>
/// <param name="AzimuthDeg">Clockwise from north, 0 to 360.</param>
public readonly record struct SunAngles(double ElevationDeg, double AzimuthDeg);

/// <summary>Closed forms with a given declination, for daily totals, hand checks and drawings of a named day.</summary>
/// <remarks>Duffie &amp; Beckman, Solar Engineering of Thermal Processes, ch. 1 (from memory); FAO Irrigation and Drainage Paper 56, eqs 22 to 34.</remarks>
public static class HourAngleSun
{
    /// <summary>Sun angles without refraction or parallax.</summary>
    /// <param name="latitudeDeg">North positive, −90 to 90.</param>
    /// <param name="declinationDeg">−23.5 to 23.5 (guard −24 to 24).</param>
    /// <param name="hourAngleDeg">15° an hour from solar noon, afternoon positive, −180 to 180.</param>
    /// <returns>Degrees.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static SunAngles At(double latitudeDeg, double declinationDeg, double hourAngleDeg)
    {
        Within.Require(latitudeDeg, -90, 90);
        Within.Require(declinationDeg, -24, 24);
        Within.Require(hourAngleDeg, -180, 180);
        double azimuthDeg = Turn(180 + FromRad(Math.Atan2(
            Sin(hourAngleDeg) * Cos(declinationDeg),
            (Cos(hourAngleDeg) * Sin(latitudeDeg) * Cos(declinationDeg)) - (Sin(declinationDeg) * Cos(latitudeDeg)))));
        return new SunAngles(ElevationDegUnguarded(latitudeDeg, declinationDeg, hourAngleDeg), azimuthDeg);
    }

    /// <summary>Hour angle of sunset for the geometric centre, degrees: 0 in polar night, 180 in polar day.</summary>
    /// <param name="latitudeDeg">North positive, −90 to 90.</param>
    /// <param name="declinationDeg">−24 to 24.</param>
    /// <returns>Degrees, 0 to 180.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double SunsetHourAngleDeg(double latitudeDeg, double declinationDeg)
    {
        Within.Require(latitudeDeg, -90, 90);
        Within.Require(declinationDeg, -24, 24);
        return FromRad(Math.Acos(Math.Clamp(-Tan(latitudeDeg) * Tan(declinationDeg), -1, 1)));
    }

    /// <summary>Declination by day number, degrees; up to 0.85° off near the equinoxes: for daily totals, not for drawings.</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <returns>Degrees.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    /// <remarks>FAO-56, eq. 24.</remarks>
    public static double DeclinationFao56Deg(int dayOfYear)
    {
        Within.Require(dayOfYear, 1, 366);
        return FromRad(0.409 * Math.Sin((2 * Math.PI / 365 * dayOfYear) - 1.39));
    }

    /// <summary>Extraterrestrial radiation on a horizontal plane for a day.</summary>
    /// <param name="latitudeDeg">North positive, −90 to 90.</param>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <returns>MJ/m² day.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>FAO-56, eqs 21, 23, 24, 25; solar constant 0.0820 MJ/m² min.</remarks>
    public static double DailyExtraterrestrialFao56MJm2(double latitudeDeg, int dayOfYear)
    {
        double declinationDeg = DeclinationFao56Deg(dayOfYear);
        double sunsetDeg = SunsetHourAngleDeg(latitudeDeg, declinationDeg);
        double distanceFactor = 1 + (0.033 * Math.Cos(2 * Math.PI / 365 * dayOfYear));
        return 24 * 60 / Math.PI * 0.0820 * distanceFactor
            * DayIntegral(latitudeDeg, declinationDeg, -sunsetDeg, sunsetDeg) / 2;
    }

    /// <summary>∫ sin(elevation) dω between two hour angles, radians: times 12/π × 3600 s × the normal irradiance it is the energy on the horizontal.</summary>
    /// <param name="latitudeDeg">−90 to 90.</param>
    /// <param name="declinationDeg">−24 to 24.</param>
    /// <param name="fromHourAngleDeg">−180 to 180.</param>
    /// <param name="toHourAngleDeg">−180 to 180.</param>
    /// <returns>Radians.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double DayIntegral(
        double latitudeDeg, double declinationDeg, double fromHourAngleDeg, double toHourAngleDeg)
    {
        Within.Require(latitudeDeg, -90, 90);
        Within.Require(declinationDeg, -24, 24);
        Within.Require(fromHourAngleDeg, -180, 180);
        Within.Require(toHourAngleDeg, -180, 180);
        return (Cos(latitudeDeg) * Cos(declinationDeg) * (Sin(toHourAngleDeg) - Sin(fromHourAngleDeg)))
            + ((toHourAngleDeg - fromHourAngleDeg) * RadPerDeg * Sin(latitudeDeg) * Sin(declinationDeg));
    }

    internal static double ElevationDegUnguarded(double latitudeDeg, double declinationDeg, double hourAngleDeg) =>
        FromRad(Math.Asin(Math.Clamp(
            (Sin(latitudeDeg) * Sin(declinationDeg)) + (Cos(latitudeDeg) * Cos(declinationDeg) * Cos(hourAngleDeg)), -1, 1)));
}
