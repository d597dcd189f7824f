using Glazewright.Science.Guards;
using static Glazewright.Science.Sun.Degrees;

namespace Glazewright.Science.Sun;

/// <summary>What the sun does on one date, in hours of the zone's standard time counted from that date's midnight.</summary>
public abstract record SunDay
{
    private SunDay(double transitH) => TransitH = transitH;

    /// <summary>Moment of the sun's highest stand, h.</summary>
    public double TransitH { get; }

    /// <summary>An ordinary day.</summary>
    /// <param name="SunriseH">Upper limb appears, h (may be below 0 or above 24 where the zone is far from the sun's time).</param>
    /// <param name="TransitH">Highest stand, h.</param>
    /// <param name="SunsetH">Upper limb vanishes, h.</param>
    public sealed record RisesAndSets(double SunriseH, double TransitH, double SunsetH) : SunDay(TransitH)
    {
        /// <summary>Hours between sunrise and sunset.</summary>
        public double DayLengthH => SunsetH - SunriseH;
    }

    /// <summary>Polar day: the sun does not set in the 12 h before or after its highest stand.</summary>
    /// <param name="TransitH">Highest stand, h.</param>
    public sealed record StaysUp(double TransitH) : SunDay(TransitH);

    /// <summary>Polar night: the sun does not rise.</summary>
    /// <param name="TransitH">Moment it comes nearest to the horizon at noon, h.</param>
    public sealed record StaysDown(double TransitH) : SunDay(TransitH);
}

/// <summary>Sunrise, highest stand and sunset of a date.</summary>
public static class DaySpan
{
    /// <summary>Geocentric elevation of the sun's centre at sunrise and sunset: 34′ of refraction and 16′ of disc.</summary>
    public const double RiseElevationDeg = -0.8333;

    /// <summary>The sun's day at a place.</summary>
    /// <param name="year">Gregorian year, 1600 to 3000.</param>
    /// <param name="month">1 to 12.</param>
    /// <param name="day">1 to 31.</param>
    /// <param name="latitudeDeg">North positive, −90 to 90.</param>
    /// <param name="longitudeDeg">East positive, −180 to 180.</param>
    /// <param name="zoneHoursH">Standard time's offset from UT, h, −14 to 14.</param>
    /// <param name="ttMinusUtSeconds">Terrestrial minus universal time, s.</param>
    /// <returns>The closed cases of <see cref="SunDay"/>; on the day a polar season begins or ends an event that falls out is put at the sun's lowest stand.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>Horizon as in Reda &amp; Andreas 2004, appendix A.2 (−0.8333° of the geocentric centre), solved by bisection on the ephemeris itself.</remarks>
    public static SunDay Of(
        int year, int month, int day, double latitudeDeg, double longitudeDeg, double zoneHoursH, double ttMinusUtSeconds)
    {
        Within.Require(latitudeDeg, -90, 90);
        Within.Require(longitudeDeg, -180, 180);
        Within.Require(ttMinusUtSeconds, -200, 2000);
        double midnightJd = JulianDay.Of(year, month, day, 0, zoneHoursH);
        var place = new Place(midnightJd, latitudeDeg, longitudeDeg, ttMinusUtSeconds);

        double transitH = 12 - ((longitudeDeg / 15) - zoneHoursH);
        for (int i = 0; i < 4; i++)
        {
            transitH -= HalfTurn(place.HourAngleDeg(transitH)) / 15;
        }

        if (place.ElevationDeg(transitH) < RiseElevationDeg)
        {
            return new SunDay.StaysDown(transitH);
        }

        bool upBefore = place.ElevationDeg(transitH - 12) > RiseElevationDeg;
        bool upAfter = place.ElevationDeg(transitH + 12) > RiseElevationDeg;
        if (upBefore && upAfter)
        {
            return new SunDay.StaysUp(transitH);
        }

        return new SunDay.RisesAndSets(
            upBefore ? transitH - 12 : Crossing(place, transitH - 12, transitH),
            transitH,
            upAfter ? transitH + 12 : Crossing(place, transitH + 12, transitH));
    }

    private static double Crossing(Place place, double belowH, double aboveH)
    {
        // 12 h halved 22 times is 10 ms of time.
        for (int i = 0; i < 22; i++)
        {
            double middleH = (belowH + aboveH) / 2;
            if (place.ElevationDeg(middleH) < RiseElevationDeg)
            {
                belowH = middleH;
            }
            else
            {
                aboveH = middleH;
            }
        }

        return (belowH + aboveH) / 2;
    }

    private readonly record struct Place(double MidnightJd, double LatitudeDeg, double LongitudeDeg, double DeltaTSeconds)
    {
        internal double HourAngleDeg(double hourH)
        {
            SunEphemerisState sun = SunEphemeris.At(MidnightJd + (hourH / 24), DeltaTSeconds);
            return sun.ApparentSiderealDeg + LongitudeDeg - sun.RightAscensionDeg;
        }

        internal double ElevationDeg(double hourH)
        {
            SunEphemerisState sun = SunEphemeris.At(MidnightJd + (hourH / 24), DeltaTSeconds);
            double hourAngleDeg = sun.ApparentSiderealDeg + LongitudeDeg - sun.RightAscensionDeg;
            return HourAngleSun.ElevationDegUnguarded(LatitudeDeg, sun.DeclinationDeg, hourAngleDeg);
        }
    }
}
