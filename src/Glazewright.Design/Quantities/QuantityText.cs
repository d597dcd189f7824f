using System.Globalization;
using System.Text;

namespace Glazewright.Design.Quantities;

/// <summary>One number of a typed quantity with the unit that follows it.</summary>
/// <param name="Number">The number; never negative.</param>
/// <param name="NumberText">The number as typed.</param>
/// <param name="Unit">The unit as typed, empty when none follows.</param>
internal readonly record struct QuantityTerm(double Number, string NumberText, string Unit);

/// <summary>Takes a typed text apart into numbers and units; knows characters, not what units mean.</summary>
internal static class QuantityText
{
    private const string VulgarFractions = "½ 1/2 ¼ 1/4 ¾ 3/4 ⅛ 1/8 ⅜ 3/8 ⅝ 5/8 ⅞ 7/8 ⅓ 1/3 ⅔ 2/3 ⅕ 1/5 ⅖ 2/5 ⅗ 3/5 ⅘ 4/5 ⅙ 1/6 ⅚ 5/6";
    private static readonly Dictionary<char, string> s_fractions = VulgarFractions.Split(' ').Chunk(2).ToDictionary(p => p[0][0], p => p[1]);

    private static readonly char[] s_inNumbers = ['0', '1', '2', '3', '4', '5', '6', '7', '8', '9', '.', ' '];

    /// <summary>The text with typographic signs made plain: quotes, primes, dashes, built-up fractions, superscripts, spaces.</summary>
    public static string Plain(string text)
    {
        StringBuilder plain = new(text.Length + 8);
        foreach (char c in text)
        {
            if (s_fractions.TryGetValue(c, out string? fraction))
            {
                plain.Append(plain.Length > 0 && char.IsAsciiDigit(plain[^1]) ? " " : "").Append(fraction);
                continue;
            }

            plain.Append(c switch
            {
                '’' or '‘' or '′' or 'ʹ' or '`' => "'",
                '“' or '”' or '″' or 'ʺ' or '„' => "\"",
                '−' or '–' or '—' or '‐' or '‑' => "-",
                '⁄' or '∕' => "/",
                'µ' or 'μ' => "u",
                '²' => "2",
                '³' => "3",
                '°' or 'º' => "deg",
                'Δ' or '∆' => "delta",
                '∶' => ":",
                _ when char.IsWhiteSpace(c) => " ",
                _ => c.ToString(),
            });
        }

        return plain.ToString().Replace("''", "\"", StringComparison.Ordinal).Trim();
    }

    /// <summary>A unit's normal form: no spaces, dots, brackets or multiplication signs; one division sign.</summary>
    public static string UnitKey(string unit)
    {
        string plain = Plain(unit).Replace(" per ", "/", StringComparison.Ordinal);
        StringBuilder key = new(plain.Length);
        bool divided = false;
        foreach (char c in plain)
        {
            bool second = c == '/' && divided;
            divided |= c == '/';
            if (!second && c is not (' ' or '.' or '(' or ')' or '^' or '*' or '·' or '⋅' or '•' or '-' or ',' or '_'))
            {
                key.Append(c);
            }
        }

        return key.ToString().Replace("degrees", "deg", StringComparison.OrdinalIgnoreCase).Replace("degree", "deg", StringComparison.OrdinalIgnoreCase).Replace("degF", "F", StringComparison.OrdinalIgnoreCase).Replace("degC", "C", StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>Splits plain text into numbers with their units.</summary>
    /// <param name="plain">Text from <see cref="Plain"/> without a leading sign.</param>
    /// <param name="terms">The terms in order.</param>
    /// <param name="wrong">What is wrong, when the answer is false.</param>
    /// <returns>True when the whole text was read.</returns>
    public static bool TrySplit(string plain, List<QuantityTerm> terms, out string wrong)
    {
        wrong = "";
        int at = 0;
        while (at < plain.Length)
        {
            at = SkipJoint(plain, at, terms.Count > 0);
            int start = at;
            if (!TryNumber(plain, ref at, out double number, out wrong))
            {
                return false;
            }

            string numberText = plain[start..at].Trim();
            int unitStart = at;
            at = EndOfUnit(plain, at);
            terms.Add(new QuantityTerm(number, numberText, plain[unitStart..at].Trim()));
        }

        return true;
    }

    /// <summary>Reads one number: 12, 1,500, 12.5, 1/2, 12 1/2, 12-1/2, 1e3.</summary>
    public static bool TryNumber(string plain, ref int at, out double number, out string wrong)
    {
        number = 0;
        wrong = "";
        int start = at;
        if (!TryDecimal(plain, ref at, out double whole, out wrong))
        {
            return false;
        }

        number = whole;
        bool isWhole = whole == Math.Floor(whole) && plain.AsSpan(start, at - start).IndexOfAny('.', 'e', 'E') < 0;
        if (isWhole && TryOver(plain, at, out int afterSimple, out double below))
        {
            if (below == 0)
            {
                wrong = $"{plain[start..afterSimple]} divides by nothing";
                return false;
            }

            number = whole / below;
            at = afterSimple;
        }
        else if (isWhole && at < plain.Length && plain[at] is ' ' or '-' && Digits(plain, at + 1, out int afterTop, out double top)
            && TryOver(plain, afterTop, out int afterMixed, out double bottom))
        {
            if (!(top < bottom))
            {
                wrong = $"{plain[(at + 1)..afterMixed]} is not a proper fraction";
                return false;
            }

            number = whole + top / bottom;
            at = afterMixed;
        }

        return true;
    }

    private static bool TryOver(string text, int at, out int end, out double below)
    {
        end = at;
        below = 0;
        return at < text.Length && text[at] == '/' && Digits(text, at + 1, out end, out below);
    }

    private static bool Digits(string text, int at, out int end, out double value)
    {
        end = at;
        value = 0;
        while (end < text.Length && char.IsAsciiDigit(text[end]))
        {
            value = value * 10 + (text[end] - '0');
            end++;
        }

        return end > at;
    }

    private static bool TryDecimal(string text, ref int at, out double value, out string wrong)
    {
        int start = at;
        while (at < text.Length && (char.IsAsciiDigit(text[at]) || text[at] == '.'
            || (text[at] == ',' && at + 1 < text.Length && char.IsAsciiDigit(text[at + 1]))))
        {
            at++;
        }

        if (at > start && at + 1 < text.Length && text[at] is 'e' or 'E'
            && (char.IsAsciiDigit(text[at + 1]) || (text[at + 1] is '+' or '-' && at + 2 < text.Length && char.IsAsciiDigit(text[at + 2]))))
        {
            at += 2;
            while (at < text.Length && char.IsAsciiDigit(text[at]))
            {
                at++;
            }
        }

        string typed = text[start..at];
        value = 0;
        wrong = "";
        if (typed.Length == 0)
        {
            wrong = start >= text.Length ? "a number is missing at the end" : $"there is no number at '{text[start..]}'";
            return false;
        }

        if (typed.Contains(',', StringComparison.Ordinal) && !CommasGroupThousands(typed))
        {
            wrong = $"the comma in {typed} does not part thousands; a decimal is written {typed.Replace(',', '.')}";
            return false;
        }

        if (!double.TryParse(typed.Replace(",", "", StringComparison.Ordinal), NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent,
            CultureInfo.InvariantCulture, out value) || !(Math.Abs(value) < 1e15))
        {
            wrong = $"{typed} is not a number that can be used";
            return false;
        }

        return true;
    }

    private static bool CommasGroupThousands(string typed)
    {
        string whole = typed.Split('.', 2)[0];
        string[] groups = whole.Split(',');
        return groups[0].Length is >= 1 and <= 3 && groups.Skip(1).All(g => g.Length == 3 && g.All(char.IsAsciiDigit))
            && typed.LastIndexOf(',') < whole.Length;
    }

    // Between 12' and 6" may stand spaces, a dash, a comma, "and".
    private static int SkipJoint(string text, int at, bool between)
    {
        while (at < text.Length && (text[at] == ' ' || (between && text[at] is '-' or ',')))
        {
            at++;
        }

        return between && text.AsSpan(at).StartsWith("and ", StringComparison.Ordinal) ? at + 4 : at;
    }

    // A unit runs to the next number. A digit directly behind a letter belongs to the unit (m2, H2O) unless a smaller unit follows it (12ft6in).
    private static int EndOfUnit(string text, int at)
    {
        while (at < text.Length && text[at] == ' ')
        {
            at++;
        }

        if (at < text.Length && text[at] is '\'' or '"')
        {
            // 11" WC is a pressure: the letters belong to the mark.
            string behind = text[(at + 1)..];
            return text[at] == '"' && UnitKey(behind).ToUpperInvariant() is "WC" or "WG" ? text.Length : at + 1;
        }

        while (at < text.Length)
        {
            char c = text[at];
            bool startsNumber = char.IsAsciiDigit(c) ? !BelongsToUnit(text, at) : c == '.' && text[at - 1] == ' ' && at + 1 < text.Length && char.IsAsciiDigit(text[at + 1]);
            if (startsNumber)
            {
                break;
            }

            at++;
        }

        // Give back a joint that stands before the next number.
        if (at < text.Length)
        {
            while (at > 0 && text[at - 1] is ' ' or '-' or ',')
            {
                at--;
            }

            at = text.AsSpan(0, at).EndsWith(" and", StringComparison.Ordinal) ? at - 4 : at;
        }

        return at;
    }

    private static bool BelongsToUnit(string text, int at)
    {
        char before = text[at - 1];
        if (before == '/' || (before == '^') || char.IsAsciiDigit(before) || before == ',')
        {
            return true;
        }

        if (!char.IsAsciiLetter(before))
        {
            return false;
        }

        string rest = text[at..];
        string tail = rest.TrimStart(s_inNumbers);
        tail = tail.Length > 1 && tail[0] == '/' && char.IsAsciiDigit(tail[1]) ? tail[1..].TrimStart(s_inNumbers) : tail;
        return !(tail is "in" or "in." or "inch" or "inches" or "min" or "oz" || (rest.Length - tail.Length > 1 && tail.Length == 0));
    }
}
