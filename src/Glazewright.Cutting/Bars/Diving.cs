namespace Glazewright.Cutting.Bars;

/// <summary>Rounding by diving: fix the patterns the relaxation is surest of, solve the relaxation of what is left, and go on.</summary>
internal static class Diving
{
    /// <summary>Share of a stick above which a fractional pattern is taken whole; one dive for each.</summary>
    private static readonly double[] Thresholds = [0.55, 0.8, 0.95, 0.7, 0.6, 0.9];

    /// <summary>Dives until a plan meets the bound or the dives are used up.</summary>
    /// <param name="of">The case.</param>
    /// <param name="root">Its relaxation.</param>
    /// <param name="best">Best plan known.</param>
    /// <param name="pool">Every pattern seen is added here.</param>
    /// <param name="cancel">Looked at in every relaxation.</param>
    /// <returns>The best plan, the given one or a cheaper one.</returns>
    public static Packing Improve(CutCase of, Relaxation root, Packing best, PatternPool pool, CancellationToken cancel)
    {
        for (int dive = 0; dive < Thresholds.Length && best.SticksCents(of) > root.BoundCents; dive++)
        {
            best = Dive(of, root, best, pool, Thresholds[dive], skip: dive / 2, cancel);
        }

        return best;
    }

    private static Packing Dive(CutCase of, Relaxation root, Packing best, PatternPool pool, double threshold, int skip, CancellationToken cancel)
    {
        int[] left = (int[])of.Demand.Clone();
        Packing fixedPart = new();
        Relaxation at = root;
        while (true)
        {
            int before = left.Sum();
            foreach (int c in Order(at, skip))
            {
                double part = at.Times[c] - Math.Floor(at.Times[c] + 1e-9);
                int wanted = (int)Math.Floor(at.Times[c] + 1e-9) + (part >= threshold ? 1 : 0);
                Fix(at.Columns[c], wanted);
            }

            if (left.Sum() == before)
            {
                foreach (int c in Order(at, skip).Take(1))
                {
                    Fix(at.Columns[c], 1);
                }
            }

            skip = 0;
            CutCase rest = of.With((int[])left.Clone());
            if (left.Sum() == before)
            {
                return best;
            }

            Packing whole = fixedPart.Copy();
            whole.AddAll(FirstFit.Best(rest));
            best = whole.SticksCents(of) < best.SticksCents(of) ? whole : best;
            if (rest.IsEmpty || best.SticksCents(of) <= root.BoundCents)
            {
                return best;
            }

            at = ColumnGeneration.Solve(rest, pool.Concat(at.Columns).Select(column => Clip(rest, column)).OfType<Pattern>().ToArray(), cancel);
            pool.AddAll(at.Columns);
            if (fixedPart.SticksCents(of) + at.BoundCents >= best.SticksCents(of))
            {
                return best;
            }
        }

        void Fix(Pattern column, int wanted)
        {
            int take = Math.Min(wanted, column.Repeats(left));
            for (int i = 0; take > 0 && i < left.Length; i++)
            {
                left[i] -= take * column.Counts[i];
            }

            fixedPart.Add(column, take);
        }
    }

    /// <summary>Columns by falling fractional part; a later dive starts at another one.</summary>
    private static IEnumerable<int> Order(Relaxation at, int skip) =>
        Enumerable.Range(0, at.Times.Length)
            .Where(c => at.Times[c] > 1e-6)
            .OrderByDescending(c => at.Times[c] - Math.Floor(at.Times[c] + 1e-9))
            .ThenByDescending(c => at.Times[c])
            .ThenBy(c => c)
            .Skip(skip);

    private static Pattern? Clip(CutCase rest, Pattern column)
    {
        int[] counts = new int[column.Counts.Length];
        for (int i = 0; i < counts.Length; i++)
        {
            counts[i] = Math.Min(column.Counts[i], rest.Demand[i]);
        }

        int used = rest.Used(counts);
        return used == 0 ? null : new Pattern(rest.CheapestFor(used), counts);
    }
}
