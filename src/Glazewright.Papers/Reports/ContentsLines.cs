using System.Globalization;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Reports;

/// <summary>The lines of a report's contents. Their page numbers are known when the report is laid out, and asked for when a line is drawn.</summary>
/// <param name="headings">Level and text of the headings of levels 1 and 2, in order.</param>
internal sealed class ContentsLines(IReadOnlyList<(int Level, string Text)> headings)
{
    private const double IndentMm = 6;
    private const double NumberMm = 12;

    /// <summary>Pages of the headings, counted from 1.</summary>
    public IReadOnlyList<int> Pages { get; set; } = [];

    public IEnumerable<Piece> Set(double widthMm)
    {
        for (int i = 0; i < headings.Count; i++)
        {
            int index = i;
            (int level, string text) = headings[i];
            double x = level == 1 ? 0 : IndentMm;
            Face face = level == 1 ? Face.SemiBold : Face.Regular;
            string fitted = TextWrap.Fit(Lettering.Drawable(text), face, ReportType.BodyMm, widthMm - x - NumberMm);
            double ends = x + Lettering.WidthMm(fitted, face, ReportType.BodyMm) + 2;
            double y = ReportType.BodyLineMm - 1.4;
            yield return new Piece(ReportType.BodyLineMm, level == 1 ? 2 : 0, at =>
            [
                new MarkGroup("text", "", null, Plot.OnPaper(
                [
                    new Entity.Label(new(x, y), fitted, ReportType.BodyMm) { Role = Role.Text, Face = face },
                    new Entity.Polyline([new(ends, y - 0.2), new(widthMm - NumberMm + 2, y - 0.2)]) { Role = Role.Frame, Pen = new Pen(0.13, [0.3, 1.4], Paint.Of(Tone.Edge)) },
                    new Entity.Label(new(widthMm, y), Pages[index].ToString(CultureInfo.InvariantCulture), ReportType.BodyMm) { Role = Role.Text, Along = Along.End },
                ])).Moved(at),
            ]);
        }
    }
}
