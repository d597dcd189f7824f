using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Price;
using Glazewright.Science.Weather;
using Glazewright.Store.Jobs;
using Glazewright.Store.Library;
using Glazewright.Web.Fields;

namespace Glazewright.Web.Jobs;

/// <summary>
/// One window on one job. An edit is on the disk before it is acknowledged; the answers that are quick are computed at once, the newest edit winning, and the last
/// good ones stay until newer ones are there.
/// </summary>
/// <param name="store">Jobs.</param>
/// <param name="weather">Weather years.</param>
/// <param name="bell">Other windows.</param>
/// <param name="quick">Where quick answers are computed.</param>
/// <param name="runners">What is computed of the jobs that are open.</param>
public sealed class JobSession(JobStore store, WeatherShelf weather, JobBell bell, QuickLane quick, JobRunners runners) : IJobDesk, IDisposable
{
    /// <summary>Who edits where nobody signs in.</summary>
    public const string ThisComputer = "this computer";

    private const int MostUndo = 200;

    private readonly SemaphoreSlim _door = new(1, 1);
    private readonly Lock _seen = new();
    private readonly List<UndoStep> _undo = [];
    private readonly List<UndoStep> _redo = [];
    private JobRunners.SharedRunner? _shared;
    private string _entered = "";
    private CancellationTokenSource _light = new();
    private Task _settled = Task.CompletedTask;
    private SessionView? _view;
    private Dictionary<string, IReadOnlyList<string>> _offers = [];
    private IReadOnlyList<(LibraryFile File, YearSummary Year)> _years = [];
    private bool _left;

    /// <summary>Something to show has changed; may come from any thread.</summary>
    public event Action? Changed;

    /// <summary>A stage starts or ends; comes from any thread.</summary>
    public event Action<StageProgress>? Told;

    /// <summary>What to show now; null before a job is open.</summary>
    public SessionView? View
    {
        get
        {
            lock (_seen)
            {
                return _view;
            }
        }
    }

    /// <summary>Who edits in this window.</summary>
    public string By { get; set; } = ThisComputer;

    /// <inheritdoc/>
    public JobDocument Document => Open.Document;

    /// <inheritdoc/>
    public EqList<Fault> Faults => Open.Faults;

    /// <inheritdoc/>
    public EqList<DefaultUsed> Defaults => Open.Defaults;

    /// <inheritdoc/>
    public UnitSystem Units => Open.Units;

    /// <inheritdoc/>
    public bool IsLocked => Open.Job.IsLocked;

    private SessionView Open => View ?? throw new InvalidOperationException("No job is open.");

    /// <summary>Done when the answers belong to the job as it is.</summary>
    public Task Settled
    {
        get
        {
            lock (_seen)
            {
                return _settled;
            }
        }
    }

    /// <summary>Opens a job, or the same one again.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="cancel">Cancels.</param>
    /// <returns>False when there is none such.</returns>
    public async Task<bool> OpenAsync(string id, CancellationToken cancel = default)
    {
        if (View?.Job.Id == id)
        {
            return true;
        }

        if (await store.FindAsync(id, cancel) is not { } job)
        {
            return false;
        }

        _offers = await weather.OffersAsync(cancel);
        _years = await weather.YearsAsync(cancel);
        _undo.Clear();
        _redo.Clear();
        lock (_seen)
        {
            _view = new SessionView(job, JobDocument.Read(job.Text), [], [], null, true, "", null, "", "");
        }

        Enter(id);
        bell.Listen(this, id, (saved, what) => _ = HearAsync(saved, what));
        Answer();
        return true;
    }

    /// <inheritdoc/>
    public IReadOnlyList<Offer> Offers(string pointer) =>
        pointer == WeatherShelf.FilePointer ? WeatherShelf.Told(_years, Document, Units) : [.. (_offers.GetValueOrDefault(pointer) ?? []).Select(n => new Offer(n))];

    Task IJobDesk.EditAsync(IReadOnlyList<Edit> edits, string what) => EditAsync(edits, what);

    /// <summary>Saves edits of fields and answers them.</summary>
    /// <param name="edits">The edits.</param>
    /// <param name="what">What they are, in words.</param>
    /// <returns>True when they are on the disk.</returns>
    public Task<bool> EditAsync(IReadOnlyList<Edit> edits, string what) => InTurn(view => SaveAsync(view, edits, what, step =>
    {
        _redo.Clear();
        Push(_undo, step);
    }));

    /// <summary>Takes the last step of this window back.</summary>
    public Task<bool> UndoAsync() => StepAsync(_undo, _redo, "undo");

    /// <summary>Does the step taken back last again.</summary>
    public Task<bool> RedoAsync() => StepAsync(_redo, _undo, "redo");

    /// <summary>Settles two edits of one field.</summary>
    /// <param name="useOurs">True to lay ours over the other's, which stays in the history.</param>
    public Task<bool> SettleAsync(bool useOurs) => InTurn(async view =>
    {
        EditClash? clash = view.Clash;
        Show(v => v with { Clash = null });
        return clash is not null && (!useOurs || await SaveAsync(view with { Clash = null }, clash.Ours, clash.What, step => Push(_undo, step)));
    });

    /// <summary>Sets how far the job has come.</summary>
    /// <param name="status">The status.</param>
    /// <param name="known">What was known of the job, to be noted beside its version; null where nothing was open.</param>
    /// <returns>False when the job is no longer the one that was looked at.</returns>
    public Task<bool> SetStatusAsync(JobStatus status, KnownBefore? known = null) => InTurn(async view =>
    {
        if (await store.SetStatusAsync(view.Job.Id, status, known) is not { } job)
        {
            Show(v => v with { Notice = "The job was changed meanwhile, so its status was not set. Look at it again." });
            return false;
        }

        Show(v => v with { Job = job });
        bell.Ring(this, job, "the status");
        return true;
    });

    /// <summary>Takes the job back to an earlier version.</summary>
    /// <param name="version">The version.</param>
    public Task<bool> RestoreAsync(int version) => InTurn(async view =>
        Taken(await store.RestoreAsync(view.Job.Id, view.Job.Version, version, By), [], FormattableString.Invariant($"back to version {version}"), () =>
        {
            _undo.Clear();
            _redo.Clear();
        }));

    /// <summary>The notice is read.</summary>
    public void Heard() => Show(v => v with { Notice = "" });

    /// <inheritdoc/>
    public void Dispose()
    {
        if (_left)
        {
            return;
        }

        _left = true;
        bell.Leave(this);
        lock (_seen)
        {
            Leave();
        }

        _light.Cancel();
        _light.Dispose();
    }

    /// <summary>Evaluates a job on what the server stands on.</summary>
    /// <param name="loaded">The job.</param>
    /// <param name="cancel">Cancels.</param>
    public Evaluation Evaluate(LoadedJob loaded, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(loaded);
        return new Evaluation(loaded.Job, weather.GroundOf(loaded.Weather), Enter("").Runner, cancel);
    }

    private Task<bool> StepAsync(List<UndoStep> from, List<UndoStep> to, string word) => InTurn(async view =>
    {
        if (from.Count == 0)
        {
            return false;
        }

        UndoStep step = from[^1];
        return await SaveAsync(view, step.Back, $"{word} {step.What}", back =>
        {
            from.RemoveAt(from.Count - 1);
            Push(to, back with { What = step.What });
        });
    });

    private async Task<bool> InTurn(Func<SessionView, Task<bool>> act)
    {
        await _door.WaitAsync();
        try
        {
            return View is { } view && await act(view);
        }
        finally
        {
            _door.Release();
        }
    }

    private async Task<bool> SaveAsync(SessionView view, IReadOnlyList<Edit> edits, string what, Action<UndoStep> done)
    {
        SaveAnswer answer = await store.SaveAsync(view.Job.Id, view.Job.Version, edits, what, By);
        return Taken(answer, edits, what, () => done(UndoStep.Of(view.Document, edits, JobDocument.Read(((SaveAnswer.Saved)answer).Job.Text), what)));
    }

    private bool Taken(SaveAnswer answer, IReadOnlyList<Edit> ours, string what, Action done)
    {
        switch (answer)
        {
            case SaveAnswer.Saved saved:
                done();
                Take(saved.Job, saved.Others.Count == 0 ? "" : $"Another window saved meanwhile: {string.Join("; ", saved.Others.Select(o => o.What))}.");
                bell.Ring(this, saved.Job, what);
                return true;
            case SaveAnswer.Clash clash:
                Take(clash.Job, "");
                Show(v => v with { Clash = new EditClash(what, ours, string.Join("; ", clash.Others.Select(o => o.What))) });
                return false;
            case SaveAnswer.Locked locked:
                Take(locked.Job, "The job is sold, so its document is locked. Nothing was changed.");
                return false;
            case SaveAnswer.Misfit misfit:
                Take(misfit.Job, $"That could not be put into the job: {misfit.Why}");
                return false;
            default:
                Show(v => v with { Notice = "The job is no longer there, or has no such version." });
                return false;
        }
    }

    private void Take(StoredJob job, string notice)
    {
        Show(v => v with { Job = job, Document = job.Text == v.Document.Text ? v.Document : JobDocument.Read(job.Text), Notice = notice });
        if (View?.Light?.Version != job.Version)
        {
            Answer();
        }
    }

    // An edit of ours may be on its way: the store lays it on the other's or tells of a clash.
    private async Task HearAsync(StoredJob saved, string what)
    {
        await _door.WaitAsync();
        try
        {
            if (!_left && View is { } view && (saved.Version > view.Job.Version || saved.Status != view.Job.Status))
            {
                Take(saved, $"Another window changed {what}.");
            }
        }
        finally
        {
            _door.Release();
        }
    }

    private void Answer()
    {
        SessionView view = View!;
        CancellationTokenSource mine = new();
        CancellationTokenSource before = Interlocked.Exchange(ref _light, mine);
        before.Cancel();
        before.Dispose();
        CancellationToken cancel = mine.Token;
        lock (_seen)
        {
            _settled = Task.Run(() => ComputeAsync(view.Job, view.Document, cancel), CancellationToken.None);
        }

        Show(v => v with { IsWorking = true });
    }

    private async Task ComputeAsync(StoredJob job, JobDocument document, CancellationToken cancel)
    {
        try
        {
            (WeatherYear? year, EqList<Fault> weatherFaults) = await weather.FindAsync(document, cancel);
            EqList<Fault> faults = LoadedJob.Read(document, year, weatherFaults, out EqList<DefaultUsed> defaults, out LoadedJob? loaded);
            // Where nothing differs the old lists stay: what is painted from them need not be painted again.
            ShowOf(job.Version, cancel, v => v with { Faults = faults.Equals(v.Faults) ? v.Faults : faults, Defaults = defaults.Equals(v.Defaults) ? v.Defaults : defaults, IsWorking = loaded is not null });
            if (loaded is not null)
            {
                LightResults light = await quick.RunAsync(() => LightResults.Of(job.Version, Evaluate(loaded, cancel), loaded), cancel);
                ShowOf(job.Version, cancel, v => light.ProgramFaults.Count == 0 ? v with { Light = light, IsWorking = false } : v with { Light = v.Light ?? light, Faults = light.ProgramFaults, IsWorking = false });
            }
        }
        catch (OperationCanceledException) when (cancel.IsCancellationRequested)
        {
            // A newer edit answers.
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            ShowOf(job.Version, cancel, v => v with { IsWorking = false, Notice = $"This is a mistake of the program, not of the job: {e.GetType().Name}: {e.Message} The last answers stay." });
        }
    }

    private void ShowOf(int version, CancellationToken cancel, Func<SessionView, SessionView> change)
    {
        if (!cancel.IsCancellationRequested)
        {
            Show(v => v.Job.Version == version ? change(v) : v);
        }
    }

    private void Show(Func<SessionView, SessionView> change)
    {
        lock (_seen)
        {
            if (_view is null)
            {
                return;
            }

            _view = change(_view) with { Undo = _undo.Count > 0 ? _undo[^1].What : "", Redo = _redo.Count > 0 ? _redo[^1].What : "" };
        }

        Changed?.Invoke();
    }

    private static void Push(List<UndoStep> steps, UndoStep step)
    {
        steps.Add(step);
        if (steps.Count > MostUndo)
        {
            steps.RemoveAt(0);
        }
    }

    // The memory of the job that is open; where none is, as when two others are compared, one of this window alone.
    private JobRunners.SharedRunner Enter(string job)
    {
        lock (_seen)
        {
            if (_shared is null || (job.Length > 0 && _entered != job))
            {
                Leave();
                _entered = job;
                _shared = job.Length > 0 ? runners.Enter(job) : new JobRunners.SharedRunner();
                _shared.Told += Tell;
            }

            return _shared;
        }
    }

    private void Leave()
    {
        if (_shared is not null)
        {
            _shared.Told -= Tell;
            _shared = null;
            if (_entered.Length > 0)
            {
                runners.Leave(_entered);
            }
        }
    }

    private void Tell(StageProgress stage) => Told?.Invoke(stage);
}
