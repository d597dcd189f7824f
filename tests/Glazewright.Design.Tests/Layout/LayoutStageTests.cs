using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Plant;
using Glazewright.Design.Tests.Contracts;
using Glazewright.Design.Tests.Duty;

namespace Glazewright.Design.Tests.Layout;

public class LayoutStageTests
{
    private static LayoutResult Run(Job job, string house = "A")
    {
        FormResult form = FormStage.Run(FormInput.From(job));
        DutyResult duty = DesignDay.Duty(job, house);
        PlantResult plant = PlantStage.Run(PlantInput.From(job, house), form.Building(house), duty, CatalogueReader.Generic);
        return LayoutStage.Run(LayoutInput.From(job, house), form, plant);
    }

    private static Job Modest() => DesignDay.With(TestJobs.OneHouse(), e => e with
    {
        ExhaustFixed = [new FixedItem("exhaust-36", 2), new FixedItem("exhaust-24", 2)],
        WetWallEntry = "pad-6",
        WetWallWidthM = 4.2672,
        WetWallHeightM = 1.524,
    });

    [Fact]
    public void Everything_of_the_plant_has_its_place_inside_or_on_the_house()
    {
        Job job = DesignDay.With(Modest(), e => e with { Fog = true, LampW = 4000, PositivePressurePa = 3, OscillatingFans = 2, UpperFans = new FixedItem("", 0) });
        LayoutResult layout = Run(job);
        Assert.Equal(4, layout.Placed.Count(p => p.Kind == PlacedKind.Fan));
        // No insect cloth is asked for here: ClothBoxTests.
        foreach (PlacedKind kind in Enum.GetValues<PlacedKind>().Where(k => k != PlacedKind.ClothBox))
        {
            Assert.Contains(layout.Placed, p => p.Kind == kind);
        }

        foreach (PlacedItem item in layout.Placed)
        {
            Assert.InRange(item.Corner.YM, -0.5, 7.9 + 0.5);
            Assert.InRange(item.Corner.YM + item.Size.YM, -0.5, 7.9 + 0.5);
            Assert.InRange(item.Corner.XM, -1, 31.7 + 0.5);
            Assert.InRange(item.Corner.ZM, 0, 5);
        }

        Assert.Equal(layout.Placed.Count, layout.Placed.Select(p => p.Id).Distinct().Count());
    }

    [Fact]
    public void Fans_on_one_wall_do_not_meet_each_other_or_the_door()
    {
        Job job = DesignDay.With(Modest(), e => e with { FanFace = FaceName.End1 });
        LayoutResult layout = Run(job);
        PlacedItem[] fans = [.. layout.Placed.Where(p => p.Kind == PlacedKind.Fan)];
        Assert.DoesNotContain(layout.Report.Findings, f => f.Code == "layout/wall-crowded");
        for (int i = 0; i < fans.Length; i++)
        {
            Assert.True(fans[i].Corner.YM >= 0.3 + 1.8, "the double door stands from 0.3 to 2.1 m");
            for (int j = i + 1; j < fans.Length; j++)
            {
                Assert.True(
                    fans[i].Corner.YM + fans[i].Size.YM <= fans[j].Corner.YM + 1e-9 || fans[j].Corner.YM + fans[j].Size.YM <= fans[i].Corner.YM + 1e-9);
            }
        }
    }

    [Fact]
    public void Too_many_fans_beside_a_door_are_told()
    {
        Job job = DesignDay.With(TestJobs.OneHouse(), e => e with { FanFace = FaceName.End1, ExhaustFixed = [new FixedItem("exhaust-54", 8)] });
        Assert.Contains(Run(job).Report.Findings, f => f.Code == "layout/wall-crowded" && f.Severity == Severity.Miss);
    }

    [Fact]
    public void A_curtain_above_the_lower_eave_is_told_with_the_right_height()
    {
        Job high = DesignDay.With(Modest(), e => e with { CurtainHeightM = 2.59 });
        Finding finding = Run(high).Report.Findings.Single(f => f.Code == "layout/curtain-above-eave");
        Assert.Contains("8'-6\"", finding.What, StringComparison.Ordinal);
        Assert.Contains("7'-1\"", finding.Mend, StringComparison.Ordinal);
        Assert.DoesNotContain(Run(Modest()).Report.Findings, f => f.Code == "layout/curtain-above-eave");
    }

    [Fact]
    public void A_wet_wall_that_draws_through_an_alley_is_told()
    {
        LinkBuilding head = new("H", LinkKind.HeadHouse, "Head house", -9.7, 0, 7.3, 14.6, 3, 0.3, TestJobs.Panel, []);
        Job job = Modest() with { Links = [head] };
        Finding finding = Run(job).Report.Findings.Single(f => f.Code == "layout/intake-alley");
        Assert.Contains("7'-10\"", finding.What, StringComparison.Ordinal);
        Job touching = Modest() with { Links = [head with { OriginXM = -7.3 }] };
        Assert.Contains(Run(touching).Report.Findings, f => f.Code == "layout/intake-walled" && f.Severity == Severity.Miss);
        Assert.DoesNotContain(Run(Modest()).Report.Findings, f => f.Code.StartsWith("layout/intake", StringComparison.Ordinal));
    }

    [Fact]
    public void Fans_that_blow_at_a_building_are_told()
    {
        LinkBuilding head = new("H", LinkKind.HeadHouse, "Head house", 33, 0, 7.3, 14.6, 3, 0.3, TestJobs.Panel, []);
        Assert.Contains(Run(Modest() with { Links = [head] }).Report.Findings, f => f.Code == "layout/fans-blow-at-building");
    }

    [Fact]
    public void Benches_and_aisles_fill_the_floor()
    {
        LayoutResult layout = Run(Modest());
        Assert.Equal(29 * (1.7 + 1.8), layout.BenchM2, 1e-9);
        double aisles = layout.Placed.Where(p => p.Kind == PlacedKind.Aisle).Sum(p => p.Size.YM);
        Assert.Equal(7.9 - 1.7 - 1.8, aisles, 1e-9);
        Assert.DoesNotContain(layout.Report.Findings, f => f.Code == "layout/main-aisle");
        Job crowded = Modest() with { Houses = [Modest().Houses[0] with { MainAisleM = 3.0 }] };
        Assert.Contains(Run(crowded).Report.Findings, f => f.Code == "layout/main-aisle");
    }

    [Fact]
    public void A_bench_through_the_wall_and_one_in_another_are_told()
    {
        House house = Modest().Houses[0];
        Job job = Modest() with
        {
            Houses = [house with { Benches = [new Bench("b1", 6.8, 1.8, 1, 29, 0.8), new Bench("b2", 1, 2, 1, 29, 0.8), new Bench("b3", 2.5, 2, 1, 29, 0.8)] }],
        };
        string[] codes = [.. Run(job).Report.Findings.Select(f => f.Code)];
        Assert.Contains("layout/bench-outside", codes);
        Assert.Contains("layout/benches-overlap", codes);
    }

    [Fact]
    public void Typed_openings_are_kept_and_a_wrong_count_is_told()
    {
        House house = Modest().Houses[0];
        EqList<Opening> openings =
        [
            .. house.Openings,
            new Opening("fan-1", OpeningKind.Fan, FaceName.End2, 2.0, 0.9, 1.02, 1.02, false),
            new Opening("fan-2", OpeningKind.Fan, FaceName.End2, 4.0, 0.9, 1.02, 1.02, false),
        ];
        Job two = DesignDay.With(
            Modest() with { Houses = [house with { Openings = openings }] }, e => e with { ExhaustFixed = [new FixedItem("exhaust-36", 2)] });
        double[] at = [.. Run(two).Placed.Where(p => p.Kind == PlacedKind.Fan).Select(p => p.Corner.YM).Order()];
        Assert.Equal([2.0, 4.0], at);
        Job four = DesignDay.With(two, e => e with { ExhaustFixed = [new FixedItem("exhaust-36", 4)] });
        Assert.Contains(Run(four).Report.Findings, f => f.Code == "layout/fan-openings");
    }

    [Fact]
    public void Derived_figures_come_out_again_and_the_hash_is_steady()
    {
        LayoutResult layout = Run(Modest());
        foreach (Figure figure in layout.Report.Figures)
        {
            var derived = Assert.IsType<Working.Derived>(figure.Working);
            Assert.Equal(figure.Value, FormulaReader.Evaluate(derived.Formula, derived.Inputs), 1e-9);
        }

        Assert.Equal(Canonical.Hash(layout), Canonical.Hash(Run(Modest())));
    }

    [Fact]
    public void An_empty_house_has_only_sensors()
    {
        Job job = DesignDay.With(TestJobs.OneHouse(), e => e with { Exhaust = false, WetWall = false, Heaters = false, Curtains = 0, Circulation = false });
        LayoutResult layout = Run(job with { Houses = [job.Houses[0] with { Benches = [] }] });
        Assert.All(layout.Placed, p => Assert.Equal(PlacedKind.Sensor, p.Kind));
    }
}
