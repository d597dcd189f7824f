namespace Glazewright.Cutting.Bars;

/// <summary>Lists every pattern that a plan cheaper than the best known one could hold.</summary>
/// <remarks>
/// With a dual that proves a bound, a plan's cost is the dual's value plus the sum of its patterns' reduced costs, none of them negative; a pattern whose
/// reduced cost alone exceeds the gap is in no cheaper plan (reduced-cost fixing, textbook). Only patterns that hold no further piece are listed: a plan may
/// cover more than is wanted, and a fuller pattern has a smaller reduced cost.
/// </remarks>
internal static class CandidatePatterns
{
    private const int MostPatterns = 1_500;
    private const int MostNodes = 2_000_000;

    /// <summary>Lists the patterns.</summary>
    /// <param name="of">The case.</param>
    /// <param name="root">Its relaxation.</param>
    /// <param name="allowedCents">Cost a plan may have at most to be of interest.</param>
    /// <param name="patterns">The patterns, when there are not too many.</param>
    /// <returns>False when there are too many to list.</returns>
    public static bool TryList(CutCase of, Relaxation root, long allowedCents, out List<Pattern> patterns)
    {
        double dualCents = 0;
        for (int i = 0; i < of.Size.Length; i++)
        {
            dualCents += root.PriceCents[i] * of.Demand[i];
        }

        // A hair wider than exact arithmetic would have it: one pattern too many does no harm.
        double gapCents = allowedCents - dualCents + (1e-6 * Math.Max(1, allowedCents));
        List<Pattern> found = [];
        int[] order = [.. Enumerable.Range(0, of.Size.Length).Where(i => of.Demand[i] > 0)
            .OrderByDescending(i => root.PriceCents[i] / of.Size[i]).ThenBy(i => i)];
        int[] counts = new int[of.Size.Length];
        int nodes = 0;
        bool complete = true;
        for (int j = 0; j < of.Room.Length && complete; j++)
        {
            complete = Descend(j, 0, of.Room[j], of.CostCents[j] - gapCents);
        }

        patterns = found;
        return complete;

        bool Descend(int stock, int k, int left, double wantedCents)
        {
            if (++nodes > MostNodes || found.Count > MostPatterns)
            {
                return false;
            }

            if (k == order.Length)
            {
                bool isFull = Array.TrueForAll(order, i => counts[i] == of.Demand[i] || of.Size[i] > left);
                if (isFull && wantedCents <= 0)
                {
                    found.Add(new Pattern(stock, (int[])counts.Clone()));
                }

                return true;
            }

            int item = order[k];
            if (wantedCents > left * root.PriceCents[item] / of.Size[item])
            {
                return true;
            }

            for (int take = Math.Min(of.Demand[item], left / of.Size[item]); take >= 0; take--)
            {
                counts[item] = take;
                if (!Descend(stock, k + 1, left - (take * of.Size[item]), wantedCents - (take * root.PriceCents[item])))
                {
                    return false;
                }
            }

            return true;
        }
    }
}
