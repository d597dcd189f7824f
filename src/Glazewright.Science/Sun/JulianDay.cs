using Glazewright.Science.Guards;

namespace Glazewright.Science.Sun;

/// <summary>Julian days from calendar dates of the Gregorian calendar.</summary>
public static class JulianDay
{
    /// <summary>Length of a day, h.</summary>
    private const double DayH = 24.0;

    /// <summary>Julian day of a moment given in a zone's standard time.</summary>
    /// <param name="year">Gregorian year, 1600 to 3000.</param>
    /// <param name="month">1 to 12.</param>
    /// <param name="day">Day of the month, 1 to 31; the calendar's own length is not asked for, day 31 of June is 1 July.</param>
    /// <param name="hourH">Clock hour, decimal, −48 to 72 (hours outside 0..24 reach into the neighbouring days).</param>
    /// <param name="zoneHoursH">Zone's offset from UT, h, east positive, −14 to 14; never daylight saving.</param>
    /// <returns>Julian day, days (UT).</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>Reda &amp; Andreas 2004 (NREL/TP-560-34302, rev. 2008), eq. 4, Gregorian branch.</remarks>
    public static double Of(int year, int month, int day, double hourH, double zoneHoursH)
    {
        Within.Require(year, 1600, 3000);
        Within.Require(month, 1, 12);
        Within.Require(day, 1, 31);
        Within.Require(hourH, -48, 72);
        Within.Require(zoneHoursH, -14, 14);
        int y = month > 2 ? year : year - 1;
        int m = month > 2 ? month : month + 12;
        int century = y / 100;
        double leap = 2 - century + (century / 4);
        return Math.Floor(365.25 * (y + 4716)) + Math.Floor(30.6001 * (m + 1)) + day + leap - 1524.5
            + ((hourH - zoneHoursH) / DayH);
    }
}
