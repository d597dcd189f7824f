using Google.OrTools.LinearSolver;

namespace Glazewright.Cutting.Bars;

/// <summary>The integer program over the patterns at hand, sticks only.</summary>
/// <remarks>The search is stopped by nodes, never by time, so that the same case gives the same plan on every machine and load.</remarks>
internal static class IntegerMaster
{
    private const int MostNodes = 300;
    private const int MostNodesForProof = 1_000;
    private const int MostColumns = 1_000;

    /// <summary>Looks for the cheapest plan made of every pattern that could be in one.</summary>
    /// <param name="of">The case.</param>
    /// <param name="all">The full list of patterns a cheaper plan could hold.</param>
    /// <param name="best">Best plan known.</param>
    /// <param name="boundCents">Bound known so far.</param>
    /// <returns>The best plan, and whether the search proved that none is cheaper.</returns>
    public static (Packing Best, bool IsProved) Prove(CutCase of, IReadOnlyList<Pattern> all, Packing best, long boundCents) =>
        Solve(of, all, best, boundCents, MostNodesForProof);

    /// <summary>Looks for a plan cheaper than the one known.</summary>
    /// <param name="of">The case.</param>
    /// <param name="pool">Patterns to choose from; the best known plan's come first.</param>
    /// <param name="best">Best plan known.</param>
    /// <param name="boundCents">No plan costs less: the search is told so.</param>
    /// <returns>The best plan, the given one or a cheaper one.</returns>
    public static Packing Improve(CutCase of, IEnumerable<Pattern> pool, Packing best, long boundCents) =>
        Solve(of, [.. best.Runs.Select(run => run.Pattern).Concat(pool).Distinct().Take(MostColumns)], best, boundCents, MostNodes).Best;

    private static (Packing Best, bool IsProved) Solve(
        CutCase of, IReadOnlyList<Pattern> columns, Packing best, long boundCents, int mostNodes)
    {
        using Solver solver = Solver.CreateSolver("SCIP");
        // The solver's own Ctrl-C handler would end its search early and go on with a worse list, and leave ours unhooked.
        solver.SetSolverSpecificParametersAsString(
            $"misc/catchctrlc = FALSE\nlimits/nodes = {mostNodes}\nparallel/maxnthreads = 1\nrandomization/randomseedshift = 0\n");
        Constraint[] rows = Array.ConvertAll(of.Demand, count => solver.MakeConstraint(count, double.PositiveInfinity));
        long allowedCents = best.SticksCents(of) - of.StepCents;
        Constraint window = solver.MakeConstraint(boundCents, allowedCents);
        Variable[] times = new Variable[columns.Count];
        for (int c = 0; c < columns.Count; c++)
        {
            Pattern column = columns[c];
            times[c] = solver.MakeIntVar(0, of.MostTimes(column), string.Empty);
            for (int i = 0; i < rows.Length; i++)
            {
                if (column.Counts[i] > 0)
                {
                    rows[i].SetCoefficient(times[c], column.Counts[i]);
                }
            }

            solver.Objective().SetCoefficient(times[c], of.CostCents[column.Stock]);
            window.SetCoefficient(times[c], of.CostCents[column.Stock]);
        }

        solver.Objective().SetMinimization();
        Solver.ResultStatus status = solver.Solve();
        if (status is not (Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE))
        {
            return (best, status == Solver.ResultStatus.INFEASIBLE);
        }

        Packing next = new();
        for (int c = 0; c < columns.Count; c++)
        {
            next.Add(columns[c], (int)Math.Round(times[c].SolutionValue()));
        }

        next = next.Trimmed(of);
        best = next.SticksCents(of) < best.SticksCents(of) ? next : best;
        return (best, status == Solver.ResultStatus.OPTIMAL && best.SticksCents(of) <= (long)Math.Round(solver.Objective().Value()));
    }
}
