using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;

namespace Glazewright.Design.Tests.Program;

/// <summary>Programs at the limits of what a job may ask: the most units, the narrowest band.</summary>
public class FullHouseTests
{
    [Theory]
    [InlineData(true), InlineData(false)]
    public void The_most_fans_and_heaters_with_everything_else_still_compile(bool wetWall)
    {
        PlantResult plant = Full(ProgramStage.MostFans, ProgramStage.MostHeaters, wetWall);
        ProgramDocument program = ProgramStage.Run(SampleProgram.Input(), plant);
        Assert.IsType<ProgramCompilation.Ready>(ProgramCompiler.Compile(program));

        // Every unit is switched by just one stage, and the last stage comes on within a few kelvins, not tens.
        string[] switched = [.. program.Cooling.Concat(program.Heating).SelectMany(s => s.Settings).Select(s => s.Actuator)];
        Assert.All(program.Actuators.Where(a => a.Kind is ActuatorKind.Fan or ActuatorKind.Heater), a => Assert.Single(switched, a.Id));
        Assert.InRange(program.Cooling.Max(s => s.OnAtK), 0.5, 3);
        Assert.InRange(program.Heating.Max(s => s.OnAtK), 0.5, 4);
        Assert.Equal(program.Cooling.OrderBy(s => s.OnAtK).Select(s => s.Id), program.Cooling.Select(s => s.Id));
    }

    [Fact]
    public void The_most_fans_and_heaters_leave_room_for_one_of_each_other_kind()
    {
        int others = Enum.GetValues<ActuatorKind>().Count(k => k is not (ActuatorKind.Fan or ActuatorKind.Heater));
        Assert.True(ProgramStage.MostFans + ProgramStage.MostHeaters + others <= ProgramCompiler.MostActuators);
    }

    [Fact]
    public void Few_units_have_a_stage_each()
    {
        ProgramDocument program = ProgramStage.Run(SampleProgram.Input(), Full(8, 6, wetWall: true));
        Assert.Equal((9, 7), (program.Cooling.Count(s => s.Settings.Any(x => x.Actuator.Contains("fan", StringComparison.Ordinal))) + 1, program.Heating.Count));
        Assert.All(program.Heating, s => Assert.Single(s.Settings));
    }

    // The reader takes bands from 0.28 K: heating and cooling must not drive each other in any of them.
    [Fact]
    public void No_band_makes_setpoints_cross()
    {
        for (double bandK = 0.27; bandK <= 8.4; bandK += 0.05)
        {
            ProgramInput input = SampleProgram.Input() with { Band = new HeldBand(bandK, 7) };
            Assert.True(ProgramCompiler.Compile(ProgramStage.Run(input, Full(4, 2, wetWall: true))) is ProgramCompilation.Ready, $"{bandK} K");
        }
    }

    private static PlantResult Full(int fans, int heaters, bool wetWall)
    {
        PlantResult plant = SampleProgram.Plant(wetWall, vents: true);
        ExhaustPlant exhaust = plant.Exhaust!.Choice;
        return plant with
        {
            BenchPipeW = 20_000,
            Exhaust = new Answer<ExhaustPlant>.Met(
                exhaust with { Fans = Enumerable.Range(1, fans).Select(i => new FanUnit($"A/fan-{i}", "fan-36", 0.91, 1.1)).ToEqList() }, 0.1),
            Heat = new Answer<HeatPlant>.Met(
                plant.Heat!.Choice with { Heaters = Enumerable.Range(1, heaters).Select(i => plant.Heat.Choice.Heaters[0] with { Id = $"A/heater-{i}" }).ToEqList() }, 0.1),
        };
    }
}
