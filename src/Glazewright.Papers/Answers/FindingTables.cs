using Glazewright.Design.Contracts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;

namespace Glazewright.Papers.Answers;

/// <summary>Findings as tables, the gravest first, a heading and a table for each grade.</summary>
internal static class FindingTables
{
    public static IEnumerable<Block> Of(IEnumerable<Finding> findings)
    {
        foreach (IGrouping<Severity, Finding> grade in findings.GroupBy(f => f.Severity).OrderByDescending(g => g.Key))
        {
            yield return new Block.Heading(2, grade.Key switch
            {
                Severity.Danger => "Danger",
                Severity.Miss => "Missed",
                Severity.Near => "Near the limit",
                _ => "To know",
            });
            yield return new Block.TableOf(new Table(
                [new("Where", 24), new("What is so", 92), new("What would mend it", 60)],
                [.. grade.Select(f => (IReadOnlyList<string>)[f.Id, f.What, f.Mend])]));
        }
    }
}
