using Glazewright.Science.Guards;

namespace Glazewright.Science.Air;

/// <summary>One state of moist air. Everything else follows from these three.</summary>
/// <param name="DryBulbC">Dry bulb, °C.</param>
/// <param name="HumidityRatio">Humidity ratio, kg of vapour per kg of dry air.</param>
/// <param name="PressurePa">Barometric pressure, Pa.</param>
public sealed record AirState(double DryBulbC, double HumidityRatio, double PressurePa)
{
    /// <summary>Relative humidity, a fraction.</summary>
    public double RelativeHumidityFraction => MoistAir.RelativeHumidityFraction(DryBulbC, HumidityRatio, PressurePa);

    /// <summary>Wet bulb, °C.</summary>
    public double WetBulbC => MoistAir.WetBulbC(DryBulbC, HumidityRatio, PressurePa);

    /// <summary>Dew point, or frost point at or below 0.01 °C, °C.</summary>
    public double DewPointC => MoistAir.DewPointC(HumidityRatio, PressurePa);

    /// <summary>Vapour pressure, Pa.</summary>
    public double VapourPressurePa => MoistAir.VapourPressurePa(HumidityRatio, PressurePa);

    /// <summary>Deficit against saturation at the air's own temperature, Pa.</summary>
    public double VapourDeficitPa => Saturation.PressurePa(DryBulbC) - VapourPressurePa;

    /// <summary>Enthalpy, J per kg of dry air.</summary>
    public double EnthalpyJPerKg => MoistAir.EnthalpyJPerKg(DryBulbC, HumidityRatio);

    /// <summary>Volume, m³ per kg of dry air.</summary>
    public double VolumeM3PerKg => MoistAir.VolumeM3PerKg(DryBulbC, HumidityRatio, PressurePa);

    /// <summary>Density of the moist air, kg/m³; eq. (27) of the Handbook's ch. 1.</summary>
    public double DensityKgPerM3 => (1 + HumidityRatio) / VolumeM3PerKg;

    /// <summary>Heat that warms one kg of dry air and its vapour by one kelvin, J/(kg K).</summary>
    public double HeatJPerKgK => MoistAir.DryAirHeatJPerKgK + MoistAir.VapourHeatJPerKgK * HumidityRatio;

    /// <summary>State from dry bulb and humidity ratio.</summary>
    /// <param name="dryBulbC">Dry bulb, °C, −60 to 80.</param>
    /// <param name="humidityRatio">Humidity ratio, kg/kg, 0 to saturation.</param>
    /// <param name="pressurePa">Barometric pressure, Pa, 50 000 to 110 000.</param>
    /// <returns>The state.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range, NaN, or more vapour than saturated air holds.</exception>
    public static AirState FromHumidityRatio(double dryBulbC, double humidityRatio, double pressurePa)
    {
        MoistAir.RequireAir(dryBulbC, pressurePa);
        double saturated = Saturation.RatioKernel(dryBulbC, pressurePa);
        Within.Require(humidityRatio, 0, saturated * (1 + 1e-9));
        return new AirState(dryBulbC, Math.Min(humidityRatio, saturated), pressurePa);
    }

    /// <summary>State from dry and wet bulb.</summary>
    /// <param name="dryBulbC">Dry bulb, °C, −60 to 80.</param>
    /// <param name="wetBulbC">Wet bulb, °C, up to the dry bulb.</param>
    /// <param name="pressurePa">Barometric pressure, Pa, 50 000 to 110 000.</param>
    /// <returns>The state.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range, NaN, or a wet bulb lower than bone-dry air could have.</exception>
    public static AirState FromWetBulb(double dryBulbC, double wetBulbC, double pressurePa)
    {
        double ratio = MoistAir.HumidityRatio(dryBulbC, wetBulbC, pressurePa);
        if (ratio < 0)
        {
            throw new ArgumentOutOfRangeException(nameof(wetBulbC), wetBulbC, "Lower than bone-dry air's wet bulb.");
        }

        return new AirState(dryBulbC, ratio, pressurePa);
    }

    /// <summary>State from dry bulb and relative humidity.</summary>
    /// <param name="dryBulbC">Dry bulb, °C, −60 to 80.</param>
    /// <param name="relativeHumidityFraction">Relative humidity, 0 to 1.</param>
    /// <param name="pressurePa">Barometric pressure, Pa, 50 000 to 110 000.</param>
    /// <returns>The state.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static AirState FromRelativeHumidity(double dryBulbC, double relativeHumidityFraction, double pressurePa)
    {
        MoistAir.RequireAir(dryBulbC, pressurePa);
        Within.Require(relativeHumidityFraction, 0, 1);
        double vapourPa = relativeHumidityFraction * Saturation.PressurePa(dryBulbC);
        return new AirState(dryBulbC, MoistAir.HumidityRatioOfVapour(vapourPa, pressurePa), pressurePa);
    }

    /// <summary>State from dry bulb and dew (frost) point.</summary>
    /// <param name="dryBulbC">Dry bulb, °C, −60 to 80.</param>
    /// <param name="dewPointC">Dew or frost point, °C, −100 to the dry bulb.</param>
    /// <param name="pressurePa">Barometric pressure, Pa, 50 000 to 110 000.</param>
    /// <returns>The state.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static AirState FromDewPoint(double dryBulbC, double dewPointC, double pressurePa)
    {
        MoistAir.RequireAir(dryBulbC, pressurePa);
        Within.Require(dewPointC, -100, dryBulbC + 1e-9);
        return new AirState(
            dryBulbC, MoistAir.HumidityRatioOfVapour(Saturation.PressurePa(dewPointC), pressurePa), pressurePa);
    }
}
