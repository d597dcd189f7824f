using System.Text.Json;
using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;
using Glazewright.Design.Tests.Duty;

namespace Glazewright.Design.Tests.Brief;

/// <summary>The guide's page on equipment: its tables are the fields the program reads, its examples are read and give what they say.</summary>
public class EquipmentGuideTests
{
    private static readonly string[] Page = File.ReadAllText(Path.Combine(Examples.Folder, "..", "docs", "guide", "equipment.md")).ReplaceLineEndings("\n").Split('\n');

    // What each kind's example must bring about.
    private static readonly Dictionary<string, Func<PlantResult, bool>> Brings = new()
    {
        ["Exhaust fans and louvers"] = p => p.Exhaust!.Choice.Fans.Select(f => f.Entry).Order().SequenceEqual(["exhaust-24", "exhaust-24", "exhaust-36", "exhaust-36"]),
        ["Wet wall"] = p => Math.Abs(p.WetWall!.Choice.WidthM - 14 * 0.3048) < 1e-6 && p.WetWall.Choice.Entry == "pad-6",
        ["Fog"] = p => p.Fog!.Choice is { Nozzles: 24, Entry: "fog-1000" },
        ["Heaters and their vents"] = p => p.Heat!.Choice.Heaters.Count == 2 && p.Heat.Choice.Heaters.All(h => !h.SealedCombustion),
        ["Bench pipes and their boiler"] = p => Math.Abs(p.BenchPipeW - 60 * 293.07107) < 1,
        ["Curtains"] = p => p.Curtain is { Layers: 2, Entry: "curtain-energy-50" },
        ["A second curtain that moves by itself"] = p => p is
        {
            Curtain: { Layers: 1, Entry: "curtain-energy-clear" },
            SecondCurtain: { Entry: "curtain-shade-60", OpennessFraction: 0.2, EmissivityFraction: 0.5, Purpose: CurtainPurpose.Shade },
        } && Math.Abs(p.Curtain.HeightM - p.SecondCurtain.HeightM - 0.254) < 1e-9,
        ["Upper fans"] = p => p.Upper is { Count: 2, Entry: "exhaust-24" },
        ["Circulation fans"] = p => p.Circulation is { Count: 6, Entry: "circulation-20" },
        ["Oscillating fans"] = p => p.Oscillating is { Count: 4 },
        ["Positive pressure"] = p => p.Pressure is { HeldPa: > 0 },
        ["Lamps"] = p => Math.Abs(p.LampW - 9000) < 1e-6,
        ["Insect screen"] = p => p.Exhaust is not null,
        ["Roof and side vents"] = p => p.Vents is { RoofM2: > 0, SideM2: > 0 } v && Math.Abs(v.RoofM2 - 2 * v.SideM2) < 1e-6,
        ["Dehumidifier"] = p => p.Dehumidifier is { PowerW: 5000 },
        ["Carbon dioxide"] = p => p.Co2 is { TargetPpm: 800 },
    };

    public static TheoryData<string> Kinds { get; } = [.. Page.Where(l => l.StartsWith("## ", StringComparison.Ordinal)).Select(l => l[3..])];

    [Fact]
    public void Its_tables_are_the_fields_that_are_read()
    {
        using JsonDocument schema = JsonDocument.Parse(JobReader.Schema());
        JsonElement equipment = schema.RootElement.GetProperty("properties").GetProperty("houses").GetProperty("items").GetProperty("properties").GetProperty("equipment");
        string[] read = [.. Rows(equipment, "").Order(StringComparer.Ordinal)];
        string[] told = [.. Page.Where(l => l.StartsWith("| `", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];
        Assert.Equal(read, told);
        Assert.Equal(Brings.Keys.Order(StringComparer.Ordinal), Kinds.Select(k => k.Data).Order(StringComparer.Ordinal));
    }

    [Theory, MemberData(nameof(Kinds))]
    public void Its_example_is_read_and_brings_the_equipment(string kind)
    {
        string example = string.Join('\n', Page.SkipWhile(l => l != "## " + kind).SkipWhile(l => l != "```json").Skip(1).TakeWhile(l => l != "```"));
        ReadOutcome<Job> outcome = JobReader.Read(Examples.Edited(new Edit("/houses/0/equipment", example)));
        Assert.True(outcome.Faults.Count == 0, string.Join("\n", outcome.Faults));
        Job job = outcome.Value!;
        string house = job.Houses[0].Id;
        BuildingForm form = FormStage.Run(FormInput.From(job)).Building(house);
        Assert.True(Brings[kind](PlantStage.Run(PlantInput.From(job, house), form, DesignDay.Duty(job, house), CatalogueReader.Generic)));
        if (kind == "Insect screen")
        {
            Assert.Equal(("thrips", 0.3), (job.Houses[0].Equipment.InsectScreen, job.Houses[0].Equipment.InsectScreenPorosityFraction));
        }
    }

    private static IEnumerable<string> Rows(JsonElement group, string before)
    {
        foreach (JsonProperty field in group.GetProperty("properties").EnumerateObject())
        {
            bool nested = field.Value.TryGetProperty("properties", out _);
            string @default = !nested && field.Value.TryGetProperty("default", out JsonElement d) ? $"`{d.GetRawText()}`" : "";
            yield return $"| `{before}{field.Name}` | {field.Value.GetProperty("description").GetString()} | {@default} |";
            foreach (string row in nested ? Rows(field.Value, before + field.Name + ".") : [])
            {
                yield return row;
            }
        }
    }
}
