using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Design.Rehearsals;
using Glazewright.Design.Tests.Year;
using Glazewright.Design.Year;

namespace Glazewright.Design.Tests.Rehearsals;

public class RehearsalTests
{
    private static readonly Lazy<YearResult> Year = new(() => YearScenes.Run());
    private static readonly Lazy<RehearsalResult> Base = new(() => RehearsalStage.Run(
        YearScenes.Input, YearScenes.Form, YearScenes.Gains, YearScenes.Plant, YearScenes.Program, YearScenes.Weather, Year.Value, default));

    private static Rehearsal Of(string id) => Base.Value.All.Single(r => r.Id == id);

    [Fact]
    public void Failures_are_tried_on_the_coldest_night_and_the_hottest_noon()
    {
        Assert.Equal(
            ["heater-dead", "power-out-cold", "curtain-stuck", "sensor-dead-cold", "sensor-sticks-cold", "sensor-drifts-cold", "sensor-high-cold", "power-out-hot", "sensor-sticks-hot", "pump-dead"],
            Base.Value.All.Select(r => r.Id).ToArray());
        Assert.All(Base.Value.All, r => Assert.Equal(3, r.Runs.Count));
        Assert.All(Base.Value.All, r => Assert.Equal("as in the file", r.Runs[0].State));
        Assert.All(Base.Value.All, r => Assert.Equal(r.Id == "curtain-stuck" ? 4 : 8, r.Tried));
    }

    // What nature sets: no heat at all is colder than one heater out.
    [Fact]
    public void Losing_all_heat_is_worse_than_losing_one_heater()
    {
        Assert.True(Of("power-out-cold").WorstC < Of("heater-dead").WorstC);
        Assert.True(Of("power-out-cold").SoonestMin < 12 * 60);
        Assert.True(Of("heater-dead").Runs[0].WorstC < Year.Value.Hours.InsideC.Skip(Of("heater-dead").Day * 24).Take(24).Min());
    }

    // A house that only its bench pipe heats has one boiler: with it out it falls as far as without power.
    [Fact]
    public void A_boiler_that_stops_is_a_failure_of_its_own()
    {
        PlantResult plant = YearScenes.Plant with { BenchPipeW = 40_000, Heat = null };
        ProgramDocument program = ProgramStage.Run(ProgramInput.From(YearScenes.Job, "A"), plant);
        YearResult year = YearScenes.Run(program, plant);
        RehearsalResult all = RehearsalStage.Run(YearScenes.Input, YearScenes.Form, YearScenes.Gains, plant, program, YearScenes.Weather, year, TestContext.Current.CancellationToken);
        Rehearsal boiler = all.All.Single(r => r.Id == "boiler-dead"), power = all.All.Single(r => r.Id == "power-out-cold");
        Assert.DoesNotContain(all.All, r => r.Id == "heater-dead");
        Assert.NotNull(boiler.SoonestMin);
        Assert.InRange(boiler.WorstC, power.WorstC - 2, power.WorstC + 2);
    }

    // A house loses its heat soonest in wind and with the curtain open; the file's own state lies between both ends.
    [Fact]
    public void The_harshest_state_is_windy_with_the_curtain_open_and_the_mildest_calm_with_it_shut()
    {
        Rehearsal outage = Of("power-out-cold");
        Assert.StartsWith("windy", outage.Runs[1].State, StringComparison.Ordinal);
        Assert.EndsWith("curtain open", outage.Runs[1].State, StringComparison.Ordinal);
        Assert.StartsWith("calm", outage.Runs[2].State, StringComparison.Ordinal);
        Assert.EndsWith("curtain shut", outage.Runs[2].State, StringComparison.Ordinal);
        Assert.True(outage.Runs[1].ToLimitMin < outage.Runs[0].ToLimitMin);
        Assert.True(outage.Runs[2].ToLimitMin is null || outage.Runs[0].ToLimitMin < outage.Runs[2].ToLimitMin);
        Assert.Equal(outage.SoonestMin, outage.Runs[1].ToLimitMin / 5 * 5);
    }

    // Water that freezes or condenses gives heat: a damp house cools more slowly at first than the same one dry.
    [Fact]
    public void A_damp_house_cools_more_slowly_than_a_dry_one()
    {
        RehearsalRun damp = Shut("power-out-cold", true), dry = Shut("power-out-cold", false);
        Assert.True(damp.InsideC[6] > dry.InsideC[6], $"{damp.InsideC[6]} against {dry.InsideC[6]}");

        static RehearsalRun Shut(string id, bool isDamp)
        {
            Supposed state = Supposed.Corners(true).Single(s => s.Damp == isDamp && s.WindMs < 1 && s.CurtainFraction == 1);
            return RehearsalStage.ByTheMinute(
                id, state, YearScenes.Input, YearScenes.Form, YearScenes.Gains, YearScenes.Plant, YearScenes.Program, YearScenes.Weather, Year.Value);
        }
    }

    // Without fans a summer noon runs hotter than with them, and hotter than with a dry pad.
    [Fact]
    public void Losing_air_or_water_at_noon_is_hotter()
    {
        int hour = (Of("power-out-hot").Day * 24) + 13;
        Assert.True(Of("power-out-hot").Runs[0].WorstC > Year.Value.Hours.InsideC[hour]);
        Assert.True(Of("power-out-hot").Runs[0].WorstC > Of("pump-dead").Runs[0].WorstC);
    }

    // Five kelvin high: the program heats to what it sees, so the house stands five kelvin below the night's wish, and the second thermometer tells within the alarm's quarter of an hour.
    [Fact]
    public void A_thermometer_that_reads_high_keeps_the_house_as_much_colder_and_the_second_one_tells()
    {
        RehearsalRun run = Of("sensor-high-cold").Runs[0], dead = Of("sensor-dead-cold").Runs[0];
        double night = YearScenes.Input.Schedule[0].Night.TemperatureC;
        // Means of an hour, three hours on: the burner comes and goes every ten to fifteen minutes and swings the air by 1 K.
        Assert.InRange(run.InsideC.Skip(30).Take(12).Average() - (night - 5), -1, 1);
        Assert.All(Of("sensor-high-cold").Runs, r => Assert.Equal("thermometers-disagree", r.ToldBy));
        Assert.All(Of("sensor-high-cold").Runs, r => Assert.InRange(r.ToldMin!.Value, 14, 17));
        // One that is dead is told in a minute, and the second serves.
        Assert.Equal(("no-temperature-inside", 1), (dead.ToldBy, dead.ToldMin));
        Assert.InRange(dead.InsideC.Skip(30).Take(12).Average() - night, -1.5, 1.5);
        Assert.Contains("A/heater-", run.Does, StringComparison.Ordinal);
    }

    // Until the morning's higher wish calls heat again: four hours on it is as cold as with the power out.
    [Fact]
    public void A_stuck_one_leaves_the_heat_off_all_night()
    {
        Rehearsal stuck = Of("sensor-sticks-cold"), outage = Of("power-out-cold");
        Assert.Equal(outage.Runs[0].InsideC[48], stuck.Runs[0].InsideC[48], 1.0);
        Assert.All(stuck.Runs, r => Assert.Equal("thermometers-disagree", r.ToldBy));
        // Long before frost: it tells when the air has fallen by 2 K, and a quarter of an hour.
        Assert.All(stuck.Runs.Where(r => r.ToLimitMin is not null), r => Assert.True(r.ToldMin < r.ToLimitMin, $"{r.State}: {r.ToldMin} and {r.ToLimitMin}"));
        Assert.Contains("off", stuck.Runs[0].Does, StringComparison.Ordinal);
    }

    // Half a kelvin an hour passes 2 K after four hours.
    [Fact]
    public void A_drifting_one_is_told_when_it_is_two_kelvin_away()
    {
        Rehearsal drifts = Of("sensor-drifts-cold");
        Assert.All(drifts.Runs, r => Assert.Equal("thermometers-disagree", r.ToldBy));
        Assert.All(drifts.Runs, r => Assert.InRange(r.ToldMin!.Value, (4 * 60) - 20, (4 * 60) + 40));
        Assert.True(drifts.Runs[0].WorstC > Of("sensor-sticks-cold").Runs[0].WorstC);
    }

    [Fact]
    public void Without_a_second_thermometer_nothing_tells_a_wrong_one()
    {
        ProgramDocument alone = YearScenes.Program with { Sensors = SensorPoints.Usual("A").Where(s => s.Id != "A/second-temperature").ToEqList() };
        RehearsalRun run = RehearsalStage.ByTheMinute(
            "sensor-high-cold", Supposed.AsInTheFile, YearScenes.Input, YearScenes.Form, YearScenes.Gains, YearScenes.Plant, alone, YearScenes.Weather, Year.Value);
        Assert.Equal("", run.ToldBy);
        Assert.Null(run.ToldMin);
        RehearsalRun told = RehearsalStage.ByTheMinute(
            "sensor-high-cold", Supposed.AsInTheFile, YearScenes.Input, YearScenes.Form, YearScenes.Gains, YearScenes.Plant, YearScenes.Program, YearScenes.Weather, Year.Value);
        Assert.Equal((told.WorstC, "thermometers-disagree"), (run.WorstC, told.ToldBy)); // it only tells
    }

    [Fact]
    public void One_that_sticks_at_noon_stops_fans_and_water()
    {
        Rehearsal low = Of("sensor-sticks-hot");
        int hour = (low.Day * 24) + 14;
        Assert.True(low.Runs[0].WorstC > Year.Value.Hours.InsideC[hour] + 3, $"{low.Runs[0].WorstC} and {Year.Value.Hours.InsideC[hour]}");
        Assert.All(low.Runs, r => Assert.Equal("thermometers-disagree", r.ToldBy));
        // A box without power tells nobody.
        Assert.All(Of("power-out-hot").Runs, r => Assert.Equal("", r.ToldBy));
    }

    // Newton: with the power out the house's air falls towards the outside and never below it by more than a clear sky can take.
    [Fact]
    public void A_house_without_heat_falls_towards_the_outside()
    {
        RehearsalRun run = Of("power-out-cold").Runs[0];
        Assert.True(run.InsideC[0] > run.InsideC[12] && run.InsideC[12] > run.InsideC[60]);
        Assert.True(run.WorstC > Year.Value.Hours.OutsideC.Min() - 5);
    }

    // With all power off nothing pulses: steps of seconds and of minutes must tell the same story (step refinement, 0.1 K).
    [Fact]
    public void Without_power_seconds_and_minutes_agree()
    {
        RehearsalRun seconds = Of("power-out-cold").Runs[0];
        RehearsalRun minutes = RehearsalStage.ByTheMinute(
            "power-out-cold", Supposed.AsInTheFile, YearScenes.Input, YearScenes.Form, YearScenes.Gains, YearScenes.Plant, YearScenes.Program, YearScenes.Weather, Year.Value);
        double rms = Math.Sqrt(seconds.InsideC.Zip(minutes.InsideC, (a, b) => (double)(a - b) * (a - b)).Average());
        Assert.True(rms <= 0.1, $"{rms} K");
    }
}
