using System.Text.Json;

namespace Glazewright.Cli.Tests.Commands;

/// <summary>The shape command from end to end.</summary>
public sealed class ShapeCommandTests : IDisposable
{
    private readonly string _room = Directory.CreateTempSubdirectory("glazewright-shape-").FullName;

    public void Dispose() => Directory.Delete(_room, recursive: true);

    [Fact]
    [Trait("Category", "Slow")]
    public void A_house_s_shape_is_found_told_and_written()
    {
        string to = Path.Combine(_room, "shapes");
        Ran ran = Shell.Run("shape", Shell.Example("two-ridge-herb-yard.json"), "--house", "A", "--out", to, "--threads", "2");
        Assert.True(ran.Exit == 0, ran.Errors);
        Assert.StartsWith("Two-Ridge Herb Yard: shape of house A\n", ran.Out, StringComparison.Ordinal);
        Assert.Contains("As drawn: south eave 7'-6\", 6:12 over 17'-0\", ridge 16'-0\", 9:12 over 9'-0\", north eave 9'-3\"", ran.Out, StringComparison.Ordinal);
        Assert.Contains("Kendall tau", ran.Out, StringComparison.Ordinal);
        string[] files = ["shape-A-trade-off.csv", "shape-A-trade-off.svg", "shape-A-section-chosen.svg", "shape-A-section-drawn.svg", "shape-A.json"];
        Assert.All(files, f => Assert.True(new FileInfo(Path.Combine(to, f)).Length > 500, f));
        string[] rows = File.ReadAllLines(Path.Combine(to, files[0]));
        Assert.All(rows, r => Assert.True(r.Length > 30));
        Assert.StartsWith("drawn,", rows[1], StringComparison.Ordinal);
        Assert.StartsWith("chosen,", rows[2], StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(File.ReadAllText(Path.Combine(to, files[4])));
        Assert.Equal(20, json.RootElement.GetProperty("again").GetArrayLength());
        Assert.True(json.RootElement.GetProperty("rankAgreement").GetProperty("winter").GetProperty("kendallTau").GetDouble() > 0.5);

        // The demo house's strip without June-noon sun: 9' − 16'/tan 71.4° in the section turned by 7°.
        Assert.Contains("a strip of 3'-8", File.ReadAllText(Path.Combine(to, files[3])), StringComparison.Ordinal);
    }

    [Fact]
    public void A_house_that_is_not_there_is_the_users_to_mend()
    {
        Ran ran = Shell.Run("shape", Shell.Example("two-ridge-herb-yard.json"), "--house", "Z");
        Assert.Equal(2, ran.Exit);
        Assert.Contains("no house 'Z'. Right: A, B", ran.Errors, StringComparison.Ordinal);
        Ran json = Shell.Run("shape", Shell.Example("two-ridge-herb-yard.json"), "--house", "Z", "--json");
        Assert.Equal(2, json.Exit);
        using JsonDocument told = JsonDocument.Parse(json.Out);
        Assert.Equal(1, told.RootElement.GetProperty("faults").GetArrayLength());
    }

    [Fact]
    public void A_folder_with_other_things_is_not_touched()
    {
        File.WriteAllText(Path.Combine(_room, "notes.txt"), "mine");
        Ran ran = Shell.Run("shape", Shell.Example("two-ridge-herb-yard.json"), "--out", _room);
        Assert.Equal(2, ran.Exit);
        Assert.Equal("mine", File.ReadAllText(Path.Combine(_room, "notes.txt")));
    }

    [Fact]
    public void Stopped_it_writes_nothing()
    {
        using CancellationTokenSource stop = new();
        stop.Cancel();
        string to = Path.Combine(_room, "stopped");
        Assert.Equal(130, Shell.Run(stop.Token, "shape", Shell.Example("two-ridge-herb-yard.json"), "--out", to).Exit);
        Assert.False(Directory.Exists(to));
    }
}
