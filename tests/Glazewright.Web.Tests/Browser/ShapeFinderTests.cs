using Deque.AxeCore.Playwright;
using Glazewright.Web.Fields;
using Microsoft.Playwright;

namespace Glazewright.Web.Tests.Browser;

/// <summary>The shape finder on Shape &amp; sun: found, seen side by side, put into the job.</summary>
[Collection("browser")]
[Trait("Category", "Slow")]
public sealed class ShapeFinderTests(OpenBrowser browser)
{
    [Fact]
    public async Task A_found_shape_is_put_into_the_job_and_taken_out_again()
    {
        IPage page = await browser.WindowAsync();
        await page.OpenAsync("/");
        await page.BringInAsync();
        await page.Locator(".pages a[href$='/shape']").ClickAsync();
        await page.Locator("[data-find-shapes]").ClickAsync(new() { Timeout = Steps.BehindMs });
        ILocator chosen = page.Locator("[data-shape='Chosen by the finder']");
        await chosen.WaitForAsync(new() { Timeout = Steps.BehindMs });
        Assert.True(await page.Locator("[data-shape]").CountAsync() >= 3);
        Assert.Equal(0, await page.Locator("[data-shape='As drawn'] button").CountAsync());
        Assert.Empty((await page.Locator(".finder").RunAxe()).Violations.Select(v => v.Id + ": " + v.Help));
        await page.SetViewportSizeAsync(390, 800);
        Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= innerWidth"), "the found shapes scroll sideways");
        await page.SetViewportSizeAsync(1400, 900);
        ILocator ridge = page.Locator("#" + FieldMap.ElementId("/houses/0/roof/ridgeOffset"));
        Assert.Equal("", await ridge.InputValueAsync());
        await chosen.Locator("button").ClickAsync();
        await Assertions.Expect(ridge).Not.ToHaveValueAsync("");
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("version 2");
        // The choice is still there to compare with, and another can be tried.
        await Assertions.Expect(page.Locator(".finder")).ToContainTextAsync("as it was in version 1");
        await page.Locator("[data-undo]").ClickAsync();
        await Assertions.Expect(ridge).ToHaveValueAsync("");
    }
}
