using CsCheck;
using Glazewright.Design.Quantities;

namespace Glazewright.Design.Tests.Quantities;

/// <summary>Times of day and stretches of the year.</summary>
public class CalendarTests
{
    [Theory]
    [InlineData("06:30", 390), InlineData("6:30", 390), InlineData("6:30 am", 390), InlineData("6:30 pm", 1110), InlineData("12 am", 0), InlineData("12:15 pm", 735)]
    [InlineData("24:00", 1440), InlineData("7 pm", 1140)]
    public void By_the_clock(string typed, int minutes)
    {
        Assert.True(TimeOfDay.TryRead(typed, out TimeOfDay? time, out _));
        Assert.Equal(new TimeOfDay.Clock(minutes), time);
    }

    [Theory]
    [InlineData("sunrise", true, 0), InlineData("sunrise+0:30", true, 30), InlineData("sunset - 45 min", false, -45), InlineData("Sunset-1:00", false, -60), InlineData("sunrise + 1 h 30 min", true, 90)]
    public void By_the_sun(string typed, bool isSunrise, int offset)
    {
        Assert.True(TimeOfDay.TryRead(typed, out TimeOfDay? time, out _));
        Assert.Equal(new TimeOfDay.Sun(isSunrise, offset), time);
    }

    [Theory]
    [InlineData("25:00"), InlineData("6:75"), InlineData("13 pm"), InlineData("0 am"), InlineData("630"), InlineData("sunrise 0:30"), InlineData("sunrise+20 h"), InlineData("noonish"), InlineData("24:30"), InlineData("")]
    public void Not_a_time(string typed) => Assert.False(TimeOfDay.TryRead(typed, out _, out _));

    [Fact]
    public void A_time_written_is_read_again() =>
        Gen.OneOf(
            Gen.Int[0, 1440].Select(m => (TimeOfDay)new TimeOfDay.Clock(m)),
            Gen.Select(Gen.Bool, Gen.Int[-720, 720]).Select((rise, m) => (TimeOfDay)new TimeOfDay.Sun(rise, m))).Sample(time =>
            Assert.True(TimeOfDay.TryRead(time.ToString(), out TimeOfDay? again, out _) && again == time));

    [Theory]
    [InlineData("wk 2", 8, 14), InlineData("wk 2-17", 8, 119), InlineData("wk 51-1", 351, 7), InlineData("weeks 43 to 2", 295, 14), InlineData("wk 52", 358, 365), InlineData("wk 1–52", 1, 365)]
    [InlineData("05-18", 138, 138), InlineData("05-18 to 06-30", 138, 181), InlineData("May 18 - Jun 30", 138, 181), InlineData("12-20..01-05", 354, 5), InlineData("all year", 1, 365)]
    [InlineData("Nov-May", 305, 151), InlineData("nov to may", 305, 151), InlineData("February", 32, 59), InlineData("Sept. - Dec", 244, 365)]
    [InlineData("November to May", 305, 151), InlineData("Nov through May", 305, 151), InlineData("from November thru the end of May", 305, 151), InlineData("Nov 1 - May 15", 305, 135), InlineData("Nov 1–May 15", 305, 135)]
    [InlineData("November 1st, to May 15th", 305, 135), InlineData("1 Nov - 15 May", 305, 135), InlineData("Nov. 15 to May", 319, 151), InlineData("May 18-30", 138, 150), InlineData("wk 44 to wk 22", 302, 154), InlineData("w44-w22", 302, 154)]
    [InlineData("week 44 through May 15", 302, 135), InlineData("year-round", 1, 365), InlineData("Jan-Dec", 1, 365), InlineData("may", 121, 151), InlineData("May 5", 125, 125)]
    public void Stretches(string typed, int first, int last)
    {
        Assert.True(YearSpan.TryRead(typed, out YearSpan span, out _));
        Assert.Equal(new YearSpan(first, last), span);
    }

    [Theory]
    [InlineData("wk 0"), InlineData("wk 53"), InlineData("02-29"), InlineData("13-01"), InlineData("wk 2-3-4"), InlineData("spring"), InlineData("mayor"), InlineData("Nov-May-June"), InlineData("")]
    [InlineData("11/1 to 5/15"), InlineData("14-22"), InlineData("Nov 31 - May"), InlineData("Nov to"), InlineData("to May"), InlineData("5"), InlineData("May 18-"), InlineData("wk 2-May-June")]
    public void Not_a_stretch(string typed) => Assert.False(YearSpan.TryRead(typed, out _, out _));

    [Theory]
    [InlineData("11/1 to 5/15", "a day and a month", "Nov 1 to May 15"), InlineData("winter", "not the same stretch everywhere", "Nov-May"), InlineData("14-22", "not a stretch", "wk 14-22"), InlineData("whenever", "not a stretch", "wk 2-17")]
    public void What_is_not_understood_is_told_what_would_be_right(string typed, string wrong, string right)
    {
        Assert.False(YearSpan.TryRead(typed, out _, out Misreading? misreading));
        Assert.Contains(wrong, misreading.Wrong, StringComparison.Ordinal);
        Assert.Contains(right, misreading.Right, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Nov-May", "wk 44-22"), InlineData("Jun-Oct", "wk 23-43"), InlineData("Nov 1 - May 15", "wk 44-19"), InlineData("May 16 - Oct 31", "wk 20-43"), InlineData("wk 51-1", "wk 51-1"), InlineData("Jan-Dec", "all year"), InlineData("Dec", "wk 49-52")]
    public void Whole_weeks_nearest_to_a_stretch(string typed, string weeks)
    {
        Assert.True(YearSpan.TryRead(typed, out YearSpan span, out _));
        Assert.True(span.TryWholeWeeks(out YearSpan whole));
        Assert.Equal(weeks, whole.WeeksText);
    }

    // Where one stretch ends the next begins, also when both are taken to whole weeks: no week is held twice or by none.
    [Fact]
    public void Stretches_that_follow_each_other_do_so_in_whole_weeks() =>
        Gen.Int[1, 365].Array[2, 5].Where(days => days.Distinct().Count() == days.Length).Sample(days =>
        {
            int[] starts = [.. days.Order()];
            int[] holders = new int[366];
            for (int i = 0; i < starts.Length; i++)
            {
                int last = starts[(i + 1) % starts.Length] - 1;
                YearSpan span = new(starts[i], last == 0 ? 365 : last);
                if (span.TryWholeWeeks(out YearSpan weeks))
                {
                    Assert.True(weeks.FirstDay % 7 == 1 && weeks.FirstDay <= 358 && (weeks.LastDay % 7 == 0 || weeks.LastDay == 365), weeks.ToString());
                    Assert.True(Math.Abs(weeks.DayCount - span.DayCount) <= 8 || weeks.DayCount == 365);
                    for (int day = 1; day <= 365; day++)
                    {
                        holders[day] += weeks.Contains(day) ? 1 : 0;
                    }
                }
            }

            Assert.All(holders[1..], count => Assert.Equal(1, count));
        });

    [Fact]
    public void A_day_is_no_week()
    {
        Assert.False(new YearSpan(125, 125).TryWholeWeeks(out _));
        Assert.Equal("wk 18", new YearSpan(125, 125).WeeksAround);
    }

    [Fact]
    public void A_stretch_holds_as_many_days_as_it_counts_and_is_read_again() =>
        Gen.Select(Gen.Int[1, 365], Gen.Int[1, 365]).Sample((first, last) =>
        {
            YearSpan span = new(first, last);
            Assert.Equal(Enumerable.Range(1, 365).Count(span.Contains), span.DayCount);
            Assert.True(YearSpan.TryRead(span.ToString(), out YearSpan again, out _) && again == span);
        });

    // Day numbers from the .NET calendar, year 2027 (no leap day).
    [Fact]
    public void Days_of_the_year_are_the_calendars()
    {
        for (int day = 1; day <= 365; day++)
        {
            DateOnly date = new DateOnly(2027, 1, 1).AddDays(day - 1);
            Assert.Equal(date.ToString("MM-dd", System.Globalization.CultureInfo.InvariantCulture), YearSpan.DateText(day));
            Assert.True(YearSpan.TryDayOfYear(date.Month, date.Day, out int again) && again == day);
        }
    }
}
