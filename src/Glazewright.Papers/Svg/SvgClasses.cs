using System.Globalization;
using System.Text;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Svg;

/// <summary>The looks one SVG uses, as attributes: classes of the file's own, in the order they first appear, or those of the page it stands in.</summary>
/// <param name="inPage">Whether it stands in a page, whose style sheet has the colours.</param>
internal sealed class SvgClasses(bool inPage)
{
    private readonly Dictionary<string, string> nameByStyle = [];
    private readonly HashSet<string> taken = [];
    private readonly List<(string Name, string Style, string? DarkStyle)> rules = [];

    public string Stroke(Role role, Pen pen)
    {
        string width = SvgWriter.Number(pen.WidthMm);
        if (inPage)
        {
            string gaps = pen.DashesMm.Count == 0 ? "" : $" stroke-dasharray=\"{string.Join(' ', pen.DashesMm.Select(SvgWriter.Number))}\"";
            return $"{InPage("line", "stroke", pen.Paint)} fill=\"none\" stroke-width=\"{width}\"{gaps}";
        }

        string dashes = pen.DashesMm.Count == 0 ? "" : ";stroke-dasharray:" + string.Join(' ', pen.DashesMm.Select(SvgWriter.Number));
        return Name(
            Pens.LayerOf(role), "stroke", pen.Paint, $"fill:none;stroke-width:{width}{dashes}");
    }

    public string Fill(Paint paint)
    {
        if (inPage)
        {
            return InPage("fill", "fill", paint) + " fill-rule=\"evenodd\"";
        }

        string stem = paint is Paint.Named named ? "on-" + named.Tone.ToString().ToLowerInvariant() : "tint";
        return Name(stem, "fill", paint, "fill-rule:evenodd");
    }

    public string Words(Mark.Words words)
    {
        double emMm = Lettering.EmMm(words.Face, words.CapHeightMm);
        if (inPage)
        {
            string bold = words.Face == Face.SemiBold ? " font-weight=\"600\"" : "";
            return $"{InPage("fill", "fill", words.Paint)} font-size=\"{emMm.ToString("0.###", CultureInfo.InvariantCulture)}\"{bold}";
        }

        string weight = words.Face == Face.SemiBold ? ";font-weight:600" : "";
        return Name("words", "fill", words.Paint, $"font-size:{emMm.ToString("0.###", CultureInfo.InvariantCulture)}px{weight}");
    }

    public void Write(StringBuilder file)
    {
        file.Append("<style>\n");
        file.Append("text{font-family:'IBM Plex Sans','Segoe UI',Helvetica,Arial,sans-serif}\n");
        file.Append(CultureInfo.InvariantCulture, $".page{{fill:{Hex(Tones.Light(Tone.Sheet))}}}\n");
        foreach ((string name, string style, _) in rules)
        {
            file.Append(CultureInfo.InvariantCulture, $".{name}{{{style}}}\n");
        }

        file.Append("@media screen and (prefers-color-scheme:dark){\n");
        file.Append(CultureInfo.InvariantCulture, $".page{{fill:{Hex(Tones.Dark(Tone.Sheet))}}}\n");
        foreach ((string name, _, string? dark) in rules)
        {
            if (dark is not null)
            {
                file.Append(CultureInfo.InvariantCulture, $".{name}{{{dark}}}\n");
            }
        }

        file.Append("}\n</style>\n");
    }

    private static string InPage(string stem, string property, Paint paint) => paint is Paint.Named named
        ? $"class=\"{stem}-{named.Tone.ToString().ToLowerInvariant()}\""
        : $"{property}=\"{Hex(paint.OnPaper())}\"";

    private string Name(string stem, string property, Paint paint, string rest)
    {
        string style = $"{property}:{Hex(paint.OnPaper())};{rest}";
        string key = paint is Paint.Named tone ? $"{stem}|{tone.Tone}|{rest}" : $"{stem}|{style}";
        if (nameByStyle.TryGetValue(key, out string? known))
        {
            return $"class=\"{known}\"";
        }

        string name = stem;
        for (int n = 2; !taken.Add(name); n++)
        {
            name = string.Create(CultureInfo.InvariantCulture, $"{stem}-{n}");
        }

        nameByStyle[key] = name;
        string? dark = paint is Paint.Named named ? $"{property}:{Hex(Tones.Dark(named.Tone))}" : null;
        rules.Add((name, style, dark));
        return $"class=\"{name}\"";
    }

    private static string Hex(int rgb) => "#" + rgb.ToString("x6", CultureInfo.InvariantCulture);
}
