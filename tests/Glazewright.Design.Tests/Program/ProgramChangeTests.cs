using CsCheck;
using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Design.Quantities;
using Glazewright.Design.Tests.Brief;

namespace Glazewright.Design.Tests.Program;

/// <summary>What a technician changes in the program that is written from plant and wish.</summary>
public class ProgramChangeTests
{
    private static ProgramChange Change(string part, string name, string field, double value) => new(part, name, field, value, $"/houses/0/program/{part}/{name}/{field}");

    private static LaidProgram Laid(PlantResult plant, params ProgramChange[] changes) => ProgramStage.Laid(SampleProgram.Input() with { Changes = changes.ToEqList() }, plant);

    [Fact]
    public void A_change_moves_its_own_value_and_no_other()
    {
        LaidProgram laid = Laid(SampleProgram.Plant(), Change("cooling", "wet-wall-pump", "onAt", 1.9));
        ControlStage pump = laid.Document.Cooling.Single(s => s.Settings.Any(a => a.Actuator == "A/wet-wall-pump"));
        Assert.Equal(1.9, pump.OnAtK);
        Assert.Equal(laid.Written.Cooling.Count, laid.Document.Cooling.Count);
        ProgramDocument back = laid.Document with { Cooling = laid.Document.Cooling.Select(s => s.Id == pump.Id ? laid.Written.Cooling.Single(w => w.Id == s.Id) : s).ToEqList(), Report = laid.Written.Report };
        Assert.Equal(laid.Written, back);
        Assert.Contains(laid.Document.Report.Findings, f => f.Code == "program/changed" && f.What.Contains("wet-wall-pump", StringComparison.Ordinal));
    }

    // Whatever may be changed: set to another value it has that value, and everything else stays.
    [Fact]
    public void Each_value_of_each_part_is_laid()
    {
        int tried = 0;
        foreach (PlantResult plant in (PlantResult[])[SampleProgram.Plant(), SampleProgram.Plant(vents: true)])
        {
            ProgramDocument written = ProgramStage.Run(SampleProgram.Input(), plant);
            foreach (ProgramPart part in ProgramParts.All)
            {
                foreach (string name in part.Names(written))
                {
                    foreach (ProgramField field in part.Fields.Where(f => part.Find(written, name, f.Key) is not null))
                    {
                        double was = part.Find(written, name, field.Key)!.Value;
                        double other = field.Measure is ProgramMeasure.Share ? was + 0.001 : was + 1;
                        ProgramDocument changed = part.With(written, name, field.Key, other);
                        Assert.Equal(other, part.Find(changed, name, field.Key)!.Value, 1e-9);
                        Assert.NotEqual(written, changed);
                        Assert.Equal(written, part.With(changed, name, field.Key, was));
                        tried++;
                    }
                }
            }
        }

        Assert.True(tried > 100, $"{tried}");
    }

    [Fact]
    public void Names_are_one_for_each_stage_and_stay_when_a_fan_comes_in_between()
    {
        PlantResult plant = SampleProgram.Plant();
        ProgramDocument three = ProgramStage.Run(SampleProgram.Input(), plant);
        Assert.Equal(["fan-1", "fan-2", "fan-3", "wet-wall-pump"], StageNames.Of(three.Cooling, "A"));
        Assert.Equal(["heater-1", "heater-2"], StageNames.Of(three.Heating, "A"));
        ExhaustPlant fans = plant.Exhaust!.Choice;
        PlantResult four = plant with { Exhaust = new Answer<ExhaustPlant>.Met(fans with { Fans = [.. fans.Fans, new FanUnit("A/fan-4", "fan-24", 0.61, 0.8)] }, 0) };
        LaidProgram laid = Laid(four, Change("cooling", "wet-wall-pump", "delay", 400));
        Assert.Equal((5, 400), (laid.Document.Cooling.Count, laid.Document.Cooling[4].DelayS));
        Assert.Equal("A/wet-wall-pump", laid.Document.Cooling[4].Settings[0].Actuator);
        Assert.Equal(["roof-vent-ajar", "roof-vent"], StageNames.Of(ProgramStage.Run(SampleProgram.Input(), SampleProgram.Plant(vents: true)).Cooling, "A").Take(2));
    }

    [Fact]
    public void A_stage_that_comes_on_before_the_one_ahead_of_it_is_told()
    {
        ProgramDocument written = ProgramStage.Run(SampleProgram.Input(), SampleProgram.Plant());
        double behind = written.Heating[1].OnAtK;
        LaidProgram laid = Laid(SampleProgram.Plant(), Change("heating", "heater-1", "onAt", behind + 0.5));
        Assert.Empty(laid.Faults);
        Finding told = laid.Document.Report.Findings.Single(f => f.Code == "program/stage-out-of-order");
        Assert.Contains("heater-2 now comes on before heater-1", told.What, StringComparison.Ordinal);
        Assert.DoesNotContain(Laid(SampleProgram.Plant(), Change("heating", "heater-1", "onAt", behind)).Document.Report.Findings, f => f.Code == "program/stage-out-of-order");
    }

    [Fact]
    public void A_change_whose_target_is_gone_is_told_with_its_place_and_the_rest_holds()
    {
        LaidProgram laid = Laid(SampleProgram.Plant(wetWall: false), Change("cooling", "wet-wall-pump", "delay", 400), Change("cooling", "fan-1", "delay", 90), Change("secondCurtain", "", "gap", 0.1), Change("motors", "louver", "minOn", 60));
        Assert.Empty(laid.Faults);
        Assert.Equal(90, laid.Document.Cooling[0].DelayS);
        Finding[] gone = [.. laid.Document.Report.Findings.Where(f => f.Code == "program/change-without-target")];
        Assert.Equal(3, gone.Length);
        Assert.All(gone, f => Assert.Equal(Severity.Near, f.Severity));
        Assert.Equal("/houses/0/program/cooling/wet-wall-pump/delay", Assert.IsType<Source.Given>(gone[0].Source).Pointer);
        Assert.Contains("fan-1, fan-2, fan-3", gone[0].What, StringComparison.Ordinal);
    }

    [Fact]
    public void What_makes_no_program_is_a_fault_at_the_change_that_does_it_and_the_written_one_stands()
    {
        LaidProgram laid = Laid(SampleProgram.Plant(), Change("periods", "herbs", "heatBelow", 0.7), Change("cooling", "fan-2", "offAt", 2), Change("motors", "fan-1", "minOn", 90));
        Fault chatter = Assert.Single(laid.Faults);
        Assert.Equal(("/houses/0/program/cooling/fan-2/offAt", "A/fan-2", "below onAt"), (chatter.Pointer, chatter.Id, chatter.Right));
        Assert.StartsWith("stage 'fan-2' goes off", chatter.Wrong, StringComparison.Ordinal);
        Assert.Equal(laid.Written, laid.Document);

        // Setpoints that cross: the fault of the checks names the period, the change is the heater's.
        LaidProgram crossed = Laid(SampleProgram.Plant(), Change("motors", "fan-1", "minOn", 90), Change("heating", "heater-1", "offAt", -5));
        Assert.Equal("/houses/0/program/heating/heater-1/offAt", Assert.Single(crossed.Faults).Pointer);
    }

    [Fact]
    public void A_storm_no_stronger_than_the_wind_is_a_fault_at_the_vent()
    {
        LaidProgram laid = Laid(SampleProgram.Plant(vents: true), Change("weather", "roof-vent", "storm", 6));
        Assert.Equal(("/houses/0/program/weather/roof-vent/storm", "above wind"), (laid.Faults.Single().Pointer, laid.Faults.Single().Right));
        ProgramDocument wider = Laid(SampleProgram.Plant(vents: true), Change("weather", "side-vent", "inWind", 0.5)).Document;
        Assert.Equal([0.3, 0.5], wider.Weather!.Select(w => w.InWindFraction));
    }

    // A random set of random changes: a program that compiles, and faults only with the written one in its place.
    [Fact]
    public void Any_changes_give_a_program_that_compiles()
    {
        PlantResult plant = SampleProgram.Plant();
        ProgramDocument written = ProgramStage.Run(SampleProgram.Input(), plant);
        (ProgramPart Part, string Name, ProgramField Field)[] all = [.. ProgramParts.All.SelectMany(p => p.Names(written).Append("none-such").SelectMany(n => p.Fields.Select(f => (p, n, f))))];
        Gen.Select(Gen.Int[0, all.Length - 1], Gen.Double[0, 1]).Array[1, 6].Sample(
            picks =>
            {
                ProgramChange[] changes = [.. picks.DistinctBy(p => p.Item1).Select(p => Change(all[p.Item1].Part.Key, all[p.Item1].Name, all[p.Item1].Field.Key, Between(all[p.Item1].Field, p.Item2)))];
                LaidProgram laid = Laid(plant, changes);
                ProgramReading read = ProgramJson.Read(ProgramJson.Write(laid.Document));
                Assert.IsType<ProgramReading.Read>(read);
                Assert.All(laid.Faults, f => Assert.Contains(changes, c => c.Pointer == f.Pointer));
                Assert.Equal(laid.Faults.Count > 0 ? 0 : changes.Count(c => c.Name == "none-such" || !LaidProgram.Finds(written, c)), laid.Document.Report.Findings.Count(f => f.Code == "program/change-without-target"));
            },
            iter: 2000);
    }

    [Fact]
    public void The_job_says_changes_in_its_own_words()
    {
        const string Section = """
            "program": {
              "cooling": [{ "id": "fan-2", "onAt": "0.9 F°", "delay": "1 min 30 s" }],
              "humidity": { "fogCeiling": "80 %" }, "coldAir": { "stages": 2 }, "alarms": { "tooColdBelow": "40 F" } }
            """;
        Job job = Read(Section).Value!;
        Assert.Equal(
            [("cooling", "fan-2", "onAt", 0.5), ("cooling", "fan-2", "delay", 90), ("humidity", "", "fogCeiling", 80), ("coldAir", "", "stages", 2), ("alarms", "", "tooColdBelow", 4.4444)],
            job.Houses[0].ProgramChanges.Select(c => (c.Part, c.Name, c.Field, c.Value)));
        Assert.Equal("/houses/0/program/cooling/0/delay", job.Houses[0].ProgramChanges[1].Pointer);
        Assert.Empty(Read("\"bays\": 12").Value!.Houses[0].ProgramChanges);
        Assert.Equal(Read("\"bays\": 12").Defaults, Read("\"bays\": 12, " + Section).Defaults);
    }

    [Theory]
    [InlineData("\"program\": { \"cooling\": [{ \"onAt\": \"1 K\" }] }", "/houses/0/program/cooling/0/id")]
    [InlineData("\"program\": { \"cooling\": [{ \"id\": \"fan-1\", \"onAt\": \"1\" }] }", "/houses/0/program/cooling/0/onAt")]
    [InlineData("\"program\": { \"cooling\": [{ \"id\": \"fan-1\", \"onAt\": \"90 K\" }] }", "/houses/0/program/cooling/0/onAt")]
    [InlineData("\"program\": { \"cooling\": [{ \"id\": \"fan-1\", \"onAtK\": 1 }] }", "/houses/0/program/cooling/0/onAtK")]
    [InlineData("\"program\": { \"cooling\": { \"fan-1\": 1 } }", "/houses/0/program/cooling")]
    [InlineData("\"program\": { \"cooling\": [{ \"id\": \"fan-1\" }, { \"id\": \"fan-1\" }] }", "/houses/0/program/cooling/1/id")]
    [InlineData("\"program\": { \"coldAir\": { \"stages\": 1.5 } }", "/houses/0/program/coldAir/stages")]
    [InlineData("\"program\": { \"interlocks\": [] }", "/houses/0/program/interlocks")]
    [InlineData("\"program\": 3", "/houses/0/program")]
    public void A_wrong_change_is_a_fault_with_its_place(string section, string pointer) => Assert.Equal(pointer, Assert.Single(Read(section).Faults).Pointer);

    // What a page shows of a written value is read back as that value.
    [Fact]
    public void A_value_as_shown_is_read_as_itself()
    {
        ProgramDocument written = ProgramStage.Run(SampleProgram.Input(), SampleProgram.Plant(vents: true));
        foreach (ProgramPart part in ProgramParts.All)
        {
            foreach (string name in part.Names(written))
            {
                foreach (ProgramField field in part.Fields.Where(f => f.Kind is not null && part.Find(written, name, f.Key) is not null))
                {
                    double value = part.Find(written, name, field.Key)!.Value;
                    foreach (UnitSystem units in (UnitSystem[])[UnitSystem.Us, UnitSystem.Metric])
                    {
                        string text = field.Text(value, units);
                        Assert.True(QuantityReader.TryRead(text, field.Kind!.Value, out Quantity quantity, out _), text);
                        Assert.Equal(value, field.OfInside(quantity.Inside), 0.06);
                    }
                }
            }
        }
    }

    private static double Between(ProgramField field, double share)
    {
        double Of(string text) => field.Kind is { } kind && QuantityReader.TryRead(text, kind, out Quantity q, out _) ? field.OfInside(q.Inside) : double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
        double value = Of(field.Least) + share * (Of(field.Most) - Of(field.Least));
        return field.Measure is ProgramMeasure.Time or ProgramMeasure.Count ? Math.Round(value) : value;
    }

    private static ReadOutcome<Job> Read(string section) => JobReader.Read(
        JobDocument.Read("{ \"glazewright\": 1, \"site\": { \"weather\": { \"file\": \"demo-continental-42N.epw.gz\" }, \"latitude\": \"42 deg\" }, \"houses\": [{ \"width\": \"26 ft\", \"length\": \"96 ft\", " + section + " }] }"));
}
