using CsCheck;
using Glazewright.Cutting.Bars;
using Google.OrTools.LinearSolver;

namespace Glazewright.Cutting.Tests.Bars;

/// <summary>Random cutting problems against models too simple to be wrong.</summary>
public class BarCutterAgainstModels
{
    private static readonly Gen<SawRules> Saws =
        Gen.Select(Gen.Bool, Gen.Int[0, 3], Gen.Int[0, 4], Gen.Int[0, 20], (between, kerf, trim, usable) =>
            new SawRules(between ? KerfRule.BetweenPieces : KerfRule.EveryPiece, kerf, trim, usable));

    private static readonly Gen<StockLength[]> Stocks =
        Gen.Select(Gen.Int[60, 120], Gen.Long[50, 130]).Select((length, price) => new StockLength("s" + length, length, price)).Array[1, 3];

    private static readonly Gen<CutProblem> Eight =
        Gen.Select(Gen.Int[10, 53].Array[1, 8], Stocks, Saws, (lengths, stocks, saw) => new CutProblem(
            [.. lengths.Select((length, i) => new CutDemand("m" + i, length, 1))], stocks, saw, CutCosts.MetalOnly));

    private static readonly Gen<CutProblem> Dozens =
        Gen.Select(Gen.Select(Gen.Int[14, 53], Gen.Int[1, 30]).Array[2, 7], Stocks, Saws, Gen.Long[0, 40], Gen.Long[0, 9], (pieces, stocks, saw, setUp, handling) =>
            new CutProblem(
                [.. pieces.Select((piece, i) => new CutDemand("m" + i, piece.Item1, piece.Item2))], stocks, saw, new CutCosts(setUp, handling)));

    [Fact]
    public void Eight_pieces_cost_what_trying_every_grouping_finds() => Eight.Sample(
        problem =>
        {
            CutPlan plan = Assert.IsType<CutAnswer.Planned>(BarCutter.Cut(problem)).Plan;
            CutBooks.Close(problem, plan);
            Assert.Equal(EveryGroupingCents(problem), plan.TotalCents);
            Assert.True(plan.IsProvedBest);
        },
        iter: 250,
        threads: 1);

    [Fact]
    public void Six_pieces_with_set_ups_cost_what_trying_every_grouping_on_every_stock_finds() => Gen.Select(
        Gen.Int[0, 2].Array[1, 6], Gen.Int[12, 53].Array[3], Stocks, Saws, Gen.Long[1, 60]).Sample(
        (kinds, lengths, stocks, saw, setUp) =>
        {
            CutProblem problem = new(
                [.. kinds.Select((kind, i) => new CutDemand("m" + i, lengths[kind], 1))], [.. stocks.Take(2)], saw, new CutCosts(setUp, 0));
            CutPlan plan = Assert.IsType<CutAnswer.Planned>(BarCutter.Cut(problem)).Plan;
            CutBooks.Close(problem, plan);
            long best = EveryStickCents(problem);
            Assert.InRange(plan.TotalCents, best, plan.IsProvedBest ? best : long.MaxValue);
            Assert.True(plan.Bound.TotalCents <= best, $"bound {plan.Bound.TotalCents} above the true least {best}");
        },
        iter: 150,
        threads: 1);

    [Fact]
    public void The_bound_is_the_linear_program_over_all_patterns_written_out() => Dozens.Sample(
        problem =>
        {
            CutPlan plan = Assert.IsType<CutAnswer.Planned>(BarCutter.Cut(problem)).Plan;
            CutBooks.Close(problem, plan);
            double everyPatternCents = EveryPatternCents(problem);
            long stepCents = problem.Stocks.Select(s => s.PriceCents + problem.Costs.HandlingCents).Aggregate(Gcd);
            long roundedCents = (long)Math.Ceiling((everyPatternCents / stepCents) - 1e-6) * stepCents;
            switch (plan.Bound.Method)
            {
                case BoundMethod.LengthOnly:
                    Assert.InRange(plan.Bound.SticksCents, 0, roundedCents);
                    break;
                case BoundMethod.LinearProgram:
                    Assert.Equal(roundedCents, plan.Bound.SticksCents);
                    break;
                default:
                    Assert.True(plan.Bound.SticksCents > roundedCents - stepCents);
                    break;
            }
        },
        iter: 25,
        threads: 1);

    [Fact]
    public void The_same_problem_gives_the_same_list_from_eight_threads_at_once() => Dozens.Sample(
        problem =>
        {
            string first = Print(BarCutter.Cut(problem).Plan);
            string[] again = new string[8];
            Parallel.For(0, again.Length, i => again[i] = Print(BarCutter.Cut(problem).Plan));
            Assert.All(again, text => Assert.Equal(first, text));
        },
        iter: 3,
        threads: 1);

    private static string Print(CutPlan plan) => string.Join('\n', plan.Runs.Select(run =>
        $"{run.SetUp} {run.Sticks} {run.Pattern.Stock.Id} {string.Join(' ', run.Pattern.Pieces)} {run.Pattern.DropTicks}"));

    /// <summary>Puts each piece in turn on every stick begun, or a new one; a finished stick costs its cheapest stock.</summary>
    private static long EveryGroupingCents(CutProblem problem)
    {
        int[] pieces = [.. problem.Demands.Select(d => d.LengthTicks)];
        List<(int Length, int Count)> sticks = [];
        long best = long.MaxValue;
        Next(0);
        return best;

        void Next(int i)
        {
            if (i == pieces.Length)
            {
                best = Math.Min(best, sticks.Sum(stick => CheapestCents(problem, stick.Length, stick.Count)!.Value));
                return;
            }

            for (int s = 0; s <= sticks.Count; s++)
            {
                (int length, int count) = s < sticks.Count ? sticks[s] : (0, 0);
                if (CheapestCents(problem, length + pieces[i], count + 1) is null)
                {
                    continue;
                }

                if (s == sticks.Count)
                {
                    sticks.Add((pieces[i], 1));
                    Next(i + 1);
                    sticks.RemoveAt(s);
                }
                else
                {
                    sticks[s] = (length + pieces[i], count + 1);
                    Next(i + 1);
                    sticks[s] = (length, count);
                }
            }
        }
    }

    /// <summary>Every grouping of the pieces, every stick of it on every stock that holds it; patterns inside another one on the same stock need no set-up.</summary>
    private static long EveryStickCents(CutProblem problem)
    {
        int[] pieces = [.. problem.Demands.Select(d => d.LengthTicks)];
        List<List<int>> sticks = [];
        long best = long.MaxValue;
        Group(0);
        return best;

        void Group(int i)
        {
            if (i == pieces.Length)
            {
                Place(0, new int[sticks.Count]);
                return;
            }

            for (int s = 0; s <= sticks.Count; s++)
            {
                bool isNew = s == sticks.Count;
                if (isNew)
                {
                    sticks.Add([]);
                }

                sticks[s].Add(pieces[i]);
                Group(i + 1);
                sticks[s].RemoveAt(sticks[s].Count - 1);
                if (isNew)
                {
                    sticks.RemoveAt(s);
                }
            }
        }

        void Place(int s, int[] on)
        {
            if (s < sticks.Count)
            {
                for (on[s] = 0; on[s] < problem.Stocks.Count; on[s]++)
                {
                    int kerfs = problem.Saw.Rule == KerfRule.BetweenPieces ? sticks[s].Count - 1 : sticks[s].Count;
                    if (sticks[s].Sum() + (kerfs * problem.Saw.KerfTicks) + problem.Saw.EndTrimTicks <= problem.Stocks[on[s]].LengthTicks)
                    {
                        Place(s + 1, on);
                    }
                }

                return;
            }

            var patterns = sticks.Select((stick, k) => (Stock: problem.Stocks[on[k]].Id + on[k], Pieces: string.Join(',', stick.Order()), Stick: stick)).DistinctBy(p => (p.Stock, p.Pieces)).ToList();
            int setUps = patterns.Count(p => !patterns.Exists(q => q.Stock == p.Stock && q.Pieces != p.Pieces && p.Stick.GroupBy(x => x).All(g => q.Stick.Count(x => x == g.Key) >= g.Count())));
            best = Math.Min(best, on.Sum(k => problem.Stocks[k].PriceCents) + (setUps * problem.Costs.SetUpCents));
        }
    }

    private static long? CheapestCents(CutProblem problem, int lengthTicks, int count)
    {
        int kerfs = problem.Saw.Rule == KerfRule.BetweenPieces ? count - 1 : count;
        StockLength? stock = problem.Stocks
            .Where(s => lengthTicks + (kerfs * problem.Saw.KerfTicks) + problem.Saw.EndTrimTicks <= s.LengthTicks)
            .MinBy(s => s.PriceCents);
        return stock?.PriceCents + problem.Costs.HandlingCents;
    }

    /// <summary>Every pattern there is (no piece more often than wanted), in one linear program, by another solver than the room's own.</summary>
    private static double EveryPatternCents(CutProblem problem)
    {
        (int Length, int Count)[] kinds = [.. problem.Demands.GroupBy(d => d.LengthTicks).Select(g => (g.Key, g.Sum(d => d.Count)))];
        using Solver solver = Solver.CreateSolver("CLP");
        Constraint[] rows = [.. kinds.Select(kind => solver.MakeConstraint(kind.Count, double.PositiveInfinity))];
        int[] counts = new int[kinds.Length];
        Next(0, 0, 0);
        solver.Objective().SetMinimization();
        Assert.Equal(Solver.ResultStatus.OPTIMAL, solver.Solve());
        return solver.Objective().Value();

        void Next(int k, int length, int count)
        {
            if (k == kinds.Length)
            {
                if (count > 0)
                {
                    Variable column = solver.MakeNumVar(0, double.PositiveInfinity, string.Empty);
                    solver.Objective().SetCoefficient(column, CheapestCents(problem, length, count)!.Value);
                    for (int i = 0; i < counts.Length; i++)
                    {
                        rows[i].SetCoefficient(column, counts[i]);
                    }
                }

                return;
            }

            for (counts[k] = 0; counts[k] <= kinds[k].Count; counts[k]++)
            {
                int total = length + (counts[k] * kinds[k].Length);
                if (count + counts[k] > 0 && CheapestCents(problem, total, count + counts[k]) is null)
                {
                    break;
                }

                Next(k + 1, total, count + counts[k]);
            }

            counts[k] = 0;
        }
    }

    private static long Gcd(long a, long b) => b == 0 ? a : Gcd(b, a % b);
}
