using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Program;

namespace Glazewright.Design.Tests.Program;

/// <summary>Dosing: only in light, only with a reading, not while fans are asked for.</summary>
public class Co2ControlTests
{
    private static readonly ProgramDocument Document = new(
        "A",
        [new ProgramPeriod("all", 1, 365, new ClimateTarget(20, 0), new ClimateTarget(20, 0), new DayMark.Sunrise(0), new DayMark.Sunset(0), 0, 1, 0.5)],
        [new("A/fan", ActuatorKind.Fan, 60, 60, 0, ""), new("A/gas", ActuatorKind.Co2Valve, 0, 0, 0, "")],
        [new("cool-1", 0, -0.5, 0, [new("A/fan", 1)])],
        [],
        new HumidityControl(8, 4, [], -10, 10, 4, 92, [], 20, 100),
        null,
        null,
        [],
        [],
        StageReport.Empty,
        Co2: new Co2Control("A/gas", 900, 60, 100, ["A/fan"]));

    [Theory]
    [InlineData(700, 300, 2000, 10_000, ReasonCode.Dosing)] // below, bright, not warm
    [InlineData(860, 300, 2000, 0, ReasonCode.Idle)] // within the deadband, coming from above
    [InlineData(700, 60, 2000, 0, ReasonCode.Idle)] // too dark
    [InlineData(700, 300, 2400, 0, ReasonCode.Idle)] // the fan is asked for
    [InlineData(int.MinValue, 300, 2000, 0, ReasonCode.Idle)] // no reading
    public void Doses_when_it_may(int ppm, int light, int insideCenti, int level, ReasonCode reason)
    {
        Command gas = Run(ppm, light, insideCenti, out CompiledProgram program);
        Assert.Equal((level, (int)reason), (gas.Level, gas.Reason));
        if (reason == ReasonCode.Dosing)
        {
            Assert.Equal("A/gas on: dosing: 700 ppm, up to 900 ppm, light 300 W/m²", ProgramWords.Say(program, 1, gas));
        }
    }

    [Fact]
    public void A_box_without_the_sensor_never_doses()
    {
        CompiledProgram program = ((ProgramCompilation.Ready)ProgramCompiler.Compile(Document)).Program;
        int[] state = new int[program.StateLength], readings = new int[(int)Reading.Sunset + 1];
        program.Rest(state);
        readings[(int)Reading.Light] = 500;
        readings[(int)Reading.InsideTemperature] = 2000;
        Command[] commands = new Command[2];
        ProgramInterpreter.Step(program, state, readings, 60_000, state, commands);
        Assert.Equal(0, commands[1].Level);
    }

    [Fact]
    public void Written_and_read_again_it_is_the_same()
    {
        ProgramDocument read = ((ProgramReading.Read)ProgramJson.Read(ProgramJson.Write(Document))).Document;
        Assert.Equal(Document.Co2, read.Co2);
        Assert.Contains(ControlNarrative.Of(Document, UnitSystem.Metric).SelectMany(p => p.Lines), l => l.Contains("doses from 840 to 900 ppm", StringComparison.Ordinal));
    }

    [Fact]
    public void A_wrong_one_is_told_with_its_place()
    {
        ProgramDocument wrong = Document with { Co2 = new Co2Control("A/fan", 9000, 60, 100, ["A/none"]) };
        EqList<Fault> faults = ((ProgramCompilation.Faulty)ProgramCompiler.Compile(wrong)).Faults;
        Assert.Contains(faults, f => f.Pointer == "/co2/actuator");
        Assert.Contains(faults, f => f.Pointer == "/co2/targetPpm");
        Assert.Contains(faults, f => f.Pointer == "/co2/restsWith");
    }

    private static Command Run(int ppm, int light, int insideCenti, out CompiledProgram program)
    {
        program = ((ProgramCompilation.Ready)ProgramCompiler.Compile(Document)).Program;
        int[] state = new int[program.StateLength], readings = new int[(int)Reading.Co2 + 1];
        program.Rest(state);
        readings[(int)Reading.InsideTemperature] = insideCenti;
        readings[(int)Reading.InsideHumidity] = 700;
        readings[(int)Reading.Light] = light;
        readings[(int)Reading.Co2] = ppm;
        readings[(int)Reading.DayOfYear] = 100;
        readings[(int)Reading.TimeOfDay] = 43_200_000;
        readings[(int)Reading.Sunrise] = 21_600_000;
        readings[(int)Reading.Sunset] = 64_800_000;
        Command[] commands = new Command[2];
        ProgramInterpreter.Step(program, state, readings, 60_000, state, commands);
        return commands[1];
    }
}
