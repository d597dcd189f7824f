using Glazewright.Science.Guards;

namespace Glazewright.Science.Air;

/// <summary>Air after a process, with the liquid that dropped out of it or was never taken up.</summary>
/// <param name="State">The air.</param>
/// <param name="LiquidKgPerKg">Liquid water left over, kg per kg of dry air.</param>
public sealed record WettedAir(AirState State, double LiquidKgPerKg);

/// <summary>Steady processes of moist air: mixing and heating.</summary>
/// <remarks>ASHRAE Handbook—Fundamentals (2017, SI), ch. 1, "Typical air-conditioning processes"; from memory.</remarks>
public static class AirProcess
{
    /// <summary>Adiabatic mixing of two streams at one pressure. Where cold and warm moist air make fog, the surplus is returned as liquid.</summary>
    /// <param name="first">One stream.</param>
    /// <param name="firstKgPerS">Its dry air, kg/s, 0 to 1e6.</param>
    /// <param name="second">The other stream, at the same pressure.</param>
    /// <param name="secondKgPerS">Its dry air, kg/s, 0 to 1e6; not both zero.</param>
    /// <returns>The mixture and its liquid.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range, both flows zero, or two pressures.</exception>
    public static WettedAir Mix(AirState first, double firstKgPerS, AirState second, double secondKgPerS)
    {
        Within.Require(firstKgPerS, 0, 1e6);
        Within.Require(secondKgPerS, 0, 1e6);
        double totalKgPerS = firstKgPerS + secondKgPerS;
        Within.Require(totalKgPerS, double.Epsilon, 2e6);
        double pressurePa = first.PressurePa;
        Within.Require(second.PressurePa, pressurePa - 1, pressurePa + 1);
        double share = firstKgPerS / totalKgPerS;
        double ratio = share * first.HumidityRatio + (1 - share) * second.HumidityRatio;
        double enthalpy = share * first.EnthalpyJPerKg + (1 - share) * second.EnthalpyJPerKg;
        double dryBulbC = MoistAir.DryBulbOfEnthalpyC(enthalpy, ratio);
        double saturated = Saturation.RatioKernel(dryBulbC, pressurePa);
        return ratio <= saturated
            ? new WettedAir(new AirState(dryBulbC, ratio, pressurePa), 0)
            : Rained(enthalpy, ratio, dryBulbC, pressurePa);
    }

    /// <summary>Heating (or dry cooling) at constant humidity ratio.</summary>
    /// <param name="entering">Entering air.</param>
    /// <param name="heatJPerKg">Heat put in, J per kg of dry air, −100 000 to 100 000.</param>
    /// <returns>Leaving air; cooled below its dew point, it sheds liquid at constant enthalpy with what is left.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static WettedAir Heat(AirState entering, double heatJPerKg)
    {
        Within.Require(heatJPerKg, -100_000, 100_000);
        double enthalpy = entering.EnthalpyJPerKg + heatJPerKg;
        double dryBulbC = MoistAir.DryBulbOfEnthalpyC(enthalpy, entering.HumidityRatio);
        Within.Require(dryBulbC, -60, 80);
        return entering.HumidityRatio <= Saturation.RatioKernel(dryBulbC, entering.PressurePa)
            ? new WettedAir(entering with { DryBulbC = dryBulbC }, 0)
            : Rained(enthalpy, entering.HumidityRatio, dryBulbC, entering.PressurePa);
    }

    // Too much vapour for its temperature: it warms along the line of constant enthalpy until it is just saturated.
    private static WettedAir Rained(double enthalpyJPerKg, double ratio, double coldC, double pressurePa)
    {
        double lower = coldC;
        double upper = coldC + 60;
        while (upper - lower > 1e-10)
        {
            double middle = 0.5 * (lower + upper);
            double saturated = Saturation.RatioKernel(middle, pressurePa);
            double liquidJPerKg = Math.Max(ratio - saturated, 0) * MoistAir.WaterHeatJPerKgK * middle;
            if (MoistAir.EnthalpyKernel(middle, saturated) + liquidJPerKg < enthalpyJPerKg)
            {
                lower = middle;
            }
            else
            {
                upper = middle;
            }
        }

        double settledC = 0.5 * (lower + upper);
        double held = Saturation.RatioKernel(settledC, pressurePa);
        return new WettedAir(new AirState(settledC, held, pressurePa), Math.Max(ratio - held, 0));
    }
}
