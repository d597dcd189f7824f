using Glazewright.Web.Fields;
using Microsoft.Playwright;

namespace Glazewright.Web.Tests.Browser;

/// <summary>Typing faster than the server answers.</summary>
[Collection("browser")]
[Trait("Category", "Slow")]
public sealed class TypingTests(OpenBrowser browser)
{
    // The server answers the first letters when more are already typed: what it says of them must not take the rest away.
    [Fact]
    public async Task An_answer_to_the_first_letters_leaves_those_typed_since()
    {
        IPage page = await browser.WindowAsync();
        await page.OpenAsync("/");
        await page.BringInAsync();
        await page.Locator(".pages a[href$='/shape']").ClickAsync();
        ILocator width = page.Locator("#" + FieldMap.ElementId("/houses/0/width"));
        await width.EvaluateAsync("f => { f.value = '31 ft'; f.dispatchEvent(new Event('input', { bubbles: true })); f.value = '31 ft 6 in'; }");
        await Assertions.Expect(page.Locator("#" + FieldMap.ElementId("/houses/0/width") + "-echo")).ToContainTextAsync("31'-0\"");
        Assert.Equal("31 ft 6 in", await width.InputValueAsync());
        await width.DispatchEventAsync("change");
        await Assertions.Expect(page.Locator("#" + FieldMap.ElementId("/houses/0/width") + "-echo")).ToContainTextAsync("31'-6\"");
        await page.Context.CloseAsync();
    }
}
