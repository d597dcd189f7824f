using Microsoft.Playwright;

namespace Glazewright.Web.Tests.Browser;

/// <summary>Values of pictures, by pointing and by keys.</summary>
[Collection("browser")]
[Trait("Category", "Slow")]
public sealed class PointingTests(OpenBrowser browser)
{
    [Fact]
    public async Task A_light_map_and_a_carpet_tell_the_value_under_the_pointer_and_under_the_mark_of_the_keys()
    {
        IPage page = await browser.WindowAsync();
        await page.OpenAsync("/");
        await page.BringInAsync();
        await page.Locator(".pages a[href$='/shape']").ClickAsync();
        ILocator map = page.Locator(".point[data-ready]").First;
        await map.WaitForAsync(new() { Timeout = Steps.BehindMs });
        ILocator says = page.Locator(".point-says").First;
        await map.HoverAsync(new() { Position = new() { X = 60, Y = 40 } });
        await Assertions.Expect(says).ToContainTextAsync("January, cell");
        await Assertions.Expect(says).ToContainTextAsync("mol/m² a day");

        await map.FocusAsync();
        string before = (await says.TextContentAsync())!;
        await page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(says).Not.ToHaveTextAsync(before);
        await page.Keyboard.PressAsync("PageDown");
        await Assertions.Expect(map).ToHaveAttributeAsync("aria-valuetext", new System.Text.RegularExpressions.Regex("^February, cell .*: [0-9.]+ mol/m² a day$"));

        ILocator carpet = page.Locator("figure", new() { HasText = "mean of the whole map" }).Locator(".point");
        await carpet.FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await page.Keyboard.PressAsync("ArrowRight");
        await page.Keyboard.PressAsync("ArrowUp");
        await Assertions.Expect(carpet).ToHaveAttributeAsync("aria-valuetext", "2 Jan, 1–2 h: 0 µmol/m²s");
    }
}
