using Glazewright.Design.Contracts;
using Glazewright.Design.Quantities;
using Glazewright.Science.Heat;
using LotFuel = Glazewright.Design.Brief.FuelKind;

namespace Glazewright.Papers.Answers;

/// <summary>Fuel in the units it is sold in: gallons or therms, or litres and cubic metres.</summary>
internal static class FuelBought
{
    /// <summary>An amount of it, and its unit.</summary>
    /// <param name="fuel">The lot's fuel; not none.</param>
    /// <param name="grossJ">Gross heat, J.</param>
    /// <param name="units">The reader's units.</param>
    public static (double Amount, string Unit) Of(LotFuel fuel, double grossJ, UnitSystem units)
    {
        bool us = units == UnitSystem.Us;
        if (fuel == LotFuel.NaturalGas)
        {
            return us ? (grossJ / Fuel.HeatJPerUnit(FuelKind.NaturalGasTherm), "therms") : (grossJ / Fuel.NaturalGasJPerM3, "m³");
        }

        double gallons = grossJ / Fuel.HeatJPerUnit(fuel == LotFuel.Oil ? FuelKind.FuelOilGallon : FuelKind.PropaneGallon);
        return us ? (gallons, "gal") : (1000 * UnitTable.GallonM3 * gallons, "L");
    }
}
