using static Glazewright.Science.Sun.Degrees;

namespace Glazewright.Science.Sun;

/// <summary>The sun as seen from the middle of the earth, with every step of the computation that a worked example prints.</summary>
/// <param name="JulianDayUt">Julian day, UT.</param>
/// <param name="JulianCenturyUt">Julian centuries from 2000, UT.</param>
/// <param name="JulianEphemerisDay">Julian day, terrestrial time.</param>
/// <param name="JulianEphemerisCenturyNumber">Julian centuries from 2000, terrestrial time.</param>
/// <param name="JulianEphemerisMillenniumNumber">Julian millennia from 2000, terrestrial time.</param>
/// <param name="HeliocentricLongitudeDeg">L, 0 to 360.</param>
/// <param name="HeliocentricLatitudeDeg">B.</param>
/// <param name="DistanceAu">R, earth to sun.</param>
/// <param name="GeocentricLongitudeDeg">Θ, 0 to 360.</param>
/// <param name="GeocentricLatitudeDeg">β.</param>
/// <param name="MoonElongationDeg">X0, mean elongation of the moon from the sun, not reduced.</param>
/// <param name="SunAnomalyDeg">X1, mean anomaly of the sun.</param>
/// <param name="MoonAnomalyDeg">X2, mean anomaly of the moon.</param>
/// <param name="MoonLatitudeArgumentDeg">X3, moon's argument of latitude.</param>
/// <param name="MoonNodeDeg">X4, longitude of the moon's ascending node.</param>
/// <param name="NutationLongitudeDeg">Δψ.</param>
/// <param name="NutationObliquityDeg">Δε.</param>
/// <param name="MeanObliquityArcsec">ε0, arc seconds.</param>
/// <param name="TrueObliquityDeg">ε.</param>
/// <param name="AberrationDeg">Δτ.</param>
/// <param name="ApparentLongitudeDeg">λ.</param>
/// <param name="MeanSiderealDeg">ν0, at Greenwich, 0 to 360.</param>
/// <param name="ApparentSiderealDeg">ν, at Greenwich.</param>
/// <param name="RightAscensionDeg">α, 0 to 360.</param>
/// <param name="DeclinationDeg">δ.</param>
public readonly record struct SunEphemerisState(
    double JulianDayUt,
    double JulianCenturyUt,
    double JulianEphemerisDay,
    double JulianEphemerisCenturyNumber,
    double JulianEphemerisMillenniumNumber,
    double HeliocentricLongitudeDeg,
    double HeliocentricLatitudeDeg,
    double DistanceAu,
    double GeocentricLongitudeDeg,
    double GeocentricLatitudeDeg,
    double MoonElongationDeg,
    double SunAnomalyDeg,
    double MoonAnomalyDeg,
    double MoonLatitudeArgumentDeg,
    double MoonNodeDeg,
    double NutationLongitudeDeg,
    double NutationObliquityDeg,
    double MeanObliquityArcsec,
    double TrueObliquityDeg,
    double AberrationDeg,
    double ApparentLongitudeDeg,
    double MeanSiderealDeg,
    double ApparentSiderealDeg,
    double RightAscensionDeg,
    double DeclinationDeg)
{
    /// <summary>Equation of time, min: apparent minus mean solar time (Reda &amp; Andreas 2004, eqs A1 and A2).</summary>
    public double EquationOfTimeMin
    {
        get
        {
            double t = JulianEphemerisMillenniumNumber;
            double meanDeg = 280.4664567 + (t * (360007.6982779 + (t * (0.03032028
                + (t * ((1 / 49931.0) + (t * ((-1 / 15300.0) - (t / 2000000.0)))))))));
            double differenceDeg = meanDeg - 0.0057183 - RightAscensionDeg + (NutationLongitudeDeg * Cos(TrueObliquityDeg));
            return 4 * HalfTurn(differenceDeg);
        }
    }

    /// <summary>Equatorial horizontal parallax of the sun, ξ, degrees (eq. 33).</summary>
    public double ParallaxDeg => 8.794 / (3600 * DistanceAu);
}

/// <summary>Geocentric place of the sun: steps 3.1 to 3.10 of the NREL algorithm, kernels without guards.</summary>
/// <remarks>Reda &amp; Andreas 2004, NREL/TP-560-34302 (rev. 2008), eqs 1 to 31; equations from memory, checked by the report's worked example.</remarks>
internal static class SunEphemeris
{
    internal static SunEphemerisState At(double julianDayUt, double ttMinusUtSeconds)
    {
        double century = (julianDayUt - 2451545) / 36525;
        double ephemerisDay = julianDayUt + (ttMinusUtSeconds / 86400);
        double jce = (ephemerisDay - 2451545) / 36525;
        double jme = jce / 10;

        double longitudeDeg = Turn(FromRad(Series(SpaTerms.Longitude, jme)));
        double latitudeDeg = FromRad(Series(SpaTerms.Latitude, jme));
        double radiusAu = Series(SpaTerms.Radius, jme);
        double thetaDeg = Turn(longitudeDeg + 180);
        double betaDeg = -latitudeDeg;

        double x0 = 297.85036 + (jce * (445267.111480 + (jce * (-0.0019142 + (jce / 189474)))));
        double x1 = 357.52772 + (jce * (35999.050340 + (jce * (-0.0001603 - (jce / 300000)))));
        double x2 = 134.96298 + (jce * (477198.867398 + (jce * (0.0086972 + (jce / 56250)))));
        double x3 = 93.27191 + (jce * (483202.017538 + (jce * (-0.0036825 + (jce / 327270)))));
        double x4 = 125.04452 + (jce * (-1934.136261 + (jce * (0.0020708 + (jce / 450000)))));
        (double nutationLongitudeDeg, double nutationObliquityDeg) = Nutation(jce, x0, x1, x2, x3, x4);

        double meanObliquityArcsec = MeanObliquityArcsec(jme / 10);
        double obliquityDeg = (meanObliquityArcsec / 3600) + nutationObliquityDeg;
        double aberrationDeg = -20.4898 / (3600 * radiusAu);
        double apparentDeg = thetaDeg + nutationLongitudeDeg + aberrationDeg;

        double meanSiderealDeg = Turn(280.46061837 + (360.98564736629 * (julianDayUt - 2451545))
            + (century * century * (0.000387933 - (century / 38710000))));
        double siderealDeg = meanSiderealDeg + (nutationLongitudeDeg * Cos(obliquityDeg));

        double sinApparent = Sin(apparentDeg);
        double sinObliquity = Sin(obliquityDeg);
        double cosObliquity = Cos(obliquityDeg);
        double rightAscensionDeg = Turn(FromRad(Math.Atan2(
            (sinApparent * cosObliquity) - (Tan(betaDeg) * sinObliquity), Cos(apparentDeg))));
        double declinationDeg = FromRad(Math.Asin(
            (Sin(betaDeg) * cosObliquity) + (Cos(betaDeg) * sinObliquity * sinApparent)));

        return new SunEphemerisState(
            julianDayUt, century, ephemerisDay, jce, jme, longitudeDeg, latitudeDeg, radiusAu, thetaDeg, betaDeg,
            x0, x1, x2, x3, x4, nutationLongitudeDeg, nutationObliquityDeg, meanObliquityArcsec, obliquityDeg, aberrationDeg,
            apparentDeg, meanSiderealDeg, siderealDeg, rightAscensionDeg, declinationDeg);
    }

    private static double Series(double[][] rows, double jme)
    {
        double sum = 0;
        for (int power = rows.Length - 1; power >= 0; power--)
        {
            double[] terms = rows[power];
            double row = 0;
            for (int i = 0; i < terms.Length; i += 3)
            {
                row += terms[i] * Math.Cos(terms[i + 1] + (terms[i + 2] * jme));
            }

            sum = (sum * jme) + row;
        }

        return sum / 1e8;
    }

    private static (double LongitudeDeg, double ObliquityDeg) Nutation(
        double jce, double x0, double x1, double x2, double x3, double x4)
    {
        double[] terms = SpaTerms.Nutation;
        double longitude = 0;
        double obliquity = 0;
        for (int i = 0; i < terms.Length; i += 9)
        {
            double argumentRad = RadPerDeg * ((terms[i] * x0) + (terms[i + 1] * x1) + (terms[i + 2] * x2)
                + (terms[i + 3] * x3) + (terms[i + 4] * x4));
            longitude += (terms[i + 5] + (terms[i + 6] * jce)) * Math.Sin(argumentRad);
            obliquity += (terms[i + 7] + (terms[i + 8] * jce)) * Math.Cos(argumentRad);
        }

        return (longitude / 36e6, obliquity / 36e6);
    }

    private static double MeanObliquityArcsec(double u) =>
        84381.448 + (u * (-4680.93 + (u * (-1.55 + (u * (1999.25 + (u * (-51.38 + (u * (-249.67 + (u * (-39.05
            + (u * (7.12 + (u * (27.87 + (u * (5.79 + (u * 2.45)))))))))))))))))));
}
