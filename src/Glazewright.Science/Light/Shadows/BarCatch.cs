using System.Numerics;
using System.Runtime.CompilerServices;
using static Glazewright.Science.Light.Shadows.BarPicture;

namespace Glazewright.Science.Light.Shadows;

/// <summary>
/// How much of the beam that enters through each clear piece the bars inside catch: bars and pieces laid flat along the beam, spots counted. Not for use
/// by several threads at once.
/// </summary>
internal sealed class BarCatch
{
    private readonly List<Piece> pieces;
    private readonly BarPicture picture;
    private readonly BitRows bars;
    private readonly BitRows holes = new(Lines, Words);
    private readonly BitRows?[] outlines;
    private readonly bool[] isSpanned;

    /// <summary>Prepares the pieces of one position of the curtain.</summary>
    /// <param name="pieces">Of the house.</param>
    /// <param name="picture">Its bars; other catches may look at it too.</param>
    /// <param name="withParked">Whether the parked curtain's bundles are among them.</param>
    internal BarCatch(List<Piece> pieces, BarPicture picture, bool withParked)
    {
        this.pieces = pieces;
        this.picture = picture;
        bars = picture.Bars(withParked);
        outlines = new BitRows?[pieces.Count];
        isSpanned = new bool[pieces.Count];
    }

    internal bool Any => picture.Any;

    /// <summary>Fills the caught share of each clear piece that a beam enters through; 0 for the others.</summary>
    internal void Of(Vector3d towards, Span<double> caught)
    {
        caught.Clear();
        if (!Any)
        {
            return;
        }

        picture.Turn(towards);
        Array.Clear(isSpanned);
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
                holes.Fill(corners[..picture.Map.Put(hole, corners)], picture.Phase.X, picture.Phase.Y);
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
            outline.Span(corners[..picture.Map.Put(pieces[piece].Outline, corners)], picture.Phase.X, picture.Phase.Y);
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
