using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Glazewright.Design.Document;
using Glazewright.Store;
using Glazewright.Store.Jobs;
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

    // The papers lie nowhere on this server: that they were made is in the store.
    [Fact]
    public async Task A_server_started_anew_asks_about_papers_made_before()
    {
        Assert.SkipWhen(OpenBrowser.Chromium is null, "NOT TESTED: no Chromium on this machine. Install Debian's package 'chromium'.");
        await using RunningServer server = new();
        StoreDoor door = StoreDoor.Sqlite(Path.Combine(server.Data, "jobs.db"));
        JobStore jobs = new(door, TimeProvider.System);
        StoredJob job = await jobs.CreateAsync(Jobs.Desk.Example("three-lines.json"), "ann");
        Assert.True(await new MadePapers(door, TimeProvider.System).AddAsync(job.Id, 1, "a1"));
        Assert.IsType<SaveAnswer.Saved>(await jobs.SaveAsync(job.Id, 1, [Edit.Typed("/name", "Renamed")], "name", "ann"));
        await server.StartAsync();
        IPage page = await browser.WindowAsync();
        await page.GotoAsync($"{server.Url}/jobs/{job.Id}/papers");
        await page.AnsweredAsync();
        await Assertions.Expect(page.Locator("[data-papers-of='1']")).ToContainTextAsync("Papers were last made of version 1");
        await page.Locator("#status").SelectOptionAsync("Quoted");
        await Assertions.Expect(page.Locator("[data-open-matters]")).ToContainTextAsync("The papers that were made last are of version 1; the job is at version 2.");
        AxeResult axe = await page.RunAxe();
        Assert.True(axe.Violations.Length == 0, string.Join("\n", axe.Violations.Select(v => v.Id + " " + v.Help)));
        await page.Context.CloseAsync();
    }
}
