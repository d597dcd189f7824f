using Glazewright.Cutting.Guards;

namespace Glazewright.Cutting.Bars;

/// <summary>How many saw kerfs a stick with n pieces is charged.</summary>
public enum KerfRule
{
    /// <summary>The "n − 1 kerf" rule: the saw passes between pieces; the last piece may end at the squared end of the stick.</summary>
    BetweenPieces,

    /// <summary>The "n kerf" rule: every piece is charged its own pass, also the last.</summary>
    EveryPiece,
}

/// <summary>Pieces of one shop mark to be cut from one section.</summary>
/// <param name="Mark">Shop mark printed on the piece.</param>
/// <param name="LengthTicks">Cut length over the long points, in ticks (whole steps of the caller's choice, such as 1/16 in or 0.1 mm).</param>
/// <param name="Count">How many.</param>
public sealed record CutDemand(string Mark, int LengthTicks, int Count);

/// <summary>A length in which the section is sold, in any number.</summary>
/// <param name="Id">Name printed on the cut list.</param>
/// <param name="LengthTicks">Length as delivered, ticks.</param>
/// <param name="PriceCents">Price of one stick, in hundredths of the currency, at least 1.</param>
public sealed record StockLength(string Id, int LengthTicks, long PriceCents);

/// <summary>What the saw takes and what is worth keeping.</summary>
/// <param name="Rule">Kerf rule, printed beside the list.</param>
/// <param name="KerfTicks">Width of one saw pass, ticks.</param>
/// <param name="EndTrimTicks">Taken off each stick before the first piece, both mill ends together, ticks.</param>
/// <param name="MinUsableDropTicks">A drop at least this long goes back to the rack; a shorter one is scrap. Ticks.</param>
public sealed record SawRules(KerfRule Rule, int KerfTicks, int EndTrimTicks, int MinUsableDropTicks);

/// <summary>What the shop's time costs beside the metal.</summary>
/// <param name="SetUpCents">Setting the stops for one pattern, hundredths of the currency.</param>
/// <param name="HandlingCents">Fetching, loading and clearing one stick, hundredths of the currency.</param>
public sealed record CutCosts(long SetUpCents, long HandlingCents)
{
    /// <summary>Metal only.</summary>
    public static CutCosts MetalOnly { get; } = new(0, 0);
}

/// <summary>One section's cutting problem. All lengths in the same ticks.</summary>
/// <param name="Demands">The pieces; may be empty.</param>
/// <param name="Stocks">Lengths on offer, at least one.</param>
/// <param name="Saw">Kerf, trim and drops.</param>
/// <param name="Costs">Set-up and handling.</param>
public sealed record CutProblem(
    IReadOnlyList<CutDemand> Demands, IReadOnlyList<StockLength> Stocks, SawRules Saw, CutCosts Costs)
{
    /// <summary>Longest length or coarsest count a problem may hold: keeps every sum inside 64 bits.</summary>
    internal const int Most = 10_000_000;

    /// <summary>Room for pieces on one stick when every piece is charged one kerf, ticks; negative when the trim eats the stick.</summary>
    internal int RoomTicks(StockLength stock) =>
        stock.LengthTicks - Saw.EndTrimTicks + (Saw.Rule == KerfRule.BetweenPieces ? Saw.KerfTicks : 0);

    /// <summary>Throws unless every number is in its range.</summary>
    internal void Require()
    {
        Within.Require(Stocks.Count, 1, 1_000);
        Within.Require(Saw.KerfTicks, 0, Most);
        Within.Require(Saw.EndTrimTicks, 0, Most);
        Within.Require(Saw.MinUsableDropTicks, 0, Most);
        Within.Require(Costs.SetUpCents, 0, 1_000_000_000);
        Within.Require(Costs.HandlingCents, 0, 1_000_000_000);
        foreach (StockLength stock in Stocks)
        {
            Within.Require(stock.LengthTicks, 1, Most);
            Within.Require(stock.PriceCents, 1, 1_000_000_000);
        }

        foreach (CutDemand demand in Demands)
        {
            Within.Require(demand.LengthTicks, 1, Most);
            Within.Require(demand.Count, 0, 1_000_000);
        }
    }
}
