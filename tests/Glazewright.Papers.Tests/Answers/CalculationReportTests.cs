using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Pdf;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Tests.Sets;

namespace Glazewright.Papers.Tests.Answers;

public class CalculationReportTests
{
    [Fact]
    public void Every_open_figure_is_there_and_no_other()
    {
        PaperSource source = SampleSource.Make();
        string text = string.Join(' ', ReportSetting.Of(CalculationReport.Of(source)).Pages.SelectMany(p => p.Words()).Select(w => w.Text)).Replace(" ", "", StringComparison.Ordinal);
        Figure[] all = [.. source.Reports().SelectMany(r => r.Figures)];
        Figure[] open = [.. CalculationReport.Open(source)];
        Assert.NotEmpty(open);
        Assert.All(open, f => Assert.Contains($"({f.Id})", text, StringComparison.Ordinal));
        Assert.All(all.Except(open), f => Assert.DoesNotContain($"({f.Id})", text, StringComparison.Ordinal));

        // Shut out are the contractor's own: what is confidential, and the rooms of buying.
        Assert.All(all.Except(open), f => Assert.True(f.Confidential || f.Id.StartsWith("price/", StringComparison.Ordinal) || f.Id.Contains("cuts/", StringComparison.Ordinal) || f.Id.Contains("takeoff/", StringComparison.Ordinal), f.Id));
    }

    // The page that the contents give for a heading is the one it stands on, and the outline says the same.
    [Fact]
    public void The_contents_lead_to_the_right_pages()
    {
        PdfBook book = ReportSetting.Of(CalculationReport.Of(SampleSource.Make()));
        Assert.True(book.Outline.Count > 4);
        foreach (OutlineEntry entry in book.Outline)
        {
            // In the contents the number stands at the line's right end, at the same height.
            var line = book.Pages[0].Words().Concat(book.Pages[1].Words()).First(w => w.Text == entry.Title);
            var onLine = book.Pages[0].Words().Concat(book.Pages[1].Words()).Where(w => Math.Abs(w.Start.Y - line.Start.Y) < 0.01 && int.TryParse(w.Text, NumberStyles.None, CultureInfo.InvariantCulture, out _)).Select(w => int.Parse(w.Text, CultureInfo.InvariantCulture));
            Assert.Contains(entry.PageIndex + 1, onLine);
            Assert.Contains(book.Pages[entry.PageIndex].Words(), w => w.Text == entry.Title && w.CapHeightMm > 3);
        }
    }

    // What many rows share is told once and pointed at; nothing is lost by it.
    [Fact]
    public void A_method_of_many_rows_is_told_once()
    {
        PaperSource source = SampleSource.Make();
        string method = "Traced over a set of directions that is long enough to be worth telling once";
        Figure Light(string name) => Figure.Observe($"A/light/{name}", name, Unit.Fraction, 0.5, method, [], "clear panes only", new Source.FirstPrinciples("optics"));
        HouseResults house = source.Houses[0] with { Light = source.Houses[0].Light with { Report = StageReport.Empty with { Figures = new[] { Light("one"), Light("two"), Light("three") }.ToEqList() } } };
        string text = string.Join(' ', ReportSetting.Of(CalculationReport.Of(source with { Houses = source.Houses.Skip(1).Prepend(house).ToEqList() })).Pages.SelectMany(p => p.Words()).Select(w => w.Text));
        Assert.Equal(2, text.Split(method[..30]).Length);
        Assert.Equal(1 + 3, System.Text.RegularExpressions.Regex.Count(text, @"Method 1(?!\d)"));
    }
}
