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

    private static List<(double Before, double After)> Values(string program)
    {
        Ran ran = Shell.Run("compare", Shell.Example("three-lines.json"), program, "--json");
        Assert.True(ran.Exit == 0, ran.Errors);
        using JsonDocument told = JsonDocument.Parse(ran.Out);
        return [.. told.RootElement.GetProperty("houses")[0].GetProperty("values").EnumerateArray()
            .Select(v => (v.GetProperty("asWritten").GetDouble(), v.GetProperty("asEdited").GetDouble()))];
    }
}
