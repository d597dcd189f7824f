using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;

namespace Glazewright.Design.Tests.Program;

/// <summary>A pad too small for all fans: water runs with as many as it serves, whoever asks for more.</summary>
public class SmallPadTests
{
    private static readonly ProgramDocument s_program = Of(2);

    private static ProgramDocument Of(int mostFans)
    {
        PlantResult plant = SampleProgram.Plant();
        return ProgramStage.Run(SampleProgram.Input(), plant with { WetWall = new Answer<WetWallPlant>.Met(plant.WetWall!.Choice with { MostFans = mostFans }, 0) });
    }

    [Fact]
    public void Water_comes_on_with_the_fans_it_serves_and_before_the_rest()
    {
        string[] driven = [.. s_program.Cooling.SelectMany(s => s.Settings).Select(s => s.Actuator).Where(a => a.Contains("fan-") || a.EndsWith("pump"))];
        Assert.Equal(["A/fan-1", "A/fan-2", "A/wet-wall-pump", "A/fan-3"], driven);
        Assert.Equal(2, s_program.Interlocks.OfType<Interlock.OnlySoMany>().Single().Most);
        Assert.Contains(ControlNarrative.Of(s_program, UnitSystem.Metric).SelectMany(s => s.Lines), l => l == "While A/wet-wall-pump is on, at most 2 of A/fan-1, A/fan-2, A/fan-3.");
    }

    [Fact]
    public void All_fans_run_dry_and_two_run_wet()
    {
        CompiledProgram p = SampleProgram.Ready(s_program);
        int[] readings = SampleProgram.Readings();
        readings[(int)Reading.InsideTemperature] = 3500;
        readings[(int)Reading.OutsideTemperature] = 1400;
        (int fans, int pump) = Run(readings);
        Assert.Equal((3, 0), (fans, pump));
        readings[(int)Reading.OutsideTemperature] = 3000;
        Assert.Equal((2, 1), Run(readings));

        (int Fans, int Pump) Run(int[] given)
        {
            var state = new int[p.StateLength];
            var next = new int[p.StateLength];
            var commands = new Command[p.Actuators.Count];
            p.Rest(state);
            for (int k = 0; k < 30; k++)
            {
                ProgramInterpreter.Step(p, state, given, 60_000, next, commands);
                (state, next) = (next, state);
            }

            int On(ActuatorKind kind) => p.Actuators.Select((a, i) => a.Kind == kind && commands[i].Level > 0 ? 1 : 0).Sum();
            return (On(ActuatorKind.Fan), On(ActuatorKind.WetWallPump));
        }
    }

    // By hand, too: the pump waits until the fans that are too many have stopped, and no fan joins a pump that has its fill.
    [Fact]
    public void The_hand_is_held_to_it()
    {
        CompiledProgram p = SampleProgram.Ready(s_program);
        int[] readings = SampleProgram.Readings();
        var state = new int[p.StateLength];
        var next = new int[p.StateLength];
        var commands = new Command[p.Actuators.Count];
        p.Rest(state);
        int At(string id) => p.Actuators.Select((a, i) => (a.Id, i)).First(x => x.Id == id).i;
        foreach (string id in new[] { "A/louver", "A/fan-1", "A/fan-2", "A/fan-3", "A/wet-wall-pump" })
        {
            p.SetHand(state, At(id), 10_000);
        }

        for (int k = 0; k < 30; k++)
        {
            ProgramInterpreter.Step(p, state, readings, 60_000, next, commands);
            (state, next) = (next, state);
        }

        Assert.True(commands[At("A/wet-wall-pump")].Level > 0);
        Assert.Equal(2, new[] { "A/fan-1", "A/fan-2", "A/fan-3" }.Count(id => commands[At(id)].Level > 0));
        Assert.Equal("A/fan-3 off: A/wet-wall-pump goes with 2 of these at most", ProgramWords.Say(p, At("A/fan-3"), commands[At("A/fan-3")]));
    }
}
