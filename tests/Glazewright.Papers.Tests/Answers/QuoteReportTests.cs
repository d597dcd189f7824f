using Glazewright.Design.Brief;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;
using Glazewright.Papers.Tests.Sets;

namespace Glazewright.Papers.Tests.Answers;

public class QuoteReportTests
{
    private static readonly Parties s_both = new("Hillside Glasshouse Works", "Two-Ridge Herbs", "12 Ridge Road", "2027-014");

    [Fact]
    public void A_quote_names_both_sides_and_all_that_is_built()
    {
        PaperSource source = SampleSource.Make(houses: 1);
        source = source with { Job = source.Job with { Parties = s_both } };
        Report quote = QuoteReport.Of(source)!;
        IReadOnlyList<string> opening = quote.Blocks.OfType<Block.Opening>().Single().Facts;
        Assert.Equal(["From Hillside Glasshouse Works", "For Two-Ridge Herbs", "12 Ridge Road", "No. 2027-014"], opening.Take(4));
        string[] parts = [.. quote.Blocks.OfType<Block.TableOf>().First().Table.Rows.Select(r => r[0])];
        Assert.Contains("House A, curtain", parts);
        Assert.Contains("House A, benches", parts);
        Assert.Contains("House A, controls and power", parts);
    }

    [Fact]
    public void A_title_block_is_the_contractors()
    {
        string[] Texts(Parties parties) => [.. SheetStyle.Border(SampleSource.Make(houses: 1).Job with { Parties = parties }, "Plan", "A-1", "1:100").OfType<Entity.Label>().Select(l => l.Text)];
        Assert.Contains("Hillside Glasshouse Works", Texts(s_both));
        Assert.Contains("12 Ridge Road", Texts(s_both));
        Assert.Contains("Drawn by Glazewright", Texts(Parties.None));
    }
}
