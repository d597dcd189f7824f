using System.Security.Claims;
using Glazewright.Store.People;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server.Circuits;

namespace Glazewright.Web.Serving;

/// <summary>
/// Which sign-ins have ended: a cookie of one is no longer taken, by this server or another on its store, and windows that stand open on it here are told. Kept in the store until the
/// last cookie of the sign-in is out of date.
/// </summary>
/// <param name="store">Those that ended, also before this server was started.</param>
/// <param name="clock">Tells the time.</param>
public sealed class SignIns(EndedSignIns store, TimeProvider clock)
{
    /// <summary>Claim with the id of a sign-in.</summary>
    public const string ClaimType = "sign-in";

    /// <summary>How long a cookie is taken; one in use is renewed, so none of an ended sign-in lives longer than this.</summary>
    public static readonly TimeSpan CookieLife = TimeSpan.FromHours(12);

    private readonly Lock _one = new();
    private readonly Dictionary<string, DateTimeOffset> _ended = new(StringComparer.Ordinal);

    /// <summary>A sign-in has ended; may come from any thread.</summary>
    public event Action<string>? Ended;

    /// <summary>Ends a sign-in: here at once, and for good when this is done.</summary>
    /// <param name="person">Who signed out.</param>
    public async Task EndAsync(ClaimsPrincipal person)
    {
        if (IdOf(person) is not { } id)
        {
            return;
        }

        DateTimeOffset until = clock.GetUtcNow() + CookieLife;
        Remember(id, until);
        await store.AddAsync(id, until);
        Ended?.Invoke(id);
    }

    /// <summary>Whether a sign-in is known here to have ended: for windows that are open, which are told when it does.</summary>
    /// <param name="person">Whose.</param>
    public bool HasEnded(ClaimsPrincipal? person)
    {
        if (IdOf(person) is not { } id)
        {
            return false;
        }

        lock (_one)
        {
            return _ended.ContainsKey(id);
        }
    }

    /// <summary>Whether a sign-in has ended, here, before this server was started, or on another: for each cookie that is shown.</summary>
    /// <param name="person">Whose.</param>
    public async Task<bool> HasEndedAsync(ClaimsPrincipal? person)
    {
        if (IdOf(person) is not { } id)
        {
            return false;
        }

        if (HasEnded(person))
        {
            return true;
        }

        if (!await store.HoldsAsync(id))
        {
            return false;
        }

        Remember(id, clock.GetUtcNow() + CookieLife);
        return true;
    }

    /// <summary>The id of a sign-in, or null.</summary>
    /// <param name="person">Whose.</param>
    public static string? IdOf(ClaimsPrincipal? person) => person?.FindFirst(ClaimType)?.Value;

    private void Remember(string id, DateTimeOffset until)
    {
        DateTimeOffset now = clock.GetUtcNow();
        lock (_one)
        {
            foreach (string over in _ended.Where(e => e.Value <= now).Select(e => e.Key).ToArray())
            {
                _ended.Remove(over);
            }

            _ended[id] = until;
        }
    }
}

/// <summary>A window whose sign-in has ended is no longer heard, whatever its page does.</summary>
/// <param name="people">Who the window belongs to.</param>
/// <param name="signIns">Which sign-ins have ended.</param>
internal sealed class EndedWindow(AuthenticationStateProvider people, SignIns signIns) : CircuitHandler
{
    /// <inheritdoc/>
    public override Func<CircuitInboundActivityContext, Task> CreateInboundActivityHandler(Func<CircuitInboundActivityContext, Task> next) => async activity =>
    {
        if (!signIns.HasEnded((await people.GetAuthenticationStateAsync()).User))
        {
            await next(activity);
        }
    };
}
