namespace Glazewright.Cli.Tests.Commands;

/// <summary>What the guide says to type works as it stands there.</summary>
public sealed class GuideTests : IDisposable
{
    private readonly string _room = Directory.CreateTempSubdirectory("glazewright-guide-").FullName;

    public void Dispose() => Directory.Delete(_room, recursive: true);

    [Fact]
    [Trait("Category", "Slow")]
    public void Every_command_of_the_guide_runs()
    {
        string[] lines = [.. Block("command-line.md", "sh")];
        Assert.Equal(11, lines.Length);
        foreach (string line in lines)
        {
            string[] words = line.Split(' ');
            Assert.Equal("glazewright", words[0]);
            for (int i = 1; i < words.Length; i++)
            {
                bool folder = words[i - 1] is "--out" or "explain";
                words[i] = folder ? Path.Combine(_room, words[i]) : words[i].StartsWith("examples/", StringComparison.Ordinal) ? Path.Combine(Shell.Root, words[i]) : words[i];
            }

            Ran ran = Shell.Run(words[1..]);
            Assert.True(ran.Exit == 0, $"{line}: {ran.Errors}");
            Assert.NotEqual("", ran.Out);
        }
    }

    [Fact]
    public void The_shortest_job_of_the_guide_is_the_example() =>
        Assert.Equal(File.ReadAllText(Shell.Example("three-lines.json")).ReplaceLineEndings("\n").Trim(), string.Join("\n", Block("job-document.md", "json")));

    private static IEnumerable<string> Block(string page, string language) =>
        File.ReadLines(Path.Combine(Shell.Root, "docs", "guide", page)).SkipWhile(l => l != "```" + language).Skip(1).TakeWhile(l => l != "```");
}
