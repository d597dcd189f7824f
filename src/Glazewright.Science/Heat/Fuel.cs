using Glazewright.Science.Guards;

namespace Glazewright.Science.Heat;

/// <summary>What is burnt, or bought, for heat.</summary>
public enum FuelKind
{
    /// <summary>Propane, by the US gallon of liquid.</summary>
    PropaneGallon,

    /// <summary>Natural gas, by the therm.</summary>
    NaturalGasTherm,

    /// <summary>Number 2 fuel oil, by the US gallon.</summary>
    FuelOilGallon,

    /// <summary>Wood pellets, by the short ton.</summary>
    PelletsTon,

    /// <summary>Electricity, by the kilowatt-hour.</summary>
    ElectricityKwh,
}

/// <summary>Heat in fuels by the unit they are sold in.</summary>
public static class Fuel
{
    /// <summary>One Btu (International Table), J.</summary>
    public const double BtuJ = 1055.05585262;

    /// <summary>Gross heat of pipeline gas at 15 °C, J/m³: 1,025 Btu/ft³ (common practice).</summary>
    public const double NaturalGasJPerM3 = 1025 * BtuJ / 0.028316846592;

    /// <summary>Higher heating value of one selling unit.</summary>
    /// <param name="kind">The fuel.</param>
    /// <returns>J per selling unit.</returns>
    /// <remarks>
    /// University extension table of approximate heating values (Bartok 2013, read): propane 92 500 Btu/gal — other pages print 91 330 to 91 500,
    /// 1.3 % less — gas 100 000 Btu/therm, oil 138 500 Btu/gal, pellets 16 million Btu/ton; electricity 3.6 MJ/kWh, exact.
    /// </remarks>
    public static double HeatJPerUnit(FuelKind kind) => kind switch
    {
        FuelKind.PropaneGallon => 92_500 * BtuJ,
        FuelKind.NaturalGasTherm => 100_000 * BtuJ,
        FuelKind.FuelOilGallon => 138_500 * BtuJ,
        FuelKind.PelletsTon => 16_000_000 * BtuJ,
        FuelKind.ElectricityKwh => 3.6e6,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a known fuel."),
    };

    /// <summary>Selling units burnt for an amount of delivered heat.</summary>
    /// <param name="deliveredJ">Heat delivered to the house, J, 0 to 1e18.</param>
    /// <param name="heatJPerUnit">Heat in a selling unit, J, above 1e5.</param>
    /// <param name="efficiency">Seasonal efficiency on the same heating value, 0.2 to 1.1.</param>
    /// <returns>Selling units.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double Units(double deliveredJ, double heatJPerUnit, double efficiency)
    {
        Within.Require(deliveredJ, 0, 1e18);
        Within.Require(heatJPerUnit, 1e5, 1e13);
        Within.Require(efficiency, 0.2, 1.1);
        return deliveredJ / (heatJPerUnit * efficiency);
    }
}
