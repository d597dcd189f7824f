using Glazewright.Design.Pipeline;

namespace Glazewright.Web.Jobs;

/// <summary>One memory of stages for each job that is open, for all windows on it: what one window computed the others need not. It goes with the last window.</summary>
public sealed class JobRunners
{
    // Room for one evaluation of sixteen houses, or of a small job in several states: a memory that one evaluation overfills makes its own stages again.
    private const int MostKept = 320;

    private readonly Lock _one = new();
    private readonly Dictionary<string, SharedRunner> _open = [];

    /// <summary>The memory of a job; to be left again.</summary>
    /// <param name="job">The job's id.</param>
    public SharedRunner Enter(string job)
    {
        lock (_one)
        {
            if (!_open.TryGetValue(job, out SharedRunner? shared))
            {
                _open[job] = shared = new SharedRunner();
            }

            shared.Windows++;
            return shared;
        }
    }

    /// <summary>A window is closed, or opens another job.</summary>
    /// <param name="job">The job's id.</param>
    public void Leave(string job)
    {
        lock (_one)
        {
            if (_open.TryGetValue(job, out SharedRunner? shared) && --shared.Windows == 0)
            {
                _open.Remove(job);
            }
        }
    }

    /// <summary>A memory of stages, and who is told what it computes.</summary>
    public sealed class SharedRunner : IProgress<StageProgress>
    {
        /// <summary>An empty memory.</summary>
        public SharedRunner() => Runner = new StageRunner(MostKept, this);

        /// <summary>A stage starts or ends; comes from any thread.</summary>
        public event Action<StageProgress>? Told;

        /// <summary>The memory.</summary>
        public StageRunner Runner { get; }

        internal int Windows { get; set; }

        /// <inheritdoc/>
        public void Report(StageProgress value) => Told?.Invoke(value);
    }
}
