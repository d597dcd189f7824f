using System.Globalization;

namespace Glazewright.Design.Contracts;

/// <summary>Which units people read.</summary>
public enum UnitSystem
{
    /// <summary>Feet, °F, cfm, Btu/h.</summary>
    Us,

    /// <summary>Metres, °C, m³/h, kW.</summary>
    Metric,
}

/// <summary>A value as it is shown: number and unit in the reader's system. The one place where figures leave SI.</summary>
/// <param name="Value">The number in the shown unit.</param>
/// <param name="Unit">The unit's symbol; empty for a pure number.</param>
/// <param name="Decimals">Digits after the point that are worth printing.</param>
public sealed record Shown(double Value, string Unit, int Decimals)
{
    private const double MetresPerFoot = 0.3048;
    private const double WattsPerBtuHour = 0.29307107;
    private const double NewtonsPerPoundForce = 4.4482216152605;
    private const double CubicMetresPerGallon = 0.003785411784;

    /// <summary>Number with group separators, and unit; money has its sign before it.</summary>
    public string Text => Signed + (Behind.Length == 0 ? "" : (Behind is "%" or "°" || IsMoney ? "" : " ") + Behind);

    /// <summary>The number, with the sign of money before it.</summary>
    public string Signed => !IsMoney ? Number : Number.StartsWith('−') ? "−$" + Number[1..] : "$" + Number;

    /// <summary>What stands behind the signed number: the unit, of money only what it is for.</summary>
    public string Behind => IsMoney ? Unit[1..] : Unit;

    /// <summary>The number alone.</summary>
    public string Number
    {
        get
        {
            string text = Value.ToString("N" + Decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
            return text.Trim('-', '0', '.', ',').Length == 0 ? text.TrimStart('-') : text.Replace('-', '−');
        }
    }

    private bool IsMoney => Unit.StartsWith('$');

    /// <summary>Converts a figure's SI value.</summary>
    /// <param name="value">The value in the unit's SI form.</param>
    /// <param name="unit">The figure's unit.</param>
    /// <param name="system">The reader's system.</param>
    /// <returns>The number, symbol and digits to print.</returns>
    public static Shown Of(double value, Unit unit, UnitSystem system) =>
        system == UnitSystem.Us ? Us(value, unit) : Metric(value, unit);

    private static Shown Us(double v, Unit unit) => unit switch
    {
        Contracts.Unit.Metre => new(v / MetresPerFoot, "ft", 2),
        Contracts.Unit.SquareMetre => new(v / (MetresPerFoot * MetresPerFoot), "ft²", 0),
        Contracts.Unit.CubicMetre => new(v / (MetresPerFoot * MetresPerFoot * MetresPerFoot), "ft³", 0),
        Contracts.Unit.Celsius => new(v * 1.8 + 32, "°F", 1),
        Contracts.Unit.Kelvin => new(v * 1.8, "F°", 1),
        Contracts.Unit.Pascal => new(v / 249.08891, "in w.g.", 3),
        Contracts.Unit.Barometer => new(v / 3386.389, "in Hg", 2),
        Contracts.Unit.LinePressure => new(v / 6894.757293168, "psi", 0),
        Contracts.Unit.AreaLoad => new(v / 47.88025898, "psf", 1),
        Contracts.Unit.Newton => new(v / NewtonsPerPoundForce, "lb", 0),
        Contracts.Unit.NewtonMetre => new(v / (NewtonsPerPoundForce * MetresPerFoot), "lb·ft", 0),
        Contracts.Unit.Watt => new(v / WattsPerBtuHour / 1000, "kBtu/h", 1),
        Contracts.Unit.Joule => new(v / 1055.05585262 / 1e6, "MMBtu", 1),
        Contracts.Unit.WattPerKelvin => new(v / WattsPerBtuHour / 1.8, "Btu/h·F°", 0),
        Contracts.Unit.WattPerSquareMetreKelvin => new(v / 5.678263, "Btu/h·ft²·F°", 3),
        Contracts.Unit.CubicMetrePerSecond => new(v / 0.00047194745, "cfm", 0),
        Contracts.Unit.MetrePerSecond => new(v / 0.44704, "mph", 1),
        Contracts.Unit.KilogramPerSecond => new(v * 3600 / (CubicMetresPerGallon * 998), "gal/h", 1),
        Contracts.Unit.Kilogram => new(v / 0.45359237, "lb", 0),
        Contracts.Unit.WaterCubicMetre => new(v / CubicMetresPerGallon, "gal", 0),
        Contracts.Unit.DollarPerSquareMetre => new(v * MetresPerFoot * MetresPerFoot, "$/ft²", 2),
        _ => Metric(v, unit),
    };

    private static Shown Metric(double v, Unit unit) => unit switch
    {
        Contracts.Unit.None => new(v, "", 3),
        Contracts.Unit.Fraction => new(v * 100, "%", 1),
        Contracts.Unit.Count => new(v, "", 0),
        Contracts.Unit.Metre => new(v, "m", 3),
        Contracts.Unit.SquareMetre => new(v, "m²", 1),
        Contracts.Unit.CubicMetre => new(v, "m³", 1),
        Contracts.Unit.Degree => new(v, "°", 1),
        Contracts.Unit.Celsius => new(v, "°C", 1),
        Contracts.Unit.Kelvin => new(v, "K", 1),
        Contracts.Unit.PercentHumidity => new(v, "% RH", 0),
        Contracts.Unit.HumidityRatio => new(v * 1000, "g/kg", 2),
        Contracts.Unit.Pascal => new(v, "Pa", 1),
        Contracts.Unit.Barometer => new(v / 1000, "kPa", 2),
        Contracts.Unit.LinePressure => new(v / 1e6, "MPa", 1),
        Contracts.Unit.AreaLoad => new(v / 1000, "kPa", 2),
        Contracts.Unit.Newton => new(v / 1000, "kN", 2),
        Contracts.Unit.NewtonMetre => new(v / 1000, "kN·m", 2),
        Contracts.Unit.Watt or Contracts.Unit.ElectricWatt => new(v / 1000, "kW", 2),
        Contracts.Unit.ElectricJoule => new(v / 3.6e6, "kWh", 0),
        Contracts.Unit.Joule => new(v / 3.6e9, "MWh", 2),
        Contracts.Unit.WattPerKelvin => new(v, "W/K", 0),
        Contracts.Unit.WattPerSquareMetreKelvin => new(v, "W/m²K", 2),
        Contracts.Unit.WattPerSquareMetre => new(v, "W/m²", 0),
        Contracts.Unit.CubicMetrePerSecond => new(v * 3600, "m³/h", 0),
        Contracts.Unit.MetrePerSecond => new(v, "m/s", 2),
        Contracts.Unit.KilogramPerSecond => new(v * 3600, "kg/h", 1),
        Contracts.Unit.Kilogram => new(v, "kg", 0),
        Contracts.Unit.WaterCubicMetre => new(v, "m³", 1),
        Contracts.Unit.MolPerSquareMetreDay => new(v, "mol/m²·d", 1),
        Contracts.Unit.Hour => new(v, "h", 0),
        Contracts.Unit.PerHour => new(v, "/h", 1),
        Contracts.Unit.Dollar => new(v, "$", 0),
        Contracts.Unit.DollarPerSquareMetre => new(v, "$/m²", 2),
        Contracts.Unit.DollarPerHour => new(v, "$/h", 2),
        Contracts.Unit.Ampere => new(v, "A", 1),
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "No way to show this unit."),
    };
}
