using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;
using Glazewright.Design.Tests.Contracts;
using Glazewright.Design.Tests.Duty;

namespace Glazewright.Design.Tests.Plant;

/// <summary>Heat by pipe alone, by nothing, in thin air, and by wire.</summary>
public class HeatWithoutHeatersTests
{
    private static (PlantResult Plant, DutyResult Duty) Run(Job job)
    {
        BuildingForm form = FormStage.Run(FormInput.From(job)).Building("A");
        DutyResult duty = DesignDay.Duty(job);
        return (PlantStage.Run(PlantInput.From(job, "A"), form, duty, CatalogueReader.Generic), duty);
    }

    private static Finding? Told(PlantResult plant, string code) => plant.Report.Findings.FirstOrDefault(f => f.Code == code);

    [Fact]
    public void A_pipe_alone_is_held_against_the_design_night()
    {
        (PlantResult plant, _) = Run(DesignDay.With(TestJobs.OneHouse(), e => e with { Heaters = false, BenchPipeW = 5000 }));
        Assert.Equal(Severity.Miss, Told(plant, "plant/heat-short")!.Severity);
        Assert.Contains("One boiler", Told(plant, "plant/one-heater-out")!.What, StringComparison.Ordinal);
        Assert.NotNull(Told(plant, "plant/extreme-night"));
        (PlantResult warm, _) = Run(DesignDay.With(TestJobs.OneHouse(), e => e with { Heaters = false, BenchPipeW = 500_000 }));
        Assert.Null(Told(warm, "plant/heat-short"));
    }

    [Fact]
    public void No_heat_at_all_is_told()
    {
        (PlantResult plant, _) = Run(DesignDay.With(TestJobs.OneHouse(), e => e with { Heaters = false }));
        Assert.NotNull(Told(plant, "plant/no-heat"));
        Assert.Null(Told(plant, "plant/one-heater-out"));
    }

    // NFPA 54, 11.1.2 (read at second hand in makers' manuals that quote it): nothing up to 2,000 ft, above that 4 % for each 1,000 ft from the sea.
    [Theory]
    [InlineData(0, 1)]
    [InlineData(2000, 1)]
    [InlineData(5000, 0.80)]
    [InlineData(5410, 0.7836)]
    public void Burners_give_less_in_thin_air(double elevationFt, double fraction) =>
        Assert.Equal(fraction, BurnerAltitude.RatingFraction(elevationFt * 0.3048), 1e-9);

    [Fact]
    public void Thin_air_counts_for_burners_and_not_for_wire()
    {
        static Job High(Job job) => job with { Site = job.Site with { ElevationM = 5000 * 0.3048 } };
        (PlantResult plant, _) = Run(High(TestJobs.OneHouse()));
        HeaterUnit unit = plant.Heat!.Choice.Heaters[0];
        Assert.False(unit.Electric);
        Assert.Equal(0.8 * unit.RatedW, unit.OutputW, 1e-6);
        Assert.Equal(Severity.Near, Told(plant, "plant/burners-in-thin-air")!.Severity);
        (PlantResult wired, _) = Run(High(DesignDay.With(TestJobs.OneHouse(), e => e with { HeatersFixed = [new FixedItem("electric-10", 2)] })));
        Assert.Equal(wired.Heat!.Choice.Heaters[0].RatedW, wired.Heat.Choice.Heaters[0].OutputW, 1e-9);
        Assert.Null(Told(wired, "plant/burners-in-thin-air"));
    }

    // Ohm's law: resistance heat has a power factor of 1; only its fan runs beside it.
    [Fact]
    public void Wire_heat_draws_its_watts_over_its_volts()
    {
        (PlantResult plant, _) = Run(DesignDay.With(TestJobs.OneHouse(), e => e with { HeatersFixed = [new FixedItem("electric-10", 1)] }));
        ElectricLoad heater = plant.Loads.Single(l => l.Label == "Electric heater");
        Assert.Equal(heater.RunningW / heater.VoltageV, heater.FullLoadA, 1e-9);
    }

    [Fact]
    public void A_boiler_on_a_lot_without_fuel_is_told()
    {
        Job job = DesignDay.With(TestJobs.OneHouse(), e => e with { BenchPipeW = 20_000 });
        Assert.Null(Told(Run(job).Plant, "plant/boiler-without-fuel"));
        Assert.NotNull(Told(Run(job with { Utilities = job.Utilities with { Fuel = FuelKind.None } }).Plant, "plant/boiler-without-fuel"));
    }

    // In series with an opening of coefficient 0.6, a cloth of 30 % (0.175) leaves 1/√(1 + (0.6/0.175)²).
    [Fact]
    public void A_screen_takes_most_of_a_vents_air()
    {
        Assert.Equal(1, VentAir.ScreenedFraction(0));
        Assert.Equal(0.28, VentAir.ScreenedFraction(0.30), 0.01);
        (PlantResult bare, _) = Run(DesignDay.With(TestJobs.OneHouse(), e => e with { RoofVentFraction = 0.2 }));
        (PlantResult cloth, _) = Run(DesignDay.With(TestJobs.OneHouse(), e => e with { RoofVentFraction = 0.2, InsectScreenPorosityFraction = 0.3 }));
        Assert.Equal(0, bare.InsectClothM2);
        Assert.True(cloth.InsectClothM2 > cloth.Vents!.RoofM2);
        Assert.Equal(VentAir.ScreenedFraction(0.3), cloth.Vents.ScreenedFraction);
    }

    // Common practice: the smaller the pest, the finer the cloth.
    [Theory]
    [InlineData("none", 0), InlineData("", 0), InlineData("thrips", 0.30), InlineData("Whiteflies", 0.40), InlineData("aphids and whitefly", 0.40), InlineData("fungus gnats", 0.30)]
    public void A_pest_names_its_cloth(string pest, double porosityFraction) => Assert.Equal(porosityFraction, InsectCloth.PorosityFraction(pest));
}
