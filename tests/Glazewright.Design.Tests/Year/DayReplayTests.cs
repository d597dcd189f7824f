using Glazewright.Design.Year;

namespace Glazewright.Design.Tests.Year;

public class DayReplayTests
{
    private static readonly Lazy<YearResult> Base = new(() => YearScenes.Run());

    // A day run again from its midnight is the year's day bit for bit: hourly means are the same floats.
    [Theory]
    [InlineData(0)]
    [InlineData(33)]
    [InlineData(199)]
    [InlineData(364)]
    public void A_day_run_again_is_the_year_s_day_bit_for_bit(int day)
    {
        DayReplay replay = Replay(day);
        Assert.Equal(1440, replay.Minutes.Count);
        for (int h = 0; h < 24; h++)
        {
            Assert.Equal(Base.Value.Hours.InsideC[(day * 24) + h], Mean(replay, h, m => m.InsideC));
            Assert.Equal(Base.Value.Hours.InsideRhPercent[(day * 24) + h], Mean(replay, h, m => m.InsideRhPercent));
            Assert.Equal(Base.Value.Hours.HeatW[(day * 24) + h], Mean(replay, h, m => m.HeatW));
            Assert.Equal(Base.Value.Hours.CurtainFraction[(day * 24) + h], Mean(replay, h, m => m.CurtainFraction));
        }
    }

    // The evening's end is the next midnight's beginning.
    [Fact]
    public void Days_join()
    {
        Assert.Equal(365, Base.Value.Midnights.Count);
        Assert.NotEqual(Base.Value.Midnights[40], Base.Value.Midnights[41]);
        Assert.Equal(Base.Value.Midnights[41], YearScenes.Run().Midnights[41]);
    }

    [Fact]
    public void Every_actuator_is_accounted_for_every_minute_and_says_why()
    {
        DayReplay replay = Replay(33);
        for (int i = 0; i < replay.Actuators.Count; i++)
        {
            CommandSpell[] own = [.. replay.Spells.Where(s => s.Actuator == i)];
            Assert.Equal(0, own[0].FromMinute);
            Assert.Equal(1440, own[^1].ToMinute);
            Assert.All(own.Zip(own.Skip(1)), p => Assert.Equal(p.First.ToMinute, p.Second.FromMinute));
            Assert.All(own, s => Assert.StartsWith(replay.Actuators[i] + " ", s.Because, StringComparison.Ordinal));
        }

        Assert.Contains(replay.Spells, s => s.Because.Contains("below the heating threshold", StringComparison.Ordinal));
    }

    private static DayReplay Replay(int day) => DayReplay.Of(
        YearScenes.Input, YearScenes.Form, YearScenes.Gains, YearScenes.Plant, YearScenes.Program, YearScenes.Weather, Base.Value, day);

    private static float Mean(DayReplay replay, int hour, Func<ReplayMinute, double> value)
    {
        double sum = 0;
        for (int m = hour * 60; m < (hour + 1) * 60; m++)
        {
            sum += value(replay.Minutes[m]);
        }

        return (float)(sum / 60);
    }
}
