using System.Globalization;
using System.Text;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Svg;

/// <summary>Writes a sheet as SVG that a person can read: millimetres, one group a view, classes that name the role.</summary>
/// <remarks>
/// Colours stand in plain classes; a block for <c>prefers-color-scheme: dark</c> restates those that follow the theme, and a
/// reader without it shows paper. Numbers are rounded to 0.01 mm.
/// </remarks>
public static class SvgWriter
{
    /// <summary>The whole file, UTF-8 without a byte order mark, LF line ends.</summary>
    public static byte[] Bytes(Sheet sheet) => new UTF8Encoding(false).GetBytes(Text(sheet));

    /// <summary>The whole file as text.</summary>
    public static string Text(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        Page page = Plot.Of(sheet);
        SvgClasses classes = new(inPage: false);
        StringBuilder body = new();
        foreach (MarkGroup group in page.Groups)
        {
            Group(body, sheet.Id, group, classes);
        }

        StringBuilder file = new();
        string width = Number(sheet.WidthMm);
        string height = Number(sheet.HeightMm);
        file.Append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        file.Append(Invariant($"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}mm\" height=\"{height}mm\" viewBox=\"0 0 {width} {height}\" role=\"img\" aria-labelledby=\"{Id(sheet.Id)}-title {Id(sheet.Id)}-desc\">\n"));
        file.Append(Invariant($"<title id=\"{Id(sheet.Id)}-title\">{Escape(Lettering.Drawable(sheet.Title))}</title>\n"));
        file.Append(Invariant($"<desc id=\"{Id(sheet.Id)}-desc\">{Escape(Lettering.Drawable(sheet.Description))}</desc>\n"));
        classes.Write(file);
        Clips(file, sheet.Id, page);
        file.Append(Invariant($"<rect class=\"page\" width=\"{width}\" height=\"{height}\"/>\n"));
        file.Append(body);
        file.Append("</svg>\n");
        return file.ToString();
    }

    /// <summary>
    /// The drawing as part of a page: colours are classes that the page's own style sheet fills (<c>line-ink</c>, <c>fill-sun</c>, one pair a tone), so that it follows
    /// the page's theme and needs no style of its own. It has no size: the page gives it one.
    /// </summary>
    public static string InPage(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        Page page = Plot.Of(sheet);
        SvgClasses classes = new(inPage: true);
        string id = Id(sheet.Id);
        StringBuilder svg = new();
        svg.Append(Invariant($"<svg class=\"drawing\" viewBox=\"0 0 {Number(sheet.WidthMm)} {Number(sheet.HeightMm)}\" role=\"img\" aria-labelledby=\"{id}-title {id}-desc\">\n"));
        svg.Append(Invariant($"<title id=\"{id}-title\">{Escape(Lettering.Drawable(sheet.Title))}</title>\n<desc id=\"{id}-desc\">{Escape(Lettering.Drawable(sheet.Description))}</desc>\n"));
        Clips(svg, sheet.Id, page);
        foreach (MarkGroup group in page.Groups)
        {
            Group(svg, sheet.Id, group, classes);
        }

        return svg.Append("</svg>\n").ToString();
    }

    private static void Clips(StringBuilder file, string sheetId, Page page)
    {
        foreach (MarkGroup group in page.Groups)
        {
            if (group.ClipMm is Box box)
            {
                file.Append(Invariant($"<clipPath id=\"{Id(sheetId)}-{Id(group.Id)}-window\"><rect x=\"{Number(box.Left)}\" y=\"{Number(box.Top)}\" width=\"{Number(box.Width)}\" height=\"{Number(box.Height)}\"/></clipPath>\n"));
            }
        }
    }

    private static void Group(StringBuilder body, string sheetId, MarkGroup group, SvgClasses classes)
    {
        string clip = group.ClipMm is null ? "" : Invariant($" clip-path=\"url(#{Id(sheetId)}-{Id(group.Id)}-window)\"");
        body.Append(Invariant($"<g id=\"{Id(sheetId)}-{Id(group.Id)}\"{clip}>\n"));
        if (group.Title.Length > 0)
        {
            body.Append(Invariant($"<title>{Escape(Lettering.Drawable(group.Title))}</title>\n"));
        }

        for (int i = 0; i < group.Marks.Count; i++)
        {
            switch (group.Marks[i])
            {
                case Mark.Lines lines:
                    string stroke = classes.Stroke(lines.Role, lines.Pen);
                    StringBuilder d = new();
                    PathOf(d, lines.Points, lines.Closed);
                    while (i + 1 < group.Marks.Count && group.Marks[i + 1] is Mark.Lines next
                        && next.Source == lines.Source && classes.Stroke(next.Role, next.Pen) == stroke)
                    {
                        PathOf(d, next.Points, next.Closed);
                        i++;
                    }

                    body.Append(Invariant($"<path {stroke}{Part(lines)} d=\"{d}\"/>\n"));
                    break;
                case Mark.Curve curve:
                    Curve(body, curve, classes.Stroke(curve.Role, curve.Pen));
                    break;
                case Mark.Area area:
                    StringBuilder rings = new();
                    foreach (IReadOnlyList<Spot> ring in area.Rings)
                    {
                        PathOf(rings, ring, true);
                    }

                    string opacity = area.OpacityFraction < 1 ? Invariant($" opacity=\"{Number(area.OpacityFraction)}\"") : "";
                    body.Append(Invariant($"<path {classes.Fill(area.Paint)}{Part(area)}{opacity} d=\"{rings}\"/>\n"));
                    break;
                case Mark.Words words:
                    string turn = words.AngleDeg == 0 ? "" : Invariant($" transform=\"rotate({Number(-words.AngleDeg)} {Number(words.Start.X)} {Number(words.Start.Y)})\"");
                    body.Append(Invariant($"<text {classes.Words(words)}{Part(words)} x=\"{Number(words.Start.X)}\" y=\"{Number(words.Start.Y)}\"{turn}>{Escape(words.Text)}</text>\n"));
                    break;
                default:
                    throw new InvalidOperationException("Marks are a closed set.");
            }
        }

        body.Append("</g>\n");
    }

    private static void Curve(StringBuilder body, Mark.Curve curve, string look)
    {
        string radius = Number(curve.RadiusMm);
        if (Math.Abs(curve.SweepDeg) >= 360)
        {
            body.Append(Invariant($"<circle {look}{Part(curve)} cx=\"{Number(curve.Centre.X)}\" cy=\"{Number(curve.Centre.Y)}\" r=\"{radius}\"/>\n"));
            return;
        }

        Spot from = On(curve, curve.StartDeg);
        Spot to = On(curve, curve.StartDeg + curve.SweepDeg);
        int large = Math.Abs(curve.SweepDeg) > 180 ? 1 : 0;
        int clockwise = curve.SweepDeg < 0 ? 1 : 0;
        body.Append(Invariant($"<path {look}{Part(curve)} d=\"M{Number(from.X)} {Number(from.Y)}A{radius} {radius} 0 {large} {clockwise} {Number(to.X)} {Number(to.Y)}\"/>\n"));
    }

    private static Spot On(Mark.Curve curve, double angleDeg)
    {
        double angle = angleDeg * Math.PI / 180;
        return curve.Centre + curve.RadiusMm * new Spot(Math.Cos(angle), -Math.Sin(angle));
    }

    private static void PathOf(StringBuilder d, IReadOnlyList<Spot> points, bool closed)
    {
        for (int i = 0; i < points.Count; i++)
        {
            d.Append(i == 0 ? 'M' : 'L').Append(Number(points[i].X)).Append(' ').Append(Number(points[i].Y));
        }

        if (closed)
        {
            d.Append('Z');
        }
    }

    private static string Part(Mark mark) =>
        mark.Source.Length == 0 ? "" : Invariant($" data-part=\"{Escape(Lettering.Drawable(mark.Source))}\"");

    internal static string Number(double value)
    {
        string text = value.ToString("0.##", CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);

    private static string Id(string name)
    {
        StringBuilder id = new();
        foreach (char c in name)
        {
            id.Append(char.IsAsciiLetterOrDigit(c) || c is '-' or '_' ? c : '-');
        }

        return id.Length == 0 || !char.IsAsciiLetter(id[0]) ? "s" + id : id.ToString();
    }

    private static string Escape(string text) => text
        .Replace("&", "&amp;", StringComparison.Ordinal)
        .Replace("<", "&lt;", StringComparison.Ordinal)
        .Replace(">", "&gt;", StringComparison.Ordinal)
        .Replace("\"", "&quot;", StringComparison.Ordinal);
}
