using Glazewright.Science.Guards;

namespace Glazewright.Science.Light;

/// <summary>A convex thing outside that takes light from the house: another building, a tree taken as a box.</summary>
/// <param name="Id">Name.</param>
/// <param name="Faces">Its faces, each anticlockwise seen from outside, in the house's axes, m.</param>
/// <param name="TransmittanceFraction">Share of the light that comes through it, 0 for an opaque one.</param>
public sealed record ShadeBody(string Id, IReadOnlyList<IReadOnlyList<Vector3d>> Faces, double TransmittanceFraction);

/// <summary>A point of the skyline.</summary>
/// <param name="HouseAzimuthDeg">Anticlockwise from +x.</param>
/// <param name="ElevationDeg">Height of the skyline there, −10 to 89.</param>
public readonly record struct SkylinePoint(double HouseAzimuthDeg, double ElevationDeg);

/// <summary>
/// What stands around a house: bodies that shade, and a skyline below which no light comes from the sky. What shades is taken as dark itself: light that
/// it throws back is not counted.
/// </summary>
public sealed class Surroundings
{
    private readonly SkylinePoint[] skyline;

    private Surroundings(Obstacle[] obstacles, SkylinePoint[] skyline)
    {
        Obstacles = obstacles;
        this.skyline = skyline;
    }

    /// <summary>Open country.</summary>
    public static Surroundings None { get; } = new([], []);

    internal Obstacle[] Obstacles { get; }

    /// <summary>Checks and keeps what stands around.</summary>
    /// <param name="bodies">Bodies that do not reach into the house.</param>
    /// <param name="skyline">Points in any order; none for a flat horizon. Heights between them are linear.</param>
    /// <returns>The surroundings.</returns>
    /// <exception cref="ArgumentException">A body with fewer than four faces, or a silhouette of too many corners.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A fraction or angle out of range.</exception>
    public static Surroundings Of(IReadOnlyList<ShadeBody> bodies, IReadOnlyList<SkylinePoint> skyline)
    {
        ArgumentNullException.ThrowIfNull(bodies);
        ArgumentNullException.ThrowIfNull(skyline);
        foreach (SkylinePoint point in skyline)
        {
            Within.RequireFinite(point.HouseAzimuthDeg);
            Within.Require(point.ElevationDeg, -10, 89);
        }

        return new Surroundings(
            [.. bodies.Select(Obstacle.Of)],
            [.. skyline.Select(p => p with { HouseAzimuthDeg = Turn(p.HouseAzimuthDeg) }).OrderBy(p => p.HouseAzimuthDeg)]);
    }

    /// <summary>Height of the skyline, degrees.</summary>
    /// <param name="houseAzimuthDeg">Anticlockwise from +x.</param>
    /// <returns>Degrees; 0 without a skyline.</returns>
    public double SkylineDeg(double houseAzimuthDeg)
    {
        if (skyline.Length == 0)
        {
            return 0;
        }

        double at = Turn(houseAzimuthDeg);
        int next = Array.FindIndex(skyline, p => p.HouseAzimuthDeg > at);
        SkylinePoint b = skyline[next < 0 ? 0 : next];
        SkylinePoint a = skyline[next <= 0 ? skyline.Length - 1 : next - 1];
        double span = Turn(b.HouseAzimuthDeg - a.HouseAzimuthDeg);
        double part = span > 0 ? Turn(at - a.HouseAzimuthDeg) / span : 0;
        return a.ElevationDeg + (part * (b.ElevationDeg - a.ElevationDeg));
    }

    /// <summary>True when the skyline hides a direction; light from below the horizon is the ground's and is not hidden.</summary>
    internal bool Hides(Vector3d towards)
    {
        if (skyline.Length == 0 || towards.Z < 0)
        {
            return false;
        }

        double elevationDeg = Math.Asin(Math.Min(1, towards.Z)) * 180 / Math.PI;
        return elevationDeg < SkylineDeg(Math.Atan2(towards.Y, towards.X) * 180 / Math.PI);
    }

    /// <summary>Share of light that reaches a point from a direction past all bodies.</summary>
    internal double Passing(Vector3d from, Vector3d towards)
    {
        double share = 1;
        foreach (Obstacle obstacle in Obstacles)
        {
            if (obstacle.Meets(from, towards))
            {
                share *= obstacle.TransmittanceFraction;
            }
        }

        return share;
    }

    private static double Turn(double angleDeg) => angleDeg - (360 * Math.Floor(angleDeg / 360));
}
