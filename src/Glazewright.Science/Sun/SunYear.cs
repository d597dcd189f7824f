using Glazewright.Science.Guards;
using static Glazewright.Science.Sun.Degrees;

namespace Glazewright.Science.Sun;

/// <summary>
/// Unit vectors to the refracted sun for every minute (or every few minutes) of a 365-day year in a zone's standard time: east, north and up.
/// </summary>
/// <remarks>
/// The ephemeris is computed once a day at midnight and carried through the day by the cubic through four midnights; parallax and refraction are
/// computed each minute. Against the full algorithm minute by minute the tests find less than 0.0003°.
/// </remarks>
public sealed class SunYear
{
    /// <summary>Minutes of a 365-day year.</summary>
    public const int MinutesInYear = 525_600;

    private const int MinutesInDay = 1440;
    private readonly double[] east;
    private readonly double[] north;
    private readonly double[] up;
    private readonly double[] distanceAu;

    private SunYear(double[] east, double[] north, double[] up, double[] distanceAu)
    {
        this.east = east;
        this.north = north;
        this.up = up;
        this.distanceAu = distanceAu;
    }

    /// <summary>East part of the unit vector, one value a step.</summary>
    public ReadOnlySpan<double> East => east;

    /// <summary>North part.</summary>
    public ReadOnlySpan<double> North => north;

    /// <summary>Upward part: the cosine of the refracted zenith angle, negative at night.</summary>
    public ReadOnlySpan<double> Up => up;

    /// <summary>Earth to sun at each day's local midnight, AU, 365 values.</summary>
    public ReadOnlySpan<double> DistanceAu => distanceAu;

    /// <summary>Bearing of the sun in a step, degrees clockwise from north, 0 to 360.</summary>
    /// <param name="step">Step of the year; minute of the year when the steps are minutes.</param>
    /// <returns>Degrees.</returns>
    public double AzimuthDeg(int step) => Turn(FromRad(Math.Atan2(east[step], north[step])));

    /// <summary>Refracted elevation in a step, degrees.</summary>
    /// <param name="step">Step of the year.</param>
    /// <returns>Degrees, negative at night.</returns>
    public double ElevationDeg(int step) => FromRad(Math.Asin(Math.Clamp(up[step], -1, 1)));

    /// <summary>Computes the year.</summary>
    /// <param name="year">A year without 29 February, 1601 to 2999: the ephemeris of that year is used.</param>
    /// <param name="latitudeDeg">North positive, −90 to 90.</param>
    /// <param name="longitudeDeg">East positive, −180 to 180.</param>
    /// <param name="zoneHoursH">Standard time's offset from UT, h, −14 to 14.</param>
    /// <param name="elevationM">Above sea level, m, −500 to 9000.</param>
    /// <param name="pressurePa">Yearly mean station pressure for the refraction, Pa, 30 000 to 110 000.</param>
    /// <param name="airC">Yearly mean air temperature for the refraction, °C, −80 to 60.</param>
    /// <param name="momentFraction">Where in each step the sun is taken: 0 its start, 0.5 its middle, 1 its end.</param>
    /// <param name="stepMinutes">Length of a step, a divisor of 1440.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range, NaN, a leap year, or steps that do not fill a day.</exception>
    public static SunYear Compute(
        int year,
        double latitudeDeg,
        double longitudeDeg,
        double zoneHoursH,
        double elevationM,
        double pressurePa,
        double airC,
        double momentFraction = 0.5,
        int stepMinutes = 1)
    {
        Within.Require(year, 1601, 2999);
        if (DateTime.IsLeapYear(year))
        {
            throw new ArgumentOutOfRangeException(nameof(year), year, "Must be a year without 29 February.");
        }

        Within.Require(latitudeDeg, -90, 90);
        Within.Require(longitudeDeg, -180, 180);
        Within.Require(elevationM, -500, 9000);
        Within.Require(pressurePa, 30_000, 110_000);
        Within.Require(airC, -80, 60);
        Within.Require(momentFraction, 0, 1);
        if (stepMinutes < 1 || MinutesInDay % stepMinutes != 0)
        {
            throw new ArgumentOutOfRangeException(nameof(stepMinutes), stepMinutes, "Must divide a day of 1440 minutes.");
        }


        double firstJd = JulianDay.Of(year, 1, 1, 0, zoneHoursH);
        var knots = new Knots(firstJd, longitudeDeg);
        ObserverOnEarth observer = ObserverOnEarth.At(latitudeDeg, elevationM);
        var table = new SunYear(
            new double[MinutesInYear / stepMinutes], new double[MinutesInYear / stepMinutes],
            new double[MinutesInYear / stepMinutes], new double[365]);
        int steps = MinutesInDay / stepMinutes;
        double sinLatitude = Sin(latitudeDeg);
        double cosLatitude = Cos(latitudeDeg);
        double refractionScale = pressurePa / 101_000 * (283 / (273 + airC)) * 1.02 / 60;

        for (int day = 0; day < 365; day++)
        {
            table.distanceAu[day] = knots.DistanceAu[day + 1];
            Cubic hour = knots.HourAngle(day);
            Cubic declination = knots.Declination(day);
            double sinParallax = Sin(8.794 / (3600 * knots.DistanceAu[day + 1]));
            double across = observer.EquatorialRadii * sinParallax;
            double along = observer.PolarRadii * sinParallax;
            for (int m = 0; m < steps; m++)
            {
                double t = (m + momentFraction) / steps;
                (double sinHour, double cosHour) = Math.SinCos(hour.At(t) * RadPerDeg);
                (double sinDeclination, double cosDeclination) = Math.SinCos(declination.At(t) * RadPerDeg);

                // Seen from the observer: the geocentric direction less the observer's own place, in units of the sun's distance.
                double toEquator = (cosDeclination * cosHour) - across;
                double west = cosDeclination * sinHour;
                double toPole = sinDeclination - along;
                double scale = 1 / Math.Sqrt((toEquator * toEquator) + (west * west) + (toPole * toPole));
                double upward = ((cosLatitude * toEquator) + (sinLatitude * toPole)) * scale;
                double northward = ((cosLatitude * toPole) - (sinLatitude * toEquator)) * scale;
                double eastward = -west * scale;
                Refract(ref eastward, ref northward, ref upward, refractionScale);
                int step = (day * steps) + m;
                table.east[step] = eastward;
                table.north[step] = northward;
                table.up[step] = upward;
            }
        }

        return table;
    }

    private static void Refract(ref double east, ref double north, ref double up, double refractionScale)
    {
        // Below −0.83337° the whole disc is hidden and the algorithm applies no refraction.
        if (up < -0.0145447)
        {
            return;
        }

        double elevationDeg = FromRad(Math.Asin(Math.Min(up, 1)));
        double liftRad = RadPerDeg * refractionScale / Tan(elevationDeg + (10.3 / (elevationDeg + 5.11)));
        double flat = Math.Sqrt(Math.Max(0, 1 - (up * up)));
        (double sinLift, double cosLift) = Math.SinCos(liftRad);
        if (flat > 1e-9)
        {
            double shrink = cosLift - (up * sinLift / flat);
            east *= shrink;
            north *= shrink;
        }

        up = (up * cosLift) + (flat * sinLift);
    }

    /// <summary>a + b t + c t² + d t³ on 0..1.</summary>
    private readonly record struct Cubic(double A, double B, double C, double D)
    {
        internal double At(double t) => A + (t * (B + (t * (C + (t * D)))));

        /// <summary>Through values at t = −1, 0, 1, 2 (Newton's forward differences, rearranged to powers).</summary>
        internal static Cubic Through(double before, double start, double end, double after)
        {
            double d = (after - (3 * end) + (3 * start) - before) / 6;
            double c = ((end + before) / 2) - start;
            double b = end - start - c - d;
            return new Cubic(start, b, c, d);
        }
    }

    /// <summary>Midnights −1..366 of the year.</summary>
    private sealed class Knots
    {
        private readonly double[] hourAngleDeg = new double[368];
        private readonly double[] declinationDeg = new double[368];

        internal Knots(double firstJd, double longitudeDeg)
        {
            for (int i = 0; i < 368; i++)
            {
                SunEphemerisState sun = SunEphemeris.At(firstJd + i - 1, SolarPosition.DeltaTSeconds);
                double hour = HalfTurn(sun.ApparentSiderealDeg + longitudeDeg - sun.RightAscensionDeg);

                // Local hour angle minus whole turns: near-constant from midnight to midnight, unwrapped against the day before.
                hourAngleDeg[i] = i == 0 ? hour : hourAngleDeg[i - 1] + HalfTurn(hour - hourAngleDeg[i - 1]);
                declinationDeg[i] = sun.DeclinationDeg;
                DistanceAu[i] = sun.DistanceAu;
            }
        }

        internal double[] DistanceAu { get; } = new double[368];

        internal Cubic HourAngle(int day)
        {
            Cubic drift = Through(hourAngleDeg, day);
            return drift with { B = drift.B + 360 };
        }

        internal Cubic Declination(int day) => Through(declinationDeg, day);

        private static Cubic Through(double[] values, int day) =>
            Cubic.Through(values[day], values[day + 1], values[day + 2], values[day + 3]);
    }
}
