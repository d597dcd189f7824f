using Glazewright.Science.Guards;
using static Glazewright.Science.Sun.Degrees;

namespace Glazewright.Science.Sun;

/// <summary>Where the sun stands for an observer.</summary>
/// <param name="ZenithDeg">Topocentric zenith angle, corrected for refraction.</param>
/// <param name="ElevationGeometricDeg">Topocentric elevation without refraction.</param>
/// <param name="AzimuthDeg">Clockwise from true north, 0 to 360.</param>
/// <param name="DeclinationDeg">Geocentric declination.</param>
/// <param name="EquationOfTimeMin">Apparent minus mean solar time, min.</param>
/// <param name="DistanceAu">Earth to sun, AU.</param>
public readonly record struct SunPosition(
    double ZenithDeg,
    double ElevationGeometricDeg,
    double AzimuthDeg,
    double DeclinationDeg,
    double EquationOfTimeMin,
    double DistanceAu)
{
    /// <summary>Elevation above the horizon, corrected for refraction, degrees.</summary>
    public double ElevationDeg => 90 - ZenithDeg;
}

/// <summary>A position with its intermediate results, as a worked example prints them.</summary>
/// <param name="Ephemeris">Geocentric place.</param>
/// <param name="HourAngleDeg">H, observer's local hour angle, west positive, 0 to 360.</param>
/// <param name="ParallaxDeg">ξ.</param>
/// <param name="RightAscensionParallaxDeg">Δα.</param>
/// <param name="TopocentricRightAscensionDeg">α′.</param>
/// <param name="TopocentricDeclinationDeg">δ′.</param>
/// <param name="TopocentricHourAngleDeg">H′.</param>
/// <param name="RefractionDeg">Δe.</param>
/// <param name="AstronomersAzimuthDeg">Γ, westward from south.</param>
/// <param name="Position">The answer.</param>
public sealed record SunPositionWorking(
    SunEphemerisState Ephemeris,
    double HourAngleDeg,
    double ParallaxDeg,
    double RightAscensionParallaxDeg,
    double TopocentricRightAscensionDeg,
    double TopocentricDeclinationDeg,
    double TopocentricHourAngleDeg,
    double RefractionDeg,
    double AstronomersAzimuthDeg,
    SunPosition Position);

/// <summary>The full NREL solar position algorithm; its authors claim 0.0003° for the years −2000 to 6000.</summary>
/// <remarks>Reda &amp; Andreas 2004, Solar Energy 76:577; NREL/TP-560-34302 (rev. 2008).</remarks>
public static class SolarPosition
{
    /// <summary>Terrestrial minus universal time to use when the job gives none, s (observed 2020–2026: 69.1 to 69.4; from memory).</summary>
    public const double DeltaTSeconds = 69.2;

    /// <summary>Refraction at the horizon assumed when deciding whether the sun's disc can be seen at all, degrees.</summary>
    private const double HorizonRefractionDeg = 0.5667;

    /// <summary>Half of the sun's disc, degrees.</summary>
    private const double SunRadiusDeg = 0.26667;

    /// <summary>Position of the sun.</summary>
    /// <param name="julianDayUt">Julian day in UT, 2 300 000 to 2 820 000 (about years 1585 to 3008).</param>
    /// <param name="latitudeDeg">North positive, −90 to 90.</param>
    /// <param name="longitudeDeg">East positive, −180 to 180.</param>
    /// <param name="elevationM">Above sea level, m, −500 to 9000.</param>
    /// <param name="pressurePa">Yearly or momentary station pressure, Pa, 30 000 to 110 000.</param>
    /// <param name="airC">Air temperature for the refraction, °C, −80 to 60.</param>
    /// <param name="ttMinusUtSeconds">Terrestrial minus universal time, s, −200 to 2000; <see cref="DeltaTSeconds"/> for our years.</param>
    /// <returns>Angles in degrees; see <see cref="SunPosition"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static SunPosition At(
        double julianDayUt,
        double latitudeDeg,
        double longitudeDeg,
        double elevationM,
        double pressurePa,
        double airC,
        double ttMinusUtSeconds) =>
        Working(julianDayUt, latitudeDeg, longitudeDeg, elevationM, pressurePa, airC, ttMinusUtSeconds).Position;

    /// <summary>Position of the sun with its intermediate results; arguments and throws as <see cref="At"/>.</summary>
    /// <param name="julianDayUt">Julian day, UT.</param>
    /// <param name="latitudeDeg">North positive, degrees.</param>
    /// <param name="longitudeDeg">East positive, degrees.</param>
    /// <param name="elevationM">Above sea level, m.</param>
    /// <param name="pressurePa">Station pressure, Pa.</param>
    /// <param name="airC">Air temperature, °C.</param>
    /// <param name="ttMinusUtSeconds">Terrestrial minus universal time, s.</param>
    /// <returns>All steps.</returns>
    public static SunPositionWorking Working(
        double julianDayUt,
        double latitudeDeg,
        double longitudeDeg,
        double elevationM,
        double pressurePa,
        double airC,
        double ttMinusUtSeconds)
    {
        Within.Require(julianDayUt, 2_300_000, 2_820_000);
        Within.Require(latitudeDeg, -90, 90);
        Within.Require(longitudeDeg, -180, 180);
        Within.Require(elevationM, -500, 9000);
        Within.Require(pressurePa, 30_000, 110_000);
        Within.Require(airC, -80, 60);
        Within.Require(ttMinusUtSeconds, -200, 2000);

        SunEphemerisState sun = SunEphemeris.At(julianDayUt, ttMinusUtSeconds);
        double hourAngleDeg = Turn(sun.ApparentSiderealDeg + longitudeDeg - sun.RightAscensionDeg);
        ObserverOnEarth observer = ObserverOnEarth.At(latitudeDeg, elevationM);

        double sinParallax = Sin(sun.ParallaxDeg);
        double sinHour = Sin(hourAngleDeg);
        double cosHour = Cos(hourAngleDeg);
        double sinDeclination = Sin(sun.DeclinationDeg);
        double cosDeclination = Cos(sun.DeclinationDeg);
        double towardsEquator = cosDeclination - (observer.EquatorialRadii * sinParallax * cosHour);
        double shiftRad = Math.Atan2(-observer.EquatorialRadii * sinParallax * sinHour, towardsEquator);
        double shiftDeg = FromRad(shiftRad);
        double topocentricDeclinationDeg = FromRad(Math.Atan2(
            (sinDeclination - (observer.PolarRadii * sinParallax)) * Math.Cos(shiftRad), towardsEquator));
        double topocentricHourDeg = hourAngleDeg - shiftDeg;

        double sinLatitude = Sin(latitudeDeg);
        double cosLatitude = Cos(latitudeDeg);
        double sineOfElevation = (sinLatitude * Sin(topocentricDeclinationDeg))
            + (cosLatitude * Cos(topocentricDeclinationDeg) * Cos(topocentricHourDeg));
        double elevationDeg = FromRad(Math.Asin(Math.Clamp(sineOfElevation, -1, 1)));
        double refractionDeg = RefractionDeg(elevationDeg, pressurePa, airC);
        double southAzimuthDeg = Turn(FromRad(Math.Atan2(
            Sin(topocentricHourDeg),
            (Cos(topocentricHourDeg) * sinLatitude) - (Tan(topocentricDeclinationDeg) * cosLatitude))));

        var position = new SunPosition(
            90 - elevationDeg - refractionDeg,
            elevationDeg,
            Turn(southAzimuthDeg + 180),
            sun.DeclinationDeg,
            sun.EquationOfTimeMin,
            sun.DistanceAu);
        return new SunPositionWorking(
            sun, hourAngleDeg, sun.ParallaxDeg, shiftDeg, sun.RightAscensionDeg + shiftDeg, topocentricDeclinationDeg,
            topocentricHourDeg, refractionDeg, southAzimuthDeg, position);
    }

    /// <summary>Lift by refraction, degrees; zero when the whole disc is below the horizon (eq. 42).</summary>
    internal static double RefractionDeg(double elevationDeg, double pressurePa, double airC)
    {
        if (elevationDeg < -(SunRadiusDeg + HorizonRefractionDeg))
        {
            return 0;
        }

        double mbar = pressurePa / 100;
        return mbar / 1010 * (283 / (273 + airC)) * 1.02 / (60 * Tan(elevationDeg + (10.3 / (elevationDeg + 5.11))));
    }
}

/// <summary>The observer's distance from the earth's axis and from the equator's plane, in equatorial radii (eqs 34 to 36).</summary>
internal readonly record struct ObserverOnEarth(double EquatorialRadii, double PolarRadii)
{
    private const double Flattened = 0.99664719;
    private const double EarthRadiusM = 6378140;

    internal static ObserverOnEarth At(double latitudeDeg, double elevationM)
    {
        double reducedRad = Math.Atan(Flattened * Tan(latitudeDeg));
        return new ObserverOnEarth(
            Math.Cos(reducedRad) + (elevationM / EarthRadiusM * Cos(latitudeDeg)),
            (Flattened * Math.Sin(reducedRad)) + (elevationM / EarthRadiusM * Sin(latitudeDeg)));
    }
}
