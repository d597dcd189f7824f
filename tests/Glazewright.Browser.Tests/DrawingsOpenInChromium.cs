namespace Glazewright.Browser.Tests;

/// <summary>Every drawing of the demo's package opens in a real browser, at the size it says, and is not blank.</summary>
[Trait("Category", "Slow")]
public sealed class DrawingsOpenInChromium(DemoPackage package) : IClassFixture<DemoPackage>
{
    private static readonly string[] Quiet =
    [
        "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync",
    ];

    [Fact]
    public void Every_svg_loads_as_a_picture()
    {
        string browser = Browser();
        string[] drawings = [.. Directory.EnumerateFiles(package.Folder, "*.svg", SearchOption.AllDirectories).Order(StringComparer.Ordinal)];
        Assert.NotEmpty(drawings);
        foreach (string drawing in drawings)
        {
            // A drawing that is not well-formed, or has no size, fires onerror or loads with width 0.
            string page = Path.Combine(package.Scratch, "page.html");
            File.WriteAllText(page, $$"""
                <!doctype html><title>waiting</title>
                <img src="{{new Uri(drawing).AbsoluteUri}}" onerror="document.title='broken'"
                  onload="document.title = 'loaded ' + this.naturalWidth + ' ' + this.naturalHeight">
                """);
            (int exit, string dom) = package.Run(
                browser,
                [.. Quiet, $"--user-data-dir={Path.Combine(package.Scratch, "profile")}", "--virtual-time-budget=5000", "--dump-dom", new Uri(page).AbsoluteUri],
                TimeSpan.FromMinutes(1));
            Assert.Equal(0, exit);
            System.Text.RegularExpressions.Match title = System.Text.RegularExpressions.Regex.Match(dom, "<title>loaded ([0-9]+) ([0-9]+)</title>");
            Assert.True(title.Success, $"{Path.GetFileName(drawing)}: {dom}");
            Assert.True(int.Parse(title.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture) > 200, drawing);
        }
    }

    [Theory]
    [InlineData("light"), InlineData("dark")]
    public void The_plan_draws_something_on_light_and_on_dark_paper(string scheme)
    {
        string browser = Browser();
        string plan = Directory.EnumerateFiles(package.Folder, "plan.svg", SearchOption.AllDirectories).Order(StringComparer.Ordinal).First();
        string picture = Path.Combine(package.Scratch, $"{scheme}.png");
        List<string> arguments =
        [
            .. Quiet, $"--user-data-dir={Path.Combine(package.Scratch, "profile")}", "--window-size=1200,900", $"--screenshot={picture}",
        ];
        if (scheme == "dark")
        {
            arguments.Add("--blink-settings=preferredColorScheme=0");
        }

        arguments.Add(new Uri(plan).AbsoluteUri);
        (int exit, string output) = package.Run(browser, arguments, TimeSpan.FromMinutes(1));
        Assert.True(exit == 0 && File.Exists(picture), output);
        // An empty page of one colour packs to a few kilobytes; a drawing does not.
        Assert.True(new FileInfo(picture).Length > 15_000, $"{new FileInfo(picture).Length} bytes");
    }

    private static string Browser()
    {
        if (DemoPackage.Chromium is null)
        {
            Assert.Skip("No Chromium on this machine: install Debian's package chromium to open the drawings in a browser.");
        }

        return DemoPackage.Chromium;
    }
}
