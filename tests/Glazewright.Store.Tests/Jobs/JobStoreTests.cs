using Glazewright.Design.Document;
using Glazewright.Store.Jobs;

namespace Glazewright.Store.Tests.Jobs;

public sealed class JobStoreTests : IDisposable
{
    private const string Text = "{ \"glazewright\": 1, // by hand\n  \"name\": \"Low Meadow\", \"houses\": [{ \"width\": \"26 ft\", \"length\": \"96 ft\" }] }";

    private readonly string _room = Directory.CreateTempSubdirectory("glazewright-store-").FullName;

    private string File => Path.Combine(_room, "jobs.db");

    public void Dispose()
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(_room, recursive: true);
    }

    [Fact]
    public async Task A_job_comes_back_as_typed_with_every_edit()
    {
        JobStore store = new(StoreDoor.Sqlite(File), TimeProvider.System);
        StoredJob job = await store.CreateAsync(Text, "ann", TestContext.Current.CancellationToken);
        SaveAnswer answer = await store.SaveAsync(job.Id, 1, [Edit.Typed("/houses/0/width", "27' 6\"")], "width", "ann", TestContext.Current.CancellationToken);
        StoredJob after = Assert.IsType<SaveAnswer.Saved>(answer).Job;
        Assert.Equal(2, after.Version);

        JobStore again = new(StoreDoor.Sqlite(File), TimeProvider.System);
        StoredJob read = (await again.FindAsync(job.Id, TestContext.Current.CancellationToken))!;
        Assert.Equal(after, read);
        Assert.Contains("// by hand", read.Text, StringComparison.Ordinal);
        Assert.Equal("Low Meadow", read.Name);
        Assert.Equal(Text, await again.TextAtAsync(job.Id, 1, TestContext.Current.CancellationToken));
        Assert.Equal(["width", "new"], (await again.HistoryAsync(job.Id, cancel: TestContext.Current.CancellationToken)).Select(e => e.What));
    }

    // Two windows on one job: other fields are joined, the same field is the writer's to decide; neither edit is lost.
    [Fact]
    public async Task Two_windows_lose_no_edit()
    {
        JobStore store = new(StoreDoor.Sqlite(File), TimeProvider.System);
        StoredJob job = await store.CreateAsync(Text, "ann", TestContext.Current.CancellationToken);
        await store.SaveAsync(job.Id, 1, [Edit.Typed("/houses/0/width", "30 ft")], "width", "ann", TestContext.Current.CancellationToken);
        SaveAnswer joined = await store.SaveAsync(job.Id, 1, [Edit.Typed("/houses/0/length", "104 ft")], "length", "bob", TestContext.Current.CancellationToken);
        SaveAnswer.Saved saved = Assert.IsType<SaveAnswer.Saved>(joined);
        Assert.Equal("width", Assert.Single(saved.Others).What);
        Assert.Contains("30 ft", saved.Job.Text, StringComparison.Ordinal);
        Assert.Contains("104 ft", saved.Job.Text, StringComparison.Ordinal);

        SaveAnswer same = await store.SaveAsync(job.Id, 1, [Edit.Typed("/houses/0/width", "28 ft")], "width", "bob", TestContext.Current.CancellationToken);
        SaveAnswer.Clash clash = Assert.IsType<SaveAnswer.Clash>(same);
        Assert.Equal("ann", Assert.Single(clash.Others).By);
        Assert.Contains("30 ft", clash.Job.Text, StringComparison.Ordinal);
        Assert.IsType<SaveAnswer.Saved>(await store.SaveAsync(job.Id, clash.Job.Version, [Edit.Typed("/houses/0/width", "28 ft")], "width", "bob", TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Many_writers_at_once_save_each_edit_once()
    {
        JobStore store = new(StoreDoor.Sqlite(File), TimeProvider.System);
        StoredJob job = await store.CreateAsync(Text, "ann", TestContext.Current.CancellationToken);
        SaveAnswer[] answers = await Task.WhenAll(Enumerable.Range(0, 20).Select(i => Task.Run(() => store.SaveAsync(job.Id, 1, [Edit.Typed($"/notes{i}", "x")], $"note {i}", "w"))));
        Assert.All(answers, a => Assert.IsType<SaveAnswer.Saved>(a));
        StoredJob last = (await store.FindAsync(job.Id, TestContext.Current.CancellationToken))!;
        Assert.Equal(21, last.Version);
        Assert.All(Enumerable.Range(0, 20), i => Assert.Contains($"notes{i}\"", last.Text, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_sold_job_is_locked_and_a_gone_one_is_told()
    {
        JobStore store = new(StoreDoor.Sqlite(File), TimeProvider.System);
        StoredJob job = await store.CreateAsync(Text, "ann", TestContext.Current.CancellationToken);
        await store.SetStatusAsync(job.Id, JobStatus.Sold, TestContext.Current.CancellationToken);
        Assert.IsType<SaveAnswer.Locked>(await store.SaveAsync(job.Id, 1, [Edit.Typed("/name", "x")], "name", "ann", TestContext.Current.CancellationToken));
        Assert.IsType<SaveAnswer.Gone>(await store.SaveAsync("nothing", 1, [Edit.Typed("/name", "x")], "name", "ann", TestContext.Current.CancellationToken));
        Assert.Equal(Text, (await store.FindAsync(job.Id, TestContext.Current.CancellationToken))!.Text);
    }

    [Fact]
    public async Task A_version_is_marked_once_and_can_be_restored()
    {
        JobStore store = new(StoreDoor.Sqlite(File), TimeProvider.System);
        StoredJob job = await store.CreateAsync(Text, "ann", TestContext.Current.CancellationToken);
        Assert.NotNull(await store.MarkAsync(job.Id, "A", "for the bank", TestContext.Current.CancellationToken));
        Assert.Null(await store.MarkAsync(job.Id, "B", "again", TestContext.Current.CancellationToken));
        await store.SaveAsync(job.Id, 1, [Edit.Typed("/name", "Other")], "name", "ann", TestContext.Current.CancellationToken);
        Revision first = Assert.Single(await store.RevisionsAsync(job.Id, TestContext.Current.CancellationToken));
        string then = (await store.TextAtAsync(job.Id, first.Version, TestContext.Current.CancellationToken))!;
        SaveAnswer.Saved back = Assert.IsType<SaveAnswer.Saved>(await store.ReplaceAsync(job.Id, 2, then, "back to A", "ann", TestContext.Current.CancellationToken));
        Assert.Equal((Text, "Low Meadow", 3), (back.Job.Text, back.Job.Name, back.Job.Version));
    }

    // A store of an older program is brought up with its jobs; one of a newer program is left alone.
    [Fact]
    public async Task Old_stores_are_brought_up_and_newer_ones_refused()
    {
        JobStore store = new(StoreDoor.Sqlite(File), TimeProvider.System);
        StoredJob job = await store.CreateAsync(Text, "ann", TestContext.Current.CancellationToken);
        void Sql(string sql)
        {
            using Microsoft.Data.Sqlite.SqliteConnection connection = new($"Data Source={File}");
            connection.Open();
            using var command = connection.CreateCommand();
#pragma warning disable CA2100 // the test's own words
            command.CommandText = sql;
#pragma warning restore CA2100
            command.ExecuteNonQuery();
        }

        Sql("DROP TABLE library; DELETE FROM schema_steps WHERE step > 1");
        JobStore up = new(StoreDoor.Sqlite(File), TimeProvider.System);
        Assert.Equal(Text, (await up.FindAsync(job.Id, TestContext.Current.CancellationToken))!.Text);
        Sql("SELECT COUNT(*) FROM library");

        Sql("INSERT INTO schema_steps (step) VALUES (99)");
        Assert.Throws<StoreTooNewException>(() => StoreDoor.Sqlite(File));
    }
}
