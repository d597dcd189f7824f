using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Price;

/// <summary>What Price reads of the job.</summary>
/// <param name="Pricing">Rates, margin, draws, overrides: the contractor's own.</param>
/// <param name="Scope">Who supplies each system.</param>
/// <param name="FloorM2">Floor of all buildings, m².</param>
/// <param name="BenchM2">Bench area, m².</param>
public sealed record PriceInput(Pricing Pricing, EqList<ScopeLine> Scope, double FloorM2, double BenchM2)
{
    /// <summary>Projects the job.</summary>
    /// <param name="job">The job.</param>
    /// <returns>Price's input.</returns>
    public static PriceInput From(Job job) => new(
        job.Pricing,
        job.Scope,
        job.Houses.Sum(h => h.WidthM * h.LengthM) + job.Links.Sum(l => l.SizeXM * l.SizeYM),
        job.Houses.SelectMany(h => h.Benches).Sum(b => b.WidthM * b.LengthM));
}
