using Glazewright.Cutting.Bars;

namespace Glazewright.Published.Tests.Cutting;

/// <summary>Small instances typed in from the literature, each with its proved optimum.</summary>
public class SmallLiteratureInstances
{
    private static readonly SawRules NoSaw = new(KerfRule.BetweenPieces, 0, 0, 0);

    /// <summary>The paper-machine example with 13 widths of stock 5600 (encyclopedia article "Cutting stock problem"; data read, total and bound recomputed).</summary>
    [Fact]
    public void Paper_machine_needs_73_rolls()
    {
        CutPlan plan = Plan(
            NoSaw,
            [new("roll", 5600, 1)],
            (1380, 22), (1520, 25), (1560, 12), (1710, 14), (1820, 18), (1880, 18), (1930, 20), (2000, 10), (2050, 12), (2100, 14), (2140, 16), (2150, 18), (2200, 20));
        Assert.Equal(407_160, plan.PieceTicks);
        Assert.Equal(73, plan.Sticks);
        Assert.True(plan.IsProvedBest);
        Assert.Equal(0.00401, 1 - (plan.PieceTicks / (double)plan.StockTicks), tolerance: 0.000005);
    }

    /// <summary>V. Chvátal, "Linear Programming" (1983), the cutting example also used by GAMS (data read at second hand; optimum proved by its dual .5, .5, .25, 0: 452.25).</summary>
    [Fact]
    public void Chvatals_rolls_need_453()
    {
        CutPlan plan = Plan(NoSaw, [new("roll", 100, 1)], (45, 97), (36, 610), (31, 395), (14, 211));
        Assert.Equal(453, plan.Sticks);
        Assert.True(plan.IsProvedBest);
    }

    /// <summary>C. Guéret, C. Prins and M. Sevaux, "Applications of optimization with Xpress-MP", 9.6: two bar lengths for desk legs (data read; optimum: stock is a multiple of 50 and 75 280 is needed).</summary>
    [Fact]
    public void Desk_legs_from_two_bar_lengths_take_75300_cm()
    {
        CutPlan plan = Plan(NoSaw, [new("1.5 m", 150, 150), new("2 m", 200, 200)], (40, 432), (60, 500), (70, 400));
        Assert.Equal(75_280, plan.PieceTicks);
        Assert.Equal(75_300, plan.StockCents);
        Assert.Equal(75_300, plan.StockTicks);
        Assert.True(plan.IsProvedBest);
    }

    /// <summary>Kerf arithmetic on a 240 in stick with an 1/8 in blade, ticks of 1/1000 in (computed by hand): 59.9 fits only under the n − 1 rule, 59.875 under both, 60 under none.</summary>
    [Theory]
    [InlineData(KerfRule.BetweenPieces, 59_900, 1)]
    [InlineData(KerfRule.EveryPiece, 59_900, 2)]
    [InlineData(KerfRule.BetweenPieces, 59_875, 1)]
    [InlineData(KerfRule.EveryPiece, 59_875, 1)]
    [InlineData(KerfRule.BetweenPieces, 60_000, 2)]
    [InlineData(KerfRule.EveryPiece, 60_000, 2)]
    public void Four_pieces_and_the_kerf_rule(KerfRule rule, int lengthTicks, int sticks) =>
        Assert.Equal(sticks, Plan(new SawRules(rule, 125, 0, 0), [new("stick", 240_000, 1)], (lengthTicks, 4)).Sticks);

    private static CutPlan Plan(SawRules saw, StockLength[] stocks, params (int LengthTicks, int Count)[] pieces) =>
        Assert.IsType<CutAnswer.Planned>(BarCutter.Cut(new CutProblem(
            [.. pieces.Select(piece => new CutDemand("m", piece.LengthTicks, piece.Count))], stocks, saw, CutCosts.MetalOnly))).Plan;
}
