using Glazewright.Science.Optics;

namespace Glazewright.Science.Light;

/// <summary>Follows a beam of one direction through the house. Not for use by several threads at once.</summary>
internal sealed class BeamTracer
{
    private const double Grazing = 1e-9;

    private readonly List<Piece> pieces;
    private readonly Radiosity radiosity;
    private readonly double[][] outlines;
    private readonly double[][][] holes;
    private readonly double[] cosine;
    private readonly double[] caught;
    private readonly double[] diffuse;
    private readonly double[] sinks = new double[Radiosity.Sinks];
    private readonly double[] ownByPiece;
    private readonly double[] bySurface;
    private readonly double[] landing;
    private readonly Surroundings surroundings;
    private readonly List<LitPart> lit = [];
    private readonly List<Shadow> shadows = [];

    internal BeamTracer(List<Piece> pieces, Radiosity radiosity, int surfaces, Surroundings surroundings)
    {
        this.surroundings = surroundings;
        this.pieces = pieces;
        this.radiosity = radiosity;
        outlines = [.. pieces.Select(p => new double[2 * p.Outline.Length])];
        holes = [.. pieces.Select(p => p.Holes.Select(h => new double[2 * h.Length]).ToArray())];
        cosine = new double[pieces.Count];
        caught = new double[pieces.Count];
        diffuse = new double[pieces.Count];
        ownByPiece = new double[pieces.Count];
        landing = new double[pieces.Count];
        bySurface = new double[surfaces];
    }

    /// <summary>What the last trace's beam brought to the crop plane before any reflection or scattering, m².</summary>
    internal double DirectOnCropM2 { get; private set; }

    /// <summary>Adds weight × what each surface absorbed in the last trace.</summary>
    internal void AddSurfaces(double weight, Span<double> sum)
    {
        for (int i = 0; i < bySurface.Length; i++)
        {
            sum[i] += weight * bySurface[i];
        }
    }

    /// <summary>Row for unit irradiance normal to a beam that comes from a direction.</summary>
    internal GainRow Trace(Vector3d towardsSun)
    {
        Array.Clear(diffuse);
        Array.Clear(sinks);
        Array.Clear(ownByPiece);
        Array.Clear(bySurface);
        DirectOnCropM2 = 0;
        if (surroundings.Hides(towardsSun))
        {
            return default;
        }

        Project(towardsSun);
        double aperture = 0;
        double opaqueOutside = 0;
        for (int i = 0; i < pieces.Count; i++)
        {
            Piece piece = pieces[i];
            if (piece.IsCurtain || cosine[i] <= Grazing)
            {
                continue;
            }

            Light(i);
            double incident = LitArea();
            if (piece.Covering is FaceCovering.Clear clear)
            {
                aperture += incident;
                Enter(i, clear, incident);
            }
            else
            {
                opaqueOutside += incident;
            }
        }

        SpreadDiffuse();
        for (int i = 0; i < pieces.Count; i++)
        {
            if (pieces[i].Surface >= 0)
            {
                bySurface[pieces[i].Surface] += ownByPiece[i];
            }
        }

        return new GainRow(
            aperture, sinks[(int)Sink.Cover], sinks[(int)Sink.Curtain], sinks[(int)Sink.CropPlane], sinks[(int)Sink.Opaque],
            sinks[(int)Sink.Frame], sinks[(int)Sink.Escapes], opaqueOutside);
    }

    private void Enter(int i, FaceCovering.Clear clear, double incident)
    {
        LightShares shares = clear.Optics.AtCosine(cosine[i]);
        LightShares back = clear.Optics.Diffuse;
        sinks[(int)Sink.Escapes] += incident * shares.ReflectanceFraction;
        Keep(i, incident * shares.AbsorptanceFraction);

        // Bars stand inside the cover; what they throw back meets the cover as diffuse light.
        double passed = incident * shares.TransmittanceFraction;
        double onBars = passed * caught[i];
        double fromBars = onBars * clear.FrameReflectanceFraction;
        sinks[(int)Sink.Frame] += onBars - fromBars;
        sinks[(int)Sink.Escapes] += fromBars * back.TransmittanceFraction;
        Keep(i, fromBars * back.AbsorptanceFraction);
        diffuse[i] += fromBars * back.ReflectanceFraction;

        double inside = passed - onBars;
        diffuse[i] += inside * clear.Optics.HazeFraction;
        Land(i, inside * (1 - clear.Optics.HazeFraction));
    }

    // The beam that entered through one piece, on all pieces of its cell that it can leave through.
    private void Land(int from, double beam)
    {
        if (beam <= 0)
        {
            return;
        }

        double whole = 0;
        for (int j = 0; j < pieces.Count; j++)
        {
            landing[j] = pieces[j].Cell == pieces[from].Cell && cosine[j] < -Grazing ? LitOn(j) : 0;
            whole += landing[j];
        }

        // Rounding alone can leave a sliver of a face without a landing place; its light stays with the face.
        if (whole <= 0)
        {
            diffuse[from] += beam;
            return;
        }

        for (int j = 0; j < pieces.Count; j++)
        {
            if (landing[j] > 0)
            {
                Hit(j, beam * landing[j] / whole);
            }
        }

        int curtain = CurtainOf(pieces[from].Cell);
        if (curtain >= 0 && landing[curtain] > 0)
        {
            double passes = beam * landing[curtain] / whole * pieces[curtain].PassShare;
            diffuse[OtherSide(curtain)] += passes * pieces[curtain].ScatterFraction;
            LandThrough(curtain, passes * (1 - pieces[curtain].ScatterFraction));
        }
    }

    private void LandThrough(int curtain, double beam)
    {
        if (beam <= 0)
        {
            return;
        }

        int otherCell = pieces[OtherSide(curtain)].Cell;
        double whole = 0;
        for (int j = 0; j < pieces.Count; j++)
        {
            landing[j] = pieces[j].Cell == otherCell && !pieces[j].IsCurtain && cosine[j] < -Grazing
                ? LitThrough(curtain, j)
                : 0;
            whole += landing[j];
        }

        if (whole <= 0)
        {
            diffuse[OtherSide(curtain)] += beam;
            return;
        }

        for (int j = 0; j < pieces.Count; j++)
        {
            if (landing[j] > 0)
            {
                Hit(j, beam * landing[j] / whole);
            }
        }
    }

    private void Hit(int j, double beam)
    {
        Piece piece = pieces[j];
        if (piece.Covering is FaceCovering.Clear clear)
        {
            double onBars = beam * caught[j];
            sinks[(int)Sink.Frame] += onBars * (1 - clear.FrameReflectanceFraction);
            double onCover = beam - onBars;
            LightShares shares = clear.Optics.AtCosine(-cosine[j]);
            sinks[(int)Sink.Escapes] += onCover * shares.TransmittanceFraction;
            Keep(j, onCover * shares.AbsorptanceFraction);
            diffuse[j] += (onBars * clear.FrameReflectanceFraction) + (onCover * shares.ReflectanceFraction);
            return;
        }

        DirectOnCropM2 += piece.Covering is FaceCovering.CropPlane ? beam : 0;
        Keep(j, beam * piece.OwnShare);
        diffuse[j] += beam * piece.Reflectance;
    }

    private void Keep(int i, double absorbed)
    {
        sinks[(int)pieces[i].OwnSink] += absorbed;
        ownByPiece[i] += absorbed;
    }

    private void SpreadDiffuse()
    {
        for (int i = 0; i < pieces.Count; i++)
        {
            double e = diffuse[i];
            if (e <= 0)
            {
                continue;
            }

            for (int s = 0; s < Radiosity.Sinks; s++)
            {
                sinks[s] += e * radiosity.BySink[i, s];
            }

            for (int j = 0; j < pieces.Count; j++)
            {
                ownByPiece[j] += e * radiosity.OwnByPiece[i, j];
            }
        }
    }

    private int OtherSide(int curtain) => CurtainOf(pieces[curtain].Cell == Pieces.Below ? Pieces.Above : Pieces.Below);

    private int CurtainOf(int cell)
    {
        for (int i = pieces.Count - 1; i >= 0 && pieces[i].IsCurtain; i--)
        {
            if (pieces[i].Cell == cell)
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>Flat outlines seen along the beam, all turned anticlockwise.</summary>
    private void Project(Vector3d towardsSun)
    {
        Vector3d side = Math.Abs(towardsSun.Z) < 0.9 ? new Vector3d(0, 0, 1) : new Vector3d(1, 0, 0);
        Vector3d u = side.Cross(towardsSun).Unit();
        Vector3d v = towardsSun.Cross(u);
        for (int i = 0; i < pieces.Count; i++)
        {
            cosine[i] = pieces[i].Normal.Dot(towardsSun);
            caught[i] = pieces[i].Covering is FaceCovering.Clear clear ? clear.CaughtFraction(pieces[i].Normal, towardsSun) : 0;
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
    private void Light(int i)
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

    private double LitArea()
    {
        double area = 0;
        foreach (LitPart part in lit)
        {
            area += part.Weight * FlatClip.Area(part.Outline);
        }

        return Math.Max(0, area);
    }

    private double LitOn(int b)
    {
        double area = 0;
        foreach (LitPart part in lit)
        {
            area += part.Weight * CommonArea(part.Outline, b);
        }

        return Math.Max(0, area);
    }

    private double LitThrough(int curtain, int b)
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
