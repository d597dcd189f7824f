using Microsoft.EntityFrameworkCore;

namespace Glazewright.Store.Jobs;

/// <summary>That papers were made of a version.</summary>
/// <param name="Version">The version of the job.</param>
/// <param name="ManifestSha256">Hash of the list of their files with each one's hash, lower-case hex: the same papers have the same.</param>
/// <param name="AtUtc">When they were last made of it.</param>
public sealed record PapersMade(int Version, string ManifestSha256, DateTimeOffset AtUtc);

/// <summary>Which versions of a job papers were made of. The papers themselves are made again at any time; that a version of them may lie on someone's table is kept.</summary>
/// <param name="door">The store.</param>
/// <param name="clock">Tells the time.</param>
public sealed class MadePapers(StoreDoor door, TimeProvider clock)
{
    /// <summary>Keeps that papers were made.</summary>
    /// <param name="job">The job's id.</param>
    /// <param name="version">The version they were made of.</param>
    /// <param name="manifestSha256">Hash of the list of their files.</param>
    /// <param name="cancel">Cancels.</param>
    /// <returns>False when there is no such job or version.</returns>
    public async Task<bool> AddAsync(string job, int version, string manifestSha256, CancellationToken cancel = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(manifestSha256);
        long nowMs = clock.GetUtcNow().ToUnixTimeMilliseconds();
        await using StoreContext context = door.Context();
        // In words that both databases know: two windows may make the papers of one version at once.
        return await context.Database.ExecuteSqlAsync(
            $"INSERT INTO made_papers (job_id, version, sha256, at_ms) SELECT job_id, version, {manifestSha256}, {nowMs} FROM edits WHERE job_id = {job} AND version = {version} ON CONFLICT (job_id, version) DO UPDATE SET sha256 = excluded.sha256, at_ms = excluded.at_ms",
            cancel) > 0;
    }

    /// <summary>The papers of a job that were made last, or null where none ever were.</summary>
    /// <param name="job">The job's id.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<PapersMade?> LastAsync(string job, CancellationToken cancel = default)
    {
        await using StoreContext context = door.Context();
        MadePapersRow? row = await context.MadePapers.AsNoTracking().Where(r => r.JobId == job).OrderByDescending(r => r.AtMs).ThenByDescending(r => r.Version).FirstOrDefaultAsync(cancel);
        return row is null ? null : new PapersMade(row.Version, row.Sha256, DateTimeOffset.FromUnixTimeMilliseconds(row.AtMs));
    }
}
