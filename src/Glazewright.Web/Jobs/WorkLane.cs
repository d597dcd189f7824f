using System.Collections.Concurrent;
using System.Runtime.InteropServices;

namespace Glazewright.Web.Jobs;

/// <summary>
/// Threads of its own for computing, in the order asked: those that answer pages never wait behind a computation, and what is no longer wanted when its turn comes is not begun.
/// Loops inside the work that run side by side stay on these threads.
/// </summary>
public class WorkLane : TaskScheduler, IDisposable
{
    // What is computed behind gets about a tenth of a processor that answers want too.
    private const int BehindNice = 10;

    private readonly BlockingCollection<Task> _waiting = [];
    private readonly ThreadLocal<bool> _isOurs = new();

    /// <summary>Starts the threads.</summary>
    /// <param name="name">Their name.</param>
    /// <param name="threads">How many, at least 1.</param>
    /// <param name="isBehind">Whether they give way to others of this machine.</param>
    protected WorkLane(string name, int threads, bool isBehind)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(threads, 1);
        MaximumConcurrencyLevel = threads;
        for (int i = 0; i < threads; i++)
        {
            new Thread(() => Work(isBehind)) { IsBackground = true, Name = name, Priority = isBehind ? ThreadPriority.BelowNormal : ThreadPriority.Normal }.Start();
        }
    }

    /// <inheritdoc/>
    public override int MaximumConcurrencyLevel { get; }

    /// <summary>Does work in its turn.</summary>
    /// <typeparam name="T">Its result.</typeparam>
    /// <param name="work">The work.</param>
    /// <param name="cancel">Cancels it before its turn.</param>
    public Task<T> RunAsync<T>(Func<T> work, CancellationToken cancel) => Task.Factory.StartNew(work, cancel, TaskCreationOptions.RunContinuationsAsynchronously, this);

    /// <inheritdoc/>
    protected override IEnumerable<Task> GetScheduledTasks() => [.. _waiting];

    /// <inheritdoc/>
    protected override void QueueTask(Task task) => _waiting.Add(task);

    /// <inheritdoc/>
    protected override bool TryExecuteTaskInline(Task task, bool taskWasPreviouslyQueued) => _isOurs.Value && TryExecuteTask(task);

    /// <inheritdoc/>
    public void Dispose()
    {
        Dispose(disposing: true);
        GC.SuppressFinalize(this);
    }

    /// <summary>Ends the threads once what waits is done.</summary>
    /// <param name="disposing">True.</param>
    protected virtual void Dispose(bool disposing) => _waiting.CompleteAdding();

    private void Work(bool isBehind)
    {
        _isOurs.Value = true;
        if (isBehind && OperatingSystem.IsLinux())
        {
            // The runtime's own priorities do nothing on Linux. Zero is the calling thread; where it is not allowed nothing changes.
            _ = Native.SetPriority(0, 0, BehindNice);
        }

        foreach (Task task in _waiting.GetConsumingEnumerable())
        {
            TryExecuteTask(task);
        }
    }

    private static class Native
    {
        [DllImport("libc", EntryPoint = "setpriority")]
        [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
        public static extern int SetPriority(int which, int who, int nice);
    }
}

/// <summary>Where quick answers are computed: as many at a time as there are processors.</summary>
public sealed class QuickLane() : WorkLane("quick answers", Environment.ProcessorCount, isBehind: false);

/// <summary>Where whole jobs and papers are computed: only so much at a time for the whole server, and giving way to all else.</summary>
public sealed class BehindLane() : WorkLane("behind", Math.Max(1, Environment.ProcessorCount / 2), isBehind: true);
