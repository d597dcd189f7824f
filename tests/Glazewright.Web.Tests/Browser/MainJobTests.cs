using System.IO.Compression;
using Glazewright.Web.Fields;
using Microsoft.Playwright;

namespace Glazewright.Web.Tests.Browser;

/// <summary>The main job, from an empty start to a fetched package: once by mouse, once by keyboard alone.</summary>
[Collection("browser")]
[Trait("Category", "Slow")]
public sealed class MainJobTests(OpenBrowser browser)
{
    [Fact]
    public async Task By_mouse()
    {
        IPage page = await browser.WindowAsync();
        await page.OpenAsync("/");
        await page.Locator("#station").SelectOptionAsync("demo-continental-42N.epw.gz");
        await page.Locator("summary", new() { HasText = "Help me choose" }).ClickAsync();
        await page.Locator("#floor").FillAsync("2,500");
        await page.GetByRole(AriaRole.Button, new() { Name = "Suggest length and width" }).ClickAsync();
        await Assertions.Expect(page.Locator(Field("/houses/0/width"))).ToHaveValueAsync("26 ft");
        await page.PutAsync("/houses/0/schedule/0/crop", "lettuce");
        await page.PutAsync("/houses/0/schedule/0/night/temperature", "58");
        await Assertions.Expect(page.Locator(Field("/houses/0/schedule/0/night/temperature"))).ToHaveValueAsync("58 °F");
        await page.Locator(Field("/occupancy/visitors")).SelectOptionAsync("customers");
        await page.PutAsync("/name", "Mouse Yard");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin the job" }).ClickAsync();
        await page.Locator("h1", new() { HasText = "Brief" }).WaitForAsync();
        await page.AnsweredAsync();

        await page.GetByRole(AriaRole.Link, new() { Name = "Shape & sun" }).ClickAsync();
        ILocator floor = page.Locator(FloorArea).Locator(".number");
        await Assertions.Expect(floor).ToHaveTextAsync("2,496");
        await page.PutAsync("/houses/0/length", "80");
        await Assertions.Expect(floor).ToHaveTextAsync("2,080");
        await page.Locator(FloorArea).Locator("summary").ClickAsync();
        ILocator working = page.Locator(".figure[open] .working");
        await Assertions.Expect(working.Locator("code").First).ToHaveTextAsync("width * length");
        Assert.Contains("A/form/floor-area", await working.Locator("[data-copy]").GetAttributeAsync("data-copy"));
        await working.Locator("a", new() { HasText = "ength" }).First.ClickAsync();
        Assert.EndsWith(Field("/houses/0/length"), page.Url);
        await page.Locator("[data-undo]").ClickAsync();
        await Assertions.Expect(floor).ToHaveTextAsync("2,496");
        await page.Locator("[data-redo]").ClickAsync();
        await Assertions.Expect(floor).ToHaveTextAsync("2,080");

        await page.GetByRole(AriaRole.Link, new() { Name = "Climate plant" }).ClickAsync();
        await Assertions.Expect(page.Locator(".picture svg.drawing").First).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Papers" }).ClickAsync();
        await page.Locator("[data-make]").ClickAsync();
        ILocator whole = page.Locator("[data-fetch='contractor']");
        await whole.WaitForAsync(new() { Timeout = Steps.BehindMs });
        string[] files = await FetchedAsync(page, whole);
        Assert.Contains("contents.html", files);
        Assert.Contains("grower.pdf", files);
        Assert.Contains("contractor/result.json", files);
        string[] grower = await FetchedAsync(page, page.Locator("[data-fetch='grower']"));
        Assert.Contains("grower.pdf", grower);
        Assert.DoesNotContain(grower, f => f.StartsWith("contractor/", StringComparison.Ordinal));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task By_keyboard_alone()
    {
        IPage page = await browser.WindowAsync();
        await page.OpenAsync("/");
        await TabToAsync(page, "#station");
        await page.Keyboard.PressAsync("ArrowDown");
        await TabToAsync(page, Field("/houses/0/length"));
        await page.Keyboard.TypeAsync("64");
        await TabToAsync(page, Field("/houses/0/width"));
        await page.Keyboard.TypeAsync("20'-0\"");
        await TabToAsync(page, Field("/name"));
        await page.Keyboard.TypeAsync("Key Yard");
        await TabToAsync(page, "button.main");
        await page.Keyboard.PressAsync("Enter");
        await page.Locator("h1", new() { HasText = "Brief" }).WaitForAsync();
        await page.AnsweredAsync();

        await TabToAsync(page, ".pages a[href$='/shape']");
        await page.Keyboard.PressAsync("Enter");
        await page.Locator("h1", new() { HasText = "Shape" }).WaitForAsync();
        await TabToAsync(page, Field("/houses/0/width"));
        await page.Keyboard.PressAsync("Control+a");
        await page.Keyboard.TypeAsync("24 ft");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(FloorArea).Locator(".number")).ToHaveTextAsync("1,536");
        await TabToAsync(page, ".figure summary");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".figure[open] .working")).ToBeVisibleAsync();
        await TabToAsync(page, "[data-undo]", "Shift+Tab");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(FloorArea).Locator(".number")).ToHaveTextAsync("1,280");
        await TabToAsync(page, ".pages a[href$='/papers']");
        await page.Keyboard.PressAsync("Enter");
        await page.Locator("h1", new() { HasText = "Papers" }).WaitForAsync();
        await TabToAsync(page, "[data-make]");
        await page.Keyboard.PressAsync("Enter");
        ILocator whole = page.Locator("[data-fetch='contractor']");
        await whole.WaitForAsync(new() { Timeout = Steps.BehindMs });
        await TabToAsync(page, "[data-fetch='contractor']");
        IDownload download = await page.RunAndWaitForDownloadAsync(() => page.Keyboard.PressAsync("Enter"));
        Assert.Equal("contractor-papers.zip", download.SuggestedFilename);
        await page.Context.CloseAsync();
    }

    private const string FloorArea = "[data-figure='A/form/floor-area']";

    private static string Field(string pointer) => "#" + FieldMap.ElementId(pointer);

    private static async Task<string[]> FetchedAsync(IPage page, ILocator link)
    {
        IDownload download = await page.RunAndWaitForDownloadAsync(() => link.ClickAsync());
        using ZipArchive zip = ZipFile.OpenRead(await download.PathAsync());
        return [.. zip.Entries.Select(e => e.FullName)];
    }

    // Goes on until the focus is there; a page that keeps the focus from it fails.
    private static async Task TabToAsync(IPage page, string selector, string key = "Tab")
    {
        for (int i = 0; i < 150; i++)
        {
            if (await page.EvaluateAsync<bool>("s => document.activeElement?.matches(s) ?? false", selector))
            {
                return;
            }

            await page.Keyboard.PressAsync(key);
        }

        Assert.Fail($"The keyboard does not reach {selector}.");
    }
}
