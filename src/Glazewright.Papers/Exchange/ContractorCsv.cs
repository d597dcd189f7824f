using Glazewright.Design.Brief;
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

    /// <summary>From direct cost to price, one row a step. What adds up, what is a sum of rows above, and what only compares stand in columns of their own: a column can be summed as it is.</summary>
    /// <param name="price">Price.</param>
    /// <returns>The table; the column <c>part</c> sums to the price.</returns>
    public static string Summary(PriceResult price)
    {
        CsvText csv = new("step", "part", "sum_so_far", "to_compare");
        foreach (SystemCost system in price.Systems)
        {
            Part($"{ScopeWords.Headed(system.System)}: material and subcontract", system.Cost);
        }

        Part(FormattableString.Invariant($"own labour, {price.LabourHours:0} h"), price.LabourCost);
        Part("sales tax", price.DirectCost - price.LabourCost - price.Systems.Sum(s => s.Cost));
        csv.Cell("direct cost").Cell("").Cell(price.DirectCost, 2).Cell("").End();
        Part("overhead", price.Overhead);
        Part("contingency", price.Contingency);
        Part("margin, share of the price", price.Margin);
        csv.Cell("price").Cell("").Cell(price.Quote.Price, 2).Cell("").End();
        csv.Cell("not the price: what the same percentage would give as a mark-up on cost").Cell("").Cell("").Cell(price.MarkupTrapPrice, 2).End();
        return csv.ToString();

        void Part(string step, double money) => csv.Cell(step).Cell(money, 2).Cell("").Cell("").End();
    }
}
