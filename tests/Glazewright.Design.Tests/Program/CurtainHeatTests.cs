using Glazewright.Design.Program;

namespace Glazewright.Design.Tests.Program;

/// <summary>A drawn curtain that opens to let heat go.</summary>
public class CurtainHeatTests
{
    private static readonly ProgramDocument s_document = SampleProgram.Document();

    private static Bench Drawn() => new Bench(s_document with { Curtain = s_document.Curtain! with { Warm = new WarmGap(0.2, 0.2, 0.5) } })
        .Set(Reading.Light, 0).Set(Reading.OutsideTemperature, -500).Set(Reading.InsideHumidity, 600).Run(900);

    private static int WarmAt => 2200 + (int)Math.Round(100 * s_document.Periods[0].CoolAboveK);

    [Fact]
    public void Too_warm_it_opens_step_by_step_to_its_most_stays_within_the_deadband_and_is_drawn_again_below()
    {
        Bench bench = Drawn();
        Assert.Equal(10_000, bench["A/curtain"]);
        bench.Set(Reading.InsideTemperature, WarmAt + 30).Run(130);
        Assert.InRange(bench["A/curtain"], 8_900, 9_500);
        Assert.Equal(ReasonCode.CurtainLetsHeatGo, bench.Why("A/curtain"));
        Assert.Contains("to let heat go", bench.Say("A/curtain"));
        int there = bench["A/curtain"];
        bench.Set(Reading.InsideTemperature, WarmAt).Run(1200);
        Assert.InRange(bench["A/curtain"], there - 500, there);
        bench.Set(Reading.InsideTemperature, WarmAt + 30).Run(1200);
        Assert.Equal(8_000, bench["A/curtain"]);
        bench.Set(Reading.InsideTemperature, WarmAt - 40).Run(300);
        Assert.Equal(10_000, bench["A/curtain"]);
    }

    [Fact]
    public void Without_a_reading_or_in_a_house_that_heats_it_stays_drawn()
    {
        Bench bench = Drawn().Set(Reading.InsideTemperature, 1900).Run(1200);
        Assert.Equal(10_000, bench["A/curtain"]);
        Assert.Equal(10_000, Drawn().Set(Reading.InsideTemperature, int.MinValue).Set(Reading.UpperTemperature, int.MinValue).Run(1200)["A/curtain"]);
    }
}
