using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Price;
using Glazewright.Design.Takeoff;

namespace Glazewright.Design.Choices;

/// <summary>First cost of the alternatives: contractor only.</summary>
public static class ChoiceCosts
{
    /// <summary>Direct cost of an alternative's climate equipment: material, subcontract and own labour, without overhead, margin or tax.</summary>
    /// <param name="alternative">The alternative.</param>
    /// <param name="pricing">The contractor's rates and overrides.</param>
    /// <param name="book">Price book.</param>
    /// <returns>Money; lines without a price count nothing and are named.</returns>
    public static FirstCost Of(Alternative alternative, Pricing pricing, PriceBook book)
    {
        ArgumentNullException.ThrowIfNull(alternative);
        ArgumentNullException.ThrowIfNull(pricing);
        ArgumentNullException.ThrowIfNull(book);
        double cost = 0;
        List<string> without = [];
        foreach (TakeoffLine line in alternative.Lines)
        {
            PriceItem? item = book.Find(line.Item);
            double? typed = pricing.Overrides.FirstOrDefault(o => o.Item == line.Item)?.UnitCost;
            bool fits = item?.Per == line.Per;
            if (typed is null && !fits)
            {
                without.Add(line.Item);
            }

            cost += line.Quantity * ((typed ?? (fits ? item!.UnitCost : 0)) + (fits ? item!.UnitHours * pricing.LabourPerHour : 0));
        }

        return new FirstCost(cost, without.ToEqList());
    }
}

/// <summary>Direct first cost.</summary>
/// <param name="Cost">Money.</param>
/// <param name="WithoutPrice">Items the price book does not know.</param>
public sealed record FirstCost(double Cost, EqList<string> WithoutPrice);
