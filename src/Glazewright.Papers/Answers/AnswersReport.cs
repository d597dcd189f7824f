using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;

namespace Glazewright.Papers.Answers;

/// <summary>The questions of the first hour, each answered with a number, a picture and a caution: what stands behind the grower's report.</summary>
public static class AnswersReport
{
    private const int MostFindings = 12;

    /// <summary>The report.</summary>
    /// <param name="source">What the papers are made from.</param>
    public static Report Of(PaperSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        Job job = source.Job;
        string name = job.Name.Length > 0 ? job.Name : "Unnamed job";
        QuestionAnswered[] answers = [.. Answers(source)];
        List<Block> blocks =
        [
            new Block.Opening(name, "Your questions, answered with their numbers", Facts(source)),
        ];
        blocks.Add(ShortTable(answers));
        blocks.Add(Cautions.Weather(source));
        if (job.Occupancy.Visitors != Visitors.StaffOnly)
        {
            blocks.Add(Cautions.People(source));
        }

        blocks.Add(new Block.Heading(1, "Your questions"));
        foreach (QuestionAnswered answer in answers)
        {
            blocks.Add(new Block.Heading(2, answer.Question));
            blocks.Add(new Block.Lead(answer.Short));
            blocks.AddRange(answer.Blocks);
        }

        blocks.AddRange(Findings(source));
        blocks.Add(new Block.Heading(1, "Cautions"));
        blocks.AddRange(Cautions.Of(source));
        return new Report(
            name + ": answers",
            "Answers of the design, predicted under stated conditions",
            name + " · predicted, not a warranty",
            PaperDate.Of(job),
            PaperDate.Size(job),
            blocks);
    }

    /// <summary>The questions with their answers in a few words, as on the report's first page.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <returns>Question, answer, and how the wish fared in a word.</returns>
    public static IReadOnlyList<ShortAnswer> InShort(PaperSource source) =>
        [.. Answers(source).Select(a => new ShortAnswer(a.Question, a.Brief, Word(a.Standing)))];

    /// <summary>The questions with their short answers, as a table.</summary>
    internal static Block ShortTable(IEnumerable<QuestionAnswered> answers) => new Block.TableOf(new Table(
        [new("You asked", 66), new("Short answer", 92), new("", 19)],
        [.. answers.Select(a => (IReadOnlyList<string>)[a.Question, a.Brief, Word(a.Standing)])]));

    /// <summary>The answers that everyone on the job may read: all but what it costs to build.</summary>
    internal static IEnumerable<QuestionAnswered> OpenAnswers(PaperSource source)
    {
        foreach (HouseResults house in source.Houses)
        {
            yield return ClimateAnswer.Of(source, house);
        }

        if (LightAnswer.Of(source) is QuestionAnswered light)
        {
            yield return light;
        }

        foreach (HouseResults house in source.Houses)
        {
            yield return PlantAnswers.Cooling(source, house);
            yield return PlantAnswers.Heat(source, house);
            if (FailureAnswer.Of(source, house) is QuestionAnswered failure)
            {
                yield return failure;
            }
        }

        yield return StructureAnswer.Of(source);
        if (EnergyAnswer.Of(source) is QuestionAnswered energy)
        {
            yield return energy;
        }
    }

    internal static IEnumerable<QuestionAnswered> Answers(PaperSource source) =>
        PriceAnswer.Of(source) is QuestionAnswered price ? OpenAnswers(source).Append(price) : OpenAnswers(source);

    internal static IReadOnlyList<string> Facts(PaperSource source)
    {
        Job job = source.Job;
        Said said = new(job.Units);
        string place = FormattableString.Invariant($"{Math.Abs(job.Site.LatitudeDeg):0.00}° {(job.Site.LatitudeDeg >= 0 ? "N" : "S")}, {Math.Abs(job.Site.LongitudeDeg):0.00}° {(job.Site.LongitudeDeg >= 0 ? "E" : "W")}, {(said.Of(job.Site.ElevationM, Unit.Metre) with { Decimals = 0 }).Text}");
        LengthStyle style = SheetStyle.Lengths(job);
        List<string> facts = [(job.Site.Place.Length > 0 ? job.Site.Place + " · " : "") + place];
        facts.AddRange(source.Houses.Select(h =>
            $"House {h.Form.Id}: {LengthText.Of(h.Form.WidthM, style)} × {LengthText.Of(h.Form.LengthM, style)}, ridge {LengthText.Of(h.Form.Roof.RidgeM, style)}, {said.Text(h.Form.FloorAreaM2, Unit.SquareMetre)} of floor, {said.Text(h.Layout.BenchM2, Unit.SquareMetre)} of bench"));
        return facts;
    }

    private static IEnumerable<Block> Findings(PaperSource source)
    {
        string[] worst = [.. ToSettle(source)];
        int dangers = WhiteList.Findings(source).Count(f => f.Severity == Severity.Danger);
        if (worst.Length > 0)
        {
            yield return new Block.Heading(1, "To be settled before anything is ordered");
            yield return new Block.Bullets([.. worst.Take(Math.Max(MostFindings, dangers))]);
        }

        OpenCounts counts = OpenCounts.Of(source);
        yield return new Block.Paragraph($"All {counts.Findings} findings on the house and what it does, the {counts.Defaults} values that were taken as usual because the job does not say, and what the computation leaves out stand in basis.pdf. What the contractor assumes for buying and pricing is not counted here.", Quiet: true);
    }

    /// <summary>Dangers and misses with what would mend them, the worst first.</summary>
    internal static IEnumerable<string> ToSettle(PaperSource source) => WhiteList.Findings(source)
        .Where(f => f.Severity is Severity.Danger or Severity.Miss)
        .OrderByDescending(f => f.Severity)
        .Select(f => (f.Id.Length > 0 ? f.Id + ": " : "") + f.What + (f.Mend.Length > 0 ? " → " + f.Mend : ""))
        .Distinct();

    internal static string Word(Standing standing) => standing switch
    {
        Standing.Held => "held",
        Standing.Near => "near",
        Standing.Miss => "missed",
        _ => "",
    };
}

/// <summary>A question and its answer in a few words.</summary>
/// <param name="Question">The question.</param>
/// <param name="Brief">The answer.</param>
/// <param name="Standing">How the wish fared, in a word; may be empty.</param>
public sealed record ShortAnswer(string Question, string Brief, string Standing);
