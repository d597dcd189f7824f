namespace Glazewright.Design.Quantities;

/// <summary>A typed quantity, understood.</summary>
/// <param name="Kind">What it measures.</param>
/// <param name="Inside">Value in the kind's inside unit (see <see cref="QuantityKind"/>).</param>
/// <param name="Unit">The unit it was typed in; of several, the largest.</param>
/// <param name="Currency">Currency sign of a price ($, €, £), or empty.</param>
public readonly record struct Quantity(QuantityKind Kind, double Inside, UnitOfMeasure Unit, string Currency)
{
    /// <summary>What was understood, in the units typed and then in the other family: <c>26'-0" (7.92 m)</c>.</summary>
    public string Echo => QuantityFormat.Echo(this);
}

/// <summary>Why a text is not the quantity wanted.</summary>
/// <param name="Wrong">What is wrong.</param>
/// <param name="Right">What would be right.</param>
public sealed record Misreading(string Wrong, string Right)
{
    /// <summary>A range was typed where one number stands.</summary>
    public bool IsRange { get; init; }
}
