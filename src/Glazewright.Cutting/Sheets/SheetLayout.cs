using Glazewright.Cutting.Guards;

namespace Glazewright.Cutting.Sheets;

/// <summary>Lays sheets or panels of one module side by side over a face.</summary>
public static class SheetLayout
{
    /// <summary>Places every sheet of a face.</summary>
    /// <param name="face">Convex outline and openings; ticks up to 10 000 000.</param>
    /// <param name="rules">Module and trim.</param>
    /// <returns>Pieces from the first edge to the last, and upward where an opening parts a sheet.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than three corners, or a number out of range.</exception>
    /// <remarks>
    /// Common practice: ribs run down the slope, the narrow sheet goes to an edge. A sheet's rough length spans the highest and lowest point of the face over
    /// its width, so a raked end is cut from a square one. An opening saves length only where it crosses the whole sheet.
    /// </remarks>
    public static IReadOnlyList<SheetPiece> Place(SheetFace face, SheetRules rules)
    {
        Within.Require(face.Outline.Count, 3, 1_000);
        Within.Require(rules.CoverTicks, 1, 10_000_000);
        Within.Require(rules.MinTrimTicks, 0, rules.CoverTicks);
        Within.Require(rules.EndAllowanceTicks, 0, 10_000_000);
        foreach (FacePoint point in face.Outline)
        {
            Within.Require(point.AcrossTicks, -10_000_000, 10_000_000);
            Within.Require(point.AlongTicks, -10_000_000, 10_000_000);
        }

        long first = face.Outline.Min(point => point.AcrossTicks);
        long last = face.Outline.Max(point => point.AcrossTicks);
        List<SheetPiece> pieces = [];
        long at = first;
        foreach (int width in Widths((int)(last - first), rules))
        {
            AddStrip(face, rules, at, width, pieces);
            at += width;
        }

        return pieces;
    }

    /// <summary>Widths of the sheets side by side, from the first edge.</summary>
    internal static List<int> Widths(int span, SheetRules rules)
    {
        int whole = span / rules.CoverTicks;
        int rest = span % rules.CoverTicks;
        List<int> widths = [.. Enumerable.Repeat(rules.CoverTicks, whole)];
        if (rest == 0)
        {
            return widths;
        }

        if (rules.Trim == TrimPlace.Last)
        {
            if (rest >= rules.MinTrimTicks || whole == 0)
            {
                return [.. widths, rest];
            }

            int shared = rest + rules.CoverTicks;
            return [.. widths[1..], shared - (shared / 2), shared / 2];
        }

        bool narrow = rest / 2 < Math.Max(rules.MinTrimTicks, 1);
        int edges = rest + (narrow && whole > 0 ? rules.CoverTicks : 0);
        return whole == 0 ? [rest] : [edges - (edges / 2), .. narrow ? widths[1..] : widths, edges / 2];
    }

    private static void AddStrip(SheetFace face, SheetRules rules, long from, int width, List<SheetPiece> pieces)
    {
        long to = from + width;
        long[] across = [.. face.Outline.Select(p => p.AcrossTicks).Where(x => x > from && x < to), from, to];
        (long Low, long High)[] cuts = Array.ConvertAll(across, x => Extent(face.Outline, x));
        long low = cuts.Min(cut => cut.Low);
        long high = cuts.Max(cut => cut.High);
        bool raked = Array.Exists(cuts, cut => cut.Low != low || cut.High != high);
        FaceOpening[] touching = [.. face.Openings.Where(o => o.FromAcrossTicks < to && o.ToAcrossTicks > from).OrderBy(o => o.FromAlongTicks)];
        long start = low;
        foreach (FaceOpening opening in touching.Where(o => o.FromAcrossTicks <= from && o.ToAcrossTicks >= to))
        {
            Add(start, Math.Min(high, opening.FromAlongTicks));
            start = Math.Max(start, opening.ToAlongTicks);
        }

        Add(start, high);

        void Add(long bottom, long top)
        {
            if (top <= bottom)
            {
                return;
            }

            bool shaped = raked || touching.Any(o => o.FromAlongTicks < top && o.ToAlongTicks > bottom);
            pieces.Add(new SheetPiece(
                FormattableString.Invariant($"{face.Mark}-{pieces.Count + 1:00}"),
                from,
                width,
                bottom,
                (int)(top - bottom) + rules.EndAllowanceTicks,
                width < rules.CoverTicks,
                shaped));
        }
    }

    /// <summary>Lowest and highest point of a convex outline on one line along the ribs; outward to the whole tick.</summary>
    private static (long Low, long High) Extent(IReadOnlyList<FacePoint> outline, long across)
    {
        long low = long.MaxValue;
        long high = long.MinValue;
        for (int i = 0; i < outline.Count; i++)
        {
            FacePoint a = outline[i];
            FacePoint b = outline[(i + 1) % outline.Count];
            if (a.AcrossTicks > b.AcrossTicks)
            {
                (a, b) = (b, a);
            }

            if (across < a.AcrossTicks || across > b.AcrossTicks)
            {
                continue;
            }

            if (a.AcrossTicks == b.AcrossTicks)
            {
                low = Math.Min(low, Math.Min(a.AlongTicks, b.AlongTicks));
                high = Math.Max(high, Math.Max(a.AlongTicks, b.AlongTicks));
                continue;
            }

            double along = a.AlongTicks + ((b.AlongTicks - a.AlongTicks) * ((across - a.AcrossTicks) / (double)(b.AcrossTicks - a.AcrossTicks)));
            low = Math.Min(low, (long)Math.Floor(along + 1e-6));
            high = Math.Max(high, (long)Math.Ceiling(along - 1e-6));
        }

        return (low, high);
    }
}
