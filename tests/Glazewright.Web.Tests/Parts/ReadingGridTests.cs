using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;

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
}
