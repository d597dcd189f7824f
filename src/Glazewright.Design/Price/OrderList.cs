using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Takeoff;

namespace Glazewright.Design.Price;

/// <summary>One thing to order.</summary>
/// <param name="Item">Price-book item id.</param>
/// <param name="Label">What it is.</param>
/// <param name="Quantity">How much, as bought.</param>
/// <param name="Per">Unit in words.</param>
/// <param name="From">Where the quantity comes from; for cut stock, pieces and length.</param>
/// <param name="LeastWeeks">Usual lead time, least.</param>
/// <param name="MostWeeks">Usual lead time, most.</param>
/// <param name="WaitsFor">What must be settled before it is ordered; empty for nothing.</param>
public sealed record OrderLine(string Item, string Label, double Quantity, string Per, string From, int LeastWeeks, int MostWeeks, string WaitsFor);

/// <summary>What is ordered first: lead times of the trade (common practice, in weeks; each supplier's own word goes before them), longest first.</summary>
public static class OrderList
{
    /// <summary>Weeks from which a thing counts as one of long lead.</summary>
    public const int LongWeeks = 3;

    private const string Sealed = "the engineer's seal and the permit";
    private const string Signed = "the owner's signature";
    private const string Utility = "the utility's word on the service";

    private static readonly (string Prefix, int Least, int Most, string WaitsFor)[] s_leads =
    [
        ("permits/permit", 4, 12, ""),
        ("electrical/panel", 8, 20, Utility),
        ("glazing/glass", 6, 12, Signed),
        ("cooling/vent", 6, 12, Signed),
        ("heating/boiler", 6, 12, Signed),
        ("air/dehumidifier", 6, 12, Signed),
        ("controls/box", 6, 12, Signed),
        ("panels/panel", 4, 10, Signed),
        ("heating/unit-heater", 4, 10, Signed),
        ("air/lamp", 4, 10, Signed),
        ("glazing/sheet", 3, 8, Signed),
        ("doors/", 4, 8, Signed),
        ("cooling/fan", 3, 8, Signed),
        ("cooling/louver", 3, 8, Signed),
        ("cooling/filter-fan", 4, 8, Signed),
        ("cooling/fog", 4, 8, Signed),
        ("curtain/cloth", 4, 8, Signed),
        ("curtain/drive", 4, 8, Signed),
        ("benches/", 4, 8, Signed),
        ("frame/tube", 2, 6, Sealed),
        ("frame/knee", 3, 6, Sealed),
        ("frame/base", 3, 6, Sealed),
        ("glazing/film", 3, 6, Signed),
        ("glazing/joint-profile", 3, 6, Signed),
        ("cooling/pad", 3, 6, Signed),
        ("cooling/insect-cloth", 3, 6, Signed),
        ("air/", 3, 6, Signed),
        ("plumbing/entry", 3, 6, Signed),
        ("panels/gutter", 2, 4, Signed),
    ];

    /// <summary>The lines of long lead that we buy, the longest first.</summary>
    /// <param name="bought">Takeoff lines as bought, see <see cref="Purchases"/>.</param>
    /// <returns>One line a thing; equal things of several houses summed.</returns>
    public static EqList<OrderLine> Of(EqList<TakeoffLine> bought)
    {
        ArgumentNullException.ThrowIfNull(bought);
        return bought.Where(l => Purchases.IsOurs(l.By) && l.Quantity > 0)
            .GroupBy(l => (l.Item, l.Label, l.Per))
            .Select(g => (Group: g, Lead: s_leads.FirstOrDefault(r => g.Key.Item.StartsWith(r.Prefix, StringComparison.Ordinal))))
            .Where(x => x.Lead.Most >= LongWeeks)
            .Select(x => new OrderLine(
                x.Group.Key.Item, x.Group.Key.Label, x.Group.Sum(l => l.Quantity), x.Group.Key.Per, string.Join("; ", x.Group.Select(l => l.From).Distinct().Take(3)),
                x.Lead.Least, x.Lead.Most, x.Lead.WaitsFor))
            .OrderByDescending(o => o.MostWeeks).ThenByDescending(o => o.LeastWeeks).ThenBy(o => o.Item, StringComparer.Ordinal).ThenBy(o => o.Label, StringComparer.Ordinal)
            .ToEqList();
    }
}
