using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Glazewright.Design.Quantities;

/// <summary>Takes a stretch of the year apart as people write it: weeks, months, dates, either order of day and month, "to", "through" or a dash between.</summary>
internal static partial class SpanText
{
    private static readonly string[] s_allYear = ["all year", "year round", "year-round", "all year round", "whole year", "the whole year"];

    // One end: a week, a date by name or number, a whole month; a bare number goes by the other end ("wk 2-17", "May 18-30").
    private const string End = @"(?:(?:weeks?|wks?|w)\.?\s*(?<week>[0-9]{1,2})|(?<month>[a-z]{3,9})\.?\s*(?<day>[0-9]{1,2})(?:st|nd|rd|th)?|(?<day>[0-9]{1,2})(?:st|nd|rd|th)?\.?\s*(?:of\s+)?(?<month>[a-z]{3,9})\.?|(?<number>[0-9]{1,2})-(?<day>[0-9]{1,2})|(?<month>[a-z]{3,9})\.?|(?<bare>[0-9]{1,2})(?:st|nd|rd|th)?)";

    /// <summary>Reads a stretch of the year.</summary>
    /// <param name="text">What was typed, at most 60 characters.</param>
    /// <param name="span">The stretch, when the answer is true.</param>
    /// <param name="misreading">What is wrong and what would be right, when it is false.</param>
    public static bool TryRead(string text, out YearSpan span, [NotNullWhen(false)] out Misreading? misreading)
    {
        string plain = text.Length > 60 ? "" : QuantityText.Plain(text).ToLowerInvariant().Replace(",", " ", StringComparison.Ordinal).Trim();
        plain = plain.StartsWith("from ", StringComparison.Ordinal) ? plain[5..] : plain;
        misreading = null;
        if (s_allYear.Contains(plain))
        {
            span = new YearSpan(1, YearSpan.DaysInYear);
            return true;
        }

        foreach (Match match in Ways().Select(way => way.Match(plain)).Where(m => m.Success))
        {
            bool isOne = !match.Groups["second"].Success;
            Parts first = Parts.Of(match.Groups["first"].Value);
            Parts last = isOne ? first : Parts.Of(match.Groups["second"].Value).After(first);
            if (first.Days() is { } from && last.Days() is { } to)
            {
                span = new YearSpan(from.First, to.Last);
                return true;
            }
        }

        span = default;
        misreading = new Misreading(Wrong(text, plain), Right(plain));
        return false;
    }

    private static string Wrong(string text, string plain)
    {
        string shown = text.Length > 40 ? text[..40] + "…" : text;
        return Slashes().IsMatch(plain) ? $"'{shown}' may be a month and a day or a day and a month"
            : Season().IsMatch(plain) ? $"'{shown}' is not the same stretch everywhere"
            : $"'{shown}' is not a stretch of the year (weeks run from 1 to 52)";
    }

    private static string Right(string plain) => BareWeeks().Match(plain) is { Success: true } bare
        ? $"wk {bare.Groups[1].Value}-{bare.Groups[2].Value} for weeks"
        : "wk 2-17, Nov-May, Nov 1 to May 15, 05-18 to 06-30 or all year";

    // A dash parts two ends or the month and day of one, so both ways are tried.
    private static Regex[] Ways() => [Two(), One()];

    /// <summary>What one end says.</summary>
    private readonly record struct Parts(int Week, int Month, int Day, int Bare, bool IsNumeric)
    {
        public static Parts Of(string text)
        {
            Match m = WholeEnd().Match(text);
            return new Parts(Number(m.Groups["week"]), m.Groups["month"].Success ? MonthOf(m.Groups["month"].Value) : m.Groups["number"].Success ? Number(m.Groups["number"]) : None, Number(m.Groups["day"]), Number(m.Groups["bare"]), m.Groups["number"].Success);
        }

        // "wk 2-3-4" is nothing: a date in figures does not follow a week.
        public Parts After(Parts first) => IsNumeric && first.Week != None ? this with { Month = 0 }
            : Bare == None ? this
            : first.Week != None ? this with { Week = Bare, Bare = None }
            : first.Day != None ? this with { Month = first.Month, Day = Bare, Bare = None }
            : this;

        public (int First, int Last)? Days() =>
            Bare != None ? null
            : Week != None ? (Week is >= 1 and <= 52 ? (7 * Week - 6, Week == 52 ? YearSpan.DaysInYear : 7 * Week) : null)
            : Month is < 1 or > 12 ? null
            : Day != None ? (YearSpan.TryDayOfYear(Month, Day, out int day) ? (day, day) : null)
            : (YearSpan.FirstOfMonth(Month), YearSpan.FirstOfMonth(Month + 1) - 1);

        private const int None = -1;

        private static int Number(Group group) => group.Success ? int.Parse(group.Value, CultureInfo.InvariantCulture) : None;

        // 1 to 12 for a month's name or the beginning of it; 0 for anything else.
        private static int MonthOf(string name) =>
            1 + Array.FindIndex(CultureInfo.InvariantCulture.DateTimeFormat.MonthNames, m => m.Length > 0 && m.StartsWith(name == "sept" ? "sep" : name, StringComparison.OrdinalIgnoreCase));
    }

    [GeneratedRegex("^(?<first>" + End + @")\s*(?:\bto\b|\bthrough\b|\bthru\b|\buntil\b|\btill?\b|\.\.+|-)\s*(?:the end of\s+|end of\s+)?(?<second>" + End + ")$", RegexOptions.CultureInvariant)]
    private static partial Regex Two();

    [GeneratedRegex("^(?<first>" + End + ")$", RegexOptions.CultureInvariant)]
    private static partial Regex One();

    [GeneratedRegex("^" + End + "$", RegexOptions.CultureInvariant)]
    private static partial Regex WholeEnd();

    [GeneratedRegex(@"[0-9]/[0-9]", RegexOptions.CultureInvariant)]
    private static partial Regex Slashes();

    [GeneratedRegex(@"\b(?:spring|summer|autumn|fall|winter|season)\b", RegexOptions.CultureInvariant)]
    private static partial Regex Season();

    [GeneratedRegex(@"^([0-9]{1,2})\s*(?:-|to)\s*([0-9]{1,2})$", RegexOptions.CultureInvariant)]
    private static partial Regex BareWeeks();
}
