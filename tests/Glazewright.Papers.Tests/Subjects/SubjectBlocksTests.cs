using Glazewright.Design.Contracts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Subjects;
using Glazewright.Papers.Tests.Sets;

namespace Glazewright.Papers.Tests.Subjects;

public class SubjectBlocksTests
{
    [Theory]
    [InlineData(UnitSystem.Us, "Bought ft"), InlineData(UnitSystem.Metric, "Bought m")]
    public void Lists_on_pages_have_the_columns_one_orders_and_pays_by(UnitSystem units, string bought)
    {
        PaperSource source = SampleSource.Make(units, 1);
        string[][] Heads(JobSubject subject) => [.. SubjectBlocks.Whole(subject, source, source.Houses[0]).OfType<Block.TableOf>().Select(t => t.Table.Columns.Select(c => c.Head).ToArray())];
        Assert.Contains(Heads(JobSubject.Materials), h => h.SequenceEqual(["Description", "Quantity", "Unit", "By"]));
        Assert.Contains(Heads(JobSubject.Materials), h => h.Length == 8 && h[2] == bought);
        Assert.Contains(Heads(JobSubject.Price), h => h.SequenceEqual(["Description", "Quantity", "Unit", "Unit cost", "Cost", "Labour hours", "By"]));
    }

    [Fact]
    public void Money_on_the_page_of_the_price_bears_its_sign()
    {
        PaperSource source = SampleSource.Make(UnitSystem.Us, 1);
        int told = 0;
        foreach (Table table in SubjectBlocks.Whole(JobSubject.Price, source, source.Houses[0]).OfType<Block.TableOf>().Select(t => t.Table))
        {
            foreach (int c in Enumerable.Range(0, table.Columns.Count).Where(c => table.Columns[c].Head is "Part" or "Sum so far" or "To compare" or "Unit cost" or "Cost"))
            {
                Assert.Equal(Along.End, table.Columns[c].Along);
                Assert.All(table.Rows.Where(r => r[c].Length > 0), r => Assert.Matches(@"^−?\$\d{1,3}(,\d{3})*\.\d\d$", r[c]));
                told += table.Rows.Count(r => r[c].Length > 0);
            }
        }

        Assert.True(told > 8, $"only {told} sums are told");
        string price = source.Price.Quote.Price.ToString("#,0.00", System.Globalization.CultureInfo.InvariantCulture);
        Assert.Contains(SubjectBlocks.Whole(JobSubject.Price, source, source.Houses[0]).OfType<Block.TableOf>().SelectMany(t => t.Table.Rows), r => r[0] == "price" && r[2] == "$" + price);
    }

    // A phone shows 390 px: what is drawn wider than 140 mm scrolls there.
    [Fact]
    public void Plans_on_the_page_of_the_brief_fit_a_phone()
    {
        PaperSource source = SampleSource.Make(UnitSystem.Us, 2);
        Assert.All(SubjectBlocks.Whole(JobSubject.Brief, source, source.Houses[0]).OfType<Block.Picture>(), p => Assert.True(p.Drawing.WidthMm < 140));
    }
}
