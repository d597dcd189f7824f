using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Takeoff;

namespace Glazewright.Design.Price;

/// <summary>Words of Price's findings. They are the contractor's own.</summary>
internal static class PriceWords
{
    public static EqList<string> LeftOut { get; } =
    [
        "Prices are of the price book, not offers: steel, panels and fuel-burning equipment move by the month.",
        "Own labour is at a middle productivity without travel, per diem, overtime or prevailing wage.",
        "Utility company's fees, taxes on real estate, financing, and work behind the wall of the existing service are not in it.",
        "Bid and performance bonds, retainage and liquidated damages are not in it.",
    ];

    public static Finding NoPrice(TakeoffLine line, string book, PriceItem? item) => new(
        "price/no-price",
        Severity.Miss,
        line.Item,
        item is null
            ? $"'{line.Label}' has no price in '{book}': it stands at nothing and the price is too low by it."
            : $"'{line.Label}' is measured in {line.Per} and priced in '{book}' per {item.Per}: it stands at nothing.",
        $"Add '{line.Item}' to the price book, or a unit price in the job.",
        new Source.Catalogue(book),
        Confidential: true);

    public static IEnumerable<Finding> Findings(PriceInput input, PriceFigures money, TakeoffResult takeoff, PriceBook book)
    {
        yield return new Finding(
            "price/book", Severity.Note, "", $"Priced with '{book.Name}', content {book.Hash.Hex[..12]}. {book.Note}", "", new Source.Catalogue(book.Name), Confidential: true);
        string percent = Shown.Of(input.Pricing.MarginOfPriceFraction, Unit.Fraction, UnitSystem.Us).Text;
        yield return new Finding(
            "price/mark-up-trap",
            Severity.Note,
            "",
            $"The margin of {percent} is a share of the price. As a mark-up on cost it would charge {Dollars(money.Trap.Value)}, {Dollars(money.Price.Value - money.Trap.Value)} less, and keep "
                + $"{Shown.Of(1 - (1 / (1 + input.Pricing.MarginOfPriceFraction)), Unit.Fraction, UnitSystem.Us).Text} of it.",
            "",
            new Source.FirstPrinciples("price = cost / (1 − margin)"),
            Confidential: true);
        double sum = input.Pricing.DrawFractions.Sum();
        if (input.Pricing.DrawFractions.Count > 0 && Math.Abs(sum - 1) > 1e-9)
        {
            yield return new Finding(
                "price/draws", Severity.Miss, "", $"The payments come to {Shown.Of(sum, Unit.Fraction, UnitSystem.Us).Text} of the price.", "Make them sum to 100 %.", new Source.Given("/pricing/draws"), Confidential: true);
        }

        foreach (string item in input.Pricing.Overrides.Select(o => o.Item).Where(o => takeoff.Lines.All(l => l.Item != o)))
        {
            yield return new Finding("price/unused", Severity.Note, item, $"The job fixes a price for '{item}', which the takeoff does not hold.", "Look for a slip in the id.", new Source.Given("/pricing/overrides"), Confidential: true);
        }

        foreach (ScopeSystem system in takeoff.Lines.Where(l => l.By == ScopeBy.Allowance).Select(l => l.System).Distinct())
        {
            yield return new Finding("price/allowance", Severity.Near, "", $"{system} stands in the price as an allowance, settled at actual cost.", "Get an offer before signing.", new Source.Given("/scope"), Confidential: true);
        }
    }

    private static string Dollars(double money) => "$" + Shown.Of(money, Unit.Dollar, UnitSystem.Us).Number;
}
