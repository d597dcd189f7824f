using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Design.Tests.Brief;
using Glazewright.Design.Tests.Duty;

namespace Glazewright.Design.Tests.Plant;

/// <summary>Fog by the wish, on a dry hot day (43.4 °C dry, 21.1 °C wet bulb).</summary>
public class FogSizingTests
{
    private static Job Desert(double neverAboveC, Func<EquipmentChoice, EquipmentChoice>? change = null)
    {
        Job job = DesignDay.With(TestJobs.OneHouse(), e => (change ?? (x => x))(e with { WetWall = false, Fog = true, FogEntry = "fog-1000" }));
        return job with
        {
            Site = job.Site with { Design = job.Site.Design! with { Cooling04C = 43.4, CoincidentWetBulbC = 21.1 } },
            Houses = [job.Houses[0] with { Schedule = job.Houses[0].Schedule.Select(p => p with { NeverAboveC = neverAboveC }).ToEqList() }],
        };
    }

    private static PlantResult Run(Job job) => PlantStage.Run(
        PlantInput.From(job, job.Houses[0].Id), FormStage.Run(FormInput.From(job)).Building(job.Houses[0].Id), DesignDay.Duty(job), CatalogueReader.Generic);

    [Fact]
    public void What_is_sized_by_us_holds_the_wish_and_a_cooler_wish_takes_more()
    {
        FogPlant mild = Run(Desert(34)).Fog!.Choice, cool = Run(Desert(30)).Fog!.Choice;
        foreach ((FogPlant fog, double wishC) in ((FogPlant, double)[])[(mild, 34), (cool, 30)])
        {
            Assert.True(fog.Cooling!.Reached);
            Assert.InRange(fog.Cooling.HottestC, wishC - 0.5, wishC + 1e-9);
            Assert.True(fog.KgPerS * fog.EvaporatedFraction >= fog.Cooling.WaterKgPerS);
            Assert.InRange(fog.Cooling.DampestFraction, 0.1, 0.92 + 1e-6);
        }

        Assert.True(cool.Nozzles > mild.Nozzles);
        Assert.DoesNotContain(Run(Desert(34)).Report.Findings, f => f.Code == "plant/never-above-missed");
    }

    [Fact]
    public void Too_few_nozzles_are_told_with_how_many_would_hold()
    {
        PlantResult plant = Run(Desert(32, e => e with { FogNozzles = 6 }));
        Assert.False(plant.Fog!.Choice.Cooling!.Reached);
        Finding missed = plant.Report.Findings.Single(f => f.Code == "plant/never-above-missed");
        Assert.Contains("More nozzles", missed.Mend, StringComparison.Ordinal);
        Assert.Contains(plant.Report.Findings, f => f.Code == "plant/fog-short");
        Assert.IsType<Answer<FogPlant>.Missed>(plant.Fog);
    }

    [Fact]
    public void Far_too_many_nozzles_are_told_with_how_many_serve()
    {
        PlantResult ours = Run(Desert(32)), many = Run(Desert(32, e => e with { FogNozzles = 5000 }));
        Finding large = many.Report.Findings.Single(f => f.Code == "plant/fog-large");
        Assert.Contains($"{ours.Fog!.Choice.Nozzles:N0} nozzles serve", large.Mend, StringComparison.Ordinal);
        Assert.DoesNotContain(ours.Report.Findings, f => f.Code == "plant/fog-large");
        Assert.DoesNotContain(Run(Desert(32, e => e with { FogNozzles = ours.Fog.Choice.Nozzles + 1 })).Report.Findings, f => f.Code == "plant/fog-large");
    }

    // Below the outside wet bulb no water brings it: the best is told, with the humidity that stops it.
    [Fact]
    public void A_wish_below_the_wet_bulb_gets_the_best_there_is()
    {
        PlantResult plant = Run(Desert(20));
        FogCooling best = plant.Fog!.Choice.Cooling!;
        Assert.False(best.Reached);
        Assert.Equal(FogSizing.DampestFraction, best.DampestFraction, 1e-3);
        Finding missed = plant.Report.Findings.Single(f => f.Code == "plant/never-above-missed");
        Assert.Contains("takes up no more fog", missed.Mend, StringComparison.Ordinal);
        Assert.IsType<Answer<FogPlant>.Met>(plant.Fog);
    }

    [Fact]
    public void The_program_brings_the_fog_on_with_as_many_fans_as_it_was_sized_for()
    {
        PlantResult plant = Run(Desert(32));
        int with = plant.Fog!.Choice.Cooling!.FansOn;
        ControlStage[] cooling = [.. new DefaultStages(plant).Cooling()];
        int fog = Array.FindIndex(cooling, s => s.Settings.Any(x => x.Actuator.EndsWith("/fog", StringComparison.Ordinal)));
        Assert.Equal(with, cooling.Take(fog).Sum(s => s.Settings.Count(x => x.Actuator.Contains("/fan-", StringComparison.Ordinal))));
        Assert.Equal(plant.Exhaust!.Choice.Fans.Count, cooling.Sum(s => s.Settings.Count(x => x.Actuator.Contains("/fan-", StringComparison.Ordinal))));
    }

    // What carries the damp away without fans is not known: nothing is promised of the fog then.
    [Fact]
    public void Without_fans_fog_is_not_counted_to_cool() =>
        Assert.Null(Run(Desert(32, e => e with { Exhaust = false })).Fog!.Choice.Cooling);

    // Two fans short of the rule, but fog holds the day with one: told as near, not as a miss that a fan would mend.
    [Fact]
    public void Fans_that_fog_makes_enough_are_no_miss()
    {
        PlantResult plant = Run(Desert(32, e => e with { ExhaustFixed = [new FixedItem("exhaust-36", 2)] }));
        Assert.True(plant.Fog!.Choice.Cooling!.Reached);
        Finding fans = plant.Report.Findings.Single(f => f.Code == "plant/fans-short");
        Assert.Equal(Severity.Near, fans.Severity);
        Assert.DoesNotContain("Add a fan", fans.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Fog_that_is_not_needed_to_cool_only_moistens()
    {
        PlantResult plant = Run(Desert(80));
        Assert.Null(plant.Fog!.Choice.Cooling);
        Assert.Equal(0, plant.Fog.Choice.IntakeNozzles);
    }
}
