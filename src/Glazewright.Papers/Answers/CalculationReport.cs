using Glazewright.Design.Contracts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;

namespace Glazewright.Papers.Answers;

/// <summary>Every open figure with its working, source and caution, building by building and subject by subject.</summary>
public static class CalculationReport
{
    // Subjects in the order of the design; a figure's path names its own. What is not named here (cuts, takeoff, price) is the contractor's.
    private static readonly (string Room, string Heading)[] Subjects =
    [
        ("form", "Shape"),
        ("frame", "Frame: loads, members, reactions"),
        ("body", "Members bought"),
        ("framing", "Framing of openings"),
        ("gain", "Where the sun's heat goes"),
        ("light", "Light at the crop"),
        ("duty", "Design days: heat, air, moisture"),
        ("plant", "Climate equipment"),
        ("layout", "Where the equipment sits"),
        ("program", "Control program"),
        ("year", "The year"),
        ("services", "Electric, gas, water"),
    ];

    /// <summary>The report.</summary>
    /// <param name="source">What the papers are made from.</param>
    public static Report Of(PaperSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        string name = source.Job.Name.Length > 0 ? source.Job.Name : "Unnamed job";
        Figure[] figures = [.. Open(source)];
        List<Block> blocks =
        [
            new Block.Opening(name, "Calculations: every figure with its working", []),
            new Block.Caution("Preliminary", SheetStyle.Preliminary),
            Cautions.Weather(source),
            new Block.Paragraph(
                "A formula is written in the symbols that stand behind it with the numbers that were used, in SI units (m, Pa, N, kg, W, s, °C); the value is shown in the units of the job. \"Given at\" names the field of the job document. "
                + "A source read at second hand or told from memory says so: look it up before you rely on it. What a stage leaves out stands in basis.pdf."),
            new Block.Heading(3, "Contents"),
            new Block.Contents(),
        ];
        foreach (IGrouping<string, Figure> owner in figures.GroupBy(Owner))
        {
            blocks.Add(new Block.NewPage());
            blocks.Add(new Block.Heading(1, Title(source, owner.Key)));
            foreach ((string room, string heading) in Subjects)
            {
                Figure[] own = [.. owner.Where(f => Room(f) == room)];
                if (own.Length > 0)
                {
                    blocks.Add(new Block.Heading(2, owner.Key.Length > 0 ? $"{owner.Key} · {heading}" : heading));
                    blocks.AddRange(Workings(source, own));
                }
            }
        }

        return new Report(
            name + ": calculations",
            "Every figure with its working, source and caution",
            name + " · preliminary, not for construction",
            PaperDate.Of(source.Job),
            PaperDate.Size(source.Job),
            blocks);
    }

    /// <summary>The figures that may be shown to others: by the subject their path names, none that is confidential.</summary>
    /// <param name="source">What the papers are made from.</param>
    internal static IEnumerable<Figure> Open(PaperSource source) => source.ReportsByStage()
        .Where(r => r.Stage == PaperStage.Design)
        .SelectMany(r => r.Report.Figures)
        .Where(f => !f.Confidential && Subjects.Any(s => s.Room == Room(f)));

    // Path: building, stage, name; a job-wide one starts with the stage.
    private static string Owner(Figure figure) => figure.Id.Split('/') is { Length: > 2 } parts && Subjects.All(s => s.Room != parts[0]) ? parts[0] : "";

    private static string Room(Figure figure) => figure.Id.Split('/') is var parts && Owner(figure).Length > 0 ? parts[1] : parts[0];

    private static string Title(PaperSource source, string owner)
    {
        if (owner.Length == 0)
        {
            return "The whole range";
        }

        string named = source.Form.Buildings.FirstOrDefault(b => b.Id == owner) is { } building && building.Name.Length > 0 && building.Name != owner && building.Name != "House " + owner ? ", " + building.Name : "";
        return (source.Houses.Any(h => h.Form.Id == owner) ? "House " : "Building ") + owner + named;
    }

    private static IEnumerable<Block> Workings(PaperSource source, Figure[] figures)
    {
        Said said = new(source.Job.Units);

        // A caution or a method that many rows carry is said once; each of them points at it.
        Repeated cautions = new("Caution", figures.Select(f => f.Caution));
        Repeated methods = new("Method", figures.Select(WorkingWords.Method));
        foreach ((string mark, string text) in cautions.All)
        {
            yield return new Block.Caution(mark, text);
        }

        foreach ((string mark, string text) in methods.All)
        {
            yield return new Block.Paragraph($"{mark}: {text}", Quiet: true);
        }

        yield return new Block.TableOf(new Table(
            [new("Figure", 50), new("Value", 30, Along.End), new("Working and source", 94)],
            [
                .. figures.Select(f => (IReadOnlyList<string>)
                [
                    $"{f.Label} ({f.Id})", said.Text(f.Value, f.Unit), WorkingWords.Of(f, methods.MarkOf(WorkingWords.Method(f)), cautions.MarkOf(f.Caution)),
                ]),
            ]));
    }

    /// <summary>Texts that several rows of one table carry, each under a mark.</summary>
    private sealed class Repeated(string word, IEnumerable<string> texts)
    {
        private readonly string[] shared = [.. texts.Where(t => t.Length > 0).GroupBy(t => t).Where(g => g.Count() > 1).Select(g => g.Key)];

        public IEnumerable<(string Mark, string Text)> All => shared.Select((t, i) => (Mark(i), t));

        public string MarkOf(string text) => Array.IndexOf(shared, text) is int at and >= 0 ? Mark(at) : "";

        private string Mark(int index) => FormattableString.Invariant($"{word} {index + 1}");
    }
}
