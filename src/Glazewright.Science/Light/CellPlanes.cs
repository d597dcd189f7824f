namespace Glazewright.Science.Light;

/// <summary>Pieces of one convex cell by plane: finds where a ray from inside leaves it.</summary>
internal sealed class CellPlanes
{
    private readonly IReadOnlyList<Piece> pieces;
    private readonly int[][] groups;
    private readonly Vector3d[] normals;
    private readonly double[] reaches;

    internal CellPlanes(IReadOnlyList<Piece> pieces, int cell)
    {
        this.pieces = pieces;
        var found = new List<List<int>>();
        for (int i = 0; i < pieces.Count; i++)
        {
            if (pieces[i].Cell != cell)
            {
                continue;
            }

            List<int>? group = found.Find(g => SamePlane(pieces[g[0]], pieces[i]));
            if (group is null)
            {
                found.Add([i]);
            }
            else
            {
                group.Add(i);
            }
        }

        groups = [.. found.Select(g => g.ToArray())];
        normals = [.. groups.Select(g => pieces[g[0]].Normal)];
        reaches = [.. groups.Select(g => pieces[g[0]].Normal.Dot(pieces[g[0]].Outline[0]))];
    }

    internal int Count => groups.Length;

    internal Vector3d Normal(int plane) => normals[plane];

    /// <summary>Plane of a piece.</summary>
    internal int PlaneOf(int piece) => Array.FindIndex(groups, g => g.Contains(piece));

    /// <summary>The piece that a ray leaves through; closing holds each plane's cosine to the ray, and no plane but those above 0 can be left through.</summary>
    internal int Exit(Vector3d start, Vector3d direction, ReadOnlySpan<double> closing, int apartFromPlane)
    {
        double nearest = double.PositiveInfinity;
        int exit = -1;
        for (int g = 0; g < normals.Length; g++)
        {
            if (closing[g] > 1e-12 && g != apartFromPlane)
            {
                double away = (reaches[g] - normals[g].Dot(start)) / closing[g];
                if (away < nearest)
                {
                    nearest = away;
                    exit = g;
                }
            }
        }

        return groups[exit].Length == 1 ? groups[exit][0] : Holder(groups[exit], start + (Math.Max(0, nearest) * direction));
    }

    // Several pieces share the plane: take the one that holds the point best.
    private int Holder(int[] plane, Vector3d point)
    {
        int best = plane[0];
        double bestHold = double.NegativeInfinity;
        foreach (int i in plane)
        {
            double hold = Polygons.Containment(pieces[i].Outline, pieces[i].Normal, point);
            foreach (Vector3d[] hole in pieces[i].Holes)
            {
                hold = Math.Min(hold, -Polygons.Containment(hole, pieces[i].Normal, point));
            }

            if (hold > bestHold)
            {
                bestHold = hold;
                best = i;
            }
        }

        return best;
    }

    private static bool SamePlane(Piece a, Piece b) =>
        a.Normal.Dot(b.Normal) > 1 - 1e-9 && Math.Abs(a.Normal.Dot(b.Outline[0] - a.Outline[0])) < 1e-4;
}
