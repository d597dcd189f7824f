using Glazewright.Science.Air;
using Glazewright.Science.Flow;

namespace Glazewright.Published.Tests.Science;

/// <summary>
/// Summer ventilation, pads and fog. Factor rule: ANSI/ASABE EP406 and the trade's standard form (from memory), cases computed from it. Circulation count: an
/// extension page (read). Pad and fog states: computed with psychrolib 1.1.1. Measured screens: Sensors 2016 16:690, abstract (read).
/// </summary>
public class GreenhouseVentilationCases
{
    private const double FootM = 0.3048;
    private const double CfmM3PerS = 0.000471947;
    private const double FootCandleLux = 53_800 / 5000.0;

    [Theory]
    [InlineData(1000, 1.037)]
    [InlineData(2000, 1.076)]
    [InlineData(3000, 1.116)]
    [InlineData(4000, 1.158)]
    [InlineData(5000, 1.202)]
    [InlineData(6000, 1.248)]
    [InlineData(8000, 1.346)]
    public void Elevation_factor(double elevationFt, double published) =>
        Assert.Equal(
            published,
            VentilationRules.Factored(100, StandardAtmosphere.PressurePa(elevationFt * FootM), 53_800, 7 / 1.8, 30.48).ElevationFactor,
            0.0006);

    [Theory]
    [InlineData(25, 2.00)]
    [InlineData(40, 1.58)]
    [InlineData(50, 1.414)]
    [InlineData(64, 1.25)]
    [InlineData(80, 1.118)]
    [InlineData(100, 1.00)]
    [InlineData(140, 1.00)]
    public void Distance_factor(double distanceFt, double published) =>
        Assert.Equal(
            published, VentilationRules.Factored(100, 101_325, 53_800, 7 / 1.8, distanceFt * FootM).DistanceFactor, 0.0015);

    // 0.05 %: 8 cfm/ft² and 5000 fc are converted with rounded constants.
    [Theory]
    [InlineData(30, 96, 0, 5000, 7, 23_515)]
    [InlineData(24, 48, 5000, 6000, 8, 13_302)]
    [InlineData(36, 100, 3000, 5000, 7, 32_133)]
    public void Factored_flow(double widthFt, double lengthFt, double elevationFt, double footCandles, double riseF, double publishedCfm)
    {
        FactoredVentilation rule = VentilationRules.Factored(
            widthFt * lengthFt * FootM * FootM,
            StandardAtmosphere.PressurePa(elevationFt * FootM),
            footCandles * FootCandleLux,
            riseF / 1.8,
            lengthFt * FootM);
        Assert.Equal(publishedCfm, rule.FlowM3PerS / CfmM3PerS, 0.0005 * publishedCfm);
    }

    [Theory]
    [InlineData(23_515, 250, 94.06)]
    [InlineData(23_515, 350, 67.2)]
    [InlineData(23_515, 400, 58.8)]
    [InlineData(13_302, 250, 53.2)]
    [InlineData(32_133, 250, 128.5)]
    public void Pad_area(double cfm, double feetPerMinute, double publishedFt2) =>
        Assert.Equal(
            publishedFt2,
            VentilationRules.PadAreaM2(cfm * CfmM3PerS, feetPerMinute * 0.00508) / (FootM * FootM),
            0.05);

    [Fact]
    public void Circulation_fans_of_a_30_by_100()
    {
        double floorM2 = 30 * 100 * FootM * FootM;
        Assert.Equal(6000, Circulation.FlowM3PerS(floorM2) / CfmM3PerS, 5.0);
        Assert.Equal(4, Circulation.FanCount(floorM2, 1600 * CfmM3PerS));
    }

    // Why 10 to 12 cfm/ft² is quoted in bright places: 800 W/m² × 0.65 × 0.5 sensible, 4 K. And what the 8 cfm rule carries at 7 °F.
    [Fact]
    public void What_the_rule_carries()
    {
        Assert.Equal(190.8, VentilationRules.BaseMPerS * 1207 * 7 / 1.8, 0.1);
        AirState air = AirState.FromHumidityRatio(20, 0, 101_325);
        double cellsJPerM3K = air.HeatJPerKgK / air.VolumeM3PerKg;
        Assert.Equal(10.6, 800 * 0.65 * 0.5 / (cellsJPerM3K * 4) / 0.00508, 0.06);
    }

    // 0.01 °C and 0.5 % of the water, as the case states.
    [Theory]
    [InlineData(35, 23.889, 0.80, 0, 26.111, 83.30, 4.196)]
    [InlineData(40.56, 21.1, 0.85, 340, 24.019, 77.62, 7.332)]
    [InlineData(33.7, 16.4, 0.75, 1167, 20.725, 66.23, 5.290)]
    [InlineData(43.4, 21.1, 0.80, 337, 25.560, 67.85, 7.828)]
    [InlineData(33.2, 15.7, 0.80, 1650, 19.200, 71.75, 5.389)]
    public void Pad_state(
        double dryBulbC, double wetBulbC, double effectiveness, double elevationM, double leavingC, double humidityPercent, double waterGPerM3)
    {
        double pressurePa = StandardAtmosphere.PressurePa(elevationM);
        LeavingAir leaving = WetWall.Leaving(dryBulbC, wetBulbC, pressurePa, effectiveness);
        Assert.Equal(leavingC, leaving.DryBulbC, 0.01);
        AirState after = AirState.FromHumidityRatio(leaving.DryBulbC, leaving.HumidityRatio, pressurePa);
        Assert.Equal(humidityPercent, 100 * after.RelativeHumidityFraction, 0.05);
        Assert.Equal(wetBulbC, after.WetBulbC, 1e-6);
        AirState before = AirState.FromWetBulb(dryBulbC, wetBulbC, pressurePa);
        Assert.Equal(waterGPerM3, 1000 * WetWall.EvaporationKgPerS(before, effectiveness, 1), 0.005 * waterGPerM3);
    }

    [Fact]
    public void Saturation_effectiveness() =>
        Assert.Equal(0.80, WetWall.Effectiveness((100 - 32) / 1.8, (76 - 32) / 1.8, (70 - 32) / 1.8), 1e-9);

    // 0.02 °C, 0.1 % humidity: printed digits plus the property choice.
    [Theory]
    [InlineData(32, 0.40, 0, 0.003, 24.81, 75.68)]
    [InlineData(30, 0.30, 1609, 0.004, 20.41, 74.66)]
    [InlineData(35, 0.25, 340, 0.005, 22.98, 77.00)]
    public void Fog_state(double dryBulbC, double humidity, double elevationM, double waterKgPerKg, double afterC, double afterPercent)
    {
        AirState before = AirState.FromRelativeHumidity(dryBulbC, humidity, StandardAtmosphere.PressurePa(elevationM));
        WettedAir after = Fog.Spray(before, waterKgPerKg, 20);
        Assert.Equal(afterC, after.State.DryBulbC, 0.02);
        Assert.Equal(afterPercent, 100 * after.State.RelativeHumidityFraction, 0.1);
        Assert.Equal(before.WetBulbC, after.State.WetBulbC, 0.02);
        Assert.Equal(0, after.LiquidKgPerKg);
    }

    [Fact]
    public void Fog_cooling_of_a_litre_an_hour() => Assert.Equal(680.6, Fog.CoolingW(1 / 3600.0), 0.1);

    // 23 040 cfm cooled 12 °F takes 33.7 gal/h; 2 % as the case states (round properties against the balance).
    [Fact]
    public void Fog_water_for_a_house()
    {
        AirState before = AirState.FromRelativeHumidity(35, 0.30, 101_325);
        double dryKgPerS = 23_040 * CfmM3PerS / (13.5 * 0.0624279606);
        double waterKgPerKg = 0.24 * 12 / 1050;
        double gallonsPerH = dryKgPerS * waterKgPerKg * 3600 / (8.345 * 0.45359237);
        Assert.Equal(33.7, gallonsPerH, 0.1);
        double cooledK = before.DryBulbC - Fog.Spray(before, waterKgPerKg, 20).State.DryBulbC;
        Assert.Equal(12 / 1.8, cooledK, 0.03 * 12 / 1.8);
    }

    // The same house held by the fog that is sought for it: 12 °F under 35 °C takes the published 33.7 gal/h, within the case's 2 %, with no sun and all of it at the intake.
    [Fact]
    public void Fog_sought_for_a_house()
    {
        AirState before = AirState.FromRelativeHumidity(35, 0.30, 101_325);
        double flow = 23_040 * CfmM3PerS / (13.5 * 0.0624279606) * before.VolumeM3PerKg;
        FogHeld held = FogHold.Least(before, flow, new AirLoad(0, 0, 35, 0, 0, 0, 0, 0), 35 - 12 / 1.8, 1, 0.95);
        Assert.True(held.Reached);
        Assert.Equal(0, held.AlongKgPerS, 1e-6);
        Assert.Equal(33.7, held.WaterKgPerS * 3600 / (8.345 * 0.45359237), 0.02 * 33.7);
    }

    [Theory]
    [InlineData(2, 1000, 1.023)]
    [InlineData(1.5, 3000, 2.303)]
    public void Fog_pump_power(double gallonsPerMinute, double psi, double publishedKW) =>
        Assert.Equal(
            publishedKW, PumpPower.ShaftW(gallonsPerMinute * 6.309020e-5, psi * 6894.757, 0.85) / 1000, 0.001 * publishedKW);

    // GH-6 air through 267.6 m² at 190 W/m² sensible: 3.79 K from pad to fans, and 29.9 °C at the fan end while it is 35 °C outside.
    [Fact]
    public void Pad_end_and_fan_end_differ()
    {
        LeavingAir pad = WetWall.Leaving(35, 23.889, 101_325, 0.80);
        AirState inlet = AirState.FromHumidityRatio(pad.DryBulbC, pad.HumidityRatio, 101_325);
        // The case's air is dry and of 1.2 kg/m³: give the march the same mass, first dry, then with the pad's vapour, which warms 3 % less.
        var load = new AirLoad(190 * 267.6, 0, 35, 0, 0, 0, 0, 0);
        AirState dry = inlet with { HumidityRatio = 0 };
        double dryKgPerS = 23_515 * CfmM3PerS * 1.2;
        AirRun case17 = AlongHouse.March(dry, dryKgPerS * dry.VolumeM3PerKg, load);
        Assert.Equal(3.79, case17.Stations[^1].DryBulbC - dry.DryBulbC, 0.01);
        Assert.Equal(29.9, case17.Stations[^1].DryBulbC, 0.05);
        AirRun run = AlongHouse.March(inlet, dryKgPerS * inlet.VolumeM3PerKg, load);
        Assert.Equal(3.79 / (1 + 1860 * inlet.HumidityRatio / 1006), run.Stations[^1].DryBulbC - inlet.DryBulbC, 0.01);
    }

    // TM-13, closed form: 5 g/s into 2 m³/s of air (ρ 1.2) raise it by 2.0833 g/kg.
    [Fact]
    public void Drying_flow_for_a_moisture_source()
    {
        AirState outside = AirState.FromHumidityRatio(15, 0.008, 101_325);
        AirState inside = AirState.FromHumidityRatio(20, 0.008 + 0.0020833, 101_325);
        double flow = AlongHouse.DryingFlowM3PerS(0.005, inside, outside);
        Assert.Equal(2.0 * 1.2, flow / outside.VolumeM3PerKg, 0.001);
    }

    [Theory]
    [InlineData(0.207, 0.875)]
    [InlineData(0.151, 1.645)]
    [InlineData(0.325, 0.355)]
    public void Insect_screen(double dischargeCoefficient, double publishedPa)
    {
        var screen = new AirPath.Screen(areaM2: 1, dischargeCoefficient, clogFraction: 0);
        Assert.Equal(publishedPa, screen.LossPa(0.25, 1.2), 0.001);
        Assert.Equal(4 * publishedPa, screen.LossPa(0.50, 1.2), 0.004);
    }

    // A supplier's page (read): 12 × 36 ft at 50 % shade takes 2,592 cfm, with an evaporative cooler 3,888.
    [Theory]
    [InlineData(false, 2592)]
    [InlineData(true, 3888)]
    public void Shade_rule(bool evaporative, double publishedCfm) =>
        Assert.Equal(publishedCfm, VentilationRules.ShadeRuleM3PerS(12 * 36 * FootM * FootM, 0.5, evaporative) / CfmM3PerS, 0.2);

    // A trade paper of 2011 (read): 10 cfm/ft² under a shade curtain, 12 without, 3 to 5 more with screen or pads.
    [Theory]
    [InlineData(true, false, 10, 10)]
    [InlineData(false, false, 12, 12)]
    [InlineData(true, true, 13, 15)]
    [InlineData(false, true, 15, 17)]
    public void Flat_rule(bool shaded, bool padOrScreen, double leastCfm, double mostCfm) =>
        Assert.InRange(VentilationRules.FlatRuleM3PerS(FootM * FootM, shaded, padOrScreen) / CfmM3PerS, leastCfm - 0.001, mostCfm + 0.001);
}
