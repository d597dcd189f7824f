using CsCheck;
using Glazewright.Mechanics.Guards;
using Glazewright.Mechanics.Loads;

namespace Glazewright.Mechanics.Tests.Loads;

public class GableLoadTests
{
    private static readonly Gen<GableSection> Section =
        from leftEave in Gen.Double[2, 4]
        from rightEave in Gen.Double[2, 4]
        from rise in Gen.Double[0.3, 5]
        from leftRun in Gen.Double[2, 9]
        from rightRun in Gen.Double[2, 9]
        from length in Gen.Double[10, 60]
        select new GableSection(leftEave, leftRun, rightRun, rightEave, Math.Max(leftEave, rightEave) + rise, length);

    private static readonly Gen<SnowSite> Site =
        from groundPa in Gen.Double[0, 5000]
        from edition in Gen.Bool.Select(b => b ? LoadEdition.Asce716 : LoadEdition.Asce722)
        from risk in Gen.Int[0, 3].Select(i => (RiskCategory)i)
        from wind in Gen.Double[0.25, 0.65]
        select new SnowSite(new GroundSnow(groundPa, edition), risk, SurfaceRoughness.C, RoofExposure.Partially, wind);

    private static GableSection Mirror(GableSection s) => new(s.RightEaveM, s.RightRunM, s.LeftRunM, s.LeftEaveM, s.RidgeM, s.LengthM);

    [Fact]
    public void Snow_of_the_mirrored_house_is_mirrored() => Gen.Select(Section, Site).Sample((section, site) =>
    {
        RoofSnow a = GableSnow.On(site, section, 1.0);
        RoofSnow b = GableSnow.On(site, Mirror(section), 1.0);
        return a.Cases.Count == b.Cases.Count && a.Cases.All(c => b.Cases.Any(d => d.Left == c.Right && d.Right == c.Left));
    }, iter: 300);

    [Fact]
    public void Wind_on_the_mirrored_house_is_mirrored() => Section.Sample(section =>
    {
        var site = new WindSite(LoadEdition.Asce722, 45, WindExposure.C, 200);
        var a = GableWind.On(site, section, Enclosure.Enclosed).OfType<WindCase.Pressures>().ToList();
        var b = GableWind.On(site, Mirror(section), Enclosure.Enclosed).OfType<WindCase.Pressures>().ToList();
        return a.All(c => b.Any(d => Same(c.LeftWallPa, d.RightWallPa) && Same(c.RightWallPa, d.LeftWallPa)
            && Same(c.LeftRoofPa, d.RightRoofPa) && Same(c.RightRoofPa, d.LeftRoofPa)));
        static bool Same(double x, double y) => Math.Abs(x - y) < 1e-9;
    }, iter: 300);

    [Fact]
    public void Snow_is_never_negative_and_never_over_the_ground_and_its_drift() => Gen.Select(Section, Site).Sample((section, site) =>
    {
        RoofSnow snow = GableSnow.On(site, section, 1.2);
        return snow.Cases.SelectMany(c => new[] { c.Left, c.Right }).All(s =>
            s.UniformPa >= 0 && s.SurchargePa >= 0 && s.SurchargeRunM >= 0 && s.UniformPa <= 1.3 * site.Ground.PressurePa + 400);
    }, iter: 300);

    [Fact]
    public void More_ground_snow_more_roof_snow() => Gen.Select(Section, Site).Sample((section, site) =>
    {
        SnowSite more = site with { Ground = site.Ground with { PressurePa = site.Ground.PressurePa * 1.1 + 1 } };
        return GableSnow.FlatPa(more, 1.0) > GableSnow.FlatPa(site, 1.0)
            && GableSnow.DriftHeightM(more, 6) >= GableSnow.DriftHeightM(site, 6);
    }, iter: 200);

    [Fact]
    public void A_steep_slope_feeds_a_drift_but_gathers_none()
    {
        // Left 9:12 over 2.7 m, right 6:12 over 5.2 m.
        var section = new GableSection(2.8, 2.7, 5.2, 2.2, 4.8, 30);
        var site = new SnowSite(new GroundSnow(1676, LoadEdition.Asce716), RiskCategory.I, SurfaceRoughness.C, RoofExposure.Partially, 0.45);
        IReadOnlyList<SnowCase> cases = GableSnow.On(site, section, 1.0).Cases;
        Assert.Contains(cases, c => c.Kind == SnowCaseKind.DriftedToRight && c.Right.SurchargePa > 0);
        Assert.DoesNotContain(cases, c => c.Kind == SnowCaseKind.DriftedToLeft);
    }

    [Fact]
    public void Rain_on_snow_only_on_flat_wide_roofs_with_little_snow()
    {
        var flat = new GableSection(3, 40, 40, 3, 4, 60);
        SnowSite Of(double psf) => new(
            new GroundSnow(psf * UsUnits.PaPerPsf, LoadEdition.Asce716), RiskCategory.II, SurfaceRoughness.C, RoofExposure.Partially, 0.45);
        Assert.Contains(GableSnow.On(Of(15), flat, 1.0).Cases, c => c.Kind == SnowCaseKind.RainOnSnow);
        Assert.DoesNotContain(GableSnow.On(Of(25), flat, 1.0).Cases, c => c.Kind == SnowCaseKind.RainOnSnow);
        Assert.DoesNotContain(GableSnow.On(Of(0), flat, 1.0).Cases, c => c.Kind == SnowCaseKind.RainOnSnow);
    }

    [Theory]
    [InlineData(15.0, true, ThermalReason.GreenhouseWarmAllWinter, 0.85), InlineData(15.0, false, ThermalReason.NoAlarm, 1.0)]
    [InlineData(3.3, true, ThermalReason.KeptCool, 1.1), InlineData(-5.0, true, ThermalReason.HeatOff, 1.2)]
    public void Thermal_factor_follows_the_coldest_date(double coldestC, bool alarm, ThermalReason reason, double factor)
    {
        ThermalChoice choice = ThermalFactor.Of(new GroundSnow(1500, LoadEdition.Asce716), new RoofThermal(0.3, coldestC, alarm));
        Assert.Equal(new ThermalChoice(factor, reason), choice);
    }

    [Fact]
    public void Wide_gap_or_low_step_sends_no_drift()
    {
        var site = new SnowSite(new GroundSnow(1676, LoadEdition.Asce716), RiskCategory.II, SurfaceRoughness.C, RoofExposure.Partially, 0.45);
        Assert.Equal(0, NeighbourSnow.LeewardDrift(site, 1000, 8, 3, 6.2).PeakPa);
        Assert.Equal(0, NeighbourSnow.LeewardDrift(site, 1000, 8, 0.2, 0).PeakPa);
        Assert.True(NeighbourSnow.LeewardDrift(site, 1000, 8, 3, 4).PeakPa > 0);
        Assert.Equal(0, NeighbourSnow.Slid(1000, 5, 26, false, 5).PressurePa);
        Assert.True(NeighbourSnow.Slid(1000, 5, 26, false, 2).PressurePa > 0);
        Assert.Equal(0, NeighbourSnow.Slid(1000, 5, 5, false, 2).PressurePa);
    }
}
