using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Science.Air;

namespace Glazewright.Papers.Plant;

/// <summary>How moist air is written: °C, g/kg, kJ/kg or °F, grains a pound, Btu/lb.</summary>
internal sealed class AirScale(UnitSystem units)
{
    private readonly bool _us = units == UnitSystem.Us;

    public string TemperatureUnit => _us ? "°F" : "°C";

    public string Barometer(double pressurePa) => Shown.Of(pressurePa, Unit.Barometer, units).Text;

    public string RatioUnit => _us ? "gr/lb" : "g/kg";

    public double Temperature(double celsius) => _us ? celsius * 1.8 + 32 : celsius;

    public double Celsius(double shown) => _us ? (shown - 32) / 1.8 : shown;

    /// <summary>Humidity ratio as shown: 7000 grains make a pound.</summary>
    public double Ratio(double humidityRatio) => humidityRatio * (_us ? 7000 : 1000);

    public double RatioOf(double shown) => shown / (_us ? 7000 : 1000);

    public string Degrees(double celsius) => Number(Temperature(celsius), 1);

    /// <summary>Enthalpy as shown. Inch-pound tables count from dry air at 0 °F, by ASHRAE Handbook—Fundamentals ch. 1 (I-P), h = 0.240 t + W (1061 + 0.444 t); from memory.</summary>
    public string Enthalpy(AirState air)
    {
        double t = Temperature(air.DryBulbC);
        return _us
            ? Number(0.240 * t + air.HumidityRatio * (1061 + 0.444 * t), 1) + " Btu/lb"
            : Number(air.EnthalpyJPerKg / 1000, 1) + " kJ/kg";
    }

    public string Volume(AirState air) => _us
        ? Number(air.VolumeM3PerKg / 0.0624279606, 2) + " ft³/lb"
        : Number(air.VolumeM3PerKg, 3) + " m³/kg";

    public static string Number(double value, int decimals)
    {
        string text = value.ToString("N" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text.Trim('-', '0', '.', ',').Length == 0 ? text.TrimStart('-') : text.Replace('-', '−');
    }
}
