using CsCheck;
using Glazewright.Design.Contracts;
using Glazewright.Design.Program;
using Mark = Glazewright.Design.Program.DayPart.Mark;

namespace Glazewright.Design.Tests.Program;

/// <summary>Where the day's part lies when its marks go by a sun that may not rise or set. The rule: docs/methods/control-program.md.</summary>
public class DayPartTests
{
    private const int H = 60;
    private const int Whole = 24 * H;

    [Theory]
    [InlineData(6, 18, 6, 12), InlineData(12, 12, 12, 0), InlineData(0, 24, 0, 24), InlineData(13, 11, 13, 0), InlineData(-1, 25, 23, 24), InlineData(-1, 23, 23, 24), InlineData(1, 23, 1, 22)]
    public void Between_sunrise_and_sunset_nothing_wraps(int riseH, int setH, int startH, int lengthH) =>
        Assert.Equal(new DayPart(startH * H, lengthH * H), DayPart.Between(Mark.Sunrise, riseH * H, Mark.Sunset, setH * H, Whole));

    [Theory]
    [InlineData(Mark.Clock, 20, Mark.Clock, 4, 20, 8)]
    [InlineData(Mark.Clock, 6, Mark.Sunset, 12, 6, 6)]
    [InlineData(Mark.Sunrise, 5, Mark.Clock, 1, 5, 20)]
    [InlineData(Mark.Sunset, 18, Mark.Sunrise, 6, 18, 12)]
    [InlineData(Mark.Sunset, 24, Mark.Sunrise, 0, 0, 0)]
    [InlineData(Mark.Sunrise, 6, Mark.Sunrise, 10, 6, 4)]
    public void Other_pairs_wrap_over_midnight(Mark starts, int startH, Mark ends, int endH, int expectedStartH, int lengthH) =>
        Assert.Equal(new DayPart(expectedStartH * H, lengthH * H), DayPart.Between(starts, startH * H, ends, endH * H, Whole));

    [Fact]
    public void Over_24_hours_the_day_lasts_as_long_as_it_is_said_to() =>
        Gen.Select(Gen.Enum<Mark>(), Gen.Int[-12, 36], Gen.Enum<Mark>(), Gen.Int[-12, 36]).Sample((starts, start, ends, end) =>
        {
            var part = DayPart.Between(starts, start, ends, end, 24);
            Assert.InRange(part.Start, 0, 23);
            Assert.Equal(part.Length, Enumerable.Range(0, 24).Count(h => part.At(h, 24).IsDay));
        });

    [Fact]
    public void The_program_keeps_the_nights_target_through_a_polar_night_and_the_days_through_a_polar_day()
    {
        // Day 22, night 17 °C; ramps of 60 min.
        foreach ((int rise, int set, int target) in new[] { (12, 12, 1700), (0, 24, 2200) })
        {
            Bench bench = new Bench(SampleProgram.Document()).Set(Reading.Sunrise, rise * 3_600_000).Set(Reading.Sunset, set * 3_600_000);
            for (int minute = 0; minute < Whole; minute += 15)
            {
                bench.Set(Reading.TimeOfDay, minute * 60_000).Run(1);
                Assert.Equal(target, bench.Program.TargetOf(bench.State).TemperatureCentiC);
            }
        }
    }
}
