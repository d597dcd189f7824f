using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Quantities;

namespace Glazewright.Web.Fields;

/// <summary>What becomes of characters typed into a field: the field's usual unit is put behind a bare number, and what was understood is told at once.</summary>
public static class Typing
{
    /// <summary>The edit that typing makes.</summary>
    /// <param name="pointer">The field.</param>
    /// <param name="shape">What may stand in it.</param>
    /// <param name="typed">What was typed; nothing takes the field out, so that its default holds.</param>
    /// <param name="isThere">Whether the document gives the field now.</param>
    /// <param name="units">Units of the job.</param>
    /// <returns>The edit; null when there is nothing to do.</returns>
    public static Edit? EditOf(string pointer, FieldShape shape, string typed, bool isThere, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(typed);
        string text = typed.Trim();
        if (text.Length == 0)
        {
            return isThere ? Edit.Removed(pointer) : null;
        }

        return shape switch
        {
            FieldShape.Flag when text is "true" or "false" => new Edit(pointer, text),
            FieldShape.Whole when int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int whole) => new Edit(pointer, whole.ToString(CultureInfo.InvariantCulture)),
            FieldShape.Measure measure => Edit.Typed(pointer, WithUnit(text, UsualUnit(measure, units))),
            FieldShape.Either { First: FieldShape.Measure first } => Edit.Typed(pointer, WithUnit(text, UsualUnit(first, units))),
            _ => Edit.Typed(pointer, text),
        };
    }

    /// <summary>The unit a bare number is taken in; empty where one must be typed.</summary>
    /// <param name="kind">What is measured.</param>
    /// <param name="units">Units of the job.</param>
    /// <remarks>A pressure may be water gauge, psi or Pa, and a difference is easily taken for a temperature: neither is guessed.</remarks>
    public static string UsualUnit(QuantityKind kind, UnitSystem units) => kind switch
    {
        QuantityKind.Pressure or QuantityKind.TemperatureDifference or QuantityKind.MoneyPerVolume or QuantityKind.Resistance or QuantityKind.Transmittance => "",
        _ when units == UnitSystem.Us => KindWords.Of(kind).Customary,
        _ => KindWords.Of(kind).Metric,
    };

    /// <summary>The unit a bare number is taken in, in a field: lengths that stay below a foot are in inches, or millimetres.</summary>
    /// <param name="measure">What may stand in the field.</param>
    /// <param name="units">Units of the job.</param>
    public static string UsualUnit(FieldShape.Measure measure, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(measure);
        bool isSmall = measure.Kind == QuantityKind.Length && QuantityReader.TryRead(measure.Most, QuantityKind.Length, out Quantity most, out _) && most.Inside < 0.3048;
        return !isSmall ? UsualUnit(measure.Kind, units) : units == UnitSystem.Us ? "in" : "mm";
    }

    /// <summary>What is understood of a quantity while it is typed into a field.</summary>
    /// <param name="typed">What is typed.</param>
    /// <param name="measure">What may stand in the field.</param>
    /// <param name="units">Units of the job.</param>
    /// <returns>The quantity in both families of units, or what is wrong; nothing for nothing.</returns>
    public static (string Words, bool IsRight) Echo(string typed, FieldShape.Measure measure, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return Echo(typed, measure.Kind, UsualUnit(measure, units));
    }

    /// <summary>What is understood of a quantity while it is typed.</summary>
    /// <param name="typed">What is typed.</param>
    /// <param name="kind">What is measured.</param>
    /// <param name="units">Units of the job.</param>
    /// <returns>The quantity in both families of units, or what is wrong; nothing for nothing.</returns>
    public static (string Words, bool IsRight) Echo(string typed, QuantityKind kind, UnitSystem units) => Echo(typed, kind, UsualUnit(kind, units));

    /// <summary>What is understood of a quantity whose bare number is taken in a unit.</summary>
    internal static (string Words, bool IsRight) Echo(string typed, QuantityKind kind, string usualUnit)
    {
        ArgumentNullException.ThrowIfNull(typed);
        return typed.Trim().Length == 0 ? ("", true)
            : QuantityReader.TryRead(WithUnit(typed.Trim(), usualUnit), kind, out Quantity quantity, out Misreading? misreading) ? (QuantityFormat.Echo(quantity), true)
            : ($"{misreading.Wrong}. Right: {misreading.Right}", false);
    }

    /// <summary>What stands in a field, as one would type it.</summary>
    /// <param name="node">The node, or null.</param>
    /// <param name="document">The document.</param>
    public static string Text(Node? node, JobDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        return node switch
        {
            null or BlankNode => "",
            TextNode text => text.Text,
            NumberNode number => number.Typed,
            FlagNode flag => flag.IsTrue ? "true" : "false",
            _ => document.Text[node.Place.Start..node.Place.End],
        };
    }

    /// <summary>A bare number with a unit put behind it; anything else as it is.</summary>
    internal static string WithUnit(string text, string usualUnit)
    {
        bool bare = decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowThousands, CultureInfo.InvariantCulture, out _);
        string unit = bare ? usualUnit : "";
        return unit switch { "" => text, ":12" => text + ":12", "$" => "$" + text, _ => $"{text} {unit}" };
    }
}
