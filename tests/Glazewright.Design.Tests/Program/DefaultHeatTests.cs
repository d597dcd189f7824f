using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;

namespace Glazewright.Design.Tests.Program;

/// <summary>The default program against its own plant.</summary>
public class DefaultHeatTests
{
    private static ProgramDocument Of(double staticPa)
    {
        PlantResult plant = SampleProgram.Plant();
        ExhaustPlant fans = plant.Exhaust!.Choice;
        plant = plant with { Exhaust = new Answer<ExhaustPlant>.Met(fans with { Wet = fans.Wet.Select(w => w with { StaticPa = staticPa }).ToEqList() }, 0) };
        return ProgramStage.Run(SampleProgram.Input(), plant);
    }

    // What all fans draw with everything open is no alarm; a stuck louver is.
    [Theory]
    [InlineData(20, 60), InlineData(48, 60), InlineData(62.4, 80), InlineData(84, 105)]
    public void The_suction_alarm_lies_above_what_the_fans_draw(double staticPa, double limitPa)
    {
        ProgramDocument d = Of(staticPa);
        Assert.Equal(limitPa, d.Alarms.Single(a => a.Id == "suction-too-strong").High);
        Assert.Equal(limitPa, d.Guard!.LimitPa);
    }

    // Heat waits for its threshold and for nothing else: in a wait, air that cools quickly would call every stage at once.
    [Fact]
    public void Heat_stages_are_kept_apart_by_their_thresholds()
    {
        ProgramDocument d = SampleProgram.Document();
        Assert.True(d.Heating.Count > 1);
        Assert.All(d.Heating, s => Assert.Equal(0, s.DelayS));
        Assert.Equal(d.Heating.Count, d.Heating.Select(s => s.OnAtK).Distinct().Count());
    }
}
