namespace Glazewright.Web.Serving;

/// <summary>
/// Lets in only requests that this server's own pages make: a page of another site that a browser on this machine happens to show can reach a loopback address too,
/// by a name that points there or by opening a socket.
/// </summary>
/// <param name="next">What comes after.</param>
/// <param name="log">Told what was kept out.</param>
public sealed partial class SameOrigin(RequestDelegate next, ILogger<SameOrigin> log)
{
    private static readonly string[] s_names = ["127.0.0.1", "localhost", "[::1]"];

    /// <summary>Looks at one request.</summary>
    /// <param name="context">The request.</param>
    public Task InvokeAsync(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        HttpRequest request = context.Request;
        if (!IsOurName(request.Host.Host))
        {
            return KeepOut(context, StatusCodes.Status421MisdirectedRequest, "This server answers to the names of its own machine only.");
        }

        string origin = request.Headers.Origin.ToString();
        bool isSocket = request.Headers.Upgrade.Count > 0 || HttpMethods.IsConnect(request.Method);
        bool mustTell = isSocket || !(HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method));
        bool isOurs = origin.Length > 0 ? origin == $"{request.Scheme}://{request.Host.Value}" : !mustTell;
        return isOurs ? next(context) : KeepOut(context, StatusCodes.Status403Forbidden, "Only this server's own pages may ask that.");
    }

    private static bool IsOurName(string host) => s_names.Contains(host, StringComparer.OrdinalIgnoreCase);

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
