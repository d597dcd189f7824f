using Glazewright.Design.Document;
using Glazewright.Store.Jobs;
using Glazewright.Store.Tests.Databases;
using Microsoft.EntityFrameworkCore;

namespace Glazewright.Store.Tests.Jobs;

public sealed class JobStoreTests(PostgresServer server)
{
    private const string Text = "{ \"glazewright\": 1, // by hand\n  \"name\": \"Low Meadow\", \"houses\": [{ \"width\": \"26 ft\", \"length\": \"96 ft\" }] }";

    [Theory]
    [MemberData(nameof(Shelf.Both), MemberType = typeof(Shelf))]
    public async Task A_job_comes_back_as_typed_with_every_edit(Kind kind)
    {
        using Shelf shelf = new(kind, server);
        JobStore store = new(shelf.Open(), TimeProvider.System);
        StoredJob job = await store.CreateAsync(Text, "ann", TestContext.Current.CancellationToken);
        SaveAnswer answer = await store.SaveAsync(job.Id, 1, [Edit.Typed("/houses/0/width", "27' 6\"")], "width", "ann", TestContext.Current.CancellationToken);
        StoredJob after = Assert.IsType<SaveAnswer.Saved>(answer).Job;
        Assert.Equal(2, after.Version);

        JobStore again = new(shelf.Open(), TimeProvider.System);
        StoredJob read = (await again.FindAsync(job.Id, TestContext.Current.CancellationToken))!;
        Assert.Equal(after, read);
        Assert.Contains("// by hand", read.Text, StringComparison.Ordinal);
        Assert.Equal("Low Meadow", read.Name);
        Assert.Equal(Text, await again.TextAtAsync(job.Id, 1, TestContext.Current.CancellationToken));
        Assert.Equal(["width", "new"], (await again.HistoryAsync(job.Id, cancel: TestContext.Current.CancellationToken)).Select(e => e.What));
    }

    // Two windows on one job: other fields are joined, the same field is the writer's to decide; neither edit is lost.
    [Theory]
    [MemberData(nameof(Shelf.Both), MemberType = typeof(Shelf))]
    public async Task Two_windows_lose_no_edit(Kind kind)
    {
        using Shelf shelf = new(kind, server);
        JobStore store = new(shelf.Open(), TimeProvider.System);
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

    [Theory]
    [MemberData(nameof(Shelf.Both), MemberType = typeof(Shelf))]
    public async Task Many_writers_at_once_save_each_edit_once(Kind kind)
    {
        using Shelf shelf = new(kind, server);
        JobStore store = new(shelf.Open(), TimeProvider.System);
        StoredJob job = await store.CreateAsync(Text, "ann", TestContext.Current.CancellationToken);
        SaveAnswer[] answers = await Task.WhenAll(Enumerable.Range(0, 20).Select(i => Task.Run(() => store.SaveAsync(job.Id, 1, [Edit.Typed($"/notes{i}", "x")], $"note {i}", "w"))));
        Assert.All(answers, a => Assert.IsType<SaveAnswer.Saved>(a));
        StoredJob last = (await store.FindAsync(job.Id, TestContext.Current.CancellationToken))!;
        Assert.Equal(21, last.Version);
        Assert.All(Enumerable.Range(0, 20), i => Assert.Contains($"notes{i}\"", last.Text, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Shelf.Both), MemberType = typeof(Shelf))]
    public async Task A_sold_job_is_locked_and_a_gone_one_is_told(Kind kind)
    {
        using Shelf shelf = new(kind, server);
        JobStore store = new(shelf.Open(), TimeProvider.System);
        StoredJob job = await store.CreateAsync(Text, "ann", TestContext.Current.CancellationToken);
        await store.SetStatusAsync(job.Id, JobStatus.Sold, cancel: TestContext.Current.CancellationToken);
        Assert.IsType<SaveAnswer.Locked>(await store.SaveAsync(job.Id, 1, [Edit.Typed("/name", "x")], "name", "ann", TestContext.Current.CancellationToken));
        Assert.IsType<SaveAnswer.Gone>(await store.SaveAsync("nothing", 1, [Edit.Typed("/name", "x")], "name", "ann", TestContext.Current.CancellationToken));
        Assert.Equal(Text, (await store.FindAsync(job.Id, TestContext.Current.CancellationToken))!.Text);
    }

    [Theory]
    [MemberData(nameof(Shelf.Both), MemberType = typeof(Shelf))]
    public async Task A_version_is_marked_once_and_can_be_restored(Kind kind)
    {
        using Shelf shelf = new(kind, server);
        JobStore store = new(shelf.Open(), TimeProvider.System);
        StoredJob job = await store.CreateAsync(Text, "ann", TestContext.Current.CancellationToken);
        Assert.NotNull(await store.MarkAsync(job.Id, "A", "for the bank", TestContext.Current.CancellationToken));
        Assert.Null(await store.MarkAsync(job.Id, "B", "again", TestContext.Current.CancellationToken));
        Assert.Null(await store.MarkAsync(job.Id, 99, "B", "no such version", TestContext.Current.CancellationToken));
        await store.SaveAsync(job.Id, 1, [Edit.Typed("/name", "Other")], "name", "ann", TestContext.Current.CancellationToken);
        Revision first = Assert.Single(await store.RevisionsAsync(job.Id, TestContext.Current.CancellationToken));
        string then = (await store.TextAtAsync(job.Id, first.Version, TestContext.Current.CancellationToken))!;
        SaveAnswer.Saved back = Assert.IsType<SaveAnswer.Saved>(await store.ReplaceAsync(job.Id, 2, then, "back to A", "ann", TestContext.Current.CancellationToken));
        Assert.Equal((Text, "Low Meadow", 3), (back.Job.Text, back.Job.Name, back.Job.Version));
    }

    [Theory]
    [MemberData(nameof(Shelf.Both), MemberType = typeof(Shelf))]
    public async Task What_was_known_when_a_status_was_set_is_noted_beside_its_version_and_the_version_can_still_be_marked(Kind kind)
    {
        CancellationToken cancel = TestContext.Current.CancellationToken;
        using Shelf shelf = new(kind, server);
        JobStore store = new(shelf.Open(), TimeProvider.System);
        StoredJob job = await store.CreateAsync(Text, "ann", cancel);
        Assert.Equal(JobStatus.Quoted, (await store.SetStatusAsync(job.Id, JobStatus.Quoted, new KnownBefore(1, "knowing: 1 fault"), cancel))!.Status);
        Revision noted = Assert.Single(await store.RevisionsAsync(job.Id, cancel));
        Assert.Equal((1, "", "knowing: 1 fault"), (noted.Version, noted.Mark, noted.Note));
        Revision marked = (await store.MarkAsync(job.Id, "A", "for the bank", cancel))!;
        Assert.Equal(("A", "for the bank. knowing: 1 fault"), (marked.Mark, marked.Note));
        await store.SetStatusAsync(job.Id, JobStatus.Sold, new KnownBefore(1, "knowing: still"), cancel);
        Assert.Equal("for the bank. knowing: 1 fault. knowing: still", Assert.Single(await store.RevisionsAsync(job.Id, cancel)).Note);
        Assert.Null(await store.MarkAsync(job.Id, "B", "again", cancel));
    }

    // What was known of version 1 says nothing of version 2: the status stays, and nothing is noted.
    [Theory]
    [MemberData(nameof(Shelf.Both), MemberType = typeof(Shelf))]
    public async Task A_status_is_not_set_on_another_version_than_the_one_that_was_looked_at(Kind kind)
    {
        CancellationToken cancel = TestContext.Current.CancellationToken;
        using Shelf shelf = new(kind, server);
        JobStore store = new(shelf.Open(), TimeProvider.System);
        StoredJob job = await store.CreateAsync(Text, "ann", cancel);
        await store.SaveAsync(job.Id, 1, [Edit.Typed("/name", "Other")], "name", "ben", cancel);
        Assert.Null(await store.SetStatusAsync(job.Id, JobStatus.Sold, new KnownBefore(1, "knowing"), cancel));
        Assert.Equal(JobStatus.Draft, (await store.FindAsync(job.Id, cancel))!.Status);
        Assert.Empty(await store.RevisionsAsync(job.Id, cancel));
    }

    // A store of an older program is brought up with its jobs; one of a newer program is left alone.
    [Theory]
    [MemberData(nameof(Shelf.Both), MemberType = typeof(Shelf))]
    public async Task Old_stores_are_brought_up_and_newer_ones_refused(Kind kind)
    {
        using Shelf shelf = new(kind, server);
        JobStore store = new(shelf.Open(), TimeProvider.System);
        StoredJob job = await store.CreateAsync(Text, "ann", TestContext.Current.CancellationToken);
        shelf.Sql("DROP TABLE library; DROP TABLE ended_sign_ins; DROP TABLE made_papers; DROP TABLE library_years; DELETE FROM schema_steps WHERE step > 1");
        JobStore up = new(shelf.Open(), TimeProvider.System);
        Assert.Equal(Text, (await up.FindAsync(job.Id, TestContext.Current.CancellationToken))!.Text);
        shelf.Sql("SELECT COUNT(*) FROM library");

        shelf.Sql("INSERT INTO schema_steps (step) VALUES (99)");
        Assert.Throws<StoreTooNewException>(() => shelf.Open());
    }

    // Sold while an edit is on its way: either the edit came first or it is told that the job is locked; never both sold and changed after.
    [Theory]
    [MemberData(nameof(Shelf.Both), MemberType = typeof(Shelf))]
    public async Task No_edit_slips_in_behind_a_sale(Kind kind)
    {
        using Shelf shelf = new(kind, server);
        CancellationToken cancel = TestContext.Current.CancellationToken;
        JobStore store = new(shelf.Open(), TimeProvider.System);
        for (int round = 0; round < 6; round++)
        {
            StoredJob job = await store.CreateAsync(Text, "ann", cancel);
            Task<SaveAnswer> edit = Task.Run(() => store.SaveAsync(job.Id, 1, [Edit.Typed("/name", "Other")], "name", "bob"), cancel);
            StoredJob sold = (await store.SetStatusAsync(job.Id, JobStatus.Sold, cancel: cancel))!;
            SaveAnswer answer = await edit;
            StoredJob after = (await store.FindAsync(job.Id, cancel))!;
            Assert.Equal((sold.Text, sold.Version, JobStatus.Sold), (after.Text, after.Version, after.Status));
            Assert.Equal(sold.Version == 2, answer is SaveAnswer.Saved);
            Assert.Equal(sold.Version == 1, answer is SaveAnswer.Locked);
        }
    }

    [Theory]
    [MemberData(nameof(Shelf.Both), MemberType = typeof(Shelf))]
    public async Task A_job_of_fifty_revisions_goes_back_to_any(Kind kind)
    {
        using Shelf shelf = new(kind, server);
        CancellationToken cancel = TestContext.Current.CancellationToken;
        JobStore store = new(shelf.Open(), TimeProvider.System);
        StoredJob job = await store.CreateAsync(Text, "ann", cancel);
        for (int i = 1; i <= 50; i++)
        {
            Assert.Equal(job.Version, (await store.MarkAsync(job.Id, $"R{i}", $"note {i}", cancel))!.Version);
            job = Assert.IsType<SaveAnswer.Saved>(await store.SaveAsync(job.Id, job.Version, [Edit.Typed("/houses/0/width", $"{20 + i} ft")], $"width {i}", "ann", cancel)).Job;
        }

        IReadOnlyList<Revision> revisions = await store.RevisionsAsync(job.Id, cancel);
        Assert.Equal(Enumerable.Range(1, 50).Reverse().Select(i => ($"R{i}", $"note {i}")), revisions.Select(r => (r.Mark, r.Note)));
        StoredJob back = Assert.IsType<SaveAnswer.Saved>(await store.RestoreAsync(job.Id, job.Version, revisions[30].Version, "ann", cancel)).Job;
        Assert.Equal(52, back.Version);
        Assert.Contains("\"39 ft\"", back.Text, StringComparison.Ordinal);
        Assert.Contains("\"70 ft\"", await store.TextAtAsync(job.Id, 51, cancel), StringComparison.Ordinal);
        Assert.IsType<SaveAnswer.Gone>(await store.RestoreAsync(job.Id, back.Version, 99, "ann", cancel));
    }

    // A restored or pasted document touches every field: another window's edit since is not overwritten unseen.
    [Theory]
    [MemberData(nameof(Shelf.Both), MemberType = typeof(Shelf))]
    public async Task A_whole_document_does_not_overwrite_what_its_writer_has_not_seen(Kind kind)
    {
        using Shelf shelf = new(kind, server);
        CancellationToken cancel = TestContext.Current.CancellationToken;
        JobStore store = new(shelf.Open(), TimeProvider.System);
        StoredJob job = await store.CreateAsync(Text, "ann", cancel);
        await store.SaveAsync(job.Id, 1, [Edit.Typed("/houses/0/width", "30 ft")], "width", "bob", cancel);
        SaveAnswer.Clash clash = Assert.IsType<SaveAnswer.Clash>(await store.ReplaceAsync(job.Id, 1, Text, "undo", "ann", cancel));
        Assert.Equal("bob", Assert.Single(clash.Others).By);
        SaveAnswer misfit = await store.SaveAsync(job.Id, 2, [Edit.Typed("/houses/0/width/deep", "1 ft")], "deep", "ann", cancel);
        Assert.NotEmpty(Assert.IsType<SaveAnswer.Misfit>(misfit).Why);
        Assert.Contains("30 ft", (await store.FindAsync(job.Id, cancel))!.Text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Shelf.Both), MemberType = typeof(Shelf))]
    public async Task Characters_that_are_no_text_do_not_stop_a_save(Kind kind)
    {
        using Shelf shelf = new(kind, server);
        CancellationToken cancel = TestContext.Current.CancellationToken;
        JobStore store = new(shelf.Open(), TimeProvider.System);
        StoredJob job = await store.CreateAsync("{ \"glazewright\": 1, \"name\": \"Low\\u0000 \\ud800Meadow\" }", "a\0nn", cancel);
        Assert.Equal("Low \uFFFDMeadow", job.Name);
        Assert.NotNull(await store.MarkAsync(job.Id, "A\0", new string('x', 9000) + "\ud800", cancel));
        Assert.Equal("ann", Assert.Single(await store.HistoryAsync(job.Id, cancel: cancel)).By);
    }

    // The promise of the header: what SQLite says itself of a connection of ours.
    [Fact]
    public void An_sqlite_store_is_a_write_ahead_log_with_full_synchronisation()
    {
        using Shelf shelf = new(Kind.Sqlite, server);
        using StoreContext context = shelf.Open().Context();
        context.Database.OpenConnection();
        using System.Data.Common.DbCommand command = context.Database.GetDbConnection().CreateCommand();
        command.CommandText = "PRAGMA journal_mode";
        Assert.Equal("wal", command.ExecuteScalar());
        command.CommandText = "PRAGMA synchronous";
        Assert.Equal(2L, command.ExecuteScalar());
    }

    [Theory]
    [InlineData("jobs.db")]
    [InlineData("sqlite:")]
    [InlineData("mysql:Host=x")]
    public void A_store_that_is_neither_kind_is_refused_in_words(string setting) =>
        Assert.Contains("postgres:", Assert.Throws<FormatException>(() => StoreDoor.Of(setting)).Message, StringComparison.Ordinal);
}
