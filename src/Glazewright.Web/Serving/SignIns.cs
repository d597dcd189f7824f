using System.Security.Claims;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server.Circuits;

namespace Glazewright.Web.Serving;

/// <summary>
/// Which sign-ins have ended: a cookie of one is no longer taken, and windows that stand open on it are told. Kept while the server runs; a server started anew
/// takes a copied cookie of an ended sign-in until it is out of date.
/// </summary>
public sealed class SignIns
{
    /// <summary>Claim with the id of a sign-in.</summary>
    public const string ClaimType = "sign-in";

    private const int Most = 10_000;
    private readonly Lock _one = new();
    private readonly HashSet<string> _ended = new(StringComparer.Ordinal);
    private readonly Queue<string> _order = new();

    /// <summary>A sign-in has ended; may come from any thread.</summary>
    public event Action<string>? Ended;

    /// <summary>Ends a sign-in.</summary>
    /// <param name="person">Who signed out.</param>
    public void End(ClaimsPrincipal person)
    {
        if (IdOf(person) is not { } id)
        {
            return;
        }

        lock (_one)
        {
            if (_ended.Add(id))
            {
                _order.Enqueue(id);
            }

            if (_order.Count > Most)
            {
                _ended.Remove(_order.Dequeue());
            }
        }

        Ended?.Invoke(id);
    }

    /// <summary>Whether a sign-in has ended.</summary>
    /// <param name="person">Whose.</param>
    public bool HasEnded(ClaimsPrincipal? person)
    {
        if (IdOf(person) is not { } id)
        {
            return false;
        }

        lock (_one)
        {
            return _ended.Contains(id);
        }
    }

    /// <summary>The id of a sign-in, or null.</summary>
    /// <param name="person">Whose.</param>
    public static string? IdOf(ClaimsPrincipal? person) => person?.FindFirst(ClaimType)?.Value;
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
