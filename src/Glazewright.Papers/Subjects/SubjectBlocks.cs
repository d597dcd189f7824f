using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Exchange;
using Glazewright.Papers.Light;
using Glazewright.Papers.Plant;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;

namespace Glazewright.Papers.Subjects;

/// <summary>Subjects of a job, in the order of the job.</summary>
public enum JobSubject
{
    /// <summary>Place, crop, who comes in.</summary>
    Brief,

    /// <summary>Shape, sun, light.</summary>
    Shape,

    /// <summary>Frame and foundation.</summary>
    Frame,

    /// <summary>What covers the faces.</summary>
    Covering,

    /// <summary>Climate plant.</summary>
    Plant,

    /// <summary>Control program.</summary>
    Program,

    /// <summary>The simulated year.</summary>
    Year,

    /// <summary>What is bought and how it is cut.</summary>
    Materials,

    /// <summary>The price.</summary>
    Price,
}

/// <summary>What can be said and drawn of a subject before the year is run.</summary>
/// <param name="Job">The job.</param>
/// <param name="Look">Shape, frame, places of a house.</param>
/// <param name="Duty">Its design days.</param>
/// <param name="Plant">Its equipment.</param>
/// <param name="Program">Its control program.</param>
public sealed record QuickSource(Design.Brief.Job Job, HouseLook Look, DutyResult Duty, PlantResult Plant, ProgramDocument Program)
{
    /// <summary>Shapes of all buildings, for the lot's picture; null where it is not wanted.</summary>
    public FormResult? Range { get; init; }
}

/// <summary>The words, tables and drawings of the papers, by subject: what a page shows of it.</summary>
public static class SubjectBlocks
{
    private const double WideMm = 190;

    // Bars, plans and the section of page Brief need no more: on a phone they are read whole.
    private const double NarrowMm = 128;

    /// <summary>What is known at once.</summary>
    /// <param name="subject">The subject.</param>
    /// <param name="source">What it is made from.</param>
    /// <returns>Its blocks; none where all of it rests on more than the quick stages.</returns>
    public static IReadOnlyList<Block> Quick(JobSubject subject, QuickSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        string id = source.Look.Form.Id;
        UnitSystem units = source.Job.Units;
        return subject switch
        {
            JobSubject.Brief when source.Range is { } range => [SectionOf(source, NarrowMm, 74), LotOf(source.Job, range)],
            JobSubject.Brief => [SectionOf(source, NarrowMm, 74)],
            JobSubject.Frame or JobSubject.Covering => [SectionOf(source, WideMm, 112)],
            JobSubject.Plant =>
            [
                .. Air($"air-days-{id}", $"House {id}: the hottest and the wettest design day", [AirStory.Summer(source.Duty, source.Plant), AirStory.WetDay(source.Duty, source.Plant)], units),
                .. Air($"air-nights-{id}", $"House {id}: the design nights", AirStory.DampNight(source.Duty) is { } damp ? [AirStory.WinterNight(source.Duty), damp] : [AirStory.WinterNight(source.Duty)], units),
                .. source.Plant.Exhaust is { } exhaust && FanChart.Of(id, exhaust.Choice, source.Duty.Air.Summer.DensityKgPerM3, Design.Catalogues.CatalogueReader.Generic, units, WideMm) is { } fans ? (Block[])[new Block.Heading(2, "Fans against the house"), fans] : [],
                new Block.Heading(2, "Heat loss on the design night, by face"),
                new Block.TableOf(LossTables.Paths(source.Duty, new Said(units))),
            ],
            JobSubject.Program => [.. ControlNarrative.Of(source.Program, units).SelectMany(p => (Block[])[new Block.Heading(2, p.Heading), new Block.Bullets([.. p.Lines])])],
            _ => [],
        };
    }

    /// <summary>A stage's report in the words of the reader's units.</summary>
    /// <param name="report">As the stage made it.</param>
    /// <param name="units">The reader's units.</param>
    public static StageReport InUnits(StageReport report, UnitSystem units) => units == UnitSystem.Metric ? SiWords.Of(report) : report;

    /// <summary>What rests on light maps, the year, takeoff and price.</summary>
    /// <param name="subject">The subject.</param>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="house">The house that is looked at.</param>
    /// <returns>Its blocks; the contractor's own numbers stand in those of materials and price, which are for no other reader.</returns>
    public static IReadOnlyList<Block> Whole(JobSubject subject, PaperSource source, HouseResults house)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(house);
        string per = source.Job.Units == UnitSystem.Us ? "ft" : "m";
        return subject switch
        {
            JobSubject.Brief => [new Block.Heading(2, "Answers in short"), AnswersReport.ShortTable(AnswersReport.Answers(source)), new Block.Picture(RangePlan.Picture(source, NarrowMm, 96), "The range from above.")],
            JobSubject.Shape => [.. Shades(source), .. LightReport.Chapter(source, house).Where(b => b is not (Block.NewPage or Block.Heading { Level: 1 }))],
            JobSubject.Frame => [.. Answered(StructureAnswer.Of(source)), Drawn(TypicalFrame.Draw(source, house, "")), Drawn(FramingPlan.Draw(source, house, "")), Drawn(FoundationPlan.Draw(source, house, ""))],
            JobSubject.Covering => [Drawn(ElevationSheet.Draw(source, house, "")), Drawn(CoverSheets.Roof(source, house, "")), Drawn(CoverSheets.Sides(source, house, "")), Drawn(CoverSheets.Ends(source, house, ""))],
            JobSubject.Plant => [.. Answered(PlantAnswers.Cooling(source, house)), .. Answered(PlantAnswers.Heat(source, house)), Drawn(PlantPlan.Draw(source, house, "")), .. BehaviourChapter.Of(source, house), .. ChoicesChapter.Of(source, house)],
            JobSubject.Program => ClimateAnswer.Of(source, house) is { } held ? [new Block.Heading(2, "What the year says of it"), new Block.Lead(held.Short), .. held.Blocks.OfType<Block.Figures>()] : [],
            JobSubject.Year => [.. Answered(ClimateAnswer.Of(source, house)), .. Answered(FailureAnswer.Of(source, house)), .. Answered(EnergyAnswer.Of(source)), Drawn(YearSheet.Draw(source, house, ""))],
            JobSubject.Materials =>
            [
                .. Answered(OrderAnswer.Of(source)),
                new Block.Heading(2, "What the cut lists buy"), new Block.TableOf(CsvTable.Of(ShopCsv.CutSummary(source.Cuts, source.Job.Units), "section", "bars", $"bought_{per}", $"pieces_{per}", $"usable_drops_{per}", $"waste_{per}", "waste_percent", "proved_best")),
                new Block.Heading(2, "To buy or make"), new Block.TableOf(CsvTable.Of(ShopCsv.Materials(source.Takeoff, source.Cuts, source.Job.Units), "description", "quantity", "unit", "by")),
                new Block.Heading(2, "Cuts"), new Block.TableOf(CsvTable.Of(ShopCsv.Cuts(source.Cuts, source.Job.Units))),
            ],
            JobSubject.Price =>
            [
                .. Answered(PriceAnswer.Of(source)),
                new Block.Caution("Yours alone", "What follows holds costs and margin. It is on no paper but your own."),
                Costs(source.Price),
                new Block.Heading(2, "From direct cost to price"), new Block.TableOf(CsvTable.Of(ContractorCsv.Summary(source.Price)).InMoney("Part", "Sum so far", "To compare")),
                new Block.Heading(2, "Lines"), new Block.TableOf(CsvTable.Of(ContractorCsv.Lines(source.Price, source.Job.Units), "description", "quantity", "unit", "unit_cost", "cost", "labour_hours", "by").InMoney("Unit cost", "Cost")),
            ],
            _ => throw new ArgumentOutOfRangeException(nameof(subject), subject, "No such subject."),
        };
    }

    private static Block SectionOf(QuickSource source, double wideMm, double tallMm)
    {
        BuildingForm form = source.Look.Form;
        return new Block.Picture(
            HouseSection.Picture(source.Job, source.Look, wideMm, tallMm),
            $"House {form.Id}, looking {Compass.Word(form.Face(FaceName.End1).AzimuthDeg)}: {NoonSun.Caption(NoonSun.Solstices(source.Job.Site.LatitudeDeg, source.Job.Site.RangeBearingDeg))}.");
    }

    private static Block LotOf(Design.Brief.Job job, FormResult range) => new Block.Picture(
        LotPicture.Draw(job, range, NarrowMm, 112),
        job.Lot.SizeXM > 0
            ? $"The lot from above, as typed and not surveyed: lot lines, setbacks dashed, clear distances. Along the ridges (to the right) is {Compass.Word(job.Site.RangeBearingDeg)}."
            : $"The houses from above. Give the lot below Power, gas, water to see its lines and setbacks. Along the ridges (to the right) is {Compass.Word(job.Site.RangeBearingDeg)}.");

    private static IEnumerable<Block> Air(string id, string title, AirWay[] ways, UnitSystem units) =>
    [
        new Block.Picture(PsychrometricChart.Draw(id, title, ways, units, WideMm, 100), title + ". Solid top line: saturation. Dashed: relative humidity. Dotted: wet bulb."),
        new Block.TableOf(NumberedStates.Table(ways, units)),
    ];

    private static IEnumerable<Block> Shades(PaperSource source) =>
        RangeSection.Picture(source, WideMm, 60) is { } shades ? [new Block.Picture(shades, "How far the houses shade each other at noon of the shortest day.")] : [];

    private static IEnumerable<Block> Answered(QuestionAnswered? answer) =>
        answer is null ? [] : [new Block.Heading(2, answer.Question), new Block.Lead(answer.Short), .. answer.Blocks];

    private static Block.Picture Costs(Design.Price.PriceResult price)
    {
        (string Name, double Cost)[] parts =
        [
            .. price.Systems.Where(s => s.Cost > 0).OrderByDescending(s => s.Cost).Select(s => (ScopeWords.Of(s.System), s.Cost)),
            ("our labour", price.LabourCost), ("overhead", price.Overhead), ("contingency", price.Contingency), ("margin", price.Margin),
        ];
        double most = Math.Max(1, parts.Max(p => p.Cost));
        return new Block.Picture(
            Charts.LevelBars.Draw("cost-bars", "Where the price goes, $", [.. parts.Select(p => new Charts.LevelBar(p.Name, p.Cost / most, Said.Money(p.Cost)))], NarrowMm),
            "Material and subcontract by system, the dearest first, then labour, overhead, contingency and margin.")
        {
            Numbers = new Table([new Column("Part", 70), new Column("$", 30, Along.End), new Column("of the direct cost", 30, Along.End)],
                [.. parts.Select(p => (IReadOnlyList<string>)[p.Name, Said.Money(p.Cost), price.DirectCost > 0 ? FormattableString.Invariant($"{100 * p.Cost / price.DirectCost:0.0} %") : ""])]),
        };
    }

    private static Block Drawn(Sheet sheet) => new Block.Picture(sheet, sheet.Title + ".");
}
