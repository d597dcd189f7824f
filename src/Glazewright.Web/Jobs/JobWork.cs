using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Pipeline;
using Glazewright.Papers.Package;
using Glazewright.Papers.Sets;
using Glazewright.Store.Jobs;

namespace Glazewright.Web.Jobs;

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
/// <param name="made">Keeps which version papers were made of.</param>
public sealed class JobWork(JobSession session, BehindLane lane, PackageShelf shelf, WholeShelf computed, MadePapers made) : IDisposable
{
    // Who changes a number often changes another at once; and its answer is painted before the processors are given something else.
    private static readonly TimeSpan s_rest = TimeSpan.FromMilliseconds(300);

    private readonly Lock _seen = new();
    private readonly OneAtATime _piece = new();
    private int _stoppedVersion;
    private WholeResults? _whole;

    /// <summary>Something to show has changed; may come from any thread.</summary>
    public event Action? Changed
    {
        add => _piece.Changed += value;
        remove => _piece.Changed -= value;
    }

    /// <summary>The words of what is being done have changed, and nothing else; may come from any thread.</summary>
    public event Action? Told
    {
        add => _piece.Told += value;
        remove => _piece.Told -= value;
    }

    /// <summary>How far the work has come.</summary>
    public WorkView View => _piece.View;

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
        if (session.View is { Light: { } light, IsWorking: false, IsStale: false } && light.Version != _stoppedVersion && !(Whole is { } whole && whole.Job == session.View.Job.Id && whole.Version == light.Version) && !(View.IsRunning && _piece.Version == light.Version))
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
        _stoppedVersion = _piece.Version;
        _piece.Stop();
    }

    /// <summary>What was stopped may be begun again.</summary>
    public void Again() => _stoppedVersion = 0;

    /// <summary>Stops what belongs to an earlier state of the job.</summary>
    public void Follow()
    {
        if (_piece.IsStale(session.View?.Job.Version))
        {
            Stop();
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _piece.Leave();

    private void Start(LightResults light, bool papers)
    {
        _stoppedVersion = 0;
        string job = session.View!.Job.Id;
        _piece.Begin(light.Version, papers, async turn =>
        {
            void Tell(StageProgress stage) => turn.Say(StageWords.Of(stage));
            session.Told += Tell;
            try
            {
                await Task.Delay(papers ? TimeSpan.Zero : s_rest, turn.Cancel);
                if (await lane.RunAsync(() => Compute(job, light, papers, turn), turn.Cancel) is { Length: > 0 } manifest)
                {
                    // They lie on the shelf: that is kept even if the window is closed now.
                    await made.AddAsync(job, light.Version, manifest, CancellationToken.None);
                }
            }
            finally
            {
                session.Told -= Tell;
            }
        });
    }

    /// <summary>Computes, and makes the papers if they are asked for.</summary>
    /// <returns>Hash of the papers' manifest; empty where none were made.</returns>
    private string Compute(string job, LightResults light, bool papers, OneAtATime.Turn turn)
    {
        CancellationToken cancel = turn.Cancel;
        PaperSource source = Whole is { } known && known.Job == job && known.Version == light.Version ? known.Source : SourceOf(session, light.Loaded, cancel);
        turn.IfNewest(() =>
        {
            lock (_seen)
            {
                _whole = new WholeResults(job, light.Version, source);
            }
        });
        computed.Put(new WholeResults(job, light.Version, source));
        if (!papers)
        {
            return "";
        }

        turn.Say("Writing papers");
        IReadOnlyList<PaperFile> files = PaperWriter.Write(source, cancel);
        turn.Say("Packing");
        shelf.Put(job, new MadePackage(light.Version, source, [.. files.Select(f => new ListedFile(f.Path, f.Title, f.Bytes.Length, f.Readers))], Packing.Zip(files.Select(f => (f.Path, f.Bytes)))));
        string manifest = new PackageManifest([.. files.Select(f => PackageManifest.Entry(f.Path, f.Bytes.Span))]).Write();
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(manifest)));
    }

    /// <summary>Everything of a job, computed where it is not yet.</summary>
    internal static PaperSource SourceOf(JobSession session, LoadedJob loaded, CancellationToken cancel)
    {
        Evaluation all = session.Evaluate(loaded, cancel);
        all.Everything(Math.Max(1, Environment.ProcessorCount / 2));
        return PaperSource.From(all, loaded.Defaults, Version);
    }

    private static string Version => typeof(JobWork).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "";
}
