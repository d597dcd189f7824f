using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace Glazewright.Papers.Pdf;

/// <summary>Writes pages as PDF: exact vector lines, searchable text, embedded fonts, outline, structure for reading aloud, the same bytes each time.</summary>
public static class PdfBookWriter
{
    /// <summary>PDF points in a millimetre.</summary>
    internal const double PtPerMm = 72 / 25.4;

    /// <summary>The whole file.</summary>
    public static byte[] Bytes(PdfBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        using PdfDocument document = new();
        document.Info.Title = Lettering.Drawable(book.Title);
        document.Info.Subject = Lettering.Drawable(book.Subject);
        document.Info.Creator = "Glazewright";
        document.Language = "en";
        document.ViewerPreferences.DisplayDocTitle = true;
        StructureBuilder structure = UAManager.ForDocument(document).StructureBuilder;
        PdfMarks marks = new(structure);
        List<PdfPage> pages = [];
        foreach (Page page in book.Pages)
        {
            PdfPage pdfPage = document.AddPage();
            pdfPage.Width = XUnit.FromPoint(page.WidthMm * PtPerMm);
            pdfPage.Height = XUnit.FromPoint(page.HeightMm * PtPerMm);
            using XGraphics graphics = XGraphics.FromPdfPage(pdfPage);
            marks.Draw(graphics, page);
            pages.Add(pdfPage);
        }

        Outline(document, pages, book.Outline);
        using MemoryStream stream = new();
        document.Save(stream, false);
        return PdfStamp.Settle(stream.ToArray(), book.Date);
    }

    private static void Outline(PdfDocument document, List<PdfPage> pages, IReadOnlyList<OutlineEntry> entries)
    {
        List<PdfOutline> open = [];
        foreach (OutlineEntry entry in entries)
        {
            int depth = Math.Min(entry.Depth, open.Count);
            PdfOutlineCollection parent = depth == 0 ? document.Outlines : open[depth - 1].Outlines;
            PdfPage page = pages[entry.PageIndex];
            PdfOutline added = parent.Add(Lettering.Drawable(entry.Title), page, depth == 0);
            added.PageDestinationType = PdfPageDestinationType.Xyz;
            added.Top = page.Height.Point - entry.TopMm * PtPerMm;
            open.RemoveRange(depth, open.Count - depth);
            open.Add(added);
        }
    }
}
