using System.IO.Compression;
using System.Reflection;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Pipeline;
using Glazewright.Papers.Sets;

namespace Glazewright.Web.Jobs;

/// <summary>How far work behind a window has come.</summary>
/// <param name="Words">What is being done; empty when nothing is.</param>
/// <param name="Failure">Why the last work ended without a result, or empty.</param>
/// <param name="IsPapers">Whether the papers are being made.</param>
public sealed record WorkView(string Words, string Failure, bool IsPapers)
{
    /// <summary>Whether something is being done.</summary>
    public bool IsRunning => Words.Length > 0;
}

/// <summary>Everything that was computed of a job.</summary>
/// <param name="Job">The job's id.</param>
/// <param name="Version">Its version.</param>
/// <param name="Source">What pages and papers are made from.</param>
public sealed record WholeResults(string Job, int Version, PaperSource Source);

/// <summary>The last whole results of a few jobs, for every window on them.</summary>
public sealed class WholeShelf
{
    private const int Most = 6;
    private readonly Lock _one = new();
    private readonly List<WholeResults> _kept = [];

    /// <summary>Puts results here, unless newer ones of the job are.</summary>
    /// <param name="results">The results.</param>
    public void Put(WholeResults results)
    {
        ArgumentNullException.ThrowIfNull(results);
        lock (_one)
        {
            if (_kept.Exists(k => k.Job == results.Job && k.Version > results.Version))
            {
                return;
            }

            _kept.RemoveAll(k => k.Job == results.Job);
            _kept.Add(results);
            if (_kept.Count > Most)
            {
                _kept.RemoveAt(0);
            }
        }
    }

    /// <summary>A job's results, or null.</summary>
    /// <param name="job">The job's id.</param>
    public WholeResults? Find(string job)
    {
        lock (_one)
        {
            return _kept.Find(k => k.Job == job);
        }
    }
}

/// <summary>What a window has computed behind its pages: light maps, the year, takeoff, cuts, price, and the papers. The newest edit wins; anything can be stopped.</summary>
/// <param name="session">The window's job.</param>
/// <param name="lane">Where heavy work is done.</param>
/// <param name="shelf">Where made papers lie until they are fetched.</param>
/// <param name="computed">What other windows computed of the same job.</param>
public sealed class JobWork(JobSession session, BehindLane lane, PackageShelf shelf, WholeShelf computed) : IDisposable
{
    private static readonly WorkView s_idle = new("", "", false);
    private readonly Lock _seen = new();
    private CancellationTokenSource? _running;
    private int _runningVersion;
    private int _stoppedVersion;
    private WorkView _view = s_idle;
    private WholeResults? _whole;

    /// <summary>Something to show has changed; may come from any thread.</summary>
    public event Action? Changed;

    /// <summary>The words of what is being done have changed, and nothing else; may come from any thread.</summary>
    public event Action? Told;

    /// <summary>How far the work has come.</summary>
    public WorkView View
    {
        get
        {
            lock (_seen)
            {
                return _view;
            }
        }
    }

    /// <summary>The newest whole results there are, or null.</summary>
    public WholeResults? Whole
    {
        get
        {
            WholeResults? own;
            lock (_seen)
            {
                own = _whole;
            }

            // Another window may have been here before, or this one before it was loaded again.
            return session.View is { Job: { } job } && !(own?.Job == job.Id && own.Version == job.Version) && computed.Find(job.Id) is { } there && (own?.Job != job.Id || there.Version > own.Version) ? there : own;
        }
    }

    /// <summary>Computes the whole job behind, unless that is done, under way, or was stopped for this very version.</summary>
    public void AskWhole()
    {
        if (session.View is { Light: { } light, IsWorking: false, IsStale: false } && light.Version != _stoppedVersion && !(Whole is { } whole && whole.Job == session.View.Job.Id && whole.Version == light.Version) && !(View.IsRunning && _runningVersion == light.Version))
        {
            Start(light, papers: false);
        }
    }

    /// <summary>Makes the papers behind.</summary>
    public void AskPapers()
    {
        if (session.View is { Light: { } light, IsStale: false })
        {
            Start(light, papers: true);
        }
    }

    /// <summary>Stops what is under way.</summary>
    public void Stop()
    {
        lock (_seen)
        {
            _stoppedVersion = _runningVersion;
            _running?.Cancel();
            _running = null;
            _view = s_idle;
        }

        Changed?.Invoke();
    }

    /// <summary>What was stopped may be begun again.</summary>
    public void Again() => _stoppedVersion = 0;

    /// <summary>Stops what belongs to an earlier state of the job.</summary>
    public void Follow()
    {
        bool stale;
        lock (_seen)
        {
            stale = _view.IsRunning && session.View?.Job.Version != _runningVersion;
        }

        if (stale)
        {
            Stop();
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _running?.Cancel();
    }

    private void Start(LightResults light, bool papers)
    {
        CancellationTokenSource mine = new();
        lock (_seen)
        {
            _running?.Cancel();
            _running = mine;
            _runningVersion = light.Version;
            _stoppedVersion = 0;
            _view = new WorkView("Waiting for other work", "", papers);
        }

        Changed?.Invoke();
        string job = session.View!.Job.Id;
        _ = Task.Run(() => RunAsync(job, light, papers, mine));
    }

    private async Task RunAsync(string job, LightResults light, bool papers, CancellationTokenSource mine)
    {
        CancellationToken cancel = mine.Token;
        void Tell(StageProgress stage) => Say(mine, StageWords.Of(stage), papers);
        string failure = "";
        session.Told += Tell;
        try
        {
            await lane.RunAsync(() => Compute(job, light, papers, mine), cancel);
        }
        catch (OperationCanceledException) when (cancel.IsCancellationRequested)
        {
            // Stopped, or a newer edit came.
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            failure = $"This is a mistake of the program, not of the job: {e.GetType().Name}: {e.Message}";
        }
        finally
        {
            session.Told -= Tell;
            lock (_seen)
            {
                if (_running == mine)
                {
                    _running = null;
                    _view = s_idle with { Failure = failure };
                }
            }

            Changed?.Invoke();
        }
    }

    private bool Compute(string job, LightResults light, bool papers, CancellationTokenSource mine)
    {
        CancellationToken cancel = mine.Token;
        PaperSource source = Whole is { } known && known.Job == job && known.Version == light.Version ? known.Source : SourceOf(session, light.Loaded, cancel);
        lock (_seen)
        {
            if (_running == mine)
            {
                _whole = new WholeResults(job, light.Version, source);
            }
        }

        computed.Put(new WholeResults(job, light.Version, source));
        if (papers)
        {
            Say(mine, "Writing papers", papers);
            IReadOnlyList<PaperFile> files = PaperWriter.Write(source, cancel);
            Say(mine, "Packing", papers);
            shelf.Put(job, new MadePackage(light.Version, source, [.. files.Select(f => new ListedFile(f.Path, f.Title, f.Bytes.Length, f.Readers))], Zip(files)));
        }

        return true;
    }

    /// <summary>Everything of a job, computed where it is not yet.</summary>
    internal static PaperSource SourceOf(JobSession session, LoadedJob loaded, CancellationToken cancel)
    {
        Evaluation all = session.Evaluate(loaded, cancel);
        all.Everything(Math.Max(1, Environment.ProcessorCount / 2));
        return PaperSource.From(all, loaded.Defaults, Version);
    }

    private static string Version => typeof(JobWork).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "";

    private void Say(CancellationTokenSource mine, string words, bool papers)
    {
        lock (_seen)
        {
            if (_running != mine)
            {
                return;
            }

            _view = new WorkView(words, "", papers);
        }

        Told?.Invoke();
    }

    /// <summary>Files as one, the same bytes for the same files.</summary>
    internal static byte[] Zip(IReadOnlyList<PaperFile> files)
    {
        using MemoryStream packed = new();
        using (ZipArchive archive = new(packed, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (PaperFile file in files)
            {
                ZipArchiveEntry entry = archive.CreateEntry(file.Path, CompressionLevel.Fastest);
                // The earliest time an archive can hold: it comes from nobody's clock.
                entry.LastWriteTime = new DateTimeOffset(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);
                using Stream stream = entry.Open();
                stream.Write(file.Bytes.Span);
            }
        }

        return packed.ToArray();
    }
}
