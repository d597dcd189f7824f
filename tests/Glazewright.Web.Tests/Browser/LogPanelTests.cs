using System.IO.Compression;
using Microsoft.Playwright;

namespace Glazewright.Web.Tests.Browser;

/// <summary>A built house's log, brought in on the page Year.</summary>
[Collection("browser")]
[Trait("Category", "Slow")]
public sealed class LogPanelTests(OpenBrowser browser)
{
    private static readonly string s_examples = Path.Combine(RunningServer.Root, "examples", "calibration");

    [Fact]
    public async Task A_house_is_fitted_to_its_log_and_the_files_are_fetched()
    {
        IPage page = await browser.WindowAsync();
        await page.OpenAsync("/");
        await page.BringInAsync();
        await page.Locator(".pages a", new() { HasText = "Year" }).ClickAsync();
        ILocator panel = page.Locator("[data-log-panel]");
        await panel.Locator("summary").ClickAsync();
        ILocator fit = page.Locator("[data-fit-log]");
        await Assertions.Expect(fit).ToBeDisabledAsync();

        // A map of another log is told with its place, and nothing is fitted.
        string map = await File.ReadAllTextAsync(Path.Combine(s_examples, "made-log.columns.json"));
        byte[] log = await File.ReadAllBytesAsync(Path.Combine(s_examples, "made-log.csv"));
        await ChooseAsync(page, map.Replace("\"tin\"", "\"elsewhere\"", StringComparison.Ordinal), log);
        await fit.ClickAsync();
        await Assertions.Expect(page.Locator("#log-news .fault").First).ToContainTextAsync("elsewhere", new() { Timeout = Steps.BehindMs });

        await ChooseAsync(page, map, log);
        await fit.ClickAsync();
        await panel.Locator("h2", new() { HasText = "Fitted sizes" }).WaitForAsync(new() { Timeout = Steps.BehindMs });
        await Assertions.Expect(panel).ToContainTextAsync("Take house out of the map");
        Task<IDownload> fetch = page.WaitForDownloadAsync();
        await page.Locator("[data-fit-files]").ClickAsync();
        await using Stream packed = await (await fetch).CreateReadStreamAsync();
        using MemoryStream whole = new();
        await packed.CopyToAsync(whole);
        using ZipArchive archive = new(whole);
        Assert.Contains("calibration.pdf", archive.Entries.Select(e => e.FullName));
        Assert.Contains("hours.csv", archive.Entries.Select(e => e.FullName));
    }

    private static async Task ChooseAsync(IPage page, string map, byte[] log)
    {
        await page.Locator("#log-map").SetInputFilesAsync(new FilePayload { Name = "map.json", MimeType = "application/json", Buffer = System.Text.Encoding.UTF8.GetBytes(map) });
        await Assertions.Expect(page.Locator("#log-news")).ToContainTextAsync("map.json is read.");
        await page.Locator("#log-files").SetInputFilesAsync(new FilePayload { Name = "log.csv", MimeType = "text/csv", Buffer = log });
        await Assertions.Expect(page.Locator("#log-news")).ToContainTextAsync("log.csv is read.");
    }
}
