using System.Text.Json;

namespace Glazewright.Cli.Tests.Commands;

/// <summary>With <c>--json</c> every refusal is one JSON object on standard output, of one shape: a list of faults with kind, place, what is wrong and what would be right.</summary>
public sealed class JsonFaultTests : IDisposable
{
    private const string Result = """{ "figures": [ { "id": "A/duty/heat-loss", "label": "Heat loss" }, { "id": "B/duty/heat-loss", "label": "Heat loss" } ] }""";

    private readonly string _room = Directory.CreateTempSubdirectory("glazewright-json-").FullName;

    public void Dispose() => Directory.Delete(_room, recursive: true);

    [Fact]
    public void A_figure_that_is_unknown_or_not_named_in_full()
    {
        string result = Write("result.json", Result);
        Assert.Contains("A/duty/heat-loss", Only("explain", result, "A/duty/heat-los", "--json").Right, StringComparison.Ordinal);
        Assert.Contains("B/duty/heat-loss", Only("explain", result, "heat-loss", "--json").Wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void A_result_that_is_missing_damaged_or_of_another_kind()
    {
        Assert.Equal("NotFound", Only("explain", Path.Combine(_room, "none"), "x", "--json").Kind);
        Assert.Equal("NotJson", Only("explain", Write("cut.json", Result[..30]), "x", "--json").Kind);
        Assert.Equal("NotFound", Only("explain", Write("other.json", "{}"), "x", "--json").Kind);
    }

    [Fact]
    public void A_command_line_that_cannot_be_understood()
    {
        Assert.Equal(2, Faults("design", "--json").Count);
        Assert.All(Faults("design", "--json"), f => Assert.Equal("Usage", f.Kind));
        Assert.Contains("--bogus", Faults("job-check", "yard.json", "--bogus", "--json")[0].Wrong, StringComparison.Ordinal);
        Assert.NotEmpty(Faults("--json", "desing"));
    }

    [Fact]
    public void A_job_a_weather_file_and_a_folder_that_cannot_be_used()
    {
        Assert.Equal("NotFound", Only("job-check", Path.Combine(_room, "none.json"), "--json").Kind);
        Assert.Equal("NotAWeatherFile", Only("weather", Write("hello.epw", "hello\n"), "--json").Kind);
        Write("full/mine.txt", "mine");
        Assert.NotEqual("", Only("design", Shell.Example("three-lines.json"), "--weather", Demo, "--out", Path.Combine(_room, "full"), "--json").Right);
    }

    [Fact]
    public void A_wrong_date_is_laid_on_the_option_and_not_on_the_job()
    {
        Ran ran = Shell.Run("design", Shell.Example("three-lines.json"), "--out", Path.Combine(_room, "o"), "--date", "2027-13-44");
        Assert.Equal(2, ran.Exit);
        Assert.Contains("--date takes year-month-day", ran.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("three-lines.json", ran.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_weather_option_is_laid_on_the_option_and_not_on_a_line_of_the_job()
    {
        Ran ran = Shell.Run("job-check", Shell.Example("three-lines.json"), "--weather", _room);
        Assert.Equal(2, ran.Exit);
        Assert.Contains("is a folder", ran.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("three-lines.json:", ran.Out.Replace("three-lines.json: ", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.EndsWith("1 fault.\n", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_given_as_weather_file_is_called_a_folder()
    {
        Ran ran = Shell.Run("weather", _room);
        Assert.Equal(2, ran.Exit);
        Assert.Contains("is a folder", ran.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("denied", ran.Errors, StringComparison.Ordinal);
    }

    private static string Demo => Shell.Example("weather/demo-continental-42N.epw.gz");

    private static Told Only(params string[] args) => Assert.Single(Faults(args));

    private static List<Told> Faults(params string[] args)
    {
        Ran ran = Shell.Run(args);
        Assert.Equal(2, ran.Exit);
        Assert.Equal("", ran.Errors);
        using JsonDocument json = JsonDocument.Parse(ran.Out);
        return [.. json.RootElement.GetProperty("faults").EnumerateArray().Select(Read)];
    }

    private static Told Read(JsonElement fault)
    {
        Assert.True(fault.GetProperty("line").GetInt32() >= 0 && fault.GetProperty("column").GetInt32() >= 0);
        Assert.NotNull(fault.GetProperty("pointer").GetString());
        Assert.NotNull(fault.GetProperty("id").GetString());
        return new Told(fault.GetProperty("kind").GetString()!, fault.GetProperty("wrong").GetString()!, fault.GetProperty("right").GetString()!);
    }

    private string Write(string name, string text)
    {
        string path = Path.Combine(_room, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    private sealed record Told(string Kind, string Wrong, string Right);
}
