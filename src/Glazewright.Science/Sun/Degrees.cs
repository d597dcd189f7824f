namespace Glazewright.Science.Sun;

/// <summary>Degrees to radians and back, and angles brought into one turn.</summary>
internal static class Degrees
{
    internal const double RadPerDeg = Math.PI / 180;

    internal static double Sin(double angleDeg) => Math.Sin(angleDeg * RadPerDeg);

    internal static double Cos(double angleDeg) => Math.Cos(angleDeg * RadPerDeg);

    internal static double Tan(double angleDeg) => Math.Tan(angleDeg * RadPerDeg);

    internal static double FromRad(double angleRad) => angleRad / RadPerDeg;

    /// <summary>0 (included) to 360 (excluded).</summary>
    internal static double Turn(double angleDeg)
    {
        double turned = angleDeg - (360 * Math.Floor(angleDeg / 360));
        return turned >= 360 ? 0 : turned;
    }

    /// <summary>−180 (included) to 180 (excluded).</summary>
    internal static double HalfTurn(double angleDeg) => Turn(angleDeg + 180) - 180;
}
