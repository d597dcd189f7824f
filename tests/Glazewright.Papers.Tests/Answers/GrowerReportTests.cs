using Glazewright.Papers.Answers;
using Glazewright.Papers.Pdf;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Tests.Sets;

namespace Glazewright.Papers.Tests.Answers;

public class GrowerReportTests
{
    [Theory]
    [InlineData(1, 7), InlineData(2, 8)]
    public void A_grower_reads_few_pages_and_each_opens_with_its_subject(int houses, int mostPages)
    {
        PaperSource source = SampleSource.Make(houses: houses);
        PdfBook book = ReportSetting.Of(GrowerReport.Of(source));
        Assert.InRange(book.Pages.Count, 5, mostPages);
        Assert.Contains(book.Outline, o => o.Title == "Your climate, hour by hour");
        string text = string.Join(' ', book.Pages.SelectMany(p => p.Words()).Select(w => w.Text));
        Assert.Contains("not a warranty", text);
        Assert.Contains("licensed engineer", text);
        Assert.Contains("A typical year leaves the extremes out", text);
    }

    // The price is the quote's; the payments come to it.
    [Fact]
    public void The_quote_is_the_price_and_its_payments_come_to_it()
    {
        PaperSource source = SampleSource.Make();
        string text = string.Join(' ', ReportSetting.Of(QuoteReport.Of(source)!).Pages.SelectMany(p => p.Words()).Select(w => w.Text));
        Assert.Contains(Said.Money(source.Price.Quote.Price), text);
        Assert.All(source.Price.Quote.Draws, d => Assert.Contains(Said.Money(d), text));
        Assert.Equal(source.Price.Quote.Price, source.Price.Quote.Draws.Sum(), 0.01 * source.Price.Quote.Price);
        Assert.Contains("a draft", text);
        Assert.Null(QuoteReport.Of(source with { Price = source.Price with { Quote = source.Price.Quote with { Price = 0 } } }));
    }
}
