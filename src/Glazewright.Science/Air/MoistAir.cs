using Glazewright.Science.Guards;

namespace Glazewright.Science.Air;

/// <summary>Properties of moist air at any barometric pressure.</summary>
/// <remarks>ASHRAE Handbook—Fundamentals (2017, SI), ch. 1, "Psychrometrics"; equation numbers from memory. Limits: docs/methods/air-and-plant.md.</remarks>
public static class MoistAir
{
    /// <summary>Specific heat of dry air as the Handbook's enthalpy uses it, J/(kg K).</summary>
    public const double DryAirHeatJPerKgK = 1006;

    /// <summary>Latent heat of vapour at 0 °C as the Handbook's enthalpy uses it, J/kg.</summary>
    public const double LatentHeatJPerKg = 2_501_000;

    /// <summary>Specific heat of water vapour, J/(kg K).</summary>
    public const double VapourHeatJPerKgK = 1860;

    /// <summary>Specific heat of liquid water, J/(kg K).</summary>
    public const double WaterHeatJPerKgK = 4186;

    private const double GasConstantJPerKgK = 287.042;
    private const double ZeroCelsiusK = 273.15;

    /// <summary>Humidity ratio from dry and wet bulb.</summary>
    /// <param name="dryBulbC">Dry bulb, °C, −60 to 80.</param>
    /// <param name="wetBulbC">Wet bulb, °C, −60 to the dry bulb; below 0 °C the bulb is iced.</param>
    /// <param name="pressurePa">Barometric pressure, Pa, 50 000 to 110 000.</param>
    /// <returns>Humidity ratio, kg/kg dry air; negative where the wet bulb is lower than bone-dry air could have.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>Eqs (33) over water and (35) over ice.</remarks>
    public static double HumidityRatio(double dryBulbC, double wetBulbC, double pressurePa)
    {
        RequireAir(dryBulbC, pressurePa);
        Within.Require(wetBulbC, -60, dryBulbC + 1e-6);
        return RatioFromWetBulb(dryBulbC, wetBulbC, pressurePa);
    }

    /// <summary>Humidity ratio from vapour pressure.</summary>
    /// <param name="vapourPressurePa">Vapour pressure, Pa, 0 to 49 000.</param>
    /// <param name="pressurePa">Barometric pressure, Pa, 50 000 to 110 000.</param>
    /// <returns>Humidity ratio, kg/kg dry air; eq. (20).</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double HumidityRatioOfVapour(double vapourPressurePa, double pressurePa)
    {
        Within.Require(pressurePa, 50_000, 110_000);
        Within.Require(vapourPressurePa, 0, 49_000);
        return Saturation.MolarMassRatio * vapourPressurePa / (pressurePa - vapourPressurePa);
    }

    /// <summary>Vapour pressure from humidity ratio.</summary>
    /// <param name="humidityRatio">Humidity ratio, kg/kg dry air, 0 to 12.</param>
    /// <param name="pressurePa">Barometric pressure, Pa, 50 000 to 110 000.</param>
    /// <returns>Vapour pressure, Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double VapourPressurePa(double humidityRatio, double pressurePa)
    {
        Within.Require(humidityRatio, 0, 12);
        Within.Require(pressurePa, 50_000, 110_000);
        return pressurePa * humidityRatio / (Saturation.MolarMassRatio + humidityRatio);
    }

    /// <summary>Relative humidity: vapour pressure over saturation pressure (over ice at or below 0.01 °C).</summary>
    /// <param name="dryBulbC">Dry bulb, °C, −60 to 80.</param>
    /// <param name="humidityRatio">Humidity ratio, kg/kg dry air, 0 to 12.</param>
    /// <param name="pressurePa">Barometric pressure, Pa, 50 000 to 110 000.</param>
    /// <returns>A fraction; above 1 for air that holds fog.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double RelativeHumidityFraction(double dryBulbC, double humidityRatio, double pressurePa)
    {
        RequireAir(dryBulbC, pressurePa);
        return VapourPressurePa(humidityRatio, pressurePa) / Math.Exp(Saturation.LogPressure(dryBulbC));
    }

    /// <summary>Dew point (frost point at or below 0.01 °C).</summary>
    /// <param name="humidityRatio">Humidity ratio, kg/kg dry air, 1e-7 to 12.</param>
    /// <param name="pressurePa">Barometric pressure, Pa, 50 000 to 110 000.</param>
    /// <returns>Dew or frost point, °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double DewPointC(double humidityRatio, double pressurePa)
    {
        Within.Require(humidityRatio, 1e-7, 12);
        return Saturation.InverseC(VapourPressurePa(humidityRatio, pressurePa));
    }

    /// <summary>Wet bulb from dry bulb and humidity ratio.</summary>
    /// <param name="dryBulbC">Dry bulb, °C, −60 to 80.</param>
    /// <param name="humidityRatio">Humidity ratio, kg/kg dry air, 0 to saturation (more counts as saturated).</param>
    /// <param name="pressurePa">Barometric pressure, Pa, 50 000 to 110 000.</param>
    /// <returns>Wet bulb, °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>
    /// The Handbook's water and ice lines do not meet at 0 °C: some states have one wet bulb on each. Where a wet bulb at or above 0 °C exists
    /// we return it (a bulb kept wet), otherwise the iced one; each line alone is monotone, so the bisection always closes.
    /// </remarks>
    public static double WetBulbC(double dryBulbC, double humidityRatio, double pressurePa)
    {
        RequireAir(dryBulbC, pressurePa);
        Within.Require(humidityRatio, 0, 12);
        if (humidityRatio >= Saturation.RatioKernel(dryBulbC, pressurePa))
        {
            return dryBulbC;
        }

        bool water = dryBulbC >= 0 && humidityRatio >= RatioFromWetBulb(dryBulbC, 0, pressurePa);
        double lower = water ? 0 : -100;
        double upper = water ? dryBulbC : Math.Min(dryBulbC, -1e-12);
        while (upper - lower > 1e-9)
        {
            double middle = 0.5 * (lower + upper);
            if (RatioFromWetBulb(dryBulbC, middle, pressurePa) > humidityRatio)
            {
                upper = middle;
            }
            else
            {
                lower = middle;
            }
        }

        return 0.5 * (lower + upper);
    }

    /// <summary>Enthalpy above dry air and liquid water at 0 °C; eq. (30).</summary>
    /// <param name="dryBulbC">Dry bulb, °C, −60 to 80.</param>
    /// <param name="humidityRatio">Humidity ratio, kg/kg dry air, 0 to 12.</param>
    /// <returns>J per kg of dry air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double EnthalpyJPerKg(double dryBulbC, double humidityRatio)
    {
        Within.Require(dryBulbC, -60, 80);
        Within.Require(humidityRatio, 0, 12);
        return EnthalpyKernel(dryBulbC, humidityRatio);
    }

    /// <summary>Volume of moist air per kg of dry air; eq. (26).</summary>
    /// <param name="dryBulbC">Dry bulb, °C, −60 to 80.</param>
    /// <param name="humidityRatio">Humidity ratio, kg/kg dry air, 0 to 12.</param>
    /// <param name="pressurePa">Barometric pressure, Pa, 50 000 to 110 000.</param>
    /// <returns>m³ per kg of dry air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double VolumeM3PerKg(double dryBulbC, double humidityRatio, double pressurePa)
    {
        RequireAir(dryBulbC, pressurePa);
        Within.Require(humidityRatio, 0, 12);
        return GasConstantJPerKgK * (dryBulbC + ZeroCelsiusK) * (1 + 1.607858 * humidityRatio) / pressurePa;
    }

    /// <summary>Vapour pressure deficit of the air against saturation at its own temperature, or at a leaf's.</summary>
    /// <param name="dryBulbC">Air temperature, °C, −60 to 80.</param>
    /// <param name="relativeHumidityFraction">Relative humidity, 0 to 1.</param>
    /// <param name="surfaceC">Temperature of the wet surface, °C, −60 to 80: the air's own for the air's deficit.</param>
    /// <returns>Deficit, Pa; negative where the surface takes up dew.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double VapourDeficitPa(double dryBulbC, double relativeHumidityFraction, double surfaceC)
    {
        Within.Require(dryBulbC, -60, 80);
        Within.Require(surfaceC, -60, 80);
        Within.Require(relativeHumidityFraction, 0, 1);
        return Math.Exp(Saturation.LogPressure(surfaceC))
            - relativeHumidityFraction * Math.Exp(Saturation.LogPressure(dryBulbC));
    }

    internal static double EnthalpyKernel(double dryBulbC, double humidityRatio) =>
        DryAirHeatJPerKgK * dryBulbC + humidityRatio * (LatentHeatJPerKg + VapourHeatJPerKgK * dryBulbC);

    internal static double DryBulbOfEnthalpyC(double enthalpyJPerKg, double humidityRatio) =>
        (enthalpyJPerKg - LatentHeatJPerKg * humidityRatio) / (DryAirHeatJPerKgK + VapourHeatJPerKgK * humidityRatio);

    internal static double RatioFromWetBulb(double dryBulbC, double wetBulbC, double pressurePa)
    {
        double saturated = Saturation.RatioKernel(wetBulbC, pressurePa);
        return wetBulbC >= 0
            ? ((2501 - 2.326 * wetBulbC) * saturated - 1.006 * (dryBulbC - wetBulbC))
                / (2501 + 1.86 * dryBulbC - 4.186 * wetBulbC)
            : ((2830 - 0.24 * wetBulbC) * saturated - 1.006 * (dryBulbC - wetBulbC))
                / (2830 + 1.86 * dryBulbC - 2.1 * wetBulbC);
    }

    internal static void RequireAir(double dryBulbC, double pressurePa)
    {
        Within.Require(dryBulbC, -60, 80);
        Within.Require(pressurePa, 50_000, 110_000);
    }
}
