namespace Glazewright.Cutting.Bars;

/// <summary>What the linear relaxation gives.</summary>
/// <param name="Columns">Patterns that were found.</param>
/// <param name="Times">How often each is cut, fractional.</param>
/// <param name="BoundCents">Proved least cost of any plan.</param>
/// <param name="PriceCents">Price of each size in the dual that proved the bound, hundredths of the currency.</param>
internal sealed record Relaxation(List<Pattern> Columns, double[] Times, long BoundCents, double[] PriceCents);

/// <summary>Column generation for cutting stock: the linear program over every pattern, patterns found by a knapsack on its prices.</summary>
/// <remarks>
/// P. C. Gilmore and R. E. Gomory, "A linear programming approach to the cutting-stock problem", Operations Research 9 (1961) and 11 (1963); bound during the
/// iterations: A. A. Farley, Operations Research 38 (1990) (from memory). The floating prices are turned into whole numbers and the knapsack is exact, so the bound
/// Σ demand · price · min over stocks of (cost / best value) holds whatever the linear solver rounded.
/// </remarks>
internal static class ColumnGeneration
{
    private const int MostRounds = 5_000;
    private const double PriceScale = 1e12;

    /// <summary>Solves the relaxation.</summary>
    /// <param name="of">The case.</param>
    /// <param name="start">Patterns to begin with (from plans already known).</param>
    /// <param name="cancel">Looked at once a round.</param>
    /// <returns>The relaxation at its optimum, or where the proved bound already equals its rounded-up value.</returns>
    public static Relaxation Solve(CutCase of, IEnumerable<Pattern> start, CancellationToken cancel = default)
    {
        HashSet<Pattern> known = [];
        List<Pattern> columns = [];
        using MasterProgram master = new(of.Demand);
        foreach (Pattern pattern in start.Concat(Plain(of)))
        {
            Take(pattern);
        }

        Knapsack knapsack = new(of.Size, of.Room);
        double scale = PriceScale / of.CostCents.Max();
        long bound = of.LengthBoundCents();
        double[] times = [];
        double[] provedCents = new double[of.Size.Length];
        Int128 proved = 0;
        for (int round = 0; round < MostRounds; round++)
        {
            cancel.ThrowIfCancellationRequested();
            if (!master.TrySolve(out double[] next, out double[] prices))
            {
                break;
            }

            times = next;
            long[] value = Array.ConvertAll(prices, price => (long)Math.Floor(Math.Max(0, price) * scale));
            if (knapsack.TryGlance(value, of.Demand, out (long Value, int[] Counts)[] best) && AddAll(best))
            {
                continue;
            }

            best = knapsack.Solve(value, of.Demand);
            (Int128 dual, double factor) = Farley(of, value, best);
            if (dual > proved)
            {
                proved = dual;
                provedCents = Array.ConvertAll(value, v => v * factor);
                bound = Math.Max(bound, of.RoundUp((long)dual));
            }

            double costCents = columns.Take(times.Length).Select((pattern, i) => times[i] * of.CostCents[pattern.Stock]).Sum();
            if (!AddAll(best) || bound >= costCents - (1e-6 * of.StepCents))
            {
                break;
            }
        }

        return new Relaxation([.. columns.Take(times.Length)], times, bound, provedCents);

        bool AddAll((long Value, int[] Counts)[] best)
        {
            bool found = false;
            for (int j = 0; j < best.Length; j++)
            {
                found |= best[j].Value > of.CostCents[j] * scale * (1 + 1e-9) && Take(new Pattern(j, best[j].Counts));
            }

            return found;
        }

        bool Take(Pattern pattern)
        {
            if (!known.Add(pattern))
            {
                return false;
            }

            columns.Add(pattern);
            master.Add(pattern, of.CostCents[pattern.Stock]);
            return true;
        }
    }

    /// <summary>Patterns of a single size, which make the first master feasible.</summary>
    private static IEnumerable<Pattern> Plain(CutCase of)
    {
        for (int i = 0; i < of.Size.Length; i++)
        {
            if (of.Demand[i] > 0)
            {
                int stock = of.CheapestFor(of.Size[i]);
                int[] counts = new int[of.Size.Length];
                counts[i] = Math.Min(of.Demand[i], of.Room[stock] / of.Size[i]);
                yield return new Pattern(stock, counts);
            }
        }
    }

    /// <summary>The prices, scaled until no pattern is worth more than it costs, and what the demand is then worth (rounded up: costs are whole).</summary>
    private static (Int128 DualCents, double Factor) Farley(CutCase of, long[] value, (long Value, int[] Counts)[] best)
    {
        Int128 total = 0;
        for (int i = 0; i < value.Length; i++)
        {
            total += (Int128)value[i] * of.Demand[i];
        }

        Int128 least = Int128.MaxValue;
        double factor = 0;
        for (int j = 0; j < best.Length; j++)
        {
            if (best[j].Value > 0)
            {
                Int128 dual = ((total * of.CostCents[j]) + best[j].Value - 1) / best[j].Value;
                if (dual < least)
                {
                    least = dual;
                    factor = of.CostCents[j] / (double)best[j].Value;
                }
            }
        }

        return least == Int128.MaxValue ? (0, 0) : (least, factor);
    }
}
