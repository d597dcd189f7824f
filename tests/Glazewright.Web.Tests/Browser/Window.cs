using Glazewright.Web.Fields;
using Microsoft.Playwright;

namespace Glazewright.Web.Tests.Browser;

/// <summary>One server and one real browser for all tests of pages; each test opens windows of its own.</summary>
public sealed class OpenBrowser : IAsyncLifetime
{
    private IPlaywright? _driver;
    private IBrowser? _browser;
    private readonly List<IBrowserContext> _open = [];
    private string _test = "";

    public RunningServer Server { get; } = new();

    /// <summary>The browser, or null where there is none.</summary>
    public static string? Chromium { get; } = new[] { "/usr/bin/chromium", "/usr/bin/chromium-browser" }.FirstOrDefault(File.Exists);

    public async ValueTask InitializeAsync()
    {
        if (Chromium is null)
        {
            return;
        }

        await Server.StartAsync();
        _driver = await Playwright.CreateAsync();
        Assertions.SetDefaultExpectTimeout(20_000);
        _browser = await _driver.Chromium.LaunchAsync(new() { ExecutablePath = Chromium, Args = ["--no-sandbox", "--disable-quic", "--disable-background-networking", "--use-gl=angle", "--use-angle=swiftshader", "--enable-unsafe-swiftshader"] });
    }

    /// <summary>A window with a store of its own for themes and the like; the windows of the test before are closed, as their jobs would go on being computed and drawn beside this one's.</summary>
    /// <param name="scheme">Light or dark.</param>
    /// <param name="widthPx">Width.</param>
    /// <param name="trustAll">Whether a certificate that nobody vouches for is taken.</param>
    public async Task<IPage> WindowAsync(ColorScheme scheme = ColorScheme.Light, int widthPx = 1400, bool trustAll = false)
    {
        Assert.SkipWhen(Chromium is null, "NOT TESTED: no Chromium on this machine. Install Debian's package 'chromium'.");
        if (TestContext.Current.Test?.UniqueID is { } test && test != _test)
        {
            _test = test;
            await CloseWindowsAsync();
        }

        IBrowserContext context = await _browser!.NewContextAsync(new()
        {
            BaseURL = Server.Url,
            ColorScheme = scheme,
            ViewportSize = new() { Width = widthPx, Height = 900 },
            ReducedMotion = ReducedMotion.Reduce,
            AcceptDownloads = true,
            IgnoreHTTPSErrors = trustAll,
        });
        _open.Add(context);
        context.SetDefaultTimeout(20_000);
        IPage page = await context.NewPageAsync();
        return page;
    }

    // A page that is left tells the server so; one that is merely gone is kept for a while.
    private async Task CloseWindowsAsync()
    {
        foreach (IBrowserContext context in _open)
        {
            foreach (IPage page in context.Pages)
            {
                try
                {
                    await page.GotoAsync("about:blank");
                }
                catch (PlaywrightException)
                {
                    // Closed by its test, or its server has ended.
                }
            }

            await context.CloseAsync();
        }

        _open.Clear();
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.CloseAsync();
        }

        _driver?.Dispose();
        await Server.DisposeAsync();
        lock (Server.Log)
        {
            // A mistake of the program closes one window only; the log has its cause.
            string[] mistakes = [.. Server.Log.Where(l => l.Contains("Unhandled exception", StringComparison.Ordinal))];
            Assert.True(mistakes.Length == 0, string.Join('\n', mistakes));
        }
    }
}

/// <summary>Steps that several tests take.</summary>
public static class Steps
{
    /// <summary>How long what is computed behind a page may take, ms: it gives way to all else on the machine, and only a mistake takes longer.</summary>
    public const float BehindMs = 300_000;

    /// <summary>Opens an address and waits for its heading.</summary>
    public static async Task OpenAsync(this IPage page, string address)
    {
        await page.GotoAsync(address);
        await page.Locator("h1").WaitForAsync();
    }

    /// <summary>Brings a small job in on the start page, which opens it.</summary>
    /// <param name="page">The start page.</param>
    /// <param name="more">More fields of its house, as JSON.</param>
    public static async Task BringInAsync(this IPage page, string more = "\"name\": \"House A\"")
    {
        await page.Locator("#station").WaitForAsync();
        // The page listens to the file field a moment after it shows it; quicker than any hand, a test may come before. It then chooses the file again.
        for (int tries = 0; ; tries++)
        {
            await page.Locator("#import").SetInputFilesAsync(new FilePayload { Name = "yard.json", MimeType = "application/json", Buffer = System.Text.Encoding.UTF8.GetBytes("{ \"glazewright\": 1, \"name\": \"Yard\", \"site\": { \"weather\": { \"file\": \"demo-continental-42N.epw.gz\" } }, \"houses\": [{ \"id\": \"A\", \"width\": \"26 ft\", \"length\": \"48 ft\", " + more + " }] }") });
            try
            {
                await page.Locator("h1", new() { HasText = "Brief" }).WaitForAsync(new() { Timeout = 30_000 });
                return;
            }
            catch (TimeoutException) when (tries < 2)
            {
            }
        }
    }

    /// <summary>Waits until the answers belong to the job as it is.</summary>
    public static Task AnsweredAsync(this IPage page) => page.Locator(".picture[aria-busy='false']").WaitForAsync(new() { State = WaitForSelectorState.Attached });

    /// <summary>Types into a field as a person does, and leaves it.</summary>
    public static async Task PutAsync(this IPage page, string pointer, string text)
    {
        ILocator field = page.Locator("#" + FieldMap.ElementId(pointer));
        await field.FillAsync(text);
        await field.BlurAsync();
    }
}

[CollectionDefinition("browser")]
public class BrowserCollection : ICollectionFixture<OpenBrowser>;
