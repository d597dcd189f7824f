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
    /// <param name="document">The job, for the fuel whose price it is; left out where no price is typed.</param>
    /// <returns>The edit; null when there is nothing to do.</returns>
    public static Edit? EditOf(string pointer, FieldShape shape, string typed, bool isThere, UnitSystem units, JobDocument? document = null)
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
            FieldShape.Measure or FieldShape.Either { First: FieldShape.Measure } => Edit.Typed(pointer, Stored(pointer, shape, text, units, document)),
            _ => Edit.Typed(pointer, SpokenWords.IsWeeks(pointer) ? SpokenWords.Weeks(text).Stored : text),
        };
    }

    /// <summary>The unit that stands beside a field and that its bare number is taken in; empty where one must be typed.</summary>
    /// <param name="pointer">The field.</param>
    /// <param name="shape">What may stand in it.</param>
    /// <param name="units">Units of the job.</param>
    /// <param name="document">The job, for the fuel whose price it is.</param>
    public static string UnitBeside(string pointer, FieldShape shape, UnitSystem units, JobDocument? document) =>
        MeasureOf(shape) is not { } measure ? ""
        : measure.Kind is QuantityKind.MoneyPerVolume && document is not null ? SpokenWords.PriceUnit(pointer, document, units)
        : UsualUnit(measure, units);

    /// <summary>What is understood of a quantity while it is typed into a field of the job.</summary>
    /// <param name="pointer">The field.</param>
    /// <param name="shape">What may stand in it.</param>
    /// <param name="typed">What is typed.</param>
    /// <param name="units">Units of the job.</param>
    /// <param name="document">The job.</param>
    /// <returns>The quantity in both families of units, what is unsure of it, or what is wrong.</returns>
    public static (string Words, bool IsRight) EchoOf(string pointer, FieldShape shape, string typed, UnitSystem units, JobDocument? document)
    {
        ArgumentNullException.ThrowIfNull(typed);
        if (SpokenWords.IsWeeks(pointer) && typed.Trim().Length > 0)
        {
            (string words, bool isRight, _) = SpokenWords.Weeks(typed.Trim());
            return (words, isRight);
        }

        if (MeasureOf(shape) is not { } first || typed.Trim().Length == 0)
        {
            return ("", true);
        }

        string stored = Stored(pointer, shape, typed.Trim(), units, document);
        FieldShape.Measure[] measures = shape is FieldShape.Either { Second: FieldShape.Measure second } ? [first, second] : [first];
        foreach (FieldShape.Measure measure in measures)
        {
            if (QuantityReader.TryRead(stored, measure.Kind, out Quantity quantity, out _))
            {
                string echo = QuantityFormat.Echo(quantity);
                // 0.7 for seven tenths becomes 0.7 %: right by the letter, and hardly meant.
                return measure.Kind == QuantityKind.Fraction && quantity.Inside is > 0 and < 0.01
                    ? ($"{echo}: less than one in a hundred. For {typed.Trim().TrimEnd('%').Trim()} of the whole type {QuantityFormat.Number(1e4 * quantity.Inside, 4)} %.", false)
                    : (measure.Kind == QuantityKind.TemperatureDifference ? "a difference of " + echo : echo, true);
            }
        }

        return Echo(stored, first.Kind, "");
    }

    private static FieldShape.Measure? MeasureOf(FieldShape shape) => shape switch
    {
        FieldShape.Measure measure => measure,
        FieldShape.Either { First: FieldShape.Measure first } => first,
        _ => null,
    };

    private static string Stored(string pointer, FieldShape shape, string text, UnitSystem units, JobDocument? document) =>
        WithUnit(SpokenWords.Plain(pointer, MeasureOf(shape)!.Kind, text, units), UnitBeside(pointer, shape, units, document));

    /// <summary>The unit a bare number is taken in; empty where one must be typed.</summary>
    /// <param name="kind">What is measured.</param>
    /// <param name="units">Units of the job.</param>
    /// <remarks>A pressure may be water gauge, psi or Pa: that is not guessed.</remarks>
    public static string UsualUnit(QuantityKind kind, UnitSystem units) => kind switch
    {
        QuantityKind.Pressure or QuantityKind.MoneyPerVolume or QuantityKind.Resistance or QuantityKind.Transmittance => "",
        _ when units == UnitSystem.Us => KindWords.Of(kind).Customary,
        _ => KindWords.Of(kind).Metric,
    };

    /// <summary>The unit a bare number is taken in, in a field: lengths that stay below a foot are in inches, or millimetres; electric power is in kW.</summary>
    /// <param name="measure">What may stand in the field.</param>
    /// <param name="units">Units of the job.</param>
    public static string UsualUnit(FieldShape.Measure measure, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(measure);
        bool isSmall = measure.Kind == QuantityKind.Length && QuantityReader.TryRead(measure.Most, QuantityKind.Length, out Quantity most, out _) && most.Inside < 0.3048;
        // Lamps and the like are told by the power they draw, in the US too.
        return measure.Kind == QuantityKind.Power && measure.Most.EndsWith("kW", StringComparison.Ordinal) ? "kW"
            : !isSmall ? UsualUnit(measure.Kind, units) : units == UnitSystem.Us ? "in" : "mm";
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
            : ($"{misreading.Wrong}{(misreading.Wrong.EndsWith('?') ? "" : ".")} Right: {misreading.Right}", false);
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
        if (unit.Length == 0 && usualUnit.StartsWith("$/", StringComparison.Ordinal) && text.StartsWith('$'))
        {
            return decimal.TryParse(text.AsSpan(1), NumberStyles.AllowLeadingWhite | NumberStyles.AllowDecimalPoint | NumberStyles.AllowThousands, CultureInfo.InvariantCulture, out _) ? $"{text[1..].Trim()} {usualUnit}" : text;
        }

        return unit switch { "" => text, ":12" => text + ":12", "$" => "$" + text, _ => $"{text} {unit}" };
    }
}
