using System.Globalization;
using Glazewright.Design.Brief.Reading;
using Glazewright.Cli.Running;
using Glazewright.Cli.Tests.Commands;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Plant;
using Glazewright.Design.Price;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Sets;

namespace Glazewright.Cli.Tests.Pipeline;

/// <summary>Houses at the edges of what may be asked for: very small, without heat, without fans, named in a script of other letters.</summary>
[Trait("Category", "Slow")]
public class OddHousesTests
{
    [Fact]
    public void A_very_small_house_is_not_boiled_by_its_heater()
    {
        PaperSource source = Make("""{ "glazewright": 1, "houses": [{ "width": "6 ft", "length": "8 ft" }] }""");
        HouseResults house = source.Houses[0];
        double heatW = house.Plant.Heat!.Choice.Heaters.Sum(h => h.OutputW);
        Assert.InRange(heatW, 1.1 * house.Duty.HeatLossW, 2 * 1.1 * house.Duty.HeatLossW);

        // With frost outside nothing but a heater makes it hot inside.
        double hottestInFrostC = house.Year.Hours.InsideC.Zip(house.Year.Hours.OutsideC).Where(h => h.Second < 0).Max(h => (double)h.First);
        Assert.True(hottestInFrostC < 35, hottestInFrostC.ToString(CultureInfo.InvariantCulture));
        Assert.True(house.Year.Extremes.HighestC < 50, house.Year.Extremes.HighestC.ToString(CultureInfo.InvariantCulture));
    }

    [Fact]
    public void A_heater_far_too_large_for_its_house_is_a_finding()
    {
        PaperSource source = Make("""{ "glazewright": 1, "houses": [{ "width": "6 ft", "length": "8 ft", "equipment": { "heaters": [{ "entry": "sealed-75", "count": 1 }] } }] }""");
        Assert.Contains(source.Houses[0].Plant.Report.Findings, f => f is { Code: "plant/heater-coarse", Severity: Severity.Miss });
    }

    [Fact]
    public void A_house_without_heat_and_fans_is_told_so_and_the_questions_stay()
    {
        PaperSource source = Make("""{ "glazewright": 1, "houses": [{ "width": "20 ft", "length": "48 ft", "equipment": { "exhaust": "none", "wetWall": { "use": false }, "heaters": "none" } }] }""");
        HouseResults house = source.Houses[0];
        Assert.Null(house.Plant.Heat);
        Assert.Null(house.Plant.Exhaust);
        string[] said = [.. source.Reports().SelectMany(r => r.Findings).Select(f => f.What)];
        Assert.DoesNotContain(said, w => w.Contains("every heater on", StringComparison.Ordinal) || w.Contains("every cooling stage was on", StringComparison.Ordinal));
        Assert.Contains(said, w => w.Contains("the house has no heat", StringComparison.Ordinal));
        Assert.Contains(said, w => w.Contains("no fans, vents, wet wall or fog", StringComparison.Ordinal));
        IReadOnlyList<ShortAnswer> answers = AnswersReport.InShort(source);
        Assert.Contains(answers, a => a.Question.StartsWith("How is house A cooled", StringComparison.Ordinal) && a.Brief.StartsWith("not at all", StringComparison.Ordinal) && a.Standing == "missed");
        Assert.Contains(answers, a => a.Question.StartsWith("Heat for house A", StringComparison.Ordinal) && a.Brief.StartsWith("none", StringComparison.Ordinal) && a.Standing == "missed");
        Assert.DoesNotContain(said, w => w.Contains(" for 0 h", StringComparison.Ordinal));
    }

    [Fact]
    public void A_name_that_the_papers_cannot_letter_is_a_finding_with_its_characters()
    {
        PaperSource source = Make("""{ "glazewright": 1, "name": "温室 one", "houses": [{ "width": "20 ft", "length": "48 ft" }] }""");
        Finding finding = Assert.Single(source.Reports().SelectMany(r => r.Findings), f => f.Code == "papers/letters-missing");
        Assert.Contains("温 (U+6E29), 室 (U+5BA4)", finding.What, StringComparison.Ordinal);
        Assert.Contains("? one", finding.What, StringComparison.Ordinal);
    }

    private static PaperSource Make(string json)
    {
        string room = Directory.CreateTempSubdirectory("glazewright-odd-").FullName;
        string path = Path.Combine(room, "odd.json");
        File.WriteAllText(path, json);
        try
        {
            IReadOnlyList<Fault> faults = JobLoading.Load(path, Shell.Example("weather/demo-continental-42N.epw.gz"), null, out LoadedJob? loaded);
            Assert.Empty(faults);
            Evaluation all = new(loaded!.Job, Ground.Of(loaded.Weather, CatalogueReader.Generic, PriceBook.Generic()), new StageRunner(), CancellationToken.None);
            return PaperSource.From(all, loaded.Defaults, "test");
        }
        finally
        {
            Directory.Delete(room, recursive: true);
        }
    }
}
