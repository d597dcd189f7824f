using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Pipeline;
using Glazewright.Science.Weather;
using Glazewright.Store.Jobs;
using Glazewright.Web.Jobs;

namespace Glazewright.Web.Compare;

/// <summary>Which job, at which version.</summary>
/// <param name="Job">The job's id.</param>
/// <param name="Version">The version; null for the job as it is.</param>
public sealed record SideWish(string Job, int? Version);

/// <summary>A job at a version, with its quick answers.</summary>
/// <param name="Job">The job as it is now.</param>
/// <param name="Version">The version shown.</param>
/// <param name="Document">Its document.</param>
/// <param name="Faults">What keeps it from being computed.</param>
/// <param name="Defaults">What holds where it does not say.</param>
/// <param name="Light">The quick answers; null where it has faults.</param>
public sealed record ComparedSide(StoredJob Job, int Version, JobDocument Document, EqList<Fault> Faults, EqList<DefaultUsed> Defaults, LightResults? Light)
{
    /// <summary>Whether it is the job as it is.</summary>
    public bool IsNow => Version == Job.Version;
}

/// <summary>What a page of two versions shows at one moment.</summary>
/// <param name="Before">The first.</param>
/// <param name="After">The second.</param>
/// <param name="Words">What is being computed; empty when nothing is.</param>
/// <param name="Failure">Why nothing came of it, or empty.</param>
/// <param name="WholeBefore">Whole answers of the first, or null.</param>
/// <param name="WholeAfter">Whole answers of the second, or null.</param>
public sealed record ComparisonView(ComparedSide Before, ComparedSide After, string Words, string Failure, WholeResults? WholeBefore, WholeResults? WholeAfter);

/// <summary>Two versions side by side: read, answered at once where that is quick, and computed whole behind. Nothing of it is written anywhere.</summary>
/// <param name="store">Jobs.</param>
/// <param name="weather">Weather years.</param>
/// <param name="session">The window's memory of stages: what two versions share is computed once.</param>
/// <param name="quick">Where quick answers are computed.</param>
/// <param name="behind">Where heavy work is done.</param>
/// <param name="computed">What was computed of jobs as they are.</param>
public sealed class ComparisonDesk(JobStore store, WeatherShelf weather, JobSession session, QuickLane quick, BehindLane behind, WholeShelf computed) : IDisposable
{
    private readonly Lock _seen = new();
    private CancellationTokenSource _newest = new();
    private ComparisonView? _view;

    /// <summary>Something to show has changed; may come from any thread.</summary>
    public event Action? Changed;

    /// <summary>What to show; null while nothing is read.</summary>
    public ComparisonView? View
    {
        get
        {
            lock (_seen)
            {
                return _view;
            }
        }
    }

    /// <summary>Done when everything asked for is computed, stopped or failed.</summary>
    public Task Settled { get; private set; } = Task.CompletedTask;

    /// <summary>Reads two versions and begins to compute them; what was asked before is dropped.</summary>
    /// <param name="before">The first.</param>
    /// <param name="after">The second.</param>
    /// <returns>False when there is no such job or version.</returns>
    public async Task<bool> LoadAsync(SideWish before, SideWish after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        CancellationTokenSource mine = new();
        CancellationTokenSource last = Interlocked.Exchange(ref _newest, mine);
        await last.CancelAsync();
        CancellationToken cancel = mine.Token;
        ComparedSide? one = await ReadAsync(before, cancel);
        ComparedSide? other = await ReadAsync(after, cancel);
        if (one is null || other is null)
        {
            lock (_seen)
            {
                _view = null;
            }

            return false;
        }

        Show(cancel, _ => new ComparisonView(one, other, "Working", "", Known(one), Known(other)));
        Settled = Task.Run(() => ComputeAsync(cancel), CancellationToken.None);
        return true;
    }

    /// <summary>Stops what is being computed; what is there stays.</summary>
    public void Stop()
    {
        _newest.Cancel();
        lock (_seen)
        {
            _view = _view is null ? null : _view with { Words = "", Failure = "Stopped." };
        }

        Changed?.Invoke();
    }

    /// <inheritdoc/>
    public void Dispose() => _newest.Cancel();

    /// <summary>The version that a job as it is is best laid beside: the newest earlier one without faults; where none of the last forty is, the last marked one, or the one before.</summary>
    /// <param name="id">The job.</param>
    /// <param name="cancel">Cancels.</param>
    /// <returns>The version; null where there is no earlier one.</returns>
    public async Task<int?> EarlierAsync(string id, CancellationToken cancel = default)
    {
        const int MostRead = 40;
        if (await store.FindAsync(id, cancel) is not { Version: > 1 } job)
        {
            return null;
        }

        for (int version = job.Version - 1; version >= Math.Max(1, job.Version - MostRead); version--)
        {
            if (await store.TextAtAsync(id, version, cancel) is { } text)
            {
                JobDocument document = JobDocument.Read(text);
                (WeatherYear? year, EqList<Fault> weatherFaults) = await weather.FindAsync(document, cancel);
                if (LoadedJob.Read(document, year, weatherFaults, out _, out _).Count == 0)
                {
                    return version;
                }
            }
        }

        return (await store.RevisionsAsync(id, cancel)).FirstOrDefault(m => m.Version < job.Version)?.Version ?? job.Version - 1;
    }

    private async Task<ComparedSide?> ReadAsync(SideWish wish, CancellationToken cancel)
    {
        if (await store.FindAsync(wish.Job, cancel) is not { } job)
        {
            return null;
        }

        int version = wish.Version ?? job.Version;
        string? text = version == job.Version ? job.Text : await store.TextAtAsync(job.Id, version, cancel);
        return text is null ? null : new ComparedSide(job, version, JobDocument.Read(text), [], [], null);
    }

    private async Task ComputeAsync(CancellationToken cancel)
    {
        void Tell(StageProgress stage) => Show(cancel, v => v is null || v.Words.Length == 0 ? v : v with { Words = StageWords.Of(stage) });
        string failure = "";
        try
        {
            ComparisonView view = View!;
            LoadedJob? one = await AnswerAsync(view.Before, side => Show(cancel, v => v! with { Before = side }), cancel);
            LoadedJob? other = await AnswerAsync(view.After, side => Show(cancel, v => v! with { After = side }), cancel);
            if (one is null || other is null)
            {
                return;
            }

            Show(cancel, v => v! with { Words = "Waiting for other work" });
            session.Told += Tell;
            if (View?.WholeBefore is null)
            {
                WholeResults whole = new(view.Before.Job.Id, view.Before.Version, await behind.RunAsync(() => JobWork.SourceOf(session, one, cancel), cancel));
                Show(cancel, v => v! with { WholeBefore = whole });
            }

            if (View?.WholeAfter is null)
            {
                WholeResults whole = new(view.After.Job.Id, view.After.Version, await behind.RunAsync(() => JobWork.SourceOf(session, other, cancel), cancel));
                Show(cancel, v => v! with { WholeAfter = whole });
            }
        }
        catch (OperationCanceledException) when (cancel.IsCancellationRequested)
        {
            // Stopped, or other versions were chosen.
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            failure = $"This is a mistake of the program, not of the jobs: {e.GetType().Name}: {e.Message}";
        }
        finally
        {
            session.Told -= Tell;
            Show(cancel, v => v! with { Words = "", Failure = failure });
        }
    }

    private async Task<LoadedJob?> AnswerAsync(ComparedSide side, Action<ComparedSide> show, CancellationToken cancel)
    {
        (WeatherYear? year, EqList<Fault> weatherFaults) = await weather.FindAsync(side.Document, cancel);
        EqList<Fault> faults = LoadedJob.Read(side.Document, year, weatherFaults, out EqList<DefaultUsed> defaults, out LoadedJob? loaded);
        LightResults? light = loaded is null ? null : await quick.RunAsync(() => LightResults.Of(side.Version, session.Evaluate(loaded, cancel), loaded), cancel);
        bool isWhole = light is { ProgramFaults.Count: 0 };
        show(side with { Faults = light?.ProgramFaults ?? faults, Defaults = defaults, Light = isWhole ? light : null });
        return isWhole ? loaded : null;
    }

    private WholeResults? Known(ComparedSide side) => computed.Find(side.Job.Id) is { } whole && whole.Version == side.Version ? whole : null;

    private void Show(CancellationToken cancel, Func<ComparisonView?, ComparisonView?> change)
    {
        lock (_seen)
        {
            if (cancel.IsCancellationRequested)
            {
                return;
            }

            _view = change(_view);
        }

        Changed?.Invoke();
    }
}
