using BenchmarkDotNet.Attributes;
using Glazewright.Cutting.Bars;

namespace Glazewright.Bench.Cutting;

/// <summary>One section of a two-house job from three stock lengths, metal only and with set-ups priced.</summary>
public class BarCutting
{
    private CutProblem problem = null!;

    /// <summary>Price of a set-up, cents.</summary>
    [Params(0, 900)]
    public long SetUpCents { get; set; }

    [GlobalSetup]
    public void Prepare() => problem = new CutProblem(
        [
            new("rafter-s", 2280, 28), new("rafter-n", 1350, 28), new("column-s", 900, 14), new("column-n", 1110, 14),
            new("collar", 1560, 12), new("post", 1020, 9), new("brace", 430, 56),
        ],
        [new StockLength("20 ft", 3840, 6400), new StockLength("24 ft", 4608, 7680), new StockLength("40 ft", 7680, 12500)],
        new SawRules(KerfRule.BetweenPieces, 2, 16, 384),
        new CutCosts(SetUpCents, 150));

    [Benchmark]
    public long Cut() => BarCutter.Cut(problem).Plan.TotalCents;
}
