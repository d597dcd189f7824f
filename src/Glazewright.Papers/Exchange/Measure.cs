using Glazewright.Design.Contracts;
using Glazewright.Design.Quantities;

namespace Glazewright.Papers.Exchange;

/// <summary>Takeoff quantities in the units people order in.</summary>
internal static class Measure
{
    private const double FootM = 0.3048;
    private const double YardM = 0.9144;
    private const double PoundKg = 0.45359237;

    /// <summary>Quantity and unit as ordered: feet, square feet, cubic yards and pounds, or as measured.</summary>
    public static (double Quantity, string Per) Of(double quantity, string per, UnitSystem units) => (units, per) switch
    {
        (UnitSystem.Us, "m") => (quantity / FootM, "ft"),
        (UnitSystem.Us, "m²") => (quantity / (FootM * FootM), "ft²"),
        (UnitSystem.Us, "m³") => (quantity / (YardM * YardM * YardM), "yd³"),
        (UnitSystem.Us, "kg") => (quantity / PoundKg, "lb"),
        _ => (quantity, per),
    };

    /// <summary>A length as the shop reads it: feet, inches and sixteenths, or millimetres.</summary>
    public static string Length(double lengthM, UnitSystem units) =>
        units == UnitSystem.Us ? FeetInches.Format(lengthM) : Math.Round(lengthM * 1000).ToString("0", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>A length as a saw's stop reads it: decimal inches or millimetres.</summary>
    public static double Stop(double lengthM, UnitSystem units) => units == UnitSystem.Us ? lengthM / 0.0254 : lengthM * 1000;

    /// <summary>Mass as weighed.</summary>
    public static double Mass(double massKg, UnitSystem units) => units == UnitSystem.Us ? massKg / PoundKg : massKg;
}
