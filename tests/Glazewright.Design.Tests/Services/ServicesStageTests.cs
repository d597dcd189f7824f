using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Design.Services;
using Glazewright.Design.Tests.Contracts;
using Glazewright.Design.Tests.Duty;

namespace Glazewright.Design.Tests.Services;

public class ServicesStageTests
{
    private static (ServicesResult Services, PlantResult Plant) Run(Job job)
    {
        FormResult form = FormStage.Run(FormInput.From(job));
        PlantResult plant = PlantStage.Run(PlantInput.From(job, "A"), form.Building("A"), DesignDay.Duty(job), CatalogueReader.Generic);
        ProgramDocument program = ProgramStage.Run(ProgramInput.From(job, "A"), plant);
        LayoutResult layout = LayoutStage.Run(LayoutInput.From(job, "A"), form, plant);
        return (ServicesStage.Run(ServicesInput.From(job), form, [plant], [program], [layout]), plant);
    }

    private static Job Full() => DesignDay.With(TestJobs.OneHouse(), e => e with
    {
        ExhaustFixed = [new FixedItem("exhaust-36", 2), new FixedItem("exhaust-24", 2)],
        Fog = true,
        LampW = 3000,
    });

    // By hand: 605 W drawn × 0.68 ÷ 1.15 ÷ 745.7 = 0.48 hp → 1/2 hp, 4.9 A at 230 V; 350 W → 0.28 → 1/3 hp, 3.6 A.
    [Fact]
    public void Fans_get_their_standard_size_and_table_current()
    {
        LoadLine[] fans = [.. Run(Full()).Services.Electric.Where(l => l.Label.Contains("exhaust", StringComparison.Ordinal))];
        LoadLine large = fans.Single(l => l.Label.StartsWith("36", StringComparison.Ordinal));
        Assert.Equal((2, 0.5, 4.9, 6.125), (large.Count, large.MotorHp, large.CurrentA, large.CircuitA));
        Assert.All(fans.Where(l => l.Label.StartsWith("24", StringComparison.Ordinal)), l => Assert.Equal((1.0 / 3, 3.6), (l.MotorHp, l.CurrentA)));
        Assert.Equal(4, fans.Sum(l => l.Count));
    }

    // Independent sum: cooling and heating do not add up; the larger with a quarter of its largest motor and the lamps.
    [Fact]
    public void The_service_carries_the_larger_season_with_a_quarter_more_of_the_largest_motor()
    {
        (ServicesResult services, _) = Run(Full());
        double all = services.Electric.Sum(l => l.DemandFraction * l.Count * l.CurrentA * l.VoltageV);
        double winterOnly = services.Electric.Where(l => l.Season == LoadSeason.Heating).Sum(l => l.DemandFraction * l.Count * l.CurrentA * l.VoltageV);
        PowerNeed power = services.Power!;
        Assert.Equal(all - winterOnly, power.SummerVa, 1e-6);
        Assert.True(power.SummerVa > power.WinterVa);
        double motor = services.Electric.Where(l => l.Kind is LoadKind.Motor or LoadKind.ShortTimeMotor && l.Season != LoadSeason.Heating).Max(l => l.CurrentA * l.VoltageV);
        double hours = services.Electric.Where(l => l.Id is "A/lamps" or "A/lights" or "A/control").Sum(l => l.Count * l.CurrentA * l.VoltageV);
        Assert.Equal((power.SummerVa + 0.25 * (motor + hours)) / 240, power.DemandA, 1e-9);
        Assert.True(power.ServiceA >= power.DemandA);
    }

    // Exhaust draws out what a filter fan presses in: two modes. Only a house without exhaust runs its filter fan all year.
    [Fact]
    public void Exhaust_and_filter_fan_are_never_summed()
    {
        ServicesResult with = Run(DesignDay.With(Full(), e => e with { PositivePressurePa = 5 })).Services;
        ServicesResult without = Run(Full()).Services;
        LoadLine filter = with.Electric.Single(l => l.Id == "A/filter-fan");
        Assert.Equal(LoadSeason.ExhaustOff, filter.Season);
        Assert.Equal(without.Power!.SummerVa, with.Power!.SummerVa, 1e-6);
        double warmVa = with.Electric.Where(l => l.Season is LoadSeason.Always or LoadSeason.Heating).Sum(l => l.DemandFraction * l.SizingVa);
        Assert.Equal(warmVa + filter.SizingVa, with.Power.WinterVa, 1e-6);
    }

    [Fact]
    public void The_generator_carries_the_backup_list_while_its_worst_motor_starts()
    {
        ServicesResult services = Run(Full()).Services;
        LoadLine[] kept = [.. services.Electric.Where(l => l.Backup)];
        double worst = kept.Max(l => (l.StartA - l.CurrentA) * l.VoltageV);
        Assert.Equal(kept.Sum(l => l.Count * l.CurrentA * l.VoltageV) + worst, services.Power!.StartVa, 1e-6);
        Assert.True(services.Power.GeneratorVa >= services.Power.StartVa);
        Assert.Contains(services.Report.Findings, f => f.Code == "services/generator");
    }

    // Two burners of 75 kBtu/h at 82 %: 182.9 kBtu/h in, ÷ 92,500 Btu/gal = 1.98 gal/h.
    [Fact]
    public void Fuel_is_output_over_efficiency_over_heat_content()
    {
        Job job = DesignDay.With(TestJobs.OneHouse(), e => e with { HeatersFixed = [new FixedItem("sealed-75", 2)] });
        GasNeed gas = Run(job).Services.GasMain!;
        Assert.Equal(150_000 / 0.82 / 92_500, gas.PerHour, 1e-4);
        Assert.Equal(150_000 / 0.82 / 2516, gas.FlowM3PerS * 3600 / 0.0283168466, 0.01);
        Assert.True(gas.PipeM > 0.02);
        Job electric = job with { Utilities = job.Utilities with { Fuel = FuelKind.None } };
        Assert.Null(Run(DesignDay.With(electric, e => e with { HeatersFixed = [] })).Services.GasMain);
    }

    [Fact]
    public void Water_adds_up_and_what_the_well_lacks_needs_a_tank()
    {
        Job job = Full() with { Utilities = Full().Utilities with { WellM3PerS = 3e-4 } };
        ServicesResult services = Run(job).Services;
        WaterNeed supply = services.Supply!;
        Assert.Equal(services.Water.Sum(w => w.PeakM3PerS), supply.PeakM3PerS, 1e-12);
        WaterLine pad = services.Water.Single(w => w.Id == "A/wet-wall");
        WetWallPlant wall = Run(job).Plant.WetWall!.Choice;
        Assert.Equal(wall.EvaporationKgPerS * (1 + wall.BleedFraction) / 998, pad.PeakM3PerS, 1e-12);
        Assert.Equal(0.6 * 7.9 * 31.7 * 0.4 * 0.003785411784 / 0.09290304, services.Water.Single(w => w.Id == "A/irrigation").DayM3, 1e-9);
        Assert.True(supply.TankM3 > 0);
        Assert.Contains(services.Report.Findings, f => f.Code == "services/water-supply" && f.Severity >= Severity.Near);
    }

    [Fact]
    public void Every_machine_of_the_program_has_its_points_and_louvers_prove_open()
    {
        (ServicesResult services, PlantResult plant) = Run(Full());
        PointLine fans = services.Points.Single(p => p.Label == "Exhaust fan");
        Assert.Equal((plant.Exhaust!.Choice.Fans.Count, 4, 4), (fans.Count, fans.DigitalOut, fans.DigitalIn));
        Assert.Contains("proved open before the second fan stage", services.Points.Single(p => p.Label == "Intake louver").Why, StringComparison.Ordinal);
        Assert.Contains(services.Points, p => p.House == "range" && p.AnalogIn == 5);
    }

    [Fact]
    public void A_service_too_small_is_told_and_no_house_has_no_services()
    {
        Job job = Full() with { Utilities = Full().Utilities with { ServiceA = 30 } };
        Assert.Contains(Run(job).Services.Report.Findings, f => f.Code == "services/electric-service" && f.Severity == Severity.Miss);
        Assert.Empty(ServicesStage.Run(ServicesInput.From(job with { Houses = [] }), FormStage.Run(FormInput.From(job)), [], [], []).Electric);
    }

    [Fact]
    public void Derived_figures_come_out_again()
    {
        ServicesResult services = Run(Full()).Services;
        int derived = 0;
        foreach (Figure figure in services.Report.Figures)
        {
            if (figure.Working is Working.Derived d)
            {
                Assert.Equal(figure.Value, FormulaReader.Evaluate(d.Formula, d.Inputs), 1e-9 * Math.Max(1, Math.Abs(figure.Value)));
                derived++;
            }
        }

        Assert.True(derived >= 5);
        Assert.Equal(services.Power!.DemandA, services.Report.Figures.Single(f => f.Id == "services/demand").Value, 1e-9);
    }
}
