using System.Collections.Concurrent;
using Glazewright.Store.Jobs;

namespace Glazewright.Web.Jobs;

/// <summary>Tells the other windows of this server that a job was saved.</summary>
public sealed class JobBell
{
    private readonly ConcurrentDictionary<object, (string Job, Action<StoredJob, string> Hear)> _ears = new();

    /// <summary>Listens to a job.</summary>
    /// <param name="who">The listener, itself.</param>
    /// <param name="job">The job's id.</param>
    /// <param name="hear">Told the job as saved, and what was edited.</param>
    public void Listen(object who, string job, Action<StoredJob, string> hear) => _ears[who] = (job, hear);

    /// <summary>Listens no more.</summary>
    /// <param name="who">The listener.</param>
    public void Leave(object who) => _ears.TryRemove(who, out _);

    /// <summary>Tells everyone else on the job, and does not wait for them: they may be telling us.</summary>
    /// <param name="by">Who saved.</param>
    /// <param name="saved">The job as saved.</param>
    /// <param name="what">What was edited.</param>
    public void Ring(object by, StoredJob saved, string what)
    {
        ArgumentNullException.ThrowIfNull(saved);
        foreach ((object who, (string job, Action<StoredJob, string> hear)) in _ears)
        {
            if (job == saved.Id && !ReferenceEquals(who, by))
            {
                hear(saved, what);
            }
        }
    }
}
