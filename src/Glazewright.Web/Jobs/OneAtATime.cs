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

/// <summary>Work behind a window, one piece at a time: the newest that was asked for wins, and it can be stopped.</summary>
public sealed class OneAtATime
{
    private static readonly WorkView s_idle = new("", "", false);
    private readonly Lock _seen = new();
    private CancellationTokenSource? _running;
    private int _version;
    private WorkView _view = s_idle;

    /// <summary>A piece begins, ends or fails; may come from any thread.</summary>
    public event Action? Changed;

    /// <summary>The words of what is being done have changed, and nothing else; may come from any thread.</summary>
    public event Action? Told;

    /// <summary>Either of these; may come from any thread.</summary>
    public event Action? Moved
    {
        add
        {
            Changed += value;
            Told += value;
        }

        remove
        {
            Changed -= value;
            Told -= value;
        }
    }

    /// <summary>How far it has come.</summary>
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

    /// <summary>Version of the job that the last piece was begun for.</summary>
    public int Version
    {
        get
        {
            lock (_seen)
            {
                return _version;
            }
        }
    }

    /// <summary>Begins a piece; one that was under way is cancelled.</summary>
    /// <param name="version">Version of the job it is for.</param>
    /// <param name="papers">Whether it makes the papers.</param>
    /// <param name="work">The piece.</param>
    public void Begin(int version, bool papers, Func<Turn, Task> work)
    {
        Turn mine = new(this, new CancellationTokenSource(), papers);
        lock (_seen)
        {
            _running?.Cancel();
            _running = mine.Source;
            _version = version;
            _view = new WorkView("Waiting for other work", "", papers);
        }

        Changed?.Invoke();
        _ = Task.Run(() => RunAsync(mine, work));
    }

    /// <summary>Stops what is under way.</summary>
    public void Stop()
    {
        lock (_seen)
        {
            _running?.Cancel();
            _running = null;
            _view = s_idle;
        }

        Changed?.Invoke();
    }

    /// <summary>Whether what is under way belongs to another version.</summary>
    /// <param name="version">The job's version now; null when none is open.</param>
    public bool IsStale(int? version)
    {
        lock (_seen)
        {
            return _view.IsRunning && version != _version;
        }
    }

    /// <summary>Cancels what is under way, and tells nobody: the window is closed.</summary>
    public void Leave()
    {
        lock (_seen)
        {
            _running?.Cancel();
        }
    }

    private async Task RunAsync(Turn mine, Func<Turn, Task> work)
    {
        string failure = "";
        try
        {
            await work(mine);
        }
        catch (OperationCanceledException) when (mine.Cancel.IsCancellationRequested)
        {
            // Stopped, or a newer piece was asked for.
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            failure = $"This is a mistake of the program, not of the job: {e.GetType().Name}: {e.Message}";
        }
        finally
        {
            lock (_seen)
            {
                if (_running == mine.Source)
                {
                    _running = null;
                    _view = s_idle with { Failure = failure };
                }
            }

            Changed?.Invoke();
        }
    }

    /// <summary>What a piece of work knows of its place: whether it is still the newest.</summary>
    /// <param name="of">Where it runs.</param>
    /// <param name="source">Cancels it.</param>
    /// <param name="papers">Whether it makes the papers.</param>
    public sealed class Turn(OneAtATime of, CancellationTokenSource source, bool papers)
    {
        internal CancellationTokenSource Source { get; } = source;

        /// <summary>Cancels the piece.</summary>
        public CancellationToken Cancel => Source.Token;

        /// <summary>Says what is being done.</summary>
        /// <param name="words">In words.</param>
        public void Say(string words)
        {
            if (IfNewest(() => of._view = new WorkView(words, "", papers)))
            {
                of.Told?.Invoke();
            }
        }

        /// <summary>Does something unless a newer piece was asked for, or this one stopped.</summary>
        /// <param name="act">Short: others wait for it.</param>
        /// <returns>Whether it was done.</returns>
        public bool IfNewest(Action act)
        {
            lock (of._seen)
            {
                if (of._running != Source)
                {
                    return false;
                }

                act();
                return true;
            }
        }
    }
}
