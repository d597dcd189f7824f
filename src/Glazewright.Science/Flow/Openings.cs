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

    /// <summary>Flow in and out through vents of one height alone: warm air leaves by the upper half of an opening, cold comes in by the lower.</summary>
    /// <param name="areaM2">Opening, m², 0 to 1e5.</param>
    /// <param name="heightM">Height of an opening, m, 0 to 20.</param>
    /// <param name="dischargeCoefficient">Discharge coefficient, 0.05 to 1.</param>
    /// <param name="insideC">Inside, °C, −40 to 80.</param>
    /// <param name="outsideC">Outside, °C, −60 to 60.</param>
    /// <param name="windCoefficient">Wind coefficient, 0 to 1: 0.07 to 0.12 for roof vents.</param>
    /// <param name="windMPerS">Wind, m/s, 0 to 40.</param>
    /// <returns>Flow, m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>Q = C_d A/2 √(2 g (T_i − T_o)/T_o h/4 + C_w v²); Boulard and Baille 1995, from memory: the law of the year's vents.</remarks>
    public static double OneSidedM3PerS(
        double areaM2, double heightM, double dischargeCoefficient, double insideC, double outsideC, double windCoefficient, double windMPerS)
    {
        Within.Require(areaM2, 0, 1e5);
        Within.Require(heightM, 0, 20);
        Within.Require(dischargeCoefficient, 0.05, 1);
        Within.Require(insideC, -40, 80);
        Within.Require(outsideC, -60, 60);
        Within.Require(windCoefficient, 0, 1);
        Within.Require(windMPerS, 0, 40);
        double buoyancy = 2 * GravityMPerS2 * Math.Max(insideC - outsideC, 0) / (outsideC + 273.15) * heightM / 4;
        return dischargeCoefficient * areaM2 / 2 * Math.Sqrt(buoyancy + windCoefficient * windMPerS * windMPerS);
    }

    /// <summary>Flow by stack and wind together.</summary>
    /// <param name="stackM3PerS">By stack alone, m³/s, 0 to 1e5.</param>
    /// <param name="windM3PerS">By wind alone, m³/s, 0 to 1e5.</param>
    /// <returns>Root of the sum of squares, m³/s: pressures add, flows do not.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>ASHRAE Handbook—Fundamentals, ch. 16; from memory.</remarks>
    public static double TogetherM3PerS(double stackM3PerS, double windM3PerS)
    {
        Within.Require(stackM3PerS, 0, 1e5);
        Within.Require(windM3PerS, 0, 1e5);
        return Math.Sqrt(stackM3PerS * stackM3PerS + windM3PerS * windM3PerS);
    }

    /// <summary>Air that trades places through a slot in a level cloth, warm and light below, cold and heavy above.</summary>
    /// <param name="widthM">Width of the slot, m, 0 to 50.</param>
    /// <param name="lengthM">Length, m, 0 to 1000.</param>
    /// <param name="belowC">Air below, °C, −40 to 80.</param>
    /// <param name="aboveC">Air above, °C, −60 to 80.</param>
    /// <returns>Flow each way, m³/s; 0 when the air below is not warmer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>
    /// Q = 0.055 √(g Δρ/ρ D⁵) through a square of side D in a thin plate (Epstein 1988, J. Heat Transfer 110:885, thin openings; from memory); a slot counts
    /// as a row of such squares, our own extension. Plumes, fans and wind through the leaks come on top.
    /// </remarks>
    public static double SlotExchangeM3PerS(double widthM, double lengthM, double belowC, double aboveC)
    {
        Within.Require(widthM, 0, 50);
        Within.Require(lengthM, 0, 1000);
        Within.Require(belowC, -40, 80);
        Within.Require(aboveC, -60, 80);
        double lighter = Math.Max(belowC - aboveC, 0) / (0.5 * (belowC + aboveC) + 273.15);
        return 0.055 * lengthM * widthM * Math.Sqrt(GravityMPerS2 * lighter * widthM);
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
