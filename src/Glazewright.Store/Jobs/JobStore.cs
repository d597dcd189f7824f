using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Glazewright.Design.Document;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace Glazewright.Store.Jobs;

/// <summary>
/// Jobs with every edit ever saved. An edit that was answered with <see cref="SaveAnswer.Saved"/> is on the disk; edits made on an older version are laid on the newest
/// if they touch other fields, and refused with the other's value if not, so that none is lost.
/// </summary>
/// <param name="door">The store.</param>
/// <param name="clock">Tells the time of edits.</param>
public sealed class JobStore(StoreDoor door, TimeProvider clock)
{
    private const int MostTries = 40;
    private const int LongestWords = 2000;
    private const string WholeDocument = "";

    /// <summary>Puts a new job into the store.</summary>
    /// <param name="text">Its document.</param>
    /// <param name="by">Who made it.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<StoredJob> CreateAsync(string text, string by, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(text);
        await using StoreContext context = door.Context();
        long now = Now();
        JobRow row = new() { Id = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(8)), Name = NameOf(text), Status = nameof(JobStatus.Draft), Version = 1, Text = text, ChangedMs = now };
        context.Jobs.Add(row);
        context.Edits.Add(new EditRow { JobId = row.Id, Version = 1, What = "new", Pointers = WholeDocument, EditedBy = Plain(by), AtMs = now, Text = text });
        await context.SaveChangesAsync(cancel);
        return Of(row);
    }

    /// <summary>All jobs, the last changed first.</summary>
    /// <param name="cancel">Cancels.</param>
    public async Task<IReadOnlyList<StoredJob>> ListAsync(CancellationToken cancel = default)
    {
        await using StoreContext context = door.Context();
        JobRow[] rows = await context.Jobs.AsNoTracking().OrderByDescending(r => r.ChangedMs).ThenBy(r => r.Id).ToArrayAsync(cancel);
        return [.. rows.Select(Of)];
    }

    /// <summary>A job, or null.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<StoredJob?> FindAsync(string id, CancellationToken cancel = default)
    {
        await using StoreContext context = door.Context();
        return await context.Jobs.AsNoTracking().FirstOrDefaultAsync(r => r.Id == id, cancel) is { } row ? Of(row) : null;
    }

    /// <summary>Saves edits of fields.</summary>
    /// <param name="id">The job.</param>
    /// <param name="onVersion">The version the writer had before them.</param>
    /// <param name="edits">The edits, in order.</param>
    /// <param name="what">What they are, in words.</param>
    /// <param name="by">Who made them.</param>
    /// <param name="cancel">Cancels before anything is written.</param>
    public Task<SaveAnswer> SaveAsync(string id, int onVersion, IReadOnlyList<Edit> edits, string what, string by, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(edits);
        return Write(id, onVersion, [.. edits.Select(e => e.Pointer)], what, by, job =>
        {
            JobDocument document = JobDocument.Read(job.Text);
            return document.TryEdit(edits, out JobDocument edited, out Glazewright.Design.Contracts.Fault? fault) ? (edited.Text, "") : ("", $"{fault!.Wrong}. Right: {fault.Right}.");
        }, cancel);
    }

    /// <summary>Saves a whole document in place of the job's: an undo, a redo, a restored revision, a pasted job.</summary>
    /// <param name="id">The job.</param>
    /// <param name="onVersion">The version the writer had before.</param>
    /// <param name="text">The document.</param>
    /// <param name="what">What it is, in words.</param>
    /// <param name="by">Who does it.</param>
    /// <param name="cancel">Cancels before anything is written.</param>
    public Task<SaveAnswer> ReplaceAsync(string id, int onVersion, string text, string what, string by, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Write(id, onVersion, [WholeDocument], what, by, _ => (text, ""), cancel);
    }

    /// <summary>Takes a job back to an earlier version, as a new edit: what came after stays in its history.</summary>
    /// <param name="id">The job.</param>
    /// <param name="onVersion">The version the writer had before.</param>
    /// <param name="version">The version to go back to.</param>
    /// <param name="by">Who does it.</param>
    /// <param name="cancel">Cancels before anything is written.</param>
    public async Task<SaveAnswer> RestoreAsync(string id, int onVersion, int version, string by, CancellationToken cancel = default) =>
        await TextAtAsync(id, version, cancel) is { } text
            ? await ReplaceAsync(id, onVersion, text, string.Create(CultureInfo.InvariantCulture, $"back to version {version}"), by, cancel)
            : new SaveAnswer.Gone();

    /// <summary>The edits of a job, the newest first.</summary>
    /// <param name="id">The job.</param>
    /// <param name="most">How many at most.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<IReadOnlyList<SavedEdit>> HistoryAsync(string id, int most = 200, CancellationToken cancel = default)
    {
        await using StoreContext context = door.Context();
        var rows = await context.Edits.AsNoTracking().Where(r => r.JobId == id).OrderByDescending(r => r.Version).Take(most)
            .Select(r => new { r.Version, r.What, r.EditedBy, r.AtMs }).ToArrayAsync(cancel);
        return [.. rows.Select(r => new SavedEdit(r.Version, r.What, r.EditedBy, Time(r.AtMs)))];
    }

    /// <summary>A job's document as it was at a version, or null.</summary>
    /// <param name="id">The job.</param>
    /// <param name="version">The version.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<string?> TextAtAsync(string id, int version, CancellationToken cancel = default)
    {
        await using StoreContext context = door.Context();
        return await context.Edits.AsNoTracking().Where(r => r.JobId == id && r.Version == version).Select(r => r.Text).FirstOrDefaultAsync(cancel);
    }

    /// <summary>Marks the job's present version.</summary>
    /// <param name="id">The job.</param>
    /// <param name="mark">The mark, as on the title block.</param>
    /// <param name="note">Why.</param>
    /// <param name="cancel">Cancels.</param>
    /// <returns>The revision; null when there is no such job or this version bears a mark already.</returns>
    public async Task<Revision?> MarkAsync(string id, string mark, string note, CancellationToken cancel = default) =>
        await FindAsync(id, cancel) is { } job ? await MarkAsync(id, job.Version, mark, note, cancel) : null;

    /// <summary>Marks a version.</summary>
    /// <param name="id">The job.</param>
    /// <param name="version">The version.</param>
    /// <param name="mark">The mark, as on the title block.</param>
    /// <param name="note">Why.</param>
    /// <param name="cancel">Cancels.</param>
    /// <returns>The revision; null when there is no such version or it bears a mark already.</returns>
    public async Task<Revision?> MarkAsync(string id, int version, string mark, string note, CancellationToken cancel = default)
    {
        await using StoreContext context = door.Context();
        RevisionRow? row = await context.Revisions.FirstOrDefaultAsync(r => r.JobId == id && r.Version == version, cancel);
        if (row is { Mark.Length: > 0 } || !await context.Edits.AnyAsync(r => r.JobId == id && r.Version == version, cancel))
        {
            return null;
        }

        if (row is null)
        {
            row = new RevisionRow { JobId = id, Version = version, Mark = Plain(mark), Note = Plain(note), AtMs = Now() };
            context.Revisions.Add(row);
        }
        else
        {
            (row.Mark, row.Note) = (Plain(mark), Joined(Plain(note), row.Note));
        }

        try
        {
            await context.SaveChangesAsync(cancel);
        }
        catch (DbUpdateException e) when (CameBetween(e))
        {
            return null;
        }

        return new Revision(row.Version, row.Mark, row.Note, Time(row.AtMs));
    }

    /// <summary>The versions that were marked or noted, the newest first.</summary>
    /// <param name="id">The job.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<IReadOnlyList<Revision>> RevisionsAsync(string id, CancellationToken cancel = default)
    {
        await using StoreContext context = door.Context();
        RevisionRow[] rows = await context.Revisions.AsNoTracking().Where(r => r.JobId == id).OrderByDescending(r => r.Version).ToArrayAsync(cancel);
        return [.. rows.Select(r => new Revision(r.Version, r.Mark, r.Note, Time(r.AtMs)))];
    }

    /// <summary>Sets how far a job has come.</summary>
    /// <param name="id">The job.</param>
    /// <param name="status">The status.</param>
    /// <param name="known">What was known of the job, noted beside its version together with the status; null where nothing was.</param>
    /// <param name="cancel">Cancels.</param>
    /// <returns>The job, or null when there is none such, or another version of it than the one that was looked at.</returns>
    public async Task<StoredJob?> SetStatusAsync(string id, JobStatus status, KnownBefore? known = null, CancellationToken cancel = default)
    {
        for (int attempt = 0; attempt < MostTries; attempt++)
        {
            await using StoreContext context = door.Context();
            if (await context.Jobs.FirstOrDefaultAsync(r => r.Id == id, cancel) is not { } row || (known is not null && row.Version != known.OnVersion))
            {
                return null;
            }

            row.Status = status.ToString();
            row.ChangedMs = Now();
            if (known is not null)
            {
                if (await context.Revisions.FirstOrDefaultAsync(r => r.JobId == id && r.Version == row.Version, cancel) is { } revision)
                {
                    revision.Note = Joined(revision.Note, Plain(known.Note));
                }
                else
                {
                    context.Revisions.Add(new RevisionRow { JobId = id, Version = row.Version, Mark = "", Note = Plain(known.Note), AtMs = Now() });
                }
            }

            try
            {
                await context.SaveChangesAsync(cancel);
                return Of(row);
            }
            catch (DbUpdateException e) when (CameBetween(e))
            {
                // Another saved in between: read again.
            }
        }

        throw new TimeoutException($"Job {id} is written too busily to set its status.");
    }

    private async Task<SaveAnswer> Write(string id, int onVersion, string[] pointers, string what, string by, Func<StoredJob, (string Text, string Why)> change, CancellationToken cancel)
    {
        for (int attempt = 0; attempt < MostTries; attempt++)
        {
            await using StoreContext context = door.Context();
            if (await context.Jobs.FirstOrDefaultAsync(r => r.Id == id, cancel) is not { } row)
            {
                return new SaveAnswer.Gone();
            }

            StoredJob before = Of(row);
            if (before.IsLocked)
            {
                return new SaveAnswer.Locked(before);
            }

            EditRow[] since = await context.Edits.AsNoTracking().Where(r => r.JobId == id && r.Version > onVersion).OrderBy(r => r.Version).ToArrayAsync(cancel);
            EditRow[] clashing = [.. since.Where(e => e.Pointers.Split('\n').Any(theirs => pointers.Any(ours => Touches(theirs, ours))))];
            if (clashing.Length > 0)
            {
                return new SaveAnswer.Clash(before, [.. clashing.Select(Of)]);
            }

            (string text, string why) = change(before);
            if (why.Length > 0)
            {
                return new SaveAnswer.Misfit(before, why);
            }

            long now = Now();
            row.Version++;
            row.Text = text;
            row.Name = NameOf(text);
            row.ChangedMs = now;
            context.Edits.Add(new EditRow { JobId = id, Version = row.Version, What = Plain(what), Pointers = string.Join('\n', pointers.Select(Plain)), EditedBy = Plain(by), AtMs = now, Text = text });
            try
            {
                // Once begun it is finished: whoever cancels now would not know whether it is saved.
                await context.SaveChangesAsync(CancellationToken.None);
                return new SaveAnswer.Saved(Of(row), [.. since.Select(Of)]);
            }
            catch (DbUpdateException e) when (CameBetween(e))
            {
                // Another's edit came in between: look again what it touched.
            }
        }

        throw new TimeoutException($"Job {id} is written too busily to save an edit.");
    }

    // Another wrote the row or took the version first. A full disk or a lost server is neither, and is told as it is.
    private static bool CameBetween(DbUpdateException e) =>
        e is DbUpdateConcurrencyException
        || e.InnerException is SqliteException { SqliteExtendedErrorCode: 1555 or 2067 } or PostgresException { SqlState: PostgresErrorCodes.UniqueViolation };

    // A field and what holds it or lies in it; the whole document touches everything.
    private static bool Touches(string one, string other) =>
        one == other || one.StartsWith(other + "/", StringComparison.Ordinal) || other.StartsWith(one + "/", StringComparison.Ordinal);

    private static string NameOf(string text) => JobDocument.Read(text).Find("/name") is TextNode name && Plain(name.Text) is { Length: > 0 } plain ? plain : "Untitled job";

    private static string Joined(string first, string second) => first.Length == 0 ? second : second.Length == 0 ? first : Plain($"{first.TrimEnd('.')}. {second}");

    // One line of whole characters: a zero, or half a pair, is not text to every database.
    private static string Plain(string words)
    {
        string line = string.Concat(words.Where(c => !char.IsControl(c)));
        return Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(line.Length > LongestWords ? line[..LongestWords] : line)).Trim();
    }

    private static StoredJob Of(JobRow row) => new(row.Id, row.Name, Enum.TryParse(row.Status, out JobStatus status) ? status : JobStatus.Draft, row.Version, row.Text, Time(row.ChangedMs));

    private static SavedEdit Of(EditRow row) => new(row.Version, row.What, row.EditedBy, Time(row.AtMs));

    private static DateTimeOffset Time(long ms) => DateTimeOffset.FromUnixTimeMilliseconds(ms);

    private long Now() => clock.GetUtcNow().ToUnixTimeMilliseconds();
}
