using System.Globalization;
using System.Net;
using System.Security.Claims;
using System.Security.Cryptography;
using System.Text.Encodings.Web;
using System.Threading.RateLimiting;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Components.Server.Circuits;
using Microsoft.AspNetCore.DataProtection;

namespace Glazewright.Web.Serving;

/// <summary>Signing in and out where others than this machine may come: every page, file and socket wants it, but the page to sign in, its style and the health word.</summary>
internal static class SignIn
{
    public const string Path = "/sign-in";
    public const string OutPath = "/sign-out";
    private const int TriesAtOnce = 5;
    private static readonly TimeSpan s_pause = TimeSpan.FromMinutes(5);

    public static void Add(IServiceCollection services, ServeWish wish)
    {
        services.AddDataProtection().SetApplicationName("glazewright").PersistKeysToFileSystem(new DirectoryInfo(System.IO.Path.Combine(wish.DataFolder, "keys")));
        services.AddSingleton(new AccountFile(wish.DataFolder));
        services.AddSingleton(new Tries(TriesAtOnce, s_pause));
        services.AddAuthentication(CookieAuthenticationDefaults.AuthenticationScheme).AddCookie(o =>
        {
            o.Cookie.Name = "__Host-glazewright";
            o.Cookie.HttpOnly = true;
            o.Cookie.SameSite = SameSiteMode.Lax;
            o.Cookie.SecurePolicy = CookieSecurePolicy.Always;
            o.Cookie.Path = "/";
            o.ExpireTimeSpan = SignIns.CookieLife;
            o.SlidingExpiration = true;
            o.LoginPath = Path;
            o.LogoutPath = OutPath;
            o.Events.OnValidatePrincipal = async context =>
            {
                if (await context.HttpContext.RequestServices.GetRequiredService<SignIns>().HasEndedAsync(context.Principal))
                {
                    context.RejectPrincipal();
                }
            };
            // A socket or a script asks and is told no; a person is shown where to sign in.
            o.Events.OnRedirectToLogin = context =>
            {
                if (HttpMethods.IsGet(context.Request.Method) && !context.Request.Path.StartsWithSegments("/_blazor"))
                {
                    context.Response.Redirect($"{Path}?then={Uri.EscapeDataString(context.Request.Path + context.Request.QueryString)}");
                }
                else
                {
                    context.Response.StatusCode = StatusCodes.Status401Unauthorized;
                }

                return Task.CompletedTask;
            };
        });
        services.AddAuthorization(o => o.FallbackPolicy = new AuthorizationPolicyBuilder().RequireAuthenticatedUser().Build());
        services.AddCascadingAuthenticationState();
        services.AddScoped<CircuitHandler, EndedWindow>();
        services.Configure<AntiforgeryOptions>(o => o.Cookie.SecurePolicy = CookieSecurePolicy.Always);
    }

    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet(Path, (HttpContext context, IAntiforgery guard) => Page(Form(context, guard, context.Request.Query["then"].ToString(), "", ""))).AllowAnonymous();
        routes.MapPost(Path, ReceiveAsync).AllowAnonymous().DisableAntiforgery();
        routes.MapGet(OutPath, (HttpContext context, IAntiforgery guard) => Page(
            $"<h1>Sign out</h1><form method=\"post\" action=\"{OutPath}\">{Token(context, guard)}<p>You are signed in as {Plain(context.User.Identity?.Name ?? "")}.</p><button type=\"submit\" class=\"main\">Sign out</button> <a href=\"/\">Back to the jobs</a></form>"));
        routes.MapPost(OutPath, async (HttpContext context, IAntiforgery guard, SignIns signIns) =>
        {
            if (!await guard.IsRequestValidAsync(context))
            {
                return Results.BadRequest("The form is out of date. Go back and load it again.");
            }

            await signIns.EndAsync(context.User);
            await context.SignOutAsync();
            return Results.LocalRedirect(Path);
        }).DisableAntiforgery();
    }

    private static async Task<IResult> ReceiveAsync(HttpContext context, IAntiforgery guard, AccountFile accounts, Tries tries, ServeWish wish, ILogger<AccountFile> log)
    {
        if (!context.Request.HasFormContentType || !await guard.IsRequestValidAsync(context))
        {
            return Page(Form(context, guard, "", "", "The form is out of date. Sign in again."), StatusCodes.Status400BadRequest);
        }

        IFormCollection form = await context.Request.ReadFormAsync();
        (string name, string password, string then) = (form["name"].ToString(), form["password"].ToString(), form["then"].ToString());
        string from = From(context, wish);
        if (!tries.May(name, from, out TimeSpan wait))
        {
            SignInLog.TooMany(log, from);
            context.Response.Headers.RetryAfter = ((int)Math.Ceiling(wait.TotalSeconds)).ToString(CultureInfo.InvariantCulture);
            return Page(Form(context, guard, then, name, $"Too many tries. Right: wait {Math.Ceiling(wait.TotalMinutes):0} minutes, then try again."), StatusCodes.Status429TooManyRequests);
        }

        if (!accounts.Holds(name, password))
        {
            SignInLog.Refused(log, from);
            return Page(Form(context, guard, then, name, "Name and password do not belong together. Right: as they were set with --add-account."), StatusCodes.Status401Unauthorized);
        }

        SignInLog.Let(log, from);
        ClaimsPrincipal person = new(new ClaimsIdentity([new Claim(ClaimTypes.Name, name), new Claim(SignIns.ClaimType, Convert.ToHexString(RandomNumberGenerator.GetBytes(16)))], CookieAuthenticationDefaults.AuthenticationScheme));
        await context.SignInAsync(person);
        return Results.LocalRedirect(IsHere(then) ? then : "/");
    }

    // The proxy writes who knocked behind what the knocker may have written himself.
    private static string From(HttpContext context, ServeWish wish)
    {
        string told = wish.Outside?.Proxy is null ? "" : context.Request.Headers["X-Forwarded-For"].ToString().Split(',')[^1].Trim();
        return IPAddress.TryParse(told, out IPAddress? address) ? address.ToString() : context.Connection.RemoteIpAddress?.ToString() ?? "";
    }

    private static bool IsHere(string then) => then.StartsWith('/') && !then.StartsWith("//", StringComparison.Ordinal) && !then.StartsWith("/\\", StringComparison.Ordinal) && !then.Any(char.IsControl);

    private static string Form(HttpContext context, IAntiforgery guard, string then, string name, string wrong) =>
        $"""
         <h1>Sign in</h1>
         <form method="post" action="{Path}">
         {Token(context, guard)}<input type="hidden" name="then" value="{Plain(IsHere(then) ? then : "/")}" />
         <div class="field"><label for="name">Name</label><input id="name" name="name" value="{Plain(name)}" maxlength="60" autocomplete="username" required /></div>
         <div class="field"><label for="password">Password</label><input id="password" name="password" type="password" maxlength="200" autocomplete="current-password" required{(wrong.Length > 0 ? " aria-invalid=\"true\" aria-describedby=\"wrong\"" : "")} /></div>
         {(wrong.Length > 0 ? $"<p class=\"fault\" id=\"wrong\" role=\"alert\">■ {Plain(wrong)}</p>" : "")}<button type="submit" class="main">Sign in</button>
         </form>
         """;

    private static string Token(HttpContext context, IAntiforgery guard)
    {
        AntiforgeryTokenSet tokens = guard.GetAndStoreTokens(context);
        return $"<input type=\"hidden\" name=\"{tokens.FormFieldName}\" value=\"{tokens.RequestToken}\" />";
    }

    private static string Plain(string text) => HtmlEncoder.Default.Encode(text);

    private static IResult Page(string body, int status = StatusCodes.Status200OK) => Results.Text(
        $"""
         <!DOCTYPE html>
         <html lang="en"><head><meta charset="utf-8" /><meta name="viewport" content="width=device-width, initial-scale=1" /><meta name="color-scheme" content="light dark" /><title>Sign in · Glazewright</title>
         <link rel="icon" href="data:," /><link rel="stylesheet" href="/tokens.css" /><link rel="stylesheet" href="/app.css" /><script src="/theme.js"></script></head>
         <body><header class="top"><a class="brand" href="/">Glazewright</a></header><main id="main" class="single">{body}</main></body></html>
         """,
        "text/html; charset=utf-8", statusCode: status);
}

/// <summary>How often a name and an address may try to sign in.</summary>
/// <param name="atOnce">Tries of a name from an address before a pause; ten times as many for the address alone, and for the name from all addresses.</param>
/// <param name="pause">The pause.</param>
public sealed class Tries(int atOnce, TimeSpan pause) : IDisposable
{
    private readonly PartitionedRateLimiter<string> _both = Limiter(atOnce, pause);
    private readonly PartitionedRateLimiter<string> _each = Limiter(atOnce * 10, pause);

    /// <summary>Whether one more try is allowed; it counts.</summary>
    /// <param name="name">The name as typed.</param>
    /// <param name="from">The address.</param>
    /// <param name="wait">How long to wait where it is not.</param>
    public bool May(string name, string from, out TimeSpan wait)
    {
        using RateLimitLease one = _both.AttemptAcquire($"{name}\n{from}");
        using RateLimitLease address = _each.AttemptAcquire("from\n" + from);
        using RateLimitLease person = _each.AttemptAcquire("name\n" + name);
        RateLimitLease? refused = new[] { one, address, person }.FirstOrDefault(l => !l.IsAcquired);
        wait = refused is not null && refused.TryGetMetadata(MetadataName.RetryAfter, out TimeSpan told) ? told : pause;
        return refused is null;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _both.Dispose();
        _each.Dispose();
    }

    private static PartitionedRateLimiter<string> Limiter(int most, TimeSpan window) => PartitionedRateLimiter.Create<string, string>(
        key => RateLimitPartition.GetFixedWindowLimiter(key, _ => new FixedWindowRateLimiterOptions { PermitLimit = most, Window = window, QueueLimit = 0 }), StringComparer.Ordinal);
}

/// <summary>What the log tells of signing in: never a name or a password, which are easily typed into the wrong field.</summary>
internal static partial class SignInLog
{
    [LoggerMessage(Level = LogLevel.Information, Message = "Signed in from {From}")]
    public static partial void Let(ILogger log, string from);

    [LoggerMessage(Level = LogLevel.Warning, Message = "Wrong name or password from {From}")]
    public static partial void Refused(ILogger log, string from);

    [LoggerMessage(Level = LogLevel.Warning, Message = "Too many tries to sign in from {From}")]
    public static partial void TooMany(ILogger log, string from);
}
