using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Glazewright.Design.Quantities;

/// <summary>
/// A stretch of the year, first and last day included; it may run over new year. The year has 365 days. Week n is days 7n − 6 to 7n, and week 52 also
/// takes 31 December: a plan repeats every year and knows no weekday.
/// </summary>
/// <param name="FirstDay">First day, 1 (1 January) to 365.</param>
/// <param name="LastDay">Last day, 1 to 365; smaller than the first when the stretch runs over new year.</param>
public readonly record struct YearSpan(int FirstDay, int LastDay)
{
    private const int DaysInYear = 365;
    private static readonly int[] s_daysBeforeMonth = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];
    private static readonly string[] s_months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

    /// <summary>Number of days.</summary>
    public int DayCount => LastDay >= FirstDay ? LastDay - FirstDay + 1 : DaysInYear - FirstDay + 1 + LastDay;

    /// <summary>True when a day lies in the stretch.</summary>
    /// <param name="day">Day of the year, 1 to 365.</param>
    /// <returns>True inside, ends included.</returns>
    public bool Contains(int day) => LastDay >= FirstDay ? day >= FirstDay && day <= LastDay : day >= FirstDay || day <= LastDay;

    /// <summary>Day of the year of a date in a year of 365 days.</summary>
    /// <param name="month">1 to 12.</param>
    /// <param name="day">1 to the month's last (29 February is refused).</param>
    /// <param name="dayOfYear">1 to 365, when the answer is true.</param>
    /// <returns>True when there is such a date.</returns>
    public static bool TryDayOfYear(int month, int day, out int dayOfYear)
    {
        bool exists = month is >= 1 and <= 12 && day >= 1 && day <= s_daysBeforeMonth[month] - s_daysBeforeMonth[month - 1];
        dayOfYear = exists ? s_daysBeforeMonth[month - 1] + day : 0;
        return exists;
    }

    /// <summary>Reads <c>wk 2</c>, <c>wk 2-17</c>, <c>wk 51-1</c>, <c>05-18</c>, <c>05-18 to 06-30</c>, <c>May 18 - Jun 30</c>, <c>Nov-May</c>, <c>all year</c>.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="span">The stretch, when the answer is true.</param>
    /// <param name="misreading">What is wrong and what would be right, when it is false.</param>
    /// <returns>True when the text is a stretch of the year.</returns>
    public static bool TryRead(string text, out YearSpan span, [NotNullWhen(false)] out Misreading? misreading)
    {
        ArgumentNullException.ThrowIfNull(text);
        string plain = text.Length > 40 ? "" : QuantityText.Plain(text).ToLowerInvariant();
        bool read = TryAllYear(plain, out span) || TryWeeks(plain, out span) || TryDates(plain, out span) || TryMonths(plain, out span);
        misreading = read ? null : new Misreading($"'{text}' is not a stretch of the year (weeks run from 1 to 52)", "wk 2-17 or 05-18 to 06-30 or all year");
        return read;
    }

    /// <inheritdoc/>
    public override string ToString() => FirstDay == 1 && LastDay == DaysInYear ? "all year" : $"{DateText(FirstDay)} to {DateText(LastDay)}";

    /// <summary>Month and day of a day of the year: <c>05-18</c>.</summary>
    /// <param name="day">1 to 365.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Another day.</exception>
    public static string DateText(int day)
    {
        Science.Guards.Within.Require(day, 1, DaysInYear);
        int month = Array.FindLastIndex(s_daysBeforeMonth, before => before < day) + 1;
        return string.Create(CultureInfo.InvariantCulture, $"{month:00}-{day - s_daysBeforeMonth[month - 1]:00}");
    }

    private static bool TryAllYear(string plain, out YearSpan span)
    {
        span = new YearSpan(1, DaysInYear);
        return plain == "all year";
    }

    private static bool TryWeeks(string plain, out YearSpan span)
    {
        span = default;
        string? rest = ((string[])["weeks", "week", "wks", "wk"]).Where(w => plain.StartsWith(w, StringComparison.Ordinal)).Select(w => plain[w.Length..]).FirstOrDefault();
        string[] ends = (rest ?? "").Replace(" to ", "-", StringComparison.Ordinal).Replace("..", "-", StringComparison.Ordinal).Split('-');
        if (rest is null || ends.Length > 2 || !TryWeek(ends[0], out int first) || !TryWeek(ends[^1], out int last))
        {
            return false;
        }

        span = new YearSpan(7 * first - 6, last == 52 ? DaysInYear : 7 * last);
        return true;
    }

    private static bool TryWeek(string text, out int week) =>
        int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out week) && week is >= 1 and <= 52;

    private static bool TryDates(string plain, out YearSpan span)
    {
        span = default;
        string[] ends = plain.Replace("..", " to ", StringComparison.Ordinal).Replace(" - ", " to ", StringComparison.Ordinal).Split(" to ", StringSplitOptions.TrimEntries);
        if (ends.Length > 2 || !TryDate(ends[0], out int first) || !TryDate(ends[^1], out int last))
        {
            return false;
        }

        span = new YearSpan(first, last);
        return true;
    }

    // Whole months, the last one included.
    private static bool TryMonths(string plain, out YearSpan span)
    {
        string[] ends = plain.Replace("..", "-", StringComparison.Ordinal).Replace(" to ", "-", StringComparison.Ordinal).Split('-', StringSplitOptions.TrimEntries);
        int first = MonthOf(ends[0]);
        int last = MonthOf(ends[^1]);
        bool read = ends.Length <= 2 && first > 0 && last > 0;
        span = read ? new YearSpan(s_daysBeforeMonth[first - 1] + 1, s_daysBeforeMonth[last]) : default;
        return read;
    }

    // 1 to 12 for a month's name or the beginning of it, with or without a dot; 0 for anything else.
    private static int MonthOf(string text)
    {
        string name = text.TrimEnd('.');
        return name.Length < 3 ? 0
            : Array.FindIndex(s_months, m => name.StartsWith(m, StringComparison.Ordinal)
                && CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(Array.IndexOf(s_months, m) + 1).StartsWith(name == "sept" ? "sep" : name, StringComparison.OrdinalIgnoreCase)) + 1;
    }

    private static bool TryDate(string text, out int day)
    {
        day = 0;
        string[] parts = text.Split(['-', ' '], StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length != 2 || !int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out int dayOfMonth))
        {
            return false;
        }

        int named = parts[0].Length >= 3 ? Array.IndexOf(s_months, parts[0][..3]) + 1 : 0;
        int month = named > 0 ? named : int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : 0;
        return TryDayOfYear(month, dayOfMonth, out day);
    }
}
