using System.Diagnostics;
using System.Globalization;
using Glazewright.Design.Document;
using Glazewright.Store.Jobs;
using Glazewright.Store.Tests.Databases;

namespace Glazewright.Store.Tests.Jobs;

/// <summary>A program that dies loses nothing it acknowledged.</summary>
public sealed class KillTests(PostgresServer server)
{
    private const int Least = 12;

    [Theory]
    [MemberData(nameof(Shelf.Both), MemberType = typeof(Shelf))]
    public async Task Killed_in_the_middle_every_acknowledged_edit_is_there(Kind kind)
    {
        using Shelf shelf = new(kind, server);
        CancellationToken cancel = TestContext.Current.CancellationToken;
        StoredJob job = await new JobStore(shelf.Open(), TimeProvider.System).CreateAsync("{ \"glazewright\": 1 }", "ann", cancel);

        ProcessStartInfo start = new(Environment.ProcessPath!, [.. OwnDll(), Writer.Flag, shelf.Setting, job.Id]) { RedirectStandardOutput = true };
        using Process writer = Process.Start(start)!;
        List<(int Version, int Note)> told = [];
        for (int i = 0; i < Least; i++)
        {
            told.Add(Parsed((await writer.StandardOutput.ReadLineAsync(cancel))!));
        }

        // SIGKILL while the next edits are on their way; what was told until the end counts.
        writer.Kill();
        while (await writer.StandardOutput.ReadLineAsync(cancel) is { } line)
        {
            if (line.Split(' ').Length == 2)
            {
                told.Add(Parsed(line));
            }
        }

        await writer.WaitForExitAsync(cancel);
        Assert.Equal(128 + 9, writer.ExitCode);

        JobStore after = new(shelf.Open(), TimeProvider.System);
        HashSet<(int, string)> kept = [.. (await after.HistoryAsync(job.Id, int.MaxValue, cancel)).Select(e => (e.Version, e.What))];
        Assert.All(told, t => Assert.Contains((t.Version, $"note {t.Note}"), kept));
        Assert.Contains(Writer.Note(told[^1].Note), await after.TextAtAsync(job.Id, told[^1].Version, cancel), StringComparison.Ordinal);

        // The job itself is the last edit kept, whole, and the next edit goes on from there.
        StoredJob now = (await after.FindAsync(job.Id, cancel))!;
        Assert.Equal(kept.Max(k => k.Item1), now.Version);
        Assert.Equal(await after.TextAtAsync(job.Id, now.Version, cancel), now.Text);
        Assert.IsType<SaveAnswer.Saved>(await after.SaveAsync(job.Id, now.Version, [Edit.Typed("/notes", "after")], "after", "ann", cancel));
    }

    // Run by its own name the program is the file itself; run by "dotnet" it needs naming.
    private static string[] OwnDll() =>
        Path.GetFileNameWithoutExtension(Environment.ProcessPath) == "dotnet" ? [typeof(KillTests).Assembly.Location] : [];

    private static (int Version, int Note) Parsed(string line)
    {
        string[] parts = line.Split(' ');
        return (int.Parse(parts[0], CultureInfo.InvariantCulture), int.Parse(parts[1], CultureInfo.InvariantCulture));
    }
}
