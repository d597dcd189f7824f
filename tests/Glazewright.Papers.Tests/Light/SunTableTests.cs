using Glazewright.Design.Brief;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Light;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Tests.Sets;

namespace Glazewright.Papers.Tests.Light;

/// <summary>How the sun's table reads; its numbers are checked where they are computed.</summary>
public class SunTableTests
{
    [Theory]
    [InlineData(44, "7:", "16:"), InlineData(70, "stays down", "–")]
    public void A_row_a_month(double latitudeDeg, string decemberRise, string decemberSet)
    {
        Site site = SampleSource.Make().Job.Site with { LatitudeDeg = latitudeDeg, LongitudeDeg = 0, ZoneHours = 0 };
        Table table = SunTable.Of(site);
        Assert.Equal(12, table.Rows.Count);
        Assert.All(table.Rows, r => Assert.Equal(table.Columns.Count, r.Count));
        Assert.StartsWith(decemberRise, table.Rows[11][1], StringComparison.Ordinal);
        Assert.StartsWith(decemberSet, table.Rows[11][3], StringComparison.Ordinal);
        Assert.Equal("21 December", table.Rows[11][0]);
    }

    [Theory]
    [InlineData(-6.0, "UTC−6:00"), InlineData(5.5, "UTC+5:30"), InlineData(0.0, "UTC+0:00"), InlineData(-3.5, "UTC−3:30")]
    public void The_clock_is_named(double zoneH, string named) =>
        Assert.Contains(named, SunTable.Note(SampleSource.Make().Job.Site with { ZoneHours = zoneH }), StringComparison.Ordinal);
}
