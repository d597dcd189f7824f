using System.Numerics;
using System.Runtime.CompilerServices;

namespace Glazewright.Science.Light.Shadows;

/// <summary>
/// How much of the beam that enters through each clear piece the bars inside catch: bars and pieces laid flat along the beam, spots counted. Not for use
/// by several threads at once.
/// </summary>
internal sealed class BarCatch
{
    /// <summary>Lines across the house's picture, spots along it: a 2 in tube of a 150 ft house is one spot or two, and hundreds of tubes even out.</summary>
    private const int Lines = 192;

    private const int Words = 12;

    private readonly List<Piece> pieces;
    private readonly BarShadows shadows;
    private readonly BitRows bars = new(Lines, Words);
    private readonly BitRows holes = new(Lines, Words);
    private readonly BitRows?[] outlines;
    private readonly bool[] isSpanned;
    private FlatMap map;
    private double phaseX;
    private double phaseY;

    internal BarCatch(List<Piece> pieces, IReadOnlyList<ShadeBar> bars)
    {
        this.pieces = pieces;
        shadows = BarShadows.Of(bars);
        outlines = new BitRows?[pieces.Count];
        isSpanned = new bool[pieces.Count];
    }

    internal bool Any => shadows.Any;

    /// <summary>Fills the caught share of each clear piece that a beam enters through; 0 for the others.</summary>
    internal void Of(Vector3d towards, Span<double> caught)
    {
        caught.Clear();
        if (!Any)
        {
            return;
        }

        map = Map(towards);
        (phaseX, phaseY) = Phases.Of(towards);
        Array.Clear(isSpanned);
        bars.Clear();
        shadows.Cast(bars, map, towards, phaseX, phaseY);
        holes.Clear();
        Span<double> corners = stackalloc double[2 * FlatClip.MostCorners];
        for (int i = 0; i < pieces.Count; i++)
        {
            if (!Enters(i, towards))
            {
                continue;
            }

            foreach (Vector3d[] hole in pieces[i].Holes)
            {
                holes.Fill(corners[..map.Put(hole, corners)], phaseX, phaseY);
            }
        }

        for (int i = 0; i < pieces.Count; i++)
        {
            if (Enters(i, towards))
            {
                caught[i] = Share(i, null);
            }
        }
    }

    /// <summary>Share that bars catch of what goes, in the last direction, from one piece to another: a bar shades what lies behind it, not the whole of a face's light.</summary>
    internal double On(int from, int to) => Share(from, Outline(to));

    // Where a piece lies in the picture; worked out once a direction, since several pieces send light to each.
    private BitRows Outline(int piece)
    {
        BitRows outline = outlines[piece] ??= new BitRows(Lines, 1);
        if (!isSpanned[piece])
        {
            Span<double> corners = stackalloc double[2 * FlatClip.MostCorners];
            outline.Span(corners[..map.Put(pieces[piece].Outline, corners)], phaseX, phaseY);
            isSpanned[piece] = true;
        }

        return outline;
    }

    private bool Enters(int i, Vector3d towards) =>
        pieces[i].Covering is FaceCovering.Clear && pieces[i].Normal.Dot(towards) > 1e-9;

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private double Share(int piece, BitRows? within)
    {
        bool holed = pieces[piece].Holes.Length > 0;
        BitRows outline = Outline(piece);
        int seen = 0;
        int dark = 0;
        int first = within is null ? outline.FirstLine : Math.Max(outline.FirstLine, within.FirstLine);
        int end = within is null ? outline.EndLine : Math.Min(outline.EndLine, within.EndLine);
        for (int k = first; k < end; k++)
        {
            int a = outline.FirstSpot(k, 64 * Words);
            int b = outline.EndSpot(k, 64 * Words);
            if (within is not null)
            {
                a = Math.Max(a, within.FirstSpot(k, 64 * Words));
                b = Math.Min(b, within.EndSpot(k, 64 * Words));
            }

            for (int w = a >> 6; w << 6 < b; w++)
            {
                ulong mask = BitRows.Mask(Math.Max(a - (w << 6), 0), Math.Min(b - (w << 6), 64));
                mask &= holed ? ~holes.Word(k, w) : ulong.MaxValue;
                seen += BitOperations.PopCount(mask);
                dark += BitOperations.PopCount(mask & bars.Word(k, w));
            }
        }

        return seen > 0 ? (double)dark / seen : 0;
    }

    // The house's picture along the beam, turned so that its longest axis lies along the lines.
    private FlatMap Map(Vector3d towards)
    {
        var length = new Vector3d(1, 0, 0);
        Vector3d u = length - (length.Dot(towards) * towards);
        u = u.LengthM > 0.1 ? u.Unit() : new Vector3d(0, 1, 0).Cross(towards).Cross(towards).Unit();
        Vector3d v = towards.Cross(u);
        double leastX = double.PositiveInfinity;
        double mostX = double.NegativeInfinity;
        double leastY = double.PositiveInfinity;
        double mostY = double.NegativeInfinity;
        foreach (Piece piece in pieces)
        {
            foreach (Vector3d p in piece.Outline)
            {
                double x = u.Dot(p);
                double y = v.Dot(p);
                leastX = Math.Min(leastX, x);
                mostX = Math.Max(mostX, x);
                leastY = Math.Min(leastY, y);
                mostY = Math.Max(mostY, y);
            }
        }

        return new FlatMap(
            (leastX * u) + (leastY * v),
            64 * Words / Math.Max(1e-9, mostX - leastX) * u,
            Lines / Math.Max(1e-9, mostY - leastY) * v);
    }
}

/// <summary>Where in its spot a sample lies: another place for each direction, so that sampling errors do not add up.</summary>
internal static class Phases
{
    // The plastic number's two fractions strew pairs evenly.
    private const double StepX = 0.7548776662466927;
    private const double StepY = 0.5698402909980532;

    internal static (double X, double Y) Of(int index) => (Part(0.5 + (index * StepX)), Part(0.5 + (index * StepY)));

    /// <summary>From the direction itself, whichever way it is come by.</summary>
    internal static (double X, double Y) Of(Vector3d towards) =>
        Of((int)Math.Round(1000 * (towards.X + 1)) + (int)Math.Round(700 * (towards.Y + 1)));

    private static double Part(double x) => x - Math.Floor(x);
}
