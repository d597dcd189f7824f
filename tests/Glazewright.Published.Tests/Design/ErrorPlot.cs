using System.Globalization;
using System.Text;

namespace Glazewright.Published.Tests.Design;

/// <summary>A plain picture of a few series over one axis, as SVG that reads on light and dark ground, and its numbers as CSV. Same bytes every time.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="Across">Name and unit of the axis across.</param>
/// <param name="Up">Name and unit of the axis up.</param>
/// <param name="Low">Foot of the axis up.</param>
/// <param name="High">Its top.</param>
/// <param name="Tick">Distance of its lines.</param>
/// <param name="Places">Names along the axis across.</param>
/// <param name="Series">Name and a value for each place; not-a-number where there is none.</param>
/// <param name="Bars">Series that are drawn as bars.</param>
/// <param name="Marked">Places marked with a band, and what that means.</param>
internal sealed record ErrorPlot(
    string Title, string Across, string Up, double Low, double High, double Tick, string[] Places, (string Name, double[] Values)[] Series, int Bars, (int[] Places, string Means) Marked)
{
    private const double Left = 62, Top = 74, Wide = 640, Tall = 250;

    private const string Style = """
        text{font:12px system-ui,sans-serif;fill:#2b2f36}.t{font-size:15px;font-weight:600}.g{stroke:#c9ced6;stroke-width:1}.z{stroke:#6b7280;stroke-width:1.2}.m{fill:#8a93a1;fill-opacity:.22}
        .s0{--c:#1f6fb2}.s1{--c:#c2571a}.s2{--c:#2f7d4f}.s3{--c:#7a4fa3}.b{fill:var(--c);fill-opacity:.75}.l{fill:none;stroke:var(--c);stroke-width:2.2}.d{fill:var(--c)}.n1{stroke-dasharray:7 3}.n2{stroke-dasharray:2 3}.n3{stroke-dasharray:9 3 2 3}
        @media(prefers-color-scheme:dark){text{fill:#e3e6eb}.g{stroke:#4a515c}.z{stroke:#9aa3b0}.s0{--c:#6db3f2}.s1{--c:#f0a05a}.s2{--c:#79c79a}.s3{--c:#c3a1e6}}
        """;

    /// <summary>The picture.</summary>
    public string Svg()
    {
        StringBuilder b = new();
        void Out(FormattableString s) => b.AppendLine(FormattableString.Invariant(s));
        double step = Wide / Places.Length, height = Top + Tall + 66;
        Out($"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {Left + Wide + 20} {height}\" role=\"img\" aria-label=\"{Title}\">");
        Out($"<style>{Style}</style>");
        Out($"<text class=\"t\" x=\"8\" y=\"20\">{Title}</text><text x=\"8\" y=\"{Top - 12}\">{Up}</text>");
        foreach (int p in Marked.Places)
        {
            Out($"<rect class=\"m\" x=\"{Left + (p * step):0.#}\" y=\"{Top}\" width=\"{step:0.#}\" height=\"{Tall}\"/>");
        }

        for (int i = 0; Low + (i * Tick) <= High + (1e-9 * Tick); i++)
        {
            double v = Low + (i * Tick);
            Out($"<line class=\"{(Math.Abs(v) < 1e-9 ? "z" : "g")}\" x1=\"{Left}\" x2=\"{Left + Wide}\" y1=\"{Y(v):0.#}\" y2=\"{Y(v):0.#}\"/><text x=\"{Left - 6}\" y=\"{Y(v) + 4:0.#}\" text-anchor=\"end\">{v:0.##}</text>");
        }

        // Long names stand in two rows.
        int rows = Places.Max(n => n.Length) * 7.5 > step ? 2 : 1;
        for (int p = 0; p < Places.Length; p++)
        {
            Out($"<text x=\"{Left + ((p + 0.5) * step):0.#}\" y=\"{Top + Tall + 18 + (p % rows * 16)}\" text-anchor=\"middle\">{Places[p]}</text>");
        }

        Out($"<text x=\"{Left + (Wide / 2)}\" y=\"{Top + Tall + 54}\" text-anchor=\"middle\">{Across}</text>");
        for (int s = 0; s < Series.Length; s++)
        {
            Draw(b, s, step);
        }

        double at = 8;
        for (int s = 0; s < Series.Length; s++)
        {
            Out(s < Bars
                ? (FormattableString)$"<rect class=\"b s{s}\" x=\"{at}\" y=\"32\" width=\"22\" height=\"10\"/>"
                : $"<line class=\"l n{s} s{s}\" x1=\"{at}\" x2=\"{at + 22}\" y1=\"37\" y2=\"37\"/>");
            Out($"<text x=\"{at + 27}\" y=\"41\">{Series[s].Name}</text>");
            at += 48 + (6.6 * Series[s].Name.Length);
        }

        if (Marked.Places.Length > 0)
        {
            Out($"<rect class=\"m\" x=\"{at}\" y=\"32\" width=\"22\" height=\"10\"/><text x=\"{at + 27}\" y=\"41\">{Marked.Means}</text>");
        }

        return b.Append("</svg>\n").ToString();
    }

    /// <summary>The numbers.</summary>
    public string Csv()
    {
        StringBuilder b = new(string.Join(',', Series.Select(s => s.Name.Replace(',', ';')).Prepend(Across.Replace(',', ';'))) + "\n");
        for (int p = 0; p < Places.Length; p++)
        {
            b.Append(string.Join(',', Series.Select(s => double.IsNaN(s.Values[p]) ? "" : s.Values[p].ToString("0.###", CultureInfo.InvariantCulture)).Prepend(Places[p]))).Append('\n');
        }

        return b.ToString();
    }

    private double Y(double value) => Top + (Tall * (High - value) / (High - Low));

    private void Draw(StringBuilder b, int s, double step)
    {
        double[] v = Series[s].Values;
        if (s < Bars)
        {
            double each = 0.8 * step / Bars;
            for (int p = 0; p < v.Length; p++)
            {
                if (!double.IsNaN(v[p]))
                {
                    double x = Left + (p * step) + (0.1 * step) + (s * each), y0 = Y(0), y1 = Y(Math.Clamp(v[p], Low, High));
                    b.AppendLine(FormattableString.Invariant($"<rect class=\"b s{s}\" x=\"{x:0.#}\" y=\"{Math.Min(y0, y1):0.#}\" width=\"{each:0.#}\" height=\"{Math.Abs(y1 - y0):0.#}\"/>"));
                }
            }

            return;
        }

        string points = string.Join(' ', v.Select((y, p) => (y, p)).Where(q => !double.IsNaN(q.y)).Select(q => FormattableString.Invariant($"{Left + ((q.p + 0.5) * step):0.#},{Y(Math.Clamp(q.y, Low, High)):0.#}")));
        b.AppendLine(FormattableString.Invariant($"<polyline class=\"l n{s} s{s}\" points=\"{points}\"/>"));
        foreach (string xy in points.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string[] c = xy.Split(',');
            b.AppendLine($"<circle class=\"d s{s}\" cx=\"{c[0]}\" cy=\"{c[1]}\" r=\"3\"/>");
        }
    }
}
