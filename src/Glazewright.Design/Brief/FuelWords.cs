namespace Glazewright.Design.Brief;

/// <summary>What a fuel is called in a sentence.</summary>
public static class FuelWords
{
    /// <summary>Its name.</summary>
    /// <param name="fuel">The lot's fuel.</param>
    public static string Of(FuelKind fuel) => fuel switch { FuelKind.Propane => "propane", FuelKind.NaturalGas => "natural gas", FuelKind.Oil => "fuel oil", _ => "no fuel" };
}
