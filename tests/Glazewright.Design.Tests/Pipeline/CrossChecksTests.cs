using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Tests.Year;
using Glazewright.Design.Year;

namespace Glazewright.Design.Tests.Pipeline;

/// <summary>
/// What the snow load counts on against what the year brings. ASCE/SEI 7-16 table 7.3-2: 1.0 for a roof kept warm, 1.1 kept just above freezing, 1.2 without heat
/// (read at second hand).
/// </summary>
public class CrossChecksTests
{
    private static readonly Lazy<YearResult> Year = new(() => YearScenes.Run());

    private static Job Kept(double nightC) => TestJobs.OneHouse() is var job
        ? job with { Houses = job.Houses.Select(h => h with { Schedule = h.Schedule.Select(p => p with { Night = p.Night with { TemperatureC = nightC } }).ToEqList() }).ToEqList() }
        : throw new InvalidOperationException();

    private static IEnumerable<Finding> Found(Job job, double usualC, int hour = -1, double oddC = 0)
    {
        FrameResult frame = FrameStage.Run(FrameInput.From(job, "A"), FormStage.Run(FormInput.From(job)).Building("A"), TestContext.Current.CancellationToken);
        float[] insideC = [.. Enumerable.Range(0, 8760).Select(h => (float)(h == hour ? oddC : usualC))];
        return CrossChecks.Snow(job, frame, Year.Value with { Hours = Year.Value.Hours with { InsideC = EqList.Own(insideC) } });
    }

    [Fact]
    public void A_year_that_holds_the_warmth_says_nothing() => Assert.Empty(Found(Kept(17), 12, 180, 10));

    [Fact]
    public void A_winter_hour_below_50_F_raises_the_factor()
    {
        Finding f = Assert.Single(Found(Kept(17), 17, 7 * 24 + 7, 3.5));
        Assert.Equal(Severity.Danger, f.Severity);
        Assert.Contains("8 January, 07:00", f.What, StringComparison.Ordinal);
        Assert.Contains("(Ct 1.00)", f.What, StringComparison.Ordinal);
        Assert.Contains("Ct would be 1.10, at least 10 % more snow", f.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Frost_in_a_warm_house_takes_the_unheated_factor() =>
        Assert.Contains("Ct would be 1.20, at least 20 % more snow", Assert.Single(Found(Kept(17), 17, 100, -1)).What, StringComparison.Ordinal);

    [Fact]
    public void A_cool_house_relies_on_no_frost_only()
    {
        Assert.Empty(Found(Kept(4), 4, 100, 0.3));
        Assert.Contains("Ct would be 1.20, at least 9 % more snow", Assert.Single(Found(Kept(4), 4, 100, -0.3)).What, StringComparison.Ordinal);
    }

    [Fact]
    public void Cold_in_July_counts_only_south_of_the_equator()
    {
        Assert.Empty(Found(Kept(17), 17, 195 * 24, 3));
        Job job = Kept(17);
        Assert.Single(Found(job with { Site = job.Site with { LatitudeDeg = -40 } }, 17, 195 * 24, 3));
    }
}
