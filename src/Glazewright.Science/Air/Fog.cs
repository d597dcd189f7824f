using Glazewright.Science.Guards;

namespace Glazewright.Science.Air;

/// <summary>Fog: water sprayed into the air cools it while it evaporates, and stops at saturation.</summary>
/// <remarks>First-law balance of dry air, vapour and water; ASHRAE Handbook—Fundamentals (2017, SI), ch. 1, "Adiabatic mixing of water injected into moist air", from memory.</remarks>
public static class Fog
{
    /// <summary>Air after water is sprayed into it without heat from outside.</summary>
    /// <param name="entering">Air before, −20 to 60 °C.</param>
    /// <param name="waterKgPerKg">Water sprayed, kg per kg of dry air, 0 to 0.1.</param>
    /// <param name="waterC">Its temperature, °C, 0 to 60.</param>
    /// <returns>Air after, and the water it could not take up (which falls on crop and floor; its own heat is left out).</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static WettedAir Spray(AirState entering, double waterKgPerKg, double waterC)
    {
        Within.Require(entering.DryBulbC, -20, 60);
        Within.Require(waterKgPerKg, 0, 0.1);
        Within.Require(waterC, 0, 60);
        double room = RoomKgPerKg(entering, waterC);
        double taken = Math.Min(waterKgPerKg, room);
        return new WettedAir(After(entering, taken, waterC), waterKgPerKg - taken);
    }

    /// <summary>Most water the air can take up without heat from outside.</summary>
    /// <param name="entering">Air before, −20 to 60 °C.</param>
    /// <param name="waterC">Temperature of the water, °C, 0 to 60.</param>
    /// <returns>kg per kg of dry air; 0 for saturated air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double RoomKgPerKg(AirState entering, double waterC)
    {
        Within.Require(entering.DryBulbC, -20, 60);
        Within.Require(waterC, 0, 60);
        double lower = 0;
        double upper = 0.05;
        while (upper - lower > 1e-12)
        {
            double middle = 0.5 * (lower + upper);
            double dryBulbC = TemperatureAfterC(entering, middle, waterC);
            if (entering.HumidityRatio + middle < Saturation.RatioKernel(dryBulbC, entering.PressurePa))
            {
                lower = middle;
            }
            else
            {
                upper = middle;
            }
        }

        return lower;
    }

    /// <summary>Heat a flow of water takes up as it evaporates.</summary>
    /// <param name="waterKgPerS">Water evaporated, kg/s, 0 to 100.</param>
    /// <returns>Heat taken from the air, W, with 2.45 MJ/kg (FAO-56's round value, near 20 °C).</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double CoolingW(double waterKgPerS)
    {
        Within.Require(waterKgPerS, 0, 100);
        return 2.45e6 * waterKgPerS;
    }

    private static AirState After(AirState entering, double takenKgPerKg, double waterC) => entering with
    {
        DryBulbC = TemperatureAfterC(entering, takenKgPerKg, waterC),
        HumidityRatio = entering.HumidityRatio + takenKgPerKg,
    };

    private static double TemperatureAfterC(AirState entering, double takenKgPerKg, double waterC) =>
        MoistAir.DryBulbOfEnthalpyC(
            MoistAir.EnthalpyKernel(entering.DryBulbC, entering.HumidityRatio)
                + takenKgPerKg * MoistAir.WaterHeatJPerKgK * waterC,
            entering.HumidityRatio + takenKgPerKg);
}
