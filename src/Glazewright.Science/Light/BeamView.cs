using Glazewright.Science.Light.Shadows;

namespace Glazewright.Science.Light;

/// <summary>
/// The house as a beam of one direction sees it: outlines of all pieces projected flat and turned anticlockwise, and the part of a piece that shadows of
/// the surroundings leave lit. Not for use by several threads at once.
/// </summary>
internal sealed class BeamView
{
    private const double Grazing = 1e-9;

    private readonly List<Piece> pieces;
    private readonly Surroundings surroundings;
    private readonly double[][] outlines;
    private readonly double[][][] holes;
    private readonly double[] cosine;
    private readonly double[] caught;
    private readonly double[] onBars;
    private readonly BarCatch bars;
    private readonly List<LitPart> lit = [];
    private readonly List<Shadow> shadows = [];

    internal BeamView(List<Piece> pieces, BarCatch bars, Surroundings surroundings)
    {
        this.pieces = pieces;
        this.surroundings = surroundings;
        outlines = [.. pieces.Select(p => new double[2 * p.Outline.Length])];
        holes = [.. pieces.Select(p => p.Holes.Select(h => new double[2 * h.Length]).ToArray())];
        cosine = new double[pieces.Count];
        caught = new double[pieces.Count];
        onBars = new double[pieces.Count];
        this.bars = bars;
    }

    /// <summary>Cosine between a piece's outward normal and the sun.</summary>
    internal double Cosine(int piece) => cosine[piece];

    /// <summary>
    /// Share of the beam that bars take: between a clear piece that it enters through and where it lands, or in the joints of one that it leaves through.
    /// </summary>
    internal double Caught(int piece) => caught[piece];

    /// <summary>Share of the beam that bars one by one catch behind each clear piece that it enters through; 0 for the others.</summary>
    internal ReadOnlySpan<double> OnBars => onBars;

    /// <summary>Share that bars one by one take of what goes from one clear piece to another piece.</summary>
    internal double CaughtBetween(int from, int to) => bars.Any ? bars.On(from, to) : 0;

    internal bool Enters(int piece) => cosine[piece] > Grazing;

    internal bool Leaves(int piece) => cosine[piece] < -Grazing;

    /// <summary>Looks along a new direction.</summary>
    internal void Turn(Vector3d towardsSun)
    {
        Vector3d side = Math.Abs(towardsSun.Z) < 0.9 ? new Vector3d(0, 0, 1) : new Vector3d(1, 0, 0);
        Vector3d u = side.Cross(towardsSun).Unit();
        Vector3d v = towardsSun.Cross(u);
        bars.Of(towardsSun, onBars);
        for (int i = 0; i < pieces.Count; i++)
        {
            cosine[i] = pieces[i].Normal.Dot(towardsSun);
            caught[i] = pieces[i].Covering is FaceCovering.Clear clear
                ? 1 - ((1 - clear.CaughtFraction(pieces[i].Normal, towardsSun)) * (1 - onBars[i]))
                : 0;
            bool turned = cosine[i] < 0;
            Flatten(pieces[i].Outline, u, v, turned, outlines[i]);
            for (int h = 0; h < holes[i].Length; h++)
            {
                Flatten(pieces[i].Holes[h], u, v, turned, holes[i][h]);
            }
        }

        CastShadows(towardsSun, u, v);
    }

    private static void Flatten(Vector3d[] polygon, Vector3d u, Vector3d v, bool turned, double[] flat)
    {
        for (int k = 0; k < polygon.Length; k++)
        {
            Vector3d p = polygon[turned ? polygon.Length - 1 - k : k];
            flat[2 * k] = u.Dot(p);
            flat[(2 * k) + 1] = v.Dot(p);
        }
    }

    // The part of a piece that the beam reaches, as plane outlines with weights: the piece, less its holes, less what stands before it. Where shadows
    // overlap, the products of their weights put back what was taken twice.
    internal void Light(int i)
    {
        lit.Clear();
        lit.Add(new LitPart(1, outlines[i]));
        foreach (double[] hole in holes[i])
        {
            lit.Add(new LitPart(-1, hole));
        }

        foreach (Shadow shadow in shadows)
        {
            int before = lit.Count;
            for (int k = 0; k < before; k++)
            {
                // Beyond this many corners another overlap of neighbours is not followed.
                if (lit[k].Outline.Length + shadow.Outline.Length > FlatClip.Room - (4 * FlatClip.MostCorners))
                {
                    continue;
                }

                double[] dark = Common(lit[k].Outline, shadow.Outline);
                if (dark.Length > 0)
                {
                    lit.Add(new LitPart(-lit[k].Weight * shadow.TakenFraction, dark));
                }
            }
        }
    }

    /// <summary>Lit area of the piece last asked for, seen along the beam, m².</summary>
    internal double LitArea()
    {
        double area = 0;
        foreach (LitPart part in lit)
        {
            area += part.Weight * FlatClip.Area(part.Outline);
        }

        return Math.Max(0, area);
    }

    /// <summary>The part of it that falls on another piece, m².</summary>
    internal double LitOn(int b)
    {
        double area = 0;
        foreach (LitPart part in lit)
        {
            area += part.Weight * CommonArea(part.Outline, b);
        }

        return Math.Max(0, area);
    }

    /// <summary>The part of it that falls on another piece through the curtain, m².</summary>
    internal double LitThrough(int curtain, int b)
    {
        Span<double> seen = stackalloc double[FlatClip.Room];
        double area = 0;
        foreach (LitPart part in lit)
        {
            int count = FlatClip.Clip(part.Outline, outlines[curtain], seen);
            if (count >= 6)
            {
                area += part.Weight * CommonArea(seen[..count], b);
            }
        }

        return Math.Max(0, area);
    }

    private double CommonArea(ReadOnlySpan<double> outline, int b)
    {
        double area = FlatClip.CommonArea(outline, outlines[b]);
        foreach (double[] hole in holes[b])
        {
            area -= FlatClip.CommonArea(outline, hole);
        }

        return area;
    }

    private static double[] Common(double[] a, double[] b)
    {
        Span<double> both = stackalloc double[FlatClip.Room];
        int count = FlatClip.Clip(a, b, both);
        return count >= 6 && FlatClip.Area(both[..count]) > 1e-9 ? both[..count].ToArray() : [];
    }

    // A body's shadow counts when it stands between the sun and the house: two convex bodies that do not meet are in one order along every ray.
    private void CastShadows(Vector3d towardsSun, Vector3d u, Vector3d v)
    {
        shadows.Clear();
        foreach (Obstacle obstacle in surroundings.Obstacles)
        {
            double[] silhouette = obstacle.Silhouette(u, v);
            for (int i = 0; i < pieces.Count && silhouette.Length > 0; i++)
            {
                if (pieces[i].IsCurtain || cosine[i] <= Grazing)
                {
                    continue;
                }

                double[] common = Common(outlines[i], silhouette);
                if (common.Length == 0)
                {
                    continue;
                }

                (double x, double y) = Middle(common);
                double along = (pieces[i].Normal.Dot(pieces[i].Outline[0]) - pieces[i].Normal.Dot((x * u) + (y * v))) / cosine[i];
                Vector3d onFace = (x * u) + (y * v) + (along * towardsSun);
                if (obstacle.Interval(onFace, towardsSun, out double enter, out double leave) && enter + leave > 0)
                {
                    shadows.Add(new Shadow(1 - obstacle.TransmittanceFraction, silhouette));
                }

                break;
            }
        }
    }

    private static (double X, double Y) Middle(double[] outline)
    {
        double x = 0;
        double y = 0;
        for (int i = 0; i < outline.Length; i += 2)
        {
            x += 2 * outline[i] / outline.Length;
            y += 2 * outline[i + 1] / outline.Length;
        }

        return (x, y);
    }

    private readonly record struct LitPart(double Weight, double[] Outline);

    private readonly record struct Shadow(double TakenFraction, double[] Outline);
}
