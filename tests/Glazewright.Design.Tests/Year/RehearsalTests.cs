using Glazewright.Design.Year;

namespace Glazewright.Design.Tests.Year;

public class RehearsalTests
{
    private static readonly Lazy<YearResult> Base = new(() => YearScenes.Run());

    private static Rehearsal Of(string id) => Base.Value.Rehearsals.Single(r => r.Id == id);

    [Fact]
    public void Failures_are_tried_on_the_coldest_night_and_the_hottest_noon()
    {
        Assert.Equal(
            ["heater-dead", "power-out-cold", "curtain-stuck", "sensor-dead-cold", "power-out-hot", "pump-dead"],
            Base.Value.Rehearsals.Select(r => r.Id).ToArray());
        Assert.All(Base.Value.Rehearsals, r => Assert.Equal(["as in the file", "calm", "windy"], r.Runs.Select(x => x.Wind).ToArray()));
    }

    // What nature sets: no heat at all is colder than one heater out, and that than a curtain left open with all heaters on.
    [Fact]
    public void Losing_all_heat_is_worse_than_losing_one_heater()
    {
        Assert.True(Of("power-out-cold").WorstC < Of("heater-dead").WorstC);
        Assert.True(Of("power-out-cold").SoonestMin < 12 * 60);
        Assert.True(Of("heater-dead").Runs[0].WorstC < Base.Value.Hours.InsideC.Skip(Of("heater-dead").Day * 24).Take(24).Min());
    }

    // Wind carries heat off: a house loses it sooner in wind than in calm.
    [Fact]
    public void Wind_shortens_the_time_to_frost()
    {
        Rehearsal outage = Of("power-out-cold");
        Assert.True(outage.Runs[2].ToLimitMin < outage.Runs[1].ToLimitMin);
        Assert.Equal(outage.SoonestMin, outage.Runs[2].ToLimitMin / 5 * 5);
    }

    // Without fans a summer noon runs hotter than with them, and a dry pad hotter than a wet one.
    [Fact]
    public void Losing_air_or_water_at_noon_is_hotter()
    {
        int hour = (Of("power-out-hot").Day * 24) + 13;
        Assert.True(Of("power-out-hot").Runs[0].WorstC > Base.Value.Hours.InsideC[hour]);
        Assert.True(Of("power-out-hot").Runs[0].WorstC > Of("pump-dead").Runs[0].WorstC);
    }

    // Newton: with the power out the house's air falls towards the outside and never below it by more than a clear sky can take.
    [Fact]
    public void A_house_withoutageheat_falls_towards_the_outside()
    {
        RehearsalRun run = Of("power-out-cold").Runs[0];
        Assert.True(run.InsideC[0] > run.InsideC[12] && run.InsideC[12] > run.InsideC[60]);
        Assert.True(run.WorstC > Base.Value.Hours.OutsideC.Min() - 5);
    }
}
