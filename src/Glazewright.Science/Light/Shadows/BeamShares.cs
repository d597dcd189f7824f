namespace Glazewright.Science.Light.Shadows;

/// <summary>
/// What becomes of light on its straight way to a plane inside, as shares of what would fall on the plane in open country. They sum to 1.
/// </summary>
/// <param name="AroundFraction">Kept off by skyline and neighbours.</param>
/// <param name="OpaqueRoofFraction">Meets opaque roof.</param>
/// <param name="OpaqueWallFraction">Meets opaque wall, door, fan or wet wall.</param>
/// <param name="FrameFraction">Caught by members, bars and sheet joints.</param>
/// <param name="EquipmentFraction">Caught by equipment that hangs inside.</param>
/// <param name="CurtainFraction">Caught by the parked curtain.</param>
/// <param name="CoverFraction">Thrown back or kept by the clean covering.</param>
/// <param name="StateFraction">Lost to dirt and ageing of the covering.</param>
/// <param name="ScatteredFraction">Passes, but scattered by the covering.</param>
/// <param name="ArrivesFraction">Falls on the plane unscattered.</param>
public readonly record struct BeamShares(
    double AroundFraction,
    double OpaqueRoofFraction,
    double OpaqueWallFraction,
    double FrameFraction,
    double EquipmentFraction,
    double CurtainFraction,
    double CoverFraction,
    double StateFraction,
    double ScatteredFraction,
    double ArrivesFraction)
{
    /// <summary>Sum of the shares: 1, or the sum of the weights.</summary>
    public double SumFraction => AroundFraction + OpaqueRoofFraction + OpaqueWallFraction + FrameFraction + EquipmentFraction
        + CurtainFraction + CoverFraction + StateFraction + ScatteredFraction + ArrivesFraction;

    /// <summary>Sum of two.</summary>
    public static BeamShares operator +(BeamShares a, BeamShares b) => new(
        a.AroundFraction + b.AroundFraction,
        a.OpaqueRoofFraction + b.OpaqueRoofFraction,
        a.OpaqueWallFraction + b.OpaqueWallFraction,
        a.FrameFraction + b.FrameFraction,
        a.EquipmentFraction + b.EquipmentFraction,
        a.CurtainFraction + b.CurtainFraction,
        a.CoverFraction + b.CoverFraction,
        a.StateFraction + b.StateFraction,
        a.ScatteredFraction + b.ScatteredFraction,
        a.ArrivesFraction + b.ArrivesFraction);

    /// <summary>Multiple.</summary>
    public static BeamShares operator *(double k, BeamShares a) => new(
        k * a.AroundFraction,
        k * a.OpaqueRoofFraction,
        k * a.OpaqueWallFraction,
        k * a.FrameFraction,
        k * a.EquipmentFraction,
        k * a.CurtainFraction,
        k * a.CoverFraction,
        k * a.StateFraction,
        k * a.ScatteredFraction,
        k * a.ArrivesFraction);
}
