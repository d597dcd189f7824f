using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Glazewright.Web.Tests.Browser;

/// <summary>A job that is called quoted while something is open: asked first, by keyboard too, and noted.</summary>
[Collection("browser")]
[Trait("Category", "Slow")]
public sealed class StatusTests(OpenBrowser browser)
{
    [Fact]
    public async Task A_job_with_something_open_is_asked_about_and_goes_on_knowingly()
    {
        IPage page = await browser.WindowAsync();
        await page.OpenAsync("/");
        await page.BringInAsync("\"frame\": { \"pierDepth\": \"1 ft\" }");
        await page.AnsweredAsync();
        await page.Locator(".pages a[href*='/papers']").ClickAsync();
        ILocator status = page.Locator("#status");
        ILocator question = page.Locator("[data-open-matters]");
        await status.FocusAsync();
        await status.SelectOptionAsync("Quoted");
        await Assertions.Expect(question).ToBeFocusedAsync();
        await Assertions.Expect(question).ToContainTextAsync("of danger");
        Assert.Contains("/frame#findings", await question.Locator("a").First.GetAttributeAsync("href"));
        AxeResult axe = await page.RunAxe();
        Assert.True(axe.Violations.Length == 0, string.Join("\n", axe.Violations.Select(v => v.Id + " " + v.Help)));

        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(question).ToHaveCountAsync(0);
        await Assertions.Expect(status).ToBeFocusedAsync();
        await Assertions.Expect(status).ToHaveValueAsync("Draft");
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("draft");

        await status.SelectOptionAsync("Quoted");
        await Assertions.Expect(question).ToBeFocusedAsync();
        while (!await page.EvaluateAsync<bool>("() => document.activeElement.matches('[data-go-on]')"))
        {
            await page.Keyboard.PressAsync("Tab");
        }

        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("quoted");
        await Assertions.Expect(page.Locator("[data-noted]")).ToContainTextAsync("Set to quoted by this computer, knowing:");
        await Assertions.Expect(page.Locator("[data-noted]")).ToContainTextAsync("frame/uplift");
        await Assertions.Expect(page.Locator("#mark")).ToBeVisibleAsync();

        // Back to draft is asked by nobody.
        await status.SelectOptionAsync("Draft");
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("draft");
        await page.Context.CloseAsync();
    }
}
