using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Design.Tests.Contracts;
using Glazewright.Design.Tests.Duty;

namespace Glazewright.Design.Tests.Layout;

/// <summary>
/// Vents of heaters. Clearances: NFPA 54 / IFGC as makers' tables quote it (read at second hand): direct vent 6, 9 and 12 in up to 10, 50 and above
/// 50 kBtu/h; with a draft fan 4 ft below or beside, 1 ft above, 3 ft above forced inlets within 10 ft; 12 in above snow.
/// </summary>
public class FlueLayoutTests
{
    private const double FootM = 0.3048;
    private const double KiloBtuW = 293.07107;
    private static readonly AirOpening Door = new("door", new Point3(10, 0, 0), new Point3(1, 0, 2), false, false);

    private static LayoutResult Run(Job job)
    {
        FormResult form = FormStage.Run(FormInput.From(job));
        PlantResult plant = PlantStage.Run(PlantInput.From(job, "A"), form.Building("A"), DesignDay.Duty(job, "A"), CatalogueReader.Generic);
        return LayoutStage.Run(LayoutInput.From(job, "A"), form, plant);
    }

    private static Job With(string heater) => DesignDay.With(TestJobs.OneHouse(), e => e with
    {
        HeatersFixed = [new FixedItem(heater, 2)],
    });

    private static Job Snowy(Job job, double groundPsf) =>
        job with { Site = job.Site with { Snow = job.Site.Snow with { GroundPa = groundPsf * 47.880259 } } };

    [Theory]
    [InlineData(10, 6)]
    [InlineData(11, 9)]
    [InlineData(50, 9)]
    [InlineData(51, 12)]
    public void A_direct_vent_keeps_its_own_graded_distance(double inputKBtu, double inches)
    {
        double inputW = inputKBtu * KiloBtuW;
        Assert.Equal(inches * 0.0254, FlueRules.DirectVentM(inputW), 9);
        Assert.True(FlueRules.Keeps(new Point3(10 - inches * 0.0254 - 0.001, 0, 1), Door, inputW));
        Assert.False(FlueRules.Keeps(new Point3(10 - inches * 0.0254 + 0.001, 0, 1), Door, inputW));
    }

    [Theory]
    [InlineData(true, false, false)]
    [InlineData(false, true, true)]
    [InlineData(false, false, true)]
    public void Three_feet_above_a_forced_inlet_within_ten(bool forced, bool drawn, bool keeps)
    {
        var inlet = new AirOpening("inlet", new Point3(10, 0, 1), new Point3(1, 0, 1), forced, drawn);
        Assert.Equal(keeps, FlueRules.Keeps(new Point3(8, 0, 1.5), inlet, 100 * KiloBtuW));
        Assert.True(FlueRules.Keeps(new Point3(10 - 10.01 * FootM, 0, 1.5), inlet, 100 * KiloBtuW));
        Assert.True(FlueRules.Keeps(new Point3(8, 0, 2 + 3.01 * FootM), inlet, 100 * KiloBtuW));
    }

    // 50 psf: 0.13 × 50 + 14 = 20.5 pcf, 2.44 ft deep, a foot more for the terminal.
    [Fact]
    public void Terminals_stand_a_foot_above_the_snow()
    {
        LayoutResult layout = Run(Snowy(With("sealed-100"), 50));
        Assert.Equal(2, layout.Flues.Count);
        Assert.All(layout.Flues, f => Assert.Equal(50 / 20.5 + 1, f.LeastHeightM / FootM, 3));
        Assert.All(layout.Flues, f => Assert.True(f.HeightM >= f.LeastHeightM));
    }

    [Fact]
    public void Each_sealed_heater_has_its_two_pipes_a_wall_and_a_length_within_the_most()
    {
        LayoutResult layout = Run(With("sealed-100"));
        Assert.All(layout.Flues, f =>
        {
            Assert.NotNull(f.Face);
            Assert.Equal(f.VentM, f.IntakeM);
            Assert.Equal(f.RunM + 5 * FootM * f.Elbows, f.EquivalentM, 9);
            Assert.InRange(f.EquivalentM, 1, f.MostM);
            Assert.True(f.NearestM >= FootM - 1e-6);
            Assert.False(f.Condensing);
        });
        Assert.DoesNotContain(layout.Report.Findings, f => f.Code is "layout/flue-blocked" or "layout/flue-too-long");
        Assert.Contains(layout.Report.Figures, f => f.Id == "A/layout/heater-1-vent-length");
    }

    [Fact]
    public void A_condensing_vent_climbs_from_the_heater_and_a_dry_one_falls()
    {
        LayoutResult wet = Run(With("sealed-condensing-120"));
        Assert.All(wet.Flues, f => Assert.True(f.Condensing));
        PlacedItem heater = wet.Placed.Single(p => p.Id == "A/heater-1");
        Assert.True(wet.Flues[0].HeightM > heater.Corner.ZM + heater.Size.ZM / 2);
        LayoutResult dry = Run(With("sealed-100"));
        Assert.True(dry.Flues[0].HeightM < heater.Corner.ZM + heater.Size.ZM / 2);
    }

    // 300 psf at 30 pcf lies 10 ft deep: above it only the gables are left, and the way there is long.
    [Fact]
    public void Deep_snow_drives_the_vents_up_the_gables()
    {
        LayoutResult layout = Run(Snowy(With("sealed-100"), 300));
        Assert.All(layout.Flues, f => Assert.True(f.Face is FaceName.End1 or FaceName.End2));
        Assert.All(layout.Flues, f => Assert.True(f.HeightM >= 11 * FootM - 1e-6));
        Assert.Equal(
            layout.Flues.Count(f => f.EquivalentM > f.MostM),
            layout.Report.Findings.Count(f => f.Code == "layout/flue-too-long"));
    }

    [Fact]
    public void Walls_full_of_louvers_take_no_vent_and_that_is_told()
    {
        Job job = With("sealed-100");
        FormResult form = FormStage.Run(FormInput.From(job));
        BuildingForm house = form.Building("A");
        PlantResult plant = PlantStage.Run(PlantInput.From(job, "A"), house, DesignDay.Duty(job, "A"), CatalogueReader.Generic);
        List<PlacedItem> placed = [];
        List<Finding> findings = [];
        HungLayout.Place(LayoutInput.From(job, "A"), house, plant, placed, []);
        placed.AddRange(
            new PlacedItem("l", PlacedKind.Louver, "", new Point3(0, -0.1, 0), new Point3(house.LengthM, 0.1, 9), FaceName.Left),
            new PlacedItem("r", PlacedKind.Louver, "", new Point3(0, house.WidthM, 0), new Point3(house.LengthM, 0.1, 9), FaceName.Right),
            new PlacedItem("1", PlacedKind.Louver, "", new Point3(-0.1, 0, 0), new Point3(0.1, house.WidthM, 9), FaceName.End1),
            new PlacedItem("2", PlacedKind.Louver, "", new Point3(house.LengthM, 0, 0), new Point3(0.1, house.WidthM, 9), FaceName.End2));
        List<FlueLine> lines = FlueLayout.Place(LayoutInput.From(job, "A"), form, house, plant, placed, findings);
        Assert.Equal(2, lines.Count);
        Assert.All(lines, f => Assert.Null(f.Face));
        Assert.Equal(2, findings.Count(f => f.Code == "layout/flue-blocked" && f.Severity == Severity.Miss));
    }

    // 75 kBtu/h out at 82 % takes 91: our table's first row; 100 takes 122: its second.
    [Theory]
    [InlineData("sealed-75", 4)]
    [InlineData("sealed-100", 5)]
    public void The_pipe_goes_by_the_input_not_the_output(string heater, double inches) =>
        Assert.All(Run(With(heater)).Flues, f => Assert.Equal(inches * 0.0254, f.VentM, 9));

    [Fact]
    public void Electric_heaters_have_no_vent()
    {
        string electric = CatalogueReader.Generic.Heaters.First(h => h.Electric).Id;
        Assert.Empty(Run(With(electric)).Flues);
    }

    [Fact]
    public void Both_pipes_of_a_direct_vent_are_placed_outside_their_wall_a_foot_apart()
    {
        LayoutResult layout = Run(With("sealed-100"));
        FlueLine line = layout.Flues[0];
        PlacedItem vent = layout.Placed.Single(p => p.Id == "A/heater-1/vent");
        PlacedItem air = layout.Placed.Single(p => p.Id == "A/heater-1/vent-air");
        Assert.Equal(line.Face, vent.Face);
        Assert.Equal(line.HeightM, vent.Corner.ZM + vent.Size.ZM / 2, 9);
        Assert.Equal(FootM, double.Hypot(air.Corner.XM - vent.Corner.XM, air.Corner.YM - vent.Corner.YM), 9);
        Assert.Equal((2, 2), (layout.Placed.Count(p => p.Label == "Vent terminal"), layout.Placed.Count(p => p.Label == "Combustion-air pipe")));
    }
}
