using System.Text.Json;

namespace Glazewright.Cli.Tests.Commands;

/// <summary>The calibrate command from end to end, on the example's made log.</summary>
public sealed class CalibrateCommandTests : IDisposable
{
    private static readonly string s_log = Path.Combine(Shell.Root, "examples", "calibration", "made-log.csv");
    private static readonly string s_map = Path.Combine(Shell.Root, "examples", "calibration", "made-log.columns.json");

    private readonly string _room = Directory.CreateTempSubdirectory("glazewright-calibrate-").FullName;

    public void Dispose() => Directory.Delete(_room, recursive: true);

    [Fact]
    [Trait("Category", "Slow")]
    public void A_log_is_fitted_scored_and_written()
    {
        string to = Path.Combine(_room, "fitted");
        Ran ran = Shell.Run("calibrate", s_log, "--columns", s_map, "--out", to, "--threads", "2");
        Assert.True(ran.Exit == 0, ran.Errors);
        Assert.StartsWith("Made log, six weeks of spring\n2025-03-03 00:00 to 2025-04-13 23:30, every 30 min, 2016 steps", ran.Out, StringComparison.Ordinal);
        Assert.Contains("Fitted on weeks 2, 6; scored on weeks 1, 3, 4, 5\n", ran.Out, StringComparison.Ordinal);
        Assert.Contains("● met", ran.Out, StringComparison.Ordinal);
        string[] files = ["calibration.pdf", "calibration.txt", "calibration.json", "hours.csv", "scatter.svg", "by-hour.svg", "week-best-air.svg", "week-typical-air.svg", "week-worst-humidity.svg", "manifest.json"];
        Assert.All(files, f => Assert.True(new FileInfo(Path.Combine(to, f)).Length > 400, f));
        Assert.Equal(1 + (2016 / 2), File.ReadAllLines(Path.Combine(to, "hours.csv")).Length);

        // Again, with one thread and as JSON: the same data.
        Ran json = Shell.Run("calibrate", s_log, "--columns", s_map, "--json", "--threads", "1");
        Assert.Equal(File.ReadAllText(Path.Combine(to, "calibration.json")), json.Out);
        using JsonDocument told = JsonDocument.Parse(json.Out);
        JsonElement vents = told.RootElement.GetProperty("sizes")[0];
        Assert.Equal("vents", vents.GetProperty("size").GetString());
        // Known, because the log was made with it; ± is two standard errors.
        Assert.InRange(vents.GetProperty("value").GetDouble(), 1.4 - (1.5 * vents.GetProperty("plusMinus").GetDouble()), 1.4 + (1.5 * vents.GetProperty("plusMinus").GetDouble()));

        // Its sizes, scored on a log without fitting.
        Ran frozen = Shell.Run("calibrate", s_log, "--columns", s_map, "--sizes", Path.Combine(to, "calibration.json"));
        Assert.True(frozen.Exit == 0, frozen.Errors);
        Assert.Contains("Sizes of an earlier fit; scored on weeks 1, 2, 3, 4, 5, 6\n", frozen.Out, StringComparison.Ordinal);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void A_house_of_a_job_is_fitted_through_its_own_gain_table_and_plant()
    {
        string map = Map(text => text[..text.LastIndexOf("  \"house\":", StringComparison.Ordinal)].TrimEnd().TrimEnd(',') + "\n}\n");
        Ran ran = Shell.Run("calibrate", s_log, "--columns", map, "--job", Shell.Example("two-ridge-herb-yard.json"), "--house", "A", "--json");
        Assert.True(ran.Exit == 0, ran.Errors + ran.Out);
        using JsonDocument told = JsonDocument.Parse(ran.Out);
        Assert.Equal("A", told.RootElement.GetProperty("house").GetString());
        Assert.True(double.IsFinite(told.RootElement.GetProperty("scores")[0].GetProperty("airRmsK").GetDouble()));
        Assert.Contains("no house 'Z'. Right: A, B", Shell.Run("calibrate", s_log, "--columns", map, "--job", Shell.Example("two-ridge-herb-yard.json"), "--house", "Z").Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "is empty")]
    [InlineData("time,tin,rhin,tout,rhout,sun,sky,wind,vent,screen,pipe\n", "has headings and no rows")]
    [InlineData("a;b;c\n1;2;3\n", "has no column 'tin'")]
    public void A_log_that_cannot_be_used_is_refused(string log, string wrong)
    {
        Ran ran = Shell.Run("calibrate", Write("bad.csv", log), "--columns", s_map);
        Assert.Equal(2, ran.Exit);
        Assert.Equal("", ran.Out);
        Assert.Contains(wrong, ran.Errors, StringComparison.Ordinal);
        Ran json = Shell.Run("calibrate", Write("bad.csv", log), "--columns", s_map, "--json");
        Assert.Equal(2, json.Exit);
        using JsonDocument told = JsonDocument.Parse(json.Out);
        Assert.True(told.RootElement.GetProperty("faults").GetArrayLength() >= 1);
    }

    [Fact]
    public void Not_a_number_everywhere_is_no_log()
    {
        string[] lines = File.ReadAllLines(s_log);
        string log = string.Join('\n', lines.Select((l, i) => i == 0 ? l : l.Split(',')[0] + ",NaN" + l[l.IndexOf(',', l.IndexOf(',', StringComparison.Ordinal) + 1)..]));
        Ran ran = Shell.Run("calibrate", Write("nan.csv", log), "--columns", s_map);
        Assert.Equal(2, ran.Exit);
        Assert.Contains("log, tin has no reading at all", ran.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_log_of_days_or_without_the_weeks_to_fit_on_is_refused()
    {
        string[] lines = File.ReadAllLines(s_log);
        Ran days = Shell.Run("calibrate", Write("days.csv", string.Join('\n', lines.Take(500))), "--columns", s_map);
        Assert.Equal(2, days.Exit);
        Assert.Contains("10.4 days in common. Right: three weeks or more", days.Errors, StringComparison.Ordinal);

        // Weeks 2 and 6 are gone: nothing is left to fit on.
        string log = string.Join('\n', lines.Where((_, i) => i == 0 || ((i - 1) / 336) is not (1 or 5)));
        Ran gap = Shell.Run("calibrate", Write("gap.csv", log), "--columns", s_map);
        Assert.Equal(2, gap.Exit);
        Assert.Contains("whole days are left to fit on", gap.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_map_says_every_fault_with_its_line()
    {
        string map = Map(text => text.Replace("\"is\": \"wind\", \"unit\": \"m/s\"", "\"is\": \"wind\", \"unit\": \"C\"", StringComparison.Ordinal).Replace("+01:00", "Nowhere", StringComparison.Ordinal));
        Ran ran = Shell.Run("calibrate", s_log, "--columns", map);
        Assert.Equal(2, ran.Exit);
        Assert.Contains(":6:12: /clock", ran.Errors, StringComparison.Ordinal);
        Assert.Contains("wind is not measured in C. Right: m/s, km/h, mph, kn", ran.Errors, StringComparison.Ordinal);
        Assert.Contains("2 faults.", ran.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_missing_or_too_much_is_told()
    {
        Assert.Contains("there is no file", Shell.Run("calibrate", s_log, "--columns", Path.Combine(_room, "none.json")).Errors, StringComparison.Ordinal);
        Assert.Contains("there is no file", Shell.Run("calibrate", Path.Combine(_room, "none.csv"), "--columns", s_map).Errors, StringComparison.Ordinal);
        Assert.Contains("the map tells of 1 files and 2 are given", Shell.Run("calibrate", s_log, s_log, "--columns", s_map).Errors, StringComparison.Ordinal);
        Assert.Contains("no job is given", Shell.Run("calibrate", s_log, "--columns", s_map, "--house", "A").Errors, StringComparison.Ordinal);
        Assert.Contains("this is no calibration", Shell.Run("calibrate", s_log, "--columns", s_map, "--sizes", Write("sizes.json", "{}")).Errors, StringComparison.Ordinal);
        Assert.Contains("cannot be read", Shell.Run("calibrate", Write("plain.csv.gz", "not packed"), "--columns", s_map).Errors, StringComparison.Ordinal);
        Assert.Equal(2, Shell.Run("calibrate", s_log).Exit);
    }

    [Fact]
    public void Stopped_it_writes_nothing_and_another_folder_is_left_alone()
    {
        using CancellationTokenSource stop = new();
        stop.Cancel();
        string to = Path.Combine(_room, "stopped");
        Assert.Equal(130, Shell.Run(stop.Token, "calibrate", s_log, "--columns", s_map, "--out", to).Exit);
        Assert.False(Directory.Exists(to));
        Write("notes.txt", "mine");
        Assert.Equal(2, Shell.Run("calibrate", s_log, "--columns", s_map, "--out", _room).Exit);
    }

    [Fact]
    public void The_schema_of_a_column_map_is_printed()
    {
        Ran ran = Shell.Run("columns-schema");
        Assert.Equal(0, ran.Exit);
        using JsonDocument schema = JsonDocument.Parse(ran.Out);
        Assert.Equal("Glazewright column map, version 1", schema.RootElement.GetProperty("title").GetString());
    }

    private string Map(Func<string, string> edit) => Write("edited.columns.json", edit(File.ReadAllText(s_map)));

    private string Write(string name, string text)
    {
        string path = Path.Combine(_room, name);
        File.WriteAllText(path, text);
        return path;
    }
}
