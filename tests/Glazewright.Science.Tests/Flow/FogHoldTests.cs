using CsCheck;
using Glazewright.Science.Air;
using Glazewright.Science.Crop;
using Glazewright.Science.Flow;

namespace Glazewright.Science.Tests.Flow;

public class FogHoldTests
{
    private static readonly AirState Desert = AirState.FromWetBulb(38, 20, 97_000);

    private static AirLoad Load(double plantedM2) => new(
        SolarW: 60_000, ConductanceWPerK: 1500, OutsideC: 38, plantedM2, CropSolarWPerM2: 400, LeafAreaRatio: 2, SolarFactor: 0.35, DeficitWPerM2KPa: 18);

    // Without crop and walls: all heat over the way is the sun's less what the fog takes, whatever the air does between.
    [Fact]
    public void The_water_is_the_heat_that_has_to_go() => Gen.Select(Gen.Double[3, 20], Gen.Double[26, 37]).Sample((flow, wishC) =>
    {
        FogHeld held = FogHold.Least(Desert, flow, Load(0) with { ConductanceWPerK = 0 }, wishC, 10, 0.98);
        if (!held.Reached)
        {
            return true;
        }

        double dry = flow / Desert.VolumeM3PerKg;
        AirState last = held.Run.Stations[^1];
        double gained = dry * (last.EnthalpyJPerKg - Desert.EnthalpyJPerKg);
        // Enthalpy of air rises by the sun and by the liquid's own heat; the march takes 2.45 MJ/kg for all temperatures, the tables 2.43 to 2.50.
        double off = gained - 60_000 - held.IntakeKgPerS * 4186 * 15 - held.AlongKgPerS * (2.501e6 + 1860 * last.DryBulbC - Transpiration.LatentJPerKg);
        return Math.Abs(off) < 0.02 * 60_000 && held.Run.HottestC <= wishC + 1e-9;
    });

    [Fact]
    public void Less_water_does_not_hold() => Gen.Select(Gen.Double[4, 20], Gen.Double[27, 34]).Sample((flow, wishC) =>
    {
        FogHeld held = FogHold.Least(Desert, flow, Load(150), wishC, 10, 0.95);
        FogHeld less = FogHold.Least(Desert, flow, Load(150), wishC, 0.98 * held.WaterKgPerS, 0.95);
        return !held.Reached || held.WaterKgPerS <= 0 || (!less.Reached && less.Run.HottestC > wishC);
    });

    [Fact]
    public void No_air_gets_damper_than_allowed_and_what_is_left_is_the_best() => Gen.Select(Gen.Double[2, 20], Gen.Double[15, 24]).Sample((flow, wishC) =>
    {
        FogHeld held = FogHold.Least(Desert, flow, Load(100), wishC, 10, 0.9);
        double damp = Math.Max(held.Run.DampestFraction, Desert.RelativeHumidityFraction);
        FogHeld half = FogHold.Least(Desert, flow, Load(100), wishC, 0.5 * held.WaterKgPerS, 0.9);
        return damp <= 0.9 + 1e-6 && (held.Reached || half.Run.HottestC > held.Run.HottestC);
    });

    [Fact]
    public void Air_that_is_cool_enough_takes_no_fog()
    {
        FogHeld held = FogHold.Least(Desert, 12, Load(100), 70, 10, 0.9);
        Assert.True(held.Reached);
        Assert.Equal(0, held.WaterKgPerS);
        FogHeld damp = FogHold.Least(AirState.FromRelativeHumidity(30, 0.95, 97_000), 12, Load(0), 25, 10, 0.9);
        Assert.False(damp.Reached);
        Assert.Equal(0, damp.IntakeKgPerS);
    }

    // Air at its fog limit takes up no more in All than the room there is: the rest along the way, saturated at most.
    [Fact]
    public void All_of_the_fog_saturates_at_most()
    {
        FogHeld all = FogHold.All(Desert, 5, Load(0) with { SolarW = 100 }, 1, 0.92);
        AirRun run = all.Run;
        Assert.InRange(run.DampestFraction, 0.99, 1 + 1e-9);
        Assert.InRange(all.WaterKgPerS, all.IntakeKgPerS, 0.5);
        Assert.Throws<ArgumentOutOfRangeException>(() => FogHold.All(Desert, 5, Load(0), -1, 0.9));
    }
}
