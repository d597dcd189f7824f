using Google.OrTools.LinearSolver;

namespace Glazewright.Cutting.Bars;

/// <summary>The integer program over the patterns at hand, with a fixed charge for each set-up used when set-ups cost money.</summary>
/// <remarks>The search is stopped by nodes, never by time, so that the same case gives the same plan on every machine and load.</remarks>
internal static class IntegerMaster
{
    private const int MostNodes = 300;
    private const int MostChargedNodes = 50;
    private const int MostNodesForProof = 5_000;
    private const int MostColumns = 1_500;
    private const int MostChargedColumns = 60;

    /// <summary>Most patterns for which the program with set-up charges is asked for a proof.</summary>
    public const int MostChargedForProof = 120;

    private const int MostChargedNodesForProof = 400;

    /// <summary>As <see cref="Prove"/>, with set-ups charged.</summary>
    public static (Packing Best, bool IsProved) ProveWithSetUps(
        CutCase of, IReadOnlyList<Pattern> all, long setUpCents, Packing best, long boundCents) =>
        Solve(of, all, setUpCents, best, boundCents, MostChargedNodesForProof);

    /// <summary>Looks for the cheapest plan made of every pattern that could be in one.</summary>
    /// <param name="of">The case.</param>
    /// <param name="all">The full list of patterns a cheaper plan could hold.</param>
    /// <param name="best">Best plan known.</param>
    /// <param name="boundCents">Bound known so far.</param>
    /// <returns>The best plan, and whether the search proved that none is cheaper.</returns>
    public static (Packing Best, bool IsProved) Prove(CutCase of, IReadOnlyList<Pattern> all, Packing best, long boundCents) =>
        Solve(of, all, 0, best, boundCents, MostNodesForProof);

    /// <summary>Looks for a plan cheaper than the one known.</summary>
    /// <param name="of">The case.</param>
    /// <param name="pool">Patterns to choose from; the best known plan's come first.</param>
    /// <param name="setUpCents">Charge for each pattern.</param>
    /// <param name="best">Best plan known.</param>
    /// <param name="boundCents">No plan costs less: the search is told so.</param>
    /// <returns>The best plan, the given one or a cheaper one.</returns>
    public static Packing Improve(CutCase of, IEnumerable<Pattern> pool, long setUpCents, Packing best, long boundCents)
    {
        Pattern[] columns = [.. best.Runs.Select(run => run.Pattern).Concat(pool).Distinct()
            .Take(setUpCents > 0 ? MostChargedColumns : MostColumns)];
        return Solve(of, columns, setUpCents, best, boundCents, setUpCents > 0 ? MostChargedNodes : MostNodes).Best;
    }

    private static (Packing Best, bool IsProved) Solve(
        CutCase of, IReadOnlyList<Pattern> columns, long setUpCents, Packing best, long boundCents, int mostNodes)
    {
        using Solver solver = Solver.CreateSolver("SCIP");
        solver.SetSolverSpecificParametersAsString(
            $"limits/nodes = {mostNodes}\nparallel/maxnthreads = 1\nrandomization/randomseedshift = 0\n");
        Constraint[] rows = Array.ConvertAll(of.Demand, count => solver.MakeConstraint(count, double.PositiveInfinity));
        long allowedCents = best.TotalCents(of, setUpCents) - (setUpCents > 0 ? 1 : of.StepCents);
        Constraint window = solver.MakeConstraint(boundCents, allowedCents);
        Variable[] times = new Variable[columns.Count];
        for (int c = 0; c < columns.Count; c++)
        {
            Pattern column = columns[c];
            int atMost = 0;
            for (int i = 0; i < rows.Length; i++)
            {
                if (column.Counts[i] > 0)
                {
                    atMost = Math.Max(atMost, (of.Demand[i] + column.Counts[i] - 1) / column.Counts[i]);
                }
            }

            times[c] = solver.MakeIntVar(0, atMost, string.Empty);
            for (int i = 0; i < rows.Length; i++)
            {
                if (column.Counts[i] > 0)
                {
                    rows[i].SetCoefficient(times[c], column.Counts[i]);
                }
            }

            Charge(times[c], of.CostCents[column.Stock]);
            if (setUpCents > 0)
            {
                Variable used = solver.MakeIntVar(0, 1, string.Empty);
                Constraint link = solver.MakeConstraint(double.NegativeInfinity, 0);
                link.SetCoefficient(times[c], 1);
                link.SetCoefficient(used, -atMost);
                Charge(used, setUpCents);
            }
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

        // A stick moved to a cheaper stock may need a set-up of its own: take the better of both.
        foreach (Packing trimmed in (Packing[])[next.Trimmed(of), next.Trimmed(of, mayMove: false)])
        {
            best = trimmed.TotalCents(of, setUpCents) < best.TotalCents(of, setUpCents) ? trimmed : best;
        }

        bool isOptimal = status == Solver.ResultStatus.OPTIMAL && best.TotalCents(of, setUpCents) <= (long)Math.Round(solver.Objective().Value());
        return (best, isOptimal);

        void Charge(Variable variable, long costCents)
        {
            solver.Objective().SetCoefficient(variable, costCents);
            window.SetCoefficient(variable, costCents);
        }
    }
}
