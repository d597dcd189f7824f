namespace Glazewright.Store.Jobs;

/// <summary>How far a job has come. From sold on its document is locked.</summary>
public enum JobStatus
{
    /// <summary>Being designed.</summary>
    Draft,

    /// <summary>A quote is out.</summary>
    Quoted,

    /// <summary>Sold: the document is locked.</summary>
    Sold,

    /// <summary>The permit is there.</summary>
    Permitted,

    /// <summary>Built.</summary>
    Built,
}

/// <summary>A job as the store has it.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Name, as its document says.</param>
/// <param name="Status">How far it has come.</param>
/// <param name="Version">Number of its last edit, 1 when new.</param>
/// <param name="Text">The document as typed.</param>
/// <param name="ChangedUtc">When it was last changed.</param>
public sealed record StoredJob(string Id, string Name, JobStatus Status, int Version, string Text, DateTimeOffset ChangedUtc)
{
    /// <summary>Whether its document may no longer be changed.</summary>
    public bool IsLocked => Status >= JobStatus.Sold;
}

/// <summary>One saved edit of a job.</summary>
/// <param name="Version">Its number.</param>
/// <param name="What">In words.</param>
/// <param name="By">Who made it.</param>
/// <param name="AtUtc">When.</param>
public sealed record SavedEdit(int Version, string What, string By, DateTimeOffset AtUtc);

/// <summary>A version that was marked, or of which something was noted.</summary>
/// <param name="Version">The version.</param>
/// <param name="Mark">Its mark, as on the title block; empty where only a note stands.</param>
/// <param name="Note">Why, and what was known when its status was set.</param>
/// <param name="AtUtc">When.</param>
public sealed record Revision(int Version, string Mark, string Note, DateTimeOffset AtUtc);

/// <summary>What was known when a status was set.</summary>
/// <param name="OnVersion">The version that was looked at.</param>
/// <param name="Note">What was known, in words.</param>
public sealed record KnownBefore(int OnVersion, string Note);

/// <summary>What became of an edit. A closed case.</summary>
public abstract record SaveAnswer
{
    private SaveAnswer()
    {
    }

    /// <summary>It is on the disk.</summary>
    /// <param name="Job">The job now, others' edits in it.</param>
    /// <param name="Others">Edits that others saved since the version it was made on; all of other fields.</param>
    public sealed record Saved(StoredJob Job, IReadOnlyList<SavedEdit> Others) : SaveAnswer;

    /// <summary>Another saved an edit of the same field since: nothing is changed, the writer decides.</summary>
    /// <param name="Job">The job now, with the other's value.</param>
    /// <param name="Others">The edits that touch the same fields.</param>
    public sealed record Clash(StoredJob Job, IReadOnlyList<SavedEdit> Others) : SaveAnswer;

    /// <summary>The job is sold: its document is locked.</summary>
    /// <param name="Job">The job.</param>
    public sealed record Locked(StoredJob Job) : SaveAnswer;

    /// <summary>The edit does not fit the document.</summary>
    /// <param name="Job">The job.</param>
    /// <param name="Why">Why, and what would be right.</param>
    public sealed record Misfit(StoredJob Job, string Why) : SaveAnswer;

    /// <summary>There is no such job, or no such version of it.</summary>
    public sealed record Gone : SaveAnswer;
}
