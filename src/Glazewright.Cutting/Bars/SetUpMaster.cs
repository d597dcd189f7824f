using Google.OrTools.Sat;

namespace Glazewright.Cutting.Bars;

/// <summary>The integer program over the patterns at hand with a charge for each set-up used.</summary>
/// <remarks>
/// Solved by a constraint solver in whole numbers: what it proves is proved without rounding. The search is stopped by counted work on one thread, never by
/// the clock, so that the same case gives the same plan on every machine and load.
/// </remarks>
internal static class SetUpMaster
{
    /// <summary>Most patterns for which a proof is asked.</summary>
    public const int MostForProof = 120;

    // In units of the solver's deterministic work, each of the order of a second or two.
    private const double ImproveWork = 0.2;
    private const double ProveWork = 0.4;
    private const double RefuteWork = 0.25;
    private const int MostColumns = 100;

    /// <summary>Looks for the cheapest plan made of every pattern that could be in one.</summary>
    /// <param name="of">The case.</param>
    /// <param name="all">The full list of patterns a cheaper plan could hold.</param>
    /// <param name="setUpCents">Charge for each pattern, at least 1.</param>
    /// <param name="best">Best plan known.</param>
    /// <param name="boundCents">Bound known so far.</param>
    /// <returns>The best plan, and whether the search proved that none is cheaper.</returns>
    public static (Packing Best, bool IsProved) Prove(CutCase of, IReadOnlyList<Pattern> all, long setUpCents, Packing best, long boundCents) =>
        Solve(of, all, setUpCents, best, boundCents, ProveWork);

    /// <summary>Whether it can be proved at once that no plan is cheaper; the first cheaper plan ends the attempt.</summary>
    /// <param name="of">The case.</param>
    /// <param name="all">The full list of patterns a cheaper plan could hold.</param>
    /// <param name="setUpCents">Charge for each pattern, at least 1.</param>
    /// <param name="best">Best plan known.</param>
    /// <param name="boundCents">Bound known so far.</param>
    /// <returns>True when proved; false says nothing.</returns>
    /// <remarks>Without the rounding cuts, which cost such small programs more than they save; what is proved does not hang on how.</remarks>
    public static bool Refutes(CutCase of, IReadOnlyList<Pattern> all, long setUpCents, Packing best, long boundCents) =>
        Search(Model(of, all, setUpCents, best, boundCents).Model, RefuteWork, " add_mir_cuts:false add_cg_cuts:false stop_after_first_solution:true").Status == CpSolverStatus.Infeasible;

    /// <summary>Looks for a plan cheaper than the one known.</summary>
    /// <param name="of">The case.</param>
    /// <param name="pool">Patterns to choose from; the best known plan's come first.</param>
    /// <param name="setUpCents">Charge for each pattern, at least 1.</param>
    /// <param name="best">Best plan known.</param>
    /// <param name="boundCents">No plan costs less: the search is told so.</param>
    /// <returns>The best plan, the given one or a cheaper one.</returns>
    public static Packing Improve(CutCase of, IEnumerable<Pattern> pool, long setUpCents, Packing best, long boundCents) =>
        Solve(of, [.. best.Runs.Select(run => run.Pattern).Concat(pool).Distinct().Take(MostColumns)], setUpCents, best, boundCents, ImproveWork).Best;

    private static (Packing Best, bool IsProved) Solve(
        CutCase of, IReadOnlyList<Pattern> columns, long setUpCents, Packing best, long boundCents, double work)
    {
        (CpModel model, IntVar[] times) = Model(of, columns, setUpCents, best, boundCents);
        (CpSolver solver, CpSolverStatus status) = Search(model, work, "");
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
        {
            return (best, status == CpSolverStatus.Infeasible);
        }

        Packing next = new();
        for (int c = 0; c < columns.Count; c++)
        {
            next.Add(columns[c], (int)solver.Value(times[c]));
        }

        // A stick moved to a cheaper stock may need a set-up of its own: take the better of both.
        foreach (Packing trimmed in (Packing[])[next.Trimmed(of), next.Trimmed(of, mayMove: false)])
        {
            best = trimmed.TotalCents(of, setUpCents) < best.TotalCents(of, setUpCents) ? trimmed : best;
        }

        return (best, status == CpSolverStatus.Optimal && best.TotalCents(of, setUpCents) <= (long)Math.Round(solver.ObjectiveValue));
    }

    // Every plan over these patterns that is cheaper than the best one known.
    private static (CpModel Model, IntVar[] Times) Model(CutCase of, IReadOnlyList<Pattern> columns, long setUpCents, Packing best, long boundCents)
    {
        CpModel model = new();
        List<IntVar> charged = [];
        List<long> chargeCents = [];
        IntVar[] times = new IntVar[columns.Count];
        for (int c = 0; c < columns.Count; c++)
        {
            int atMost = of.MostTimes(columns[c]);
            times[c] = model.NewIntVar(0, atMost, string.Empty);
            charged.Add(times[c]);
            chargeCents.Add(of.CostCents[columns[c].Stock]);
            IntVar used = model.NewIntVar(0, 1, string.Empty);
            model.Add(times[c] <= atMost * used);
            charged.Add(used);
            chargeCents.Add(setUpCents);
        }

        for (int i = 0; i < of.Size.Length; i++)
        {
            int row = i;
            model.Add(LinearExpr.WeightedSum(times, columns.Select(column => (long)column.Counts[row])) >= of.Demand[i]);
        }

        long allowedCents = best.TotalCents(of, setUpCents) - 1;
        LinearExpr total = LinearExpr.WeightedSum(charged, chargeCents);
        model.AddLinearConstraint(total, boundCents, allowedCents);
        model.Minimize(total);
        return (model, times);
    }

    private static (CpSolver Solver, CpSolverStatus Status) Search(CpModel model, double work, string more)
    {
        CpSolver solver = new()
        {
            StringParameters = FormattableString.Invariant($"catch_sigint_signal:false num_workers:1 random_seed:1 linearization_level:2 max_deterministic_time:{work}{more}"),
        };
        return (solver, solver.Solve(model));
    }
}
