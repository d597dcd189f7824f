using System.Globalization;
using System.Text.RegularExpressions;
using Glazewright.Papers.Drawing;
using Glazewright.Web.Tests.Browser;

namespace Glazewright.Web.Tests.Fields;

/// <summary>The look's tokens: the same as the drawings', in both ways dark is chosen, and legible by WCAG 2.2 (1.4.3 and 1.4.11; relative luminance as it defines it, from memory).</summary>
public partial class TokenTests
{
    private static readonly Dictionary<string, string>[] s_themes = Themes();

    [Fact]
    public void Pages_and_drawings_have_the_same_tones()
    {
        foreach (Tone tone in Enum.GetValues<Tone>())
        {
            string name = tone.ToString().ToLowerInvariant();
            Assert.Equal(Tones.Light(tone), Rgb(s_themes[0][name]));
            Assert.Equal(Tones.Dark(tone), Rgb(s_themes[1][name]));
        }

        Assert.Equal(s_themes[1], s_themes[2]);
    }

    [Theory]
    [InlineData("ink"), InlineData("ink2"), InlineData("ink3"), InlineData("accent"), InlineData("accent-strong"), InlineData("held"), InlineData("near"), InlineData("miss")]
    public void Text_is_legible_on_every_ground(string text) =>
        Assert.All(s_themes, t => Assert.All((string[])["paper", "sheet", "wash"], ground => Assert.True(Contrast(t[text], t[ground]) >= 4.5, $"{text} on {ground}: {Contrast(t[text], t[ground]):0.00}")));

    [Fact]
    public void Borders_that_mean_something_and_text_on_the_accent_are_seen() => Assert.All(s_themes, t =>
    {
        Assert.True(Contrast(t["edge"], t["sheet"]) >= 3 && Contrast(t["edge"], t["paper"]) >= 3);
        Assert.True(Contrast(t["on-accent"], t["accent"]) >= 4.5 && Contrast(t["on-accent"], t["accent-strong"]) >= 4.5);
        Assert.True(Contrast(t["paper"], t["near"]) >= 4.5 && Contrast(t["paper"], t["miss"]) >= 4.5);
    });

    private static Dictionary<string, string>[] Themes()
    {
        string css = File.ReadAllText(Path.Combine(RunningServer.Root, "src", "Glazewright.Web", "wwwroot", "tokens.css"));
        return [.. Block().Matches(css).Select(b => Token().Matches(b.Value).ToDictionary(m => m.Groups[1].Value, m => m.Groups[2].Value))];
    }

    private static double Contrast(string one, string other)
    {
        double[] both = [Luminance(Rgb(one)), Luminance(Rgb(other))];
        return (both.Max() + 0.05) / (both.Min() + 0.05);
    }

    private static double Luminance(int rgb)
    {
        double Linear(int channel) => channel / 255.0 is <= 0.04045 and var c ? c / 12.92 : Math.Pow((channel / 255.0 + 0.055) / 1.055, 2.4);
        return 0.2126 * Linear(rgb >> 16) + 0.7152 * Linear((rgb >> 8) & 255) + 0.0722 * Linear(rgb & 255);
    }

    private static int Rgb(string hex) => int.Parse(hex.AsSpan(1), NumberStyles.HexNumber, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"--([a-z0-9-]+): (#[0-9A-Fa-f]{6});")]
    private static partial Regex Token();

    [GeneratedRegex(@":root[^{]*\{[^}]*\}")]
    private static partial Regex Block();
}
