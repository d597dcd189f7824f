using System.Globalization;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Pdf;

namespace Glazewright.Papers.Reports;

/// <summary>Lays a report's blocks on pages: nothing is cut, headings stay with what they head, tables repeat their head.</summary>
public static class ReportSetting
{
    // A page filled no further than this is gone on with where a new one was to begin.
    private const double LittleFraction = 0.2;

    /// <summary>The report as pages with an outline.</summary>
    public static PdfBook Of(Report report)
    {
        ArgumentNullException.ThrowIfNull(report);
        if (report.TypeFactor != 1)
        {
            // Set on a smaller page, then all of it made larger.
            PdfBook small = Of(report with { TypeFactor = 1, Size = report.Size with { WidthMm = report.Size.WidthMm / report.TypeFactor, HeightMm = report.Size.HeightMm / report.TypeFactor } });
            return small with { Pages = [.. small.Pages.Select(p => p.Scaled(report.TypeFactor))], Outline = [.. small.Outline.Select(o => o with { TopMm = o.TopMm * report.TypeFactor })] };
        }

        double widthMm = report.Size.WidthMm - 2 * ReportType.MarginMm;
        ContentsLines contents = new([.. report.Blocks.OfType<Block.Heading>().Where(h => h.Level <= 2).Select(h => (h.Level, h.Text))]);
        List<Piece> pieces = [.. report.Blocks.SelectMany((b, i) => BlockSetting.Set(b, widthMm, contents).Select(p => Introduces(report.Blocks, i) ? p with { KeepWithNext = true } : p))];
        List<List<(Piece Piece, Spot At)>> pages = [[]];
        List<OutlineEntry> outline = [];
        const double top = ReportType.MarginMm;
        double bottom = report.Size.HeightMm - ReportType.MarginMm - ReportType.FootMm / 2;
        double y = top;
        for (int i = 0; i < pieces.Count; i++)
        {
            Piece piece = pieces[i];
            bool atTop = y <= top;
            bool full = y + Needed(pieces, i, bottom - top) > bottom;
            bool opens = piece.OpensPage && (piece.OpensAlways || y - top > LittleFraction * (bottom - top));
            if (!atTop && (opens || full))
            {
                pages.Add([]);
                y = top;
                atTop = true;
                if (piece.Head is Piece head && i > 0 && pieces[i - 1].Head == head)
                {
                    pages[^1].Add((head, new(ReportType.MarginMm, y)));
                    y += head.HeightMm;
                }
            }

            y += atTop ? 0 : piece.BeforeMm;
            if (piece.Outline is (int depth, string title))
            {
                outline.Add(new OutlineEntry(title, depth, pages.Count - 1, Math.Max(0, y - 4)));
            }

            pages[^1].Add((piece, new(ReportType.MarginMm, y)));
            y += piece.HeightMm;
        }

        contents.Pages = [.. outline.Select(o => o.PageIndex + 1)];
        return new PdfBook(report.Title, report.Subject, report.Date, [.. pages.Select((placed, n) => Finished(report, [.. placed.SelectMany(p => p.Piece.Draw(p.At))], n, pages.Count))], outline);
    }

    /// <summary>The report as a PDF file.</summary>
    public static byte[] Pdf(Report report) => PdfBookWriter.Bytes(Of(report));

    // A few words between a heading and its picture go where the picture goes.
    private static bool Introduces(IReadOnlyList<Block> blocks, int at) =>
        at > 0 && at + 1 < blocks.Count && blocks[at] is Block.Paragraph { Text.Length: < 600 } && blocks[at - 1] is Block.Heading && blocks[at + 1] is Block.Picture;

    /// <summary>Height a piece needs with all that must stay with it, spaces included. What cannot stay together on any page stays with its beginning: a heading with the head and the first row of a long table.</summary>
    private static double Needed(List<Piece> pieces, int first, double roomMm)
    {
        double height = 0;
        double beginning = 0;
        for (int i = first; i < pieces.Count; i++)
        {
            height += pieces[i].BeforeMm + pieces[i].HeightMm;
            bool stillOpening = pieces[i].KeepWithNext && pieces[i].Head is null;
            beginning = beginning == 0 && !stillOpening ? height : beginning;
            if (!pieces[i].KeepWithNext)
            {
                break;
            }
        }

        return height <= roomMm ? height : beginning > 0 && beginning <= roomMm ? beginning : pieces[first].BeforeMm + pieces[first].HeightMm;
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
        return new Page(report.Size.WidthMm, report.Size.HeightMm, [.. groups, new MarkGroup("foot", "", null, Plot.OnPaper(foot)) { Spoken = Spoken.Furniture }]);
    }
}
