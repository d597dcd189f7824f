using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.LightMaps;
using Glazewright.Design.Tests.Brief;
using Glazewright.Design.Tests.GainTables;
using Glazewright.Science.Light;
using Glazewright.Science.Light.Shadows;

namespace Glazewright.Design.Tests.LightMaps;

/// <summary>The map past every member of the demo's first house.</summary>
public class MemberLightTests
{
    private static readonly Job Demo = Examples.Job(Examples.Demo);
    private static readonly FormResult Form = LightJobs.Form(Demo);
    private static readonly LightInput Input = LightInput.From(Demo, "A");
    private static readonly LightMap Map = LightMapStage.Run(
        Input, Form, LightJobs.Body(Form), new LayoutResult("A", [], 0, StageReport.Empty), LightJobs.Weather, CancellationToken.None);

    // The marks set for the light: floor mean within 1 %, points within 2 % rms of a table with 16 times the directions and of one with 16 times the rays.
    [Fact]
    public void Sixteen_times_the_rays_change_little()
    {
        SunGrid grid = SunGrid.Even(72, 36);
        SunGrid fine = SunGrid.Even(288, 144);
        SkyMonths sky = SkyMonths.Of(LightJobs.Weather, Input.RangeBearingDeg, Input.AlbedoFraction, grid);
        SkyMonths fineSky = SkyMonths.Of(LightJobs.Weather, Input.RangeBearingDeg, Input.AlbedoFraction, fine);
        LightScene scene = LightScene.Of(Input, Form, LightJobs.Body(Form), new LayoutResult("A", [], 0, StageReport.Empty));
        ReceivingPlane level = scene.Level(scene.HeightM);
        PlaneLight usual = Light(sky, grid, ScanFineness.Usual);
        PlaneLight directions = Light(fineSky, fine, ScanFineness.Usual);
        PlaneLight rays = Light(sky, grid, new ScanFineness(16, 4));
        Agree("directions", directions.Month(fineSky, 11, 2));
        Agree("rays", rays.Month(sky, 11, 2));

        PlaneLight Light(SkyMonths months, SunGrid nodes, ScanFineness fineness) => PlaneLight.Of(
            scene, HouseSources.Of(new HouseLight(scene.Enclosure, scene.Drawn, scene.Around), months, nodes, [11]), level, fineness, CancellationToken.None);

        void Agree(string what, LightMonth finer)
        {
            LightMonth month = usual.Month(sky, 11, 2);
            double[] off = [.. month.PointMolPerM2Day.Zip(finer.PointMolPerM2Day, (a, b) => (a - b) / b)];
            double rms = Math.Sqrt(off.Average(e => e * e));
            TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant(
                $"16 × {what}, December: mean {(month.MeanMolPerM2Day / finer.MeanMolPerM2Day) - 1:0.0000}, point rms {rms:0.0000}, worst point {off.Max(Math.Abs):0.000}"));
            Assert.InRange(month.MeanMolPerM2Day / finer.MeanMolPerM2Day, 0.99, 1.01);
            Assert.InRange(rms, 0, 0.02);
        }
    }

    [Fact]
    public void A_month_s_light_is_accounted_for()
    {
        for (int m = 0; m < 12; m++)
        {
            LightFate f = Map.Fates[m];
            Assert.Equal(1, f.AroundFraction + f.OpaqueRoofFraction + f.OpaqueWallFraction + f.FrameFraction + f.EquipmentFraction + f.CurtainFraction
                + f.CoverFraction + f.StateFraction + f.ScatteredFraction + f.DirectFraction, 1e-9);

            // What arrives, straight or not, is the map's mean. The horizon band gives a level plane nothing straight, so the two outsides differ by less than 1 %.
            Assert.Equal(Map.Months[m].MeanMolPerM2Day / Map.OutsideMolPerM2Day[m], f.DirectFraction + f.ReturnedFraction, 0.01);
            Assert.True(f.FrameFraction > 0.02);
        }
    }

    // The carpet is the same light, hour by hour.
    [Fact]
    public void The_year_s_hours_add_up_to_its_months()
    {
        Assert.Equal(8760, Map.Carpet.Mean.Count);
        for (int m = 0; m < 12; m++)
        {
            double mean = MonthMol(Map.Carpet.Mean, m);
            Assert.Equal(Map.Months[m].MeanMolPerM2Day, mean, 0.005 * mean);
            double darkest = MonthMol(Map.Carpet.Darkest, m);
            Assert.Equal(Map.Months[m].PointMolPerM2Day[Map.Carpet.DarkestCell], darkest, 0.01 * darkest);
        }
    }

    // Common practice: slender bright tube costs the least light, deep solid webs throw shadows 12 to 15 in deep and more.
    [Fact]
    public void Deep_frames_take_more_than_slender_tube()
    {
        FramingLight tube = Map.Framings[0];
        Assert.Equal(Map.Months[11].MeanMolPerM2Day, tube.DecemberMolPerM2Day, 1e-9);
        Assert.Equal(4, Map.Framings.Count);
        Assert.All(Map.Framings.Skip(1), f =>
        {
            Assert.True(f.DecemberMolPerM2Day < tube.DecemberMolPerM2Day);
            Assert.True(f.FrameFraction > tube.FrameFraction);
            Assert.True(f.ShadowWidthM > tube.ShadowWidthM);
        });
        Assert.True(Map.Framings[1].ShadowWidthM >= 12 * 0.0254);
    }

    [Fact]
    public void The_far_wall_is_the_north_wall_and_has_less_light_than_the_open_sky()
    {
        LightPlane wall = Assert.Single(Map.Others);
        FaceForm face = Form.Building("A").Faces.Single(f => f.Name == wall.Face);
        Assert.InRange(Math.Abs(((face.AzimuthDeg + 180) % 360) - 180), 0, 45);
        Assert.All(wall.Months, m => Assert.True(m.MeanMolPerM2Day > 0));
    }

    [Fact]
    public void Shadows_move_from_west_to_east_and_are_broadest_low()
    {
        ShadowTrack december = Map.Shadows[0];
        Assert.Contains(december.Moments, m => m.SolarHour == 12);
        double bearing = (Demo.Site.RangeBearingDeg + 360) % 360;
        int sign = bearing is > 0 and < 180 ? 1 : -1;
        Assert.True(december.Moments.Zip(december.Moments.Skip(1)).All(p => sign * (p.Second.CentreXM - p.First.CentreXM) > 0));
        Assert.True(december.Moments[^1].WidthM > december.Moments.Single(m => m.SolarHour == 12).WidthM);
    }

    // A heater overhead darkens the spot below it and is put down to equipment.
    [Fact]
    public void Equipment_is_seen_by_its_shadow()
    {
        LayoutResult hung = new(
            "A",
            [new PlacedItem("A/heater-1", PlacedKind.Heater, "Heater", new Point3(10, 3, 2.2), new Point3(2, 2, 0.7), FaceName.Floor)],
            0, StageReport.Empty);
        LightMap dark = LightMapStage.Run(Input, Form, LightJobs.Body(Form), hung, LightJobs.Weather, CancellationToken.None);
        Assert.Equal(0, Map.Fates[5].EquipmentFraction);
        Assert.True(dark.Fates[5].EquipmentFraction > 0.002);
        BuildingForm house = Form.Building("A");
        int below = (int)(11 / house.LengthM * Map.CountX) + (Map.CountX * (int)(4 / house.WidthM * Map.CountY));
        Assert.True(dark.Months[5].PointMolPerM2Day[below] < 0.9 * Map.Months[5].PointMolPerM2Day[below]);
        Assert.True(dark.Months[5].MeanMolPerM2Day < Map.Months[5].MeanMolPerM2Day);
    }

    // A picture of one moment is the same light as the map's: at noon on 21 June on an east-west house the opaque north slope's strip is dark, and shadows of members are seen one by one.
    [Fact]
    public void A_moment_shows_single_shadows()
    {
        LightMoment june = Map.Moments.Single(m => m.Day == "21 June" && m.SolarHour == 12);
        Assert.Equal(june.MeanFraction, june.SpotFraction.Average(), 1e-4);
        float[] row = [.. Enumerable.Range(0, june.CountX).Select(i => june.SpotFraction[(june.CountY / 3 * june.CountX) + i])];
        Assert.True(row.Min() < 0.5 * row.Max());
        Assert.All(Enumerable.Range(june.CountX / 3, june.CountX / 3), i => Assert.Equal(0, june.SpotFraction[((june.CountY - 2) * june.CountX) + i]));
    }

    // Members that lie in each other, or come twice, darken once.
    [Fact]
    public void Members_that_overlap_shade_once()
    {
        BodyResult body = LightJobs.Body(Form);
        BodyResult twice = body with { Members = body.Members.Concat(body.Members.Where(m => m.House == "A")).ToEqList() };
        LightMap again = LightMapStage.Run(Input, Form, twice, new LayoutResult("A", [], 0, StageReport.Empty), LightJobs.Weather, CancellationToken.None);
        Assert.Equal(Map.Months[11].MeanMolPerM2Day, again.Months[11].MeanMolPerM2Day, 1e-9);
        Assert.Equal(Map.Fates[5].FrameFraction, again.Fates[5].FrameFraction, 1e-12);
    }

    // A year without radiation is dark, not an error, and nothing is divided by it.
    [Fact]
    public void A_year_without_radiation_is_dark()
    {
        Science.Weather.WeatherYear year = LightJobs.Weather with
        {
            GhiWhm2 = new(new double[8760]),
            DniWhm2 = new(new double[8760]),
            DhiWhm2 = new(new double[8760]),
        };
        LightMap dark = LightMapStage.Run(Input, Form, LightJobs.Body(Form), new LayoutResult("A", [], 0, StageReport.Empty), year, CancellationToken.None);
        Assert.All(dark.Months, m => Assert.Equal(0, m.MeanMolPerM2Day));
        Assert.All(dark.Report.Figures, f => Assert.True(double.IsFinite(f.Value), f.Id));
        Assert.All(dark.Carpet.Mean, v => Assert.Equal(0, v));
    }

    private static double MonthMol(EqList<double> flux, int month)
    {
        int first = Enumerable.Range(1, month).Sum(Science.Weather.CommonYear.DaysIn);
        int days = Science.Weather.CommonYear.DaysIn(month + 1);
        return Enumerable.Range(first * 24, days * 24).Sum(h => flux[h]) * 3600 / 1e6 / days;
    }
}
