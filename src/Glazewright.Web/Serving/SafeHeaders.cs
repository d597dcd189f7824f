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
        headers["Referrer-Policy"] = "no-referrer";
        headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=(), payment=(), usb=()";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        return next(context);
    }
}
