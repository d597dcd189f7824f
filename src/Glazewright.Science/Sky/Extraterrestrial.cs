using Glazewright.Science.Guards;

namespace Glazewright.Science.Sky;

/// <summary>Sunlight outside the atmosphere.</summary>
public static class Extraterrestrial
{
    /// <summary>Solar constant, W/m² (Kopp &amp; Lean 2011, Geophys. Res. Lett. 38:L01706; rounded; from memory).</summary>
    public const double SolarConstantWm2 = 1361;

    /// <summary>Irradiance on a plane facing the sun, by day number.</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="solarConstantWm2">Constant, W/m², 1300 to 1400.</param>
    /// <returns>W/m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>Spencer 1971, Search 2(5):172, as quoted in Duffie &amp; Beckman, eq. 1.4.1b (from memory).</remarks>
    public static double NormalWm2(int dayOfYear, double solarConstantWm2 = SolarConstantWm2)
    {
        Within.Require(dayOfYear, 1, 366);
        Within.Require(solarConstantWm2, 1300, 1400);
        double b = 2 * Math.PI * (dayOfYear - 1) / 365;
        return solarConstantWm2 * (1.00011 + (0.034221 * Math.Cos(b)) + (0.00128 * Math.Sin(b))
            + (0.000719 * Math.Cos(2 * b)) + (0.000077 * Math.Sin(2 * b)));
    }

    /// <summary>Irradiance on a plane facing the sun, by the one-term form of several standards.</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="solarConstantWm2">Constant, W/m², 1300 to 1400.</param>
    /// <returns>W/m²; up to 0.3 % off the series above.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>Duffie &amp; Beckman, eq. 1.4.1a (from memory).</remarks>
    public static double NormalOneTermWm2(int dayOfYear, double solarConstantWm2 = SolarConstantWm2)
    {
        Within.Require(dayOfYear, 1, 366);
        Within.Require(solarConstantWm2, 1300, 1400);
        return solarConstantWm2 * (1 + (0.033 * Math.Cos(2 * Math.PI * dayOfYear / 365)));
    }

    /// <summary>Irradiance on a plane facing the sun, from the distance of the sun.</summary>
    /// <param name="distanceAu">0.98 to 1.02 AU.</param>
    /// <returns>W/m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double NormalAtDistanceWm2(double distanceAu)
    {
        Within.Require(distanceAu, 0.98, 1.02);
        return SolarConstantWm2 / (distanceAu * distanceAu);
    }
}
