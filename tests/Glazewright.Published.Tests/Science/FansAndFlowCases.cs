using Glazewright.Science.Flow;

namespace Glazewright.Published.Tests.Science;

/// <summary>
/// Fan laws, orifices, stack, wind, leakage and ducts: closed forms computed with numpy; ASHRAE Handbook—Fundamentals ch. 16 coefficients from memory;
/// friction factors also in a public table quoted by a library's test file (read at second hand).
/// </summary>
public class FansAndFlowCases
{
    private const double InchWaterPa = 249.09;
    private const double CfmM3PerS = 0.000471947;

    private static FanCurve Rated() => FanCurve.Through(
    [
        new FanPoint(0, 11_000 * CfmM3PerS, 700),
        new FanPoint(0.100 * InchWaterPa, 10_000 * CfmM3PerS, 745.7),
        new FanPoint(0.150 * InchWaterPa, 9_000 * CfmM3PerS, 800),
    ]);

    [Fact]
    public void Fan_laws_from_540_to_600_rpm()
    {
        FanPoint point = Rated().AtSpeed(600 / 540.0).Points[1];
        Assert.Equal(11_111, point.FlowM3PerS / CfmM3PerS, 0.5);
        Assert.Equal(0.1235, point.StaticPa / InchWaterPa, 0.00005);
        Assert.Equal(1.3717, point.PowerW / 745.7, 0.0001);
    }

    [Fact]
    public void Fan_laws_at_seven_tenths()
    {
        FanPoint full = Rated().Points[1];
        FanPoint slow = Rated().AtSpeed(0.7).Points[1];
        Assert.Equal(0.70, slow.FlowM3PerS / full.FlowM3PerS, 1e-9);
        Assert.Equal(0.49, slow.StaticPa / full.StaticPa, 1e-9);
        Assert.Equal(0.343, slow.PowerW / full.PowerW, 1e-9);
    }

    // 0.0624 against 0.075 lb/ft³.
    [Fact]
    public void Fan_in_thin_air()
    {
        FanPoint full = Rated().Points[1];
        FanPoint thin = Rated().AtDensity(1.2 * 0.0624 / 0.075).Points[1];
        Assert.Equal(full.FlowM3PerS, thin.FlowM3PerS, 1e-12);
        Assert.Equal(0.832, thin.StaticPa / full.StaticPa, 1e-9);
        Assert.Equal(0.832, thin.PowerW / full.PowerW, 1e-9);
    }

    // v = 4005 √p in fpm and in. w.g.: standard air, 0.075 lb/ft³ (1.2014 kg/m³), and a water column at 20 °C (998.2 kg/m³), not the 4 °C of the unit.
    [Theory]
    [InlineData(0.0305, 700, 0.6)]
    [InlineData(0.05, 895.5, 0.1)]
    [InlineData(0.03, 693.7, 0.1)]
    public void Velocity_pressure(double inches, double publishedFpm, double toleranceFpm) =>
        Assert.Equal(publishedFpm, Openings.VelocityMPerS(inches * 0.0254 * 998.2 * 9.80665, 1.2014) / 0.00508, toleranceFpm);

    [Theory]
    [InlineData(0.6, 1, 10, 2.449)]
    [InlineData(0.61, 0.5, 25, 1.969)]
    [InlineData(0.61, 0.02, 20, 0.0704)]
    public void Orifice(double coefficient, double areaM2, double pressurePa, double published) =>
        Assert.Equal(published, Openings.OrificeM3PerS(areaM2, coefficient, pressurePa, 1.2), 0.0005);

    // 0.5 %, as the case states: densities differ between handbooks.
    [Fact]
    public void Stack()
    {
        StackFlow even = Openings.Stack(lowM2: 2, highM2: 2, heightM: 3, 0.65, insideC: 30, outsideC: 20);
        Assert.Equal(1.169, even.PressurePa, 0.005 * 1.169);
        Assert.Equal(1.303, even.FlowM3PerS, 0.005 * 1.303);
        StackFlow uneven = Openings.Stack(lowM2: 4, highM2: 2, heightM: 3.5, 0.6, insideC: 32, outsideC: 24);
        Assert.Equal(1.069, uneven.PressurePa, 0.005 * 1.069);
        Assert.Equal(1.459, uneven.FlowM3PerS, 0.005 * 1.459);
        Assert.Equal(0.715, uneven.NeutralAboveLowM, 0.005 * 0.715);
    }

    [Fact]
    public void Wind() => Assert.Equal(4.2, Openings.WindM3PerS(0.35, 4, 3), 1e-9);

    [Fact]
    public void Leaks_by_the_power_law()
    {
        Leakage leakage = Leakage.Through(flowM3PerS: 0.5, pressurePa: 50, exponent: 0.65);
        Assert.Equal(0.03932, leakage.CoefficientM3PerSPaN, 0.005 * 0.03932);
        Assert.Equal(0.09682, leakage.FlowM3PerS(4), 0.005 * 0.09682);
        Assert.Equal(0.17565, leakage.FlowM3PerS(10), 0.005 * 0.17565);
        Assert.Equal(0.2031, leakage.FlowM3PerS(12.5), 0.005 * 0.2031);
        Assert.Equal(0.3186, leakage.FlowM3PerS(25), 0.005 * 0.3186);
        Assert.Equal(0.0375, leakage.EffectiveAreaM2(4, 1.2), 0.005 * 0.0375);
        Assert.Equal(
            0.2588, PositivePressure.SupplyM3PerS(leakage, reliefM2: 0.02, 0.61, 12.5, 1.2), 0.005 * 0.2588);
    }

    [Fact]
    public void A_filter_fan_finds_the_same_pressure()
    {
        Leakage leakage = Leakage.Through(flowM3PerS: 0.5, pressurePa: 50, exponent: 0.65);
        FanCurve fan = FanCurve.Through([new FanPoint(0, 0.2588 + 0.05, 100), new FanPoint(12.5, 0.2588, 120), new FanPoint(25, 0.18, 130)]);
        HeldPressure held = PositivePressure.Held([new FanGroup(fan, 1)], [], leakage, 0.02, 0.61, 1.2);
        Assert.Equal(12.5, held.HousePa, 0.005 * 12.5);
        Assert.Equal(Math.Sqrt(2 * held.HousePa / (1.2 * 0.7)), held.WindFailsMPerS, 1e-9);
    }

    [Fact]
    public void Basic_infiltration_model()
    {
        Assert.Equal(0.0736, Leakage.InfiltrationM3PerS(500, 0.000290, 39, 0.000231, 6.7), 0.005 * 0.0736);
        Assert.Equal(0.0364, Leakage.InfiltrationM3PerS(500, 0.000145, 25, 0.000104, 4), 0.005 * 0.0364);
    }

    [Theory]
    [InlineData(5e3, 0.001, 0.0385)]
    [InlineData(1e4, 0.001, 0.0324)]
    [InlineData(1e5, 0.001, 0.0222)]
    [InlineData(1e6, 0.001, 0.0199)]
    [InlineData(1e5, 0.01, 0.0385)]
    [InlineData(1e5, 0.0001, 0.01851)]
    [InlineData(2e5, 0, 0.01564)]
    [InlineData(1000, 0.001, 0.064)]
    public void Friction_factor(double reynolds, double roughness, double published) =>
        Assert.Equal(published, Duct.FrictionFactor(reynolds, roughness), 0.0001);

    // The case's "smooth" tube gives its numbers with a micrometre of roughness; hydraulically smooth is 0.1 % lower.
    [Theory]
    [InlineData(0.5, 20, 0.00009, 1, 5.093, 0.01740, 10.87)]
    [InlineData(0.3, 30, 0.00009, 0.35, 4.951, 0.01953, 28.83)]
    [InlineData(0.6096, 29.26, 1e-6, 1.888, 6.468, 0.01488, 17.98)]
    public void Duct_loss(
        double diameterM, double lengthM, double roughnessM, double flow, double velocity, double factor, double publishedPa)
    {
        DuctFriction duct = Duct.Friction(diameterM, lengthM, roughnessM, flow, 1.204, 1.825e-5);
        Assert.Equal(velocity, duct.VelocityMPerS, 0.001);
        Assert.Equal(factor, duct.FrictionFactor, 0.00001);
        Assert.Equal(publishedPa, duct.LossPa, 0.01);
    }
}
