using Glazewright.Science.Guards;

namespace Glazewright.Science.Flow;

/// <summary>Free round jet of a fan whose head sweeps from side to side.</summary>
/// <remarks>
/// Centreline u = K u₀ √A₀ / x in the fully developed zone, K = 5.7 for a round free opening at 2.5 to 5 m/s (ASHRAE Fundamentals, Space Air Diffusion,
/// from memory). Gaussian profile across, half speed at 0.086 x from the axis (free round jet, turbulence textbooks, from memory). Isothermal, no foliage, no walls: a best case.
/// </remarks>
public static class SweptJet
{
    /// <summary>Decay constant of a round free opening at low speed.</summary>
    public const double DecayFactor = 5.7;

    /// <summary>Distance from the axis at half the centreline speed over the distance from the fan.</summary>
    public const double HalfWidthRatio = 0.086;

    /// <summary>Speed on the axis.</summary>
    /// <param name="flowM3PerS">Flow of the fan, m³/s, 0.01 to 50.</param>
    /// <param name="diameterM">Diameter, m, 0.1 to 3.</param>
    /// <param name="distanceM">Distance, m, 0.01 to 1000.</param>
    /// <returns>Speed, m/s; near the fan no more than its own.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double AxisMPerS(double flowM3PerS, double diameterM, double distanceM)
    {
        Within.Require(distanceM, 0.01, 1000);
        double areaM2 = AreaM2(flowM3PerS, diameterM);
        return Math.Min(DecayFactor * flowM3PerS / (Math.Sqrt(areaM2) * distanceM), flowM3PerS / areaM2);
    }

    /// <summary>Distance at which the axis has slowed to a wished speed.</summary>
    /// <param name="flowM3PerS">Flow of the fan, m³/s, 0.01 to 50.</param>
    /// <param name="diameterM">Diameter, m, 0.1 to 3.</param>
    /// <param name="wishedMPerS">Wished speed, m/s, 0.05 to 20.</param>
    /// <returns>Throw, m; 0 where the fan itself is slower.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double ThrowM(double flowM3PerS, double diameterM, double wishedMPerS)
    {
        Within.Require(wishedMPerS, 0.05, 20);
        double areaM2 = AreaM2(flowM3PerS, diameterM);
        return flowM3PerS / areaM2 < wishedMPerS ? 0 : DecayFactor * flowM3PerS / (Math.Sqrt(areaM2) * wishedMPerS);
    }

    /// <summary>Floor a sweep reaches between two walls: a sector about the line midway between them, cut off at the walls.</summary>
    /// <param name="radiusM">Radius, m, 0 to 1000.</param>
    /// <param name="sweepDeg">Whole arc, degrees, 1 to 179.</param>
    /// <param name="widthM">Distance of the walls, m, 0.1 to 1000.</param>
    /// <returns>Area, m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double CoveredM2(double radiusM, double sweepDeg, double widthM)
    {
        Within.Require(radiusM, 0, 1000);
        Within.Require(sweepDeg, 1, 179);
        Within.Require(widthM, 0.1, 1000);
        double halfRad = sweepDeg * Math.PI / 360;
        double halfM = widthM / 2;
        return radiusM * Math.Sin(halfRad) <= halfM
            ? halfRad * radiusM * radiusM
            : halfM * Math.Sqrt(radiusM * radiusM - halfM * halfM) + radiusM * radiusM * Math.Asin(halfM / radiusM) - halfM * halfM / Math.Tan(halfRad);
    }

    /// <summary>Time-mean over peak at a place the jet sweeps past at an even turning speed: ∫ of the profile over the arc.</summary>
    /// <param name="sweepDeg">Whole arc, degrees, 20 to 179.</param>
    /// <returns>Mean over peak.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double MeanToPeakRatio(double sweepDeg)
    {
        Within.Require(sweepDeg, 20, 179);
        return Math.Atan(HalfWidthRatio) * Math.Sqrt(Math.PI / Math.Log(2)) / (sweepDeg * Math.PI / 180);
    }

    private static double AreaM2(double flowM3PerS, double diameterM)
    {
        Within.Require(flowM3PerS, 0.01, 50);
        Within.Require(diameterM, 0.1, 3);
        return Math.PI / 4 * diameterM * diameterM;
    }
}
