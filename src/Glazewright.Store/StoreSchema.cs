using Microsoft.EntityFrameworkCore;

namespace Glazewright.Store;

/// <summary>
/// Makes the tables and brings an older store up to date: numbered steps, together in one transaction, in words that both databases know.
/// A step is never changed once released; a new form is a new step.
/// </summary>
internal static class StoreSchema
{
    /// <summary>The steps so far; step 1 is the first.</summary>
    private static readonly string[][] s_steps =
    [
        [
            "CREATE TABLE jobs (id TEXT PRIMARY KEY, name TEXT NOT NULL, status TEXT NOT NULL, version INTEGER NOT NULL, text TEXT NOT NULL, changed_ms BIGINT NOT NULL)",
            "CREATE TABLE edits (job_id TEXT NOT NULL REFERENCES jobs(id), version INTEGER NOT NULL, what TEXT NOT NULL, pointers TEXT NOT NULL, edited_by TEXT NOT NULL, at_ms BIGINT NOT NULL, text TEXT NOT NULL, PRIMARY KEY (job_id, version))",
            "CREATE TABLE revisions (job_id TEXT NOT NULL REFERENCES jobs(id), version INTEGER NOT NULL, mark TEXT NOT NULL, note TEXT NOT NULL, at_ms BIGINT NOT NULL, PRIMARY KEY (job_id, version))",
        ],
        [
            "CREATE TABLE library (kind TEXT NOT NULL, sha256 TEXT NOT NULL, name TEXT NOT NULL, at_ms BIGINT NOT NULL, content {bytes} NOT NULL, PRIMARY KEY (kind, sha256))",
        ],
        [
            "CREATE TABLE ended_sign_ins (id TEXT PRIMARY KEY, until_ms BIGINT NOT NULL)",
        ],
        [
            "CREATE TABLE made_papers (job_id TEXT NOT NULL, version INTEGER NOT NULL, sha256 TEXT NOT NULL, at_ms BIGINT NOT NULL, PRIMARY KEY (job_id, version), FOREIGN KEY (job_id, version) REFERENCES edits(job_id, version))",
        ],
        [
            "CREATE TABLE library_years (sha256 TEXT PRIMARY KEY, form INTEGER NOT NULL, name TEXT NOT NULL, region TEXT NOT NULL, country TEXT NOT NULL, source TEXT NOT NULL, station_id TEXT NOT NULL, latitude_deg DOUBLE PRECISION NOT NULL, longitude_deg DOUBLE PRECISION NOT NULL, zone_h DOUBLE PRECISION NOT NULL, elevation_m DOUBLE PRECISION NOT NULL, origin TEXT NOT NULL, row_years TEXT NOT NULL)",
        ],
    ];

    /// <summary>Number of the newest step.</summary>
    public static int Newest => s_steps.Length;

    /// <summary>Brings a store up to a step.</summary>
    /// <param name="context">The store.</param>
    /// <param name="upTo">The step; the newest unless a test asks for less.</param>
    /// <exception cref="StoreTooNewException">The store was written by a newer program.</exception>
    public static void BringUp(StoreContext context, int? upTo = null)
    {
        string bytes = context.Database.IsNpgsql() ? "BYTEA" : "BLOB";
        // One program at a time: SQLite's transactions are begun as writers, PostgreSQL takes a lock that ends with this one.
        using var together = context.Database.BeginTransaction();
        if (context.Database.IsNpgsql())
        {
            context.Database.ExecuteSqlRaw("SELECT pg_advisory_xact_lock(71407140)");
        }

        context.Database.ExecuteSqlRaw("CREATE TABLE IF NOT EXISTS schema_steps (step INTEGER PRIMARY KEY)");
        int done = context.Database.SqlQueryRaw<int>("SELECT COALESCE(MAX(step), 0) AS \"Value\" FROM schema_steps").Single();
        if (done > Newest)
        {
            throw new StoreTooNewException(done, Newest);
        }

        for (int step = done + 1; step <= (upTo ?? Newest); step++)
        {
            foreach (string sql in s_steps[step - 1])
            {
#pragma warning disable EF1002 // the text is ours, with the database's word for bytes
                context.Database.ExecuteSqlRaw(sql.Replace("{bytes}", bytes, StringComparison.Ordinal));
#pragma warning restore EF1002
            }

            context.Database.ExecuteSql($"INSERT INTO schema_steps (step) VALUES ({step})");
        }

        together.Commit();
    }
}

/// <summary>The store was written by a newer program than this one: it is left alone.</summary>
/// <param name="step">Its step.</param>
/// <param name="newest">The newest step this program knows.</param>
public sealed class StoreTooNewException(int step, int newest)
    : Exception($"The store is of step {step}, written by a newer program; this one knows {newest}. Start the newer program, or another store.");
