using Glazewright.Design.Contracts;
using Glazewright.Papers.Days;

namespace Glazewright.Papers.Tests.Reports;

/// <summary>The control box's reasons in a US reader's units.</summary>
public class UsReasonsTests
{
    [Theory]
    [InlineData("A/fan-3 on: 1.2 K above the cooling threshold for 4 min (stage 3)", "A/fan-3 on: 2.2 F° above the cooling threshold for 4 min (stage 3)")]
    [InlineData("no water on the wet wall: outside 12.0 °C, limit -1.5 °C", "no water on the wet wall: outside 53.6 °F, limit 29.3 °F")]
    [InlineData("wind 16.0 m/s: not over 0 %", "wind 36 mph: not over 0 %")]
    [InlineData("static pressure 37 Pa above 25 Pa", "static pressure 0.15 in. w.g. above 0.10 in. w.g.")]
    [InlineData("dosing: 700 ppm, up to 900 ppm, light 300 W/m²", "dosing: 700 ppm, up to 900 ppm, light 300 W/m²")]
    [InlineData("drying: 82.0 % RH, starts at 80.0 %", "drying: 82.0 % RH, starts at 80.0 %")]
    public void Each_quantity_is_turned_and_nothing_else(string said, string heard)
    {
        Assert.Equal(heard, UsReasons.Of(said, UnitSystem.Us));
        Assert.Equal(said, UsReasons.Of(said, UnitSystem.Metric));
    }
}
