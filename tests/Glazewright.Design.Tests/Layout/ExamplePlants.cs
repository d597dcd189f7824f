using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Design.Tests.Brief;
using Glazewright.Design.Tests.Duty;
using Glazewright.Design.Tests.GainTables;

namespace Glazewright.Design.Tests.Layout;

/// <summary>Duty, Plant and Layout on the example jobs, with real gain tables: what a contractor should hear about them.</summary>
public class ExamplePlants
{
    private static Finding[] Findings(string name, string house)
    {
        Job job = Examples.Job(name);
        FormResult form = FormStage.Run(FormInput.From(job));
        GainTable gains = LightJobs.Gains(GainInput.From(job, house, CatalogueReader.Generic), form, new BodyResult([], StageReport.Empty));
        DutyResult duty = DutyStage.Run(DutyInput.From(job, house), form.Building(house), gains, DesignDay.Year);
        PlantResult plant = PlantStage.Run(PlantInput.From(job, house), form.Building(house), duty, CatalogueReader.Generic);
        LayoutResult layout = LayoutStage.Run(LayoutInput.From(job, house), form, plant);
        return [.. duty.Report.Findings, .. plant.Report.Findings, .. layout.Report.Findings];
    }

    [Fact]
    public void The_demos_wet_wall_draws_through_the_alley_and_80_F_does_not_hold()
    {
        Finding[] found = Findings(Examples.Demo, "A");
        Assert.Contains(found, f => f.Code == "layout/intake-alley");
        Assert.Contains(found, f => f.Code == "plant/never-above-missed");
        Assert.DoesNotContain(found, f => f.Code is "plant/pad-too-fast" or "plant/fan-beyond-tested" or "plant/three-phase");
        Assert.DoesNotContain(found, f => f.Code.StartsWith("layout/", StringComparison.Ordinal) && f.Severity >= Severity.Miss);
    }

    [Fact]
    public void Four_48_inch_fans_against_the_same_wet_wall_are_told_in_red()
    {
        Finding pad = Findings("variants/finding-four-fans-one-wet-wall.json", "A").Single(f => f.Code == "plant/pad-too-fast");
        Assert.Equal(Severity.Miss, pad.Severity);
        Assert.Contains("224 ft²", pad.What, StringComparison.Ordinal);
    }

    [Fact]
    public void House_B_hears_what_holds_with_a_heater_dead_and_its_fog_is_cautioned()
    {
        Finding[] found = Findings(Examples.Demo, "B");
        Assert.Contains(found, f => f.Code == "plant/one-heater-out");
        Assert.Contains(found, f => f.Code == "plant/fog-injection" && f.Severity == Severity.Danger);
        Assert.Contains(found, f => f.Code == "plant/positive-pressure");
    }

    // What we size ourselves must fit: no system chosen here may miss its own limits. What the crop may never exceed is a wish, told with the flow it would take.
    [Theory]
    [InlineData("bayou-seedling-house.json", "S")]
    [InlineData("polder-salad-house.json", "P")]
    public void Sized_plants_fit_their_house(string name, string house) =>
        Assert.DoesNotContain(Findings(name, house), f => f.Severity >= Severity.Miss && !f.Code.StartsWith("duty/", StringComparison.Ordinal) && f.Code != "plant/never-above-missed");
}
