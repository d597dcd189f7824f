using System.Numerics;
using System.Runtime.CompilerServices;
using Glazewright.Science.Guards;

namespace Glazewright.Science.Light.Shadows;

/// <summary>How finely a plane's cells are looked at: lines across a cell and words of 64 spots along it.</summary>
/// <param name="LinesPerCell">1 to 256.</param>
/// <param name="WordsPerCell">1 to 64.</param>
public readonly record struct ScanFineness(int LinesPerCell, int WordsPerCell)
{
    /// <summary>4 lines of 64 spots: 256 rays a cell and direction.</summary>
    public static ScanFineness Usual => new(4, 1);
}

/// <summary>
/// Light of one direction on the cells of a plane inside a house, past every bar: faces, patches, bars and neighbours are laid along the light on to the
/// plane and their spots counted, so that every cell sees hundreds of rays at the cost of drawing a picture. Not for use by several threads at once.
/// </summary>
/// <remarks>
/// Geometry is exact but for the spots: the sun is a point (its disc blurs 9 mm a metre, from 0.53°), and a slender bar's ends throw no shadow of their own. Limits: the house is
/// convex, bars are opaque, what bars and neighbours throw back is followed as diffuse light elsewhere.
/// </remarks>
public sealed class BeamScan
{
    /// <summary>A face that looks up at least this much is roof.</summary>
    private const double RoofLeast = 0.05;

    private const int None = -1;
    private const int Several = -2;

    private readonly List<Piece> pieces;
    private readonly Surroundings surroundings;
    private readonly BarShadows[] shadows;
    private readonly (double Through, Vector3d[][] Faces, Vector3d[] Normals)[] neighbours;
    private readonly BitRows[] dark;
    private readonly BitRows holes;
    private readonly BitRows outline;
    private readonly BitRows[] dim;
    private readonly int linesPerCell;
    private readonly int wordsPerCell;
    private readonly CurtainPlane? curtain;

    /// <summary>Prepares a house and a plane in it.</summary>
    /// <param name="enclosure">The house with its bars.</param>
    /// <param name="surroundings">What stands around it.</param>
    /// <param name="plane">The plane; its cells lie inside the house or on its faces.</param>
    /// <param name="fineness">How finely to look.</param>
    /// <param name="curtain">A drawn curtain above the plane, or null.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fineness out of range, or the plane reaches above the curtain.</exception>
    public BeamScan(Enclosure enclosure, Surroundings surroundings, ReceivingPlane plane, ScanFineness fineness, CurtainPlane? curtain = null)
    {
        ArgumentNullException.ThrowIfNull(enclosure);
        ArgumentNullException.ThrowIfNull(surroundings);
        ArgumentNullException.ThrowIfNull(plane);
        Within.Require(fineness.LinesPerCell, 1, 256);
        Within.Require(fineness.WordsPerCell, 1, 64);
        if (curtain is not null)
        {
            double topM = plane.Origin.Z + Math.Max(0, plane.LengthUM * plane.AlongU.Z) + Math.Max(0, plane.LengthVM * plane.AlongV.Z);
            Within.Require(topM, double.NegativeInfinity, curtain.HeightM);
        }

        Plane = plane;
        this.curtain = curtain;
        this.surroundings = surroundings;
        linesPerCell = fineness.LinesPerCell;
        wordsPerCell = fineness.WordsPerCell;
        pieces = Pieces.Of(enclosure, curtain);
        shadows =
        [
            .. Enum.GetValues<ShadeCause>().Select(cause =>
                BarShadows.Of([.. enclosure.Bars.Where(b => b.Cause == cause)], plane.Origin, plane.Normal)),
        ];
        neighbours = [.. surroundings.Obstacles.Select(o => Kept(o, plane)).Where(n => n.Faces.Length > 0)];
        int lines = plane.CellsV * linesPerCell;
        int words = plane.CellsU * wordsPerCell;
        dark = [.. shadows.Select(_ => new BitRows(lines, words))];
        holes = new BitRows(lines, words);
        outline = new BitRows(lines, 0);
        dim = [.. neighbours.Select(_ => new BitRows(lines, words))];
    }

    /// <summary>The plane.</summary>
    public ReceivingPlane Plane { get; }

    /// <summary>Light of one direction.</summary>
    /// <param name="towards">Towards the light, unit, house axes.</param>
    /// <param name="irradianceFactor">Filled, one a cell: mean irradiance on the plane over beam-normal irradiance.</param>
    /// <returns>What became of the light over the whole plane; all zero when the light comes from behind the plane.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Too little room.</exception>
    public BeamShares Look(Vector3d towards, Span<double> irradianceFactor)
    {
        Within.Require(irradianceFactor.Length, Plane.Count, int.MaxValue);
        irradianceFactor[..Plane.Count].Clear();
        double facing = Plane.Normal.Dot(towards);
        if (facing < 1e-6)
        {
            return default;
        }

        if (surroundings.Hides(towards))
        {
            return default(BeamShares) with { AroundFraction = 1 };
        }

        FlatMap map = FlatMap.OnPlane(Plane, towards, 64.0 * holes.Words, holes.Lines);
        (double phaseX, double phaseY) = Phases.Of(towards);
        for (int c = 0; c < dark.Length; c++)
        {
            dark[c].Clear();
            shadows[c].Cast(dark[c], map, towards, phaseX, phaseY);
        }

        Draw(map, towards, phaseX, phaseY);
        double spots = 64.0 * holes.Words * holes.Lines;
        double perCell = facing / (64.0 * wordsPerCell * linesPerCell);
        Span<double> corners = stackalloc double[2 * FlatClip.MostCorners];
        BeamShares shares = default;
        for (int i = 0; i < pieces.Count; i++)
        {
            if (!Enters(i, towards))
            {
                continue;
            }

            outline.Span(corners[..map.Put(pieces[i].Outline, corners)], phaseX, phaseY);
            if (pieces[i].Covering is not FaceCovering.Clear covering)
            {
                Counted met = Count(i, 0, default);
                shares += pieces[i].Normal.Z > RoofLeast
                    ? default(BeamShares) with { OpaqueRoofFraction = met.Seen }
                    : default(BeamShares) with { OpaqueWallFraction = met.Seen };
                continue;
            }

            double passes = covering.At(pieces[i].Normal, towards).TransmittanceFraction;
            double joints = covering.CaughtFraction(pieces[i].Normal, towards);
            double haze = covering.Optics.HazeFraction;

            // All light that enters above a drawn curtain comes through its cloth.
            CurtainPlane? cloth = pieces[i].Cell == Pieces.Above ? curtain : null;
            double throughCloth = cloth?.TransmittanceFraction ?? 1;
            double straight = throughCloth * (1 - (cloth?.ScatterFraction ?? 0));
            Counted spot = Count(i, perCell * passes * (1 - joints) * (1 - haze) * straight, irradianceFactor);
            double inside = spot.PastCurtain * (1 - joints);
            double clean = passes / covering.StateFactor;
            double beam = inside * passes * (1 - haze);
            shares += new BeamShares(
                spot.Seen - spot.Lit,
                0,
                0,
                spot.Lit - spot.PastFrame + (spot.PastCurtain * joints),
                spot.PastFrame - spot.PastEquipment,
                spot.PastEquipment - spot.PastCurtain + (beam * (1 - throughCloth)),
                inside * (1 - clean),
                inside * (clean - passes),
                (inside * passes * haze) + (beam * (throughCloth - straight)),
                beam * straight);
        }

        return 1 / spots * shares;
    }

    private bool Enters(int i, Vector3d towards) => !pieces[i].IsCurtain && pieces[i].Normal.Dot(towards) > 1e-9;

    // Outlines of patches on faces that the light enters by, and of neighbours.
    private void Draw(in FlatMap map, Vector3d towards, double phaseX, double phaseY)
    {
        Span<double> corners = stackalloc double[2 * FlatClip.MostCorners];
        holes.Clear();
        for (int i = 0; i < pieces.Count; i++)
        {
            foreach (Vector3d[] hole in Enters(i, towards) ? pieces[i].Holes : [])
            {
                holes.Fill(corners[..map.Put(hole, corners)], phaseX, phaseY);
            }
        }

        for (int n = 0; n < neighbours.Length; n++)
        {
            dim[n].Clear();
            for (int f = 0; f < neighbours[n].Faces.Length; f++)
            {
                if (neighbours[n].Normals[f].Dot(towards) > 0)
                {
                    dim[n].Fill(corners[..map.Put(neighbours[n].Faces[f], corners)], phaseX, phaseY);
                }
            }
        }
    }

    // Spots of the piece last spanned: seen at all, lit past the neighbours, then past each cause of shade too.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private Counted Count(int piece, double strength, Span<double> irradianceFactor)
    {
        bool holed = pieces[piece].Holes.Length > 0;
        int words = holes.Words;
        Span<Tally> dimmed = stackalloc Tally[dim.Length];
        dimmed.Clear();
        bool shaded = Array.Exists(dim, d => !d.IsEmpty);
        Tally bright = default;
        Counted all = default;
        for (int k = outline.FirstLine; k < outline.EndLine; k++)
        {
            int a = outline.FirstSpot(k, 64 * words);
            int b = outline.EndSpot(k, 64 * words);
            int row = k / linesPerCell * Plane.CellsU;
            ReadOnlySpan<ulong> frame = dark[(int)ShadeCause.Frame].Line(k);
            ReadOnlySpan<ulong> equipment = dark[(int)ShadeCause.Equipment].Line(k);
            ReadOnlySpan<ulong> curtain = dark[(int)ShadeCause.Curtain].Line(k);
            ReadOnlySpan<ulong> hole = holed ? holes.Line(k) : default;
            for (int w = a >> 6; w << 6 < b; w++)
            {
                ulong mask = BitRows.Mask(Math.Max(a - (w << 6), 0), Math.Min(b - (w << 6), 64));
                mask &= holed ? ~hole[w] : ulong.MaxValue;
                ulong pastFrame = mask & ~frame[w];
                ulong pastEquipment = pastFrame & ~equipment[w];
                ulong open = pastEquipment & ~curtain[w];
                int before = shaded ? Before(mask, k, w) : None;
                double lit;
                if (before == Several)
                {
                    lit = Lit(open, k, w);
                    all.Seen += BitOperations.PopCount(mask);
                    all.Lit += Lit(mask, k, w);
                    all.PastFrame += Lit(pastFrame, k, w);
                    all.PastEquipment += Lit(pastEquipment, k, w);
                    all.PastCurtain += lit;
                }
                else
                {
                    lit = bright.Add(mask, pastFrame, pastEquipment, open);
                    if (before != None)
                    {
                        ulong shade = dim[before].Word(k, w);
                        lit -= (1 - neighbours[before].Through) * dimmed[before].Add(mask & shade, pastFrame & shade, pastEquipment & shade, open & shade);
                    }
                }

                if (strength > 0)
                {
                    irradianceFactor[row + (w / wordsPerCell)] += strength * lit;
                }
            }
        }

        all.Seen += bright.Whole;
        all.AddLit(1, bright);
        for (int n = 0; n < dimmed.Length; n++)
        {
            all.AddLit(neighbours[n].Through - 1, dimmed[n]);
        }

        return all;
    }

    // Which neighbour stands before spots of a mask: most words have none, few have several.
    private int Before(ulong mask, int line, int word)
    {
        int found = None;
        for (int n = 0; n < dim.Length; n++)
        {
            if (!dim[n].IsEmpty && (mask & dim[n].Word(line, word)) != 0)
            {
                found = found == None ? n : Several;
            }
        }

        return found;
    }

    // Spots of a mask, each dimmed by the neighbours before it.
    private double Lit(ulong mask, int line, int word)
    {
        int whole = BitOperations.PopCount(mask);
        double lit = whole;
        for (int n = 0; n < dim.Length; n++)
        {
            ulong shade = dim[n].IsEmpty ? 0 : mask & dim[n].Word(line, word);
            if (shade != 0)
            {
                lit *= 1 - ((1 - neighbours[n].Through) * BitOperations.PopCount(shade) / whole);
            }
        }

        return lit;
    }

    private static (double Through, Vector3d[][] Faces, Vector3d[] Normals) Kept(Obstacle obstacle, ReceivingPlane plane)
    {
        (Vector3d[] Kept, Vector3d Normal)[] faces =
        [
            .. obstacle.Faces
                .Select(f => (Kept: Polygons.CutByPlane(f, plane.Origin, plane.Normal), Normal: Polygons.AreaVector(f).Unit()))
                .Where(f => f.Kept.Length >= 3),
        ];
        return (obstacle.TransmittanceFraction, [.. faces.Select(f => f.Kept)], [.. faces.Select(f => f.Normal)]);
    }

    /// <summary>Spots, whole.</summary>
    private struct Tally
    {
        internal long Whole;
        internal long PastFrame;
        internal long PastEquipment;
        internal long Open;

        /// <summary>Adds a word's and gives back those open.</summary>
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        internal int Add(ulong mask, ulong pastFrame, ulong pastEquipment, ulong open)
        {
            Whole += BitOperations.PopCount(mask);
            PastFrame += BitOperations.PopCount(pastFrame);
            PastEquipment += BitOperations.PopCount(pastEquipment);
            int opened = BitOperations.PopCount(open);
            Open += opened;
            return opened;
        }
    }

    private struct Counted
    {
        internal double Seen;
        internal double Lit;
        internal double PastFrame;
        internal double PastEquipment;
        internal double PastCurtain;

        internal void AddLit(double weight, in Tally spots)
        {
            Lit += weight * spots.Whole;
            PastFrame += weight * spots.PastFrame;
            PastEquipment += weight * spots.PastEquipment;
            PastCurtain += weight * spots.Open;
        }
    }
}
