namespace Glazewright.Science.Air;

/// <summary>The lines of constant properties on the psychrometric plane: humidity ratio by dry bulb. Total: a place where the line has no air gives a number beyond what air holds.</summary>
internal static class AirLine
{
    private const double GasConstantJPerKgK = 287.042;
    private const double ZeroCelsiusK = 273.15;
    private const double VolumeFactor = 1.607858;

    /// <summary>Whether any air could have such a value.</summary>
    public static bool Exists(AirProperty property, double value, double pressurePa) => double.IsFinite(value) && property switch
    {
        AirProperty.DryBulb or AirProperty.WetBulb or AirProperty.DewPoint => value is > -100 and < 200,
        AirProperty.RelativeHumidity or AirProperty.HumidityRatio or AirProperty.VapourDeficit => value is >= 0 and < 1e6,
        AirProperty.VapourPressure => value >= 0 && value < pressurePa,
        AirProperty.Enthalpy => value is > -1e5 and < 1e7,
        AirProperty.Volume or AirProperty.Density => value is > 0 and < 1e3,
        _ => false,
    };

    public static bool MoreThanSaturated(AirProperty property, double value) =>
        property == AirProperty.RelativeHumidity && value > 1 + 1e-9;

    /// <summary>Humidity ratio on the line at a dry bulb, kg/kg; negative or beyond saturation where the line leaves moist air.</summary>
    public static double Ratio(AirProperty property, double value, double dryBulbC, double pressurePa)
    {
        double kelvin = dryBulbC + ZeroCelsiusK;
        return property switch
        {
            AirProperty.WetBulb => MoistAir.RatioFromWetBulb(dryBulbC, value, pressurePa),
            AirProperty.DewPoint => Saturation.RatioKernel(value, pressurePa),
            AirProperty.RelativeHumidity => OfVapour(value * Math.Exp(Saturation.LogPressure(dryBulbC)), pressurePa),
            AirProperty.HumidityRatio => value,
            AirProperty.VapourPressure => OfVapour(value, pressurePa),
            AirProperty.VapourDeficit => OfVapour(Math.Exp(Saturation.LogPressure(dryBulbC)) - value, pressurePa),
            AirProperty.Enthalpy => (value - MoistAir.DryAirHeatJPerKgK * dryBulbC) / (MoistAir.LatentHeatJPerKg + MoistAir.VapourHeatJPerKgK * dryBulbC),
            AirProperty.Volume => (value * pressurePa / (GasConstantJPerKgK * kelvin) - 1) / VolumeFactor,
            AirProperty.Density => OfDensity(value * GasConstantJPerKgK * kelvin / pressurePa),
            _ => throw new ArgumentOutOfRangeException(nameof(property), property, "The dry bulb is not a line over itself."),
        };
    }

    private static double OfVapour(double vapourPa, double pressurePa) =>
        Saturation.MolarMassRatio * vapourPa / Math.Max(pressurePa - vapourPa, 1e-3 * pressurePa);

    // (1 + W) = k (1 + 1.6079 W), k the density against dry air's: pure vapour has k = 0.622.
    private static double OfDensity(double k) => VolumeFactor * k - 1 > 0.01 ? (1 - k) / (VolumeFactor * k - 1) : 1e3;
}
