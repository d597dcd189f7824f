using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Price;
using Glazewright.Design.Takeoff;

namespace Glazewright.Design.Tests.Price;

/// <summary>What is ordered first. Weeks are common practice.</summary>
public class OrderListTests
{
    private static TakeoffLine Line(string item, double quantity, ScopeBy by = ScopeBy.Us) => new(item, item, ScopeSystem.Cooling, quantity, "each", "house A", by);

    [Fact]
    public void The_longest_lead_comes_first_and_houses_are_summed()
    {
        EqList<OrderLine> orders = OrderList.Of([Line("cooling/fan-36", 2), Line("electrical/panel", 3), Line("cooling/fan-36", 1), Line("glazing/screw", 900), Line("heating/boiler", 1, ScopeBy.Owner), Line("cooling/pad", 0)]);
        Assert.Equal(["electrical/panel", "cooling/fan-36"], orders.Select(o => o.Item));
        Assert.Equal(3, orders[1].Quantity);
        Assert.All(orders, o => Assert.True(o.LeastWeeks < o.MostWeeks && o.MostWeeks >= OrderList.LongWeeks));
    }

    // Steel is not ordered before the engineer has sealed the frame.
    [Fact]
    public void Tube_waits_for_the_seal() => Assert.Contains("seal", OrderList.Of([Line("frame/tube", 1)]).Single().WaitsFor, StringComparison.Ordinal);
}
