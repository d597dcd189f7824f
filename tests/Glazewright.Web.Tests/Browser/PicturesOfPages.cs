using Glazewright.Web.Fields;
using Microsoft.Playwright;

namespace Glazewright.Web.Tests.Browser;

/// <summary>Pictures of every page for eyes, written only when asked for by GLAZEWRIGHT_PICTURES.</summary>
[Collection("browser")]
[Trait("Category", "Slow")]
public sealed class PicturesOfPages(OpenBrowser browser)
{
    [Fact(Explicit = true)]
    public async Task Of_every_page_in_light_dark_and_phone()
    {
        string? folder = Environment.GetEnvironmentVariable("GLAZEWRIGHT_PICTURES");
        Assert.SkipWhen(folder is null, "Pictures for eyes are made only when GLAZEWRIGHT_PICTURES names a folder.");
        foreach ((string name, ColorScheme scheme, int width) in new[] { ("light", ColorScheme.Light, 1400), ("dark", ColorScheme.Dark, 1400), ("phone", ColorScheme.Light, 390) })
        {
            IPage page = await browser.WindowAsync(scheme, width);
            await page.OpenAsync("/");
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder!, $"start-{name}.png"), FullPage = true });
            await page.GetByRole(AriaRole.Button, new() { Name = "Open a copy of Two-Ridge Herb Yard" }).ClickAsync();
            await page.Locator(".inputs h1").WaitForAsync();
            await page.Locator("h2", new() { HasText = "Answers in short" }).WaitForAsync(new() { Timeout = Steps.BehindMs });
            foreach (JobPagePlan plan in PagePlan.All)
            {
                await page.Locator(".pages a").Filter(new() { HasText = plan.Title }).First.ClickAsync();
                await page.Locator("h1", new() { HasText = plan.Title }).WaitForAsync();
                await page.AnsweredAsync();
                await page.ScreenshotAsync(new() { Path = Path.Combine(folder!, $"{plan.Key}-{name}.png"), FullPage = name != "dark" });
            }

            await page.Context.CloseAsync();
        }
    }

    [Fact(Explicit = true)]
    public async Task Of_two_versions_side_by_side()
    {
        string? folder = Environment.GetEnvironmentVariable("GLAZEWRIGHT_PICTURES");
        Assert.SkipWhen(folder is null, "Pictures for eyes are made only when GLAZEWRIGHT_PICTURES names a folder.");
        foreach ((string name, ColorScheme scheme, int width) in new[] { ("light", ColorScheme.Light, 1400), ("dark", ColorScheme.Dark, 1400), ("phone", ColorScheme.Light, 390) })
        {
            IPage page = await browser.WindowAsync(scheme, width);
            await page.OpenAsync("/");
            await page.GetByRole(AriaRole.Button, new() { Name = "Open a copy of Two-Ridge Herb Yard" }).ClickAsync();
            await page.Locator(".pages a[href$='/shape']").ClickAsync();
            await page.Locator("h1", new() { HasText = "Shape" }).WaitForAsync();
            await page.AnsweredAsync();
            await page.PutAsync("/houses/0/length", "112 ft");
            await page.AnsweredAsync();
            await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("version 2");
            await page.Locator(".jobbar a", new() { HasText = "Side by side" }).ClickAsync();
            await page.Locator("[data-number='price/price']").First.WaitForAsync(new() { Timeout = Steps.BehindMs });
            await page.Locator("main[aria-busy=false]").WaitForAsync();
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder!, $"compare-{name}.png"), FullPage = true });
            await page.Context.CloseAsync();
        }
    }

    [Fact(Explicit = true)]
    public async Task Of_found_shapes()
    {
        string? folder = Environment.GetEnvironmentVariable("GLAZEWRIGHT_PICTURES");
        Assert.SkipWhen(folder is null, "Pictures for eyes are made only when GLAZEWRIGHT_PICTURES names a folder.");
        IPage page = await browser.WindowAsync();
        await page.OpenAsync("/");
        await page.GetByRole(AriaRole.Button, new() { Name = "Open a copy of Two-Ridge Herb Yard" }).ClickAsync();
        await page.Locator(".pages a[href$='/shape']").ClickAsync();
        await page.Locator("[data-find-shapes]").ClickAsync(new() { Timeout = Steps.BehindMs });
        await page.Locator("[data-shape]").First.WaitForAsync(new() { Timeout = Steps.BehindMs });
        foreach ((string name, ColorScheme scheme, int width) in new[] { ("light", ColorScheme.Light, 1400), ("dark", ColorScheme.Dark, 1400), ("phone", ColorScheme.Light, 390) })
        {
            await page.EmulateMediaAsync(new() { ColorScheme = scheme });
            await page.SetViewportSizeAsync(width, 900);
            await page.Locator(".finder").ScreenshotAsync(new() { Path = Path.Combine(folder!, $"finder-{name}.png") });
        }

        await page.Context.CloseAsync();
    }

    [Fact(Explicit = true)]
    public async Task Of_a_changed_program()
    {
        string? folder = Environment.GetEnvironmentVariable("GLAZEWRIGHT_PICTURES");
        Assert.SkipWhen(folder is null, "Pictures for eyes are made only when GLAZEWRIGHT_PICTURES names a folder.");
        IPage page = await browser.WindowAsync();
        await page.OpenAsync("/");
        await page.GetByRole(AriaRole.Button, new() { Name = "Open a copy of Two-Ridge Herb Yard" }).ClickAsync();
        await page.Locator(".pages a[href*='/program']").ClickAsync();
        foreach ((string field, string typed) in new[] { ("cooling/fan-1/delay", "77 s"), ("alarms//tooColdBelow", "40 F"), ("heating/heater-1/offAt", "2 K") })
        {
            ILocator input = page.Locator($"[data-value='{field}'] input");
            await input.WaitForAsync(new() { State = WaitForSelectorState.Attached, Timeout = Steps.BehindMs });
            if (!await input.IsVisibleAsync())
            {
                await page.Locator($"[data-part='{field.Split('/')[0]}'] > summary").ClickAsync();
            }

            await input.FillAsync(typed);
            await input.BlurAsync();
            await page.AnsweredAsync();
        }

        await page.Locator(".field.wrong").WaitForAsync();
        foreach ((string name, ColorScheme scheme, int width) in new[] { ("light", ColorScheme.Light, 1400), ("dark", ColorScheme.Dark, 1400), ("phone", ColorScheme.Light, 390) })
        {
            await page.EmulateMediaAsync(new() { ColorScheme = scheme });
            await page.SetViewportSizeAsync(width, 1700);
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder!, $"program-changed-{name}.png") });
        }

        await page.Context.CloseAsync();
    }

    [Fact(Explicit = true)]
    public async Task Of_a_day_that_is_pointed_at()
    {
        string? folder = Environment.GetEnvironmentVariable("GLAZEWRIGHT_PICTURES");
        Assert.SkipWhen(folder is null, "Pictures for eyes are made only when GLAZEWRIGHT_PICTURES names a folder.");
        IPage page = await browser.WindowAsync();
        await page.OpenAsync("/");
        await page.GetByRole(AriaRole.Button, new() { Name = "Open a copy of Two-Ridge Herb Yard" }).ClickAsync();
        await page.Locator(".pages a", new() { HasText = "Year" }).ClickAsync();
        await page.Locator("[data-day-hottest]").ClickAsync(new() { Timeout = Steps.BehindMs });
        ILocator shown = page.Locator("[data-shown-day]");
        await shown.Locator(".point[data-ready]").Last.WaitForAsync(new() { Timeout = Steps.BehindMs });
        foreach ((string name, ColorScheme scheme, int width) in new[] { ("light", ColorScheme.Light, 1400), ("dark", ColorScheme.Dark, 1400), ("phone", ColorScheme.Light, 390) })
        {
            await page.EmulateMediaAsync(new() { ColorScheme = scheme });
            await page.SetViewportSizeAsync(width, 1200);
            foreach (ILocator chart in (ILocator[])[shown.Locator(".point").First, shown.Locator(".point").Last])
            {
                await chart.FocusAsync();
                await page.Keyboard.PressAsync("Shift+ArrowRight");
                await page.Keyboard.PressAsync("Shift+ArrowRight");
            }

            await page.Locator(".days").ScreenshotAsync(new() { Path = Path.Combine(folder!, $"day-{name}.png") });
        }

        await page.Context.CloseAsync();
    }

    [Fact(Explicit = true)]
    public async Task Of_a_vent_in_its_slope()
    {
        string? folder = Environment.GetEnvironmentVariable("GLAZEWRIGHT_PICTURES");
        Assert.SkipWhen(folder is null, "Pictures for eyes are made only when GLAZEWRIGHT_PICTURES names a folder.");
        IPage page = await browser.WindowAsync();
        await page.OpenAsync("/");
        await page.BringInAsync("\"openings\": [{ \"id\": \"vent-1\", \"kind\": \"vent\", \"face\": \"roof-right\", \"offset\": \"10 ft\", \"sill\": \"8 ft\" }]");
        await page.Locator(".pages a[href$='/shape']").ClickAsync();
        await page.Locator("[data-wall]").SelectOptionAsync("RoofRight", new() { Timeout = Steps.BehindMs });
        await page.Locator("svg[aria-label^='Openings of the slope'][data-ready]").WaitForAsync();
        foreach ((string name, ColorScheme scheme, int width) in new[] { ("light", ColorScheme.Light, 1400), ("dark", ColorScheme.Dark, 1400), ("phone", ColorScheme.Light, 390) })
        {
            await page.EmulateMediaAsync(new() { ColorScheme = scheme });
            await page.SetViewportSizeAsync(width, 900);
            await page.Locator("figure", new() { Has = page.Locator("[data-thing]") }).ScreenshotAsync(new() { Path = Path.Combine(folder!, $"slope-{name}.png") });
        }

        await page.Context.CloseAsync();
    }
}
