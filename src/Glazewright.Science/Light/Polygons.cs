namespace Glazewright.Science.Light;

/// <summary>Plane polygons in space: area vector, containment, cutting by a level.</summary>
internal static class Polygons
{
    /// <summary>Normal times area (Newell).</summary>
    internal static Vector3d AreaVector(IReadOnlyList<Vector3d> polygon)
    {
        var sum = default(Vector3d);
        for (int i = 1; i + 1 < polygon.Count; i++)
        {
            sum += (polygon[i] - polygon[0]).Cross(polygon[i + 1] - polygon[0]);
        }

        return 0.5 * sum;
    }

    /// <summary>Distance to the nearest edge line, m, positive inside a convex outline.</summary>
    internal static double Containment(ReadOnlySpan<Vector3d> polygon, Vector3d normal, Vector3d point)
    {
        double least = double.PositiveInfinity;
        for (int i = 0; i < polygon.Length; i++)
        {
            Vector3d a = polygon[i];
            Vector3d edge = polygon[i + 1 < polygon.Length ? i + 1 : 0] - a;
            double length = edge.LengthM;
            if (length > 1e-12)
            {
                least = Math.Min(least, normal.Cross(edge).Dot(point - a) / length);
            }
        }

        return least;
    }

    /// <summary>The part of a convex polygon above (or below) a level; empty when there is none.</summary>
    internal static Vector3d[] CutByLevel(IReadOnlyList<Vector3d> polygon, double levelM, bool keepAbove)
    {
        Vector3d[] kept = CutByPlane(polygon, new Vector3d(0, 0, levelM), new Vector3d(0, 0, keepAbove ? 1 : -1));

        // What the level cuts lies on it to the last bit.
        return [.. kept.Select(p => Math.Abs(p.Z - levelM) < 1e-12 ? p with { Z = levelM } : p)];
    }

    /// <summary>The part of a convex polygon on a plane's front; empty when there is none.</summary>
    internal static Vector3d[] CutByPlane(IReadOnlyList<Vector3d> polygon, Vector3d origin, Vector3d normal)
    {
        var kept = new List<Vector3d>(polygon.Count + 2);
        for (int i = 0; i < polygon.Count; i++)
        {
            Vector3d a = polygon[i];
            Vector3d b = polygon[(i + 1) % polygon.Count];
            double da = normal.Dot(a - origin);
            double db = normal.Dot(b - origin);
            if (da >= 0)
            {
                kept.Add(a);
            }

            if ((da > 0 && db < 0) || (da < 0 && db > 0))
            {
                kept.Add(a + ((da / (da - db)) * (b - a)));
            }
        }

        return kept.Count >= 3 && AreaVector(kept).LengthM > 1e-9 ? [.. kept] : [];
    }

    /// <summary>Outline of a convex body at a level, anticlockwise seen from above; empty when the level misses it.</summary>
    internal static Vector3d[] Section(IEnumerable<IReadOnlyList<Vector3d>> faces, double levelM)
    {
        var points = new List<Vector3d>();
        foreach (IReadOnlyList<Vector3d> face in faces)
        {
            for (int i = 0; i < face.Count; i++)
            {
                Vector3d a = face[i];
                Vector3d b = face[(i + 1) % face.Count];
                double da = a.Z - levelM;
                double db = b.Z - levelM;
                if ((da <= 0 && db > 0) || (da > 0 && db <= 0))
                {
                    points.Add((a + ((da / (da - db)) * (b - a))) with { Z = levelM });
                }
            }
        }

        return points.Count < 3 ? [] : Hull(points);
    }

    // Monotone chain: the section's corners come twice (each edge belongs to two faces) and in no order.
    private static Vector3d[] Hull(List<Vector3d> points)
    {
        List<Vector3d> sorted = [.. points.OrderBy(p => p.X).ThenBy(p => p.Y)];
        var hull = new List<Vector3d>();
        for (int pass = 0; pass < 2; pass++)
        {
            int start = hull.Count;
            foreach (Vector3d p in sorted)
            {
                while (hull.Count >= start + 2 && Turn(hull[^2], hull[^1], p) <= 1e-9)
                {
                    hull.RemoveAt(hull.Count - 1);
                }

                hull.Add(p);
            }

            hull.RemoveAt(hull.Count - 1);
            sorted.Reverse();
        }

        return hull.Count >= 3 ? [.. hull] : [];
    }

    private static double Turn(Vector3d a, Vector3d b, Vector3d c) => ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));
}
