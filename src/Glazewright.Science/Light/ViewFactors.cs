namespace Glazewright.Science.Light;

/// <summary>
/// Which share of the diffuse light leaving one piece reaches each other piece of its convex cell: evenly strewn rays of a Halton sequence, then made
/// reciprocal (A_i F_ij = A_j F_ji) and closed (each row sums to 1).
/// </summary>
/// <remarks>Halton 1960, Numer. Math. 2:84; closing by symmetric scaling after Sinkhorn &amp; Knopp 1967, Pacific J. Math. 21:343.</remarks>
internal static class ViewFactors
{
    private const int ScalingSteps = 500;

    /// <summary>The sequence is the same for every piece of every house.</summary>
    private static readonly Ray[] Rays = [.. Enumerable.Range(0, 10_000).Select(Make)];

    /// <summary>Exchange areas A_i F_ij, m², symmetric, rows summing to A_i.</summary>
    internal static double[,] ExchangeAreas(IReadOnlyList<Piece> pieces, int raysPerPiece)
    {
        int n = pieces.Count;
        var counted = new double[n, n];
        CellPlanes[] cells = [new CellPlanes(pieces, Pieces.Below), new CellPlanes(pieces, Pieces.Above)];
        // Each piece fills a row of its own.
        Parallel.For(0, n, new ParallelOptions { TaskScheduler = TaskScheduler.Current }, i => Shoot(pieces, cells[pieces[i].Cell], i, raysPerPiece, counted));

        var exchange = new double[n, n];
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++)
            {
                exchange[i, j] = (counted[i, j] + counted[j, i]) / 2;
            }
        }

        Close(pieces, exchange);
        return exchange;
    }

    private static void Close(IReadOnlyList<Piece> pieces, double[,] exchange)
    {
        int n = pieces.Count;
        double[] scale = [.. Enumerable.Repeat(1.0, n)];
        for (int step = 0; step < ScalingSteps; step++)
        {
            double worst = 0;
            var next = new double[n];
            for (int i = 0; i < n; i++)
            {
                double sum = 0;
                for (int j = 0; j < n; j++)
                {
                    sum += exchange[i, j] * scale[j];
                }

                // A piece too small to be hit would divide by zero; it keeps its scale.
                double ratio = sum > 0 ? pieces[i].AreaM2 / (scale[i] * sum) : 1;
                worst = Math.Max(worst, Math.Abs(ratio - 1));
                next[i] = scale[i] * Math.Sqrt(ratio);
            }

            scale = next;
            if (worst < 1e-14)
            {
                break;
            }
        }

        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++)
            {
                exchange[i, j] *= scale[i] * scale[j];
            }
        }
    }

    private static void Shoot(IReadOnlyList<Piece> pieces, CellPlanes planes, int from, int rays, double[,] counted)
    {
        Piece source = pieces[from];
        int ownPlane = planes.PlaneOf(from);
        Vector3d inward = -1 * source.Normal;
        Vector3d across = (source.Outline[1] - source.Outline[0]).Unit();
        Vector3d along = inward.Cross(across);
        var strewn = new Strewn(source.Outline);
        var tally = new int[pieces.Count];
        Span<double> closing = stackalloc double[planes.Count];
        int hits = 0;
        for (int k = 0; hits < rays; k++)
        {
            Ray ray = k < Rays.Length ? Rays[k] : Make(k);
            Vector3d start = strewn.Point(ray.U, ray.V);
            if (InHole(source, start))
            {
                continue;
            }

            Vector3d direction = (ray.Across * across) + (ray.Along * along) + (ray.Inward * inward);
            for (int g = 0; g < closing.Length; g++)
            {
                closing[g] = planes.Normal(g).Dot(direction);
            }

            tally[planes.Exit(start, direction, closing, ownPlane)]++;
            hits++;
        }

        for (int j = 0; j < tally.Length; j++)
        {
            counted[from, j] = source.AreaM2 * tally[j] / hits;
        }
    }

    private static bool InHole(Piece piece, Vector3d point)
    {
        foreach (Vector3d[] hole in piece.Holes)
        {
            if (Polygons.Containment(hole, piece.Normal, point) > 0)
            {
                return true;
            }
        }

        return false;
    }

    // Cosine-weighted direction from bases 5 and 7, place from bases 2 and 3.
    private static Ray Make(int k)
    {
        uint index = (uint)k + 1;
        double radius = Math.Sqrt(Halton(index, 5));
        (double sin, double cos) = Math.SinCos(2 * Math.PI * Halton(index, 7));
        return new Ray(
            Halton(index, 2), Halton(index, 3), radius * cos, radius * sin, Math.Sqrt(Math.Max(0, 1 - (radius * radius))));
    }

    private static double Halton(uint index, uint digitBase)
    {
        double value = 0;
        double unit = 1.0 / digitBase;
        for (double part = unit; index > 0; index /= digitBase, part *= unit)
        {
            value += (index % digitBase) * part;
        }

        return value;
    }

    private readonly record struct Ray(double U, double V, double Across, double Along, double Inward);

    /// <summary>Even points of a convex polygon from the unit square, by a fan of triangles.</summary>
    private sealed class Strewn
    {
        private readonly Vector3d[] outline;
        private readonly double[] upTo;

        internal Strewn(Vector3d[] outline)
        {
            this.outline = outline;
            upTo = new double[outline.Length - 2];
            double sum = 0;
            for (int i = 0; i < upTo.Length; i++)
            {
                sum += (outline[i + 1] - outline[0]).Cross(outline[i + 2] - outline[0]).LengthM;
                upTo[i] = sum;
            }
        }

        internal Vector3d Point(double u, double v)
        {
            double place = u * upTo[^1];
            int t = 0;
            while (t < upTo.Length - 1 && place >= upTo[t])
            {
                t++;
            }

            double before = t == 0 ? 0 : upTo[t - 1];
            double local = Math.Sqrt(Math.Clamp((place - before) / (upTo[t] - before), 0, 1));
            return outline[0] + ((local * (1 - v)) * (outline[t + 1] - outline[0])) + ((local * v) * (outline[t + 2] - outline[0]));
        }
    }
}
