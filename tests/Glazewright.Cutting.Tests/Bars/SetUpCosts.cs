using Glazewright.Cutting.Bars;

namespace Glazewright.Cutting.Tests.Bars;

public class SetUpCosts
{
    private static readonly CutDemand[] Frames =
    [
        new("rafter-s", 2280, 28), new("rafter-n", 1350, 28), new("column-s", 900, 14), new("column-n", 1110, 14),
        new("collar", 1560, 12), new("post", 1020, 9), new("brace", 430, 56),
    ];

    private static CutPlan Plan(long setUpCents)
    {
        CutProblem problem = new(
            Frames,
            [new StockLength("20 ft", 3840, 6400), new StockLength("24 ft", 4608, 7680), new StockLength("40 ft", 7680, 12500)],
            new SawRules(KerfRule.BetweenPieces, 2, 16, 384),
            new CutCosts(setUpCents, 150));
        CutPlan plan = BarCutter.Cut(problem).Plan;
        CutBooks.Close(problem, plan);
        return plan;
    }

    [Fact]
    public void Dear_set_ups_never_make_more_of_them_and_cheap_metal_never_costs_less_metal()
    {
        CutPlan metal = Plan(0);
        CutPlan some = Plan(900);
        CutPlan dear = Plan(20_000);
        Assert.True(metal.IsProvedBest);
        Assert.True(some.SetUps <= metal.SetUps);
        Assert.True(dear.SetUps <= some.SetUps);
        Assert.True(metal.StockCents + metal.HandlingCents <= dear.StockCents + dear.HandlingCents);
        Assert.True(some.TotalCents <= metal.StockCents + metal.HandlingCents + (900 * metal.SetUps));
    }

    [Fact]
    public void Five_lengths_on_one_stick_cannot_be_shown_by_fewer_than_two_patterns_of_four()
    {
        CutProblem problem = new(
            [new("a", 20, 1), new("b", 21, 1), new("c", 22, 1), new("d", 23, 1), new("e", 24, 1)],
            [new StockLength("s", 90, 1000)],
            new SawRules(KerfRule.BetweenPieces, 0, 0, 0),
            new CutCosts(100, 0));
        CutPlan plan = BarCutter.Cut(problem).Plan;
        Assert.Equal(200, plan.Bound.SetUpsCents);
        Assert.True(plan.IsProvedBest);
    }
}
