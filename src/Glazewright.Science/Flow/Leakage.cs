using Glazewright.Science.Guards;

namespace Glazewright.Science.Flow;

/// <summary>The leaks of a house, by the power law Q = C ΔPⁿ.</summary>
/// <param name="CoefficientM3PerSPaN">C, m³/(s Paⁿ).</param>
/// <param name="Exponent">n, 0.5 (holes) to 1 (hair cracks); 0.65 is usual.</param>
/// <remarks>ASHRAE Handbook—Fundamentals, ch. 16, and ASTM E779; from memory.</remarks>
public sealed record Leakage(double CoefficientM3PerSPaN, double Exponent)
{
    /// <summary>Leakage from a flow at one pressure.</summary>
    /// <param name="flowM3PerS">Flow, m³/s, 0 to 1e4.</param>
    /// <param name="pressurePa">At this pressure, Pa, 0.5 to 500.</param>
    /// <param name="exponent">n, 0.5 to 1.</param>
    /// <returns>The law.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static Leakage Through(double flowM3PerS, double pressurePa, double exponent)
    {
        Within.Require(flowM3PerS, 0, 1e4);
        Within.Require(pressurePa, 0.5, 500);
        Within.Require(exponent, 0.5, 1);
        return new Leakage(flowM3PerS / Math.Pow(pressurePa, exponent), exponent);
    }

    /// <summary>Flow at a pressure.</summary>
    /// <param name="pressurePa">Pressure difference, Pa, 0 to 10 000.</param>
    /// <returns>Flow, m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public double FlowM3PerS(double pressurePa)
    {
        Within.Require(pressurePa, 0, 10_000);
        return CoefficientM3PerSPaN * Math.Pow(pressurePa, Exponent);
    }

    /// <summary>Effective leakage area: the nozzle that leaks as much.</summary>
    /// <param name="pressurePa">Reference pressure, Pa, 0.5 to 100; 4 is usual.</param>
    /// <param name="densityKgPerM3">Density, kg/m³, 0.5 to 1.6.</param>
    /// <returns>Area with discharge coefficient 1, m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public double EffectiveAreaM2(double pressurePa, double densityKgPerM3)
    {
        Within.Require(pressurePa, 0.5, 100);
        Within.Require(densityKgPerM3, 0.5, 1.6);
        return FlowM3PerS(pressurePa) * Math.Sqrt(densityKgPerM3 / (2 * pressurePa));
    }

    /// <summary>Infiltration by the Handbook's basic model: stack and wind terms added as squares.</summary>
    /// <param name="leakageAreaCm2">Effective leakage area at 4 Pa, cm², 0 to 1e6.</param>
    /// <param name="stackCoefficient">C_s, (L/s)²/(cm⁴ K), 0 to 0.001: 0.000145 for one storey, 0.000290 for two.</param>
    /// <param name="differenceK">Inside less outside, K, −80 to 80.</param>
    /// <param name="windCoefficient">C_w, (L/s)²/(cm⁴ (m/s)²), 0 to 0.001: 0.000104 one storey, 0.000231 two, by shelter.</param>
    /// <param name="windMPerS">Wind at the local station, m/s, 0 to 40.</param>
    /// <returns>Flow, m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>ASHRAE Handbook—Fundamentals, ch. 16, "basic model"; from memory.</remarks>
    public static double InfiltrationM3PerS(
        double leakageAreaCm2, double stackCoefficient, double differenceK, double windCoefficient, double windMPerS)
    {
        Within.Require(leakageAreaCm2, 0, 1e6);
        Within.Require(stackCoefficient, 0, 0.001);
        Within.Require(windCoefficient, 0, 0.001);
        Within.Require(differenceK, -80, 80);
        Within.Require(windMPerS, 0, 40);
        double driving = stackCoefficient * Math.Abs(differenceK) + windCoefficient * windMPerS * windMPerS;
        return leakageAreaCm2 / 1000 * Math.Sqrt(driving);
    }
}
