using System.Text;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Pdf;
using Glazewright.Papers.Tests.Drawing;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Glazewright.Papers.Tests.Pdf;

public class PdfBookWriterTests
{
    private const double PtPerMm = 72 / 25.4;

    private static PdfBook Book(DateOnly? date = null) => PdfBook.OfSheets("Yard", "A section", date, [Samples.Section("Yard Ø 12'-6 1/2\"")]);

    [Fact]
    public void Same_bytes_twice_a_while_apart()
    {
        byte[] first = PdfBookWriter.Bytes(Book());
        Thread.Sleep(1100); // PDFsharp writes seconds of the clock; they must not come through
        Assert.Equal(first, PdfBookWriter.Bytes(Book()));
    }

    [Fact]
    public void Different_content_has_a_different_id() =>
        Assert.NotEqual(Id(PdfBookWriter.Bytes(Book())), Id(PdfBookWriter.Bytes(Book(new DateOnly(2031, 2, 3)))));

    [Fact]
    public void Words_are_searchable_and_on_the_page()
    {
        using PdfDocument pdf = PdfDocument.Open(PdfBookWriter.Bytes(Book()));
        UglyToad.PdfPig.Content.Page page = pdf.GetPage(1);
        Assert.Equal(420 * PtPerMm, page.Width, 0.01);
        string text = string.Join(' ', page.GetWords().Select(w => w.Text));
        Assert.Contains("12'-6", text, StringComparison.Ordinal);
        Assert.Contains("undated draft", text, StringComparison.Ordinal);
        Assert.Contains("Ø", text, StringComparison.Ordinal);
        Assert.All(page.Letters, l => Assert.True(
            l.StartBaseLine.X >= 0 && l.EndBaseLine.X <= page.Width && l.StartBaseLine.Y >= 0 && l.StartBaseLine.Y <= page.Height));
    }

    // The widths we lay out with are the widths a reader finds in the file.
    [Fact]
    public void Advance_widths_agree_with_an_independent_reader()
    {
        const string text = "Wet wall 14'-0\" x 6'-0\" at 336 fpm";
        Sheet sheet = new("s", "s", "s", 200, 50, [], [new Entity.Label(new(10, 25), text, 4) { Face = Face.SemiBold }]);
        using PdfDocument pdf = PdfDocument.Open(PdfBookWriter.Bytes(PdfBook.OfSheets("t", "t", null, [sheet])));
        IReadOnlyList<Letter> letters = pdf.GetPage(1).Letters;
        double widthMm = (letters[^1].EndBaseLine.X - letters[0].StartBaseLine.X) / PtPerMm;
        Assert.Equal(Lettering.WidthMm(text, Face.SemiBold, 4), widthMm, 0.02); // PDF widths are whole thousandths of an em
        Assert.Equal(10, letters[0].StartBaseLine.X / PtPerMm, 0.02);
        Assert.Equal(25, (pdf.GetPage(1).Height - letters[0].StartBaseLine.Y) / PtPerMm, 0.02);
    }

    // A scale is proven by measuring in the PDF: 8 m at 1:50 is 160 mm.
    [Fact]
    public void Drawn_lengths_are_true_to_scale()
    {
        View view = new("v", "v", new DrawingScale(50, "1:50"), new Box(0, 0, 9, 5), new(10, 10), [
            new Entity.Polyline([new(0.5, 1), new(8.5, 1)]) { Role = Role.Cut },
        ]);
        Sheet sheet = new("s", "s", "s", 220, 140, [view], []);
        using PdfDocument pdf = PdfDocument.Open(PdfBookWriter.Bytes(PdfBook.OfSheets("t", "t", null, [sheet])));
        double longestPt = pdf.GetPage(1).Paths.Where(p => p.IsStroked).Max(p => p.GetBoundingRectangle()?.Width ?? 0);
        Assert.Equal(160, longestPt / PtPerMm, 0.01);
    }

    [Fact]
    public void An_undated_draft_bears_no_date_and_a_dated_one_bears_its_own()
    {
        using PdfDocument undated = PdfDocument.Open(PdfBookWriter.Bytes(Book()));
        Assert.Null(undated.Information.CreationDate);
        Assert.Equal("Yard", undated.Information.Title);
        byte[] dated = PdfBookWriter.Bytes(Book(new DateOnly(2031, 2, 3)));
        using PdfDocument read = PdfDocument.Open(dated);
        Assert.StartsWith("D:20310203000000", read.Information.CreationDate);
        Assert.Contains("2031-02-03T00:00:00", Encoding.Latin1.GetString(dated), StringComparison.Ordinal);
    }

    [Fact]
    public void Outline_entries_nest()
    {
        Glazewright.Papers.Drawing.Page page = new(100, 100, []);
        PdfBook book = new("t", "t", null, [page, page], [new("One", 0, 0, 10), new("One a", 1, 0, 50), new("Two", 0, 1, 10), new("Too deep", 5, 1, 20)]);
        using PdfDocument pdf = PdfDocument.Open(PdfBookWriter.Bytes(book));
        Assert.True(pdf.TryGetBookmarks(out UglyToad.PdfPig.Outline.Bookmarks? marks));
        Assert.Equal(["One", "Two"], marks!.Roots.Select(r => r.Title));
        Assert.Equal(["One a", "Too deep"], marks.Roots.SelectMany(r => r.Children).Select(c => c.Title));
    }

    private static string Id(byte[] pdf)
    {
        string text = Encoding.Latin1.GetString(pdf);
        int at = text.IndexOf("/ID[<", StringComparison.Ordinal);
        return text.Substring(at, 40);
    }
}
