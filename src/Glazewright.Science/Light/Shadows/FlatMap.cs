namespace Glazewright.Science.Light.Shadows;

/// <summary>Space laid flat along a direction: x and y of a point are linear in its place.</summary>
/// <param name="Origin">Point with x = y = 0.</param>
/// <param name="X">Gradient of x.</param>
/// <param name="Y">Gradient of y.</param>
internal readonly record struct FlatMap(Vector3d Origin, Vector3d X, Vector3d Y)
{
    /// <summary>On to a plane along a direction: x and y in spots and lines.</summary>
    internal static FlatMap OnPlane(ReceivingPlane plane, Vector3d towards, double spots, double lines)
    {
        double facing = plane.Normal.Dot(towards);
        Vector3d u = plane.AlongU - ((plane.AlongU.Dot(towards) / facing) * plane.Normal);
        Vector3d v = plane.AlongV - ((plane.AlongV.Dot(towards) / facing) * plane.Normal);
        return new FlatMap(plane.Origin, spots / plane.LengthUM * u, lines / plane.LengthVM * v);
    }

    /// <summary>Writes a point's x and y.</summary>
    internal void Put(Vector3d p, Span<double> corners, int at)
    {
        Vector3d q = p - Origin;
        corners[at] = X.Dot(q);
        corners[at + 1] = Y.Dot(q);
    }

    /// <summary>Writes an outline's corners and gives back how many numbers.</summary>
    internal int Put(Vector3d[] outline, Span<double> corners)
    {
        for (int i = 0; i < outline.Length; i++)
        {
            Put(outline[i], corners, 2 * i);
        }

        return 2 * outline.Length;
    }
}
