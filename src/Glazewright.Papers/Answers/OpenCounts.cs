using Glazewright.Design.Contracts;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Answers;

/// <summary>How much of what was found and assumed stands in the open papers (basis.pdf), and how much in the contractor's own alone.</summary>
/// <param name="Findings">Findings in basis.pdf.</param>
/// <param name="OwnFindings">Findings for the contractor alone: buying, cutting, price.</param>
/// <param name="OwnNotes">Of those, notes.</param>
/// <param name="Defaults">Defaults told in basis.pdf.</param>
/// <param name="OwnDefaults">Defaults told to the contractor alone.</param>
public sealed record OpenCounts(int Findings, int OwnFindings, int OwnNotes, int Defaults, int OwnDefaults)
{
    /// <summary>Counts.</summary>
    /// <param name="source">What the papers are made from.</param>
    public static OpenCounts Of(PaperSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        Finding[] all = [.. source.Reports().SelectMany(r => r.Findings)];
        Finding[] open = [.. WhiteList.Findings(source)];
        int defaults = WhiteList.Defaults(source).Count();
        return new OpenCounts(
            open.Length,
            all.Length - open.Length,
            all.Count(f => f.Severity == Severity.Note) - open.Count(f => f.Severity == Severity.Note),
            defaults,
            source.Defaults.Count - defaults);
    }
}
