namespace Glazewright.Cutting.Bars;

/// <summary>Cuts bars (tube, profile, sheet by length) from stock lengths at least cost, with a proved bound beside the plan.</summary>
public static class BarCutter
{
    /// <summary>Finds a cheap cut list to its end: <see cref="CutStoppably"/> without anyone to stop it.</summary>
    /// <param name="problem">Demands, stock lengths, saw rules and costs.</param>
    /// <returns>A plan of every piece, or a plan of those that fit with the ones that are longer than any stick gives.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length, count, price or cost out of range, or no stock at all.</exception>
    public static CutAnswer Cut(CutProblem problem) => CutStoppably(problem, CancellationToken.None);

    /// <summary>Finds a cheap cut list and proves how cheap any could be.</summary>
    /// <param name="problem">Demands, stock lengths, saw rules and costs; lengths all in the same ticks, up to 10 000 000.</param>
    /// <param name="cancel">Looked at between the parts of the search and in every round of column generation; one integer program is not broken off.</param>
    /// <returns>A plan of every piece, or a plan of those that fit with the ones that are longer than any stick gives.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length, count, price or cost out of range, or no stock at all.</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    /// <remarks>
    /// First fit decreasing first; if that meets the length bound no solver is loaded. Otherwise column generation (Gilmore and Gomory 1961, 1963) for the
    /// bound, diving on it, and the integer program over the patterns found. The plan depends on the problem alone: every limit is a count. Usable drops
    /// are reported, not credited. With a set-up charge the bound is the sum of two bounds (sticks; fewest patterns) unless
    /// the program over all patterns left can be solved to its end; so a gap may remain although the plan is best.
    /// </remarks>
    public static CutAnswer CutStoppably(CutProblem problem, CancellationToken cancel)
    {
        problem.Require();
        StockLength[] stocks = [.. problem.Stocks.Where(stock => problem.RoomTicks(stock) > 0)];
        int kerf = problem.Saw.KerfTicks;
        int longest = stocks.Length == 0 ? 0 : Math.Max(0, stocks.Max(problem.RoomTicks) - kerf);
        TooLong[] tooLong = [.. problem.Demands.Where(d => d.Count > 0 && d.LengthTicks > longest).Select(d => new TooLong(d, longest))];
        int[] sizes = [.. problem.Demands.Where(d => d.Count > 0 && d.LengthTicks <= longest).Select(d => d.LengthTicks).Distinct().OrderDescending()];
        int[] counts = Array.ConvertAll(sizes, size => problem.Demands.Where(d => d.LengthTicks == size).Sum(d => d.Count));
        CutPlan plan;
        if (sizes.Length == 0)
        {
            plan = new CutPlan([], 0, 0, 0, 0, new CutBound(0, 0, BoundMethod.LengthOnly), Solver: false);
        }
        else
        {
            CutCase reduced = CutCase.From(
                Array.ConvertAll(sizes, size => size + kerf),
                counts,
                Array.ConvertAll(stocks, problem.RoomTicks),
                Array.ConvertAll(stocks, stock => stock.PriceCents + problem.Costs.HandlingCents));
            plan = Plan(problem, stocks, sizes, reduced, cancel);
        }

        return tooLong.Length == 0 ? new CutAnswer.Planned(plan) : new CutAnswer.Missed(plan, tooLong);
    }

    private static CutPlan Plan(CutProblem problem, StockLength[] stocks, int[] sizes, CutCase reduced, CancellationToken cancel)
    {
        long setUpCents = problem.Costs.SetUpCents;
        CutBound bound = new(reduced.LengthBoundCents(), reduced.PatternBound() * setUpCents, BoundMethod.LengthOnly);
        PatternPool pool = [];
        Packing best = FirstFit.Best(reduced);
        if (setUpCents > 0 || best.SticksCents(reduced) > bound.SticksCents)
        {
            best = FewSetUps.Best(reduced, setUpCents, best, pool);
        }

        bool solver = false;
        if (best.TotalCents(reduced, setUpCents) > bound.TotalCents)
        {
            (best, bound) = Search(reduced, setUpCents, best, pool, bound.SetUpsCents, cancel);
            solver = true;
        }

        int sticks = best.Runs.Sum(run => run.Times);
        long handlingCents = sticks * problem.Costs.HandlingCents;
        return new CutPlan(
            CutList.Write(problem, stocks, sizes, best),
            best.SticksCents(reduced) - handlingCents,
            handlingCents,
            best.SetUps,
            best.SetUps * setUpCents,
            bound,
            solver);
    }

    private static (Packing Best, CutBound Bound) Search(
        CutCase reduced, long setUpCents, Packing best, PatternPool pool, long setUpBoundCents, CancellationToken cancel)
    {
        pool.AddAll(best.Runs.Select(run => run.Pattern));
        Relaxation root = ColumnGeneration.Solve(reduced, pool, cancel);
        CutBound bound = new(root.BoundCents, setUpBoundCents, BoundMethod.LinearProgram);
        Pattern[] inUse = [.. root.Columns.Where((_, c) => root.Times[c] > 1e-9)];
        pool.AddAll(root.Columns);
        Packing cheapest = best.SticksCents(reduced) <= root.BoundCents ? best : Diving.Improve(reduced, root, best, pool, cancel);
        if (cheapest.SticksCents(reduced) > root.BoundCents)
        {
            cancel.ThrowIfCancellationRequested();
            (cheapest, bool isProved) = CloseGap(reduced, root, cheapest, pool);
            if (isProved)
            {
                bound = bound with { SticksCents = cheapest.SticksCents(reduced), Method = BoundMethod.IntegerProgram };
            }
        }

        cheapest = cheapest.Trimmed(reduced);
        if (cheapest.TotalCents(reduced, setUpCents) < best.TotalCents(reduced, setUpCents))
        {
            best = cheapest;
        }

        if (setUpCents > 0 && best.TotalCents(reduced, setUpCents) > bound.TotalCents)
        {
            cancel.ThrowIfCancellationRequested();
            if (IsCheapest(reduced, root, setUpCents, best, bound))
            {
                return (best, new CutBound(best.SticksCents(reduced), best.SetUps * setUpCents, BoundMethod.IntegerProgram));
            }

            cancel.ThrowIfCancellationRequested();
            IEnumerable<Pattern> choice = cheapest.Runs.Select(run => run.Pattern).Concat(inUse).Concat(pool);
            best = SetUpMaster.Improve(reduced, choice, setUpCents, best, bound.TotalCents);
            cancel.ThrowIfCancellationRequested();
            bool isProved = best.TotalCents(reduced, setUpCents) > bound.TotalCents && CloseSetUpGap(reduced, root, setUpCents, ref best, bound);
            if (isProved)
            {
                bound = new CutBound(best.SticksCents(reduced), best.SetUps * setUpCents, BoundMethod.IntegerProgram);
            }
        }

        return (best, bound);
    }

    private static (Packing Cheapest, bool IsProved) CloseGap(CutCase reduced, Relaxation root, Packing cheapest, PatternPool pool)
    {
        long allowedCents = cheapest.SticksCents(reduced) - reduced.StepCents;
        if (CandidatePatterns.TryList(reduced, root, allowedCents, out List<Pattern> all))
        {
            return IntegerMaster.Prove(reduced, all, cheapest, root.BoundCents);
        }

        cheapest = IntegerMaster.Improve(reduced, pool, cheapest, root.BoundCents);
        allowedCents = cheapest.SticksCents(reduced) - reduced.StepCents;
        return allowedCents >= root.BoundCents && CandidatePatterns.TryList(reduced, root, allowedCents, out all)
            ? IntegerMaster.Prove(reduced, all, cheapest, root.BoundCents)
            : (cheapest, false);
    }

    /// <summary>Whether the plan at hand can be proved before any search for a cheaper one, which is then spared and would have found none.</summary>
    private static bool IsCheapest(CutCase reduced, Relaxation root, long setUpCents, Packing best, CutBound bound) =>
        CandidatePatterns.TryList(reduced, root, best.TotalCents(reduced, setUpCents) - 1 - bound.SetUpsCents, out List<Pattern> all)
        && all.Count <= SetUpMaster.MostForProof
        && (SetUpCover.Refutes(reduced, root, all, setUpCents, best.TotalCents(reduced, setUpCents) - 1, bound.SticksCents)
            || SetUpMaster.Refutes(reduced, all, setUpCents, best, bound.TotalCents));

    /// <summary>With few patterns left, the program with set-up charges over all of them can end: then the total is proved.</summary>
    private static bool CloseSetUpGap(CutCase reduced, Relaxation root, long setUpCents, ref Packing best, CutBound bound)
    {
        long allowedCents = best.TotalCents(reduced, setUpCents) - 1 - bound.SetUpsCents;
        if (!CandidatePatterns.TryList(reduced, root, allowedCents, out List<Pattern> all) || all.Count > SetUpMaster.MostForProof)
        {
            return false;
        }

        (best, bool isProved) = SetUpMaster.Prove(reduced, all, setUpCents, best, bound.TotalCents);
        return isProved;
    }
}
