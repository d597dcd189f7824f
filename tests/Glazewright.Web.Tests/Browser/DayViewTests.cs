using System.Globalization;
using Microsoft.Playwright;

namespace Glazewright.Web.Tests.Browser;

/// <summary>Any day of the year, opened from its carpet.</summary>
[Collection("browser")]
public sealed class DayViewTests(OpenBrowser browser)
{
    [Fact]
    public async Task A_day_is_opened_by_pressing_it_by_keys_and_by_name()
    {
        IPage page = await browser.WindowAsync();
        await page.OpenAsync("/");
        await page.GetByRole(AriaRole.Button, new() { Name = "Open a copy of Two-Ridge Herb Yard" }).ClickAsync();
        await page.Locator(".pages a", new() { HasText = "Year" }).ClickAsync();
        ILocator carpet = page.Locator(".days .touch[data-ready]");
        await carpet.WaitForAsync(new() { Timeout = Steps.BehindMs });

        // Three fifths along the drawing is early August; which day, the drawing itself says.
        LocatorBoundingBoxResult box = (await carpet.BoundingBoxAsync())!;
        await carpet.ClickAsync(new() { Position = new() { X = box.Width * 0.6f, Y = box.Height * 0.4f } });
        ILocator shown = page.Locator("[data-shown-day]");
        await shown.WaitForAsync(new() { Timeout = Steps.BehindMs });
        int pressed = int.Parse((await shown.GetAttributeAsync("data-shown-day"))!, CultureInfo.InvariantCulture);
        Assert.InRange(pressed, 205, 225);
        await Assertions.Expect(shown.Locator("h3").First).ToHaveTextAsync(new DateTime(2026, 1, 1).AddDays(pressed).ToString("d MMMM", CultureInfo.InvariantCulture));
        Assert.True(await shown.Locator("svg.drawing").CountAsync() >= 4);

        await page.Locator("[data-day]").PressAsync("ArrowRight");
        await Assertions.Expect(shown).ToHaveAttributeAsync("data-shown-day", (pressed + 1).ToString(CultureInfo.InvariantCulture));
        await page.Locator("[data-day-coldest]").ClickAsync();
        await Assertions.Expect(shown).Not.ToHaveAttributeAsync("data-shown-day", (pressed + 1).ToString(CultureInfo.InvariantCulture));
        // The curves and the commands tell what is pointed at, and what the keys' mark stands on.
        ILocator air = shown.Locator(".point[data-ready]").First;
        await air.FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await page.Keyboard.PressAsync("Shift+ArrowRight");
        await Assertions.Expect(air).ToHaveAttributeAsync("aria-valuetext", new System.Text.RegularExpressions.Regex("^00:50: crop [−0-9.]+ °F, target [0-9.]+ °F, above curtain [−0-9.]+ °F, outside [−0-9.]+ °F$"));
        ILocator commands = shown.Locator(".point[data-ready]").Last;
        await commands.ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult bars = (await commands.BoundingBoxAsync())!;
        await commands.HoverAsync(new() { Position = new() { X = bars.Width * 0.6f, Y = 10 } });
        await Assertions.Expect(shown.Locator(".point-says").Last).ToHaveTextAsync(new System.Text.RegularExpressions.Regex("^1[0-9]:[0-9]{2}, louver: .+ \\([0-9:]{8} to [0-9:]{8}\\)$"));
        await shown.Locator("summary").ClickAsync();
        Assert.True(await shown.Locator("tbody tr").CountAsync() > 3);
    }
}
