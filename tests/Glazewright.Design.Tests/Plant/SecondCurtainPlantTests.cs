using Glazewright.Design.Behaviour;
using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Design.Tests.Brief;
using Glazewright.Design.Tests.Duty;
using Glazewright.Design.Tests.GainTables;

namespace Glazewright.Design.Tests.Plant;

/// <summary>A second curtain from the job to duty, plant, layout and light.</summary>
public class SecondCurtainPlantTests
{
    private static readonly SecondCurtain Shade = new(
        CurtainPurpose.Shade, "curtain-shade-60", 0.2, 0.38, 0.45, 0.5, 0.3, new DayMark.Clock(0), new DayMark.Clock(1));

    private static Job With(SecondCurtain? second, int curtains = 2) =>
        DesignDay.With(TestJobs.OneHouse(), e => e with { Curtains = curtains, CurtainEntry = "curtain-energy-clear", SecondCurtain = second });

    private static (DutyResult Duty, PlantResult Plant, BuildingForm Form) Sized(Job job)
    {
        BuildingForm form = FormStage.Run(FormInput.From(job)).Building("A");
        DutyResult duty = DesignDay.Duty(job);
        return (duty, PlantStage.Run(PlantInput.From(job, "A"), form, duty, CatalogueReader.Generic), form);
    }

    [Fact]
    public void Duty_is_the_cloths_in_series_and_an_open_weave_saves_by_its_closed_part()
    {
        double one = Sized(With(null, 1)).Duty.LossDrawnWPerK, two = Sized(With(null)).Duty.LossDrawnWPerK, open = Sized(With(null, 1)).Duty.LossWPerK;
        double tight = Sized(With(Shade with { OpennessFraction = 0 })).Duty.LossDrawnWPerK, shade = Sized(With(Shade)).Duty.LossDrawnWPerK;
        Assert.Equal(two, tight, 1e-9 * two);
        Assert.Equal(one + 0.7 * (two - one), shade, 1e-9 * two);
        Assert.Equal(one, Sized(With(Shade with { OpennessFraction = 1, SolarTransmittanceFraction = 1, SolarReflectanceFraction = 0 })).Duty.LossDrawnWPerK, 1e-9 * one);
        Assert.True(shade < one && one < open);
        Figure drawn = Sized(With(Shade)).Duty.Report.Figures.Single(f => f.Id == "A/duty/loss-factor-drawn");
        Assert.Equal(shade, drawn.Value, 1e-9 * shade);
    }

    [Fact]
    public void Plant_sizes_each_with_its_own_drive_and_load_and_hangs_the_rest_below()
    {
        (_, PlantResult plant, BuildingForm form) = Sized(With(Shade));
        (_, PlantResult single, _) = Sized(With(null, 1));
        Assert.Equal(1, plant.Curtain!.Layers);
        Assert.Equal("curtain-shade-60", plant.SecondCurtain!.Entry);
        Assert.Equal(plant.Curtain.HeightM - 0.2, plant.SecondCurtain.HeightM, 1e-12);
        Assert.Equal(1, plant.Loads.Count(l => l.Id == "A/curtain-drive" && l.Count == 1));
        Assert.Equal(1, plant.Loads.Count(l => l.Id == "A/second-curtain-drive" && l.Count == 1));
        Assert.DoesNotContain(single.Loads, l => l.Id == "A/second-curtain-drive");
        Assert.Equal(2, plant.Report.Findings.Count(f => f.Code == "plant/curtain-fire"));

        // Each bundle casts its shadow, at each frame, the second under the first.
        LayoutResult layout = new("A", [Item("A/curtain", plant.Curtain), Item("A/second-curtain", plant.SecondCurtain)], 0, StageReport.Empty);
        NamedBar[] bundles = [.. HouseBars.Equipment(form, layout)];
        Assert.Equal(2 * (form.FrameLinesXM.Count - 1), bundles.Length);

        PlacedItem Item(string id, CurtainPlant c) => new(id, PlacedKind.Curtain, "Curtain", new Point3(0, 0, c.HeightM), new Point3(form.LengthM, form.WidthM, 0), FaceName.Floor);
    }

    [Fact]
    public void Behaviour_tells_each_alone_and_both()
    {
        (DutyResult duty, PlantResult plant, BuildingForm form) = Sized(With(Shade));
        TwoCurtains two = HeatBehaviour.Curtain(form, duty, plant)!.Two!;
        Assert.True(two.BothSavedFraction > two.FirstSavedFraction && two.FirstSavedFraction > two.SecondSavedFraction && two.SecondSavedFraction > 0);
        Assert.True(two.BothSavedFraction < two.FirstSavedFraction + two.SecondSavedFraction);
        Assert.Equal((0.18, 0.62), (Math.Round(two.FirstShadeFraction, 9), Math.Round(two.SecondShadeFraction, 9)));
        Assert.Equal(1 - 0.82 * 0.38 / (1 - 0.12 * 0.45), two.BothShadeFraction, 1e-12);
        CurtainBehaviour c = HeatBehaviour.Curtain(form, duty, plant)!;
        Assert.Equal(duty.NightTargetC, c.Night[0].BelowC, 0.01); // drawn, with the drawn house's heat
        Assert.Null(HeatBehaviour.Curtain(form, duty, Sized(With(null)).Plant)!.Two);
    }

    // Light: what the enclosure finds for each position, against the cloths' own figures and the layers of one curtain.
    [Fact]
    public void Light_has_four_positions_that_agree_with_the_cloths()
    {
        GainTable table = LightJobs.BothWays(With(Shade));
        foreach (GainRow row in new[] { table.SecondDrawn!, table.BothDrawn! }.SelectMany(s => s.Beam.Append(s.Sky).Append(s.Horizon).Append(s.Ground)))
        {
            Assert.Equal(1, row.ShareSum, 1e-9);
        }

        double open = table.CurtainOpen.Sky.CropPlaneShare, first = table.CurtainDrawn.Sky.CropPlaneShare, second = table.SecondDrawn!.Sky.CropPlaneShare, both = table.BothDrawn!.Sky.CropPlaneShare;
        Assert.True(both < second && second < first && first < open);

        // Through the one, then the other, light going to and fro between them: a composition comes near, for light also goes round by walls and crop.
        Assert.Equal(first * second / open / (1 - 0.12 * 0.45), both, 0.12 * both);

        SecondCurtain same = new(CurtainPurpose.Energy, "curtain-energy-clear", 0.2, 0.82, 0.12, 0.65, 0.01, new DayMark.Clock(0), new DayMark.Clock(1));
        Assert.Equal(LightJobs.BothWays(With(null)).CurtainDrawn.Sky, LightJobs.BothWays(With(same)).BothDrawn!.Sky);
    }

    [Fact]
    public void A_job_is_told_what_does_not_fit()
    {
        string[] Faults(string curtains, string second) =>
            [.. Examples.Faults(new Edit("/houses/0/equipment/curtains", curtains), new Edit("/houses/0/equipment/secondCurtain", second)).Select(f => f.Pointer.Replace("/houses/0/equipment/secondCurtain", "", StringComparison.Ordinal))];
        Assert.Equal([""], Faults("1", """{ "purpose": "shade" }"""));
        Assert.Empty(Faults("2", """{ "purpose": "shade", "below": "10 in", "emissivity": "30 %" }"""));
        Assert.Equal(["/purpose", "/cloth"], Faults("2", """{ "purpose": "dark", "cloth": "velvet" }"""));
        Assert.Equal(["/reflectance", "/openness"], Faults("2", """{ "transmittance": "40 %", "reflectance": "70 %", "openness": "50 %" }"""));
        Assert.Equal(["/below"], Faults("2", """{ "below": "5 ft" }"""));
        Assert.Equal(["/darkTo"], Faults("2", """{ "purpose": "blackout", "darkFrom": "18:00", "darkTo": "6 pm" }"""));
    }

    [Fact]
    public void A_blackout_that_is_not_dark_is_a_finding()
    {
        IEnumerable<Finding> Of(double transmittance) => Sized(With(Shade with { Purpose = CurtainPurpose.Blackout, OpennessFraction = 0, SolarTransmittanceFraction = transmittance })).Plant.Report.Findings
            .Where(f => f.Code == "plant/blackout-leaks");
        Assert.Single(Of(0.02));
        Assert.Empty(Of(0.0005));
    }
}
