using System.Text.Json;

namespace Glazewright.Cli.Tests.Commands;

/// <summary>The commands that answer at once: help, version, job-check, job-schema, weather, explain.</summary>
public sealed class SmallCommandsTests : IDisposable
{
    private readonly string _room = Directory.CreateTempSubdirectory("glazewright-cli-").FullName;

    public void Dispose() => Directory.Delete(_room, recursive: true);

    [Fact]
    public void Each_command_has_help_with_an_example()
    {
        foreach (string command in (string[])["demo", "design", "shape", "job-check", "job-schema", "program-schema", "weather", "explain"])
        {
            Ran ran = Shell.Run(command, "--help");
            Assert.Equal(0, ran.Exit);
            Assert.Contains($"Example: glazewright {command}", ran.Out, StringComparison.Ordinal);
            Assert.Contains("--json", ran.Out, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_version_is_told()
    {
        Ran ran = Shell.Run("--version");
        Assert.Equal(0, ran.Exit);
        Assert.Matches(@"^\d+\.\d+\.\d+\n$", ran.Out);
    }

    [Fact]
    public void A_misspelt_command_is_the_users_to_mend()
    {
        Ran ran = Shell.Run("desing", "yard.json");
        Assert.Equal(2, ran.Exit);
        Assert.NotEqual("", ran.Errors);
        Assert.Equal("", ran.Out);
    }

    [Theory]
    [InlineData("design", "yard.json", "--out", ""), InlineData("design", "", "--out", "x"), InlineData("demo", "--out", ""), InlineData("job-check", " ")]
    [InlineData("weather", ""), InlineData("explain", "", "x"), InlineData("job-check", "yard.json", "--weather", "")]
    public void An_empty_path_is_the_users_to_mend_and_told_in_one_line(params string[] args)
    {
        Ran ran = Shell.Run(args);
        Assert.Equal(2, ran.Exit);
        Assert.Matches("^[^\n]+ is empty[.] Right: [^\n]+\n$", ran.Errors);
        Assert.Equal("", ran.Out);
    }

    [Theory]
    [InlineData("job-schema"), InlineData("weather"), InlineData("--help")]
    public void An_answer_that_cannot_be_written_is_told_in_one_line(string command)
    {
        string[] args = command == "weather" ? [command, Shell.Example("weather/demo-continental-42N.epw.gz"), "--json"] : [command];
        Ran ran = Shell.RunWithoutAnswer(args);
        Assert.Equal(1, ran.Exit);
        Assert.Equal("The answer could not be written to standard output: No space left on device.\n", ran.Errors);
    }

    [Fact]
    public void A_sound_job_is_checked_with_its_defaults()
    {
        Ran ran = Shell.Run("job-check", Shell.Example("two-ridge-herb-yard.json"));
        Assert.Equal(0, ran.Exit);
        Assert.StartsWith("Two-Ridge Herb Yard: no faults.\n", ran.Out, StringComparison.Ordinal);
        Assert.Contains("/houses/1/roof/rightPitch", ran.Out, StringComparison.Ordinal);
        Assert.Contains("solved from the other four", ran.Out, StringComparison.Ordinal);
    }

    // Whether a program with changes is one, only the plant says: the check sizes it.
    [Fact]
    public void A_change_that_makes_no_program_is_told_with_its_place()
    {
        string path = Path.Combine(_room, "yard.json");
        string job = File.ReadAllText(Shell.Example("three-lines.json"));
        string weather = Shell.Example("weather/demo-continental-42N.epw.gz");
        string With(string change) => job.Replace("\"length\": \"96 ft\"", "\"length\": \"96 ft\",\n \"program\": { \"cooling\": [{ \"id\": \"fan-1\", " + change + " }] }", StringComparison.Ordinal);
        File.WriteAllText(path, With("\"offAt\": \"9 K\""));
        Ran ran = Shell.Run("job-check", path, "--weather", weather);
        Assert.Equal(2, ran.Exit);
        Assert.Matches(@":\d+:\d+: A/fan-1 /houses/0/program/cooling/0/offAt: stage 'fan-1' goes off where it comes on: it would chatter. Right: below onAt\n", ran.Out);
        File.WriteAllText(path, With("\"offAt\": \"-0.4 K\", \"onAt\": \"0.3 K\""));
        Assert.Equal(0, Shell.Run("job-check", path, "--weather", weather).Exit);
    }

    [Fact]
    public void Three_lines_are_a_job()
    {
        Ran ran = Shell.Run("job-check", Shell.Example("three-lines.json"), "--json");
        Assert.Equal(0, ran.Exit);
        using JsonDocument json = JsonDocument.Parse(ran.Out);
        Assert.Equal(0, json.RootElement.GetProperty("faults").GetArrayLength());
        Assert.True(json.RootElement.GetProperty("defaults").GetArrayLength() > 100);
    }

    [Fact]
    public void Faults_come_with_file_line_and_column()
    {
        string job = Write("bad.json", "{ \"glazewright\": 1,\n  \"site\": { \"latitude\": \"42 deg\", \"weather\": { \"file\": \"none.epw\" } },\n  \"houses\": [ { \"width\": 26, \"length\": \"96 ft\" } ] }");
        Ran ran = Shell.Run("job-check", job);
        Assert.Equal(2, ran.Exit);
        Assert.Contains($"{job}:2:", ran.Out, StringComparison.Ordinal);
        Assert.Contains("the weather file 'none.epw' is not beside the job", ran.Out, StringComparison.Ordinal);
        Assert.Contains($"{job}:3:26: /houses/0/width: 26 has no unit. Right: 26 ft or 26 m\n", ran.Out, StringComparison.Ordinal);
        Assert.EndsWith("2 faults.\n", ran.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "the document is empty"), InlineData("not JSON", "a value belongs"), InlineData("[]", "a list"), InlineData("{}", "glazewright")]
    public void What_is_not_a_job_is_told(string text, string wrong)
    {
        Ran ran = Shell.Run("job-check", Write("odd.json", text));
        Assert.Equal(2, ran.Exit);
        Assert.Contains(wrong, ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_that_is_not_there_is_told()
    {
        Ran ran = Shell.Run("job-check", Path.Combine(_room, "nothing.json"));
        Assert.Equal(2, ran.Exit);
        Assert.Contains("there is no file", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_weather_option_takes_the_place_of_the_jobs_weather()
    {
        string job = Write("yard.json", "{ \"glazewright\": 1, \"houses\": [ { \"width\": \"26 ft\", \"length\": \"96 ft\" } ] }");
        Assert.Equal(2, Shell.Run("job-check", job).Exit);
        Assert.Equal(0, Shell.Run("job-check", job, "--weather", Shell.Example("weather/demo-continental-42N.epw.gz")).Exit);
        Assert.Equal(2, Shell.Run("job-check", job, "--weather", "nowhere.epw").Exit);
    }

    [Fact]
    public void A_broken_weather_file_is_told_with_its_line()
    {
        string job = Write("yard.json", "{ \"glazewright\": 1, \"site\": { \"weather\": { \"file\": \"cut.epw\" } }, \"houses\": [ { \"width\": \"26 ft\", \"length\": \"96 ft\" } ] }");
        Write("cut.epw", "LOCATION,Demo,-,-,X,1,41.98,-87.92,-6.0,201.0\nrubbish\n");
        Ran ran = Shell.Run("job-check", job);
        Assert.Equal(2, ran.Exit);
        Assert.Contains("cut.epw", ran.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("latitude", ran.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("job-schema"), InlineData("program-schema")]
    public void The_schema_is_JSON_and_names_its_draft(string command)
    {
        Ran ran = Shell.Run(command);
        Assert.Equal(0, ran.Exit);
        using JsonDocument json = JsonDocument.Parse(ran.Out);
        Assert.Equal("https://json-schema.org/draft/2020-12/schema", json.RootElement.GetProperty("$schema").GetString());
    }

    [Fact]
    public void The_demo_weather_is_described()
    {
        Ran ran = Shell.Run("weather", Shell.Example("weather/demo-continental-42N.epw.gz"));
        Assert.Equal(0, ran.Exit);
        // Facts of the file's README: latitude 41.98, 201 m, lowest -22.8 and highest 35.0 °C, 1,407 kWh/m² a year.
        Assert.Contains("41.98° N  87.92° W  201 m", ran.Out, StringComparison.Ordinal);
        Assert.Contains("lowest -22.8 °C", ran.Out, StringComparison.Ordinal);
        Assert.Contains("highest 35.0 °C", ran.Out, StringComparison.Ordinal);
        Assert.Contains("1407 kWh/m²", ran.Out, StringComparison.Ordinal);
        Assert.Contains("closes to", ran.Out, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Shell.Run("weather", Shell.Example("weather/demo-continental-42N.epw.gz"), "--json").Out);
        Assert.Equal(12, json.RootElement.GetProperty("months").GetArrayLength());
    }

    [Fact]
    public void What_is_not_weather_is_told()
    {
        string file = Write("weather.epw", "hello\r\nworld\r\n");
        Ran ran = Shell.Run("weather", file);
        Assert.Equal(2, ran.Exit);
        Assert.Contains("Not a weather file", ran.Errors, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Shell.Run("weather", file, "--json").Out);
        Assert.True(json.RootElement.GetProperty("faults").GetArrayLength() > 0);
        Assert.Equal(2, Shell.Run("weather", Path.Combine(_room, "none.epw")).Exit);
    }

    [Fact]
    public void A_figure_is_explained_down_to_what_was_typed()
    {
        string result = Write("result.json", """
            { "figures": [
              { "id": "A/duty/heat-loss", "label": "Heat loss", "value": 30000, "unit": "Watt", "shown": "102.4 kBtu/h", "working": { "kind": "derived", "formula": "ua * dt", "inputs": [
                { "symbol": "ua", "label": "Loss factor", "reference": "A/duty/ua", "value": 1000, "unit": "WattPerKelvin", "shown": "1,000 W/K", "source": { "kind": "first principles", "of": "sum" } },
                { "symbol": "dt", "label": "Difference", "value": 30, "unit": "Kelvin", "shown": "30 K", "source": { "kind": "given", "field": "/site/design" } } ] },
                "source": { "kind": "standard", "name": "A standard", "clause": "5.1", "seen": "from memory" }, "caution": "design day only" },
              { "id": "A/duty/ua", "label": "Loss factor", "value": 1000, "unit": "WattPerKelvin", "shown": "1,000 W/K", "working": { "kind": "observed", "method": "summed faces", "limits": "steady", "inputs": [
                { "symbol": "up", "label": "Itself", "reference": "A/duty/heat-loss", "value": 1, "unit": "None", "shown": "1", "source": { "kind": "catalogue", "entry": "x" } } ] }, "source": { "kind": "first principles", "of": "conservation" } } ] }
            """);
        Ran ran = Shell.Run("explain", result, "heat-loss");
        Assert.Equal(0, ran.Exit);
        Assert.Equal(
            """
            A/duty/heat-loss
            Heat loss: 102.4 kBtu/h
            │ = ua * dt
            │ source: A standard, 5.1 (from memory)
            ├─ ua = 1,000 W/K  Loss factor  (A/duty/ua)
            │  │ observed: summed faces
            │  │ limits: steady
            │  │ source: conservation
            │  └─ up = 1  Itself  [catalogue entry x]
            └─ dt = 30 K  Difference  [typed at /site/design]
            Caution: design day only

            """.ReplaceLineEndings("\n"),
            ran.Out);
        using JsonDocument json = JsonDocument.Parse(Shell.Run("explain", _room, "A/duty/heat-loss", "--json").Out);
        Assert.Equal("A/duty/ua", json.RootElement.GetProperty("inputs")[0].GetProperty("figure").GetProperty("id").GetString());
        Assert.Contains("A/duty/ua", Shell.Run("explain", result).Out, StringComparison.Ordinal);
        Ran misspelt = Shell.Run("explain", result, "A/duty/heat-los");
        Assert.Equal(2, misspelt.Exit);
        Assert.Contains("did you mean A/duty/heat-loss?", misspelt.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_result_that_is_not_there_is_told()
    {
        Assert.Equal(2, Shell.Run("explain", _room, "x").Exit);
        Assert.Equal(2, Shell.Run("explain", Write("result.json", "{}"), "x").Exit);
    }

    private string Write(string name, string text)
    {
        string path = Path.Combine(_room, name);
        File.WriteAllText(path, text);
        return path;
    }
}
