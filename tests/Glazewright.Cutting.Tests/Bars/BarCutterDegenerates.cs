using Glazewright.Cutting.Bars;

namespace Glazewright.Cutting.Tests.Bars;

public class BarCutterDegenerates
{
    private static readonly SawRules NoSaw = new(KerfRule.BetweenPieces, 0, 0, 0);

    private static CutAnswer Cut(SawRules saw, int stock, params CutDemand[] demands) =>
        BarCutter.Cut(new CutProblem(demands, [new StockLength("s", stock, 100)], saw, CutCosts.MetalOnly));

    [Fact]
    public void A_search_that_is_cancelled_stops()
    {
        CutProblem hard = new(
            [.. Enumerable.Range(0, 8).Select(k => new CutDemand("m" + k, 61 + 23 * k, 7 + k))],
            [new StockLength("long", 480, 480), new StockLength("short", 400, 405)],
            new SawRules(KerfRule.BetweenPieces, 1, 0, 48),
            new CutCosts(60, 5));
        Assert.NotEqual(BoundMethod.LengthOnly, BarCutter.Cut(hard).Plan.Bound.Method);
        Assert.Throws<OperationCanceledException>(() => BarCutter.CutStoppably(hard, new CancellationToken(canceled: true)));
    }

    [Fact]
    public void An_empty_list_costs_nothing_and_is_proved()
    {
        CutPlan plan = Assert.IsType<CutAnswer.Planned>(Cut(NoSaw, 240)).Plan;
        Assert.Empty(plan.Runs);
        Assert.Equal(0, plan.TotalCents);
        Assert.True(plan.IsProvedBest);
        Assert.Equal(0, plan.GapFraction);
    }

    [Fact]
    public void A_demand_of_none_is_no_piece() =>
        Assert.Empty(Assert.IsType<CutAnswer.Planned>(Cut(NoSaw, 240, new CutDemand("a", 500, 0))).Plan.Runs);

    [Fact]
    public void A_piece_as_long_as_the_stock_needs_no_kerf_between_pieces()
    {
        CutPlan plan = Assert.IsType<CutAnswer.Planned>(Cut(new(KerfRule.BetweenPieces, 2, 0, 10), 240, new CutDemand("a", 240, 3))).Plan;
        Assert.Equal(3, plan.Sticks);
        Assert.All(plan.Runs, run => Assert.Equal((0, 0, false), (run.Pattern.KerfTicks, run.Pattern.DropTicks, run.Pattern.DropIsUsable)));
    }

    [Fact]
    public void A_piece_as_long_as_the_stock_does_not_fit_when_every_piece_pays_a_kerf()
    {
        CutAnswer.Missed missed = Assert.IsType<CutAnswer.Missed>(Cut(new(KerfRule.EveryPiece, 2, 0, 10), 240, new CutDemand("a", 240, 3)));
        Assert.Equal(238, Assert.Single(missed.TooLong).LongestTicks);
        Assert.Empty(missed.Plan.Runs);
    }

    [Fact]
    public void A_piece_longer_than_the_stock_is_named_and_the_rest_is_planned()
    {
        CutAnswer.Missed missed = Assert.IsType<CutAnswer.Missed>(
            Cut(new(KerfRule.BetweenPieces, 2, 6, 10), 240, new CutDemand("long", 235, 1), new CutDemand("short", 100, 4)));
        TooLong tooLong = Assert.Single(missed.TooLong);
        Assert.Equal(("long", 234), (tooLong.Demand.Mark, tooLong.LongestTicks));
        Assert.Equal(2, missed.Plan.Sticks);
    }

    [Fact]
    public void Trim_that_eats_the_stick_leaves_nothing() =>
        Assert.Equal(0, Assert.Single(Assert.IsType<CutAnswer.Missed>(Cut(NoSaw with { EndTrimTicks = 240 }, 240, new CutDemand("a", 1, 1))).TooLong).LongestTicks);

    [Fact]
    public void Numbers_out_of_range_are_the_programmers_news()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Cut(NoSaw, 240, new CutDemand("a", 0, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Cut(NoSaw, 240, new CutDemand("a", 1, -1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => BarCutter.Cut(new CutProblem([], [], NoSaw, CutCosts.MetalOnly)));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => BarCutter.Cut(new CutProblem([], [new StockLength("s", 240, 0)], NoSaw, CutCosts.MetalOnly)));
    }

    [Fact]
    public void The_blade_takes_what_is_left_when_the_last_kerf_has_no_room()
    {
        // 4 × 59 + 3 × 1 = 239 of 240: a fourth pass of width 1 leaves nothing; of width 2 the list would need 242.
        CutPlan plan = Cut(new(KerfRule.BetweenPieces, 1, 0, 0), 240, new CutDemand("a", 59, 4)).Plan;
        Assert.Equal((4, 0), (plan.Runs[0].Pattern.KerfTicks, plan.Runs[0].Pattern.DropTicks));
    }

    [Fact]
    public void Pieces_of_one_length_share_a_set_up_and_keep_their_marks()
    {
        CutPlan plan = Cut(NoSaw, 100, new CutDemand("left", 50, 3), new CutDemand("right", 50, 3)).Plan;
        Assert.Equal(1, plan.SetUps);
        Assert.Equal(
            [(1, "left left"), (1, "left right"), (1, "right right")],
            plan.Runs.Select(run => (run.Sticks, string.Join(' ', run.Pattern.Pieces.Select(piece => piece.Mark)))));
    }

    [Fact]
    public void When_first_fit_meets_the_length_bound_no_solver_is_loaded() =>
        Assert.False(Cut(NoSaw, 100, new CutDemand("a", 60, 10), new CutDemand("b", 40, 10)).Plan.Solver);
}
