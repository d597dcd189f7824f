namespace Glazewright.Science.Light.Shadows;

/// <summary>How a straight opaque thing is shaped across its axis.</summary>
public enum BarShape
{
    /// <summary>Round: the half sizes are one radius.</summary>
    Round,

    /// <summary>Four-sided and slender: its ends throw no shadow of their own.</summary>
    FourSided,

    /// <summary>Four-sided and stout: a box, with its ends.</summary>
    Box,
}

/// <summary>What a shadow is put down to.</summary>
public enum ShadeCause
{
    /// <summary>Frame members, bars, sheet joints.</summary>
    Frame,

    /// <summary>Heaters, fans, lamps, benches.</summary>
    Equipment,

    /// <summary>A parked curtain.</summary>
    Curtain,
}

/// <summary>A straight opaque thing inside a house: a frame member, a glazing bar, a heater, a parked curtain.</summary>
/// <param name="A">One end of its axis, house axes, m.</param>
/// <param name="B">The other end, apart from the first.</param>
/// <param name="HalfWidth">From the axis to the middle of one side, across the axis, m.</param>
/// <param name="HalfDepth">From the axis to the middle of the next side, across both, m.</param>
/// <param name="Shape">Round, four-sided or a box.</param>
/// <param name="Cause">What its shadow is put down to.</param>
public readonly record struct ShadeBar(
    Vector3d A, Vector3d B, Vector3d HalfWidth, Vector3d HalfDepth, BarShape Shape, ShadeCause Cause = ShadeCause.Frame)
{
    /// <summary>A four-sided bar from its axis, the direction of its depth and its two sizes.</summary>
    /// <param name="a">One end.</param>
    /// <param name="b">The other end.</param>
    /// <param name="depthDirection">Any vector that is not along the axis; its part across the axis counts.</param>
    /// <param name="widthM">Size across the depth, m.</param>
    /// <param name="depthM">Size along the depth, m.</param>
    /// <returns>The bar.</returns>
    public static ShadeBar FourSided(Vector3d a, Vector3d b, Vector3d depthDirection, double widthM, double depthM)
    {
        Vector3d along = (b - a).Unit();
        Vector3d depth = (depthDirection - (depthDirection.Dot(along) * along)).Unit();
        return new ShadeBar(a, b, 0.5 * widthM * along.Cross(depth), 0.5 * depthM * depth, BarShape.FourSided);
    }

    /// <summary>A level box.</summary>
    /// <param name="corner">Corner with the least coordinates.</param>
    /// <param name="size">Its three sizes, m, each above 0.</param>
    /// <returns>The box.</returns>
    public static ShadeBar Box(Vector3d corner, Vector3d size)
    {
        var halfY = new Vector3d(0, size.Y / 2, 0);
        var halfZ = new Vector3d(0, 0, size.Z / 2);
        Vector3d a = corner + halfY + halfZ;
        return new ShadeBar(a, a + new Vector3d(size.X, 0, 0), halfY, halfZ, BarShape.Box);
    }

    /// <summary>Half the width of its shadow across the axis, seen along a direction, m.</summary>
    /// <param name="across">Unit vector across both the axis and the direction.</param>
    /// <returns>Metres.</returns>
    internal double HalfShadowM(Vector3d across) => Shape == BarShape.Round
        ? HalfWidth.LengthM
        : Math.Abs(HalfWidth.Dot(across)) + Math.Abs(HalfDepth.Dot(across));
}
