using CsCheck;
using Glazewright.Science.Air;

namespace Glazewright.Science.Tests.Air;

public class MoistAirTests
{
    private static readonly Gen<AirState> AnyAir = Gen.Select(
        Gen.Double[-40, 60], Gen.Double[0.01, 1], Gen.Double[60_000, 108_000], AirState.FromRelativeHumidity);

    [Fact]
    public void Wet_bulb_converges_over_the_whole_domain()
    {
        foreach (double pressurePa in (double[])[50_000, 75_000, 101_325, 110_000])
        {
            for (double dryBulbC = -60; dryBulbC <= 70; dryBulbC += 0.5)
            {
                double saturated = Saturation.HumidityRatio(dryBulbC, pressurePa);
                for (int i = 0; i <= 10; i++)
                {
                    double ratio = saturated * i / 10;
                    double wetBulbC = MoistAir.WetBulbC(dryBulbC, ratio, pressurePa);
                    Assert.InRange(wetBulbC, -100, dryBulbC);
                    if (wetBulbC >= -60)
                    {
                        double back = MoistAir.HumidityRatio(dryBulbC, wetBulbC, pressurePa);
                        Assert.Equal(ratio, back, 1e-9 + 1e-6 * ratio);
                    }
                }
            }
        }
    }

    [Fact]
    public void Dew_point_lies_below_wet_bulb_below_dry_bulb() => AnyAir.Sample(air =>
        air.DewPointC <= air.WetBulbC + 1e-6 && air.WetBulbC <= air.DryBulbC + 1e-9);

    [Fact]
    public void Dew_point_inverts_saturation() => AnyAir.Sample(air =>
        Math.Abs(Saturation.PressurePa(air.DewPointC) / air.VapourPressurePa - 1) < 1e-9);

    [Fact]
    public void Slope_is_the_derivative() => Gen.Double[-50, 90].Sample(t =>
    {
        // Across the triple point the two lines have different slopes: the difference quotient would straddle them.
        if (Math.Abs(t - Saturation.TriplePointC) < 0.01)
        {
            return true;
        }

        double quotient = (Saturation.PressurePa(t + 1e-3) - Saturation.PressurePa(t - 1e-3)) / 2e-3;
        return Math.Abs(Saturation.SlopePaPerK(t) / quotient - 1) < 1e-5;
    });

    [Fact]
    public void Saturation_rises_through_the_triple_point()
    {
        double before = Saturation.PressurePa(-1);
        for (double t = -1 + 1e-3; t < 1; t += 1e-3)
        {
            double now = Saturation.PressurePa(t);
            Assert.True(now > before, $"{t}");
            before = now;
        }

        Assert.Equal(611.657, Saturation.PressurePa(Saturation.TriplePointC), 0.2);
    }

    [Fact]
    public void Thinner_air_holds_more_vapour_per_kilogram() => Gen.Select(Gen.Double[-30, 60], Gen.Double[55_000, 100_000])
        .Sample((t, p) => Saturation.HumidityRatio(t, p) > Saturation.HumidityRatio(t, p + 5000));

    [Fact]
    public void States_from_each_pair_agree() => AnyAir.Sample(air =>
    {
        AirState dew = AirState.FromDewPoint(air.DryBulbC, air.DewPointC, air.PressurePa);
        AirState wet = air.WetBulbC > -60 ? AirState.FromWetBulb(air.DryBulbC, air.WetBulbC, air.PressurePa) : air;
        return Math.Abs(dew.HumidityRatio - air.HumidityRatio) < 1e-9 + 1e-8 * air.HumidityRatio
            && Math.Abs(wet.HumidityRatio - air.HumidityRatio) < 1e-9 + 1e-6 * air.HumidityRatio;
    });

    [Theory]
    [InlineData(double.NaN, 101_325)]
    [InlineData(81, 101_325)]
    [InlineData(20, 40_000)]
    [InlineData(20, double.NaN)]
    public void Out_of_range_is_refused(double dryBulbC, double pressurePa) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => AirState.FromRelativeHumidity(dryBulbC, 0.5, pressurePa));

    [Fact]
    public void A_wet_bulb_below_bone_dry_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => AirState.FromWetBulb(40, 5, 101_325));
        Assert.Throws<ArgumentOutOfRangeException>(() => WetWall.Leaving(40, 5, 101_325, 0.8));
        Assert.Throws<ArgumentOutOfRangeException>(() => AirState.FromHumidityRatio(20, 0.03, 101_325));
    }
}
