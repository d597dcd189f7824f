using Glazewright.Design.Document;
using Glazewright.Store.Jobs;
using Glazewright.Web.Jobs;

namespace Glazewright.Web.Tests.Jobs;

/// <summary>What is told before a job is called quoted or sold.</summary>
public sealed class OpenMattersTests : IAsyncLifetime
{
    private readonly Desk _desk = new();

    public ValueTask InitializeAsync() => _desk.InitializeAsync();

    public ValueTask DisposeAsync() => _desk.DisposeAsync();

    [Fact]
    public async Task A_danger_is_told_with_its_page_and_noted()
    {
        JobSession window = await OpenAsync();
        Assert.True(await window.EditAsync([new Edit("/houses/0/frame", """{ "pierDepth": "1 ft" }""")], "piers"));
        await window.Settled;
        IReadOnlyList<OpenKind> open = OpenMatters.Of(window.View!, null, null, JobStatus.Quoted);
        OpenKind dangers = Assert.Single(open, k => k.Heading.Contains("danger", StringComparison.Ordinal));
        OpenMatter lift = Assert.Single(dangers.Matters, m => m.Short.StartsWith("frame/uplift", StringComparison.Ordinal));
        Assert.Equal($"/jobs/{window.View!.Job.Id}/frame#findings", lift.Address);
        string note = OpenMatters.Note(open, JobStatus.Quoted, "ann");
        Assert.StartsWith("Set to quoted by ann, knowing: ", note, StringComparison.Ordinal);
        Assert.Contains("frame/uplift", note, StringComparison.Ordinal);

        Assert.True(await window.SetStatusAsync(JobStatus.Quoted, new KnownBefore(window.View.Job.Version, note)));
        Assert.Equal(note, Assert.Single(await _desk.Store.RevisionsAsync(window.View.Job.Id)).Note);
    }

    [Fact]
    public async Task Faults_are_told_with_their_fields_the_first_few_in_the_note()
    {
        JobSession window = await OpenAsync();
        Assert.True(await window.EditAsync([Edit.Typed("/houses/0/width", "wide"), Edit.Typed("/houses/0/length", "long")], "size"));
        await window.Settled;
        OpenKind faults = OpenMatters.Of(window.View!, null, null, JobStatus.Sold)[0];
        Assert.Equal($"{window.View!.Faults.Count} faults", faults.Heading);
        Assert.Contains(faults.Matters, m => m.Address.EndsWith("#field-houses-0-width", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Papers_of_an_earlier_version_are_told_and_those_of_this_one_are_not()
    {
        JobSession window = await OpenAsync();
        Assert.Contains(OpenMatters.Of(window.View!, null, 0, JobStatus.Quoted), k => k.Heading == "Papers older than the job");
        Assert.DoesNotContain(OpenMatters.Of(window.View!, null, window.View!.Job.Version, JobStatus.Quoted), k => k.Heading.StartsWith("Papers", StringComparison.Ordinal));
        Assert.DoesNotContain(OpenMatters.Of(window.View!, null, null, JobStatus.Quoted), k => k.Heading.StartsWith("Papers", StringComparison.Ordinal));
    }

    [Fact]
    public async Task That_papers_were_made_is_kept_in_the_store()
    {
        JobSession window = await OpenAsync();
        PackageShelf shelf = new();
        using JobWork work = new(window, _desk.Behind, shelf, new WholeShelf(), _desk.Papers);
        string job = window.View!.Job.Id;
        work.AskPapers();
        while (work.View.IsRunning)
        {
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }

        Assert.Equal("", work.View.Failure);
        PapersMade kept = (await _desk.Papers.LastAsync(job, TestContext.Current.CancellationToken))!;
        Assert.Equal(window.View.Job.Version, kept.Version);
        Assert.Equal(shelf.Find(job)!.Version, kept.Version);
        Assert.Matches("^[0-9a-f]{64}$", kept.ManifestSha256);
    }

    // A year that is not run may find what the quick answers cannot.
    [Fact]
    public async Task What_is_not_computed_is_told()
    {
        JobSession window = await OpenAsync();
        Assert.Contains(OpenMatters.Of(window.View!, null, null, JobStatus.Sold), k => k.Heading.StartsWith("Not everything is computed", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Going_back_asks_nothing()
    {
        JobSession window = await OpenAsync();
        Assert.True(await window.EditAsync([Edit.Typed("/houses/0/width", "wide")], "size"));
        Assert.True(await window.SetStatusAsync(JobStatus.Sold));
        await window.Settled;
        Assert.Empty(OpenMatters.Of(window.View!, null, 0, JobStatus.Quoted));
        Assert.Empty(OpenMatters.Of(window.View!, null, 0, JobStatus.Draft));
        Assert.NotEmpty(OpenMatters.Of(window.View!, null, 0, JobStatus.Built));
    }

    [Fact]
    public async Task A_status_is_not_set_on_a_job_that_changed_under_the_question()
    {
        JobSession window = await OpenAsync();
        Assert.False(await window.SetStatusAsync(JobStatus.Sold, new KnownBefore(window.View!.Job.Version - 1, "knowing")));
        Assert.Equal(JobStatus.Draft, window.View!.Job.Status);
        Assert.Contains("status was not set", window.View.Notice, StringComparison.Ordinal);
    }

    private async Task<JobSession> OpenAsync() => await _desk.WindowAsync((await _desk.JobAsync()).Id);
}
