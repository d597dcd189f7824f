using System.Collections.Concurrent;

namespace Glazewright.Web.Jobs;

/// <summary>The last result of a kind for each of a few jobs, until it is fetched. It can be made again at any time, so nothing is lost with it.</summary>
/// <typeparam name="T">The result.</typeparam>
public class JobShelf<T>
    where T : class
{
    private const int Most = 6;
    private readonly ConcurrentDictionary<string, T> _made = new();
    private readonly ConcurrentQueue<string> _order = new();

    /// <summary>Puts a job's result here, in the place of its last one.</summary>
    /// <param name="job">The job's id.</param>
    /// <param name="made">The result.</param>
    public void Put(string job, T made)
    {
        if (!_made.ContainsKey(job))
        {
            _order.Enqueue(job);
        }

        _made[job] = made;
        while (_made.Count > Most && _order.TryDequeue(out string? oldest))
        {
            _made.TryRemove(oldest, out _);
        }
    }

    /// <summary>A job's result, or null.</summary>
    /// <param name="job">The job's id.</param>
    public T? Find(string job) => _made.GetValueOrDefault(job);
}
