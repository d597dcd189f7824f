using Glazewright.Science.Guards;

namespace Glazewright.Science.Light;

/// <summary>How the light a crop plane takes is shared by leaves and floor.</summary>
/// <param name="CanopyFraction">By the leaves.</param>
/// <param name="FloorFraction">By what is below.</param>
public readonly record struct CanopySplit(double CanopyFraction, double FloorFraction);

/// <summary>Light in a leaf canopy.</summary>
/// <remarks>
/// Beer's law in leaf area, Monsi &amp; Saeki 1953. Extinction 0.7 for photosynthetic light, 0.27 for near infrared, 0.5 for all sunlight where reflection is
/// not followed leaf by leaf (common practice, from memory).
/// </remarks>
public static class CanopyLight
{
    /// <summary>Extinction for photosynthetic light.</summary>
    public const double ParExtinction = 0.7;

    /// <summary>Extinction for near infrared.</summary>
    public const double NearInfraredExtinction = 0.27;

    /// <summary>Extinction for all sunlight.</summary>
    public const double BroadbandExtinction = 0.5;

    /// <summary>Share of light from above that leaves catch.</summary>
    /// <param name="leafAreaIndexRatio">Leaf area over floor area, 0 to 15.</param>
    /// <param name="extinctionRatio">0.1 to 1.5.</param>
    /// <returns>0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double CaughtFraction(double leafAreaIndexRatio, double extinctionRatio)
    {
        Within.Require(leafAreaIndexRatio, 0, 15);
        Within.Require(extinctionRatio, 0.1, 1.5);
        return 1 - Math.Exp(-extinctionRatio * leafAreaIndexRatio);
    }

    /// <summary>Reflectance of crop and floor together, seen from above.</summary>
    /// <param name="caughtFraction">Share that leaves catch, 0 to 1.</param>
    /// <param name="canopyReflectanceFraction">Of a dense canopy, 0 to 0.9 (broadband about 0.2).</param>
    /// <param name="floorReflectanceFraction">Of the floor, 0 to 0.9.</param>
    /// <returns>0 to 0.9.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double PlaneReflectance(
        double caughtFraction, double canopyReflectanceFraction, double floorReflectanceFraction)
    {
        Within.Require(caughtFraction, 0, 1);
        Within.Require(canopyReflectanceFraction, 0, 0.9);
        Within.Require(floorReflectanceFraction, 0, 0.9);
        return (caughtFraction * canopyReflectanceFraction) + ((1 - caughtFraction) * floorReflectanceFraction);
    }

    /// <summary>Shares of the absorbed light; they sum to 1.</summary>
    /// <param name="caughtFraction">Share that leaves catch, 0 to 1.</param>
    /// <param name="canopyReflectanceFraction">0 to 0.9.</param>
    /// <param name="floorReflectanceFraction">0 to 0.9.</param>
    /// <returns>Shares of what the crop plane absorbs.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static CanopySplit Split(
        double caughtFraction, double canopyReflectanceFraction, double floorReflectanceFraction)
    {
        double plane = PlaneReflectance(caughtFraction, canopyReflectanceFraction, floorReflectanceFraction);
        double canopy = caughtFraction * (1 - canopyReflectanceFraction) / (1 - plane);
        return new CanopySplit(canopy, 1 - canopy);
    }
}
