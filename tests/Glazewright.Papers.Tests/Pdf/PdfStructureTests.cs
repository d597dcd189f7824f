using Glazewright.Papers.Answers;
using Glazewright.Papers.Pdf;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sheets;
using Glazewright.Papers.Tests.Sets;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Glazewright.Papers.Tests.Pdf;

// Read by a library that knows nothing of us: what a reader by ear is given.
public class PdfStructureTests
{
    [Fact]
    public void Every_letter_of_a_report_is_heading_text_cell_picture_or_passed_over()
    {
        using PdfDocument pdf = PdfDocument.Open(ReportSetting.Pdf(GrowerReport.Of(SampleSource.Make())));
        HashSet<string> kinds = [];
        foreach (Page page in pdf.GetPages())
        {
            MarkedContentElement[] marked = [.. page.GetMarkedContents()];
            Assert.Equal(page.Letters.Count, marked.Sum(m => m.Letters.Count));
            kinds.UnionWith(marked.Select(m => m.Tag));
            Assert.Contains(marked, m => m.IsArtifact && string.Concat(m.Letters.Select(l => l.Value)).Contains("page", StringComparison.Ordinal));
        }

        Assert.Superset(new HashSet<string> { "H1", "H2", "P", "TH", "TD", "Figure", "Artifact" }, kinds);
        Assert.True(pdf.Structure.Catalog.CatalogDictionary.ContainsKey(UglyToad.PdfPig.Tokens.NameToken.Create("StructTreeRoot")));
    }

    // A table's cells are told apart: head and rows as they were given, in their order.
    [Fact]
    public void A_tables_cells_are_read_one_by_one()
    {
        Report report = new("T", "t", "f", null, Papers.Drawing.SheetSize.Letter, [new Block.TableOf(new Papers.Drawing.Table([new("Part", 40), new("Count", 30)], [["Rafter", "3"], ["Purlin", "14"]]))]);
        using PdfDocument pdf = PdfDocument.Open(ReportSetting.Pdf(report));
        string[] Cells(string tag) => [.. pdf.GetPage(1).GetMarkedContents().Where(m => m.Tag == tag).Select(m => string.Concat(m.Letters.Select(l => l.Value)))];
        Assert.Equal(["Part", "Count"], Cells("TH"));
        Assert.Equal(["Rafter", "3", "Purlin", "14"], Cells("TD"));
    }

    [Fact]
    public void A_sheets_views_are_pictures_with_words()
    {
        byte[] bytes = PdfBookWriter.Bytes(PdfBook.OfSheets("Drawings", "d", null, [.. DrawingSet.Of(SampleSource.Make()).Take(2).Select(s => s.Sheet)]));
        using PdfDocument pdf = PdfDocument.Open(bytes);
        Assert.All(pdf.GetPages(), p => Assert.Contains(p.GetMarkedContents(), m => m.Tag == "Figure"));
    }
}
