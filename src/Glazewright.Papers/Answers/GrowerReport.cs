using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;

namespace Glazewright.Papers.Answers;

/// <summary>The grower's report, about six pages for a range of two houses: a page a subject, picture first, what was predicted in plain words and what it rests on. The numbers behind it are in answers.pdf.</summary>
public static class GrowerReport
{
    private const int MostFindings = 5;

    /// <summary>The report.</summary>
    /// <param name="source">What the papers are made from.</param>
    public static Report Of(PaperSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        Job job = source.Job;
        string name = job.Name.Length > 0 ? job.Name : "Unnamed job";
        List<Block> blocks = [.. FirstPage(source, name), .. Place(source)];
        blocks.AddRange(Climate(source));
        if (LightAnswer.Of(source) is { } light)
        {
            blocks.AddRange([new Block.NewPage(), new Block.Heading(1, "Light at the crop"), new Block.Lead(light.Short), .. light.Blocks.OfType<Block.Picture>()]);
        }

        blocks.AddRange(Equipment(source));
        blocks.AddRange(Money(source));
        blocks.AddRange(RestsOn(source));
        return new Report(
            name + ": your greenhouse",
            "What the greenhouse will do, predicted under stated conditions",
            name + " · predicted, not a warranty",
            PaperDate.Of(job),
            PaperDate.Size(job),
            blocks);
    }

    private static IEnumerable<Block> FirstPage(PaperSource source, string name)
    {
        yield return new Block.Opening(name, "What your greenhouse will do, predicted", AnswersReport.Facts(source));
        if (source.Houses.Count > 0)
        {
            yield return SectionOf(source, source.Houses[0], 76);
        }

        yield return AnswersReport.ShortTable(AnswersReport.Answers(source));
        yield return new Block.Paragraph("Predicted for a typical year, not a warranty. The last page tells what all of it rests on; answers.pdf has the numbers.", Quiet: true);
    }

    private static Block SectionOf(PaperSource source, HouseResults house, double heightMm) => new Block.Picture(
        HouseSection.Picture(source.Job, house, Said.WidthMm, heightMm),
        $"House {house.Form.Id}, looking {Compass.Word(house.Form.Face(FaceName.End1).AzimuthDeg)}: {NoonSun.Caption(NoonSun.Solstices(source.Job.Site.LatitudeDeg, source.Job.Site.RangeBearingDeg))}.");

    private static IEnumerable<Block> Place(PaperSource source)
    {
        yield return new Block.NewPage();
        yield return new Block.Heading(1, "Where it stands");
        yield return new Block.Picture(RangePlan.Picture(source, Said.WidthMm, 84), "The range from above; lot lines and setbacks are on the site plan.");
        if (RangeSection.Picture(source, Said.WidthMm, 48) is { } shades)
        {
            yield return new Block.Picture(shades, "How far the houses shade each other at noon of the shortest day.");
        }

        foreach (HouseResults house in source.Houses.Skip(1))
        {
            yield return SectionOf(source, house, 62);
        }
    }

    private static IEnumerable<Block> Climate(PaperSource source)
    {
        if (source.Houses.Count == 0)
        {
            yield break;
        }

        yield return new Block.NewPage();
        yield return new Block.Heading(1, "Your climate, hour by hour");
        foreach (HouseResults house in source.Houses)
        {
            QuestionAnswered answer = ClimateAnswer.Of(source, house);
            yield return new Block.Heading(2, $"House {house.Form.Id}");
            yield return new Block.Lead(answer.Short);
            if (ClimateAnswer.Carpet(source, house.Year, Said.WidthMm, 56) is { } carpet)
            {
                yield return new Block.Picture(carpet, "Each column is a day, each row an hour (standard time): held, too cold or too warm against what you asked for at that hour.");
            }
        }
    }

    private static IEnumerable<Block> Equipment(PaperSource source)
    {
        if (source.Houses.Count == 0)
        {
            yield break;
        }

        yield return new Block.NewPage();
        yield return new Block.Heading(1, "Air, heat, and when something fails");
        foreach (HouseResults house in source.Houses)
        {
            yield return new Block.Heading(2, $"House {house.Form.Id}");
            yield return new Block.Paragraph(PlantAnswers.Cooling(source, house).Short);
            yield return new Block.Paragraph(PlantAnswers.Heat(source, house).Short);
            if (FailureAnswer.Of(source, house) is { } failure)
            {
                yield return new Block.Paragraph(failure.Short);
                foreach (Block.Picture picture in failure.Blocks.OfType<Block.Picture>().Take(1))
                {
                    yield return picture;
                }
            }
        }
    }

    private static IEnumerable<Block> Money(PaperSource source)
    {
        QuestionAnswered?[] asked = [EnergyAnswer.Of(source), PriceAnswer.Of(source)];
        bool opened = false;
        foreach (QuestionAnswered answer in asked.OfType<QuestionAnswered>())
        {
            if (!opened)
            {
                yield return new Block.NewPage();
                yield return new Block.Heading(1, "What it costs");
                opened = true;
            }

            yield return new Block.Heading(2, answer.Question);
            yield return new Block.Lead(answer.Short);
            foreach (Block block in answer.Blocks.Where(b => b is not Block.Paragraph))
            {
                yield return block;
            }
        }
    }

    private static IEnumerable<Block> RestsOn(PaperSource source)
    {
        yield return new Block.NewPage();
        yield return new Block.Heading(1, "What this rests on");
        yield return Cautions.Weather(source);
        if (source.Job.Occupancy.Visitors != Visitors.StaffOnly)
        {
            yield return Cautions.People(source);
        }

        yield return new Block.Caution("Structure", StructureAnswer.Of(source).Short + " Structural results are for review and sealing by a licensed engineer under the code adopted locally.");
        string[] open = [.. AnswersReport.ToSettle(source)];
        if (open.Length > 0)
        {
            yield return new Block.Heading(2, "To be settled before anything is ordered");
            yield return new Block.Bullets([.. open.Take(MostFindings)]);
            if (open.Length > MostFindings)
            {
                yield return new Block.Paragraph(FormattableString.Invariant($"{open.Length - MostFindings} more stand in answers.pdf."), Quiet: true);
            }
        }
    }
}
