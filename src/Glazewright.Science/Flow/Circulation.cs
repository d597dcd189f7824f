using Glazewright.Science.Guards;

namespace Glazewright.Science.Flow;

/// <summary>Circulation fans (horizontal air flow) by the trade's rules.</summary>
/// <remarks>
/// University extension pages on horizontal air flow (read): 2 to 3 cfm per ft² of floor, 40 to 50 ft apart, first 10 to 15 ft from the end, throw about
/// 30 diameters, 50 to 100 ft/min at the crop. Rules of thumb: common practice, no proof of an even loop past benches and foliage.
/// </remarks>
public static class Circulation
{
    /// <summary>Two cfm per square foot, m/s.</summary>
    public const double FlowPerFloorMPerS = 2 * 0.00508;

    /// <summary>Throw in fan diameters.</summary>
    public const double ThrowDiametersRatio = 30;

    /// <summary>Air all circulation fans should move.</summary>
    /// <param name="floorM2">Floor area, m², 1 to 1e6.</param>
    /// <returns>Flow, m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double FlowM3PerS(double floorM2)
    {
        Within.Require(floorM2, 1, 1e6);
        return FlowPerFloorMPerS * floorM2;
    }

    /// <summary>Fans it takes.</summary>
    /// <param name="floorM2">Floor area, m², 1 to 1e6.</param>
    /// <param name="fanM3PerS">Free-air flow of one, m³/s, 0.01 to 50.</param>
    /// <returns>Count, rounded up.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static int FanCount(double floorM2, double fanM3PerS)
    {
        Within.Require(fanM3PerS, 0.01, 50);
        return (int)Math.Ceiling(FlowM3PerS(floorM2) / fanM3PerS - 1e-9);
    }

    /// <summary>Mean air speed a loop of fans keeps up in a house, by momentum against wall and crop drag.</summary>
    /// <param name="fanCount">Fans in the loop, 0 to 1000.</param>
    /// <param name="fanM3PerS">Free-air flow of one, m³/s, 0.01 to 50.</param>
    /// <param name="diameterM">Diameter of one, m, 0.1 to 3.</param>
    /// <param name="dragAreaM2">Drag area (drag coefficient × area) of walls, benches and crop along the loop, m², 0.01 to 1e5.</param>
    /// <returns>Mean speed of the loop, m/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>
    /// Thrust of the fans ρ Q v_jet = drag ½ ρ C A u²: a first estimate from a momentum balance, our own. Not checked against measurement; a dead
    /// corner behind a bench can be still while the mean is fine.
    /// </remarks>
    public static double LoopSpeedMPerS(int fanCount, double fanM3PerS, double diameterM, double dragAreaM2)
    {
        Within.Require(fanCount, 0, 1000);
        Within.Require(fanM3PerS, 0.01, 50);
        Within.Require(diameterM, 0.1, 3);
        Within.Require(dragAreaM2, 0.01, 1e5);
        double jetMPerS = fanM3PerS / (Math.PI / 4 * diameterM * diameterM);
        return Math.Sqrt(2 * fanCount * fanM3PerS * jetMPerS / dragAreaM2);
    }
}
