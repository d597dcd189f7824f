using Glazewright.Science.Guards;
using Glazewright.Science.Roots;

namespace Glazewright.Science.Flow;

/// <summary>A house kept above the outside pressure by filtered air.</summary>
/// <param name="HousePa">Pressure in the house over still outside air, Pa.</param>
/// <param name="SupplyM3PerS">Air the fan brings, m³/s.</param>
/// <param name="FanStaticPa">Static pressure across the fan (house and filter), Pa.</param>
/// <param name="BeyondTested">The fan works past its last tested point.</param>
/// <param name="WindFailsMPerS">Wind at which the windward wall sees more than the house holds, m/s: from there on air leaks in.</param>
public sealed record HeldPressure(
    double HousePa, double SupplyM3PerS, double FanStaticPa, bool BeyondTested, double WindFailsMPerS);

/// <summary>Positive pressure: what supply holds it, and what a fan can hold.</summary>
public static class PositivePressure
{
    /// <summary>Windward wall pressure coefficient used for the wind it fails at (common practice: 0.6 to 0.8).</summary>
    public const double WindwardCoefficient = 0.7;

    /// <summary>Air that holds a pressure.</summary>
    /// <param name="leakage">The house's leaks.</param>
    /// <param name="reliefM2">Open relief or crack, m², 0 to 1000.</param>
    /// <param name="dischargeCoefficient">Of the relief, 0.05 to 1.</param>
    /// <param name="pressurePa">Pressure to hold, Pa, 0 to 500.</param>
    /// <param name="densityKgPerM3">Density, kg/m³, 0.5 to 1.6.</param>
    /// <returns>Supply, m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double SupplyM3PerS(
        Leakage leakage, double reliefM2, double dischargeCoefficient, double pressurePa, double densityKgPerM3)
    {
        Within.Require(pressurePa, 0, 500);
        return leakage.FlowM3PerS(pressurePa)
            + Openings.OrificeM3PerS(reliefM2, dischargeCoefficient, pressurePa, densityKgPerM3);
    }

    /// <summary>What a filter fan holds against the leaks.</summary>
    /// <param name="fans">Supply fans, at the air's density.</param>
    /// <param name="filterPath">Filter and inlet, in series.</param>
    /// <param name="leakage">The house's leaks.</param>
    /// <param name="reliefM2">Open relief or crack, m², 0 to 1000.</param>
    /// <param name="dischargeCoefficient">Of the relief, 0.05 to 1.</param>
    /// <param name="densityKgPerM3">Density, kg/m³, 0.5 to 1.6.</param>
    /// <returns>The pressure held and the wind it fails at.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static HeldPressure Held(
        IReadOnlyList<FanGroup> fans,
        IReadOnlyList<AirPath> filterPath,
        Leakage leakage,
        double reliefM2,
        double dischargeCoefficient,
        double densityKgPerM3)
    {
        double shutOffPa = 0;
        foreach (FanGroup group in fans)
        {
            shutOffPa = group.Count > 0 ? Math.Max(shutOffPa, group.Curve.ShutOffPa) : shutOffPa;
        }

        if (shutOffPa == 0)
        {
            return new HeldPressure(0, 0, 0, false, 0);
        }

        double HousePa(double staticPa) =>
            staticPa - FanSystem.LossPa(filterPath, FanSystem.Together(fans, staticPa).FlowM3PerS, densityKgPerM3);
        double Surplus(double staticPa)
        {
            double housePa = Math.Max(HousePa(staticPa), 0);
            return FanSystem.Together(fans, staticPa).FlowM3PerS
                - leakage.FlowM3PerS(housePa)
                - Openings.OrificeM3PerS(reliefM2, dischargeCoefficient, housePa, densityKgPerM3);
        }

        double fanPa = Bracketed.Find(Surplus, 0, shutOffPa, 1e-9).Argument;
        FanOutput output = FanSystem.Together(fans, fanPa);
        double heldPa = Math.Max(HousePa(fanPa), 0);
        double failsMPerS = Math.Sqrt(2 * heldPa / (densityKgPerM3 * WindwardCoefficient));
        return new HeldPressure(heldPa, output.FlowM3PerS, fanPa, output.BeyondTested, failsMPerS);
    }
}
