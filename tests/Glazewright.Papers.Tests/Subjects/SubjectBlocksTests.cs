using Glazewright.Design.Contracts;
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
}
