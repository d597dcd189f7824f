using System.Net;

namespace Glazewright.Web.Serving;

/// <summary>
/// Lets in only requests that this server's own pages make: a page of another site that a browser on this machine happens to show can reach a loopback address too,
/// by a name that points there or by opening a socket.
/// </summary>
/// <param name="next">What comes after.</param>
/// <param name="wish">Whether others than this machine may come, and how.</param>
/// <param name="log">Told what was kept out.</param>
public sealed partial class SameOrigin(RequestDelegate next, ServeWish wish, ILogger<SameOrigin> log)
{
    private static readonly string[] s_names = ["127.0.0.1", "localhost", "[::1]"];

    /// <summary>Looks at one request.</summary>
    /// <param name="context">The request.</param>
    public Task InvokeAsync(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        HttpRequest request = context.Request;
        if (wish.Outside is { Proxy: { } proxy } && !IsFrom(context, proxy))
        {
            return KeepOut(context, StatusCodes.Status403Forbidden, "This server is reached through its proxy only.");
        }

        if (!IsOurName(request.Host))
        {
            return KeepOut(context, StatusCodes.Status421MisdirectedRequest, wish.Outside is null ? "This server answers to the names of its own machine only." : "This server does not answer to that name.");
        }

        if (wish.Outside is not null)
        {
            // Behind a proxy the last stretch is in the clear; what the visitor typed is not.
            request.Scheme = Uri.UriSchemeHttps;
        }

        string origin = request.Headers.Origin.ToString();
        bool isSocket = request.Headers.Upgrade.Count > 0 || HttpMethods.IsConnect(request.Method);
        bool mustTell = isSocket || !(HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method));
        bool isOurs = origin.Length > 0 ? origin == (wish.Outside?.PublicUrl.GetLeftPart(UriPartial.Authority) ?? $"{request.Scheme}://{request.Host.Value}") : !mustTell;
        return isOurs ? next(context) : KeepOut(context, StatusCodes.Status403Forbidden, "Only this server's own pages may ask that.");
    }

    private bool IsOurName(HostString host) => wish.Outside is { PublicUrl: { } open }
        ? string.Equals(host.Host, open.Host, StringComparison.OrdinalIgnoreCase) && (host.Port ?? 443) == open.Port
        : s_names.Contains(host.Host, StringComparer.OrdinalIgnoreCase);

    private static bool IsFrom(HttpContext context, IPAddress proxy) =>
        context.Connection.RemoteIpAddress is { } from && (from.IsIPv4MappedToIPv6 ? from.MapToIPv4() : from).Equals(proxy);

    private Task KeepOut(HttpContext context, int status, string words)
    {
        KeptOut(status, context.Request.Method, context.Request.Path);
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.WriteAsync(words);
    }

    [LoggerMessage(Level = LogLevel.Warning, Message = "Kept out with {Status}: {Method} {Path}")]
    private partial void KeptOut(int status, string method, string path);
}
