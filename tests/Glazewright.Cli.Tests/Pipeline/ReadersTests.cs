using Glazewright.Design.Brief.Reading;
using Glazewright.Cli.Running;
using Glazewright.Cli.Tests.Commands;
using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Framing;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Price;
using Glazewright.Design.Takeoff;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Erection;
using Glazewright.Papers.Light;
using Glazewright.Papers.Plant;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;

namespace Glazewright.Cli.Tests.Pipeline;

/// <summary>What goes to which reader, for every example: nothing dangerous is held back, nothing of the contractor's is let out.</summary>
[Trait("Category", "Slow")]
public partial class ReadersTests
{
    private static readonly Dictionary<string, Lazy<PaperSource>> Made = Directory.EnumerateFiles(Shell.Example(""), "*.json")
        .Select(p => Path.GetFileNameWithoutExtension(p)).ToDictionary(n => n, n => new Lazy<PaperSource>(() => Make(n)));

    public static TheoryData<string> Examples { get; } = [.. Made.Keys.Order(StringComparer.Ordinal)];

    [Theory, MemberData(nameof(Examples))]
    public void Every_danger_reaches_basis_answers_and_review(string example)
    {
        PaperSource source = Made[example].Value;
        string[] dangers = [.. source.Reports().SelectMany(r => r.Findings).Where(f => f.Severity == Severity.Danger && !f.Confidential).Select(f => f.What).Distinct()];
        foreach (Report report in (Report[])[BasisReport.Of(source), AnswersReport.Of(source), ReviewReport.Of(source)])
        {
            string text = Text(report);
            Assert.All(dangers, d => Assert.Contains(d, text, StringComparison.Ordinal));
        }
    }

    // Texts over each other, off the paper, crossed by a line, or laid over equipment: none on any sheet of any example.
    [Theory, MemberData(nameof(Examples))]
    public void All_lettering_of_every_sheet_can_be_read(string example)
    {
        foreach (Sheet sheet in DrawingSet.Of(Made[example].Value).Select(d => d.Sheet))
        {
            Page page = Plot.Of(sheet);
            Assert.True(TextClashes.On(page).Concat(TextClashes.OnLines(page)).ToArray() is [], $"{sheet.Id}: {string.Join("; ", TextClashes.On(page).Concat(TextClashes.OnLines(page)))}");
        }
    }

    // Every sheet and panel that the takeoff buys for a house lies in its drawing, and no other.
    [Theory, MemberData(nameof(Examples))]
    public void Sheets_and_panels_drawn_are_the_ones_bought(string example)
    {
        PaperSource source = Made[example].Value;
        foreach (HouseResults house in source.Houses)
        {
            EqList<CoverPiece> drawn = CoverPlaces.Of(house.Form, source.Form, source.Houses.Select(h => h.Layout).ToEqList(), source.Job.Units);
            Assert.Equal(
                source.Takeoff.Sheets.Where(s => s.Zone.StartsWith(house.Form.Id + "/", StringComparison.Ordinal)).GroupBy(s => (s.Zone, Long: Math.Round(s.LengthM, 4), Wide: Math.Round(s.TrimmedWidthM, 4))).Select(g => (g.Key, g.Sum(s => s.Count))).Order(),
                drawn.GroupBy(p => (p.Zone, Long: Math.Round(p.LengthM, 4), Wide: Math.Round(p.WidthM, 4))).Select(g => (g.Key, g.Count())).Order());
        }
    }

    // Reactions, piers' concrete and shop marks on the sheets are those of the stages.
    [Theory, MemberData(nameof(Examples))]
    public void Structure_sheets_say_what_frame_and_takeoff_say(string example)
    {
        PaperSource source = Made[example].Value;
        foreach (HouseResults house in source.Houses)
        {
            string[] foundation = [.. Plot.Of(FoundationPlan.Draw(source, house, "S-1")).Words().Select(w => w.Text)];
            Assert.All(house.Frame.Reactions, r => Assert.Contains(Shown.Of(r.DownN, Unit.Newton, source.Job.Units).Text, foundation));
            double concreteM3 = source.Takeoff.Report.Figures.Single(f => f.Id == house.Form.Id + "/takeoff/pier-concrete").Value;
            double each = Math.PI / 4 * house.House.Frame.PierDiameterM * house.House.Frame.PierDiameterM * house.House.Frame.PierDepthM;
            MemberSolid[] feet = [.. source.Body.Members.Where(m => m.House == house.Form.Id && PierPlan.HasFoot(m))];
            EqList<Pier> under = PierPlan.Of(house.Form.Id, source.Body.Members, house.House.Frame.PierDiameterM);
            int piers = under.Count;
            Assert.All(feet, m => Assert.Contains(under, p => (p.Foot - m.Line.A).LengthM < Math.Max(1e-6, house.House.Frame.PierDiameterM / 2)));
            Assert.Equal(concreteM3, piers * each, 1e-9);
            Assert.Contains(piers > 0 ? house.Form.Members.Count(m => m.Role == MemberRole.Column).ToString(System.Globalization.CultureInfo.InvariantCulture) : "0", foundation);
            string[] frame = [.. Plot.Of(TypicalFrame.Draw(source, house, "S-3")).Words().Select(w => w.Text), .. Plot.Of(FramingPlan.Draw(source, house, "S-2")).Words().Select(w => w.Text)];
            Assert.All(source.Takeoff.Marks.Where(m => m.Where.Split(' ')[0] == house.Form.Id && m.Mark[0] is 'R' or 'C'), m => Assert.Contains(m.Mark, frame));
        }
    }

    [Fact]
    public void The_snow_load_that_relies_on_warmth_the_year_does_not_hold_is_told_to_everyone()
    {
        PaperSource source = Made["polder-salad-house"].Value;
        Assert.Contains(source.Reports().SelectMany(r => r.Findings), f => f.Code == "frame/snow-warmth-not-held");
        Assert.All((Report[])[BasisReport.Of(source), AnswersReport.Of(source), ReviewReport.Of(source)], r => Assert.Contains("The snow load relies on", Text(r), StringComparison.Ordinal));
    }

    // Metric names may carry a trade size in inches in brackets; codes keep their AWG. What the user typed is told as typed.
    [Fact]
    public void Nothing_of_a_metric_job_is_said_in_inches_feet_pounds_gallons_or_Fahrenheit()
    {
        PaperSource source = Made["polder-salad-house"].Value;
        Assert.Equal(UnitSystem.Metric, source.Job.Units);
        List<(string Where, string Text)> said = [];
        foreach (Report? report in (Report?[])[AnswersReport.Of(source), BasisReport.Of(source), LightReport.Of(source), PlantReport.Of(source), ReviewReport.Of(source), ControlReport.Of(source), GrowerReport.Of(source), CrewReport.Of(source), CalculationReport.Of(source)])
        {
            said.AddRange(Text(SiWords.Heard(report!, UnitSystem.Metric)).Split('\n').Select(t => (report!.Title, t)));
        }

        foreach (Sheet sheet in DrawingSet.Of(source).Select(d => d.Sheet))
        {
            said.AddRange(Plot.Of(sheet).Words().Select(w => (sheet.Id, w.Text)));
            said.Add((sheet.Id, sheet.Description));
        }

        foreach (PaperFile file in PaperWriter.Write(source, CancellationToken.None).Where(f => f.Path.EndsWith(".csv", StringComparison.Ordinal)))
        {
            said.AddRange(System.Text.Encoding.UTF8.GetString(file.Bytes.Span).Replace("\"", "", StringComparison.Ordinal).Split('\n').Select(t => (file.Path, t)));
        }

        Assert.True(said.Count > 1000);
        string[] us = [.. said.Where(t => UsUnits().IsMatch(InBrackets().Replace(t.Text, ""))).Select(t => $"{t.Where}: {t.Text}").Distinct()];
        Assert.True(us is [], string.Join("\n", us));
    }

    [System.Text.RegularExpressions.GeneratedRegex(@"\((?:\d+(?:-\d/\d)?|\d/\d) in\)")]
    private static partial System.Text.RegularExpressions.Regex InBrackets();

    [System.Text.RegularExpressions.GeneratedRegex("\\d ?(?:°F|F°|mph|cfm|gpm|fpm|psf|psi|kBtu|Btu|ft²|ft³|ft|gal|lb|therms?)\\b|\\d ?(?:ft²|ft³|F°|°F)|in\\. w\\.|\\d in (?:exhaust|circulation|pipe|steel|bare|insulated|fan)|Fan \\d+ in|\\d'-\\d|a square foot|\\bgallon|\\d+\"")]
    private static partial System.Text.RegularExpressions.Regex UsUnits();

    [Theory, MemberData(nameof(Examples))]
    public void What_is_confidential_and_what_it_costs_to_build_reach_no_reviewer_nor_a_sheet(string example)
    {
        PaperSource source = Made[example].Value;
        Finding[] secret = [.. source.Reports().SelectMany(r => r.Findings).Where(f => f.Confidential)];
        Assert.NotEmpty(secret);
        string price = ((FormattableString)$"${Math.Round(source.Price.Quote.Price):#,0}").ToString(System.Globalization.CultureInfo.InvariantCulture);
        string answers = Text(AnswersReport.Of(source));
        Assert.Contains(price, answers, StringComparison.Ordinal);
        string[] texts = [Text(ReviewReport.Of(source)), Text(ControlReport.Of(source)), Text(CoverSheet.Draw(source, "G-0")), Text(BasisReport.Of(source))];
        Assert.All(texts, t => Assert.DoesNotContain(price, t, StringComparison.Ordinal));
        Assert.All(texts.Append(answers), t => Assert.All(secret, f => Assert.DoesNotContain(f.What, t, StringComparison.Ordinal)));
    }

    [Theory, MemberData(nameof(Examples))]
    public void Counts_in_answers_and_basis_are_of_what_stands_there(string example)
    {
        PaperSource source = Made[example].Value;
        OpenCounts counts = OpenCounts.Of(source);
        // A table a grade, from danger to what is good to know.
        Table[] found = [.. BasisReport.Of(source).Blocks.OfType<Block.TableOf>().Select(t => t.Table).Where(t => t.Columns.Any(c => c.Head == "What is so"))];
        Assert.Equal(counts.Findings, found.Sum(t => t.Rows.Count));
        Assert.Equal(source.Defaults.Count, counts.Defaults + counts.OwnDefaults);
        Assert.True(counts.OwnDefaults > 0 && counts.OwnFindings > 0);
        Assert.Contains($"All {counts.Findings} findings", Text(AnswersReport.Of(source)), StringComparison.Ordinal);
        Assert.Contains($"{counts.Defaults} values", Text(BasisReport.Of(source)), StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Examples))]
    public void One_caution_is_said_once_in_the_review(string example)
    {
        string text = Text(ReviewReport.Of(Made[example].Value));
        foreach (string caution in Made[example].Value.Reports().SelectMany(r => r.Figures).Select(f => f.Caution).Where(c => c.Length > 0).Distinct())
        {
            Assert.True(text.Split(caution).Length <= 2, caution);
        }
    }

    [Fact]
    public void Dimensions_stand_beyond_the_swing_of_doors()
    {
        PaperSource source = Made["bayou-seedling-house"].Value;
        View plan = HousePlan.Draw(source, source.Houses[0], "A-1").Views[0];
        double leafM = source.Houses[0].House.Openings.Where(o => o.Kind == OpeningKind.DoubleDoor && o.Face == FaceName.End1).Max(o => o.WidthM / 2);
        Entity.Dimensions[] across = [.. plan.Entities.OfType<Entity.Dimensions>().Where(d => d.Direction.Y > 0.5)];
        Assert.NotEmpty(across);
        Assert.All(across, d => Assert.True(Math.Abs(d.OffsetMm) > leafM * plan.Scale.MmPerM, $"{d.OffsetMm}"));
    }

    // The workbook's own formulas come to the price that is quoted.
    [Theory, MemberData(nameof(Examples))]
    public void The_estimate_s_workbook_comes_to_the_price(string example)
    {
        PaperSource source = Made[example].Value;
        using System.IO.Compression.ZipArchive book = new(new MemoryStream(Papers.Workbooks.EstimateBook.Bytes(source)));
        using StreamReader sheet = new(book.GetEntry("xl/worksheets/sheet1.xml")!.Open());
        System.Text.RegularExpressions.Match price = System.Text.RegularExpressions.Regex.Match(sheet.ReadToEnd(), @"<f>B\d+/\(1-B\d+\)</f><v>([^<]+)</v>");
        Assert.True(price.Success);
        Assert.Equal(source.Price.Quote.Price, double.Parse(price.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture), 0.01);
    }

    private static PaperSource Make(string example)
    {
        IReadOnlyList<Fault> faults = JobLoading.Load(Shell.Example(example + ".json"), null, null, out LoadedJob? loaded);
        Assert.Empty(faults);
        Evaluation all = new(loaded!.Job, Ground.Of(loaded.Weather, CatalogueReader.Generic, PriceBook.Generic()), new StageRunner(), CancellationToken.None);
        return PaperSource.From(all, loaded.Defaults, "test");
    }

    private static string Text(Report report) => string.Join('\n', report.Blocks.SelectMany(Texts));

    private static string Text(Sheet sheet) => string.Join('\n', [sheet.Description, .. sheet.OnPaper.OfType<Entity.Label>().Select(l => l.Text)]);

    private static IEnumerable<string> Texts(Block block) => block switch
    {
        Block.Opening o => [o.Title, o.Under, .. o.Facts],
        Block.Heading h => [h.Text],
        Block.Paragraph p => [p.Text],
        Block.Lead l => [l.Text],
        Block.Bullets b => b.Items,
        Block.Figures f => f.Items.Select(i => $"{i.Label} {i.Value} {i.Unit} {i.Limit}"),
        Block.TableOf t => t.Table.Rows.SelectMany(r => r),
        Block.Picture p => [p.Caption],
        Block.Caution c => [c.Title, c.Text],
        _ => [],
    };
}
