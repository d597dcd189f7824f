using System.Globalization;
using Glazewright.Web.Fields;
using Microsoft.Playwright;

namespace Glazewright.Web.Tests.Browser;

/// <summary>
/// One person editing, and twenty at once in as many pages of a real browser. Run on request, against the published server. People's browsers paint on machines of their own; here they share the server's
/// processors, so their pictures are laid out and painted only where GLAZEWRIGHT_LOAD_PAINTS is set: the drawings are sent and put into the page either way.
/// </summary>
[Collection("browser")]
[Trait("Category", "Load")]
public sealed class LoadTests(OpenBrowser browser)
{

    // The mark: issue 8, "20 sessions editing at once on 2 cores, p95 edit-to-answer ≤ 1 s".
    [Fact(Explicit = true)]
    public Task Twenty_sessions_editing_at_once_are_answered_within_a_second() => EditAtOnceAsync(20, 10, 1000);

    // A server just started compiles while it answers: its first edits are told and not judged.
    private const int ColdEdits = 5;

    // The mark: issue 5, "one changed number answers on the page within 200 ms"; on a machine that does nothing else.
    [Fact(Explicit = true)]
    public Task One_session_is_answered_within_200_ms() => EditAtOnceAsync(1, 30, 200);

    private async Task EditAtOnceAsync(int sessions, int editsEach, double mostP95Ms)
    {
        double emptyMb = await MemoryMbAsync();
        IPage[] pages = new IPage[sessions];
        for (int i = 0; i < sessions; i++)
        {
            pages[i] = await browser.WindowAsync();
            pages[i].SetDefaultTimeout(90_000);
            await pages[i].OpenAsync("/");
            await pages[i].BringInAsync();
            await pages[i].Locator(".pages a[href$='/plant']").ClickAsync();
            await pages[i].Locator("[data-figure='A/duty/ventilation']").WaitForAsync();
            await pages[i].AnsweredAsync();
            if (Environment.GetEnvironmentVariable("GLAZEWRIGHT_LOAD_PAINTS") is null && sessions > 1)
            {
                // By script: the page's policy lets no style sheet of a stranger in.
                await pages[i].EvaluateAsync("() => { const sheet = new CSSStyleSheet(); sheet.replaceSync('.picture > *, .inputs > *, .side > * { display: none !important; }'); document.adoptedStyleSheets = [sheet]; }");
            }
        }

        double openMb = await MemoryMbAsync();
        double[][] took = await Task.WhenAll(pages.Select((page, i) => EditAsync(page, editsEach, new Random(i))));
        double workedMb = await MemoryMbAsync();
        double[] all = [.. took.SelectMany(t => sessions == 1 ? t.Skip(ColdEdits) : t).Order()];
        string cold = sessions == 1 ? $" First {ColdEdits}: {string.Join(", ", took[0].Take(ColdEdits).Select(t => t.ToString("0", CultureInfo.InvariantCulture)))} ms." : "";
        string told = string.Create(CultureInfo.InvariantCulture,
            $"{all.Length} edits of {sessions} session{(sessions == 1 ? "" : "s")} on {Environment.ProcessorCount} cores: median {At(all, 0.5):0} ms, p95 {At(all, 0.95):0} ms, longest {all[^1]:0} ms. Server: {emptyMb:0} MB empty, {openMb:0} MB with all open ({(openMb - emptyMb) / sessions:0.0} a session), {workedMb:0} MB after the edits ({(workedMb - emptyMb) / sessions:0.0} a session).{cold}");
        TestContext.Current.SendDiagnosticMessage(told);
        if (Environment.GetEnvironmentVariable("GLAZEWRIGHT_LOAD_LOG") is { Length: > 0 } log)
        {
            await File.WriteAllTextAsync(log, told + "\n");
        }

        Assert.Equal(sessions * editsEach, took.Sum(t => t.Length));
        Assert.True(At(all, 0.95) <= mostP95Ms, told);
    }

    // Each person types a new design temperature rise, sees the air it asks for change with the pictures beside it, thinks for one to five seconds, and types again.
    private static async Task<double[]> EditAsync(IPage page, int editsEach, Random chance)
    {
        double[] took = new double[editsEach];
        for (int i = 0; i < editsEach; i++)
        {
            await Task.Delay(chance.Next(1000, 5000));
            took[i] = await page.EvaluateAsync<double>(
                """
                ([field, text, figure]) => new Promise(done => {
                    const number = () => document.querySelector(`[data-figure='${figure}'] .number`)?.textContent;
                    const before = number(), input = document.getElementById(field), start = performance.now();
                    const watch = new MutationObserver(look);
                    function look() {
                        if (number() !== before && document.querySelector(".picture[aria-busy='false']")) { watch.disconnect(); done(performance.now() - start); }
                    }
                    watch.observe(document.body, { subtree: true, childList: true, characterData: true, attributes: true });
                    input.value = text;
                    input.dispatchEvent(new Event('input', { bubbles: true }));
                    input.dispatchEvent(new Event('change', { bubbles: true }));
                    setTimeout(() => { watch.disconnect(); done(60000); }, 60000);
                })
                """,
                new[] { FieldMap.ElementId("/houses/0/equipment/temperatureRise"), string.Create(CultureInfo.InvariantCulture, $"{(i % 2 == 0 ? 6 : 9) + chance.Next(10) / 10.0:0.0} F°"), "A/duty/ventilation" });
        }

        return took;
    }

    private async Task<double> MemoryMbAsync()
    {
        string status = await File.ReadAllTextAsync($"/proc/{browser.Server.ProcessId}/status");
        string line = status.Split('\n').First(l => l.StartsWith("VmRSS:", StringComparison.Ordinal));
        return double.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture) / 1024;
    }

    private static double At(double[] sorted, double share) => sorted[Math.Min(sorted.Length - 1, (int)Math.Ceiling(share * sorted.Length) - 1)];
}
