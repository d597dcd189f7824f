using BenchmarkDotNet.Attributes;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;

namespace Glazewright.Bench.Program;

/// <summary>A year of control steps (525,600) with the default program of a well-equipped house, readings wandering through every stage.</summary>
[MemoryDiagnoser]
public class ProgramBench
{
    private readonly int[] _readings = new int[(int)Reading.Sunset + 1];
    private CompiledProgram? _program;
    private int[] _state = [];
    private Command[] _commands = [];

    [GlobalSetup]
    public void Setup()
    {
        var plant = new PlantResult(
            "A",
            new Answer<ExhaustPlant>.Met(new ExhaustPlant([new FanUnit("A/fan-1", "f", 0.9, 1), new FanUnit("A/fan-2", "f", 0.9, 1), new FanUnit("A/fan-3", "f", 0.9, 1)], [], [], 4, 6, 45, 0.6, 6), 0.1),
            new Answer<WetWallPlant>.Met(new WetWallPlant("p", 4, 1.8, 0.15, 1.4, 0.8, 0.001, 400, 0.5, 0.05, 0.2), 0.1),
            new Answer<FogPlant>.Met(new FogPlant("g", 24, 0.03, 0.85, 7e6, 900), 0.1),
            new Answer<HeatPlant>.Met(new HeatPlant([new HeaterUnit("A/heater-1", "h", 35_000, 0.93, 200, false, true, 12, 80), new HeaterUnit("A/heater-2", "h", 35_000, 0.93, 200, false, true, 12, 80)], 35_000, 14, 9), 0.1),
            new CurtainPlant("c", 2.2, 240, 0.5, 0.3, 0.6, 0.05, 240, 250, 1),
            new CirculationPlant("r", 6, 0.9, 90, 9, 0.4), null, null, 0, 0, [], StageReport.Empty);
        var crop = new CropPeriod("herbs", "herbs", 1, 52, new ClimateTarget(22, 65), new ClimateTarget(17, 75), new DayMark.Sunrise(0), new DayMark.Sunset(0), 60, 99, 2, 0.7, 0, 0, false);
        ProgramDocument document = ProgramStage.Run(new ProgramInput("A", [crop], new HeldBand(1.5, 7), true, []), plant);
        _program = ((ProgramCompilation.Ready)ProgramCompiler.Compile(document)).Program;
        _state = new int[_program.StateLength];
        _commands = new Command[_program.Actuators.Count];
        _program.Rest(_state);
        _readings[(int)Reading.LouverOpenProof] = 1;
        _readings[(int)Reading.Sunrise] = 21_600_000;
        _readings[(int)Reading.Sunset] = 64_800_000;
    }

    [Benchmark]
    public int Year()
    {
        for (int m = 0; m < 525_600; m++)
        {
            int ofDay = m % 1440;
            _readings[(int)Reading.InsideTemperature] = 1600 + Math.Abs(ofDay - 720) * -1 + 1000 + m / 1440 % 40 * 10;
            _readings[(int)Reading.InsideHumidity] = 500 + ofDay / 4;
            _readings[(int)Reading.OutsideTemperature] = 800 + ofDay;
            _readings[(int)Reading.OutsideHumidity] = 600;
            _readings[(int)Reading.Light] = Math.Max(0, 900 - Math.Abs(ofDay - 720) * 2);
            _readings[(int)Reading.DayOfYear] = m / 1440 + 1;
            _readings[(int)Reading.TimeOfDay] = ofDay * 60_000;
            ProgramInterpreter.Step(_program!, _state, _readings, 60_000, _state, _commands);
        }

        return _commands[0].Level;
    }
}
