using Microsoft.Playwright;

namespace Glazewright.Web.Tests.Browser;

/// <summary>The view in three dimensions, in a browser that draws it in software.</summary>
[Collection("browser")]
[Trait("Category", "Slow")]
public sealed class SceneTests(OpenBrowser browser)
{
    [Fact]
    public async Task Sun_cut_keys_and_sides_change_the_picture_and_a_touch_names_the_part()
    {
        IPage page = await browser.WindowAsync();
        await page.OpenAsync("/");
        await page.GetByRole(AriaRole.Button, new() { Name = "Open a copy of Two-Ridge Herb Yard" }).ClickAsync();
        await page.Locator(".pages a", new() { HasText = "Shape & sun" }).ClickAsync();
        ILocator view = page.Locator("[data-scene][data-model]");
        await view.WaitForAsync(new() { Timeout = Steps.BehindMs });
        ILocator says = page.Locator(".scene-says");
        await Assertions.Expect(says).ToContainTextAsync("21 December, 12:00: the sun stands 25° high in the south");

        await ChangesAsync(view, () => page.Locator("[data-scene-hour]").FillAsync("9.5"));
        await Assertions.Expect(says).ToContainTextAsync("in the south-east");
        await ChangesAsync(view, () => page.Locator("[data-scene-day]").FillAsync("172"));
        await Assertions.Expect(says).ToContainTextAsync("21 June");
        await ChangesAsync(view, () => page.Locator("[data-scene-cut]").FillAsync("50"));
        await ChangesAsync(view, () => page.GetByLabel("covering", new() { Exact = true }).UncheckAsync());
        await ChangesAsync(view, () => page.GetByRole(AriaRole.Button, new() { Name = "From above" }).ClickAsync());
        await ChangesAsync(view, () => view.Locator("canvas").PressAsync("ArrowLeft"));

        LocatorBoundingBoxResult box = (await view.BoundingBoxAsync())!;
        for (double at = 0.2; at < 0.8 && !(await says.TextContentAsync())!.Contains("Touched", StringComparison.Ordinal); at += 0.05)
        {
            string? touches = await view.GetAttributeAsync("data-touches");
            await page.Mouse.ClickAsync(box.X + box.Width / 2, (float)(box.Y + box.Height * at));
            await Assertions.Expect(view).Not.ToHaveAttributeAsync("data-touches", touches ?? "");
        }

        await Assertions.Expect(says).ToContainTextAsync("Touched: ");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task The_light_map_lies_in_the_house_and_follows_the_day()
    {
        IPage page = await browser.WindowAsync();
        await page.OpenAsync("/");
        await page.BringInAsync();
        await page.Locator(".pages a[href$='/shape']").ClickAsync();
        ILocator view = page.Locator("[data-scene][data-laid='A']");
        await view.WaitForAsync(new() { Timeout = Steps.BehindMs });
        ILocator key = page.Locator("[data-scene-key]");
        await Assertions.Expect(key).ToContainTextAsync("on a mean day of December");
        await page.GetByRole(AriaRole.Button, new() { Name = "From above" }).ClickAsync();
        await page.GetByLabel("covering", new() { Exact = true }).UncheckAsync();
        await ChangesAsync(view, () => page.Locator("[data-scene-day]").FillAsync("172"));
        await Assertions.Expect(key).ToContainTextAsync("on a mean day of June");
        if (Environment.GetEnvironmentVariable("GLAZEWRIGHT_PICTURES") is { } folder)
        {
            await page.Locator(".scene").ScreenshotAsync(new() { Path = Path.Combine(folder, "scene-light.png") });
        }

        await page.Locator("[data-scene-floor]").CheckAsync();
        await Assertions.Expect(key).ToContainTextAsync("on the floor, below and between the benches");
        if (Environment.GetEnvironmentVariable("GLAZEWRIGHT_PICTURES") is { } floor)
        {
            await page.Locator(".scene").ScreenshotAsync(new() { Path = Path.Combine(floor, "scene-floor.png") });
        }

        await page.Locator("[data-scene-floor]").UncheckAsync();
        await Assertions.Expect(key).ToContainTextAsync("at bench height");
        await page.GetByLabel("light map", new() { Exact = true }).UncheckAsync();
        await page.Locator("[data-scene][data-laid='']").WaitForAsync();
        await Assertions.Expect(key).ToHaveCountAsync(0);

        // The map goes with the model it lay in: an edit takes it away until the light is computed anew.
        await page.GetByLabel("light map", new() { Exact = true }).CheckAsync();
        await view.WaitForAsync();
        await page.PutAsync("/houses/0/width", "30 ft");
        await page.Locator("[data-scene][data-laid='']").WaitForAsync(new() { Timeout = 30_000 });
        await view.WaitForAsync(new() { Timeout = Steps.BehindMs });
        await page.Context.CloseAsync();
    }

    // The picture of a view differs from what it was before: nothing that merely runs without an error passes.
    private static async Task ChangesAsync(ILocator view, Func<Task> act)
    {
        byte[] before = await StillAsync(view);
        await act();
        for (int i = 0; i < 50; i++)
        {
            if (!(await StillAsync(view)).AsSpan().SequenceEqual(before))
            {
                return;
            }
        }

        Assert.Fail("The picture stayed as it was.");
    }

    private static Task<byte[]> StillAsync(ILocator view) => view.Locator("canvas").ScreenshotAsync();
}
