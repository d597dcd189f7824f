using System.Runtime.CompilerServices;

namespace Glazewright.Science.Light.Shadows;

/// <summary>
/// Bars made ready to throw shadows on a picture: slender ones as strips, stout ones by the faces that look at the light. Strips that differ only by a shift
/// along the house (frames, joints) are spanned once and filled many times. Not for use by several threads at once.
/// </summary>
internal sealed class BarShadows
{
    private readonly (ShadeBar First, double[] ShiftsM)[] strips;
    private readonly (Vector3d Normal, Vector3d[] Outline)[] faces;
    private readonly double[] shiftsSpots;

    private BarShadows((ShadeBar First, double[] ShiftsM)[] strips, (Vector3d Normal, Vector3d[] Outline)[] faces)
    {
        this.strips = strips;
        this.faces = faces;
        shiftsSpots = new double[strips.Max(s => (int?)s.ShiftsM.Length) ?? 0];
    }

    /// <summary>All bars.</summary>
    internal static BarShadows Of(IReadOnlyList<ShadeBar> bars) => Of(bars, default, default);

    /// <summary>The parts of the bars in front of a plane; a zero normal keeps all.</summary>
    internal static BarShadows Of(IReadOnlyList<ShadeBar> bars, Vector3d origin, Vector3d normal)
    {
        var strips = new List<ShadeBar>();
        var faces = new List<(Vector3d, Vector3d[])>();
        foreach (ShadeBar bar in bars)
        {
            if (bar.Shape == BarShape.Box)
            {
                foreach (Vector3d[] face in Sides(bar))
                {
                    Vector3d[] kept = normal == default ? face : Polygons.CutByPlane(face, origin, normal);
                    if (kept.Length >= 3)
                    {
                        faces.Add((Polygons.AreaVector(face).Unit(), kept));
                    }
                }

                continue;
            }

            double a = normal.Dot(bar.A - origin);
            double b = normal.Dot(bar.B - origin);
            if (normal == default || (a >= 0 && b >= 0))
            {
                strips.Add(bar);
            }
            else if (a > 0 || b > 0)
            {
                Vector3d cut = bar.A + (a / (a - b) * (bar.B - bar.A));
                strips.Add(a > 0 ? bar with { B = cut } : bar with { A = cut });
            }
        }

        return new BarShadows(
            [
                .. strips.GroupBy(b => (b.A with { X = 0 }, b.B - b.A, b.HalfWidth, b.HalfDepth, b.Shape))
                    .Select(g => (g.First(), g.Select(b => b.A.X - g.First().A.X).ToArray())),
            ],
            [.. faces]);
    }

    internal bool Any => strips.Length + faces.Length > 0;

    /// <summary>Draws every shadow along a direction.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void Cast(BitRows rows, in FlatMap map, Vector3d towards, double phaseX, double phaseY)
    {
        Span<double> corners = stackalloc double[2 * FlatClip.MostCorners];
        Span<double> shifted = stackalloc double[8];
        foreach ((ShadeBar bar, double[] shiftsM) in strips)
        {
            Vector3d across = (bar.B - bar.A).Cross(towards);
            double length = across.LengthM;
            if (length < 1e-9)
            {
                continue;
            }

            across = 1 / length * across;
            Vector3d half = bar.HalfShadowM(across) * across;
            map.Put(bar.A + half, corners, 0);
            map.Put(bar.B + half, corners, 2);
            map.Put(bar.B - half, corners, 4);
            map.Put(bar.A - half, corners, 6);

            // Along the lines a shift moves spots alone; on a plane that lies otherwise each strip is spanned.
            if (Math.Abs(map.Y.X) < 1e-9)
            {
                rows.Span(corners[..8], phaseX, phaseY);
                for (int i = 0; i < shiftsM.Length; i++)
                {
                    shiftsSpots[i] = map.X.X * shiftsM[i];
                }

                rows.FillSpanned(shiftsSpots.AsSpan(0, shiftsM.Length));

                continue;
            }

            foreach (double shiftM in shiftsM)
            {
                for (int i = 0; i < 8; i += 2)
                {
                    shifted[i] = corners[i] + (map.X.X * shiftM);
                    shifted[i + 1] = corners[i + 1] + (map.Y.X * shiftM);
                }

                rows.Fill(shifted, phaseX, phaseY);
            }
        }

        foreach ((Vector3d normal, Vector3d[] outline) in faces)
        {
            if (normal.Dot(towards) > 0)
            {
                int count = map.Put(outline, corners);
                rows.Fill(corners[..count], phaseX, phaseY);
            }
        }
    }

    private static IEnumerable<Vector3d[]> Sides(ShadeBar bar)
    {
        Vector3d w = bar.HalfWidth;
        Vector3d d = bar.HalfDepth;
        Vector3d a = bar.A;
        Vector3d b = bar.B;

        // Whichever hand the half sizes have, the outward normal is the one that points away from the middle.
        Vector3d middle = 0.5 * (a + b);
        Vector3d[][] sides =
        [
            [a + w + d, b + w + d, b + w - d, a + w - d],
            [a - w + d, b - w + d, b - w - d, a - w - d],
            [a + w + d, b + w + d, b - w + d, a - w + d],
            [a + w - d, b + w - d, b - w - d, a - w - d],
            [a + w + d, a + w - d, a - w - d, a - w + d],
            [b + w + d, b + w - d, b - w - d, b - w + d],
        ];
        foreach (Vector3d[] side in sides)
        {
            yield return Polygons.AreaVector(side).Dot(side[0] - middle) > 0 ? side : [side[3], side[2], side[1], side[0]];
        }
    }
}
