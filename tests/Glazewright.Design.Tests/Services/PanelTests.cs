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

/// <summary>
/// Panel schedules. Rules and tables: NEC 210.19 and 215.2 (drop, informational notes), 220.60, 240.4 and 240.6, 250.122, 310.16, 430.22, 430.24, 430.52 and 430.62,
/// read at second hand; 220.14 and 430.53 from memory. Tables are checked in BranchSizingTests, conduit and feeders in ConduitAndFeederTests.
/// </summary>
public class PanelTests
{
    private static readonly LinkBuilding HeadHouse = new(
        "H", LinkKind.HeadHouse, "Head house", 40, 0, 8, 12, 3, 0.4, TestJobs.Panel, [new Room("control room", 3, 3), new Room("wash and toilet", 3, 2)]);

    private static (ServicesResult Services, EqList<LayoutResult> Layouts) Run(Job job)
    {
        FormResult form = FormStage.Run(FormInput.From(job));
        PlantResult[] plants = [.. job.Houses.Select(h => PlantStage.Run(PlantInput.From(job, h.Id), form.Building(h.Id), DesignDay.Duty(job, h.Id), CatalogueReader.Generic))];
        ProgramDocument[] programs = [.. job.Houses.Select((h, i) => ProgramStage.Run(ProgramInput.From(job, h.Id), plants[i]))];
        LayoutResult[] layouts = [.. job.Houses.Select((h, i) => LayoutStage.Run(LayoutInput.From(job, h.Id), form, plants[i]))];
        return (ServicesStage.Run(ServicesInput.From(job), form, [.. plants], [.. programs], [.. layouts]), [.. layouts]);
    }

    private static Job Full() => DesignDay.With(TestJobs.OneHouse(), e => e with
    {
        ExhaustFixed = [new FixedItem("exhaust-36", 2), new FixedItem("exhaust-24", 2)],
        Fog = true,
        LampW = 9000,
    });

    private static Job Two() => Full() with { Houses = [.. Full().Houses, TestJobs.House("B", 0, 14)], Links = [HeadHouse] };

    private static IEnumerable<Circuit> Branches(ServicesResult services) => services.Panels.SelectMany(p => p.Circuits).Where(c => c.Kind != LoadKind.Feeder);

    private static void Sound(ServicesResult services)
    {
        Assert.All(Branches(services), c =>
        {
            Assert.True(c.AmpacityA >= c.LeastA - 1e-9);
            Assert.True(c.LeastA >= c.CurrentA - 1e-9);
            Assert.True(c.DropFraction <= c.LimitFraction + 1e-9 || services.Report.Findings.Any(f => f.Code == "services/voltage-drop" && f.Severity == Severity.Miss));
            Assert.Equal(c.NominalV > 0, c.RunM > 0);
        });
        foreach (LoadLine line in services.Electric.Where(l => l.Kind != LoadKind.GrowLamps))
        {
            Assert.Equal(line.Count, Branches(services).Where(c => c.Loads.Contains(line.Id)).Sum(c => c.Count));
        }

        // 3 % a branch; with pole and feeder no more than 5 % (informational notes of NEC 210.19 and 215.2).
        double poleFraction = services.Panels[0].Feeder.DropFraction;
        Assert.All(services.Panels, p => Assert.All(p.Circuits.Where(c => c.Kind != LoadKind.Feeder), c =>
            Assert.Equal(Math.Clamp(0.05 - poleFraction - (p.Id == "main" ? 0 : p.Feeder.DropFraction), 0.01, 0.03), c.LimitFraction, 1e-12)));

        // What the legs carry is what the lines ask, season by season.
        foreach (LoadSeason season in new[] { LoadSeason.Cooling, LoadSeason.Heating })
        {
            PanelSchedule main = services.Panels[0];
            double legsVa = (season == LoadSeason.Cooling ? main.CoolingLegVa : main.HeatingLegVa).Sum();
            Assert.Equal(services.Electric.Where(l => l.CountsIn(season)).Sum(l => l.DemandFraction * l.SizingVa), legsVa, 1e-6);
        }
    }

    [Fact]
    public void One_house_has_one_panel_that_feeds_every_load_once()
    {
        ServicesResult services = Run(Full()).Services;
        Sound(services);
        PanelSchedule main = Assert.Single(services.Panels);
        Assert.True(main.PlaceIsDefault);
        Assert.Contains(services.Report.Findings, f => f.Code == "services/panel-place");
        Assert.Equal(200, main.MainA);
        Assert.True(main.Spaces - main.SpacesUsed >= 0.2 * main.Spaces);
        // 9,000 W ÷ (240 × 0.8) = 46.9 A at 16 A a circuit.
        Assert.Equal(3, main.Circuits.Count(c => c.Kind == LoadKind.GrowLamps));
    }

    [Fact]
    public void Two_houses_hang_their_panels_by_the_main_one_in_the_control_room()
    {
        ServicesResult services = Run(Two()).Services;
        Sound(services);
        Assert.Equal(["main", "A", "B"], services.Panels.Select(p => p.Id));
        Assert.Contains("control room of Head house", services.Panels[0].Place, StringComparison.Ordinal);
        Assert.Equal(2, services.Panels[0].Circuits.Count(c => c.Kind == LoadKind.Feeder));
        Assert.All(services.Panels.Skip(1), p => Assert.True(p.Feeder.AmpacityA >= p.Feeder.DemandA && p.Feeder.BreakerA >= p.Feeder.DemandA));
        Assert.Contains(services.Electric, l => l.Id == "H/water-heater");
    }

    // By hand: the panel on the head house's wall at x = 40, middle y 6; range axes and house axes agree for house A at the origin.
    [Fact]
    public void A_run_goes_along_the_walls_to_where_the_fan_hangs()
    {
        (ServicesResult services, EqList<LayoutResult> layouts) = Run(Two());
        Circuit[] fans = [.. services.Panels.Single(p => p.Id == "A").Circuits.Where(c => c.Label.StartsWith("36", StringComparison.Ordinal))];
        PlacedItem[] placed = [.. layouts[0].Placed.Where(p => p.Kind == PlacedKind.Fan && p.Label.Contains("36", StringComparison.Ordinal))];
        Assert.Equal(2, placed.Length);
        Assert.Equal(2, fans.Length);
        const double GutterM = 2.3;
        double[] byHand = [.. placed.Select(p => Math.Abs(p.Corner.XM + p.Size.XM / 2 - 40) + Math.Abs(p.Corner.YM + p.Size.YM / 2 - 6) + (GutterM - 1.4) + Math.Abs(GutterM - p.Corner.ZM - p.Size.ZM / 2) + 3).Order()];
        Assert.Equal(byHand[0], fans.Min(f => f.RunM), 1e-6);
        Assert.Equal(byHand[1], fans.Max(f => f.RunM), 1e-6);
    }

    [Fact]
    public void Two_hundred_metres_are_upsized_and_say_so()
    {
        Job job = Two();
        ServicesResult services = Run(job with { Links = [HeadHouse with { OriginXM = 230 }] }).Services;
        Sound(services);
        Circuit[] upsized = [.. Branches(services).Where(c => c.UpsizedFrom.Length > 0)];
        Assert.True(upsized.Length > 10);
        Assert.True(Branches(services).Max(c => c.RunM) > 200);
        Assert.Contains(services.Report.Findings, f => f.Code == "services/voltage-drop" && f.What.Contains("heavier conductors", StringComparison.Ordinal));
    }

    [Fact]
    public void A_house_of_one_lamp_has_its_circuit()
    {
        Job bare = DesignDay.With(TestJobs.OneHouse(), e => e with { Exhaust = false, WetWall = false, Heaters = false, Curtains = 0, Circulation = false, LampW = 60 });
        ServicesResult services = Run(bare).Services;
        Sound(services);
        Assert.Single(Branches(services), c => c.Kind == LoadKind.GrowLamps);
    }

    [Theory]
    [InlineData(Phase.Three, 208, 3), InlineData(Phase.Three, 240, 3), InlineData(Phase.Three, 480, 3), InlineData(Phase.Three, 400, 3), InlineData(Phase.Single, 120, 1), InlineData(Phase.Single, 230, 2)]
    public void Any_service_gives_a_schedule_and_tells_what_does_not_suit(Phase phase, double voltageV, int legs)
    {
        ServicesResult services = Run(Full() with { Utilities = Full().Utilities with { Phase = phase, ServiceV = voltageV } }).Services;
        Assert.All(services.Panels, p => Assert.Equal(legs, p.CoolingLegVa.Count));
        Assert.All(Branches(services), c => Assert.True(c.Poles >= 1 && c.Poles <= legs && c.AmpacityA >= c.LeastA - 1e-9));
        Assert.Equal(voltageV is 480 or 120 or 208, services.Report.Findings.Any(f => f.Code == "services/voltage"));
        if (phase == Phase.Three && voltageV == 240)
        {
            Assert.DoesNotContain(Branches(services), c => c.Legs == "B");
        }
    }

    [Fact]
    public void Metric_jobs_are_told_that_this_is_us_practice() =>
        Assert.Contains(Run(Full() with { Units = UnitSystem.Metric }).Services.Report.Findings, f => f.Code == "services/us-practice");

    // 400Y/230 V: 230 V equipment stands between a leg and neutral, and nothing is bought for 115 V.
    [Fact]
    public void A_metric_three_phase_lot_has_230_volts_to_neutral()
    {
        ServicesResult services = Run(Full() with { Units = UnitSystem.Metric, Utilities = Full().Utilities with { Phase = Phase.Three, ServiceV = 400 } }).Services;
        Sound(services);
        Circuit[] outlets = [.. Branches(services).Where(c => c.Kind == LoadKind.Receptacles)];
        Assert.All(services.Panels, p => Assert.Equal(230, p.LegV));
        Assert.All(outlets, c => Assert.Equal((1, 230.0), (c.Poles, c.NominalV)));
        Assert.All(Branches(services).Where(c => c.Label.Contains("exhaust", StringComparison.Ordinal)), c => Assert.Equal((1, 230.0, ""), (c.Poles, c.NominalV, c.Note)));
        Assert.DoesNotContain(services.Report.Findings, f => f.Code == "services/voltage");
        ServicesResult single = Run(Full() with { Units = UnitSystem.Metric, Utilities = Full().Utilities with { ServiceV = 230 } }).Services;
        Assert.All(Branches(single), c => Assert.Equal("A", c.Legs));
    }

    // What the electrician reads and what the price counts are one thing.
    [Fact]
    public void The_takeoff_counts_the_circuits_and_runs_of_the_schedules()
    {
        Job job = Two();
        FormResult form = FormStage.Run(FormInput.From(job));
        ServicesResult services = Run(job).Services;
        TakeoffResult takeoff = TakeoffStage.Run(TakeoffInput.From(job), form, TwoHouses.Body with { Members = [] }, [], [], services);
        Circuit[] counted = [.. Branches(services).Where(c => c.Kind is not (LoadKind.Lights or LoadKind.Receptacles))];
        double Of(string item) => takeoff.Lines.Where(l => l.Item == item).Sum(l => l.Quantity);
        Assert.Equal(counted.Length, Of("electrical/circuit"));
        Assert.Equal(counted.Sum(c => c.RunM), Of("electrical/conduit"), 1e-6);
        Assert.Equal(3, Of("electrical/panel"));
    }

    // Heating asks more by the sum, cooling more with its larger motor: the season is chosen with the quarter, not before.
    [Fact]
    public void The_largest_motor_of_each_season_decides_with_its_season()
    {
        LoadLine Line(string id, int count, double currentA, LoadSeason season) => new(
            "A", id, id, count, 1, 1, 230, false, currentA, true, currentA, "", season, 1, 1.25 * currentA, false, LoadKind.Motor);
        LoadLine[] lines = [Line("fan", 1, 40, LoadSeason.Cooling), Line("burner", 10, 4.1, LoadSeason.Heating)];
        PowerNeed need = PowerServices.Need([.. lines], Full().Utilities);
        Assert.True(need.WinterVa > need.SummerVa);
        Assert.Equal(1.25 * 40 * 230 / 240, need.DemandA, 1e-9);
    }
}
