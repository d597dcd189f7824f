using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;

namespace Glazewright.Papers.Answers;

/// <summary>The grower's report: the questions of the first hour, each with a number, a picture and a caution.</summary>
public static class AnswersReport
{
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
            new Block.Opening(name, "What your greenhouse will do, predicted", Facts(source)),
        ];
        if (source.Houses.Count > 0)
        {
            blocks.Add(SectionOf(source, source.Houses[0], 104));
        }

        blocks.Add(new Block.TableOf(new Table(
            [new("You asked", 66), new("Short answer", 92), new("", 19)],
            [.. answers.Select(a => (IReadOnlyList<string>)[a.Question, a.Brief, Word(a.Standing)])])));
        blocks.Add(Cautions.Weather(source));
        if (job.Occupancy.Visitors != Visitors.StaffOnly)
        {
            blocks.Add(new Block.Caution("People come in", FormattableString.Invariant($"With {(job.Occupancy.Visitors == Visitors.Customers ? "customers" : "pupils")} inside it is no mere farm building: risk category {job.Occupancy.RiskCategory}, exits, door widths and accessible routes are for the plan reviewer to settle before anything is ordered.")));
        }

        Sheet? range = RangeSection.Picture(source, Said.WidthMm, 62);
        blocks.Add(new Block.Heading(1, "Plan and sections"));
        blocks.Add(new Block.Picture(RangePlan.Picture(source, Said.WidthMm, 84), "Range plan. Lot lines and setbacks are on the drawing sheet."));
        blocks.AddRange(range is null ? [] : [new Block.Picture(range, "How far the houses shade each other at noon of the shortest day.")]);
        blocks.AddRange(source.Houses.Skip(1).Select(h => SectionOf(source, h, 92)));
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
        blocks.AddRange(Rest(source));
        DateOnly? date = DateOnly.TryParseExact(job.Date, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture, System.Globalization.DateTimeStyles.None, out DateOnly day) ? day : null;
        return new Report(
            name + ": answers",
            "Answers of the design, predicted under stated conditions",
            name + " · predicted, not a warranty",
            date,
            job.Units == UnitSystem.Us ? SheetSize.Letter : SheetSize.A4,
            blocks);
    }

    /// <summary>The questions with their answers in a few words, as on the report's first page.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <returns>Question, answer, and how the wish fared in a word.</returns>
    public static IReadOnlyList<ShortAnswer> InShort(PaperSource source) =>
        [.. Answers(source).Select(a => new ShortAnswer(a.Question, a.Brief, Word(a.Standing)))];

    private static Block SectionOf(PaperSource source, HouseResults house, double heightMm) => new Block.Picture(
        HouseSection.Picture(source, house, Said.WidthMm, heightMm),
        $"House {house.Form.Id}, cross-section looking {Compass.Word(house.Form.Face(FaceName.End1).AzimuthDeg)}, with the noon sun of the shortest and longest day.");

    private static IEnumerable<QuestionAnswered> Answers(PaperSource source)
    {
        foreach (HouseResults house in source.Houses)
        {
            yield return ClimateAnswer.Of(source, house);
        }

        foreach (HouseResults house in source.Houses)
        {
            if (LightAnswer.Of(source, house) is QuestionAnswered light)
            {
                yield return light;
            }
        }

        foreach (HouseResults house in source.Houses)
        {
            if (PlantAnswers.Cooling(source, house) is QuestionAnswered cooling)
            {
                yield return cooling;
            }

            if (PlantAnswers.Heat(source, house) is QuestionAnswered heat)
            {
                yield return heat;
            }
        }

        yield return StructureAnswer.Of(source);
        if (EnergyAnswer.Of(source) is QuestionAnswered energy)
        {
            yield return energy;
        }

        if (PriceAnswer.Of(source) is QuestionAnswered price)
        {
            yield return price;
        }
    }

    private static IReadOnlyList<string> Facts(PaperSource source)
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
        Finding[] all = [.. WhiteList.Findings(source)];
        Finding[] findings = [.. all.Where(f => f.Severity != Severity.Note).OrderByDescending(f => f.Severity)];
        if (all.Length == 0)
        {
            yield break;
        }

        yield return new Block.Heading(1, "What we found");
        if (findings.Length > 0)
        {
            yield return new Block.TableOf(new Table(
                [new("", 16), new("Where", 24), new("What is so", 76), new("What would mend it", 61)],
                [.. findings.Select(f => (IReadOnlyList<string>)[SeverityWord(f.Severity), f.Id, f.What, f.Mend])]));
        }

        if (findings.Length < all.Length)
        {
            yield return new Block.Paragraph($"Beside these there are {all.Length - findings.Length} notes with nothing to mend; the contractor has them.", Quiet: true);
        }
    }

    private static IEnumerable<Block> Rest(PaperSource source)
    {
        string[] leftOut = [.. WhiteList.LeftOut(source)];
        if (leftOut.Length > 0)
        {
            yield return new Block.Heading(1, "What the computation leaves out");
            yield return new Block.Bullets(leftOut);
        }

        (string Field, string Value)[] defaults = [.. WhiteList.Defaults(source).Select(d => (FieldWords(d.Pointer), d.Value)).Distinct()];
        if (defaults.Length > 0)
        {
            yield return new Block.Heading(1, "Taken as usual, because the job does not say");
            int half = (defaults.Length + 1) / 2;
            yield return new Block.TableOf(new Table(
                [new("Field", 52), new("Taken as", 36), new("Field", 52), new("Taken as", 36)],
                [.. Enumerable.Range(0, half).Select(i => (IReadOnlyList<string>)[
                    defaults[i].Field, defaults[i].Value, half + i < defaults.Length ? defaults[half + i].Field : "", half + i < defaults.Length ? defaults[half + i].Value : "",
                ])]));
        }
    }

    /// <summary>A field's place without list positions: what all houses and weeks share is said once.</summary>
    private static string FieldWords(string pointer) => string.Join(
        " / ", pointer.Split('/', StringSplitOptions.RemoveEmptyEntries).Where(part => !part.All(char.IsAsciiDigit) && part != "houses"));

    private static string SeverityWord(Severity severity) => severity switch
    {
        Severity.Danger => "danger",
        Severity.Miss => "miss",
        Severity.Near => "near",
        _ => "note",
    };

    private static string Word(Standing standing) => standing switch
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
