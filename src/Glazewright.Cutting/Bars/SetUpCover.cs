using System.Numerics;

namespace Glazewright.Cutting.Bars;

/// <summary>Proves by counting that no plan with fewer set-ups is cheaper: every choice of few patterns that shows every size is looked at.</summary>
/// <remarks>
/// Branching on the unshown size that the fewest patterns show; a pattern tried at a size is left out of what is tried after it, so no choice comes twice
/// (textbook). A branch ends where the sticks' prices in the relaxation's dual already cost too much. Stopped by counted nodes, never by time.
/// </remarks>
internal sealed class SetUpCover
{
    private const int MostNodes = 400_000;

    private readonly CutCase of;
    private readonly Pattern[] patterns;
    private readonly ulong[] shows;
    private readonly double[] reducedCents;
    private readonly int[] atMost;
    private readonly double[] priceCents;
    private readonly long setUpCents;
    private readonly double allowedCents;
    private readonly double dualCents;
    private readonly int mostPatterns;
    private readonly bool[] isBarred;
    private readonly int[] chosen;
    private readonly int[] left;
    private int nodes;

    private SetUpCover(CutCase of, Relaxation root, IReadOnlyList<Pattern> all, long setUpCents, long allowedCents, long sticksBoundCents)
    {
        this.of = of;
        this.setUpCents = setUpCents;
        priceCents = root.PriceCents;
        patterns = [.. all];
        shows = Array.ConvertAll(patterns, Shows);
        atMost = Array.ConvertAll(patterns, of.MostTimes);
        reducedCents = Array.ConvertAll(patterns, p => of.CostCents[p.Stock] - Worth(p.Counts));
        dualCents = Worth(of.Demand);

        // A hair wider than exact arithmetic would have it: a choice too many is looked at, none too few.
        this.allowedCents = allowedCents + (1e-6 * Math.Max(1, allowedCents));
        mostPatterns = (int)Math.Min(patterns.Length, Math.Max(0, (allowedCents - sticksBoundCents) / setUpCents));
        isBarred = new bool[patterns.Length];
        chosen = new int[mostPatterns];
        left = new int[of.Demand.Length];
    }

    /// <summary>Whether it is proved that no plan of these patterns costs as little as allowed.</summary>
    /// <param name="of">The case.</param>
    /// <param name="root">Its relaxation, whose prices no pattern undercuts.</param>
    /// <param name="all">The full list of patterns such a plan could hold.</param>
    /// <param name="setUpCents">Charge for each pattern, at least 1.</param>
    /// <param name="allowedCents">Cost a plan may have at most, set-ups included.</param>
    /// <param name="sticksBoundCents">No plan's sticks cost less.</param>
    /// <returns>True when proved; false says nothing.</returns>
    public static bool Refutes(CutCase of, Relaxation root, IReadOnlyList<Pattern> all, long setUpCents, long allowedCents, long sticksBoundCents)
    {
        if (of.Demand.Length > 64)
        {
            return false;
        }

        ulong wanted = 0;
        for (int i = 0; i < of.Demand.Length; i++)
        {
            wanted |= of.Demand[i] > 0 ? 1UL << i : 0;
        }

        return new SetUpCover(of, root, all, setUpCents, allowedCents, sticksBoundCents).IsHopeless(wanted, 0, 0);
    }

    private bool IsHopeless(ulong unshown, int count, double spentCents)
    {
        if (dualCents + spentCents + (setUpCents * count) > allowedCents)
        {
            return true;
        }

        if (++nodes > MostNodes)
        {
            return false;
        }

        if (unshown == 0)
        {
            Array.Copy(of.Demand, left, left.Length);
            if (CanCover(0, count, allowedCents - (setUpCents * count)))
            {
                return false;
            }
        }

        if (count == mostPatterns)
        {
            return true;
        }

        int size = unshown == 0 ? -1 : Scarcest(unshown);
        bool isHopeless = true;
        List<int> tried = [];
        for (int p = 0; p < patterns.Length && isHopeless; p++)
        {
            if (!isBarred[p] && (size < 0 || (shows[p] >> size & 1) == 1))
            {
                isBarred[p] = true;
                tried.Add(p);
                chosen[count] = p;
                isHopeless = (count + 1 == mostPatterns && (unshown & ~shows[p]) != 0)
                    || IsHopeless(unshown & ~shows[p], count + 1, spentCents + reducedCents[p]);
            }
        }

        foreach (int p in tried)
        {
            isBarred[p] = false;
        }

        return isHopeless;
    }

    /// <summary>Whether what is left can be cut from the chosen patterns from this one on; a pattern not cut at all is looked at elsewhere.</summary>
    private bool CanCover(int at, int count, double budgetCents)
    {
        if (++nodes > MostNodes)
        {
            return true;
        }

        double leastCents = 0;
        bool isDone = true;
        for (int i = 0; i < left.Length; i++)
        {
            if (left[i] > 0)
            {
                isDone = false;
                leastCents += priceCents[i] * left[i];
            }
        }

        if (leastCents > budgetCents)
        {
            return false;
        }

        if (at == count)
        {
            return isDone;
        }

        // The sizes that no later pattern shows say how often this one is needed at least.
        int p = chosen[at];
        ulong later = 0;
        for (int k = at + 1; k < count; k++)
        {
            later |= shows[chosen[k]];
        }

        int[] counts = patterns[p].Counts;
        int times = 1;
        for (int i = 0; i < left.Length; i++)
        {
            if (counts[i] > 0 && left[i] > 0 && (later >> i & 1) == 0)
            {
                times = Math.Max(times, (left[i] + counts[i] - 1) / counts[i]);
            }
        }

        long costCents = of.CostCents[patterns[p].Stock];
        bool can = false;
        Take(counts, times);
        for (; times <= atMost[p] && times * costCents <= budgetCents && !can; times++)
        {
            can = CanCover(at + 1, count, budgetCents - (times * costCents));
            Take(counts, 1);
        }

        Take(counts, -times);
        return can;
    }

    private void Take(int[] counts, int times)
    {
        for (int i = 0; i < left.Length; i++)
        {
            left[i] -= times * counts[i];
        }
    }

    private int Scarcest(ulong unshown)
    {
        int scarcest = -1;
        int fewest = int.MaxValue;
        for (ulong rest = unshown; rest != 0; rest &= rest - 1)
        {
            int i = BitOperations.TrailingZeroCount(rest);
            int showing = 0;
            for (int p = 0; p < patterns.Length; p++)
            {
                showing += !isBarred[p] && (shows[p] >> i & 1) == 1 ? 1 : 0;
            }

            if (showing < fewest)
            {
                (scarcest, fewest) = (i, showing);
            }
        }

        return scarcest;
    }

    private ulong Shows(Pattern pattern)
    {
        ulong shown = 0;
        for (int i = 0; i < pattern.Counts.Length; i++)
        {
            shown |= pattern.Counts[i] > 0 ? 1UL << i : 0;
        }

        return shown;
    }

    private double Worth(int[] counts)
    {
        double cents = 0;
        for (int i = 0; i < counts.Length; i++)
        {
            cents += priceCents[i] * counts[i];
        }

        return cents;
    }
}
