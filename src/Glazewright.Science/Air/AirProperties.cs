using Glazewright.Science.Climate;

namespace Glazewright.Science.Air;

/// <summary>All properties of one state of moist air.</summary>
/// <param name="DryBulbC">Dry bulb, °C.</param>
/// <param name="WetBulbC">Wet bulb, °C.</param>
/// <param name="DewPointC">Dew or frost point, °C.</param>
/// <param name="RelativeHumidityFraction">Relative humidity.</param>
/// <param name="HumidityRatio">Humidity ratio, kg/kg dry air.</param>
/// <param name="VapourPressurePa">Vapour pressure, Pa.</param>
/// <param name="VapourDeficitPa">Deficit at the air's own temperature, Pa.</param>
/// <param name="EnthalpyJPerKg">Enthalpy, J/kg dry air.</param>
/// <param name="VolumeM3PerKg">Volume, m³/kg dry air.</param>
/// <param name="DensityKgPerM3">Density of the moist air, kg/m³.</param>
public readonly record struct AirProperties(
    double DryBulbC,
    double WetBulbC,
    double DewPointC,
    double RelativeHumidityFraction,
    double HumidityRatio,
    double VapourPressurePa,
    double VapourDeficitPa,
    double EnthalpyJPerKg,
    double VolumeM3PerKg,
    double DensityKgPerM3)
{
    /// <summary>
    /// All properties at once, for loops over many states: the same laws as <see cref="AirState"/>, on the tabulated saturation pressure
    /// (<see cref="VapourTable"/>, within 1e-8), wet bulb and dew point by Newton steps on it. Total: values are held to −60 to 80 °C, no vapour to saturation.
    /// </summary>
    /// <param name="dryBulbC">Dry bulb, °C.</param>
    /// <param name="humidityRatio">Humidity ratio, kg/kg dry air.</param>
    /// <param name="pressurePa">Barometric pressure, Pa.</param>
    /// <returns>The properties; wet bulb and dew point within 1e-5 K of <see cref="AirState"/>'s (test), within 0.002 K between 0 and 0.01 °C, where the table is already over water.</returns>
    public static AirProperties Of(double dryBulbC, double humidityRatio, double pressurePa)
    {
        double t = Math.Clamp(dryBulbC, -60, 80);
        double saturationPa = VapourTable.PressurePa(t);
        double w = Math.Clamp(humidityRatio, 0, Saturation.MolarMassRatio * saturationPa / Math.Max(pressurePa - saturationPa, 1e-3 * pressurePa));
        double vapourPa = pressurePa * w / (Saturation.MolarMassRatio + w);
        double volume = 287.042 * (t + 273.15) * (1 + 1.607858 * w) / pressurePa;
        return new AirProperties(
            t, WetBulb(t, w, pressurePa), DewPoint(vapourPa), vapourPa / saturationPa, w, vapourPa, saturationPa - vapourPa,
            MoistAir.EnthalpyKernel(t, w), volume, (1 + w) / volume);
    }

    // On each line the miss is convex and rises with the wet bulb, so Newton from above comes down to the root without overshooting.
    private static double WetBulb(double t, double w, double pressurePa)
    {
        bool water = t >= 0 && Miss(t, 0, w, pressurePa, true, out _) <= 0;
        double wet = water ? t : Math.Min(t, 0);
        for (int step = 0; step < 12; step++)
        {
            double miss = Miss(t, wet, w, pressurePa, water, out double slope);
            double next = wet - miss / slope;
            if (!(Math.Abs(next - wet) > 1e-9))
            {
                return Math.Min(next, t);
            }

            wet = next;
        }

        return Math.Min(wet, t);
    }

    // ASHRAE eqs (33) over water and (35) over ice, cleared of the fraction; kJ/kg as printed.
    private static double Miss(double t, double wet, double w, double pressurePa, bool water, out double slope)
    {
        double p = VapourTable.PressurePa(wet, out double pSlope);
        double dry = Math.Max(pressurePa - p, 1e-3 * pressurePa);
        double s = Saturation.MolarMassRatio * p / dry;
        double sSlope = Saturation.MolarMassRatio * pressurePa * pSlope / (dry * dry);
        double latent = water ? 2501 - 2.326 * wet : 2830 - 0.24 * wet;
        double latentSlope = water ? -2.326 : -0.24;
        double liquid = water ? 4.186 : 2.1;
        slope = latentSlope * s + latent * sSlope + 1.006 + liquid * w;
        return latent * s - 1.006 * (t - wet) - w * ((water ? 2501 : 2830) + 1.86 * t - liquid * wet);
    }

    // Magnus gives it within 0.1 K; Newton on the logarithm of the table does the rest.
    private static double DewPoint(double vapourPa)
    {
        double e = Math.Max(vapourPa, 0.002);
        double log = Math.Log(e / 611.2);
        double dew = log >= 0 ? 243.12 * log / (17.62 - log) : 272.62 * log / (22.46 - log);
        for (int step = 0; step < 3; step++)
        {
            double p = VapourTable.PressurePa(dew, out double slope);
            double miss = (p - e) / slope;
            dew -= miss;
            if (Math.Abs(miss) < 1e-7)
            {
                break;
            }
        }

        return Math.Max(dew, -100);
    }
}
