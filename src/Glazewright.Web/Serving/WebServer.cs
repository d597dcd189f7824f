using System.Text.Json;
using Glazewright.Store;
using Glazewright.Store.Jobs;
using Glazewright.Store.Library;
using Glazewright.Store.People;
using Glazewright.Web.Compare;
using Glazewright.Web.Jobs;
using Microsoft.AspNetCore.Components.Server.Circuits;
using Microsoft.Extensions.Logging.Console;

namespace Glazewright.Web.Serving;

/// <summary>Puts the server together.</summary>
public static class WebServer
{
    /// <summary>Most bytes of a request: a job file or a weather year.</summary>
    public const int MostUploadBytes = 20_000_000;

    /// <summary>Builds the server; nothing listens yet.</summary>
    /// <param name="wish">What is asked for.</param>
    /// <param name="programFolder">Where the program and its pages lie.</param>
    /// <param name="clock">Tells the time of edits.</param>
    /// <exception cref="StoreTooNewException">The store was written by a newer program.</exception>
    /// <exception cref="FormatException">Others are to be let in, and there is no account yet, or the certificate cannot be used.</exception>
    public static WebApplication Build(ServeWish wish, string programFolder, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(wish);
        if (wish.Outside is not null && !new AccountFile(wish.DataFolder).IsAny)
        {
            throw new FormatException("Others than this machine would be let in, and nobody can sign in yet. Right: first add an account with --data FOLDER --add-account NAME.");
        }

        WebApplicationBuilder builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            ApplicationName = typeof(WebServer).Assembly.GetName().Name,
            ContentRootPath = programFolder,
            WebRootPath = Path.Combine(programFolder, "wwwroot"),
            EnvironmentName = Environments.Production,
        });
        builder.WebHost.ConfigureKestrel(k =>
        {
            k.AddServerHeader = false;
            k.Limits.MaxRequestBodySize = MostUploadBytes;
            Listening.On(k, wish);
        });
        Log(builder.Logging);
        builder.Services.AddSingleton(wish);
        builder.Services.AddSingleton(clock);
        builder.Services.AddSingleton(StoreDoor.Of(wish.Store));
        builder.Services.AddSingleton<JobStore>();
        builder.Services.AddSingleton<MadePapers>();
        builder.Services.AddSingleton<LibraryStore>();
        builder.Services.AddSingleton<WeatherShelf>();
        builder.Services.AddSingleton<JobBell>();
        builder.Services.AddSingleton(new ExampleJobs(Path.Combine(programFolder, "examples")));
        builder.Services.AddSingleton<JobRunners>();
        builder.Services.AddSingleton<QuickLane>();
        builder.Services.AddSingleton<BehindLane>();
        builder.Services.AddSingleton<PackageShelf>();
        builder.Services.AddSingleton<WholeShelf>();
        builder.Services.AddScoped<JobSession>();
        builder.Services.AddSingleton<EndedSignIns>();
        builder.Services.AddSingleton<SignIns>();
        builder.Services.AddScoped<JobWork>();
        builder.Services.AddScoped<ShapeHunt>();
        builder.Services.AddSingleton<FitShelf>();
        builder.Services.AddScoped<LogFit>();
        builder.Services.AddScoped<ComparisonDesk>();
        builder.Services.AddAntiforgery();
        if (wish.Outside is not null)
        {
            SignIn.Add(builder.Services, wish);
        }

        builder.Services.AddHealthChecks();
        builder.Services.AddRazorComponents().AddInteractiveServerComponents(o =>
        {
            o.DetailedErrors = false;
            o.DisconnectedCircuitMaxRetained = 50;
            o.DisconnectedCircuitRetentionPeriod = TimeSpan.FromMinutes(3);
        });
        WebApplication app = builder.Build();
        app.UseMiddleware<SameOrigin>();
        app.Use(SafeHeaders.AddAsync);
        if (wish.Outside is not null)
        {
            app.Use(SafeHeaders.OnlyEncryptedAsync);
            app.UseAuthentication();
            app.UseAuthorization();
            SignIn.Map(app);
        }

        app.UseAntiforgery();
        app.MapHealthChecks("/health").AllowAnonymous();
        IEndpointConventionBuilder assets = app.MapStaticAssets(Path.Combine(programFolder, $"{typeof(WebServer).Assembly.GetName().Name}.staticwebassets.endpoints.json"));
        assets.Add(e => e.Metadata.Add(new Microsoft.AspNetCore.Authorization.AllowAnonymousAttribute()));
        JobFiles.Map(app);
        // The policy of the whole server says who may show a page in a frame: nobody.
        app.MapRazorComponents<Parts.App>().AddInteractiveServerRenderMode(o => o.ContentSecurityFrameAncestorsPolicy = null);
        return app;
    }

    /// <summary>Puts the weather years that came with the program into the library, once each.</summary>
    /// <param name="services">The server's parts.</param>
    /// <param name="folder">Where they lie.</param>
    public static async Task StockAsync(IServiceProvider services, string folder)
    {
        LibraryStore library = services.GetRequiredService<LibraryStore>();
        string[] paths = Directory.Exists(folder) ? Directory.GetFiles(folder, "*.epw.gz") : [];
        foreach (string path in paths.Order(StringComparer.Ordinal))
        {
            await library.AddAsync(LibraryKind.Weather, Path.GetFileName(path), await File.ReadAllBytesAsync(path));
        }
    }

    // Lines of JSON on standard error, for a collector; standard output is for the person who started it.
    private static void Log(ILoggingBuilder logging)
    {
        logging.ClearProviders();
        logging.AddJsonConsole(o =>
        {
            o.UseUtcTimestamp = true;
            o.TimestampFormat = "yyyy-MM-ddTHH:mm:ss.fffZ";
            o.JsonWriterOptions = new JsonWriterOptions { Indented = false };
        });
        logging.Services.Configure<ConsoleLoggerOptions>(o => o.LogToStandardErrorThreshold = LogLevel.Trace);
        logging.SetMinimumLevel(LogLevel.Information);
        logging.AddFilter("Microsoft", LogLevel.Warning);
    }
}
