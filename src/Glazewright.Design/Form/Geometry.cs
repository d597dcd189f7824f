namespace Glazewright.Design.Form;

/// <summary>A point or vector in a building's or the range's axes, m.</summary>
/// <param name="XM">Along the ridge.</param>
/// <param name="YM">Across.</param>
/// <param name="ZM">Up.</param>
public readonly record struct Point3(double XM, double YM, double ZM)
{
    /// <summary>Sum.</summary>
    public static Point3 operator +(Point3 a, Point3 b) => new(a.XM + b.XM, a.YM + b.YM, a.ZM + b.ZM);

    /// <summary>Difference.</summary>
    public static Point3 operator -(Point3 a, Point3 b) => new(a.XM - b.XM, a.YM - b.YM, a.ZM - b.ZM);

    /// <summary>Scaled.</summary>
    public static Point3 operator *(double factor, Point3 a) => new(factor * a.XM, factor * a.YM, factor * a.ZM);

    /// <summary>Scalar product.</summary>
    /// <param name="b">The other.</param>
    /// <returns>The product, m².</returns>
    public double Dot(Point3 b) => XM * b.XM + YM * b.YM + ZM * b.ZM;

    /// <summary>Vector product.</summary>
    /// <param name="b">The other.</param>
    /// <returns>The product.</returns>
    public Point3 Cross(Point3 b) =>
        new(YM * b.ZM - ZM * b.YM, ZM * b.XM - XM * b.ZM, XM * b.YM - YM * b.XM);

    /// <summary>Length, m.</summary>
    public double LengthM => Math.Sqrt(Dot(this));
}

/// <summary>A point on a face, m.</summary>
/// <param name="UM">Along the face's u axis.</param>
/// <param name="VM">Along the face's v axis.</param>
public readonly record struct Point2(double UM, double VM);

/// <summary>The plane of a face: origin, two unit axes in it, outward normal (u × v or its opposite: u always runs with x or y).</summary>
/// <param name="Origin">Origin, range axes.</param>
/// <param name="U">Unit vector along the eave or floor line.</param>
/// <param name="V">Unit vector up the wall or slope.</param>
/// <param name="Normal">Outward unit normal.</param>
public readonly record struct FacePlane(Point3 Origin, Point3 U, Point3 V, Point3 Normal)
{
    /// <summary>A point of the face in range axes.</summary>
    /// <param name="p">Point on the face.</param>
    /// <returns>The same point in range axes.</returns>
    public Point3 At(Point2 p) => Origin + p.UM * U + p.VM * V;

    /// <summary>Where a point of the plane lies on the face.</summary>
    /// <param name="p">Point in range axes.</param>
    /// <returns>Its face coordinates.</returns>
    public Point2 On(Point3 p) => new((p - Origin).Dot(U), (p - Origin).Dot(V));
}
