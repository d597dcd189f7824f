using Glazewright.Science.Maths;

namespace Glazewright.Science.Weather;

/// <summary>
/// The little psychrometrics that reading and expanding weather needs, in kernels that never throw.
/// Saturation: Hyland and Wexler 1983 as in ASHRAE Handbook—Fundamentals (2017), ch. 1, eqs. (5) over ice and (6) over water (from memory).
/// </summary>
internal static class WeatherMoisture
{
    private const double MolarRatio = 0.621945;

    public static double SaturationPa(double tempC)
    {
        double t = Math.Clamp(tempC, -100, 120) + 273.15;
        double ln = t < 273.16
            ? -5.6745359e3 / t + 6.3925247 - 9.677843e-3 * t + 6.2215701e-7 * t * t + 2.0747825e-9 * t * t * t
              - 9.484024e-13 * t * t * t * t + 4.1635019 * Elementary.Log(t)
            : -5.8002206e3 / t + 1.3914993 - 4.8640239e-2 * t + 4.1764768e-5 * t * t - 1.4452093e-8 * t * t * t + 6.5459673 * Elementary.Log(t);
        return Elementary.Exp(ln);
    }

    /// <summary>Dew point (frost point below 0 °C), by bisection: 60 halvings of 220 K leave less than 1e-15 K.</summary>
    public static double DewPointC(double vapourPressurePa)
    {
        double low = -100;
        double high = 120;
        for (int i = 0; i < 60; i++)
        {
            double mid = 0.5 * (low + high);
            if (SaturationPa(mid) > vapourPressurePa)
            {
                high = mid;
            }
            else
            {
                low = mid;
            }
        }

        return 0.5 * (low + high);
    }

    public static double HumidityRatio(double vapourPressurePa, double pressurePa)
    {
        double e = Math.Clamp(vapourPressurePa, 0, 0.9 * pressurePa);
        return MolarRatio * e / (pressurePa - e);
    }

    /// <summary>Thermodynamic wet bulb, ASHRAE Fundamentals (2017) ch. 1 eqs. (33) and (35), by bisection between dew point and dry bulb.</summary>
    public static double WetBulbC(double dryBulbC, double dewPointC, double pressurePa)
    {
        double w = HumidityRatio(SaturationPa(dewPointC), pressurePa);
        double low = Math.Min(dewPointC, dryBulbC) - 0.5;
        double high = dryBulbC;
        for (int i = 0; i < 50; i++)
        {
            double mid = 0.5 * (low + high);
            double ws = HumidityRatio(SaturationPa(mid), pressurePa);
            double wMid = mid >= 0
                ? ((2501 - 2.326 * mid) * ws - 1.006 * (dryBulbC - mid)) / (2501 + 1.86 * dryBulbC - 4.186 * mid)
                : ((2830 - 0.24 * mid) * ws - 1.006 * (dryBulbC - mid)) / (2830 + 1.86 * dryBulbC - 2.1 * mid);
            if (wMid > w)
            {
                high = mid;
            }
            else
            {
                low = mid;
            }
        }

        return 0.5 * (low + high);
    }

    /// <summary>Pressure of the standard atmosphere, Pa: ASHRAE Fundamentals (2017) ch. 1 eq. (3).</summary>
    public static double StandardPressurePa(double elevationM) => 101325 * Elementary.Pow(1 - 2.25577e-5 * elevationM, 5.2559);
}
