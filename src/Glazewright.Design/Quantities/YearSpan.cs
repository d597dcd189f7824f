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
    /// <summary>Days of the year.</summary>
    internal const int DaysInYear = 365;

    private const int WeeksInYear = 52;
    private static readonly int[] s_daysBeforeMonth = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];

    /// <summary>Number of days.</summary>
    public int DayCount => LastDay >= FirstDay ? LastDay - FirstDay + 1 : DaysInYear - FirstDay + 1 + LastDay;

    /// <summary>Week of the first day, 1 to 52.</summary>
    public int FirstWeek => WeekOf(FirstDay);

    /// <summary>Week of the last day, 1 to 52.</summary>
    public int LastWeek => WeekOf(LastDay);

    /// <summary>Whole weeks as the job document has them: <c>wk 44-22</c>.</summary>
    public string WeeksText => FirstDay == 1 && LastDay == DaysInYear ? "all year" : WeeksAround;

    /// <summary>The weeks that hold the stretch: <c>wk 44-22</c>.</summary>
    public string WeeksAround => string.Create(CultureInfo.InvariantCulture, $"wk {FirstWeek}{(LastWeek == FirstWeek ? "" : $"-{LastWeek}")}");

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

    /// <summary>First day of a month; of month 13, the day after the year.</summary>
    internal static int FirstOfMonth(int month) => s_daysBeforeMonth[month - 1] + 1;

    /// <summary>Reads <c>wk 2</c>, <c>wk 2-17</c>, <c>wk 51-1</c>, <c>05-18 to 06-30</c>, <c>Nov-May</c>, <c>November through May</c>, <c>Nov 1 - May 15</c>, <c>1 Nov to May</c>, <c>all year</c>.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="span">The stretch, when the answer is true; whole months, where a month has no day.</param>
    /// <param name="misreading">What is wrong and what would be right, when it is false.</param>
    /// <returns>True when the text is a stretch of the year.</returns>
    public static bool TryRead(string text, out YearSpan span, [NotNullWhen(false)] out Misreading? misreading)
    {
        ArgumentNullException.ThrowIfNull(text);
        return SpanText.TryRead(text, out span, out misreading);
    }

    /// <summary>The whole weeks nearest to the stretch. Each end moves to the nearest bound between two weeks (four days at most), so that stretches that follow each other still do.</summary>
    /// <param name="weeks">Its whole weeks, when the answer is true.</param>
    /// <returns>False when the stretch is so short that no week is left.</returns>
    public bool TryWholeWeeks(out YearSpan weeks)
    {
        int first = NearestWeekStart(FirstDay);
        int next = NearestWeekStart(LastDay == DaysInYear ? 1 : LastDay + 1);
        // Ends that fall on one bound are the whole year or nothing.
        weeks = new YearSpan(first, next == 1 ? DaysInYear : next - 1);
        return first != next || DayCount > DaysInYear / 2;
    }

    private static int WeekOf(int day) => Math.Min(WeeksInYear, (day + 6) / 7);

    // Weeks start on days 1, 8 … 358; the one after is day 1 again.
    private static int NearestWeekStart(int day)
    {
        int week = Math.Min(WeeksInYear - 1, (day - 1) / 7);
        int start = 7 * week + 1;
        int next = week == WeeksInYear - 1 ? DaysInYear + 1 : start + 7;
        return day - start < next - day ? start : next > DaysInYear ? 1 : next;
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
}
