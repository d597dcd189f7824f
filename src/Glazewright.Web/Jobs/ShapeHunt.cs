using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Frame;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Shape;

namespace Glazewright.Web.Jobs;

/// <summary>Shapes that were found for a house.</summary>
/// <param name="Job">The job's id.</param>
/// <param name="Version">Its version.</param>
/// <param name="House">The house as it was.</param>
/// <param name="Input">What the finder read.</param>
/// <param name="Result">What it found.</param>
public sealed record FoundShapes(string Job, int Version, House House, ShapeInput Input, ShapeResult Result)
{
    /// <summary>Whether a shape found then can still be put into a house: it must be as wide as it was.</summary>
    /// <param name="house">The house as it is.</param>
    public bool Fits(House house)
    {
        ArgumentNullException.ThrowIfNull(house);
        return house.Id == House.Id && Math.Abs(house.WidthM - House.WidthM) < 1e-6;
    }
}

/// <summary>The shape finder behind a window: one search at a time, with progress, and it can be stopped. An edit stops it.</summary>
/// <param name="session">The window's job.</param>
/// <param name="lane">Where heavy work is done.</param>
public sealed class ShapeHunt(JobSession session, BehindLane lane) : IDisposable
{
    private static readonly WorkView s_idle = new("", "", false);
    private readonly Lock _seen = new();
    private CancellationTokenSource? _running;
    private int _runningVersion;
    private WorkView _view = s_idle;
    private FoundShapes? _found;

    /// <summary>Something to show has changed; may come from any thread.</summary>
    public event Action? Changed;

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

    /// <summary>What was found last for a house, or null.</summary>
    /// <param name="job">The job's id.</param>
    /// <param name="house">The house's id.</param>
    public FoundShapes? Find(string job, string house)
    {
        lock (_seen)
        {
            return _found is { } found && found.Job == job && found.House.Id == house ? found : null;
        }
    }

    /// <summary>Looks for shapes.</summary>
    /// <param name="light">The quick answers to start from.</param>
    /// <param name="house">Place of the house in the job, from 0.</param>
    /// <returns>What keeps the finder from an answer; none when it has begun.</returns>
    public IReadOnlyList<Fault> Begin(LightResults light, int house)
    {
        ArgumentNullException.ThrowIfNull(light);
        House drawn = light.Loaded.Job.Houses[house];
        ShapeInput input = ShapeInput.From(light.Loaded.Job, drawn.Id);
        if (ShapeStage.Faults(input, light.Loaded.Weather) is { Count: > 0 } faults)
        {
            return faults;
        }

        CancellationTokenSource mine = new();
        lock (_seen)
        {
            _running?.Cancel();
            _running = mine;
            _runningVersion = light.Version;
            _view = new WorkView("Waiting for other work", "", false);
        }

        Changed?.Invoke();
        string job = session.View!.Job.Id;
        _ = Task.Run(() => RunAsync(job, light, drawn, input, mine));
        return [];
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
    public void Dispose() => _running?.Cancel();

    private async Task RunAsync(string job, LightResults light, House house, ShapeInput input, CancellationTokenSource mine)
    {
        CancellationToken cancel = mine.Token;
        string failure = "";
        try
        {
            FoundShapes found = await lane.RunAsync(() => Search(job, light, house, input, mine), cancel);
            lock (_seen)
            {
                _found = _running == mine ? found : _found;
            }
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

    private FoundShapes Search(string job, LightResults light, House house, ShapeInput input, CancellationTokenSource mine)
    {
        CancellationToken cancel = mine.Token;
        Say(mine, "Frames as drawn");
        Evaluation evaluation = session.Evaluate(light.Loaded, cancel);
        EqList<FrameResult> frames = light.Loaded.Job.Houses.Select(h => evaluation.Frame(h.Id).Value).ToEqList();
        ShapeResult result = ShapeStage.Run(
            input, light.Loaded.Weather, ShapeRechecks.ByLightMap(light.Loaded.Job, house.Id, frames, light.Loaded.Weather), Math.Max(1, Environment.ProcessorCount / 2), words => Say(mine, words), cancel);
        return new FoundShapes(job, light.Version, house, input, result);
    }

    private void Say(CancellationTokenSource mine, string words)
    {
        lock (_seen)
        {
            if (_running != mine)
            {
                return;
            }

            _view = new WorkView(words, "", false);
        }

        Changed?.Invoke();
    }
}
