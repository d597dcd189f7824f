using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Erection;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Light;
using Glazewright.Papers.Pdf;
using Glazewright.Papers.Plant;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Tests.Sets;
using UglyToad.PdfPig;

namespace Glazewright.Papers.Tests.Reports;

public class ReportSettingTests
{
    private static Report Sample(int rows, string name = "Two-Ridge") => new(name, "Answers", name + " · predicted under these conditions", null, SheetSize.Letter, [
        new Block.Opening(name, "What it will do", ["42.0° N"]),
        new Block.Heading(1, "Answers"),
        new Block.Lead("Nights yes, hot afternoons no."),
        new Block.Figures([
            new("Hours held", "99.1", "%", "wanted 97 %", Standing.Held),
            new("Too hot", "310", "h", "wanted none", Standing.Miss),
            new("Lowest", "60.8", "°F", "wanted 62 °F", Standing.Near),
            new("A very long label that must break into lines " + name, "123456789012345678901234567890", "gal/min", name),
        ]),
        new Block.Caution("A typical year leaves the extremes out", "The coldest night of a decade is not in it."),
        new Block.Heading(2, "Light"),
        new Block.Picture(MonthBars.Draw("b", "Light", "mol/m²", [new("benches", [1, 2, 3, 4, 5, 6, 6, 5, 4, 3, 2, 1.0])], (4, "wanted"), 170, 60), "Light by month."),
        new Block.Bullets([.. Enumerable.Range(0, 12).Select(i => $"Point {i}: " + string.Join(' ', Enumerable.Repeat("words that run on", 9)))]),
        new Block.NewPage(),
        new Block.Heading(1, "Materials"),
        new Block.TableOf(new Table(
            [new("Part", 90), new("Count", 30, Along.End)],
            [.. Enumerable.Range(1, rows).Select(i => (IReadOnlyList<string>)["Rafter R" + i.ToString(CultureInfo.InvariantCulture), "3"])])),
        new Block.Paragraph(string.Join(' ', Enumerable.Repeat("The end of it.", 60))),
    ]);

    [Theory]
    [InlineData(0), InlineData(3), InlineData(35), InlineData(36), InlineData(200)]
    public void Nothing_overlaps_and_nothing_leaves_the_page(int rows)
    {
        PdfBook book = ReportSetting.Of(Sample(rows));
        Assert.All(book.Pages, p => Assert.Empty(TextClashes.On(p)));
        Assert.All(book.Pages, p => Assert.All(p.Words().Where(w => !w.Text.StartsWith("page ", StringComparison.Ordinal) && w.Text != "undated draft"), w =>
            Assert.True(w.Start.Y < SheetSize.Letter.HeightMm - 8)));
    }

    [Theory]
    [InlineData(100), InlineData(140), InlineData(178)]
    public void Columns_give_each_other_room_for_whole_words(double widthMm)
    {
        Table table = new(
            [new("", 8), new("What", 46), new("Where", 90), new("Count", 14, Along.End)],
            [.. Enumerable.Range(1, 120).Select(i => (IReadOnlyList<string>)[i.ToString(CultureInfo.InvariantCulture), "polycarbonate-8-twin", "here", "1,250"])]);
        Table fitted = BlockSetting.Fitted(table, widthMm);
        Assert.True(fitted.WidthMm <= widthMm + 1e-9);
        Assert.All(TableSetting.Body(fitted), r => Assert.All(r.CellLines, c => Assert.Single(c)));
        Assert.All(TableSetting.Head(fitted).CellLines, c => Assert.Single(c));
    }

    [Fact]
    public void A_long_table_repeats_its_head_and_loses_no_row()
    {
        PdfBook book = ReportSetting.Of(Sample(200));
        Page[] withRows = [.. book.Pages.Where(p => p.Words().Any(w => w.Text.StartsWith("Rafter R", StringComparison.Ordinal)))];
        Assert.True(withRows.Length >= 5);
        Assert.All(withRows, p => Assert.Single(p.Words(), w => w.Text == "Count"));
        Assert.Equal(
            Enumerable.Range(1, 200).Select(i => "Rafter R" + i.ToString(CultureInfo.InvariantCulture)),
            book.Pages.SelectMany(p => p.Words()).Where(w => w.Text.StartsWith("Rafter R", StringComparison.Ordinal)).Select(w => w.Text));
    }

    // One row or two of a long table never stand alone on a page, whatever stands before it and however long it is.
    [Fact]
    public void A_page_has_three_rows_of_a_long_table_at_least()
    {
        for (int rows = 15; rows < 130; rows++)
        {
            Report report = Sample(rows);
            int[] each = [.. ReportSetting.Of(report).Pages.Select(p => p.Words().Count(w => w.Text.StartsWith("Rafter R", StringComparison.Ordinal))).Where(n => n > 0)];
            Assert.True(each.Min() >= 3, $"{rows} rows: {string.Join(' ', each)}");
        }
    }

    [Theory]
    [InlineData(20), InlineData(30), InlineData(38)]
    public void A_table_kept_whole_stands_on_one_page(int rows)
    {
        Report report = Sample(rows);
        report = report with { Blocks = [.. report.Blocks.Select(b => b is Block.TableOf t ? t with { Whole = true } : b is Block.NewPage ? new Block.Heading(3, "On") : b)] };
        Assert.Single(ReportSetting.Of(report).Pages, p => p.Words().Any(w => w.Text.StartsWith("Rafter R", StringComparison.Ordinal)));
    }

    // A line or two before a new page is no page: it goes on below them, except where pages are handed out one by one.
    [Theory]
    [InlineData(1, false, 1), InlineData(1, true, 2), InlineData(20, false, 2)]
    public void A_page_that_holds_little_is_gone_on_with(int lines, bool always, int pages)
    {
        Report report = new("Two-Ridge", "", "", null, SheetSize.Letter, [
            .. Enumerable.Range(0, lines).Select(i => new Block.Paragraph($"Line {i}.")), new Block.NewPage { Always = always }, new Block.Heading(1, "Next"), new Block.Paragraph("Words."),
        ]);
        Assert.Equal(pages, ReportSetting.Of(report).Pages.Count);
    }

    // No heading of a column of any report breaks within a word, on Letter or on A4.
    [Theory]
    [InlineData(UnitSystem.Us), InlineData(UnitSystem.Metric)]
    public void Heads_of_columns_break_between_words(UnitSystem units)
    {
        PaperSource source = SampleSource.Make(units);
        Report?[] reports =
        [
            AnswersReport.Of(source), BasisReport.Of(source), CalculationReport.Of(source), ControlReport.Of(source), CrewReport.Of(source), GrowerReport.Of(source), LightReport.Of(source),
            PlantReport.Of(source), QuoteReport.Of(source), ReviewReport.Of(source),
        ];
        List<string> broken = [];
        foreach (Report report in reports.OfType<Report>())
        {
            double pageMm = report.Size.WidthMm / report.TypeFactor - 2 * ReportType.MarginMm;
            foreach (Table table in report.Blocks.OfType<Block.TableOf>().Select(t => t.Table))
            {
                Table fitted = BlockSetting.Fitted(table, pageMm);
                Assert.True(fitted.WidthMm <= pageMm + 1e-9);
                broken.AddRange(fitted.Columns.Where(c => TextWrap.Lines(c.Head, Face.SemiBold, table.CapHeightMm, c.WidthMm - 2.8).Any(l => !$" {c.Head} ".Contains($" {l} ", StringComparison.Ordinal))).Select(c => $"{report.Title}: {c.Head}"));
            }
        }

        Assert.Empty(broken.Distinct());
    }

    // Twelve months are read as one table; a few words stay with their heading and its picture.
    [Theory]
    [InlineData(20), InlineData(24), InlineData(26), InlineData(28), InlineData(30), InlineData(31), InlineData(32), InlineData(33), InlineData(34), InlineData(40)]
    public void Short_tables_and_introduced_pictures_stay_whole(int linesAbove)
    {
        PdfBook book = ReportSetting.Of(new Report("T", "t", "f", null, SheetSize.Letter, [
            .. Enumerable.Range(0, linesAbove).Select(i => new Block.Paragraph("line")),
            new Block.Heading(2, "Sun paths"),
            new Block.Paragraph("How to read it."),
            new Block.Picture(MonthBars.Draw("b", "Light", "mol/m²", [new("benches", [1, 2, 3, 4, 5, 6, 6, 5, 4, 3, 2, 1.0])], null, 170, 60), "By month."),
            .. Enumerable.Range(0, linesAbove).Select(i => new Block.Paragraph("line")),
            new Block.TableOf(new Table([new("Month", 90)], [.. Enumerable.Range(1, 12).Select(i => (IReadOnlyList<string>)["Month-" + i.ToString(CultureInfo.InvariantCulture)])])),
        ]));
        Assert.Single(book.Pages, p => p.Words().Any(w => w.Text.StartsWith("Month-", StringComparison.Ordinal)));
        Page headed = Assert.Single(book.Pages, p => p.Words().Any(w => w.Text == "Sun paths"));
        Assert.Contains(headed.Words(), w => w.Text == "By month.");
    }

    [Fact]
    public void Pages_are_counted_and_headings_are_outlined()
    {
        PdfBook book = ReportSetting.Of(Sample(60));
        for (int i = 0; i < book.Pages.Count; i++)
        {
            string number = string.Create(CultureInfo.InvariantCulture, $"page {i + 1} of {book.Pages.Count}");
            Assert.Single(book.Pages[i].Words(), w => w.Text == number);
        }

        Assert.Equal([("Answers", 0), ("Light", 1), ("Materials", 0)], book.Outline.Select(o => (o.Title, o.Depth)));
    }

    [Fact]
    public void A_heading_never_stands_alone_at_the_foot_of_a_page()
    {
        for (int lines = 30; lines < 46; lines++)
        {
            Report report = new("t", "t", "t", null, SheetSize.Letter, [
                .. Enumerable.Range(0, lines).Select(i => new Block.Bullets(["filler"])),
                new Block.Heading(2, "Heading"),
                new Block.Paragraph("text under it"),
            ]);
            Page page = ReportSetting.Of(report).Pages.Single(p => p.Words().Any(w => w.Text == "Heading"));
            Assert.Contains(page.Words(), w => w.Text == "text under it");
        }
    }

    [Fact]
    public void Long_and_odd_names_stay_on_the_page()
    {
        PdfBook book = ReportSetting.Of(Sample(3, "🌱 \"quoted\" / " + new string('N', 500)));
        Assert.All(book.Pages, p => Assert.Empty(TextClashes.On(p)));
    }

    [Fact]
    public void The_written_file_says_the_words_and_is_the_same_twice()
    {
        byte[] pdf = ReportSetting.Pdf(Sample(40));
        Assert.Equal(pdf, ReportSetting.Pdf(Sample(40)));
        using PdfDocument read = PdfDocument.Open(pdf);
        string text = string.Join(' ', read.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));
        Assert.Contains("Nights yes, hot afternoons no.", text, StringComparison.Ordinal);
        Assert.Contains("predicted under these conditions", text, StringComparison.Ordinal);
        Assert.Contains("near the limit", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_report_is_one_page() => Assert.Single(ReportSetting.Of(new Report("t", "t", "t", null, SheetSize.A4, [])).Pages);
}
