using Glazewright.Science.Guards;

namespace Glazewright.Science.Flow;

/// <summary>Buoyancy flow through a low and a high opening.</summary>
/// <param name="FlowM3PerS">Air through both, m³/s; 0 when the inside is not warmer.</param>
/// <param name="PressurePa">Stack pressure between them, Pa.</param>
/// <param name="NeutralAboveLowM">Height of the neutral plane above the low opening, m.</param>
public sealed record StackFlow(double FlowM3PerS, double PressurePa, double NeutralAboveLowM);

/// <summary>Air through openings: by pressure, by warmth, by wind, by leaks.</summary>
public static class Openings
{
    private const double GravityMPerS2 = 9.81;
    private const double DensityTimesKelvin = 353;

    /// <summary>Flow through an orifice.</summary>
    /// <param name="areaM2">Area, m², 0 to 1e5.</param>
    /// <param name="dischargeCoefficient">Discharge coefficient, 0.02 to 1.</param>
    /// <param name="pressurePa">Pressure difference, Pa, 0 to 10 000.</param>
    /// <param name="densityKgPerM3">Density, kg/m³, 0.5 to 1.6.</param>
    /// <returns>Flow, m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double OrificeM3PerS(
        double areaM2, double dischargeCoefficient, double pressurePa, double densityKgPerM3)
    {
        Within.Require(areaM2, 0, 1e5);
        Within.Require(dischargeCoefficient, 0.02, 1);
        Within.Require(pressurePa, 0, 10_000);
        Within.Require(densityKgPerM3, 0.5, 1.6);
        return dischargeCoefficient * areaM2 * Math.Sqrt(2 * pressurePa / densityKgPerM3);
    }

    /// <summary>Stack (buoyancy) flow through a low and a high opening, no wind.</summary>
    /// <param name="lowM2">Low opening, m², 1e-4 to 1e5.</param>
    /// <param name="highM2">High opening, m², 1e-4 to 1e5.</param>
    /// <param name="heightM">Between their middles, m, 0 to 100.</param>
    /// <param name="dischargeCoefficient">Of both, 0.05 to 1.</param>
    /// <param name="insideC">Inside, °C, −40 to 80.</param>
    /// <param name="outsideC">Outside, °C, −60 to 60.</param>
    /// <returns>Flow, pressure and neutral plane.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>
    /// Q = C_d A_e √(2 g h (T_i − T_o)/T_o), A_e = 1/√(1/A₁² + 1/A₂²); ASHRAE Handbook—Fundamentals, ch. 16, from memory. With T_i below the
    /// line the result is 1.7 % lower at 10 K; both stand in handbooks, the flow here is at the inside density. Pressure with ρ = 353/T.
    /// </remarks>
    public static StackFlow Stack(
        double lowM2, double highM2, double heightM, double dischargeCoefficient, double insideC, double outsideC)
    {
        Within.Require(lowM2, 1e-4, 1e5);
        Within.Require(highM2, 1e-4, 1e5);
        Within.Require(heightM, 0, 100);
        Within.Require(dischargeCoefficient, 0.05, 1);
        Within.Require(insideC, -40, 80);
        Within.Require(outsideC, -60, 60);
        double insideK = insideC + 273.15;
        double outsideK = outsideC + 273.15;
        double warmerK = Math.Max(insideK - outsideK, 0);
        double effectiveM2 = 1 / Math.Sqrt(1 / (lowM2 * lowM2) + 1 / (highM2 * highM2));
        double flow = dischargeCoefficient * effectiveM2
            * Math.Sqrt(2 * GravityMPerS2 * heightM * warmerK / outsideK);
        double pressurePa = GravityMPerS2 * heightM * DensityTimesKelvin * (1 / outsideK - 1 / insideK);
        // The same air leaves high and lighter: the larger opening takes the smaller share of the pressure.
        double ratio = lowM2 / highM2;
        double neutralM = heightM / (1 + ratio * ratio * outsideK / insideK);
        return new StackFlow(flow, Math.Max(pressurePa, 0), neutralM);
    }

    /// <summary>Wind-driven flow through an inlet with as much outlet.</summary>
    /// <param name="effectiveness">C_v: 0.25 to 0.35 for oblique wind, 0.5 to 0.6 square on; 0.05 to 1.</param>
    /// <param name="areaM2">Inlet area, m², 0 to 1e5.</param>
    /// <param name="windMPerS">Wind, m/s, 0 to 40.</param>
    /// <returns>Flow, m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>ASHRAE Handbook—Fundamentals, ch. 16; from memory.</remarks>
    public static double WindM3PerS(double effectiveness, double areaM2, double windMPerS)
    {
        Within.Require(effectiveness, 0.05, 1);
        Within.Require(areaM2, 0, 1e5);
        Within.Require(windMPerS, 0, 40);
        return effectiveness * areaM2 * windMPerS;
    }

    /// <summary>Velocity whose head is a pressure.</summary>
    /// <param name="pressurePa">Velocity pressure, Pa, 0 to 10 000.</param>
    /// <param name="densityKgPerM3">Density, kg/m³, 0.5 to 1.6.</param>
    /// <returns>Velocity, m/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double VelocityMPerS(double pressurePa, double densityKgPerM3)
    {
        Within.Require(pressurePa, 0, 10_000);
        Within.Require(densityKgPerM3, 0.5, 1.6);
        return Math.Sqrt(2 * pressurePa / densityKgPerM3);
    }
}
