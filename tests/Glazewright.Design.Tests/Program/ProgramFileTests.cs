using System.Text.Json;
using System.Text.Json.Nodes;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Program;

namespace Glazewright.Design.Tests.Program;

public class ProgramFileTests
{
    [Theory]
    [InlineData(true, false)]
    [InlineData(false, true)]
    public void Written_and_read_it_is_the_same_program(bool wetWall, bool vents)
    {
        ProgramDocument document = SampleProgram.Document(wetWall, vents) with { Report = StageReport.Empty };
        string text = ProgramJson.Write(document);
        ProgramDocument read = Assert.IsType<ProgramReading.Read>(ProgramJson.Read(text)).Document;
        Assert.Equal(document, read);
        Assert.Equal(text, ProgramJson.Write(read));
        Assert.DoesNotContain('\r', text);
    }

    [Fact]
    public void Comments_and_trailing_commas_are_taken()
    {
        string text = ProgramJson.Write(SampleProgram.Document()).Replace("\"house\": \"A\",", "\"house\": \"A\", // the big one\n", StringComparison.Ordinal);
        text = text[..text.LastIndexOf('}')].TrimEnd() + ",\n}";
        Assert.IsType<ProgramReading.Read>(ProgramJson.Read(text));
    }

    [Fact]
    public void Every_fault_of_form_comes_at_once_with_its_place()
    {
        JsonNode tree = JsonNode.Parse(ProgramJson.Write(SampleProgram.Document()))!;
        tree["cooling"]![0]!["onAtK"] = "half a degree";
        tree["actuators"]![1]!["kind"] = "jet-engine";
        tree["interlocks"]![0]!["kind"] = "never";
        tree["heating"]![0]!.AsObject().Remove("delayS");
        tree["curtian"] = 1;
        EqList<Fault> faults = Assert.IsType<ProgramReading.Refused>(ProgramJson.Read(tree.ToJsonString())).Faults;
        Assert.Equal(
            ["/actuators/1/kind", "/cooling/0/onAtK", "/curtian", "/heating/0/delayS", "/interlocks/0/kind"],
            faults.Select(f => f.Pointer).Order(StringComparer.Ordinal));
        Assert.Contains("roof-vent", faults.First(f => f.Pointer == "/actuators/1/kind").Right);
    }

    [Theory]
    [InlineData("", FaultKind.NotJson)]
    [InlineData("{ \"glazewrightProgram\": 1, ", FaultKind.NotJson)]
    [InlineData("[1, 2]", FaultKind.WrongType)]
    [InlineData("{}", FaultKind.Missing)]
    public void What_is_no_program_is_named(string text, FaultKind kind) =>
        Assert.Contains(Assert.IsType<ProgramReading.Refused>(ProgramJson.Read(text)).Faults, f => f.Kind == kind);

    [Fact]
    public void Faults_of_sense_come_from_the_file_too()
    {
        string text = ProgramJson.Write(SampleProgram.Document()).Replace("\"fogCeilingPercent\": 92", "\"fogCeilingPercent\": 100", StringComparison.Ordinal);
        Assert.Equal("/humidity/fogCeilingPercent", Assert.Single(Assert.IsType<ProgramReading.Refused>(ProgramJson.Read(text)).Faults).Pointer);
    }

    [Fact]
    public void The_schema_knows_every_key_that_is_written_and_no_other()
    {
        JsonNode schema = JsonNode.Parse(ProgramSchema.Write())!;
        JsonObject defs = schema["$defs"]!.AsObject();
        // Every part that may be left out is there.
        ProgramDocument whole = SampleProgram.Document(true, true);
        CurtainControl curtain = whole.Curtain! with { Dark = new DarkHours(new DayMark.Clock(1080), new DayMark.Sunrise(30)), Warm = new WarmGap(0.3, 0.2, 0.5) };
        ClimateTarget deficit = new(22, 0, 0.8);
        ControlStage Turned(ControlStage s) => s with { Modulates = new Modulation(2, 900, 0.05) };
        whole = whole with
        {
            Humidity = whole.Humidity with { DryHeatK = 0.2, Purge = new PurgeRule(60, 60, 0.2, [new ActuatorSetting("A/louver", 0.5)]) },
            Sensors = whole.Sensors!.Select(s => s with { DriftPerYearValue = 0 }).ToEqList(),
            Actuators = whole.Actuators.Select(a => a with { LeastFraction = 0.25 }).ToEqList(),
            Cooling = whole.Cooling.Select(Turned).ToEqList(),
            Heating = whole.Heating.Select(Turned).ToEqList(),
        };
        Walk(JsonNode.Parse(ProgramJson.Write(whole with { Periods = [whole.Periods[0] with { Day = deficit, Night = deficit }], Curtain = curtain, SecondCurtain = curtain, UpperAir = new UpperAirControl("A/upper-fans", 5, 2, 0.5) }))!, defs["program-document"]!);

        void Walk(JsonNode? value, JsonNode shape)
        {
            if (shape["$ref"] is JsonNode reference)
            {
                Walk(value, defs[reference.GetValue<string>()["#/$defs/".Length..]]!);
            }
            else if (shape["anyOf"] is JsonArray any)
            {
                if (value is not null)
                {
                    Walk(value, any[0]!);
                }
            }
            else if (shape["oneOf"] is JsonArray cases)
            {
                string kind = value!["kind"]!.GetValue<string>();
                Walk(value, cases.Select(c => defs[c!["$ref"]!.GetValue<string>()["#/$defs/".Length..]]!).Single(c => c["properties"]!["kind"]!["const"]!.GetValue<string>() == kind));
            }
            else if (value is JsonObject o)
            {
                JsonObject properties = shape["properties"]!.AsObject();
                Assert.Equal(properties.Select(p => p.Key).Order(StringComparer.Ordinal), o.Select(p => p.Key).Order(StringComparer.Ordinal));
                foreach ((string key, JsonNode? part) in o)
                {
                    if (properties[key]!["const"] is null)
                    {
                        Walk(part, properties[key]!);
                    }
                }
            }
            else if (value is JsonArray list)
            {
                Assert.Equal("array", shape["type"] is JsonArray types ? types[0]!.GetValue<string>() : shape["type"]!.GetValue<string>());
                foreach (JsonNode? item in list)
                {
                    Walk(item, shape["items"]!);
                }
            }
            else if (shape["enum"] is JsonArray words)
            {
                Assert.Contains(value!.GetValue<string>(), words.Select(w => w!.GetValue<string>()));
            }
            else if (value is not null)
            {
                string type = shape["type"] is JsonArray types ? types[0]!.GetValue<string>() : shape["type"]!.GetValue<string>();
                Assert.Contains(type, value.GetValueKind() switch
                {
                    JsonValueKind.String => ["string"],
                    JsonValueKind.Number => ["integer", "number"],
                    _ => new[] { "boolean" },
                });
            }
        }
    }

    [Fact]
    public void The_narrative_names_every_actuator_and_lists_what_is_outside_the_program()
    {
        ProgramDocument d = SampleProgram.Document(true, true);
        EqList<NarrativePart> parts = ControlNarrative.Of(d, UnitSystem.Metric);
        string all = string.Join("\n", parts.SelectMany(p => p.Lines));
        Assert.All(d.Actuators, a => Assert.Contains(a.Id, all));
        Assert.Contains(parts, p => p.Heading.Contains("outside this program", StringComparison.Ordinal) && p.Lines.Any(l => l.Contains("CO alarm", StringComparison.Ordinal)));
        Assert.Contains("22.0 °C and 65 % from sunrise to sunset, 17.0 °C and 75 % for the rest, ramp 60 min", all);
        Assert.Contains("A/heater-1 and A/fan-1 never together; A/heater-1 comes first.", all);
        Assert.DoesNotContain("°F", all, StringComparison.Ordinal);
    }

    [Fact]
    public void The_narrative_of_a_US_job_is_in_its_units()
    {
        string all = string.Join("\n", ControlNarrative.Of(SampleProgram.Document(true, true), UnitSystem.Us).SelectMany(p => p.Lines));
        Assert.Contains("71.6 °F and 65 % from sunrise to sunset, 62.6 °F and 75 % for the rest", all, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\d (°C|K|m/s|Pa)\b", all);
    }
}
