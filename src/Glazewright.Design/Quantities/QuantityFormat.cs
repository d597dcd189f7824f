using System.Globalization;
using static Glazewright.Design.Quantities.QuantityKind;

namespace Glazewright.Design.Quantities;

/// <summary>Writes quantities back, so that they are read again as the same value within the digits shown.</summary>
public static class QuantityFormat
{
    /// <summary>A value in one family of units: <c>26'-0"</c> or <c>7.92 m</c>.</summary>
    /// <param name="kind">What it measures.</param>
    /// <param name="inside">Value in the kind's inside unit, finite.</param>
    /// <param name="family">Family; a kind that has one family only is written in it.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static string In(QuantityKind kind, double inside, UnitFamily family)
    {
        Science.Guards.Within.RequireFinite(inside);
        return WithUnit(kind, inside, Shown(kind, inside, family), 4);
    }

    /// <summary>What was understood: the value in the typed unit, and in the other family where there is one.</summary>
    /// <param name="quantity">A quantity that was read.</param>
    /// <returns>Such as <c>26'-0" (7.92 m)</c>.</returns>
    public static string Echo(Quantity quantity)
    {
        string typed = WithUnit(quantity.Kind, quantity.Inside, quantity.Unit, 9);
        if (quantity.Kind == Pitch)
        {
            string other = quantity.Unit.Symbol == ":12" ? Degrees(quantity.Inside) : WithUnit(Pitch, quantity.Inside, Shown(Pitch, 0, UnitFamily.Both), 4);
            return $"{typed} ({other})";
        }

        UnitFamily otherFamily = quantity.Unit.Family switch
        {
            UnitFamily.Customary => UnitFamily.Metric,
            UnitFamily.Metric => UnitFamily.Customary,
            _ => UnitFamily.Both,
        };
        UnitOfMeasure shown = Shown(quantity.Kind, quantity.Inside, otherFamily);
        bool same = otherFamily == UnitFamily.Both || shown.Family == UnitFamily.Both || shown.Symbol == quantity.Unit.Symbol;
        string both = same ? typed : $"{typed} ({WithUnit(quantity.Kind, quantity.Inside, shown, 4)})";
        return quantity.Currency.Length == 0 ? both : both.Replace("$", quantity.Currency, StringComparison.Ordinal);
    }

    /// <summary>A number with its significant digits and no needless zeros, thousands parted from 1,000 on.</summary>
    /// <param name="number">Finite.</param>
    /// <param name="significantDigits">1 to 15.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not finite, or digits out of range.</exception>
    public static string Number(double number, int significantDigits)
    {
        Science.Guards.Within.RequireFinite(number);
        Science.Guards.Within.Require(significantDigits, 1, 15);
        if (number == 0)
        {
            return "0";
        }

        int magnitude = (int)Math.Floor(Math.Log10(Math.Abs(number))) + 1;
        int decimals = Math.Clamp(significantDigits - magnitude, 0, 15);
        if (magnitude > 15 || magnitude < -9)
        {
            return number.ToString("G" + significantDigits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        }

        return number.ToString(decimals == 0 ? "#,##0" : "#,##0." + new string('#', decimals), CultureInfo.InvariantCulture);
    }

    private static string WithUnit(QuantityKind kind, double inside, UnitOfMeasure unit, int digits)
    {
        if (kind == Length && unit.Family == UnitFamily.Customary && Math.Abs(inside) < 1000)
        {
            return FeetInches.Format(inside);
        }

        if (kind == Pitch && unit.Kind == Angle)
        {
            return Degrees(inside);
        }

        double number = unit.FromInside(inside);
        string text = kind switch
        {
            Length when unit.Symbol == "m" && digits == 4 => number.ToString("#,##0.00", CultureInfo.InvariantCulture),
            Temperature when digits == 4 => number.ToString("0.0", CultureInfo.InvariantCulture),
            _ => Number(number, digits),
        };
        text = text == "-0.0" ? "0.0" : text;
        return unit.Symbol switch
        {
            "" => text,
            ":12" => text + ":12",
            "$" => text.StartsWith('-') ? "-$" + text[1..] : "$" + text,
            "h·ft²·F/Btu" => "R-" + text,
            _ => $"{text} {unit.Symbol}",
        };
    }

    internal static string Degrees(double riseOverRun) => Number(Math.Atan(riseOverRun) * 180 / Math.PI, 4) + " deg";

    // Small pressures are said in inches of water or Pa, large ones in psi or kPa; short lengths in mm.
    private static UnitOfMeasure Shown(QuantityKind kind, double inside, UnitFamily family)
    {
        KindWords words = KindWords.Of(kind);
        string symbol = family == UnitFamily.Customary ? words.Customary : words.Metric;
        if (kind == Pressure && Math.Abs(inside) >= 5000)
        {
            symbol = family == UnitFamily.Customary ? "psi" : "kPa";
        }
        else if (kind == Length && symbol == "m" && Math.Abs(inside) < 0.5)
        {
            symbol = "mm";
        }
        else if (kind == WaterFlow && Math.Abs(inside) < 2e-5)
        {
            symbol = family == UnitFamily.Customary ? "gph" : "L/h";
        }

        return symbol switch
        {
            "" => new UnitOfMeasure("", Ratio, 1, 0, UnitFamily.Both),
            ":12" => new UnitOfMeasure(":12", Pitch, 1.0 / 12, 0, UnitFamily.Both),
            _ => UnitTable.Of(kind).First(u => u.Symbol == symbol),
        };
    }
}
