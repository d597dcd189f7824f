using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Glazewright.Web.Tests.Browser;

/// <summary>Two versions of a job, from its history.</summary>
[Collection("browser")]
[Trait("Category", "Slow")]
public sealed class SideBySideTests(OpenBrowser browser)
{
    [Fact]
    public async Task A_marked_version_is_laid_beside_the_job_as_it_is_in_one_click_from_the_history()
    {
        IPage page = await browser.WindowAsync();
        await page.OpenAsync("/");
        await page.BringInAsync();
        await page.Locator(".pages a[href$='/papers']").ClickAsync();
        await page.Locator("#mark").FillAsync("A");
        await page.Locator("#note").FillAsync("first wish");
        await page.Locator("[data-mark]").ClickAsync();
        await Assertions.Expect(page.Locator("[data-marked]")).ToContainTextAsync("revision A: first wish");
        await page.Locator(".pages a[href$='/shape']").ClickAsync();
        await page.PutAsync("/houses/0/width", "30 ft");
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("version 2");
        await page.AnsweredAsync();
        await page.Locator(".pages a[href$='/papers']").ClickAsync();
        await page.Locator("[data-beside='1']").ClickAsync();

        await Assertions.Expect(page.Locator("[data-fields] tbody tr")).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator("[data-fields] tbody tr")).ToContainTextAsync("House A, width");
        await Assertions.Expect(page.Locator("[data-fields] tbody tr")).ToContainTextAsync("30'-0\" (9.14 m)");
        await Assertions.Expect(page.Locator("[data-keys] [data-number='A/form/floor-area']")).ToContainTextAsync("+192 ft²", new() { Timeout = Steps.BehindMs });
        await page.Locator("[data-keys] [data-number='price/price']").WaitForAsync(new() { Timeout = Steps.BehindMs });
        await page.Locator("main[aria-busy=false]").WaitForAsync(new() { Timeout = Steps.BehindMs });
        Assert.True(await page.Locator(".two svg.drawing").CountAsync() >= 8);
        AxeResult axe = await page.RunAxe();
        Assert.True(axe.Violations.Length == 0, string.Join("\n", axe.Violations.Select(v => $"{v.Id}: {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}")));

        // A version from long ago, and the other way round.
        await page.Locator("#side-The-other-version").SelectOptionAsync("1");
        await Assertions.Expect(page.Locator("[data-no-changes]")).ToBeVisibleAsync();
        await page.SetViewportSizeAsync(360, 800);
        Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= innerWidth"), "It scrolls sideways on a phone.");
        // The first value of a key figure is seen beside its name.
        LocatorBoundingBoxResult value = (await page.Locator("[data-keys] tbody td.end").First.BoundingBoxAsync())!;
        Assert.True(value.X + value.Width < 360, $"the first value ends at {value.X + value.Width} px");
        await page.GotoAsync(page.Url.Replace("bv=1", "bv=77", StringComparison.Ordinal));
        await Assertions.Expect(page.Locator(".notice.miss")).ToContainTextAsync("no such job or version");
        await page.Context.CloseAsync();
    }

    // It compared with a slip of typing, which cannot be computed.
    [Fact]
    public async Task From_a_job_the_newest_earlier_version_without_faults_is_beside_it()
    {
        IPage page = await browser.WindowAsync();
        await page.OpenAsync("/");
        await page.BringInAsync();
        await page.Locator(".pages a[href$='/shape']").ClickAsync();
        await page.PutAsync("/houses/0/width", "28 ft");
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("version 2");
        await page.PutAsync("/houses/0/width", "wide");
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("version 3");
        await page.PutAsync("/houses/0/width", "30 ft");
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("version 4");
        await page.Locator(".jobbar a", new() { HasText = "Side by side" }).ClickAsync();
        await Assertions.Expect(page.Locator("[data-was]").First).ToHaveTextAsync("Version 2 came of: House A, width: 28 ft");
        await Assertions.Expect(page.Locator("[data-was]").Last).ToHaveTextAsync("Version 4 came of: House A, width: 30 ft");
        Assert.Contains("av=2", page.Url, StringComparison.Ordinal);
        await page.Context.CloseAsync();
    }
}
