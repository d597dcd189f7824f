using Glazewright.Design.Contracts;
using Glazewright.Design.Year;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Days;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;

namespace Glazewright.Web.Tests.Parts;

/// <summary>Values that pictures can be asked for.</summary>
public class ReadingGridTests
{
    [Fact]
    public void A_carpet_gives_the_hour_of_the_day_pointed_at()
    {
        double[] hourly = [.. Enumerable.Range(0, 8760).Select(h => h / 10.0)];
        Sheet sheet = CarpetPlot.Draw("c", "Air", "°C", hourly, CarpetPlot.Even(Ramp.Sequential, 100, 100, 8), 190, 40);
        ReadingGrid grid = Assert.Single(ReadingGrid.Of(sheet));
        Assert.Equal((365, 24), (grid.Columns, grid.Rows));
        // 1 March is the 60th day: its sixth hour is the 1422nd of the year.
        Assert.Equal(("1 Mar", "5–6 h"), (grid.ColumnName(59), grid.RowName(5)));
        Assert.Equal(142.1, grid.At(59, 5), 1e-9);
        Assert.Equal("31 Dec", grid.ColumnName(364));
        Assert.Equal(CarpetPlot.DaysOn(190, 40), grid.PlotMm);
    }

    [Fact]
    public void A_plan_gives_its_cells_from_below_and_one_laid_on_a_sheet_lies_where_it_was_laid()
    {
        Sheet plan = LightPlan.Draw("p", "Light", "mol/m² a day", 3, 2, [1, 2, 3, 4, 5, 6], CarpetPlot.Even(Ramp.Sequential, 1, 1, 6), 2, 100);
        Sheet sheet = new("s", "Sheet", "", 300, 200, [], []) { Insets = [new Inset(plan, new(40, 70))] };
        ReadingGrid grid = Assert.Single(ReadingGrid.Of(sheet));
        Assert.Equal("Light", grid.Name);
        Assert.Equal((40 + plan.Readings[0].PlotMm.Left, 70 + plan.Readings[0].PlotMm.Top), (grid.PlotMm.Left, grid.PlotMm.Top));
        Assert.Equal(6, grid.At(2, 1));
        Assert.Equal("cell 3 of 3 from the left", grid.ColumnName(2));
        Assert.Equal(10.8, grid.In(1.8, "F°", 1).At(2, 1), 1e-9);
    }

    [Fact]
    public void A_strip_chart_tells_every_curve_of_the_moment_pointed_at()
    {
        Sheet sheet = StripChart.Draw("s", "Air", "°F", [new Strip("crop", [70, 71.36, 72, -1]), new Strip("target", [68, double.NaN, 68, 68])], null, [], 172, 40, i => $"step {i}");
        ReadingGrid grid = Assert.Single(ReadingGrid.Of(sheet));
        Assert.Equal((4, 1, "step 1", ""), (grid.Columns, grid.Rows, grid.ColumnName(1), grid.RowName(0)));
        Assert.Equal("crop 70.0 °F, target 68.0 °F", grid.Told(0, 0));
        Assert.Equal("crop 71.4 °F", grid.Told(1, 0));
        Assert.Equal("crop −1.0 °F, target 68.0 °F", grid.Told(3, 0));
        // The curve's points lie in the middle of their columns.
        Spot[] curve = [.. sheet.OnPaper.OfType<Entity.Polyline>().First(p => p.Role == Role.Curve).Points];
        double columnMm = grid.PlotMm.Width / 4;
        Assert.All(curve, (p, i) => Assert.Equal(grid.PlotMm.Left + (i + 0.5) * columnMm, p.X, 1e-9));
        Assert.Empty(ReadingGrid.Of(StripChart.Draw("s", "Air", "°F", [new Strip("crop", [70, 71])], null, [], 172, 40)));
    }

    [Fact]
    public void A_command_tells_its_reason_and_how_long_it_holds()
    {
        DayReplay day = new("A", 10, [], ["A/fan-1", "A/heater-1"], [new CommandSpell(0, 0, 600, 0, "A/fan-1 off: nothing asks for it"), new CommandSpell(0, 600, 1440, 1, "A/fan-1 on: 1.2 K above"), new CommandSpell(1, 0, 1440, 0, "A/heater-1 off: nothing asks for it")]);
        ReadingGrid grid = Assert.Single(ReadingGrid.Of(DayReport.Pictures(Minutes(day), UnitSystem.Us).OfType<Block.Picture>().Last().Drawing));
        Assert.Equal((1440, 2, "fan-1", "heater-1"), (grid.Columns, grid.Rows, grid.RowName(1), grid.RowName(0)));
        Assert.Equal("off: nothing asks for it (00:00:00 to 10:00:00)", grid.Told(599, 1));
        Assert.Equal("on: 2.2 F° above (10:00:00 to 24:00:00)", grid.Told(600, 1));
        Assert.Equal("off: nothing asks for it (00:00:00 to 24:00:00)", grid.Told(600, 0));

        static DayReplay Minutes(DayReplay day) => day with { Minutes = [.. Enumerable.Range(0, 1440).Select(m => new ReplayMinute(20, 60, 21, 5, 100, 20, 60, false, 0, 0, 0, 0, 0))] };
    }
}
