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
    private readonly Lock _seen = new();
    private readonly OneAtATime _piece = new();
    private FoundShapes? _found;

    /// <summary>Something to show has changed; may come from any thread.</summary>
    public event Action? Changed
    {
        add => _piece.Moved += value;
        remove => _piece.Moved -= value;
    }

    /// <summary>How far it has come.</summary>
    public WorkView View => _piece.View;

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

        string job = session.View!.Job.Id;
        _piece.Begin(light.Version, papers: false, async turn =>
        {
            FoundShapes found = await lane.RunAsync(() => Search(job, light, drawn, input, turn), turn.Cancel);
            turn.IfNewest(() =>
            {
                lock (_seen)
                {
                    _found = found;
                }
            });
        });
        return [];
    }

    /// <summary>Stops what is under way.</summary>
    public void Stop() => _piece.Stop();

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

    private FoundShapes Search(string job, LightResults light, House house, ShapeInput input, OneAtATime.Turn turn)
    {
        CancellationToken cancel = turn.Cancel;
        turn.Say("Frames as drawn");
        Evaluation evaluation = session.Evaluate(light.Loaded, cancel);
        EqList<FrameResult> frames = light.Loaded.Job.Houses.Select(h => evaluation.Frame(h.Id).Value).ToEqList();
        ShapeResult result = ShapeStage.Run(
            input, light.Loaded.Weather, ShapeRechecks.ByLightMap(light.Loaded.Job, house.Id, frames, light.Loaded.Weather), Math.Max(1, Environment.ProcessorCount / 2), turn.Say, cancel);
        return new FoundShapes(job, light.Version, house, input, result);
    }
}
