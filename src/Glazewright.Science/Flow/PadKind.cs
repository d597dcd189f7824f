using Glazewright.Science.Guards;

namespace Glazewright.Science.Flow;

/// <summary>A kind of wet pad, by what it does at one face velocity.</summary>
/// <param name="EffectivenessAtRated">Saturation effectiveness at the rated face velocity, 0.05 to 0.99.</param>
/// <param name="RatedFaceMPerS">Rated face velocity, m/s, 0.2 to 5.</param>
/// <param name="LossAtRatedPa">Pressure lost there, wet, at 1.2 kg/m³, Pa, 0.1 to 500.</param>
/// <param name="LossExponentRatio">Power with which the loss rises with face velocity, 1 to 2.5; 1.75 is common practice for corrugated pads.</param>
/// <param name="CarryOverMPerS">Face velocity above which drops blow off the pad, m/s.</param>
/// <remarks>
/// Effectiveness = 1 − exp(−B u^−0.35), B from the rated point: the number of transfer units falls with velocity as a corrugated pad's film
/// does (form from memory, common practice). Loss = rated × (u/u₀)^n × ρ/1.2.
/// </remarks>
public sealed record PadKind(
    double EffectivenessAtRated,
    double RatedFaceMPerS,
    double LossAtRatedPa,
    double LossExponentRatio,
    double CarryOverMPerS)
{
    private const double TransferExponent = 0.35;

    /// <summary>Saturation effectiveness at a face velocity.</summary>
    /// <param name="faceMPerS">Face velocity, m/s, 0.02 to 20.</param>
    /// <returns>Effectiveness, 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range, NaN, or a kind out of its own ranges.</exception>
    public double Effectiveness(double faceMPerS)
    {
        Within.Require(faceMPerS, 0.02, 20);
        Within.Require(EffectivenessAtRated, 0.05, 0.99);
        Within.Require(RatedFaceMPerS, 0.2, 5);
        double transferUnits = -Math.Log(1 - EffectivenessAtRated) * Math.Pow(faceMPerS / RatedFaceMPerS, -TransferExponent);
        return 1 - Math.Exp(-transferUnits);
    }

    /// <summary>Pressure lost through the wet pad.</summary>
    /// <param name="faceMPerS">Face velocity, m/s; negative counts as none.</param>
    /// <param name="densityKgPerM3">Density of the air, kg/m³.</param>
    /// <returns>Loss, Pa. Total: no guard, as solvers call it.</returns>
    public double LossPa(double faceMPerS, double densityKgPerM3) =>
        LossAtRatedPa * Math.Pow(Math.Max(faceMPerS, 0) / RatedFaceMPerS, LossExponentRatio)
            * densityKgPerM3 / FanCurve.StandardDensityKgPerM3;
}
