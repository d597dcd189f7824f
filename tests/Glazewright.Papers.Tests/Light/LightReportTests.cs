using Glazewright.Design.Contracts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Exchange;
using Glazewright.Papers.Light;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Tests.Sets;

namespace Glazewright.Papers.Tests.Light;

public class LightReportTests
{
    [Theory]
    [InlineData(UnitSystem.Us), InlineData(UnitSystem.Metric)]
    public void No_lettering_clashes(UnitSystem units)
    {
        Report report = LightReport.Of(SampleSource.Make(units))!;
        Assert.All(ReportSetting.Of(report).Pages, p => Assert.Empty(TextClashes.On(p)));
    }

    // Every latitude has its chart: the tropics with the sun on both sides, the far north with a sun that does not set, the south with noon in the north.
    [Theory]
    [InlineData(0)]
    [InlineData(-34)]
    [InlineData(15)]
    [InlineData(42)]
    [InlineData(66)]
    [InlineData(90)]
    public void Sun_paths_are_drawn_everywhere(double latitudeDeg)
    {
        Sheet chart = SunPath.Draw(latitudeDeg, 95, [new(90, 5), new(200, 20)], 118);
        Assert.Empty(TextClashes.On(Plot.Of(chart)));
        Assert.Contains(chart.OnPaper, e => e.Role == Role.Light);
    }

    // Noon on 21 December at 42° N stands 90 − 42 − 23.44 = 24.56° high, due south: (90 − 24.56)/90 of the radius below the middle.
    [Fact]
    public void The_low_noon_sun_stands_where_it_must()
    {
        Sheet chart = SunPath.Draw(42, 90, [], 118);
        double expected = 59 + (52 * (90 - 24.56) / 90);
        Entity.Polyline[] ways = [.. chart.OnPaper.OfType<Entity.Polyline>().Where(p => p.Role == Role.Light && p.Pen!.WidthMm > 0.4)];
        Assert.Contains(ways, w => w.Points.Any(p => Math.Abs(p.X - 59) < 0.01 && Math.Abs(p.Y - expected) < 0.01));
    }

    [Fact]
    public void Data_has_a_row_a_cell_and_a_row_an_hour()
    {
        HouseResults house = SampleSource.Make().Houses[0];
        string[] cells = LightCsv.Cells(house, UnitSystem.Us).TrimEnd('\n').Split('\n');
        Assert.Equal(1 + (2 * 20 * 6) + 80, cells.Length);
        Assert.All(cells, c => Assert.Equal(15, c.Split(',').Length + (c.Contains('"', StringComparison.Ordinal) ? -1 : 0)));
        string[] hours = LightCsv.Hours(house).TrimEnd('\n').Split('\n');
        Assert.Equal(8761, hours.Length);
        Assert.StartsWith("1,1,1,", hours[1], StringComparison.Ordinal);
        Assert.StartsWith("12,31,24,", hours[^1], StringComparison.Ordinal);
    }
}
