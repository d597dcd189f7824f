using Glazewright.Web.Fields;
using Microsoft.Playwright;

namespace Glazewright.Web.Tests.Browser;

/// <summary>Openings and fans on the picture of their wall, by mouse and by keys.</summary>
[Collection("browser")]
[Trait("Category", "Slow")]
public sealed class WallTouchTests(OpenBrowser browser)
{
    [Fact]
    public async Task A_fan_dragged_along_the_end_wall_is_listed_with_the_others_and_one_undo_takes_it_back()
    {
        IPage page = await OpenAsync("Climate plant");
        ILocator fan = page.Locator("[data-thing=fan-1]");
        string before = (await fan.GetAttributeAsync("aria-valuetext"))!;
        await fan.ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult box = (await fan.Locator(".frame").BoundingBoxAsync())!;
        (float x, float y) = (box.X + box.Width / 2, box.Y + box.Height / 2);
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(x, y - 24, new() { Steps = 4 });
        Assert.Equal(5, (await page.Locator(".picture .touchable .preview").Last.GetAttributeAsync("points"))!.Split(' ').Length);
        await page.Mouse.UpAsync();
        await Assertions.Expect(fan).Not.ToHaveAttributeAsync("aria-valuetext", before);
        await Assertions.Expect(page.Locator("#" + FieldMap.ElementId("/houses/0/openings") + " > summary .count")).ToHaveTextAsync("7");
        await page.Locator("[data-undo]").ClickAsync();
        await Assertions.Expect(fan).ToHaveAttributeAsync("aria-valuetext", before);
        await Assertions.Expect(page.Locator("#" + FieldMap.ElementId("/houses/0/openings") + " > summary .count")).ToHaveTextAsync("3");
    }

    [Fact]
    public async Task Arrow_keys_move_a_door_by_the_inch_the_way_they_point()
    {
        IPage page = await OpenAsync("Shape & sun");
        await page.Locator("[data-wall]").SelectOptionAsync("Left");
        ILocator door = page.Locator("[data-thing=door-2]");
        await door.FocusAsync();
        await page.Keyboard.PressAsync("ArrowLeft");
        await Assertions.Expect(door).ToHaveAttributeAsync("aria-valuetext", "97'-11\" from end 1, 0\" above the floor");
        await page.AnsweredAsync();
        await page.Keyboard.PressAsync("Shift+ArrowLeft");
        await Assertions.Expect(door).ToHaveAttributeAsync("aria-valuetext", "96'-11\" from end 1, 0\" above the floor");

        // End 1 is seen from outside: its start, the left wall, lies to the right.
        await page.Locator("[data-wall]").SelectOptionAsync("End1");
        ILocator entrance = page.Locator("[data-thing=door-1]");
        await entrance.FocusAsync();
        await page.AnsweredAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(entrance).ToHaveAttributeAsync("aria-valuetext", "1'-11\" from the left wall, 0\" above the floor");
    }

    [Fact]
    public async Task A_roof_vent_is_dragged_on_its_slope_and_moved_by_keys()
    {
        IPage page = await browser.WindowAsync();
        await page.OpenAsync("/");
        await page.BringInAsync("\"openings\": [{ \"id\": \"vent-1\", \"kind\": \"vent\", \"face\": \"roof-left\", \"offset\": \"10 ft\", \"sill\": \"2 ft\" }]");
        await page.Locator(".pages a[href$='/shape']").ClickAsync();
        await page.Locator("[data-wall]").WaitForAsync(new() { Timeout = Steps.BehindMs });
        await page.Locator("[data-wall]").SelectOptionAsync("RoofLeft");
        ILocator vent = page.Locator("[data-thing=vent-1]");
        await page.Locator("svg[aria-label^='Openings of the slope'][data-ready]").WaitForAsync();
        await vent.FocusAsync();
        await page.Keyboard.PressAsync("Shift+ArrowRight");
        await Assertions.Expect(vent).ToHaveAttributeAsync("aria-valuetext", "11'-0\" from end 1, 2'-0\" up the slope from the eave");
        await page.AnsweredAsync();
        await vent.ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult box = (await vent.Locator(".frame").BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(box.X + box.Width / 2, box.Y + box.Height / 2);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(box.X + box.Width / 2 + 60, box.Y + box.Height / 2 - 300, new() { Steps = 5 });
        await page.Mouse.UpAsync();
        // It stops under the ridge: the slope of this house is longer than the vent.
        await Assertions.Expect(vent).Not.ToHaveAttributeAsync("aria-valuetext", "11'-0\" from end 1, 2'-0\" up the slope from the eave");
        Assert.Empty(await page.Locator(".fault").AllAsync());
        await page.Locator("[data-undo]").ClickAsync();
        await Assertions.Expect(vent).ToHaveAttributeAsync("aria-valuetext", "11'-0\" from end 1, 2'-0\" up the slope from the eave");
        await page.Context.CloseAsync();
    }

    private async Task<IPage> OpenAsync(string title)
    {
        IPage page = await browser.WindowAsync();
        await page.OpenAsync("/");
        await page.GetByRole(AriaRole.Button, new() { Name = "Open a copy of Two-Ridge Herb Yard" }).ClickAsync();
        await page.Locator(".pages a", new() { HasText = title }).ClickAsync();
        await page.Locator("[data-wall]").WaitForAsync(new() { Timeout = Steps.BehindMs });
        await page.Locator("svg[aria-label^='Openings of the wall'][data-ready]").WaitForAsync();
        return page;
    }
}
