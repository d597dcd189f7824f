namespace Glazewright.Cutting.Bars;

/// <summary>Plans with few saw set-ups: patterns are picked one after the other for how often they can be repeated.</summary>
/// <remarks>Sequential pattern picking after R. W. Haessler, "Controlling cutting pattern changes in one-dimensional trim problems", Operations Research 23
/// (1975) (idea, from memory): the longest repeat whose best pattern leaves no more drop than allowed.</remarks>
internal static class FewSetUps
{
    private static readonly double[] AllowedDropFractions = [0.005, 0.02, 0.05, 0.10, 0.20];

    /// <summary>The cheapest of several such plans, set-ups counted.</summary>
    public static Packing Best(CutCase of, long setUpCents, Packing best, PatternPool pool)
    {
        Knapsack knapsack = new(of.Size, of.Room);
        long[] value = Array.ConvertAll(of.Size, size => (long)size);
        foreach (double allowed in AllowedDropFractions)
        {
            Packing next = Pick(of, knapsack, value, allowed);
            pool.AddAll(next.Runs.Select(run => run.Pattern));
            best = next.TotalCents(of, setUpCents) < best.TotalCents(of, setUpCents) ? next : best;
        }

        return best;
    }

    private static Packing Pick(CutCase of, Knapsack knapsack, long[] value, double allowedDropFraction)
    {
        int[] left = (int[])of.Demand.Clone();
        Packing packing = new();
        while (Array.Exists(left, count => count > 0))
        {
            int repeat = left.Max();
            Pattern? pick = null;
            while (pick is null)
            {
                int times = repeat;
                (long Value, int[] Counts)[] filled = knapsack.Solve(value, Array.ConvertAll(left, count => count / times));
                pick = Tightest(of, filled, repeat == 1 ? 1 : allowedDropFraction);
                repeat = pick is null ? Math.Max(1, repeat * 9 / 10) : repeat;
            }

            int sticks = pick.Repeats(left);
            for (int i = 0; i < left.Length; i++)
            {
                left[i] -= sticks * pick.Counts[i];
            }

            packing.Add(pick, sticks);
        }

        return packing;
    }

    private static Pattern? Tightest(CutCase of, (long Value, int[] Counts)[] filled, double allowedDropFraction)
    {
        int best = -1;
        for (int j = 0; j < filled.Length; j++)
        {
            bool tight = filled[j].Value > 0 && of.Room[j] - filled[j].Value <= allowedDropFraction * of.Room[j];
            if (tight && (best < 0 || of.CostCents[j] * filled[best].Value < of.CostCents[best] * filled[j].Value))
            {
                best = j;
            }
        }

        return best < 0 ? null : new Pattern(of.CheapestFor(of.Used(filled[best].Counts)), filled[best].Counts);
    }
}
