using System.Globalization;
using Glazewright.Design.Contracts;

namespace Glazewright.Cli.Running;

/// <summary>Findings as lines on a terminal: what must be settled is printed, equal ones once with all their parts, notes only counted.</summary>
internal static class FindingLines
{
    public static void Write(TextWriter page, IReadOnlyList<Finding> findings, int ownNotes, bool isWhole)
    {
        if (findings.Count == 0)
        {
            page.WriteLine("No findings.");
            return;
        }

        List<(Severity Severity, string Text, List<string> Parts)> lines = [];
        foreach (Finding finding in findings.Where(f => f.Severity > Severity.Note).OrderByDescending(f => f.Severity))
        {
            string text = finding.What + (finding.Mend.Length > 0 ? " " + finding.Mend : "");
            int same = lines.FindIndex(l => l.Text == text);
            if (same < 0)
            {
                lines.Add((finding.Severity, text, []));
                same = lines.Count - 1;
            }

            if (finding.Id.Length > 0 && !lines[same].Parts.Contains(finding.Id))
            {
                lines[same].Parts.Add(finding.Id);
            }
        }

        page.WriteLine(lines.Count == 0 ? "Nothing that must be settled first." : "To be settled, gravest first:");
        foreach ((Severity severity, string text, List<string> parts) in lines)
        {
            page.WriteLine($"  {Mark(severity)} {string.Join(", ", parts)}{(parts.Count > 0 ? ": " : "")}{text}");
        }

        int notes = findings.Count(f => f.Severity == Severity.Note) - (isWhole ? ownNotes : 0);
        if (notes > 0)
        {
            page.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  · {notes} {(notes == 1 ? "note" : "notes")} more in {(isWhole ? "basis.pdf" : "the whole package")}."));
        }

        if (isWhole && ownNotes > 0)
        {
            page.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  · {ownNotes} {(ownNotes == 1 ? "note" : "notes")} more on buying and pricing in contractor/result.json alone."));
        }
    }

    private static char Mark(Severity severity) => severity switch
    {
        Severity.Danger => '✖',
        Severity.Miss => '■',
        Severity.Near => '▲',
        _ => '·',
    };
}
