namespace Glazewright.Design.Quantities;

/// <summary>Which of the two families of units a text was in.</summary>
public enum UnitFamily
{
    /// <summary>Metres, kilograms, degrees Celsius.</summary>
    Metric,

    /// <summary>Feet, pounds, degrees Fahrenheit.</summary>
    Customary,

    /// <summary>Belongs to both (percent, volts).</summary>
    Both,
}

/// <summary>One unit of the table: inside value = typed × factor + offset.</summary>
/// <param name="Symbol">How it is printed, and one way it is read.</param>
/// <param name="Kind">What it measures.</param>
/// <param name="FactorToInside">Size in the kind's inside unit.</param>
/// <param name="OffsetToInside">Shift of the zero, in the kind's inside unit; only for temperatures.</param>
/// <param name="Family">The family.</param>
/// <param name="Spellings">Other ways it is read, in normal form (no spaces, dots, or middle dots).</param>
public sealed record UnitOfMeasure(
    string Symbol,
    QuantityKind Kind,
    double FactorToInside,
    double OffsetToInside,
    UnitFamily Family,
    params string[] Spellings)
{
    /// <summary>True when upper and lower case mean different units (MJ is not mJ).</summary>
    public bool CaseMatters => Symbol is "MW" or "MJ" or "MPa" or "MWh";

    /// <summary>Inside value of a typed number.</summary>
    /// <param name="typed">Number in this unit.</param>
    /// <returns>The number in the kind's inside unit.</returns>
    public double ToInside(double typed) => typed * FactorToInside + OffsetToInside;

    /// <summary>Number in this unit of an inside value.</summary>
    /// <param name="inside">Number in the kind's inside unit.</param>
    /// <returns>The number in this unit.</returns>
    public double FromInside(double inside) => (inside - OffsetToInside) / FactorToInside;
}
