using System.Text.Json;

namespace Glazewright.Cli.Tests.Commands;

/// <summary>An edited control program, from the package and back.</summary>
public sealed class CompareCommandTests : IDisposable
{
    private readonly string _room = Directory.CreateTempSubdirectory("glazewright-compare-").FullName;

    public void Dispose() => Directory.Delete(_room, recursive: true);

    // What is written reads back as the same program: nothing changes. What is edited changes the year.
    [Fact]
    [Trait("Category", "Slow")]
    public void A_program_goes_out_and_comes_back()
    {
        string package = Path.Combine(_room, "package");
        Ran design = Shell.Run("design", Shell.Example("three-lines.json"), "--out", package);
        Assert.True(design.Exit == 0, design.Errors);
        string written = Directory.GetFiles(Path.Combine(package, "control"), "program-*.json").Single();
        Assert.All(Values(written), v => Assert.Equal(v.Before, v.After));

        string edited = Path.Combine(_room, "edited.json");
        string text = File.ReadAllText(written);
        string warmer = text.Replace("\"onAtK\": -", "\"onAtK\": -1", StringComparison.Ordinal);
        File.WriteAllText(edited, warmer == text ? text.Replace("\"gapFraction\": 0.04", "\"gapFraction\": 0.3", StringComparison.Ordinal) : warmer);
        Assert.NotEqual(text, File.ReadAllText(edited));
        Assert.Contains(Values(edited), v => v.Before != v.After);

        Ran again = Shell.Run("design", Shell.Example("three-lines.json"), "--out", Path.Combine(_room, "again"), "--program", written);
        Assert.True(again.Exit == 0, again.Errors);
        Assert.Equal(File.ReadAllText(written), File.ReadAllText(Directory.GetFiles(Path.Combine(_room, "again", "control"), "program-*.json").Single()));
    }

    [Fact]
    public void A_program_that_does_not_fit_is_told_with_what_would()
    {
        string path = Path.Combine(_room, "p.json");
        File.WriteAllText(path, "{ \"glazewrightProgram\": 1, \"house\": ");
        Ran torn = Shell.Run("compare", Shell.Example("two-ridge-herb-yard.json"), path, Path.Combine(_room, "none.json"), "--json");
        Assert.Equal(2, torn.Exit);
        using JsonDocument told = JsonDocument.Parse(torn.Out);
        Assert.Equal(2, told.RootElement.GetProperty("faults").GetArrayLength());
    }

    // The second plant as an edit and as a file of its own is the same plant; what it lacks is not a zero.
    [Fact]
    [Trait("Category", "Slow")]
    public void Two_plants_over_one_year()
    {
        string job = Shell.Example("three-lines.json"), other = Path.Combine(_room, "other.json");
        File.Copy(Path.Combine(Shell.Root, "examples", "weather", "demo-continental-42N.epw.gz"), Path.Combine(_room, "demo-continental-42N.epw.gz"));
        File.WriteAllText(other, File.ReadAllText(job).Replace("\"length\": \"96 ft\"", "\"length\": \"96 ft\", \"equipment\": { \"heaterFire\": \"modulating\", \"circulation\": \"none\" }", StringComparison.Ordinal));
        string to = Path.Combine(_room, "compared");
        Ran file = Shell.Run("compare", job, other, "--json", "--out", to);
        Assert.True(file.Exit == 0, file.Errors);
        Ran edit = Shell.Run("compare", job, "--edit", "/houses/0/equipment/heaterFire=modulating", "--edit", "/houses/0/equipment/circulation=none", "--json");
        Assert.True(edit.Exit == 0, edit.Errors);
        Assert.Equal(file.Out, edit.Out);

        using JsonDocument told = JsonDocument.Parse(file.Out);
        JsonElement house = told.RootElement.GetProperty("houses")[0];
        Dictionary<string, JsonElement> rows = house.GetProperty("values").EnumerateArray().ToDictionary(v => v.GetProperty("id").GetString()!);
        (double First, double Second) Of(string id) => (rows[id].GetProperty("first").GetDouble(), rows[id].GetProperty("second").GetDouble());
        Assert.Equal(Of("floor").First, Of("floor").Second);
        Assert.True(Of("A/heater-1/starts").Second < Of("A/heater-1/starts").First / 3);
        Assert.True(Of("direct-cost").Second != Of("direct-cost").First);
        Assert.Equal(JsonValueKind.Null, rows["A/circulation/hours"].GetProperty("second").ValueKind);
        Assert.True(rows["A/circulation/hours"].GetProperty("first").GetDouble() > 0);
        Assert.Empty(house.GetProperty("notes").EnumerateArray());

        Assert.Equal(
            ["change-A.svg", "comparison.csv", "comparison.pdf", "held-A-1.svg", "held-A-2.svg", "manifest.json"], Directory.GetFiles(to).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        string[] csv = File.ReadAllLines(Path.Combine(to, "comparison.csv"));
        Assert.Equal(rows.Count + 1, csv.Length);
        Assert.EndsWith(",", csv.Single(l => l.StartsWith("A,A/circulation/hours,", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Fact]
    public void Jobs_that_cannot_be_held_against_each_other_are_told_why()
    {
        string yard = Shell.Example("two-ridge-herb-yard.json");
        string[] Pointers(params string[] args)
        {
            Ran ran = Shell.Run(["compare", .. args, "--json"]);
            Assert.Equal(2, ran.Exit);
            using JsonDocument told = JsonDocument.Parse(ran.Out);
            return [.. told.RootElement.GetProperty("faults").EnumerateArray().Select(f => f.GetProperty("pointer").GetString()!)];
        }

        Assert.Equal(["/site/weather", "/site", "/houses"], Pointers(Shell.Example("polder-salad-house.json"), Shell.Example("bayou-seedling-house.json")));
        Assert.Equal(["/houses"], Pointers(yard, "--edit", "/houses/1/id=C"));
        Assert.Equal(["/houses"], Pointers(yard, "--edit", "/houses/1/id=C", "--house", "B"));
        Assert.Equal(["/site"], Pointers(yard, "--edit", "/site/elevation=900 ft"));
        Assert.Equal(["/houses/0/width"], Pointers(yard, "--edit", "/houses/0/width=wide"));
        Assert.Equal([""], Pointers(yard));
        Assert.Equal([""], Pointers(yard, yard, yard));
    }

    private static List<(double Before, double After)> Values(string program)
    {
        Ran ran = Shell.Run("compare", Shell.Example("three-lines.json"), program, "--json");
        Assert.True(ran.Exit == 0, ran.Errors);
        using JsonDocument told = JsonDocument.Parse(ran.Out);
        return [.. told.RootElement.GetProperty("houses")[0].GetProperty("values").EnumerateArray()
            .Select(v => (v.GetProperty("asWritten").GetDouble(), v.GetProperty("asEdited").GetDouble()))];
    }
}
