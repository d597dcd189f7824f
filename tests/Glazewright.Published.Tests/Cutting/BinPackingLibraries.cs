using Glazewright.Cutting.Bars;

namespace Glazewright.Published.Tests.Cutting;

/// <summary>
/// Bin-packing instances with proved optima. Data (read): OR-Library u120 and u250 (E. Falkenauer 1996, J. E. Beasley); sets 1, 2 and 3 of A. Scholl, R. Klein and
/// C. Jürgens, "BISON", Computers and Operations Research 24 (1997), a part of each. Optima (read): bounds of M. Delorme, M. Iori and S. Martello, "BPPLIB: a library for
/// bin packing and cutting stock problems", Optimization Letters 12 (2018), lower and upper bound equal. The files' own "best known" is one too high for four instances.
/// </summary>
public class BinPackingLibraries
{
    [Theory]
    [InlineData("binpack1.txt")]
    [InlineData("binpack2.txt")]
    public void Falkenauer_uniform(string file)
    {
        string folder = CuttingCases.Folder();
        Dictionary<string, int> optima = CuttingCases.Optima(folder);
        Dictionary<string, (int Capacity, int[] Sizes)> instances = CuttingCases.OrLibrary(Path.Combine(folder, "orlib", file));
        Assert.Equal(20, instances.Count);
        Assert.All(instances, instance => Check(instance.Value, optima["Falkenauer_" + instance.Key]));
    }

    [Theory]
    [InlineData("scholl1", 60)]
    [InlineData("scholl2", 30)]
    [InlineData("scholl3_hard", 2, "HARD7", "HARD9")]
    public void Scholl(string set, int count, params string[] names) => CheckSet(set, count, names);

    /// <summary>The three slowest (some 4 s each in a debug build): run with <c>-explicit on</c>.</summary>
    [Fact(Explicit = true)]
    public void Scholl_hardest() => CheckSet("scholl3_hard", 3, "HARD5", "HARD6", "HARD8");

    private static void CheckSet(string set, int count, params string[] names)
    {
        string folder = CuttingCases.Folder();
        Dictionary<string, int> optima = CuttingCases.Optima(folder);
        string[] paths = [.. Directory.GetFiles(Path.Combine(folder, set))
            .Where(path => names.Length == 0 || names.Contains(Path.GetFileNameWithoutExtension(path)))];
        Assert.Equal(count, paths.Length);
        Assert.All(paths, path => Check(CuttingCases.Scholl(path), optima[Path.GetFileNameWithoutExtension(path)]));
    }

    private static void Check((int Capacity, int[] Sizes) instance, int optimum)
    {
        CutPlan plan = Assert.IsType<CutAnswer.Planned>(BarCutter.Cut(new CutProblem(
            [.. instance.Sizes.Select(size => new CutDemand(string.Empty, size, 1))],
            [new StockLength("bin", instance.Capacity, 1)],
            new SawRules(KerfRule.BetweenPieces, 0, 0, 0),
            CutCosts.MetalOnly))).Plan;
        Assert.Equal(optimum, plan.Sticks);
        Assert.True(plan.IsProvedBest, $"bound {plan.Bound.SticksCents} below the known optimum {optimum}");
    }
}
