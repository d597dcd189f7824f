using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Form;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Plant;
using Glazewright.Design.Tests.Contracts;
using Glazewright.Design.Tests.Duty;

namespace Glazewright.Design.Tests.Plant;

public class OscillatingFansTests
{
    private static PlantResult Run(int count)
    {
        Job job = DesignDay.With(TestJobs.OneHouse(), e => e with { OscillatingFans = count });
        BuildingForm form = FormStage.Run(FormInput.From(job)).Building("A");
        return PlantStage.Run(PlantInput.From(job, "A"), form, DesignDay.Duty(job), CatalogueReader.Generic);
    }

    [Fact]
    public void None_unless_asked()
    {
        PlantResult plant = Run(0);
        Assert.Null(plant.Oscillating);
        Assert.DoesNotContain(plant.Loads, l => l.Id == "A/oscillating");
    }

    [Fact]
    public void Asked_ones_are_loads_with_reach_and_a_gentler_mean()
    {
        PlantResult plant = Run(3);
        ElectricLoad load = Assert.Single(plant.Loads, l => l.Id == "A/oscillating");
        Assert.Equal(3, load.Count);
        OscillatingPlant fans = plant.Oscillating!;

        // By hand: u₀ = 0.7/0.159 = 4.40 m/s, √A = 0.399 m, 5.7 × 4.40 × 0.399/0.5 = 20.0 m.
        Assert.Equal(20.0, fans.RadiusM, 0.05);
        Assert.InRange(fans.EdgeMeanMs, 0.05, fans.EdgePeakMs / 5);
        Assert.True(fans.Needed * fans.CoveredEachM2 >= FormStage.Run(FormInput.From(TestJobs.OneHouse())).Building("A").FloorAreaM2);
    }

    // By hand: 90° leaves atan(0.086) √(π/ln 2) / (π/2) = 0.0858 × 2.129 / 1.571 = 0.1163 of the peak; 0.2 / 0.1163 = 1.72 m/s on the axis;
    // 5.7 × 4.40 × 0.399 / 1.72 = 5.82 m; a quarter circle of it, π/4 × 5.82² = 26.6 m², of which
    // the walls cut less than 0.1 off.
    [Fact]
    public void The_mean_over_a_sweep_reaches_less_far_and_governs()
    {
        OscillatingPlant fans = Run(3).Oscillating!;
        Assert.Equal(5.82, fans.MeanRadiusM, 0.02);
        BuildingForm form = FormStage.Run(FormInput.From(TestJobs.OneHouse())).Building("A");
        Assert.Equal(26.6, fans.CoveredByMeanM2, 0.15);
        Assert.Equal((int)Math.Ceiling(form.FloorAreaM2 / fans.CoveredByMeanM2), fans.NeededByMean);
        Assert.True(fans.NeededByMean > fans.NeededByPeak);
        Assert.Equal(fans.NeededByMean, fans.Needed);
        Assert.Contains(Run(fans.NeededByPeak).Report.Findings, x => x.Code == "plant/oscillating" && x.What.Contains("the mean governs", StringComparison.Ordinal));
    }

    [Fact]
    public void Size_power_and_sweep_are_the_catalogues()
    {
        Catalogue generic = CatalogueReader.Generic;
        Catalogue other = generic with { Oscillating = [generic.Oscillating[0] with { PowerW = 120, VoltageV = 230, FlowM3PerS = 1.4 }] };
        Job job = DesignDay.With(TestJobs.OneHouse(), e => e with { OscillatingFans = 2 });
        BuildingForm form = FormStage.Run(FormInput.From(job)).Building("A");
        PlantResult plant = PlantStage.Run(PlantInput.From(job, "A"), form, DesignDay.Duty(job), other);
        ElectricLoad load = Assert.Single(plant.Loads, l => l.Id == "A/oscillating");
        Assert.Equal((120.0, 230.0), (load.RunningW, load.VoltageV));
        Assert.Equal(2 * Run(2).Oscillating!.MeanRadiusM, plant.Oscillating!.MeanRadiusM, 6);
    }

    [Fact]
    public void Too_few_for_the_floor_is_told()
    {
        int needed = Run(1).Oscillating!.Needed;
        Assert.True(needed > 1);
        Assert.Contains(Run(1).Report.Findings, x => x.Code == "plant/oscillating");
        Assert.DoesNotContain(Run(needed).Report.Findings, x => x.Code == "plant/oscillating");
    }
}
