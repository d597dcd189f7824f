using Glazewright.Science.Guards;

namespace Glazewright.Science.Flow;

/// <summary>Friction in a round duct.</summary>
/// <param name="VelocityMPerS">Mean velocity, m/s.</param>
/// <param name="ReynoldsRatio">Reynolds number.</param>
/// <param name="FrictionFactor">Darcy friction factor.</param>
/// <param name="LossPa">Pressure lost, Pa.</param>
public sealed record DuctFriction(double VelocityMPerS, double ReynoldsRatio, double FrictionFactor, double LossPa);

/// <summary>Friction in round ducts and tubes.</summary>
public static class Duct
{
    /// <summary>Darcy friction factor.</summary>
    /// <param name="reynoldsRatio">Reynolds number, 1 to 1e9.</param>
    /// <param name="relativeRoughnessRatio">Roughness over diameter, 0 to 0.1.</param>
    /// <returns>Friction factor: 64/Re below 2300, else Colebrook.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>Colebrook (1939), J. Inst. Civ. Eng. 11:133, from memory; solved by fixed point in 1/√f, which contracts over the whole range.</remarks>
    public static double FrictionFactor(double reynoldsRatio, double relativeRoughnessRatio)
    {
        Within.Require(reynoldsRatio, 1, 1e9);
        Within.Require(relativeRoughnessRatio, 0, 0.1);
        if (reynoldsRatio < 2300)
        {
            return 64 / reynoldsRatio;
        }

        double x = 7;
        for (int step = 0; step < 60; step++)
        {
            double next = -2 * Math.Log10(relativeRoughnessRatio / 3.7 + 2.51 * x / reynoldsRatio);
            if (Math.Abs(next - x) < 1e-12)
            {
                return 1 / (next * next);
            }

            x = next;
        }

        return 1 / (x * x);
    }

    /// <summary>Pressure lost along a straight round duct with the same flow from end to end.</summary>
    /// <param name="diameterM">Diameter, m, 0.01 to 5.</param>
    /// <param name="lengthM">Length, m, 0 to 1000.</param>
    /// <param name="roughnessM">Roughness, m, 0 to a tenth of the diameter: 0.00009 for galvanised sheet.</param>
    /// <param name="flowM3PerS">Flow, m³/s, 1e-5 to 1000.</param>
    /// <param name="densityKgPerM3">Density, kg/m³, 0.5 to 1.6.</param>
    /// <param name="viscosityPaS">Dynamic viscosity, Pa s, 1e-5 to 3e-5.</param>
    /// <returns>Velocity, Reynolds number, friction factor, loss. A tube that gives its air off evenly loses about a third.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static DuctFriction Friction(
        double diameterM,
        double lengthM,
        double roughnessM,
        double flowM3PerS,
        double densityKgPerM3,
        double viscosityPaS)
    {
        Within.Require(diameterM, 0.01, 5);
        Within.Require(lengthM, 0, 1000);
        Within.Require(roughnessM, 0, 0.1 * diameterM);
        Within.Require(flowM3PerS, 1e-5, 1000);
        Within.Require(densityKgPerM3, 0.5, 1.6);
        Within.Require(viscosityPaS, 1e-5, 3e-5);
        double velocity = flowM3PerS / (Math.PI / 4 * diameterM * diameterM);
        double reynolds = densityKgPerM3 * velocity * diameterM / viscosityPaS;
        double factor = FrictionFactor(reynolds, roughnessM / diameterM);
        double loss = factor * lengthM / diameterM * 0.5 * densityKgPerM3 * velocity * velocity;
        return new DuctFriction(velocity, reynolds, factor, loss);
    }
}
