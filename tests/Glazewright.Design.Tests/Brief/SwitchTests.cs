using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;
using Glazewright.Design.Tests.Duty;

namespace Glazewright.Design.Tests.Brief;

/// <summary>What a job describes it wants; what it switches off it is told of.</summary>
public class SwitchTests
{
    private static EquipmentChoice Read(string key, string json)
    {
        ReadOutcome<Job> outcome = Glazewright.Design.Brief.Reading.JobReader.Read(Examples.Edited(new Edit("/houses/0/equipment/" + key, json)));
        Assert.True(outcome.Faults.Count == 0, string.Join("\n", outcome.Faults));
        return outcome.Value!.Houses[0].Equipment;
    }

    [Fact]
    public void Nozzles_alone_make_fog_wanted()
    {
        Assert.True(Read("fog", """{ "nozzles": 40 }""").Fog);
        Assert.False(Read("fog", "{ }").Fog);
        EquipmentChoice off = Read("fog", """{ "use": false, "nozzles": 40 }""");
        Assert.False(off.Fog);
        Assert.Equal(["the fog (nozzles)"], off.SwitchedOff);
    }

    [Fact]
    public void A_count_alone_makes_upper_fans_wanted()
    {
        Assert.Equal(2, Read("upperFans", """{ "count": 2 }""").UpperFans?.Count);
        Assert.Null(Read("upperFans", "{ }").UpperFans);
        EquipmentChoice off = Read("upperFans", """{ "use": false, "count": 2 }""");
        Assert.Null(off.UpperFans);
        Assert.Equal(["the upper fans (count)"], off.SwitchedOff);
    }

    [Fact]
    public void A_wet_wall_switched_off_with_its_size_typed_is_told()
    {
        EquipmentChoice off = Read("wetWall", """{ "use": false, "width": "16 ft" }""");
        Assert.False(off.WetWall);
        Job job = DesignDay.With(TestJobs.OneHouse(), e => e with { WetWall = false, SwitchedOff = off.SwitchedOff });
        PlantResult plant = PlantStage.Run(PlantInput.From(job, job.Houses[0].Id), FormStage.Run(FormInput.From(job)).Building(job.Houses[0].Id), DesignDay.Duty(job), CatalogueReader.Generic);
        Finding told = Assert.Single(plant.Report.Findings, f => f.Code == "plant/switched-off");
        Assert.Contains("the wet wall (width)", told.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Wet_bulbs_out_of_order_are_a_fault_where_both_are_typed()
    {
        EqList<Fault> faults = Examples.Faults(new Edit("/site/design/evaporation04", "\"70 F\""), new Edit("/site/design/coincidentWetBulb", "\"74 F\""));
        Fault fault = Assert.Single(faults);
        Assert.Equal("/site/design/coincidentWetBulb", fault.Pointer);
        Assert.Contains("0.4 % wet bulb", fault.Wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wet_bulb_above_its_dry_bulb_is_a_fault_for_the_wettest_day_too()
    {
        Fault fault = Assert.Single(Examples.Faults(new Edit("/site/design/evaporation04", "\"99 F\"")));
        Assert.Equal("/site/design/evaporation04", fault.Pointer);
        Assert.Contains("dry bulb", fault.Wrong, StringComparison.Ordinal);
    }
}
