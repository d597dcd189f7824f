using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Cuts;

/// <summary>What Cuts reads of the job: stock lengths and the saw. No prices: a price edit cuts nothing anew.</summary>
/// <param name="Units">Decides the shop's step and the lengths sheet is sold in.</param>
/// <param name="StockLengthsM">Lengths tube is sold in, m: those of all houses together.</param>
/// <param name="KerfM">Widest saw kerf of the houses, m.</param>
public sealed record CutsInput(UnitSystem Units, EqList<double> StockLengthsM, double KerfM)
{
    /// <summary>Projects the job.</summary>
    /// <param name="job">The job.</param>
    /// <returns>Cuts' input.</returns>
    public static CutsInput From(Job job) => new(
        job.Units,
        job.Houses.SelectMany(h => h.Frame.StockLengthsM).Distinct().Order().ToEqList(),
        job.Houses.Select(h => h.Frame.KerfM).DefaultIfEmpty(0).Max());
}
