using Glazewright.Mechanics.Guards;
using Glazewright.Mechanics.Loads;
using static Glazewright.Published.Tests.Mechanics.FrameBuild;

namespace Glazewright.Published.Tests.Mechanics;

/// <summary>
/// Roof snow by ASCE 7-16 and 7-22. Each case says its source: tests of open programs and a guide's worked example (read), an engineering
/// firm's article comparing the editions (read), or formulae of the standard computed independently. Units psf, ft.
/// </summary>
public class SnowCases
{
    private static SnowSite Site(
        double psf, LoadEdition edition = LoadEdition.Asce716, RiskCategory risk = RiskCategory.II,
        SurfaceRoughness ground = SurfaceRoughness.B, RoofExposure exposure = RoofExposure.Partially, double winterWind = 0.45) =>
        new(new GroundSnow(psf * UsUnits.PaPerPsf, edition), risk, ground, exposure, winterWind);

    private static double Psf(double pa) => pa / UsUnits.PaPerPsf;

    /// <summary>Terrain B, partially exposed, Ct 1.0, risk II, 30 psf: 21.0 psf (an open program's test, read).</summary>
    [Fact]
    public void Flat_roof_snow() => Near(21.0, Psf(GableSnow.FlatPa(Site(30), 1.0)), 1e-9);

    /// <summary>50 psf, Ce 0.9, Ct 1.1, Is 1.0: 34.65 psf (a guide's worked example, read).</summary>
    [Fact]
    public void Flat_roof_snow_exposed() =>
        Near(34.65, Psf(GableSnow.FlatPa(Site(50, exposure: RoofExposure.Fully), 1.1)), 0.005);

    /// <summary>Slope factors (an open program's tests, read).</summary>
    [Theory]
    [InlineData(18.43494882, 1.0, true, 0.7933), InlineData(5, 1.0, true, 1.0), InlineData(37.5, 1.0, true, 0.5)]
    [InlineData(40, 1.1, true, 0.5), InlineData(42.5, 1.2, true, 0.5), InlineData(71, 1.0, false, 0), InlineData(30, 1.0, false, 1.0)]
    [InlineData(50, 1.0, false, 0.5), InlineData(45, 1.2, false, 1.0)]
    public void Slope_factor(double angleDeg, double thermal, bool slippery, double factor) =>
        Near(factor, SnowFactors.Slope(LoadEdition.Asce716, angleDeg, thermal, slippery), 0.00005);

    /// <summary>Heated greenhouse, 25 psf, risk I: 11.90; unheated 16.80 (7-16 formulae, computed).</summary>
    [Fact]
    public void Heating_makes_41_percent()
    {
        SnowSite site = Site(25, risk: RiskCategory.I);
        ThermalChoice warm = ThermalFactor.Of(site.Ground, new RoofThermal(1.8 * UsUnits.M2KPerWPerUsR, 12, true));
        ThermalChoice off = ThermalFactor.Of(site.Ground, new RoofThermal(1.8 * UsUnits.M2KPerWPerUsR, null, true));
        Assert.Equal(ThermalReason.GreenhouseWarmAllWinter, warm.Reason);
        Assert.Equal(ThermalReason.HeatOff, off.Reason);
        Near(11.90, Psf(GableSnow.FlatPa(site, warm.Factor)), 0.005);
        Near(16.80, Psf(GableSnow.FlatPa(site, off.Factor)), 0.005);
    }

    /// <summary>
    /// 16 mm triple-wall sheet has R 2.4 to 2.7 (sheet data, read): the greenhouse factor, which ends at R 2.0 (read), is not to be had.
    /// </summary>
    [Theory]
    [InlineData(2.4), InlineData(2.5), InlineData(2.7)]
    public void Sixteen_mm_sheet_does_not_get_the_greenhouse_factor(double usR)
    {
        ThermalChoice choice = ThermalFactor.Of(
            new GroundSnow(1500, LoadEdition.Asce716), new RoofThermal(usR * UsUnits.M2KPerWPerUsR, 15, true));
        Assert.Equal(ThermalReason.RoofKeepsHeatIn, choice.Reason);
        Assert.Equal(1.0, choice.Factor);
    }

    /// <summary>7-22 table 7.3-3 as read in an open implementation, at its grid and between.</summary>
    [Theory]
    [InlineData(20, 10, 1.20), InlineData(20, 40, 1.01), InlineData(30, 30, 1.14), InlineData(40, 70, 1.15), InlineData(50, 20, 1.20)]
    [InlineData(25, 30, 1.095), InlineData(20, 25, 1.08), InlineData(60, 40, 1.2)]
    public void Heated_roofs_of_7_22(double usR, double groundPsf, double factor) =>
        Near(factor, ThermalFactor.Of(
            new GroundSnow(groundPsf * UsUnits.PaPerPsf, LoadEdition.Asce722), new RoofThermal(usR * UsUnits.M2KPerWPerUsR, 20, true)).Factor,
            1e-9);

    /// <summary>30 psf, W 25 ft, 3:12, ps 21: γ 17.90, hd 1.662 ft, surcharge 14.88 psf over 8.86 ft, windward 6.3 (7-16 formulae, computed).</summary>
    [Fact]
    public void Unbalanced_gable()
    {
        var section = new GableSection(3, 25 * UsUnits.MPerFt, 25 * UsUnits.MPerFt, 3, 3 + 6.25 * UsUnits.MPerFt, 30);
        RoofSnow snow = GableSnow.On(Site(30), section, 1.0);
        SnowCase drifted = snow.Cases.Single(c => c.Kind == SnowCaseKind.DriftedToRight);
        Near(17.90, SnowDensity.NPerM3(30 * UsUnits.PaPerPsf) / UsUnits.NPerM3PerPcf, 0.005);
        Near(1.662, GableSnow.DriftHeightM(Site(30), 25 * UsUnits.MPerFt) / UsUnits.MPerFt, 0.0005);
        Near(14.88, Psf(drifted.Right.SurchargePa), 0.005);
        Near(8.86, drifted.Right.SurchargeRunM / UsUnits.MPerFt, 0.005);
        Near(6.3, Psf(drifted.Left.UniformPa), 0.0005);
        Near(21.0, Psf(drifted.Right.UniformPa), 0.0005);
        Assert.Contains(snow.Cases, c => c.Kind == SnowCaseKind.DriftedToLeft);
    }

    /// <summary>
    /// Roof step, fetch 40 ft, step 4 ft: 7-16 with 25 psf gives hd 2.08 ft, 35.8 psf drift, 53 psf in all; 7-22 with 63 psf and W2 0.45
    /// gives 89 psf in all, the drift filled to the step (an engineering firm's article, read; half of the last digit).
    /// </summary>
    [Fact]
    public void Step_drift_by_both_editions()
    {
        SnowSite old = Site(25);
        double oldFlat = GableSnow.FlatPa(old, 1.0);
        StepDrift oldDrift = NeighbourSnow.LeewardDrift(old, oldFlat, 40 * UsUnits.MPerFt, 4 * UsUnits.MPerFt, 0);
        Near(2.08, oldDrift.HeightM / UsUnits.MPerFt, 0.005);
        Near(35.8, Psf(oldDrift.PeakPa), 0.1);
        Near(53.3, Psf(oldDrift.PeakPa + oldFlat), 0.1);

        SnowSite current = Site(63, LoadEdition.Asce722);
        double flat = GableSnow.FlatPa(current, 1.0);
        StepDrift drift = NeighbourSnow.LeewardDrift(current, flat, 40 * UsUnits.MPerFt, 4 * UsUnits.MPerFt, 0);
        Near(89, Psf(drift.PeakPa + flat), 0.5);
        Assert.True(drift.ReachM > 4 * drift.HeightM);
    }

    /// <summary>
    /// A joist maker's published drift sheet (read; the edition of 2005, whose drift height is that of 7-16 with importance 1): pg 20, fetch 35 ft, windward option,
    /// which is 0.75 of the leeward height: γ 16.6 pcf, 1.344 ft.
    /// </summary>
    [Fact]
    public void Drift_height_of_a_published_sheet()
    {
        Near(16.6, SnowDensity.NPerM3(20 * UsUnits.PaPerPsf) / UsUnits.NPerM3PerPcf, 0.0005);
        Near(1.344, 0.75 * GableSnow.DriftHeightM(Site(20), 35 * UsUnits.MPerFt) / UsUnits.MPerFt, 0.0005);
    }

    /// <summary>7-22 eq. 7.6-1 evaluated by hand: pg 63, lu 40, W2 0.45, γ 22.19: 1.5 √(21.45 · 13.23 · 0.2573 / 22.19) = 2.721 ft (computed).</summary>
    [Fact]
    public void Drift_height_of_7_22() =>
        Near(2.721, GableSnow.DriftHeightM(Site(63, LoadEdition.Asce722), 40 * UsUnits.MPerFt) / UsUnits.MPerFt, 0.003);
}
