using Glazewright.Design.Contracts;
using Glazewright.Design.Program;

namespace Glazewright.Design.Tests.Program;

/// <summary>Water on the wet wall in damp air: nearly saturated air is hardly cooled by it and comes in wet.</summary>
public class DampAirTests
{
    private readonly CompiledProgram _p;
    private readonly int[] _readings = [.. SampleProgram.Readings(), 400, 0];
    private int[] _state;

    public DampAirTests()
    {
        _p = SampleProgram.Ready(SampleProgram.Document());
        _state = new int[_p.StateLength];
        _p.Rest(_state);
        (_readings[(int)Reading.InsideTemperature], _readings[(int)Reading.OutsideTemperature]) = (3000, 2600);
    }

    private Command Pump(int outsideTenths)
    {
        int pump = _p.Actuators.Select((a, i) => (a.Kind, i)).First(x => x.Kind == ActuatorKind.WetWallPump).i;
        _readings[(int)Reading.OutsideHumidity] = outsideTenths;
        var commands = new Command[_p.Actuators.Count];
        for (int k = 0; k < 40; k++)
        {
            var next = new int[_p.StateLength];
            ProgramInterpreter.Step(_p, _state, _readings, 60_000, next, commands);
            _state = next;
        }

        return commands[pump];
    }

    [Fact]
    public void Water_runs_in_dry_air_stops_in_damp_air_and_says_why()
    {
        Assert.Equal(10_000, Pump(500).Level);
        Command damp = Pump(900);
        Assert.Equal((0, (int)ReasonCode.TooDampForWater), (damp.Level, damp.Reason));
        int pump = _p.Actuators.Select((a, i) => (a.Kind, i)).First(x => x.Kind == ActuatorKind.WetWallPump).i;
        Assert.Contains("outside humidity 90.0 %, limit 85.0 %", ProgramWords.Say(_p, pump, damp), StringComparison.Ordinal);
        Assert.Equal(10_000, Pump(840).Level);
        // Without a reading it runs: a sensor that fails must not cost the crop its cooling.
        Assert.Equal(10_000, Pump(int.MinValue).Level);
    }

    // Water comes on with the last fan and stays until the air is back at the cooling threshold: half a kelvin of deadband swung houses by kelvins.
    [Fact]
    public void Water_stays_on_until_the_threshold()
    {
        ProgramDocument made = ProgramStage.Run(SampleProgram.Input(), SampleProgram.Plant());
        ControlStage water = Assert.Single(made.Cooling, s => s.Settings.Any(x => x.Actuator == "A/wet-wall-pump"));
        Assert.Equal((0, 120), (water.OffAtK, water.DelayS));
        Assert.True(water.OnAtK >= 0.5);
        Assert.All(made.Cooling.Where(s => s != water), s => Assert.Equal(0.5, s.OnAtK - s.OffAtK, 1e-9));
    }
}
