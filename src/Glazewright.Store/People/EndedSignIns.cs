using Microsoft.EntityFrameworkCore;

namespace Glazewright.Store.People;

/// <summary>Sign-ins that have ended while their cookies could still be shown: kept until then, so that neither a server started anew nor another one on the same store takes them.</summary>
/// <param name="door">The store.</param>
/// <param name="clock">Tells the time.</param>
public sealed class EndedSignIns(StoreDoor door, TimeProvider clock)
{
    /// <summary>Keeps a sign-in as ended; those whose time is over go.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="until">When the last of its cookies is out of date.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task AddAsync(string id, DateTimeOffset until, CancellationToken cancel = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(id);
        long nowMs = clock.GetUtcNow().ToUnixTimeMilliseconds();
        long untilMs = until.ToUnixTimeMilliseconds();
        await using StoreContext context = door.Context();
        await context.EndedSignIns.Where(r => r.UntilMs <= nowMs).ExecuteDeleteAsync(cancel);
        // In words that both databases know: two windows may sign out at once.
        await context.Database.ExecuteSqlAsync($"INSERT INTO ended_sign_ins (id, until_ms) VALUES ({id}, {untilMs}) ON CONFLICT (id) DO NOTHING", cancel);
    }

    /// <summary>Whether a sign-in has ended; told until its cookies are out of date.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<bool> HoldsAsync(string id, CancellationToken cancel = default)
    {
        long nowMs = clock.GetUtcNow().ToUnixTimeMilliseconds();
        await using StoreContext context = door.Context();
        return await context.EndedSignIns.AsNoTracking().AnyAsync(r => r.Id == id && r.UntilMs > nowMs, cancel);
    }
}
