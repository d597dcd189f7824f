using Glazewright.Design.Contracts;
using Glazewright.Science.Heat;
using LotFuel = Glazewright.Design.Brief.FuelKind;

namespace Glazewright.Papers.Answers;

/// <summary>Fuel in the units it is sold in: gallons or therms, or litres and cubic metres.</summary>
internal static class FuelBought
{
    private const double GallonL = 3.785411784;

    // Gross heat of pipeline gas, as the tariffs take it: 1,025 Btu/ft³ (common practice).
    private const double GasJPerM3 = 1025 * Fuel.BtuJ / 0.028316846592;

    /// <summary>Name of the fuel; empty for none.</summary>
    /// <param name="fuel">The lot's fuel.</param>
    public static string Name(LotFuel fuel) => fuel switch { LotFuel.Propane => "propane", LotFuel.NaturalGas => "natural gas", LotFuel.Oil => "fuel oil", _ => "" };

    /// <summary>An amount of it, and its unit.</summary>
    /// <param name="fuel">The lot's fuel; not none.</param>
    /// <param name="grossJ">Gross heat, J.</param>
    /// <param name="units">The reader's units.</param>
    public static (double Amount, string Unit) Of(LotFuel fuel, double grossJ, UnitSystem units) => (fuel, units) switch
    {
        (LotFuel.NaturalGas, UnitSystem.Us) => (grossJ / Fuel.HeatJPerUnit(FuelKind.NaturalGasTherm), "therms"),
        (LotFuel.NaturalGas, _) => (grossJ / GasJPerM3, "m³"),
        (LotFuel.Oil, UnitSystem.Us) => (grossJ / Fuel.HeatJPerUnit(FuelKind.FuelOilGallon), "gal"),
        (LotFuel.Oil, _) => (GallonL * grossJ / Fuel.HeatJPerUnit(FuelKind.FuelOilGallon), "L"),
        (_, UnitSystem.Us) => (grossJ / Fuel.HeatJPerUnit(FuelKind.PropaneGallon), "gal"),
        _ => (GallonL * grossJ / Fuel.HeatJPerUnit(FuelKind.PropaneGallon), "L"),
    };
}
