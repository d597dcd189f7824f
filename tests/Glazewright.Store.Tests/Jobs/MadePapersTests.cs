using System.Globalization;
using Glazewright.Design.Document;
using Glazewright.Store.Jobs;
using Glazewright.Store.Tests.Databases;

namespace Glazewright.Store.Tests.Jobs;

/// <summary>Which version papers were last made of outlives the program that made them.</summary>
public sealed class MadePapersTests(PostgresServer server)
{
    private const string Text = "{ \"glazewright\": 1, \"name\": \"Yard\" }";
    private static readonly DateTimeOffset s_noon = new(2026, 6, 1, 12, 0, 0, TimeSpan.Zero);

    [Theory]
    [MemberData(nameof(Shelf.Both), MemberType = typeof(Shelf))]
    public async Task A_program_started_anew_knows_the_papers_that_were_made_last(Kind kind)
    {
        using Shelf shelf = new(kind, server);
        CancellationToken cancel = TestContext.Current.CancellationToken;
        StoreDoor door = shelf.Open();
        JobStore jobs = new(door, TimeProvider.System);
        StoredJob job = await jobs.CreateAsync(Text, "ann", cancel);
        StoredJob other = await jobs.CreateAsync(Text, "ann", cancel);
        await jobs.SaveAsync(job.Id, 1, [Edit.Typed("/name", "Other")], "name", "ann", cancel);
        Assert.Null(await new MadePapers(door, TimeProvider.System).LastAsync(job.Id, cancel));
        Assert.True(await new MadePapers(door, new Clock(s_noon)).AddAsync(job.Id, 2, "b2", cancel));

        MadePapers anew = new(shelf.Open(), new Clock(s_noon.AddHours(1)));
        Assert.Equal(new PapersMade(2, "b2", s_noon), await anew.LastAsync(job.Id, cancel));
        Assert.Null(await anew.LastAsync(other.Id, cancel));

        // An older version's papers made later are the last; made again, a version has one row.
        Assert.True(await anew.AddAsync(job.Id, 1, "a1", cancel));
        Assert.Equal(new PapersMade(1, "a1", s_noon.AddHours(1)), await anew.LastAsync(job.Id, cancel));
        MadePapers later = new(shelf.Open(), new Clock(s_noon.AddHours(2)));
        Assert.True(await later.AddAsync(job.Id, 2, "b3", cancel));
        Assert.Equal(new PapersMade(2, "b3", s_noon.AddHours(2)), await later.LastAsync(job.Id, cancel));
        Assert.Equal(2, Convert.ToInt32(shelf.Sql("SELECT COUNT(*) FROM made_papers"), CultureInfo.InvariantCulture));
    }

    [Theory]
    [MemberData(nameof(Shelf.Both), MemberType = typeof(Shelf))]
    public async Task Papers_of_no_job_or_version_are_not_kept_and_many_windows_make_them_at_once(Kind kind)
    {
        using Shelf shelf = new(kind, server);
        CancellationToken cancel = TestContext.Current.CancellationToken;
        StoreDoor door = shelf.Open();
        StoredJob job = await new JobStore(door, TimeProvider.System).CreateAsync(Text, "ann", cancel);
        MadePapers papers = new(door, TimeProvider.System);
        Assert.False(await papers.AddAsync(job.Id, 2, "c", cancel));
        Assert.False(await papers.AddAsync("none", 1, "c", cancel));
        Assert.True((await Task.WhenAll(Enumerable.Range(0, 12).Select(_ => Task.Run(() => papers.AddAsync(job.Id, 1, "c", cancel), cancel)))).All(done => done));
        Assert.Equal(1, Convert.ToInt32(shelf.Sql("SELECT COUNT(*) FROM made_papers"), CultureInfo.InvariantCulture));
    }

    private sealed class Clock(DateTimeOffset now) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => now;
    }
}
