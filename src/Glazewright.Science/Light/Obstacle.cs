using Glazewright.Science.Guards;

namespace Glazewright.Science.Light;

/// <summary>A shading body ready for use: its corners and its half spaces.</summary>
internal sealed class Obstacle
{
    private readonly Vector3d[] normals;
    private readonly double[] reaches;

    private Obstacle(Vector3d[][] faces, Vector3d[] corners, Vector3d[] normals, double[] reaches, double transmittanceFraction)
    {
        Faces = faces;
        Corners = corners;
        this.normals = normals;
        this.reaches = reaches;
        TransmittanceFraction = transmittanceFraction;
    }

    internal Vector3d[][] Faces { get; }

    internal Vector3d[] Corners { get; }

    internal double TransmittanceFraction { get; }

    internal static Obstacle Of(ShadeBody body)
    {
        Within.Require(body.TransmittanceFraction, 0, 1);
        if (body.Faces.Count < 4)
        {
            throw new ArgumentException($"Body '{body.Id}' is not closed.", nameof(body));
        }

        Vector3d[] normals = [.. body.Faces.Select(f => Polygons.AreaVector(f).Unit())];
        double[] reaches = [.. body.Faces.Select((f, i) => normals[i].Dot(f[0]))];
        return new Obstacle(
            [.. body.Faces.Select(f => f.ToArray())], [.. body.Faces.SelectMany(f => f).Distinct()], normals, reaches, body.TransmittanceFraction);
    }

    /// <summary>Whether a ray meets the body.</summary>
    internal bool Meets(Vector3d from, Vector3d towards) => Interval(from, towards, out double enter, out double leave) && leave > Math.Max(0, enter);

    /// <summary>Where a line is inside the body; false when it misses.</summary>
    internal bool Interval(Vector3d from, Vector3d along, out double enter, out double leave)
    {
        enter = double.NegativeInfinity;
        leave = double.PositiveInfinity;
        for (int i = 0; i < normals.Length; i++)
        {
            double away = reaches[i] - normals[i].Dot(from);
            double closing = normals[i].Dot(along);
            if (Math.Abs(closing) < 1e-12)
            {
                if (away < 0)
                {
                    return false;
                }
            }
            else if (closing > 0)
            {
                leave = Math.Min(leave, away / closing);
            }
            else
            {
                enter = Math.Max(enter, away / closing);
            }
        }

        return leave > enter;
    }

    /// <summary>Outline seen along a direction, anticlockwise in the axes u, v, as x, y pairs.</summary>
    internal double[] Silhouette(Vector3d u, Vector3d v)
    {
        var flat = new List<(double X, double Y)>(Corners.Length);
        foreach (Vector3d corner in Corners)
        {
            flat.Add((u.Dot(corner), v.Dot(corner)));
        }

        flat.Sort();
        var hull = new List<(double X, double Y)>();
        for (int pass = 0; pass < 2; pass++)
        {
            int start = hull.Count;
            foreach ((double X, double Y) p in flat)
            {
                while (hull.Count >= start + 2
                    && ((hull[^1].X - hull[^2].X) * (p.Y - hull[^2].Y)) - ((hull[^1].Y - hull[^2].Y) * (p.X - hull[^2].X)) <= 1e-9)
                {
                    hull.RemoveAt(hull.Count - 1);
                }

                hull.Add(p);
            }

            hull.RemoveAt(hull.Count - 1);
            flat.Reverse();
        }

        return hull.Count is >= 3 and <= FlatClip.MostCorners
            ? [.. hull.SelectMany(p => new[] { p.X, p.Y })]
            : [];
    }
}
