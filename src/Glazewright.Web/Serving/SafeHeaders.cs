namespace Glazewright.Web.Serving;

/// <summary>Headers that keep a page to itself: nothing is loaded from elsewhere, no script stands in a page, no other site shows it in a frame.</summary>
public static class SafeHeaders
{
    /// <summary>The content policy of every answer.</summary>
    public const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'self'; frame-ancestors 'none'";

    /// <summary>Adds the headers to an answer.</summary>
    /// <param name="context">The request.</param>
    /// <param name="next">What comes after.</param>
    public static Task AddAsync(HttpContext context, RequestDelegate next)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(next);
        IHeaderDictionary headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        // Not "no-referrer": with it a browser hides the origin of our own forms too.
        headers["Referrer-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=(), payment=(), usb=()";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        return next(context);
    }

    /// <summary>Adds the word that this server is never to be asked in the clear, for a year.</summary>
    /// <param name="context">The request.</param>
    /// <param name="next">What comes after.</param>
    public static Task OnlyEncryptedAsync(HttpContext context, RequestDelegate next)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(next);
        context.Response.Headers.StrictTransportSecurity = "max-age=31536000";
        return next(context);
    }
}
