using System.Collections.Concurrent;

namespace Glazewright.Design.Pipeline;

/// <summary>
/// Runs stages once for each key and keeps what they gave: bounded, one computation at a time for a key, cancellable. Owned by the
/// composition root; what is computed never depends on what was kept.
/// </summary>
public sealed class StageRunner
{
    private readonly ConcurrentDictionary<StageHash, Lazy<object>> _kept = new();
    private readonly ConcurrentQueue<StageHash> _order = new();
    private readonly ConcurrentDictionary<string, int> _runs = new();
    private readonly ConcurrentDictionary<string, long> _ticks = new();
    private readonly int _capacity;
    private readonly IProgress<StageProgress>? _progress;

    /// <summary>A runner with an empty memory.</summary>
    /// <param name="capacity">Most results kept, at least 1; the oldest go first.</param>
    /// <param name="progress">Told when a stage starts and ends; may be null.</param>
    public StageRunner(int capacity = 512, IProgress<StageProgress>? progress = null)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(capacity, 1);
        _capacity = capacity;
        _progress = progress;
    }

    /// <summary>How often each stage was really computed.</summary>
    public IReadOnlyDictionary<string, int> Runs => _runs;

    /// <summary>Time spent in each stage, s: for progress and benchmarks, never for results.</summary>
    public IReadOnlyDictionary<string, double> Seconds =>
        _ticks.ToDictionary(t => t.Key, t => t.Value / (double)System.Diagnostics.Stopwatch.Frequency);

    /// <summary>The result of a stage, computed unless it is kept.</summary>
    /// <typeparam name="TIn">The stage's own input record.</typeparam>
    /// <typeparam name="TOut">Its result record.</typeparam>
    /// <param name="stage">Stage name.</param>
    /// <param name="version">Stage version.</param>
    /// <param name="scope">House id, or empty.</param>
    /// <param name="input">Its own input.</param>
    /// <param name="earlier">Hashes of the earlier outputs that <paramref name="compute"/> closes over.</param>
    /// <param name="compute">The stage.</param>
    /// <param name="cancel">Cancels before the stage starts, and inside it where it looks.</param>
    /// <returns>The result with its hash.</returns>
    public Keyed<TOut> Run<TIn, TOut>(
        string stage,
        int version,
        string scope,
        TIn input,
        StageHash[] earlier,
        Func<TIn, CancellationToken, TOut> compute,
        CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        StageHash key = Canonical.Key(stage, version, scope, Canonical.Hash(input), earlier);
        Lazy<object> mine = new(() =>
        {
            _order.Enqueue(key);
            _runs.AddOrUpdate(stage, 1, (_, n) => n + 1);
            _progress?.Report(new StageProgress(stage, scope, Ended: false));
            long start = System.Diagnostics.Stopwatch.GetTimestamp();
            TOut value = compute(input, cancel);
            Keyed<TOut> keyed = new(value, Canonical.Hash(value));
            long spent = System.Diagnostics.Stopwatch.GetTimestamp() - start;
            _ticks.AddOrUpdate(stage, spent, (_, t) => t + spent);
            _progress?.Report(new StageProgress(stage, scope, Ended: true));
            return keyed;
        });
        while (true)
        {
            Lazy<object> entry = _kept.GetOrAdd(key, mine);
            try
            {
                Keyed<TOut> result = (Keyed<TOut>)entry.Value;
                Trim();
                return result;
            }
            catch (Exception e)
            {
                // A failed or cancelled computation is not a result: the next caller starts anew.
                _kept.TryRemove(new KeyValuePair<StageHash, Lazy<object>>(key, entry));

                // Another caller began it and was cancelled in it: that caller's wish is not this one's.
                if (e is OperationCanceledException && !ReferenceEquals(entry, mine) && !cancel.IsCancellationRequested)
                {
                    continue;
                }

                throw;
            }
        }
    }

    private void Trim()
    {
        while (_kept.Count > _capacity && _order.TryDequeue(out StageHash oldest))
        {
            _kept.TryRemove(oldest, out _);
        }
    }
}

/// <summary>A stage starts or ends.</summary>
/// <param name="Stage">Stage name.</param>
/// <param name="Scope">House id, or empty.</param>
/// <param name="Ended">False at the start, true at the end.</param>
public sealed record StageProgress(string Stage, string Scope, bool Ended);
