using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Cuts;
using Glazewright.Design.Document;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Design.Price;
using Glazewright.Design.Program;
using Glazewright.Design.Services;
using Glazewright.Design.Takeoff;
using Glazewright.Design.Tests.Contracts;
using Glazewright.Design.Tests.Duty;

namespace Glazewright.Design.Tests.Price;

/// <summary>The demo job through every stage that its money stands on (a plain gain table in place of the real one).</summary>
public class DemoMoney
{
    private static readonly Lazy<(TakeoffResult Takeoff, CutsResult Cuts, PriceResult Price)> s_demo = new(Run);

    private static (TakeoffResult Takeoff, CutsResult Cuts, PriceResult Price) Run()
    {
        ReadOutcome<Job> outcome = JobReader.Read(JobDocument.Read(File.ReadAllText(Example("two-ridge-herb-yard.json"))));
        Assert.Empty(outcome.Faults);
        Job job = outcome.Value!;
        FormResult form = FormStage.Run(FormInput.From(job));
        EqList<FrameResult> frames = job.Houses.Select(h => FrameStage.Run(FrameInput.From(job, h.Id), form.Building(h.Id), CancellationToken.None)).ToEqList();
        EqList<PlantResult> plants = job.Houses.Select(h => PlantStage.Run(
            PlantInput.From(job, h.Id), form.Building(h.Id), DesignDay.Duty(job, h.Id), CatalogueReader.Generic)).ToEqList();
        EqList<LayoutResult> layouts = plants.Select(p => LayoutStage.Run(LayoutInput.From(job, p.House), form, p)).ToEqList();
        TakeoffResult takeoff = TakeoffStage.Run(TakeoffInput.From(job), form, BodyStage.Run(form, frames), plants, layouts,
            ServicesStage.Run(ServicesInput.From(job), form, plants, plants.Select(p => ProgramStage.Run(ProgramInput.From(job, p.House), p)).ToEqList(), layouts));
        CutsResult cuts = CutsStage.Run(CutsInput.From(job), takeoff, CancellationToken.None);
        return (takeoff, cuts, PriceStage.Run(PriceInput.From(job), takeoff, cuts, PriceBook.Generic()));
    }

    /// <summary>The demo is meant to tell of a job near 532 000 direct and 698 000 charged, 129 a square foot: the invented prices are set for that. Sizes may still move it a little.</summary>
    [Fact]
    public void The_demo_costs_about_what_its_story_says()
    {
        PriceResult price = s_demo.Value.Price;
        Assert.Equal(532_000, price.DirectCost, tolerance: 0.08 * 532_000);
        Assert.Equal(698_000, price.Quote.Price, tolerance: 0.08 * 698_000);
        Assert.Equal(129, price.Quote.PricePerFloorM2 * 0.09290304, tolerance: 0.08 * 129);
        Assert.DoesNotContain(price.Report.Findings, f => f.Code == "price/no-price");
    }

    [Fact]
    public void A_job_in_feet_is_taken_off_in_words_of_feet()
    {
        string[] words = [.. s_demo.Value.Takeoff.Lines.SelectMany(l => new[] { l.From, l.Label }), .. Purchases.Of(s_demo.Value.Takeoff, s_demo.Value.Cuts, UnitSystem.Us).Select(l => l.From)];
        Assert.All(words, w => Assert.DoesNotMatch(@"\d (m|mm|m²|m³|kg|W/m)\b", w));
        Assert.Contains(words, w => w.Contains("net of cutting", StringComparison.Ordinal) && w.Contains(" ft", StringComparison.Ordinal));
    }

    /// <summary>Sixteen systems with spreads of their own would average to a few percent; what moves them together does not average away.</summary>
    [Fact]
    public void The_price_band_is_no_narrower_than_what_moves_all_systems_together()
    {
        PriceBook book = PriceBook.Generic();
        double apart = Half(s_demo.Value.Price, "price/spread-apart");
        double band = Half(s_demo.Value.Price, "price/spread");
        Assert.True(apart < book.CommonSpreadFraction && band > book.CommonSpreadFraction);
        Assert.Equal((apart * apart) + (book.CommonSpreadFraction * book.CommonSpreadFraction), band * band, 1e-12);
        Assert.Equal(s_demo.Value.Price.Quote.Price * (1 + band), s_demo.Value.Price.Quote.HighPrice, 1e-6);

        static double Half(PriceResult price, string id) => price.Report.Figures.Single(f => f.Id == id).Value;
    }

    [Fact]
    public void Every_cut_list_of_the_demo_is_proved_best() => Assert.All(s_demo.Value.Cuts.Sections, section => Assert.True(section.Proven, section.Section));

    [Fact]
    public void Every_derived_figure_comes_again_from_its_printed_inputs()
    {
        Figure[] derived = [.. new[] { s_demo.Value.Takeoff.Report, s_demo.Value.Cuts.Report, s_demo.Value.Price.Report }
            .SelectMany(r => r.Figures).Where(f => f.Working is Working.Derived)];
        Assert.True(derived.Length > 15);
        Assert.All(derived, figure =>
        {
            Working.Derived working = (Working.Derived)figure.Working;
            Assert.Equal(figure.Value, FormulaReader.Evaluate(working.Formula, working.Inputs), tolerance: 1e-9 * Math.Max(1, Math.Abs(figure.Value)));
        });
    }

    [Fact]
    public void Figures_have_ids_of_their_own() => Assert.All(
        new[] { s_demo.Value.Takeoff.Report, s_demo.Value.Cuts.Report, s_demo.Value.Price.Report }.SelectMany(r => r.Figures).GroupBy(f => f.Id),
        group => Assert.Single(group));

    private static string Example(string name)
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            string path = Path.Combine(at.FullName, "examples", name);
            if (File.Exists(path))
            {
                return path;
            }
        }

        throw new FileNotFoundException("No examples folder above the tests.", name);
    }
}
