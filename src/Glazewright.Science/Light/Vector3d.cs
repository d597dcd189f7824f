namespace Glazewright.Science.Light;

/// <summary>A point or direction in metres or as a pure direction; right-handed, z up.</summary>
/// <param name="X">First axis.</param>
/// <param name="Y">Second axis.</param>
/// <param name="Z">Up.</param>
public readonly record struct Vector3d(double X, double Y, double Z)
{
    /// <summary>Length.</summary>
    public double LengthM => Math.Sqrt(Dot(this));

    /// <summary>Sum.</summary>
    public static Vector3d operator +(Vector3d a, Vector3d b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>Difference.</summary>
    public static Vector3d operator -(Vector3d a, Vector3d b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>Multiple.</summary>
    public static Vector3d operator *(double k, Vector3d a) => new(k * a.X, k * a.Y, k * a.Z);

    /// <summary>Scalar product.</summary>
    /// <param name="other">Other vector.</param>
    /// <returns>The product.</returns>
    public double Dot(Vector3d other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    /// <summary>Vector product.</summary>
    /// <param name="other">Other vector.</param>
    /// <returns>The product.</returns>
    public Vector3d Cross(Vector3d other) => new(
        (Y * other.Z) - (Z * other.Y), (Z * other.X) - (X * other.Z), (X * other.Y) - (Y * other.X));

    /// <summary>The same direction with length 1.</summary>
    /// <returns>Unit vector.</returns>
    public Vector3d Unit() => (1 / LengthM) * this;

    /// <summary>Unit vector towards the sun from its house azimuth (anticlockwise from +x, seen from above) and elevation.</summary>
    /// <param name="houseAzimuthDeg">Degrees from +x towards +y.</param>
    /// <param name="elevationDeg">Degrees above the floor.</param>
    /// <returns>Unit vector.</returns>
    public static Vector3d Towards(double houseAzimuthDeg, double elevationDeg)
    {
        (double sinA, double cosA) = Math.SinCos(houseAzimuthDeg * Math.PI / 180);
        (double sinE, double cosE) = Math.SinCos(elevationDeg * Math.PI / 180);
        return new Vector3d(cosA * cosE, sinA * cosE, sinE);
    }
}
