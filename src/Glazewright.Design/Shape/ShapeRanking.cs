using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Shape;

/// <summary>Orders shapes: what meets most wishes, then the rule for the choice; the front that no shape beats; the twenty for the full map.</summary>
internal static class ShapeRanking
{
    /// <summary>Shapes nearer than this in every length and with the same covers count as one, m.</summary>
    private const double SameM = 0.2;

    /// <summary>How much more may be missed by shapes beside the nearest miss, so that there is a choice among them.</summary>
    private const double NearMissRatio = 0.05;

    /// <summary>Those that meet every wish; where none does, the nearest miss and those hardly further off.</summary>
    public static List<ShapeCell> Eligible(IReadOnlyList<ShapeCell> cells)
    {
        List<ShapeCell> meeting = [.. cells.Where(c => c.Missed == ShapeWish.None)];
        if (meeting.Count > 0)
        {
            return meeting;
        }

        int fewest = cells.Min(Weight);
        double least = cells.Where(c => Weight(c) == fewest).Min(c => c.Shortfall);
        return [.. cells.Where(c => Weight(c) == fewest && c.Shortfall <= least + NearMissRatio)];
    }

    /// <summary>What a shape's misses weigh: a roof that drips is worse than two other misses, and noon sun on a wall is given up first.</summary>
    public static int Weight(ShapeCell cell) =>
        (5 * Missed(cell, ShapeWish.Shed)) + (2 * Missed(cell, ShapeWish.Glazing)) + (2 * Missed(cell, ShapeWish.DarkMonth))
        + (2 * Missed(cell, ShapeWish.Evenness)) + Missed(cell, ShapeWish.NoonReach);

    /// <summary>Better for the search: lighter misses, by less, then more winter light.</summary>
    public static int Compare(ShapeCell a, ShapeCell b)
    {
        int missed = Weight(a).CompareTo(Weight(b));
        int shortfall = missed != 0 ? missed : a.Shortfall.CompareTo(b.Shortfall);
        int winter = shortfall != 0 ? shortfall : b.Winter.CompareTo(a.Winter);
        return winter != 0 ? winter : a.GlazingM2.CompareTo(b.GlazingM2);
    }

    /// <summary>The rule: of those within the light given up off the best winter light, the one with least glazing.</summary>
    public static int Choose(IReadOnlyList<(double Winter, double GlazingM2)> shapes, double givenUpFraction)
    {
        double least = shapes.Max(s => s.Winter) * (1 - givenUpFraction);
        int best = -1;
        for (int i = 0; i < shapes.Count; i++)
        {
            if (shapes[i].Winter >= least
                && (best < 0 || shapes[i].GlazingM2 < shapes[best].GlazingM2 - 1e-9
                    || (shapes[i].GlazingM2 <= shapes[best].GlazingM2 + 1e-9 && shapes[i].Winter > shapes[best].Winter)))
            {
                best = i;
            }
        }

        return best;
    }

    /// <summary>Shapes that no other beats in winter light, summer light and glazing at once, by falling winter light.</summary>
    public static List<ShapeCell> Front(IEnumerable<ShapeCell> cells, SummerLight summer)
    {
        double sign = summer == SummerLight.Less ? 1 : -1;
        ShapeCell[] sorted = [.. cells.OrderByDescending(c => c.Winter).ThenBy(c => c.GlazingM2).ThenBy(c => sign * c.Summer)];
        List<ShapeCell> front = [];
        foreach (ShapeCell c in sorted)
        {
            if (!front.Exists(f => f.GlazingM2 <= c.GlazingM2 && sign * f.Summer <= sign * c.Summer))
            {
                front.Add(c);
            }
        }

        return front;
    }

    /// <summary>
    /// The best to look at again, the choice first: half of them next by the rule and each a different shape, the rest spread evenly over the front so that
    /// the ranks have something to agree on.
    /// </summary>
    public static List<ShapeCell> Best(IReadOnlyList<ShapeCell> eligible, IReadOnlyList<ShapeCell> front, double givenUpFraction, int count)
    {
        List<ShapeCell> best = [];
        double least = eligible.Max(c => c.Winter) * (1 - givenUpFraction);
        ShapeCell[] byRule = [.. eligible.Where(c => c.Winter >= least).OrderBy(c => c.GlazingM2).ThenByDescending(c => c.Winter)];
        Take(byRule, (count + 1) / 2);
        ShapeCell[] spread = [.. Enumerable.Range(0, 4 * count).Select(i => front[(int)((long)i * (front.Count - 1) / Math.Max(1, (4 * count) - 1))])];

        // Every fourth first, then those between: even over the front even when some are like others.
        for (int start = 0; start < 4; start++)
        {
            Take(spread.Where((_, i) => i % 4 == (start * 3) % 4), count);
        }

        return best;

        void Take(IEnumerable<ShapeCell> from, int most)
        {
            foreach (ShapeCell c in from)
            {
                if (best.Count >= most)
                {
                    return;
                }

                if (!best.Exists(b => IsSame(b, c)))
                {
                    best.Add(c);
                }
            }
        }
    }

    private static int Missed(ShapeCell cell, ShapeWish wish) => cell.Missed.HasFlag(wish) ? 1 : 0;

    private static bool IsSame(ShapeCell a, ShapeCell b) =>
        a.Field == b.Field && a.Set == b.Set
        && Math.Abs(a.Section.NearEaveM - b.Section.NearEaveM) < SameM
        && Math.Abs(a.Section.FarEaveM - b.Section.FarEaveM) < SameM
        && Math.Abs(a.Section.RidgeOffsetM - b.Section.RidgeOffsetM) < SameM
        && Math.Abs(a.Section.RidgeM - b.Section.RidgeM) < SameM;
}
