using System.Globalization;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Pdf;

namespace Glazewright.Papers.Reports;

/// <summary>Lays a report's blocks on pages: nothing is cut, headings stay with what they head, tables repeat their head.</summary>
public static class ReportSetting
{
    /// <summary>The report as pages with an outline.</summary>
    public static PdfBook Of(Report report)
    {
        ArgumentNullException.ThrowIfNull(report);
        double widthMm = report.Size.WidthMm - 2 * ReportType.MarginMm;
        List<Piece> pieces = [.. report.Blocks.SelectMany((b, i) => BlockSetting.Set(b, widthMm).Select(p => Introduces(report.Blocks, i) ? p with { KeepWithNext = true } : p))];
        List<List<MarkGroup>> pages = [[]];
        List<OutlineEntry> outline = [];
        const double top = ReportType.MarginMm;
        double bottom = report.Size.HeightMm - ReportType.MarginMm - ReportType.FootMm / 2;
        double y = top;
        for (int i = 0; i < pieces.Count; i++)
        {
            Piece piece = pieces[i];
            bool atTop = y <= top;
            bool full = y + Needed(pieces, i, bottom - top) > bottom;
            if (!atTop && (piece.OpensPage || full))
            {
                pages.Add([]);
                y = top;
                atTop = true;
                if (piece.Head is Piece head && i > 0 && pieces[i - 1].Head == head)
                {
                    pages[^1].AddRange(head.Draw(new(ReportType.MarginMm, y)));
                    y += head.HeightMm;
                }
            }

            y += atTop ? 0 : piece.BeforeMm;
            if (piece.Outline is (int depth, string title))
            {
                outline.Add(new OutlineEntry(title, depth, pages.Count - 1, Math.Max(0, y - 4)));
            }

            pages[^1].AddRange(piece.Draw(new(ReportType.MarginMm, y)));
            y += piece.HeightMm;
        }

        return new PdfBook(report.Title, report.Subject, report.Date, [.. pages.Select((g, n) => Finished(report, g, n, pages.Count))], outline);
    }

    /// <summary>The report as a PDF file.</summary>
    public static byte[] Pdf(Report report) => PdfBookWriter.Bytes(Of(report));

    // A few words between a heading and its picture go where the picture goes.
    private static bool Introduces(IReadOnlyList<Block> blocks, int at) =>
        at > 0 && at + 1 < blocks.Count && blocks[at] is Block.Paragraph { Text.Length: < 600 } && blocks[at - 1] is Block.Heading && blocks[at + 1] is Block.Picture;

    /// <summary>Height a piece needs with all that must stay with it, spaces included; what can't stay together on any page need not.</summary>
    private static double Needed(List<Piece> pieces, int first, double roomMm)
    {
        double height = 0;
        for (int i = first; i < pieces.Count; i++)
        {
            height += pieces[i].BeforeMm + pieces[i].HeightMm;
            if (!pieces[i].KeepWithNext)
            {
                break;
            }
        }

        return height > roomMm ? pieces[first].BeforeMm + pieces[first].HeightMm : height;
    }

    private static Page Finished(Report report, List<MarkGroup> groups, int index, int count)
    {
        double y = report.Size.HeightMm - ReportType.FootMm + 2;
        double right = report.Size.WidthMm - ReportType.MarginMm;
        string number = string.Create(CultureInfo.InvariantCulture, $"page {index + 1} of {count}");
        double room = right - ReportType.MarginMm - Lettering.WidthMm(number, Face.Regular, ReportType.BodyMm) - 6;
        string date = report.Date is DateOnly day ? day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : "undated draft";
        Entity[] foot =
        [
            new Entity.Polyline([new(ReportType.MarginMm, y - 5), new(right, y - 5)]) { Role = Role.Frame, Pen = new Pen(0.13, [], Paint.Of(Tone.Edge)) },
            new Entity.Label(new(ReportType.MarginMm, y), TextWrap.Fit($"{report.Foot} · {date}", Face.Regular, ReportType.BodyMm, room))
            {
                Role = Role.Text, Paint = Paint.Of(Tone.Ink3),
            },
            new Entity.Label(new(right, y), number) { Role = Role.Text, Along = Along.End, Paint = Paint.Of(Tone.Ink3) },
        ];
        return new Page(report.Size.WidthMm, report.Size.HeightMm, [.. groups, new MarkGroup("foot", "", null, Plot.OnPaper(foot))]);
    }
}
