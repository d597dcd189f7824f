using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;

namespace Glazewright.Design.Tests.Program;

/// <summary>A made-up house with everything in it, its program, and readings to feed it.</summary>
internal static class SampleProgram
{
    public static readonly CropPeriod Herbs = new(
        "herbs", "potted herbs", 1, 52, new ClimateTarget(22, 65), new ClimateTarget(17, 75),
        new DayMark.Sunrise(0), new DayMark.Sunset(0), 60, 99, 2, 0.7, 14, 0, false);

    public static PlantResult Plant(bool wetWall = true, bool vents = false) => new(
        "A",
        new Answer<ExhaustPlant>.Met(
            new ExhaustPlant(
                [new FanUnit("A/fan-1", "fan-36", 0.91, 1.1), new FanUnit("A/fan-2", "fan-36", 0.91, 1.1), new FanUnit("A/fan-3", "fan-24", 0.61, 0.8)],
                [new OperatingPoint(1, 4, 10, 400), new OperatingPoint(2, 8, 18, 800), new OperatingPoint(3, 10, 24, 1000)],
                [new OperatingPoint(1, 3.8, 14, 400), new OperatingPoint(2, 7.5, 25, 800), new OperatingPoint(3, 9.2, 33, 1000)],
                4, 6, 45, 0.6, 6), 0.1),
        wetWall ? new Answer<WetWallPlant>.Met(new WetWallPlant("pad-6", 4, 1.8, 0.15, 1.4, 0.8, 0.001, 400, 0.5, 0.05, 0.2), 0.1) : null,
        new Answer<FogPlant>.Met(new FogPlant("fog-70", 24, 0.03, 0.85, 7e6, 900), 0.1),
        new Answer<HeatPlant>.Met(
            new HeatPlant(
                [new HeaterUnit("A/heater-1", "unit-35", 35_000, 0.93, 200, false, true, 12, 80), new HeaterUnit("A/heater-2", "unit-35", 35_000, 0.93, 200, false, true, 12, 80)],
                35_000, 14, 10), 0.1),
        new CurtainPlant("cloth-50", 2.2, 240, 0.5, 0.3, 0.6, 0.05, 240, 250, 1),
        new CirculationPlant("haf-20", 6, 0.9, 90, 9, 0.4),
        new PressurePlant("filter-fan", 0.6, 5, 300, 4),
        vents ? new VentPlant(20, 10, 180) : null,
        4500,
        0,
        [],
        StageReport.Empty);

    public static ProgramInput Input(params CropPeriod[] schedule) =>
        new("A", schedule.Length == 0 ? [Herbs] : schedule.ToEqList(), new HeldBand(1.5, 7), true, []);

    public static ProgramDocument Document(bool wetWall = true, bool vents = false) => ProgramStage.Run(Input(), Plant(wetWall, vents));

    public static CompiledProgram Ready(ProgramDocument document) =>
        ProgramCompiler.Compile(document) switch
        {
            ProgramCompilation.Ready ready => ready.Program,
            ProgramCompilation.Faulty faulty => throw new InvalidOperationException(string.Join("; ", faulty.Faults.Select(f => $"{f.Pointer}: {f.Wrong}"))),
            _ => throw new InvalidOperationException(),
        };

    /// <summary>Quiet readings at noon of day 100: 22 °C and 65 % inside, 20 °C outside, louver proved.</summary>
    public static int[] Readings()
    {
        var r = new int[(int)Reading.Sunset + 1];
        r[(int)Reading.InsideTemperature] = 2200;
        r[(int)Reading.InsideHumidity] = 650;
        r[(int)Reading.UpperTemperature] = 2300;
        r[(int)Reading.OutsideTemperature] = 2000;
        r[(int)Reading.OutsideHumidity] = 600;
        r[(int)Reading.Wind] = 300;
        r[(int)Reading.Light] = 400;
        r[(int)Reading.LouverOpenProof] = 1;
        r[(int)Reading.StaticPressure] = 150;
        r[(int)Reading.DayOfYear] = 100;
        r[(int)Reading.TimeOfDay] = 12 * 3_600_000;
        r[(int)Reading.Sunrise] = 6 * 3_600_000;
        r[(int)Reading.Sunset] = 18 * 3_600_000;
        return r;
    }
}

/// <summary>A control box on the bench: keeps state, takes readings, remembers commands.</summary>
internal sealed class Bench
{
    private readonly int[] _state;

    public Bench(ProgramDocument document)
    {
        Program = SampleProgram.Ready(document);
        _state = new int[Program.StateLength];
        Program.Rest(_state);
        Commands = new Command[Program.Actuators.Count];
    }

    public CompiledProgram Program { get; }

    public Command[] Commands { get; }

    public int[] Readings { get; } = SampleProgram.Readings();

    public Span<int> State => _state;

    public int this[string id] => Commands[Index(id)].Level;

    public int Index(string id)
    {
        for (int i = 0; i < Program.Actuators.Count; i++)
        {
            if (Program.Actuators[i].Id == id)
            {
                return i;
            }
        }

        throw new ArgumentException(id);
    }

    public ReasonCode Why(string id) => (ReasonCode)Commands[Index(id)].Reason;

    public string Say(string id) => ProgramWords.Say(Program, Index(id), Commands[Index(id)]);

    public Bench Set(Reading reading, int value)
    {
        Readings[(int)reading] = value;
        return this;
    }

    /// <summary>Runs some seconds in steps, the clock going on.</summary>
    public Bench Run(int seconds, int stepMs = 5000)
    {
        for (long done = 0; done < seconds * 1000L; done += stepMs)
        {
            ProgramInterpreter.Step(Program, _state, Readings, stepMs, _state, Commands);
            int clock = Readings[(int)Reading.TimeOfDay];
            if (clock != int.MinValue)
            {
                Readings[(int)Reading.TimeOfDay] = (clock + stepMs) % 86_400_000;
            }
        }

        return this;
    }
}
