namespace Glazewright.Science.Light;

/// <summary>
/// Parallel bars inside a clear face: their face width and their depth into the house, each as a share of the spacing. Sun that comes slantwise across
/// them is caught by the depth too.
/// </summary>
/// <param name="Along">Direction of the bars, unit vector in the face.</param>
/// <param name="WidthFraction">Face width over spacing, 0 to 0.9.</param>
/// <param name="DepthFraction">Depth over spacing, 0 to 10.</param>
public readonly record struct BarFamily(Vector3d Along, double WidthFraction, double DepthFraction)
{
    /// <summary>Share of a beam that the bars catch: (w + d tan θ)/spacing, θ across the bars, at most 1.</summary>
    /// <param name="normal">Of the face, unit.</param>
    /// <param name="direction">Along the light, either sense, unit.</param>
    /// <returns>0 to 1.</returns>
    /// <remarks>Plane geometry of an even grating; the first and last bar and members that meet are not followed.</remarks>
    public double CaughtFraction(Vector3d normal, Vector3d direction)
    {
        double through = Math.Abs(normal.Dot(direction));
        double across = Math.Abs(normal.Cross(Along).Dot(direction));
        double caught = (WidthFraction * through) + (DepthFraction * across);
        return caught >= through ? 1 : caught / through;
    }
}
