namespace Glazewright.Design.Pipeline;

/// <summary>Keeps work to a number of threads, with every parallel loop inside it: loops take the scheduler of whoever runs them.</summary>
public static class ThreadLimit
{
    /// <summary>Runs work and waits for it.</summary>
    /// <typeparam name="T">Its result.</typeparam>
    /// <param name="threads">Most threads that work at a time, at least 1.</param>
    /// <param name="work">The work.</param>
    /// <returns>What the work gives.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Less than one thread.</exception>
    public static T Run<T>(int threads, Func<T> work) =>
        Task.Factory.StartNew(work, CancellationToken.None, TaskCreationOptions.None, Of(threads)).GetAwaiter().GetResult();

    /// <summary>A scheduler that runs at most so many tasks at a time, in the order they came.</summary>
    /// <param name="threads">How many, at least 1.</param>
    internal static TaskScheduler Of(int threads)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(threads, 1);
        return new ConcurrentExclusiveSchedulerPair(TaskScheduler.Default, threads).ConcurrentScheduler;
    }
}
