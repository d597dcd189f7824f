using System.Globalization;
using Glazewright.Web.Fields;
using Microsoft.Playwright;

namespace Glazewright.Web.Tests.Browser;

/// <summary>Corners of the roof in the section, by mouse and by keys.</summary>
[Collection("browser")]
[Trait("Category", "Slow")]
public sealed class SectionTouchTests(OpenBrowser browser)
{
    [Fact]
    public async Task Dragging_the_ridge_moves_the_fields_the_ridge_height_and_Decembers_number()
    {
        IPage page = await OpenAsync();
        ILocator ridge = page.Locator("[data-corner=Ridge]");
        ILocator december = page.Locator("table tr", new() { HasText = "December" }).First;
        await december.WaitForAsync(new() { Timeout = Steps.BehindMs });
        string decemberBefore = (await december.TextContentAsync())!;
        double before = await HeightAsync(ridge);

        await ridge.ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult box = (await ridge.BoundingBoxAsync())!;
        (float x, float y) = (box.X + box.Width / 2, box.Y + box.Height / 2);
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(x - 60, y - 20, new() { Steps = 4 });
        Assert.NotEqual("", await page.Locator(".preview").First.GetAttributeAsync("points"));
        await page.Mouse.UpAsync();

        await Assertions.Expect(ridge).Not.ToHaveAttributeAsync("aria-valuenow", before.ToString("0.###", CultureInfo.InvariantCulture));
        await page.AnsweredAsync();
        Assert.True(await HeightAsync(ridge) > before + 0.2);
        Assert.Equal("", await page.Locator("#" + FieldMap.ElementId("/houses/0/roof/rightPitch")).InputValueAsync());
        await Assertions.Expect(december).Not.ToHaveTextAsync(decemberBefore, new() { Timeout = Steps.BehindMs });

        await page.Locator("[data-undo]").ClickAsync();
        await Assertions.Expect(ridge).ToHaveAttributeAsync("aria-valuenow", before.ToString("0.###", CultureInfo.InvariantCulture));
    }

    [Fact]
    public async Task Arrow_keys_move_an_eave_by_an_inch()
    {
        IPage page = await OpenAsync();
        ILocator eave = page.Locator("[data-corner=LeftEave]");
        await eave.FocusAsync();
        await page.Keyboard.PressAsync("ArrowUp");
        await Assertions.Expect(eave).ToHaveAttributeAsync("aria-valuetext", "7'-7\" high");
        await page.Keyboard.PressAsync("Shift+ArrowUp");
        await Assertions.Expect(eave).ToHaveAttributeAsync("aria-valuetext", "8'-7\" high");
        await Assertions.Expect(page.Locator("#" + FieldMap.ElementId("/houses/0/roof/leftEave"))).ToHaveValueAsync("8'-7\"");
    }

    private async Task<IPage> OpenAsync()
    {
        IPage page = await browser.WindowAsync();
        await page.OpenAsync("/");
        await page.GetByRole(AriaRole.Button, new() { Name = "Open a copy of Two-Ridge Herb Yard" }).ClickAsync();
        await page.Locator(".pages a", new() { HasText = "Shape & sun" }).ClickAsync();
        await page.Locator("[data-corner=Ridge]").WaitForAsync(new() { Timeout = Steps.BehindMs });
        return page;
    }

    private static async Task<double> HeightAsync(ILocator corner) => double.Parse((await corner.GetAttributeAsync("aria-valuenow"))!, CultureInfo.InvariantCulture);
}
