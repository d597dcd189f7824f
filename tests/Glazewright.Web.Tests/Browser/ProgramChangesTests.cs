using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Glazewright.Web.Fields;
using Microsoft.Playwright;

namespace Glazewright.Web.Tests.Browser;

/// <summary>The control program changed on its page.</summary>
[Collection("browser")]
[Trait("Category", "Slow")]
public sealed class ProgramChangesTests(OpenBrowser browser)
{
    [Fact]
    public async Task A_delay_is_changed_told_beside_what_is_written_and_taken_back()
    {
        IPage page = await OpenAsync();
        ILocator delay = page.Locator("[data-value='cooling/fan-1/delay']");
        string written = (await delay.Locator("input").GetAttributeAsync("placeholder"))!;
        await delay.Locator("input").FillAsync("77 s");
        await delay.Locator("input").BlurAsync();
        await Assertions.Expect(page.Locator("[data-changed]")).ToHaveTextAsync("One value is changed:");
        await Assertions.Expect(page.Locator(".changes li")).ToContainTextAsync($"cooling stages, fan-1: how long past it before it acts: 77 s (written: {written})");
        await Assertions.Expect(delay).ToContainTextAsync($"Written: {written}.");
        // The program in words follows, and what is found.
        await Assertions.Expect(page.Locator(".picture .bullets li", new() { HasText = "for 77 s" })).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator(".side")).ToContainTextAsync("the technician's own");
        await delay.GetByRole(AriaRole.Button, new() { Name = "Take back" }).ClickAsync();
        await Assertions.Expect(page.Locator("[data-changed]")).ToHaveTextAsync("Nothing is changed.");
        await Assertions.Expect(delay.Locator("input")).ToHaveValueAsync("");
        await page.Locator("[data-undo]").ClickAsync();
        await Assertions.Expect(delay.Locator("input")).ToHaveValueAsync("77 s");
        await page.Context.CloseAsync();
    }

    // By keyboard only: the field is reached with the tab key, typed into, and left; its fault is told where it stands and linked to from the news.
    [Fact]
    public async Task A_stage_that_would_chatter_is_a_fault_beside_its_field()
    {
        IPage page = await OpenAsync();
        await page.Locator("[data-value='cooling/fan-1/onAt'] input").FocusAsync();
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.TypeAsync("9 K");
        await page.Keyboard.PressAsync("Tab");
        ILocator off = page.Locator("[data-value='cooling/fan-1/offAt']");
        await Assertions.Expect(off.Locator(".fault")).ToContainTextAsync("it would chatter");
        await Assertions.Expect(off.Locator("input")).ToHaveAttributeAsync("aria-invalid", "true");
        await Assertions.Expect(page.Locator(".pages a[href*='/program'] .miss")).ToContainTextAsync("1");
        string link = (await page.Locator(".news li a").GetAttributeAsync("href"))!;
        Assert.EndsWith("#" + await off.Locator("input").GetAttributeAsync("id"), link, StringComparison.Ordinal);
        List<string> wrong = [];
        foreach (ColorScheme scheme in (ColorScheme[])[ColorScheme.Light, ColorScheme.Dark])
        {
            await page.EmulateMediaAsync(new() { ColorScheme = scheme });
            AxeResult found = await page.Locator(".program").RunAxe();
            wrong.AddRange(found.Violations.Select(v => $"{scheme}: {v.Id} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html[..Math.Min(160, n.Html.Length)]))}"));
        }

        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
        await off.GetByRole(AriaRole.Button, new() { Name = "Take back" }).FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(off.Locator(".fault")).ToHaveCountAsync(0);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_change_whose_fan_went_is_told_and_stays_until_it_is_taken_back()
    {
        IPage page = await OpenAsync();
        await page.Locator("[data-value='cooling/wet-wall-pump/delay'] input").FillAsync("4 min");
        await page.Locator("[data-value='cooling/wet-wall-pump/delay'] input").BlurAsync();
        await Assertions.Expect(page.Locator(".changes li")).ToHaveCountAsync(1);
        await page.Locator(".pages a", new() { HasText = "Climate plant" }).ClickAsync();
        await page.Locator("summary", new() { HasText = "Wet wall" }).First.ClickAsync();
        await page.Locator("#" + FieldMap.ElementId("/houses/0/equipment/wetWall/use")).SelectOptionAsync("false");
        await page.AnsweredAsync();
        await page.Locator(".pages a[href*='/program']").ClickAsync();
        await Assertions.Expect(page.Locator(".changes li")).ToContainTextAsync("nothing to change");
        await Assertions.Expect(page.Locator(".side")).ToContainTextAsync("has nothing to change");
        await page.Locator(".changes").GetByRole(AriaRole.Button, new() { Name = "Take back" }).ClickAsync();
        await Assertions.Expect(page.Locator("[data-changed]")).ToHaveTextAsync("Nothing is changed.");
        await page.Context.CloseAsync();
    }

    private async Task<IPage> OpenAsync()
    {
        IPage page = await browser.WindowAsync();
        await page.OpenAsync("/");
        await page.GetByRole(AriaRole.Button, new() { Name = "Open a copy of Two-Ridge Herb Yard" }).ClickAsync();
        await page.Locator(".pages a[href*='/program']").ClickAsync();
        await page.Locator("[data-changed]").WaitForAsync(new() { Timeout = Steps.BehindMs });
        await page.AnsweredAsync();
        return page;
    }
}
