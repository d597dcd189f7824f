using CsCheck;
using Glazewright.Science.Air;

namespace Glazewright.Science.Tests.Air;

public class AirProcessTests
{
    private static readonly Gen<AirState> AnyAir = Gen.Select(
        Gen.Double[-20, 50], Gen.Double[0.02, 1], (t, h) => AirState.FromRelativeHumidity(t, h, 95_000));

    [Fact]
    public void Mixing_keeps_water_and_heat() => Gen.Select(AnyAir, AnyAir, Gen.Double[0.01, 20], Gen.Double[0.01, 20]).Sample((a, b, ma, mb) =>
    {
        WettedAir mixed = AirProcess.Mix(a, ma, b, mb);
        double water = (ma * a.HumidityRatio + mb * b.HumidityRatio) / (ma + mb);
        double heat = (ma * a.EnthalpyJPerKg + mb * b.EnthalpyJPerKg) / (ma + mb);
        double liquidJPerKg = mixed.LiquidKgPerKg * 4186 * mixed.State.DryBulbC;
        return Math.Abs(mixed.State.HumidityRatio + mixed.LiquidKgPerKg - water) < 1e-9
            && Math.Abs(mixed.State.EnthalpyJPerKg + liquidJPerKg - heat) < 1e-3
            && mixed.State.RelativeHumidityFraction <= 1 + 1e-6;
    });

    [Fact]
    public void Warm_damp_air_meeting_cold_makes_fog()
    {
        AirState warm = AirState.FromRelativeHumidity(25, 0.98, 101_325);
        AirState cold = AirState.FromRelativeHumidity(-15, 0.9, 101_325);
        Assert.True(AirProcess.Mix(warm, 1, cold, 1).LiquidKgPerKg > 1e-4);
        Assert.Throws<ArgumentOutOfRangeException>(() => AirProcess.Mix(warm, 0, cold, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => AirProcess.Mix(warm, 1, cold with { PressurePa = 90_000 }, 1));
    }

    [Fact]
    public void Fog_stops_at_saturation_and_raises_no_enthalpy_but_the_waters() =>
        Gen.Select(AnyAir.Where(a => a.DryBulbC > -19), Gen.Double[0, 0.03], Gen.Double[2, 30]).Sample((air, water, waterC) =>
        {
            WettedAir after = Fog.Spray(air, water, waterC);
            double taken = water - after.LiquidKgPerKg;
            return after.State.RelativeHumidityFraction <= 1 + 1e-6
                && taken >= 0
                && after.State.DryBulbC <= air.DryBulbC + 1e-9
                && Math.Abs(after.State.EnthalpyJPerKg - air.EnthalpyJPerKg - taken * 4186 * waterC) < 1e-3;
        });

    [Fact]
    public void Saturated_air_takes_no_fog()
    {
        AirState air = AirState.FromRelativeHumidity(22, 1, 101_325);
        WettedAir after = Fog.Spray(air, 0.002, 15);
        Assert.Equal(0.002, after.LiquidKgPerKg, 1e-9);
        Assert.Equal(22, after.State.DryBulbC, 1e-6);
    }

    [Fact]
    public void A_wet_wall_never_cools_below_the_wet_bulb() => Gen.Select(Gen.Double[5, 50], Gen.Double[0.05, 1], Gen.Double[0, 1]).Sample((t, h, e) =>
    {
        AirState air = AirState.FromRelativeHumidity(t, h, 90_000);
        if (air.WetBulbC < 0.5)
        {
            return true;
        }

        LeavingAir leaving = WetWall.Leaving(t, air.WetBulbC, 90_000, e);
        double backC = MoistAir.WetBulbC(leaving.DryBulbC, leaving.HumidityRatio, 90_000);
        return leaving.DryBulbC >= air.WetBulbC - 1e-9
            && leaving.HumidityRatio >= air.HumidityRatio - 1e-9
            && Math.Abs(backC - air.WetBulbC) < 1e-5;
    });

    [Fact]
    public void Cooling_below_the_dew_point_rains()
    {
        AirState air = AirState.FromRelativeHumidity(20, 0.8, 101_325);
        WettedAir cold = AirProcess.Heat(air, -25_000);
        Assert.True(cold.LiquidKgPerKg > 0.002);
        Assert.Equal(1, cold.State.RelativeHumidityFraction, 1e-6);
    }
}
