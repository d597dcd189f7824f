using System.Text.Json.Nodes;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Program;

namespace Glazewright.Design.Tests.Program;

/// <summary>Sensors as part of the program: their faults, what the box makes of them, how they are told.</summary>
public class SensorTests
{
    private const int Missing = int.MinValue;
    private static readonly ProgramDocument s_sound = SampleProgram.Document();

    private static EqList<Fault> Faults(ProgramDocument document) =>
        Assert.IsType<ProgramCompilation.Faulty>(ProgramCompiler.Compile(document)).Faults;

    private static ProgramDocument With(SensorQuantity quantity, SensorPlace place, Func<Sensor, Sensor?> change) => s_sound with
    {
        Sensors = s_sound.Sensors!.Select(s => s.Quantity == quantity && s.Place == place ? change(s) : s).OfType<Sensor>().ToEqList(),
    };

    private static ProgramDocument Without(SensorQuantity quantity, SensorPlace place) => With(quantity, place, _ => null);

    [Fact]
    public void The_written_program_lists_what_it_reads_aspirated_and_true()
    {
        Assert.Equal(
            ["A/crop-temperature", "A/crop-humidity", "A/second-temperature", "A/upper-temperature", "A/outside-temperature", "A/outside-humidity", "A/outside-light", "A/outside-wind", "A/outside-snow", "A/static-pressure", "A/louver-open"],
            s_sound.Sensors!.Select(s => s.Id));
        Assert.All(s_sound.Sensors!, s => Assert.Equal((0.0, 0.0), (s.ErrorValue, s.CorrectionValue)));
        Assert.All(s_sound.Sensors!.Where(s => s.Quantity is SensorQuantity.Temperature or SensorQuantity.Humidity), s => Assert.True(s.Aspirated));
    }

    [Fact]
    public void Every_fault_of_a_sensor_comes_with_its_place()
    {
        Sensor crop = s_sound.Sensors![0];
        EqList<Fault> faults = Faults(s_sound with
        {
            Sensors =
            [
                .. s_sound.Sensors!,
                new Sensor("A/odd", SensorQuantity.Humidity, SensorPlace.AboveCurtain, 90, true, 0, 0),
                crop with { Id = "A/twice", LagS = -1, ErrorValue = 25, CorrectionValue = -30 },
                new Sensor("A/odd", SensorQuantity.CarbonDioxide, SensorPlace.Crop, double.NaN, false, 0, 0),
            ],
        });
        Assert.Equal(
            ["/sensors/11/place", "/sensors/12/correctionValue", "/sensors/12/errorValue", "/sensors/12/lagS", "/sensors/12/place", "/sensors/13/id", "/sensors/13/lagS"],
            faults.Select(f => f.Pointer).Order(StringComparer.Ordinal));
        Assert.Equal("crop or outside", faults.Single(f => f.Pointer == "/sensors/11/place").Right);
        Assert.Contains("temperature at the crop", faults.Single(f => f.Pointer == "/sensors/12/place").Wrong, StringComparison.Ordinal);
        Fault contact = Assert.Single(Faults(With(SensorQuantity.Snow, SensorPlace.Outside, s => s with { LagS = 5 })));
        Assert.Equal("/sensors/8", contact.Pointer);
        Assert.Equal("/sensors/8", Assert.Single(Faults(With(SensorQuantity.Snow, SensorPlace.Outside, s => s with { DriftPerYearValue = 1 }))).Pointer);
        Assert.Equal("/sensors/0/driftPerYearValue", Assert.Single(Faults(With(SensorQuantity.Temperature, SensorPlace.Crop, s => s with { DriftPerYearValue = 30 }))).Pointer);
    }

    [Theory]
    [InlineData(SensorQuantity.Temperature, SensorPlace.Crop, "/alarms/0/reading /alarms/1/reading /cooling/0 /heating/0")]
    [InlineData(SensorQuantity.Humidity, SensorPlace.Crop, "/alarms/2/reading /humidity/drying /humidity/fogging")]
    [InlineData(SensorQuantity.Temperature, SensorPlace.Outside, "/coldAir /humidity/drying")]
    [InlineData(SensorQuantity.Light, SensorPlace.Outside, "/curtain/shadeFraction /lamps/offAboveLightWm2")]
    [InlineData(SensorQuantity.Snow, SensorPlace.Outside, "/curtain/holdOpenOnSnow")]
    [InlineData(SensorQuantity.Wind, SensorPlace.Outside, "/background/1/restsAboveWindMs")]
    [InlineData(SensorQuantity.LouverOpen, SensorPlace.Equipment, "/interlocks/1")]
    [InlineData(SensorQuantity.StaticPressure, SensorPlace.Equipment, "/alarms/3/reading")]
    [InlineData(SensorQuantity.Temperature, SensorPlace.BelowCurtain, "")]
    [InlineData(SensorQuantity.Temperature, SensorPlace.AboveCurtain, "")]
    [InlineData(SensorQuantity.Humidity, SensorPlace.Outside, "")]
    public void A_rule_that_reads_a_sensor_the_program_lacks_is_a_fault(SensorQuantity quantity, SensorPlace place, string pointers)
    {
        ProgramDocument document = Without(quantity, place);
        if (pointers.Length == 0)
        {
            Assert.IsType<ProgramCompilation.Ready>(ProgramCompiler.Compile(document));
            return;
        }

        EqList<Fault> faults = Faults(document);
        // A fan each has its proof of the louver.
        Assert.Equal(pointers, string.Join(' ', faults.Select(f => f.Pointer).Where(p => !p.StartsWith("/interlocks/", StringComparison.Ordinal) || p == "/interlocks/1").Distinct().Order(StringComparer.Ordinal)));
        Assert.All(faults, f => Assert.Equal(FaultKind.Missing, f.Kind));
    }

    [Fact]
    public void A_program_without_a_list_takes_every_terminal_as_it_is()
    {
        Bench bare = new(s_sound with { Sensors = null }), listed = new(s_sound);
        foreach (Bench bench in new[] { bare, listed })
        {
            bench.Set(Reading.InsideTemperature, 1500).Run(600);
        }

        Assert.Equal(bare.Commands, listed.Commands);
        Assert.Equal(10_000, listed["A/heater-1"]);
    }

    [Fact]
    public void What_the_box_adds_moves_its_thresholds()
    {
        // 21.5 °C: heat is called for below 22 − 0.5 K. A sensor known to read 2 K low is not cold.
        Bench plain = new Bench(s_sound).Set(Reading.InsideTemperature, 2020).Run(600);
        Bench corrected = new Bench(With(SensorQuantity.Temperature, SensorPlace.Crop, s => s with { CorrectionValue = 2 })).Set(Reading.InsideTemperature, 2020).Run(600);
        Assert.Equal((10_000, 0), (plain["A/heater-1"], corrected["A/heater-1"]));
        // A missing reading stays missing.
        corrected.Set(Reading.InsideTemperature, Missing).Run(120);
        Assert.True(corrected.Program.AlarmIsOn(corrected.State, corrected.Program.AlarmIds.Count - CompiledProgram.OwnAlarms));
    }

    [Fact]
    public void The_error_is_the_sensors_own_and_unknown_to_the_box()
    {
        Bench plain = new Bench(s_sound).Set(Reading.InsideTemperature, 2020).Run(600);
        Bench erring = new Bench(With(SensorQuantity.Temperature, SensorPlace.Crop, s => s with { ErrorValue = 2 })).Set(Reading.InsideTemperature, 2020).Run(600);
        Assert.Equal(plain.Commands, erring.Commands);
    }

    [Fact]
    public void A_terminal_without_a_sensor_is_missing_whatever_it_carries()
    {
        // 0 at a terminal that nothing is wired to would be 0 °C: without the upper sensor a failed one at the crop must not be replaced by it.
        int[] readings = new int[Enum.GetValues<Reading>().Length];
        SampleProgram.Readings().CopyTo(readings, 0);
        readings[(int)Reading.InsideTemperature] = Missing;
        Command[] Run(ProgramDocument document)
        {
            CompiledProgram program = SampleProgram.Ready(document);
            int[] state = new int[program.StateLength];
            program.Rest(state);
            Command[] commands = new Command[program.Actuators.Count];
            ProgramInterpreter.Step(program, state, readings, 60_000, state, commands);
            return commands;
        }

        int heater = s_sound.Actuators.ToList().FindIndex(a => a.Id == "A/heater-1");
        ProgramDocument none = s_sound with { Sensors = s_sound.Sensors!.Where(s => s.Id is not ("A/second-temperature" or "A/upper-temperature")).ToEqList() };
        Assert.Equal(ReasonCode.Heating, (ReasonCode)Run(s_sound)[heater].Reason);
        Assert.DoesNotContain(Run(none), c => (ReasonCode)c.Reason == ReasonCode.Heating);
        // The second thermometer serves before the upper one.
        readings[(int)Reading.SecondTemperature] = 2200;
        Assert.NotEqual(ReasonCode.Heating, (ReasonCode)Run(s_sound)[heater].Reason);
    }

    [Fact]
    public void An_alarm_can_watch_the_second_thermometer_only_when_it_is_given()
    {
        CompiledProgram program = SampleProgram.Ready(s_sound with { Alarms = [new Alarm("second-cold", Reading.SecondTemperature, 5, null, 0)] });
        int[] state = new int[program.StateLength];
        Assert.Throws<ArgumentException>(() => ProgramInterpreter.Step(program, state, SampleProgram.Readings(), 1000, state, new Command[program.Actuators.Count]));
    }

    [Fact]
    public void Two_thermometers_apart_for_a_quarter_of_an_hour_sound()
    {
        CompiledProgram program = SampleProgram.Ready(s_sound);
        int[] state = new int[program.StateLength], readings = new int[Enum.GetValues<Reading>().Length];
        program.Rest(state);
        SampleProgram.Readings().CopyTo(readings, 0);
        int alarm = program.AlarmIds.ToList().IndexOf("thermometers-disagree");
        int Sounds(int second, int mostMinutes)
        {
            readings[(int)Reading.SecondTemperature] = second;
            for (int m = 1; m <= mostMinutes; m++)
            {
                ProgramInterpreter.Step(program, state, readings, 60_000, state, new Command[program.Actuators.Count]);
                if (program.AlarmIsOn(state, alarm))
                {
                    return m;
                }
            }

            return -1;
        }

        Assert.Equal(-1, Sounds(2350, 600)); // 1.5 K apart
        Assert.Equal(16, Sounds(1990, 60)); // 2.1 K apart: past 15 min
        Assert.Equal(-1, Sounds(2200, 1));
        Assert.Equal(-1, Sounds(Missing, 60));
    }

    [Fact]
    public void The_narrative_tells_each_sensor_and_who_serves_for_whom()
    {
        ProgramDocument told = s_sound with
        {
            Sensors = s_sound.Sensors!
                .Select(s => s.Id == "A/crop-temperature" ? s with { Aspirated = false, ErrorValue = 1.5, CorrectionValue = -1 } : s).ToEqList(),
        };
        string Text(ProgramDocument d, UnitSystem units) => string.Join('\n', ControlNarrative.Of(d, units).SelectMany(p => p.Lines));
        Assert.Contains("A/crop-temperature: temperature at the crop, not aspirated: in sun it reads warm and dry, follows in 90 s, taken to read 1.5 K high, 1.0 K taken off by the box.", Text(told, UnitSystem.Metric), StringComparison.Ordinal);
        Assert.Contains("taken to read 2.7 F° high", Text(told, UnitSystem.Us), StringComparison.Ordinal);
        Assert.Contains("the second one, then the one above the curtain serves", Text(s_sound, UnitSystem.Us), StringComparison.Ordinal);
        ProgramDocument alone = s_sound with { Sensors = s_sound.Sensors!.Where(s => s.Id is not ("A/second-temperature" or "A/upper-temperature")).ToEqList() };
        Assert.Contains("no other thermometer", Text(alone, UnitSystem.Us), StringComparison.Ordinal);
    }

    [Fact]
    public void A_bad_place_in_a_file_is_named_by_its_pointer()
    {
        JsonNode tree = JsonNode.Parse(ProgramJson.Write(s_sound))!;
        tree["sensors"]![0]!["place"] = "roof";
        tree["sensors"]![1]!.AsObject().Remove("aspirated");
        EqList<Fault> faults = Assert.IsType<ProgramReading.Refused>(ProgramJson.Read(tree.ToJsonString())).Faults;
        Assert.Equal(["/sensors/0/place", "/sensors/1/aspirated"], faults.Select(f => f.Pointer).Order(StringComparer.Ordinal));
        Assert.Contains("below-curtain", faults[0].Right, StringComparison.Ordinal);
    }
}
