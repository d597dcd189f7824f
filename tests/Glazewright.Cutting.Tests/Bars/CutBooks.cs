using Glazewright.Cutting.Bars;

namespace Glazewright.Cutting.Tests.Bars;

/// <summary>The books every cut list must close, whatever method made it.</summary>
internal static class CutBooks
{
    public static void Close(CutProblem problem, CutPlan plan)
    {
        Dictionary<(string, int), int> wanted = [];
        foreach (CutDemand demand in problem.Demands.Where(d => d.Count > 0))
        {
            wanted[(demand.Mark, demand.LengthTicks)] = wanted.GetValueOrDefault((demand.Mark, demand.LengthTicks)) + demand.Count;
        }

        foreach (CutRun run in plan.Runs)
        {
            Assert.True(run.Sticks > 0);
            Assert.Contains(run.Pattern.Stock, problem.Stocks);
            int n = run.Pattern.Pieces.Count;
            Assert.True(n > 0);
            int pieces = run.Pattern.Pieces.Sum(p => p.LengthTicks);
            int kerfs = problem.Saw.KerfTicks * (problem.Saw.Rule == KerfRule.BetweenPieces ? n - 1 : n);
            Assert.True(pieces + kerfs + problem.Saw.EndTrimTicks <= run.Pattern.Stock.LengthTicks);
            Assert.Equal(
                run.Pattern.Stock.LengthTicks,
                pieces + run.Pattern.KerfTicks + run.Pattern.DropTicks + problem.Saw.EndTrimTicks);
            Assert.True(run.Pattern.DropTicks >= 0);
            Assert.Equal(run.Pattern.DropIsUsable, run.Pattern.DropTicks > 0 && run.Pattern.DropTicks >= problem.Saw.MinUsableDropTicks);
            foreach (CutPiece piece in run.Pattern.Pieces)
            {
                wanted[(piece.Mark, piece.LengthTicks)] -= run.Sticks;
            }
        }

        Assert.All(wanted, pair => Assert.Equal(0, pair.Value));
        Assert.Equal(plan.Runs.Sum(run => run.Sticks * run.Pattern.Stock.PriceCents), plan.StockCents);
        Assert.Equal(plan.Sticks * problem.Costs.HandlingCents, plan.HandlingCents);
        Assert.Equal(plan.Runs.Select(run => run.SetUp).Distinct().Count(), plan.SetUps);
        Assert.Equal(plan.SetUps * problem.Costs.SetUpCents, plan.SetUpsCents);
        Assert.True(plan.Bound.TotalCents <= plan.TotalCents, $"bound {plan.Bound.TotalCents} above cost {plan.TotalCents}");
    }
}
