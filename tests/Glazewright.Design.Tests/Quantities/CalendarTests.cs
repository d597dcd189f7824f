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
    public void Stretches(string typed, int first, int last)
    {
        Assert.True(YearSpan.TryRead(typed, out YearSpan span, out _));
        Assert.Equal(new YearSpan(first, last), span);
    }

    [Theory]
    [InlineData("wk 0"), InlineData("wk 53"), InlineData("02-29"), InlineData("13-01"), InlineData("wk 2-3-4"), InlineData("spring"), InlineData("mayor"), InlineData("Nov-May-June"), InlineData("")]
    public void Not_a_stretch(string typed) => Assert.False(YearSpan.TryRead(typed, out _, out _));

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
