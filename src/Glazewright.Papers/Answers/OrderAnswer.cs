using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Price;
using Glazewright.Design.Takeoff;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Exchange;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Answers;

/// <summary>What do I order first? No cost stands in it.</summary>
internal static class OrderAnswer
{
    public static QuestionAnswered? Of(PaperSource source)
    {
        UnitSystem units = source.Job.Units;
        EqList<OrderLine> orders = OrderList.Of(Purchases.Of(source.Takeoff, source.Cuts, units));
        if (orders.Count == 0)
        {
            return null;
        }

        OrderLine[] longest = [.. orders.Take(3)];
        Said said = new(units);
        double steelKg = source.Takeoff.Marks.Sum(m => m.Count * m.MassEachKg);
        double stickM = source.Cuts.Sections.SelectMany(s => s.Patterns).Select(p => p.StockM).DefaultIfEmpty(0).Max();
        string sentence = $"Longest on the way: {Said.Listed(longest.Select(o => $"{o.Label} ({Weeks(o)} weeks)"))}.";
        List<Block> blocks =
        [
            new Block.TableOf(new Table(
                [new Column("What", 62), new Column("How much", 26, Along.End), new Column("Weeks, usually", 24, Along.End), new Column("Waits for", 60)],
                [.. orders.Select(o => (IReadOnlyList<string>)[o.Label, Quantity(o, units), Weeks(o), o.WaitsFor.Length > 0 ? o.WaitsFor : "nothing: apply now"])])),
            new Block.Paragraph(
                $"Tube in all {said.Round(steelKg, Unit.Kilogram)}, cut to length; the longest piece of stock is {said.Round(stickM, Unit.Metre)}: see that truck, yard and lift take it. Pieces and bundles stand in the cut lists. Lead times are common practice of a calm year: each supplier's own word goes before them, and what is not sealed or signed is not ordered.",
                Quiet: true),
        ];
        return new QuestionAnswered("What do I order first?", $"{longest[0].Label}, {Weeks(longest[0])} weeks", sentence, Standing.None, blocks);
    }

    private static string Weeks(OrderLine o) => string.Create(CultureInfo.InvariantCulture, $"{o.LeastWeeks} to {o.MostWeeks}");

    private static string Quantity(OrderLine o, UnitSystem units)
    {
        (double quantity, string per) = Measure.Of(o.Quantity, o.Per, units);
        return string.Create(CultureInfo.InvariantCulture, $"{quantity:N0} {(per == "each" ? "" : per)}").TrimEnd();
    }
}
