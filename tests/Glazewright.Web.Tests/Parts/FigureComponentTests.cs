using Bunit;
using Glazewright.Design.Contracts;
using Glazewright.Web.Parts;

namespace Glazewright.Web.Tests.Parts;

/// <summary>A figure as the panel beside a page tells it.</summary>
public sealed class FigureComponentTests : BunitContext
{
    [Theory]
    [InlineData(733_085.4, Unit.Dollar, "$733,085 "), InlineData(-1200, Unit.Dollar, "−$1,200 "), InlineData(1453, Unit.DollarPerSquareMetre, "$134.99 /ft²"), InlineData(20, Unit.Celsius, "68.0 °F")]
    public void Money_has_its_sign_before_it(double value, Unit unit, string told)
    {
        IRenderedComponent<FigureView> figure = Render<FigureView>(p => p
            .Add(v => v.Figure, Figure.State("price/price", "Price", unit, value, new Source.FirstPrinciples("a test")))
            .Add(v => v.Units, UnitSystem.Us)
            .Add(v => v.FieldAddress, _ => null)
            .Add(v => v.FigureAddress, _ => null));
        Assert.Equal(told, figure.Find("summary .value").TextContent);
    }
}
