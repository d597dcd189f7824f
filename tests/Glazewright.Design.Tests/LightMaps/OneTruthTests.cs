using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Layout;
using Glazewright.Design.LightMaps;
using Glazewright.Design.Tests.Brief;
using Glazewright.Design.Tests.GainTables;
using Glazewright.Science.Sky;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Tests.LightMaps;

/// <summary>The light map and the gain table that the year runs by see the same house: members, joints, everything hung or set in walls, the curtain parked and drawn.</summary>
public class OneTruthTests
{
    private const double CropReflectance = 0.15;

    private static readonly Job Demo = Examples.Job(Examples.Demo);
    private static readonly FormResult Form = LightJobs.Form(Demo);
    private static readonly BodyResult Solid = LightJobs.Body(Form);

    // A heater, a row of lamps, a fan and a wet wall, and a curtain with its bundles.
    private static readonly LayoutResult Fitted = new(
        "A",
        [
            new PlacedItem("A/heater-1", PlacedKind.Heater, "Heater", new Point3(10, 3, 2), new Point3(1.2, 1.0, 0.7), FaceName.Floor),
            new PlacedItem("A/lamps-1", PlacedKind.LampRow, "Lamps", new Point3(3, 4, 2), new Point3(20, 0.3, 0.2), FaceName.Floor),
            new PlacedItem("A/fan-1", PlacedKind.Fan, "Fan", new Point3(0, 2, 0.8), new Point3(0.05, 1.2, 1.2), FaceName.End1),
            new PlacedItem("A/wet-wall", PlacedKind.WetWall, "Wet wall", new Point3(Form.Building("A").LengthM - 0.15, 1, 0.6), new Point3(0.15, 5, 1.2), FaceName.End2),
            new PlacedItem("A/curtain", PlacedKind.Curtain, "Curtain", new Point3(0, 0.1, 2.3), new Point3(30, 8, 0.02), FaceName.Floor),
        ],
        0, StageReport.Empty);

    private static readonly GainInput Gain = GainInput.From(Demo, "A", CatalogueReader.Generic) with { CropReflectance = CropReflectance };
    private static readonly HouseViews Views = LightJobs.Views(Gain, Form);
    private static readonly GainTable Bare = LightJobs.Gains(Gain, Form, Solid);
    private static readonly FittedGains Traced = GainTableStage.Fitted(Gain, Form, Solid, Fitted, Views, Bare, CancellationToken.None);
    private static readonly GainTable Table = Traced.Table;
    private static readonly LightMap Map = LightMapStage.Run(
        LightInput.From(Demo, "A", CatalogueReader.Generic) with { Benches = [], CropReflectance = CropReflectance }, Form, Solid, Fitted, LightJobs.Weather, CancellationToken.None);

    // The mark for a floor's mean is 1 % (the table takes what bars catch evenly over a face; the map follows each shadow).
    [Theory]
    [InlineData(11, false)]
    [InlineData(5, false)]
    [InlineData(11, true)]
    [InlineData(5, true)]
    public void A_month_s_light_on_the_floor_is_the_same_energy(int month, bool drawn)
    {
        GainField field = new(Table, drawn);
        double absorbedWh = 0;
        SkyQuarters.Walk(LightJobs.Weather, Demo.Site.Ground.AlbedoFraction, q =>
        {
            if (q.Month == month)
            {
                absorbedWh += field.At(q.Sources, q.AzimuthDeg, q.ElevationDeg, Demo.Site.RangeBearingDeg).CropPlaneW / SkyQuarters.InHour;
            }
        });
        BuildingForm house = Form.Building("A");
        LightMonth light = (drawn ? Map.Drawn!.Months : Map.Months)[month];
        double mapWh = light.MeanMolPerM2Day * 1e6 / (3600 * Science.Light.PlantLight.MicromolPerJoule) * CommonYear.DaysIn(month + 1)
            * house.FloorAreaM2 * (1 - CropReflectance);
        TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant($"month {month + 1}, drawn {drawn}: map over table {mapWh / absorbedWh:0.0000}"));
        Assert.Equal(1, mapWh / absorbedWh, 0.01);
    }

    [Fact]
    public void Equipment_takes_light_from_both()
    {
        double bare = Bare.CurtainOpen.Sky.ApertureM2 * Bare.CurtainOpen.Sky.CropPlaneShare;
        double fitted = Table.CurtainOpen.Sky.ApertureM2 * Table.CurtainOpen.Sky.CropPlaneShare;
        Assert.InRange(fitted / bare, 0.5, 0.999);
        Figure told = Table.Report.Figures.Single(f => f.Id == "A/gain/sky-past-equipment");
        Assert.Equal(fitted / bare, told.Value, 1e-12);
        Assert.True(Map.Fates[5].EquipmentFraction > 0);
        Assert.True(Map.Fates[5].CurtainFraction > 0);
    }

    // The gain table's beams were traced past a crop of another colour; nothing else may differ.
    [Fact]
    public void A_map_by_the_table_s_beams_is_the_map_traced_on_its_own()
    {
        LightInput input = LightInput.From(Demo, "A", CatalogueReader.Generic) with { Benches = [] };
        Assert.NotEqual(input.CropReflectance, Traced.CropReflectance);
        LightMap own = LightMapStage.Run(input, Form, Solid, Fitted, LightJobs.Weather, CancellationToken.None);
        LightMap shared = LightMapStage.Run(input, Form, Solid, Fitted, Views, Traced, LightJobs.Weather, CancellationToken.None);
        foreach ((LightMonth a, LightMonth b) in own.Months.Concat(own.Drawn!.Months).Zip(shared.Months.Concat(shared.Drawn!.Months)))
        {
            Assert.All(a.PointMolPerM2Day.Zip(b.PointMolPerM2Day), p => Assert.Equal(p.First, p.Second, 1e-9 * p.First));
        }

        Assert.All(own.Framings.Zip(shared.Framings), f => Assert.Equal(f.First.DecemberMolPerM2Day, f.Second.DecemberMolPerM2Day, 1e-9));
    }

    // Common practice: cloth scatters, so what is left lies more evenly.
    [Fact]
    public void A_drawn_curtain_takes_light_and_evens_out_the_rest()
    {
        DrawnLight drawn = Map.Drawn!;
        Assert.All(Enumerable.Range(0, 12), m =>
        {
            LightFate f = drawn.Fates[m];
            Assert.Equal(1, f.AroundFraction + f.OpaqueRoofFraction + f.OpaqueWallFraction + f.FrameFraction + f.EquipmentFraction + f.CurtainFraction
                + f.CoverFraction + f.StateFraction + f.ScatteredFraction + f.DirectFraction, 1e-9);
            Assert.True(drawn.Months[m].MeanMolPerM2Day < Map.Months[m].MeanMolPerM2Day);
        });
        Assert.True(drawn.Months[5].EvennessRatio > Map.Months[5].EvennessRatio);
    }
}
