using Glazewright.Design.Form;

namespace Glazewright.Papers.Solids;

/// <summary>Cuts a convex polygon with convex holes into trapezoids: upright strips between all corners, in each what the holes leave.</summary>
internal static class AreaCells
{
    private const double LeastM = 1e-7;

    /// <summary>The strips from the least u to the greatest.</summary>
    public static IReadOnlyList<Strip> Of(IReadOnlyList<Point2> outline, IReadOnlyList<IReadOnlyList<Point2>> holes)
    {
        double[] stations = [.. outline.Concat(holes.SelectMany(h => h)).Select(p => p.UM).Order()];
        List<Strip> strips = [];
        double from = stations[0];
        foreach (double to in stations)
        {
            if (to - from < LeastM)
            {
                continue;
            }

            List<Cell> cells = Across(outline, from, to) is { } whole ? [whole] : [];
            foreach (IReadOnlyList<Point2> hole in holes)
            {
                if (Across(hole, from, to) is { } gone)
                {
                    cells = [.. cells.SelectMany(c => Less(c, gone))];
                }
            }

            strips.Add(new Strip(from, to, cells));
            from = to;
        }

        return strips;
    }

    /// <summary>Intervals less other intervals.</summary>
    public static IEnumerable<(double From, double To)> Less(IReadOnlyList<(double From, double To)> some, IReadOnlyList<(double From, double To)> others)
    {
        IEnumerable<(double From, double To)> left = some;
        foreach ((double from, double to) in others)
        {
            left = [.. left.SelectMany(s => (IEnumerable<(double, double)>)[(s.From, Math.Min(s.To, from)), (Math.Max(s.From, to), s.To)]).Where(s => s.Item2 - s.Item1 > LeastM)];
        }

        return left.Where(s => s.To - s.From > LeastM);
    }

    private static IEnumerable<Cell> Less(Cell cell, Cell gone)
    {
        if (gone.MiddleLowM >= cell.MiddleHighM || gone.MiddleHighM <= cell.MiddleLowM)
        {
            return [cell];
        }

        return ((Cell[])
        [
            cell with { HighFromM = Math.Min(cell.HighFromM, gone.LowFromM), HighToM = Math.Min(cell.HighToM, gone.LowToM) },
            cell with { LowFromM = Math.Max(cell.LowFromM, gone.HighFromM), LowToM = Math.Max(cell.LowToM, gone.HighToM) },
        ]).Where(c => c.MiddleHighM - c.MiddleLowM > LeastM);
    }

    // What a convex polygon without corners between the two stations covers of the strip.
    private static Cell? Across(IReadOnlyList<Point2> outline, double from, double to)
    {
        double middle = (from + to) / 2;
        (Point2 P, Point2 Q)? low = null;
        (Point2 P, Point2 Q)? high = null;
        for (int i = 0; i < outline.Count; i++)
        {
            (Point2 p, Point2 q) = (outline[i], outline[(i + 1) % outline.Count]);
            if (p.UM < middle && q.UM > middle)
            {
                low = (p, q);
            }
            else if (p.UM > middle && q.UM < middle)
            {
                high = (p, q);
            }
        }

        return low is { } l && high is { } h ? new Cell(V(l, from), V(l, to), V(h, from), V(h, to)) : null;
    }

    private static double V((Point2 P, Point2 Q) edge, double u) => edge.P.VM + (u - edge.P.UM) / (edge.Q.UM - edge.P.UM) * (edge.Q.VM - edge.P.VM);

    /// <summary>A strip between two stations.</summary>
    internal sealed record Strip(double FromM, double ToM, IReadOnlyList<Cell> Cells);

    /// <summary>A trapezoid of a strip: its lower and upper edge at both stations.</summary>
    internal readonly record struct Cell(double LowFromM, double LowToM, double HighFromM, double HighToM)
    {
        public double MiddleLowM => (LowFromM + LowToM) / 2;

        public double MiddleHighM => (HighFromM + HighToM) / 2;
    }
}
