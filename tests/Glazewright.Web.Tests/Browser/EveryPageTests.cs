using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Glazewright.Web.Fields;
using Microsoft.Playwright;

namespace Glazewright.Web.Tests.Browser;

/// <summary>Each page of a job with all its answers: by axe in both themes, and on a phone's width without sideways scroll.</summary>
[Collection("browser")]
[Trait("Category", "Slow")]
public sealed class EveryPageTests(OpenBrowser browser)
{
    [Fact]
    public async Task Axe_finds_nothing()
    {
        IPage page = await browser.WindowAsync();
        List<string> wrong = [];
        await page.OpenAsync("/");
        await CheckAsync(page, "start", wrong);
        await JobAsync(page);
        foreach (JobPagePlan plan in PagePlan.All)
        {
            await GoAsync(page, plan);
            await CheckAsync(page, plan.Key, wrong);
        }

        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Answers_that_wait_for_a_mend_can_be_read_as_well()
    {
        IPage page = await browser.WindowAsync();
        List<string> wrong = [];
        await page.OpenAsync("/");
        await JobAsync(page);
        await page.Locator(".pages a[href*='/shape']").ClickAsync();
        await page.Locator("[data-corner=Ridge]").WaitForAsync();
        await page.PutAsync("/houses/0/width", "wide");
        ILocator waits = page.Locator(".picture.dim > figure").First;
        await waits.WaitForAsync();
        await page.WaitForFunctionAsync("() => getComputedStyle(document.querySelector('.picture.dim > figure')).filter.includes('grayscale')");
        await CheckAsync(page, "dimmed", wrong);
        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
        Assert.Equal("1", await waits.EvaluateAsync<string>("e => getComputedStyle(e).opacity"));
    }

    [Fact]
    public async Task A_phone_scrolls_down_only()
    {
        IPage page = await browser.WindowAsync(ColorScheme.Light, widthPx: 360);
        await page.OpenAsync("/");
        await NotWideAsync(page, "start");
        await JobAsync(page);
        foreach (JobPagePlan plan in PagePlan.All)
        {
            await GoAsync(page, plan);
            await NotWideAsync(page, plan.Key);
            if (plan.Key == "brief")
            {
                // The plans are read whole, not moved about in their box.
                string[] wide = await page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('.picture .chart.small .scroll')].filter(b => b.scrollWidth > b.clientWidth + 1).map(b => b.ariaLabel)");
                Assert.Empty(wide);
                Assert.True(await page.Locator(".picture .chart.small .scroll[aria-label='The lot']").CountAsync() == 1, "no plan of the lot");
                Assert.True(await page.Locator(".picture .chart.small .scroll[aria-label='Section of house A']").CountAsync() == 1, "no section that is read whole");
            }
        }

        await page.Context.CloseAsync();
    }

    // A table wider than the phone is moved in its box, by keys too; what each row is about stays at the left edge.
    [Fact]
    public async Task A_wide_table_keeps_the_names_of_its_rows_on_a_phone()
    {
        IPage page = await browser.WindowAsync(ColorScheme.Light, widthPx: 390);
        await page.OpenAsync("/");
        await JobAsync(page);
        int wide = 0;
        foreach (JobPagePlan plan in PagePlan.All.Where(p => p.Key is "frame" or "plant" or "year"))
        {
            await GoAsync(page, plan);
            string[] lost = await page.EvaluateAsync<string[]>("""
                () => {
                  const lost = [];
                  for (const box of document.querySelectorAll('.picture .scroll')) {
                    const table = box.querySelector(':scope > table');
                    if (!table || box.closest('details:not([open])') || box.clientWidth === 0 || box.scrollWidth <= box.clientWidth + 1) { continue; }
                    box.focus();
                    if (document.activeElement !== box) { lost.push('no focus: ' + table.innerText.slice(0, 60)); }
                    box.scrollLeft = box.scrollWidth;
                    for (const row of table.querySelectorAll('tbody tr')) {
                      const first = row.querySelector('th') ?? row.firstElementChild, left = first.getBoundingClientRect().left - box.getBoundingClientRect().left;
                      if (row.querySelector('th') && (left < -1 || left > 4 ||  first.offsetWidth > 0.5 * box.clientWidth || getComputedStyle(first).backgroundColor === 'rgba(0, 0, 0, 0)')) { lost.push(left + ' ' + first.offsetWidth + ': ' + row.innerText.slice(0, 60)); break; }
                    }
                    lost.wide = (lost.wide || 0) + 1;
                  }
                  return [...lost, 'wide ' + (lost.wide || 0)];
                }
                """);
            wide += int.Parse(lost[^1][5..], System.Globalization.CultureInfo.InvariantCulture);
            Assert.True(lost.Length == 1, plan.Key + ": " + string.Join(" | ", lost));
        }

        Assert.True(wide > 0, "no table was wide");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task The_theme_can_be_chosen_and_stays()
    {
        IPage page = await browser.WindowAsync(ColorScheme.Light);
        await page.OpenAsync("/");
        string light = await GroundAsync(page);
        await page.Locator("[data-theme-toggle]").ClickAsync();
        string dark = await GroundAsync(page);
        Assert.NotEqual(light, dark);
        await page.ReloadAsync();
        await page.Locator("h1").WaitForAsync();
        Assert.Equal(dark, await GroundAsync(page));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Nothing_is_loaded_from_elsewhere_and_the_policy_blocks_nothing_of_ours()
    {
        IPage page = await browser.WindowAsync();
        List<string> told = [];
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
            {
                told.Add(message.Text);
            }
        };
        page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith(browser.Server.Url, StringComparison.Ordinal) && !request.Url.StartsWith("data:", StringComparison.Ordinal) && !request.Url.StartsWith(browser.Server.Url.Replace("http", "ws", StringComparison.Ordinal), StringComparison.Ordinal))
            {
                told.Add(request.Url);
            }
        };
        await page.OpenAsync("/");
        await JobAsync(page);
        Assert.True(told.Count == 0, string.Join("\n", told));
        await page.Context.CloseAsync();
    }

    private static async Task JobAsync(IPage page)
    {
        await page.BringInAsync();
        await page.Locator("h2", new() { HasText = "Answers in short" }).WaitForAsync(new() { Timeout = Steps.BehindMs });
    }

    private static async Task GoAsync(IPage page, JobPagePlan plan)
    {
        await page.Locator($".pages a[href*='/{plan.Key}']").ClickAsync();
        await page.Locator("h1", new() { HasText = plan.Title }).WaitForAsync();
        await page.AnsweredAsync();
    }

    private static async Task CheckAsync(IPage page, string name, List<string> wrong)
    {
        AxeResult light = await page.RunAxe();
        // Dark changes colours only.
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        AxeResult dark = await page.RunAxe(new AxeRunOptions { RunOnly = new() { Type = "rule", Values = ["color-contrast"] } });
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
        AddRange(light, "light");
        AddRange(dark, "dark");

        void AddRange(AxeResult result, string theme) => wrong.AddRange(result.Violations.Select(v => $"{name} {theme}: {v.Id} ({v.Help}) at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Target + " " + n.Html[..Math.Min(120, n.Html.Length)]))}"));
    }

    private static async Task NotWideAsync(IPage page, string name) =>
        Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= innerWidth"), $"{name} scrolls sideways: " + await page.EvaluateAsync<string>(
            "() => [...document.querySelectorAll('body *')].filter(e => e.getBoundingClientRect().right > innerWidth + 1 && !e.closest('.scroll, .pages, nav')).slice(0, 5).map(e => e.outerHTML.slice(0, 100)).join(' | ')"));

    private static Task<string> GroundAsync(IPage page) => page.EvaluateAsync<string>("() => getComputedStyle(document.documentElement).backgroundColor");
}
