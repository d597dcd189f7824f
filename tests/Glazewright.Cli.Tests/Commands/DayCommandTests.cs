using System.Text.Json;

namespace Glazewright.Cli.Tests.Commands;

/// <summary>The day command from end to end.</summary>
public sealed class DayCommandTests : IDisposable
{
    private readonly string _room = Directory.CreateTempSubdirectory("glazewright-day-").FullName;

    public void Dispose() => Directory.Delete(_room, recursive: true);

    [Fact]
    [Trait("Category", "Slow")]
    public void The_coldest_day_is_told_and_written()
    {
        string to = Path.Combine(_room, "cold");
        Ran ran = Shell.Run("day", Shell.Example("two-ridge-herb-yard.json"), "--house", "B", "--out", to);
        Assert.True(ran.Exit == 0, ran.Errors);
        Assert.StartsWith("House B, ", ran.Out, StringComparison.Ordinal);
        Assert.Contains("drawn for warmth", ran.Out, StringComparison.Ordinal);
        string[] minutes = File.ReadAllLines(Path.Combine(to, "minutes.csv"));
        Assert.Equal(1441, minutes.Length);
        Assert.StartsWith("00:00,", minutes[1], StringComparison.Ordinal);
        Assert.StartsWith("23:59,", minutes[^1], StringComparison.Ordinal);
        Assert.Contains("heating threshold", File.ReadAllText(Path.Combine(to, "commands.csv")), StringComparison.Ordinal);
        Assert.True(new FileInfo(Path.Combine(to, "day.pdf")).Length > 5000);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void Along_the_house_each_cell_has_its_day()
    {
        string to = Path.Combine(_room, "along");
        Ran ran = Shell.Run("day", Shell.Example("two-ridge-herb-yard.json"), "--house", "A", "--day", "hottest", "--along", "--out", to);
        Assert.True(ran.Exit == 0, ran.Errors);
        Assert.Contains("least even", ran.Out, StringComparison.Ordinal);
        string[] minutes = File.ReadAllLines(Path.Combine(to, "along.csv"));
        Assert.Equal(1441, minutes.Length);
        Assert.True(minutes[0].Split(',').Length > 7);
        Assert.Contains(File.ReadAllLines(Path.Combine(to, "along-commands.csv")).Skip(1), l => !l.StartsWith("00:00:00", StringComparison.Ordinal) && l.Split(',')[0].Split(':')[2] != "00");
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void As_json_it_has_every_minute_and_command()
    {
        Ran ran = Shell.Run("day", Shell.Example("three-lines.json"), "--day", "02-29", "--json");
        Assert.Equal(2, ran.Exit);
        ran = Shell.Run("day", Shell.Example("three-lines.json"), "--day", "02-28", "--json");
        Assert.True(ran.Exit == 0, ran.Errors);
        using JsonDocument told = JsonDocument.Parse(ran.Out);
        Assert.Equal("28 February", told.RootElement.GetProperty("day").GetString());
        Assert.Equal(1440, told.RootElement.GetProperty("minutes").GetArrayLength());
        Assert.True(told.RootElement.GetProperty("commands").GetArrayLength() > 3);
    }

    [Theory]
    [InlineData("--day", "13-40")]
    [InlineData("--day", "Tuesday")]
    [InlineData("--house", "Z")]
    public void A_day_or_house_that_is_not_there_is_the_users_to_mend(string option, string value)
    {
        Ran json = Shell.Run("day", Shell.Example("two-ridge-herb-yard.json"), option, value, "--json");
        Assert.Equal(2, json.Exit);
        using JsonDocument told = JsonDocument.Parse(json.Out);
        Assert.Equal(1, told.RootElement.GetProperty("faults").GetArrayLength());
    }
}
