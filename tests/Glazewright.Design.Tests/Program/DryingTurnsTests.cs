using Glazewright.Design.Program;

namespace Glazewright.Design.Tests.Program;

/// <summary>Drying in cold air: outside air in short turns, heat between them.</summary>
public class DryingTurnsTests
{
    private static Bench Wet(int outsideC, int insideCentiC = 2200) => new Bench(SampleProgram.Document())
        .Set(Reading.OutsideTemperature, 100 * outsideC).Set(Reading.InsideTemperature, insideCentiC).Set(Reading.InsideHumidity, 800);

    [Fact]
    public void In_the_cold_the_louver_opens_a_third_for_a_while_and_shuts_for_the_pause()
    {
        Bench bench = Wet(2);
        int open = 0, shut = 0, turns = 0;
        bool was = false;
        for (int s = 0; s < 4 * 3600; s += 5)
        {
            bench.Run(5);
            bool asked = bench.Why("A/louver") == ReasonCode.Purging;
            Assert.Equal(0, bench["A/fan-1"] + bench["A/fan-2"] + bench["A/fan-3"]);
            Assert.InRange(bench["A/louver"], 0, 3_500);
            turns += asked && !was ? 1 : 0;
            open += asked ? 5 : 0;
            shut += asked ? 0 : 5;
            was = asked;
        }

        // A turn is counted from when air flows, one step after the first: 1,200 s and a step, then 60 s; the last may be cut short.
        Assert.InRange(turns, 11, 12);
        Assert.InRange(open / (double)turns, 1_140, 1_215);
        Assert.InRange(shut, 11 * 55, 12 * 60);
    }

    [Fact]
    public void Heat_goes_on_in_a_turn_and_its_threshold_is_higher_than_in_dry_air()
    {
        ProgramPeriod period = SampleProgram.Document().Periods[0];
        int threshold = 2200 - (int)Math.Round(100 * period.HeatBelowK);
        Bench bench = Wet(2, threshold + 10);
        bool both = false;
        for (int s = 0; s < 1800; s += 5)
        {
            bench.Run(5);
            both |= bench.Why("A/heater-1") == ReasonCode.Heating && bench.Why("A/louver") == ReasonCode.Purging;
        }

        Assert.True(both, "a tenth of a kelvin above the threshold of dry air heat is asked for, turn or not");
        Assert.Equal(ReasonCode.Idle, Wet(2, threshold + 10).Set(Reading.InsideHumidity, 600).Run(600).Why("A/heater-1"));
    }

    [Fact]
    public void No_turn_in_a_house_too_cold_with_damp_air_outside_or_without_a_reading()
    {
        Assert.NotEqual(ReasonCode.Purging, Wet(2, 2050).Run(5).Why("A/louver"));
        Assert.NotEqual(ReasonCode.Purging, Wet(2).Set(Reading.InsideHumidity, int.MinValue).Run(5).Why("A/louver"));
        Assert.NotEqual(ReasonCode.Purging, Wet(2).Set(Reading.OutsideTemperature, int.MinValue).Run(5).Why("A/louver"));
        Assert.Equal(ReasonCode.Purging, Wet(2).Run(5).Why("A/louver"));
        // Mild: the fan, on end.
        Assert.Equal(ReasonCode.Drying, Wet(12).Run(300).Why("A/louver"));
    }
}
