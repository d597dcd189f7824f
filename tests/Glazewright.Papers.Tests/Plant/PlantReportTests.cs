using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Plant;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Tests.Sets;
using Glazewright.Science.Air;

namespace Glazewright.Papers.Tests.Plant;

public class PlantReportTests
{
    [Theory]
    [InlineData(UnitSystem.Us), InlineData(UnitSystem.Metric)]
    public void No_lettering_clashes(UnitSystem units)
    {
        Report report = PlantReport.Of(SampleSource.Make(units))!;
        Assert.All(ReportSetting.Of(report).Pages, p => Assert.Empty(TextClashes.On(p)));
    }

    // Each end of a step must keep its number, or the table below the chart speaks of nothing.
    [Theory]
    [InlineData(-30, 40), InlineData(2, 3), InlineData(20, 44)]
    public void Every_numbered_state_is_on_the_chart(double lowC, double highC)
    {
        AirState low = AirState.FromRelativeHumidity(lowC, 0.8, 95_000);
        AirState high = AirState.FromRelativeHumidity(highC, 0.3, 95_000);
        AirState house = AirState.FromRelativeHumidity(highC, 0.6, 95_000);
        AirWay[] ways =
        [
            new("a", 1, [new(AirAct.Heated, [low, high], 0, 1), new(AirAct.Moistened, [high, house], 1, 0)]),
            new("b", 1, [new(AirAct.Heated, [low, high], 0, 1), new(AirAct.Moistened, [high, house], 1, 0)]),
        ];
        foreach (UnitSystem units in (UnitSystem[])[UnitSystem.Us, UnitSystem.Metric])
        {
            Sheet chart = PsychrometricChart.Draw("x", "Chart", ways, units, 172, 84);
            Assert.Empty(TextClashes.On(Plot.Of(chart)));
            string[] texts = [.. chart.OnPaper.OfType<Entity.Label>().Where(l => l.Face == Glazewright.Papers.Fonts.Face.SemiBold).Select(l => l.Text)];
            Assert.Equal(["1", "2", "3", "4", "5", "6"], texts);
        }
    }

    // On the drawn chart the exhaust lies to the right of the intake and the pad's arrow points up and left: place, not only presence.
    [Fact]
    public void States_stand_where_their_temperature_and_water_put_them()
    {
        AirState a = AirState.FromRelativeHumidity(10, 0.5, 101_325);
        AirState b = AirState.FromRelativeHumidity(30, 0.5, 101_325);
        Sheet chart = PsychrometricChart.Draw("x", "Chart", [new("w", 1, [new(AirAct.ThroughHouse, [a, b], 1, 1)])], UnitSystem.Metric, 172, 84);
        Entity.Arc[] points = [.. chart.OnPaper.OfType<Entity.Arc>()];
        // Axis 8 to 33 in steps gives 5…35 °C: 30 K over the plot's 155 mm.
        Assert.Equal(20.0 / 30 * 155, points[1].Centre.X - points[0].Centre.X, 0.5);
        Assert.True(points[1].Centre.Y < points[0].Centre.Y);
    }
}
