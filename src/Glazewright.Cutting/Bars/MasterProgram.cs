using Google.OrTools.LinearSolver;

namespace Glazewright.Cutting.Bars;

/// <summary>The linear master: least cost of patterns that cover the demand, with one row a size; columns are added as they are found.</summary>
/// <remarks>One of three types, beside <see cref="IntegerMaster"/> and <see cref="SetUpMaster"/>, that touch the native solver: it is loaded when the first of them is made.</remarks>
internal sealed class MasterProgram : IDisposable
{
    private readonly Solver solver;
    private readonly Constraint[] rows;
    private readonly List<Variable> columns = [];

    public MasterProgram(int[] demand)
    {
        solver = Solver.CreateSolver("GLOP");
        rows = Array.ConvertAll(demand, count => solver.MakeConstraint(count, double.PositiveInfinity));
        solver.Objective().SetMinimization();
    }

    public void Add(Pattern pattern, long costCents)
    {
        Variable column = solver.MakeNumVar(0, double.PositiveInfinity, string.Empty);
        for (int i = 0; i < rows.Length; i++)
        {
            if (pattern.Counts[i] > 0)
            {
                rows[i].SetCoefficient(column, pattern.Counts[i]);
            }
        }

        solver.Objective().SetCoefficient(column, costCents);
        columns.Add(column);
    }

    /// <summary>Solves; false when the solver stops without an optimum.</summary>
    public bool TrySolve(out double[] times, out double[] prices)
    {
        bool solved = solver.Solve() == Solver.ResultStatus.OPTIMAL;
        times = solved ? [.. columns.Select(column => column.SolutionValue())] : [];
        prices = solved ? Array.ConvertAll(rows, row => row.DualValue()) : [];
        return solved;
    }

    public void Dispose() => solver.Dispose();
}
