using System.Diagnostics.CodeAnalysis;
using System.Text.RegularExpressions;

namespace Glazewright.Design.Quantities;

/// <summary>Reads what a builder types: <c>12'-6 1/2"</c>, <c>9.5:12</c>, <c>88 F</c>, <c>5000 cfm</c>, <c>R-20</c>, <c>2.10 $/gal</c>.</summary>
public static partial class QuantityReader
{
    private const int LongestText = 60;
    private static readonly UnitOfMeasure s_number = new("", QuantityKind.Ratio, 1, 0, UnitFamily.Both);
    private static readonly UnitOfMeasure s_risePerTwelve = new(":12", QuantityKind.Pitch, 1.0 / 12, 0, UnitFamily.Both);
    private static readonly string[] s_currencies = ["$", "€", "£"];

    /// <summary>Reads a text as a quantity of one kind.</summary>
    /// <param name="text">What was typed, at most 60 characters.</param>
    /// <param name="kind">What is wanted.</param>
    /// <param name="quantity">The quantity, when the answer is true.</param>
    /// <param name="misreading">What is wrong and what would be right, when the answer is false.</param>
    /// <returns>True when the text is such a quantity.</returns>
    public static bool TryRead(string text, QuantityKind kind, out Quantity quantity, [NotNullWhen(false)] out Misreading? misreading)
    {
        ArgumentNullException.ThrowIfNull(text);
        quantity = default;
        KindWords words = KindWords.Of(kind);
        if (text.Length > LongestText)
        {
            misreading = new Misreading($"{text.Length} characters are too many for {words.Name}", Examples(words));
            return false;
        }

        string plain = QuantityText.Plain(text);
        if (plain.Length == 0)
        {
            misreading = new Misreading($"nothing is typed; {words.Name} is wanted", Examples(words));
            return false;
        }

        string currency = IsMoney(kind) ? TakeCurrency(ref plain) : "";
        bool negative = plain[0] is '-';
        string unsigned = plain[0] is '-' or '+' ? plain[1..].TrimStart() : plain;
        if (TrySpecialForm(unsigned, kind, out double inside, out UnitOfMeasure? unit))
        {
            return Accept(kind, negative ? -inside : inside, unit, "", out quantity, out misreading);
        }

        List<QuantityTerm> terms = [];
        bool read = QuantityText.TrySplit(unsigned, terms, out string wrong)
            ? terms.Count == 0
                ? Refuse($"'{text}' cannot be read as {words.Name}", Examples(words), out misreading)
                : TryCombine(text, terms, negative, kind, currency, out quantity, out misreading)
            : Refuse($"'{text}' cannot be read as {words.Name}: {wrong}", Examples(words), out misreading);
        if (!read && Ranges().Match(unsigned) is { Success: true } range)
        {
            misreading = new Misreading($"'{text}' is a range", $"one number, as {words.Examples[0]}") { IsRange = true };
        }

        return read;
    }

    // 65-70, 60-75%, 65 F to 70 F.
    [GeneratedRegex(@"^[\d.,]+(?!e[-+]?\d)\s*[^\d\s'""-]{0,6}?\s*(?:-|\bto\b|\.\.)\s*[\d.,]+\s*[^\d\s'""]{0,6}$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Ranges();

    private static bool TryCombine(
        string text, List<QuantityTerm> terms, bool negative, QuantityKind kind, string currency, out Quantity quantity, [NotNullWhen(false)] out Misreading? misreading)
    {
        quantity = default;
        UnitOfMeasure? largest = null;
        UnitOfMeasure? before = null;
        double inside = 0;
        foreach (QuantityTerm term in terms)
        {
            if (!TryUnit(text, terms, term, kind, out UnitOfMeasure? unit, out misreading))
            {
                return false;
            }

            if (before is not null && !GoesBelow(before, unit))
            {
                return Refuse($"'{text}': {term.NumberText} {term.Unit} cannot follow {before.Symbol}", Examples(KindWords.Of(kind)), out misreading);
            }

            if (before is not null && !(term.Number * unit.FactorToInside < before.FactorToInside))
            {
                return Refuse($"'{text}': {term.NumberText} {unit.Symbol} is more than one {before.Symbol}", $"carry it over into {before.Symbol}", out misreading);
            }

            largest ??= unit;
            before = unit;
            inside += terms.Count == 1 ? unit.ToInside(negative ? -term.Number : term.Number) : unit.ToInside(term.Number);
        }

        inside = terms.Count > 1 && negative ? -inside : inside;
        if (kind == QuantityKind.Pitch && largest!.Kind == QuantityKind.Angle)
        {
            if (!(Math.Abs(inside) < 89))
            {
                return Refuse($"'{text}' is too steep for a pitch", "an angle below 89 deg", out misreading);
            }

            inside = Math.Tan(inside * Math.PI / 180);
        }

        return Accept(kind, inside, largest!, currency, out quantity, out misreading);
    }

    private static bool Accept(
        QuantityKind kind, double inside, UnitOfMeasure unit, string currency, out Quantity quantity, [NotNullWhen(false)] out Misreading? misreading)
    {
        quantity = new Quantity(kind, inside == 0 ? 0 : inside, unit, currency);
        misreading = null;
        return true;
    }

    private static bool Refuse(string wrong, string right, [NotNull] out Misreading? misreading)
    {
        misreading = new Misreading(wrong, right);
        return false;
    }

    private static bool TryUnit(
        string text, List<QuantityTerm> terms, QuantityTerm term, QuantityKind kind, [NotNullWhen(true)] out UnitOfMeasure? unit, [NotNullWhen(false)] out Misreading? misreading)
    {
        KindWords words = KindWords.Of(kind);
        misreading = null;
        unit = null;
        if (term.Unit.Length == 0)
        {
            if (kind == QuantityKind.Ratio && terms.Count == 1)
            {
                unit = s_number;
                return true;
            }

            // 8'-6 is eight feet six: nothing else is written behind a foot mark.
            if (kind == QuantityKind.Length && terms.Count == 2 && terms[0].Unit == "'" && term == terms[1])
            {
                unit = UnitTable.Spelled("in").First(u => u.Kind == kind);
                return true;
            }

            return Refuse($"{term.NumberText} has no unit", words.With(term.NumberText), out misreading);
        }

        IReadOnlyList<UnitOfMeasure> meant = UnitTable.Spelled(QuantityText.UnitKey(term.Unit));
        unit = meant.FirstOrDefault(u => u.Kind == kind)
            ?? (kind == QuantityKind.Pitch ? meant.FirstOrDefault(u => u.Kind == QuantityKind.Angle) : null)
            ?? (kind == QuantityKind.TemperatureDifference ? DifferenceIn(meant.FirstOrDefault(u => u.Kind == QuantityKind.Temperature)) : null);
        if (unit is not null && !IsTornUnit(term.Unit, kind))
        {
            return true;
        }

        unit = null;
        return meant.Count == 0 || meant.Any(u => u.Kind == kind)
            ? Refuse($"'{term.Unit}' in '{text}' is not a unit of {words.Name}", words.With(term.NumberText), out misreading)
            : Refuse($"'{text}' is {KindWords.Of(meant[0].Kind).Name}; {words.Name} is wanted", words.With(term.NumberText), out misreading);
    }

    // Where only a difference is taken, "3 F" can be nothing else.
    private static UnitOfMeasure? DifferenceIn(UnitOfMeasure? temperature) =>
        temperature is null ? null : UnitTable.Of(QuantityKind.TemperatureDifference).FirstOrDefault(u => u.Family == temperature.Family);

    // "5 m m" is not 5 mm: a thousandfold slip is not mended by guessing. "sq ft" and "in wg" are fine, and so is "88.3 deg W".
    private static bool IsTornUnit(string unit, QuantityKind kind)
    {
        int gap = unit.IndexOf(' ', StringComparison.Ordinal);
        return gap > 0 && kind != QuantityKind.Angle && UnitTable.Spelled(QuantityText.UnitKey(unit[..gap])).Any(u => u.Kind == kind);
    }

    // Only lengths, weights and times are said in two units.
    private static bool GoesBelow(UnitOfMeasure larger, UnitOfMeasure smaller) => (larger.Symbol, smaller.Symbol) switch
    {
        ("ft", "in") or ("yd", "ft") or ("m", "cm") or ("m", "mm") or ("cm", "mm") or ("lb", "oz") => larger.Kind is QuantityKind.Length or QuantityKind.Mass,
        ("wk", "d") or ("d", "h") or ("d", "min") or ("h", "min") or ("h", "s") or ("min", "s") => true,
        _ => false,
    };

    private static bool TrySpecialForm(string text, QuantityKind kind, out double inside, [NotNullWhen(true)] out UnitOfMeasure? unit)
    {
        inside = 0;
        unit = null;
        int at;
        if (text.Length == 0)
        {
            return false;
        }

        switch (kind)
        {
            case QuantityKind.Resistance when text[0] is 'R' or 'r':
                bool metric = text.StartsWith("RSI", StringComparison.OrdinalIgnoreCase);
                at = SkipTo(text, metric ? 3 : 1);
                unit = UnitTable.Of(kind)[metric ? 1 : 0];
                break;
            case QuantityKind.Transmittance when text[0] is 'U' or 'u':
                at = SkipTo(text, 1);
                unit = UnitTable.Of(kind)[0];
                break;
            case QuantityKind.Pitch:
                return TryRiseOverRun(text, out inside, out unit);
            default:
                return false;
        }

        bool read = QuantityText.TryNumber(text, ref at, out double number, out _) && at == text.Length;
        inside = read ? unit.ToInside(number) : 0;
        return read;
    }

    private static int SkipTo(string text, int at)
    {
        while (at < text.Length && text[at] is ' ' or '-')
        {
            at++;
        }

        return at;
    }

    private static bool TryRiseOverRun(string text, out double inside, [NotNullWhen(true)] out UnitOfMeasure? unit)
    {
        inside = 0;
        unit = null;
        foreach (string joint in (string[])[":", " in ", "/"])
        {
            string[] parts = text.Split(joint);
            if (parts.Length == 2 && TryWholeNumber(parts[0], out double rise) && TryWholeNumber(parts[1], out double run) && run > 0)
            {
                inside = rise / run;
                unit = s_risePerTwelve;
                return true;
            }
        }

        return false;
    }

    private static bool TryWholeNumber(string text, out double number)
    {
        string trimmed = text.Trim();
        int at = 0;
        return QuantityText.TryNumber(trimmed, ref at, out number, out _) && at == trimmed.Length;
    }

    private static bool IsMoney(QuantityKind kind) => kind is QuantityKind.Money or QuantityKind.MoneyPerEnergy or QuantityKind.MoneyPerPower
        or QuantityKind.MoneyPerVolume or QuantityKind.MoneyPerTime or QuantityKind.MoneyPerLength or QuantityKind.MoneyPerArea or QuantityKind.MoneyPerMass;

    // $2.10/gal becomes 2.10 $/gal, and every currency is looked up as $: the job says which one it reckons in.
    private static string TakeCurrency(ref string plain)
    {
        plain = plain.Replace("USD", "$", StringComparison.Ordinal).Replace("EUR", "€", StringComparison.Ordinal).Replace("GBP", "£", StringComparison.Ordinal);
        string text = plain;
        string sign = s_currencies.FirstOrDefault(s => text.Contains(s, StringComparison.Ordinal)) ?? "";
        if (sign.Length == 0)
        {
            return "";
        }

        plain = plain.Replace(sign, "$", StringComparison.Ordinal);
        bool negative = plain.StartsWith('-');
        string unsigned = plain.TrimStart('-', ' ');
        if (unsigned.StartsWith('$'))
        {
            int at = 1;
            while (at < unsigned.Length && (unsigned[at] == ' ' || char.IsAsciiDigit(unsigned[at]) || unsigned[at] is ',' or '.'))
            {
                at++;
            }

            plain = $"{(negative ? "-" : "")}{unsigned[1..at].Trim()} ${unsigned[at..]}";
        }

        return sign;
    }

    private static string Examples(KindWords words) => string.Join(" or ", words.Examples.Take(3));
}
