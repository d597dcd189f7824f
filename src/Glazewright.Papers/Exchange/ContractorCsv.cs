using Glazewright.Design.Contracts;
using Glazewright.Design.Price;

namespace Glazewright.Papers.Exchange;

/// <summary>Tables with cost, labour and margin: for the contractor's own set and no other.</summary>
public static class ContractorCsv
{
    /// <summary>Every priced line.</summary>
    /// <param name="price">Price.</param>
    /// <param name="units">Units people order in.</param>
    /// <returns>The table.</returns>
    public static string Lines(PriceResult price, UnitSystem units)
    {
        CsvText csv = new("system", "item", "description", "quantity", "unit", "unit_cost", "cost", "labour_hours", "by");
        foreach (PricedLine line in price.Lines)
        {
            (double quantity, string per) = Measure.Of(line.Quantity, line.Per, units);
            csv.Cell(line.System.ToString()).Cell(line.Item).Cell(line.Label).Cell(quantity, 2).Cell(per)
                .Cell(quantity > 0 ? line.UnitCost * line.Quantity / quantity : line.UnitCost, 2).Cell(line.Cost, 2).Cell(line.LabourHours, 1).Cell(line.By.ToString()).End();
        }

        return csv.ToString();
    }

    /// <summary>From direct cost to price, one row a step.</summary>
    /// <param name="price">Price.</param>
    /// <returns>The table.</returns>
    public static string Summary(PriceResult price)
    {
        CsvText csv = new("step", "money");
        foreach (SystemCost system in price.Systems)
        {
            csv.Cell($"{system.System}, material and subcontract").Cell(system.Cost, 2).End();
        }

        (string Step, double Money)[] steps =
        [
            (FormattableString.Invariant($"own labour, {price.LabourHours:0} h"), price.LabourCost),
            ("sales tax", price.DirectCost - price.LabourCost - price.Systems.Sum(s => s.Cost)),
            ("direct cost", price.DirectCost),
            ("overhead", price.Overhead),
            ("contingency", price.Contingency),
            ("margin, share of the price", price.Margin),
            ("price", price.Quote.Price),
            ("trap: the same percentage as a mark-up on cost would charge", price.MarkupTrapPrice),
        ];
        foreach ((string step, double money) in steps)
        {
            csv.Cell(step).Cell(money, 2).End();
        }

        return csv.ToString();
    }
}
