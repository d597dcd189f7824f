using CsCheck;
using Glazewright.Science.Flow;

namespace Glazewright.Science.Tests.Flow;

public class FanSystemTests
{
    private static FanCurve Big() => FanCurve.Through(
        [new FanPoint(0, 10.0, 800), new FanPoint(12.5, 9.4, 860), new FanPoint(25, 8.6, 900), new FanPoint(37, 7.4, 920)]);

    private static FanCurve Small() => FanCurve.Through(
        [new FanPoint(0, 3.0, 300), new FanPoint(12.5, 2.7, 320), new FanPoint(25, 2.2, 340)]);

    private static readonly PadKind SixInch = new(0.85, 1.78, 22, 1.75, 2.3);

    [Fact]
    public void The_operating_point_lies_on_both_curves() =>
        Gen.Select(Gen.Int[0, 4], Gen.Int[0, 4], Gen.Double[1, 89.9], Gen.Double[0.3, 20], Gen.Double[0.5, 30]).Sample((big, small, openDeg, louverM2, padM2) =>
        {
            FanGroup[] fans = [new FanGroup(Big(), big), new FanGroup(Small(), small)];
            AirPath[] path =
            [
                new AirPath.Louver(louverM2, 0.8, openDeg, 0.62),
                new AirPath.Pad(padM2, SixInch),
                new AirPath.House(25, 1.5),
            ];
            Assert.True(FanSystem.TryFind(fans, path, 1.1, out OperatingPoint point));
            double loss = FanSystem.LossPa(path, point.FlowM3PerS, 1.1);
            double flow = FanSystem.Together(fans, point.StaticPa).FlowM3PerS;
            return Math.Abs(loss - point.StaticPa) < 0.1 && Math.Abs(flow - point.FlowM3PerS) < 1e-9;
        });

    [Fact]
    public void A_louver_closed_to_45_degrees_chokes_the_fans()
    {
        FanGroup[] fans = [new FanGroup(Big(), 2)];
        AirPath Louver(double openDeg) => new AirPath.Louver(6, 0.8, openDeg, 0.62);
        Assert.True(FanSystem.TryFind(fans, [Louver(90)], 1.2, out OperatingPoint open));
        Assert.True(FanSystem.TryFind(fans, [Louver(45)], 1.2, out OperatingPoint half));
        Assert.True(half.FlowM3PerS < 0.95 * open.FlowM3PerS);
        Assert.True(half.StaticPa > open.StaticPa);
        double loss = Louver(45).LossPa(half.FlowM3PerS, 1.2);
        Assert.Equal(half.StaticPa, loss, 0.1);
    }

    // Two straight lines by hand: one fan 10 − 0.08 p against an opening of C_d A √(2/ρ) = 2.
    [Fact]
    public void A_hand_worked_point()
    {
        FanCurve fan = FanCurve.Through([new FanPoint(0, 10, 1), new FanPoint(50, 6, 1)]);
        var opening = new AirPath.Opening(2 / Math.Sqrt(2 / 1.2) / 0.6, 0.6);
        Assert.True(FanSystem.TryFind([new FanGroup(fan, 1)], [opening], 1.2, out OperatingPoint point));
        // q = 2 √p and q = 10 − 0.08 p: √p = (−2 + √(4 + 3.2)) / 0.16.
        double root = (-2 + Math.Sqrt(4 + 4 * 0.08 * 10)) / 0.16;
        Assert.Equal(root * root, point.StaticPa, 1e-4);
        Assert.Equal(2 * root, point.FlowM3PerS, 1e-4);
    }

    [Fact]
    public void Past_the_tested_points_it_says_so()
    {
        AirPath[] path = [new AirPath.Opening(0.5, 0.6)];
        Assert.True(FanSystem.TryFind([new FanGroup(Big(), 4)], path, 1.2, out OperatingPoint point));
        Assert.True(point.BeyondTested);
        Assert.True(point.FlowM3PerS > 0);
    }

    [Fact]
    public void No_fan_no_air()
    {
        Assert.True(FanSystem.TryFind([], [new AirPath.Opening(1, 0.6)], 1.2, out OperatingPoint none));
        Assert.Equal(new OperatingPoint(0, 0, 0, false), none);
    }

    [Fact]
    public void Flow_falls_with_pressure_to_nothing() => Gen.Double[0, 300].Sample(p =>
        Big().At(p).FlowM3PerS >= Big().At(p + 1).FlowM3PerS && Big().At(p).FlowM3PerS >= 0);

    [Fact]
    public void Thinner_air_at_altitude_moves_nearly_the_same_volume_with_less_power()
    {
        AirPath[] path = [new AirPath.Pad(12, SixInch), new AirPath.Opening(5, 0.6)];
        FanSystem.TryFind([new FanGroup(Big(), 2)], path, 1.2, out OperatingPoint low);
        FanSystem.TryFind([new FanGroup(Big().AtDensity(0.96), 2)], path, 0.96, out OperatingPoint high);
        Assert.Equal(low.FlowM3PerS, high.FlowM3PerS, 1e-6);
        Assert.Equal(0.8 * low.StaticPa, high.StaticPa, 1e-6);
        Assert.Equal(0.8 * low.PowerW, high.PowerW, 1e-6);
    }

    [Fact]
    public void A_dirty_screen_costs_the_square()
    {
        double clean = new AirPath.Screen(10, 0.3, 0).LossPa(5, 1.2);
        Assert.Equal(4 * clean, new AirPath.Screen(10, 0.3, 0.5).LossPa(5, 1.2), 1e-9);
    }

    [Fact]
    public void Curves_that_rise_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => FanCurve.Through([new FanPoint(0, 5, 1), new FanPoint(10, 5.1, 1)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => FanCurve.Through([new FanPoint(0, 5, 1)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => FanCurve.Through([new FanPoint(5, 5, 1), new FanPoint(5, 4, 1)]));
    }

    [Fact]
    public void A_faster_pad_saturates_less_and_costs_more() => Gen.Double[0.1, 4].Sample(u =>
        SixInch.Effectiveness(u) > SixInch.Effectiveness(u * 1.1)
        && SixInch.LossPa(u, 1.2) < SixInch.LossPa(u * 1.1, 1.2)
        && Math.Abs(SixInch.Effectiveness(1.78) - 0.85) < 1e-12);

    [Fact]
    public void A_filter_fan_holds_less_when_a_door_stands_open()
    {
        Leakage leakage = Leakage.Through(0.3, 50, 0.65);
        FanCurve fan = FanCurve.Through([new FanPoint(0, 0.6, 100), new FanPoint(60, 0.3, 150)]);
        AirPath[] filter = [new AirPath.Opening(0.08, 0.6)];
        HeldPressure shut = PositivePressure.Held([new FanGroup(fan, 1)], filter, leakage, 0, 0.6, 1.2);
        HeldPressure open = PositivePressure.Held([new FanGroup(fan, 1)], filter, leakage, 1.9, 0.6, 1.2);
        Assert.True(shut.HousePa > 5 && open.HousePa < 0.5);
        Assert.True(shut.WindFailsMPerS > open.WindFailsMPerS);
        Assert.Equal(shut.SupplyM3PerS, leakage.FlowM3PerS(shut.HousePa), 1e-6);
        Assert.Equal(shut.FanStaticPa - shut.HousePa, filter[0].LossPa(shut.SupplyM3PerS, 1.2), 1e-6);
    }
}
