using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Pdf;

/// <summary>An entry of a PDF's outline.</summary>
/// <param name="Title">What it says.</param>
/// <param name="Depth">0 for a chapter, 1 for what stands under it…</param>
/// <param name="PageIndex">The page it opens, counted from 0.</param>
/// <param name="TopMm">How far down the page, mm.</param>
public sealed record OutlineEntry(string Title, int Depth, int PageIndex, double TopMm);

/// <summary>Pages to be written as one PDF.</summary>
/// <param name="Title">Title in the file's properties.</param>
/// <param name="Subject">A sentence on what it is.</param>
/// <param name="Date">The date it bears, or none for an undated draft.</param>
/// <param name="Pages">The pages.</param>
/// <param name="Outline">The outline, in order.</param>
public sealed record PdfBook(
    string Title, string Subject, DateOnly? Date, IReadOnlyList<Page> Pages, IReadOnlyList<OutlineEntry> Outline)
{
    /// <summary>A book of drawing sheets, each with its outline entry.</summary>
    public static PdfBook OfSheets(string title, string subject, DateOnly? date, IReadOnlyList<Sheet> sheets)
    {
        ArgumentNullException.ThrowIfNull(sheets);
        return new PdfBook(
            title, subject, date, [.. sheets.Select(Plot.Of)], [.. sheets.Select((s, i) => new OutlineEntry(s.Title, 0, i, 0))]);
    }
}
