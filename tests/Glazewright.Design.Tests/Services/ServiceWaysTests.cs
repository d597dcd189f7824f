using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Design.Services;
using Glazewright.Design.Takeoff;
using Glazewright.Design.Tests.Duty;
using Glazewright.Design.Tests.Takeoff;

namespace Glazewright.Design.Tests.Services;

public class ServiceWaysTests
{
    private static (ServicesResult Services, FormResult Form, LayoutResult Layout) Run(Job job)
    {
        FormResult form = FormStage.Run(FormInput.From(job));
        PlantResult plant = PlantStage.Run(PlantInput.From(job, "A"), form.Building("A"), DesignDay.Duty(job), CatalogueReader.Generic);
        ProgramDocument program = ProgramStage.Run(ProgramInput.From(job, "A"), plant);
        LayoutResult layout = LayoutStage.Run(LayoutInput.From(job, "A"), form, plant);
        return (ServicesStage.Run(ServicesInput.From(job), form, [plant], [program], [layout]), form, layout);
    }

    private static Job At(Job job, UtilityPlaces places) => job with { Utilities = job.Utilities with { Places = places } };

    // House of 7.9 × 31.7 m, pipe 0.1 m off the left wall: a hose of 15.24 m leaves 7.34 to 7.44 m to either side, so three bibs, the first 31.7 / 6 m along.
    // Water comes up a quarter of the width along end 1: 1.975 − 0.1 m to the corner, 5.283 m along, 0.6 m up.
    [Fact]
    public void Hose_bibs_and_their_runs_by_hand()
    {
        ServicesResult services = Run(TestJobs.OneHouse()).Services;
        UtilityPoint[] bibs = [.. services.Plan.Points.Where(p => p.Kind == TapKind.HoseBib)];
        Assert.Equal(3, bibs.Length);
        Assert.Equal(1.875 + 31.7 / 6 + 0.6, bibs[0].RunM, 1e-9);
        Assert.All(bibs, b => Assert.Equal("3/4 in", b.Pipe));
        Assert.Contains(services.Report.Findings, f => f.Code == "services/entries" && f.What.Contains("water end 1 of House A", StringComparison.Ordinal));
    }

    // Checked by walking the floor, not by the rule that places them.
    [Theory]
    [InlineData(4, 12), InlineData(7.9, 31.7), InlineData(11, 60), InlineData(14, 100), InlineData(22, 45), InlineData(29, 90), InlineData(60, 75)]
    public void Every_corner_of_the_floor_is_within_a_hose(double widthM, double lengthM)
    {
        Job job = TestJobs.OneHouse();
        BuildingForm house = FormStage.Run(FormInput.From(job)).Building("A") with { WidthM = widthM, LengthM = lengthM };
        foreach (bool left in (bool[])[true, false])
        {
            IReadOnlyList<Point2> bibs = TapPlaces.Bibs(house, left);
            for (double x = 0; x <= lengthM; x += 0.25)
            {
                for (double y = 0; y <= widthM; y += widthM / 8)
                {
                    Assert.True(bibs.Min(b => Math.Abs(b.UM - x) + Math.Abs(b.VM - y)) <= 15.24 + 0.02, $"{x} {y} of {widthM} × {lengthM}, {bibs.Count} bibs");
                }
            }
        }
    }

    // A door where a bib would stand: it moves beside it.
    [Fact]
    public void Bibs_keep_clear_of_doors()
    {
        Job job = TestJobs.OneHouse();
        House house = job.Houses[0];
        job = job with { Houses = [house with { Openings = [.. house.Openings, new Opening("side", OpeningKind.Door, FaceName.Left, 15.4, 0, 0.9, 2, false)] }] };
        UtilityPoint[] bibs = [.. Run(job).Services.Plan.Points.Where(p => p.Kind == TapKind.HoseBib)];
        Assert.DoesNotContain(bibs, b => b.At.XM > 15.4 && b.At.XM < 16.3);
        Assert.Contains(bibs, b => b.At.XM > 15 && b.At.XM < 16.6);
    }

    // A relation: water ten metres farther from end 1 is ten metres more to every tap, and to nothing else.
    [Fact]
    public void An_entry_the_job_gives_moves_every_run()
    {
        Job job = TestJobs.OneHouse();
        ServicesResult near = Run(At(job, new(null, null, new(-5, 0.1), null))).Services;
        ServicesResult far = Run(At(job, new(null, null, new(-15, 0.1), null))).Services;
        Assert.False(near.Plan.Entries.Single(e => e.Utility == UtilityKind.Water).IsDefault);
        Assert.All(near.Plan.Points.Zip(far.Plan.Points), p => Assert.Equal(p.First.RunM + (p.First.Utility == UtilityKind.Water ? 10 : 0), p.Second.RunM, 1e-9));
    }

    // The pole stands 60 m off (the sample's job); a meter 12 m along the end wall makes the service run 72 m and drops so much more.
    [Fact]
    public void The_service_run_goes_on_from_the_meter_to_the_main_panel()
    {
        Job job = TestJobs.OneHouse();
        ServicesResult at = Run(job).Services;
        ServicesResult away = Run(At(job, new(new(0, -12), null, null, null))).Services;
        Assert.Equal((60, 72), (at.Panels[0].Feeder.RunM, Math.Round(away.Panels[0].Feeder.RunM, 9)));
        Assert.True(away.Power!.DropFraction > at.Power!.DropFraction || away.Panels[0].Feeder.WireName != at.Panels[0].Feeder.WireName);
    }

    // The longest-length method: every piece by the longest run from the regulator to a burner, which lies on the plan.
    [Fact]
    public void The_gas_main_is_sized_for_the_longest_way_on_the_plan()
    {
        (ServicesResult services, FormResult form, LayoutResult layout) = Run(DesignDay.With(TestJobs.OneHouse(), e => e with { HeatersFixed = [new FixedItem("sealed-75", 2)] }));
        UtilityPoint[] burners = [.. services.Plan.Points.Where(p => p.Utility == UtilityKind.Fuel)];
        Assert.Equal(2, burners.Length);
        Assert.Equal(burners.Max(b => b.RunM), services.GasMain!.RunM, 1e-12);
        BuildingForm house = form.Building("A");
        foreach (UtilityPoint burner in burners)
        {
            PlacedItem heater = layout.Placed.Single(p => p.Id == burner.Id);
            // Entry at the corner of end 1 on the right: from there to the heater along the walls, and up.
            double leastM = heater.Corner.XM + heater.Size.XM / 2 + Math.Abs(house.WidthM - heater.Corner.YM - heater.Size.YM / 2) + heater.Corner.ZM;
            Assert.True(burner.RunM >= leastM - 1e-9 && burner.RunM < leastM + house.WidthM + 1, $"{burner.RunM} for {leastM}");
        }
    }

    // What is bought is what is drawn.
    [Fact]
    public void Takeoff_counts_the_pipe_and_the_bibs_of_the_plan()
    {
        Job job = DesignDay.With(TestJobs.OneHouse(), e => e with { HeatersFixed = [new FixedItem("sealed-75", 2)] });
        (ServicesResult services, FormResult form, LayoutResult layout) = Run(job);
        TakeoffResult takeoff = TakeoffStage.Run(TakeoffInput.From(job), form, TwoHouses.Body with { Members = [] }, [], [layout], services);
        foreach ((string item, UtilityKind kind) in ((string, UtilityKind)[])[("plumbing/main", UtilityKind.Water), ("plumbing/drain", UtilityKind.Drain), ("plumbing/gas", UtilityKind.Fuel)])
        {
            double drawnM = services.Plan.Pieces.Where(p => p.Utility == kind).Sum(p => p.LengthM);
            Assert.True(drawnM > 10);
            Assert.Equal(drawnM, takeoff.Lines.Single(l => l.Item == item).Quantity, 1e-9);
        }

        Assert.Equal(3, takeoff.Lines.Single(l => l.Item == "plumbing/bib").Quantity);
    }

    // Downstream is never wider than upstream: flows add.
    [Fact]
    public void Pipe_never_widens_away_from_the_entry()
    {
        ServicesResult services = Run(DesignDay.With(TestJobs.OneHouse(), e => e with { HeatersFixed = [new FixedItem("sealed-75", 2)], Fog = true })).Services;
        foreach (PipePiece piece in services.Plan.Pieces)
        {
            foreach (PipePiece above in services.Plan.Pieces.Where(p => p.Utility == piece.Utility && p.Way[^1] == piece.Way[0] && p.Way[0] != p.Way[^1]))
            {
                Assert.True(above.FlowM3PerS >= piece.FlowM3PerS - 1e-15);
            }
        }

        Assert.Equal(services.Plan.Pieces.Select(p => p.Utility).Distinct().Count(), services.Report.Figures.Count(f => f.Id.EndsWith("-pipe", StringComparison.Ordinal)));
    }
}
