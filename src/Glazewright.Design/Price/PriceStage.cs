using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Cuts;
using Glazewright.Design.Takeoff;

namespace Glazewright.Design.Price;

/// <summary>Price: what the job costs, and what is charged for it.</summary>
public static class PriceStage
{
    /// <summary>Raise when results change.</summary>
    public const int Version = 5;

    /// <summary>Prices the range.</summary>
    /// <param name="input">Rates, margin, draws, scope.</param>
    /// <param name="takeoff">Quantities.</param>
    /// <param name="cuts">What is bought of tube and sheet.</param>
    /// <param name="book">Price book.</param>
    /// <returns>Costs (contractor only) and the quote.</returns>
    /// <remarks>
    /// Price = (direct + overhead + contingency) / (1 − margin): the margin is a share of the price. Overhead and contingency are shares of direct cost. Lines by others
    /// cost nothing; allowances are priced as ours.
    /// </remarks>
    public static PriceResult Run(PriceInput input, TakeoffResult takeoff, CutsResult cuts, PriceBook book) =>
        Run(input, takeoff, Purchases.Of(takeoff, cuts, UnitSystem.Us), book); // its words are not read here

    /// <summary>Prices lines as they are bought.</summary>
    /// <param name="input">Rates, margin, draws, scope.</param>
    /// <param name="takeoff">Quantities.</param>
    /// <param name="bought">Its lines, as bought.</param>
    /// <param name="book">Price book.</param>
    internal static PriceResult Run(PriceInput input, TakeoffResult takeoff, EqList<TakeoffLine> bought, PriceBook book)
    {
        List<Finding> findings = [];
        List<PricedLine> priced = [];
        foreach (TakeoffLine line in bought)
        {
            PriceItem? item = book.Find(line.Item);
            if (item is null || item.Per != line.Per)
            {
                findings.Add(PriceWords.NoPrice(line, book.Name, item));
            }

            double unitCost = input.Pricing.Overrides.FirstOrDefault(o => o.Item == line.Item)?.UnitCost ?? (item?.Per == line.Per ? item.UnitCost : 0);
            double unitHours = item?.Per == line.Per ? item.UnitHours : 0;
            bool ours = Purchases.IsOurs(line.By);
            priced.Add(new PricedLine(
                line.Item,
                line.Label,
                line.System,
                line.Quantity,
                line.Per,
                unitCost,
                ours ? line.Quantity * unitCost : 0,
                ours ? line.Quantity * unitHours : 0,
                line.By,
                item?.Class ?? PriceClass.Material,
                unitHours));
        }

        EqList<PricedLine> lines = priced.ToEqList();
        EqList<SystemCost> systems = lines.GroupBy(l => l.System).OrderBy(g => g.Key)
            .Select(g => new SystemCost(g.Key, g.Sum(l => l.Cost), g.Sum(l => l.LabourHours))).ToEqList();
        double taxedCost = lines.Where(p => p.Class == PriceClass.Material).Sum(p => p.Cost);
        PriceFigures money = PriceFigures.Of(input, systems, taxedCost, book);
        findings.AddRange(PriceWords.Findings(input, money, takeoff, book));
        return new PriceResult(
            lines,
            systems,
            money.Hours.Value,
            money.Labour.Value,
            money.Direct.Value,
            money.Overhead.Value,
            money.Contingency.Value,
            money.Margin.Value,
            money.Trap.Value,
            new QuoteResult(
                money.Price.Value,
                money.Low.Value,
                money.High.Value,
                money.PerFloor.Value,
                money.PerBench?.Value ?? 0,
                input.Pricing.DrawFractions.Select(share => share * money.Price.Value).ToEqList(),
                input.Pricing.ValidDays,
                Scope(input.Scope))
            {
                Due = input.Pricing.DrawsDue,
            },
            new StageReport(money.All, findings.ToEqList(), PriceWords.LeftOut));
    }

    /// <summary>Every system, those the job does not name by us.</summary>
    private static EqList<ScopeLine> Scope(EqList<ScopeLine> given) => Enum.GetValues<ScopeSystem>()
        .Select(system => given.FirstOrDefault(line => line.System == system) ?? new ScopeLine(system, ScopeBy.Us, "")).ToEqList();
}
