using Glazewright.Design.Contracts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Answers;

/// <summary>What the answers rest on: every finding, every default used, everything left out.</summary>
public static class BasisReport
{
    /// <summary>The report.</summary>
    /// <param name="source">What the papers are made from.</param>
    public static Report Of(PaperSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        string name = source.Job.Name.Length > 0 ? source.Job.Name : "Unnamed job";
        List<Block> blocks = [new Block.Opening(name, "What the answers rest on", []), Cautions.Weather(source)];
        Finding[] findings = [.. WhiteList.Findings(source).OrderByDescending(f => f.Severity)];
        if (findings.Length > 0)
        {
            blocks.Add(new Block.Heading(1, "What we found"));
            blocks.AddRange(FindingTables.Of(findings));
        }

        string[] leftOut = [.. WhiteList.LeftOut(source)];
        if (leftOut.Length > 0)
        {
            blocks.Add(new Block.Heading(1, "What the computation leaves out"));
            blocks.Add(new Block.Bullets(leftOut));
        }

        (string Field, string Value)[] defaults = [.. WhiteList.Defaults(source).Select(d => (FieldWords(d.Pointer), d.Value)).Distinct()];
        if (defaults.Length > 0)
        {
            blocks.Add(new Block.Heading(1, "Taken as usual, because the job does not say"));
            blocks.Add(new Block.Paragraph($"{WhiteList.Defaults(source).Count()} values, those that several houses, openings or weeks share told once; what the contractor assumes for buying and pricing apart.", Quiet: true));
            int half = (defaults.Length + 1) / 2;
            blocks.Add(new Block.TableOf(new Table(
                [new("Field", 52), new("Taken as", 36), new("Field", 52), new("Taken as", 36)],
                [.. Enumerable.Range(0, half).Select(i => (IReadOnlyList<string>)[.. Pair(defaults, i), .. Pair(defaults, half + i)])])));
        }

        return new Report(
            name + ": basis",
            "Findings, defaults and limits of the answers",
            name + " · predicted, not a warranty",
            PaperDate.Of(source.Job),
            PaperDate.Size(source.Job),
            blocks);
    }

    private static string[] Pair((string Field, string Value)[] defaults, int index) =>
        index < defaults.Length ? [defaults[index].Field, defaults[index].Value] : ["", ""];

    /// <summary>A field's place without list positions: what all houses and weeks share is said once.</summary>
    private static string FieldWords(string pointer) => string.Join(
        " / ", pointer.Split('/', StringSplitOptions.RemoveEmptyEntries).Where(part => !part.All(char.IsAsciiDigit) && part != "houses"));
}
