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

    [Fact]
    public void Too_few_for_the_floor_is_told()
    {
        int needed = Run(1).Oscillating!.Needed;
        Assert.True(needed > 1);
        Assert.Contains(Run(1).Report.Findings, x => x.Code == "plant/oscillating");
        Assert.DoesNotContain(Run(needed).Report.Findings, x => x.Code == "plant/oscillating");
    }
}
