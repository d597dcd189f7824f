using Glazewright.Science.Guards;

namespace Glazewright.Science.Air;

/// <summary>Air that leaves a wet wall.</summary>
/// <param name="DryBulbC">Leaving dry bulb, °C.</param>
/// <param name="HumidityRatio">Leaving humidity ratio, kg/kg dry air.</param>
public sealed record LeavingAir(double DryBulbC, double HumidityRatio);

/// <summary>A wet wall (evaporative pad): air cools along its wet-bulb line, as far as the pad's effectiveness lets it.</summary>
public static class WetWall
{
    /// <summary>State of the air that leaves the pad.</summary>
    /// <param name="dryBulbC">Entering dry bulb, °C, 0 to 60 (a wet wall does not run in frost).</param>
    /// <param name="wetBulbC">Entering wet bulb, °C, up to the dry bulb (within 0.001 K of it counts as saturated).</param>
    /// <param name="pressurePa">Barometric pressure, Pa, 50 000 to 110 000.</param>
    /// <param name="effectiveness">Saturation effectiveness at this face velocity, 0 to 1.</param>
    /// <returns>Leaving dry bulb, °C, and humidity ratio, kg/kg dry air; the wet bulb is unchanged.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN, or a wet bulb lower than bone-dry air could have.</exception>
    /// <remarks>Effectiveness = (t₁ − t₂)/(t₁ − t*): ASHRAE Handbook—HVAC Systems and Equipment, "Evaporative air-cooling equipment", from memory. Limits: docs/methods/air-and-plant.md.</remarks>
    public static LeavingAir Leaving(double dryBulbC, double wetBulbC, double pressurePa, double effectiveness)
    {
        Within.Require(dryBulbC, 0, 60);
        Within.Require(wetBulbC, -20, dryBulbC + 0.001);
        wetBulbC = Math.Min(wetBulbC, dryBulbC);
        Within.Require(pressurePa, 50_000, 110_000);
        Within.Require(effectiveness, 0, 1);
        if (MoistAir.HumidityRatio(dryBulbC, wetBulbC, pressurePa) < 0)
        {
            throw new ArgumentOutOfRangeException(nameof(wetBulbC), wetBulbC, "Lower than bone-dry air's wet bulb.");
        }

        double leavingC = dryBulbC - effectiveness * (dryBulbC - wetBulbC);
        return new LeavingAir(leavingC, MoistAir.HumidityRatio(leavingC, wetBulbC, pressurePa));
    }

    /// <summary>Water a wet wall evaporates.</summary>
    /// <param name="entering">Entering air.</param>
    /// <param name="effectiveness">Saturation effectiveness, 0 to 1.</param>
    /// <param name="flowM3PerS">Air flow at the entering state, m³/s, 0 to 10 000.</param>
    /// <returns>Water evaporated, kg/s. Bleed is extra.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double EvaporationKgPerS(AirState entering, double effectiveness, double flowM3PerS)
    {
        Within.Require(flowM3PerS, 0, 10_000);
        LeavingAir leaving = Leaving(entering.DryBulbC, entering.WetBulbC, entering.PressurePa, effectiveness);
        // Saturated air takes none; rounding must not make it give some back.
        return flowM3PerS / entering.VolumeM3PerKg * Math.Max(leaving.HumidityRatio - entering.HumidityRatio, 0);
    }

    /// <summary>Saturation effectiveness from measured temperatures.</summary>
    /// <param name="enteringC">Entering dry bulb, °C, above the wet bulb.</param>
    /// <param name="leavingC">Leaving dry bulb, °C, between wet bulb and entering.</param>
    /// <param name="wetBulbC">Entering wet bulb, °C.</param>
    /// <returns>Effectiveness, 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not in that order, or NaN.</exception>
    public static double Effectiveness(double enteringC, double leavingC, double wetBulbC)
    {
        Within.Require(enteringC, wetBulbC + 1e-6, 80);
        Within.Require(leavingC, wetBulbC, enteringC);
        return (enteringC - leavingC) / (enteringC - wetBulbC);
    }
}
