using Glazewright.Design.Contracts;
using Glazewright.Design.Year;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Tests.Sets;

namespace Glazewright.Papers.Tests.Answers;

public class ControlReportTests
{
    [Fact]
    public void The_controls_paper_tells_hours_and_starts_of_each_machine()
    {
        Block.TableOf table = ControlReport.Of(SampleSource.Make()).Blocks.OfType<Block.TableOf>().First();
        Assert.Contains(table.Table.Rows, r => r.SequenceEqual(["A/fan-1", "2,100", "3,100"]));
    }

    [Fact]
    public void It_shows_what_the_house_has_by_day_and_hour()
    {
        YearResult year = SampleSource.Make().Houses[0].Year;
        Assert.Equal(["humidity-A"], YearCarpets.Of(year, UnitSystem.Us).Select(p => p.Drawing.Id));
        EqList<float> half = Enumerable.Repeat(0.5f, 8760).ToEqList();
        YearResult all = year with { Hours = year.Hours with { AirFlowM3PerS = half, CurtainFraction = half, SecondCurtainFraction = half } };
        Assert.Equal(["humidity-A", "exhaust-A", "curtain-A", "second-curtain-A"], YearCarpets.Of(all, UnitSystem.Us).Select(p => p.Drawing.Id));
    }
}
