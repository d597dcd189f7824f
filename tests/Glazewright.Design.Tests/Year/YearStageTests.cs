using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Design.Year;
using Glazewright.Science.Climate;

namespace Glazewright.Design.Tests.Year;

/// <summary>The year of a house: books, the toys' tests, and what answers what.</summary>
public class YearStageTests
{
    private static readonly Lazy<YearResult> Base = new(() => YearScenes.Run());

    [Fact]
    public void Books_close()
    {
        Assert.InRange(Base.Value.EnergyClosureFraction, 0, 1e-6);
        Assert.InRange(Base.Value.WaterClosureFraction, 0, 1e-6);
    }

    [Fact]
    public void The_years_heat_balance_closes()
    {
        double Of(string name) => Base.Value.Report.Figures.Single(f => f.Id == "A/year/" + name).Value;
        Assert.InRange(Math.Abs(Of("heat-balance")), 0, 1e-6 * (Of("sun") + Of("balance-heat")));
        Assert.Equal(Base.Value.HeatJ, Of("balance-heat"), 1e-9 * Base.Value.HeatJ);
        Assert.True(Of("shell-loss") > 0 && Of("fan-loss") > 0 && Of("leak-loss") > 0);
    }

    // The demand charge is one sum: in the year's cost, in its working and in words.
    [Fact]
    public void The_demand_charge_is_told_alike()
    {
        Tariffs tariffs = YearScenes.Input.Tariffs with { DemandPerWattMonth = 0.02 };
        YearResult with = YearScenes.Run(input: YearScenes.Input with { Tariffs = tariffs });
        double demand = with.Months.Sum(m => m.PeakPowerW) / 1000 * 20;
        Assert.True(demand > 100);
        Assert.Equal(demand, with.DemandCost(tariffs), 1e-9 * demand);
        Assert.Equal(demand, with.Report.Figures.Single(f => f.Id == "A/year/demand-cost").Value, 1e-9 * demand);
        Assert.Equal(demand, with.Cost - Base.Value.Cost + Base.Value.DemandCost(YearScenes.Input.Tariffs), 1e-6);
        Assert.Contains(with.Report.Findings, f => f.Code == "year/cost" && f.What.Contains(FormattableString.Invariant($"demand charge ${demand:N0} a year"), StringComparison.Ordinal));
    }

    [Fact]
    public void Hours_add_up()
    {
        HeldCounters h = Base.Value.Held;
        Assert.Equal(8760, h.TotalH, 1e-9);
        Assert.Equal(h.TotalH, h.HeldTemperatureH + h.TooWarmH + h.TooColdH, 1e-6);
        Assert.Equal(h.HumidityAskedH, h.HeldHumidityH + h.TooWetH + h.TooDryH, 1e-6);
        Assert.True(h.HeldJointlyH <= Math.Min(h.HeldTemperatureH, h.HeldHumidityH) + h.TotalH - h.HumidityAskedH);
        Assert.Equal(h.HeldJointlyH, Base.Value.Periods.Sum(p => p.Day.HeldJointlyH + p.Night.HeldJointlyH), 1e-6);
        Assert.True(h.WarmFreeCoolingLimitH <= h.TooWarmH && h.ColdPlantLimitH <= h.TooColdH);
    }

    // While fans pull, one end is warmer and one colder than the mean that is held against the targets.
    [Fact]
    public void Both_ends_of_the_house_are_counted()
    {
        double Of(string name) => Base.Value.Report.Figures.Single(f => f.Id.EndsWith("/year/" + name, StringComparison.Ordinal)).Value;
        Assert.InRange(Of("too-warm-hot-end"), Base.Value.Held.TooWarmH + 1, 8760);
        Assert.InRange(Of("above-never-hot-end"), Base.Value.Held.AboveNeverH, 8760);
        Assert.InRange(Of("too-cold-cold-end"), Base.Value.Held.TooColdH + 1, 8760);
    }

    [Fact]
    public void Columns_and_sums_agree()
    {
        YearResult r = Base.Value;
        Assert.Equal(8760, r.Hours.InsideC.Count);
        Assert.Equal(r.HeatJ, r.Hours.HeatW.Sum(w => (double)w) * 3600, 1e-4 * r.HeatJ);
        Assert.Equal(r.Cost, r.Months.Sum(m => m.Cost), 1e-9 * r.Cost);
        Assert.Equal(r.Months.Max(m => m.Cost), r.Months[r.WorstMonth - 1].Cost);
        Assert.True(r.FuelJ > r.HeatJ);
        Assert.True(r.Extremes.LowestC <= r.Hours.InsideC.Min() && r.Extremes.HighestC >= r.Hours.InsideC.Max() - 1e-4);
    }

    [Fact]
    public void A_heated_house_in_a_continental_year_is_mostly_held_and_costs_what_its_losses_say()
    {
        YearResult r = Base.Value;
        Assert.InRange(r.Held.HeldTemperatureH / r.Held.TotalH, 0.4, 1.0);
        Assert.True(r.Extremes.LowestC > 5, $"{r.Extremes.LowestC}");
        // Degree hours to the target times the loss factor of shell, air and edge is the most the heat can be; the sun takes a part off.
        double degreeHours = Enumerable.Range(0, 8760).Sum(i => Math.Max(0, r.Hours.TargetC[i] - r.Hours.OutsideC[i]));
        Assert.InRange(r.HeatJ / 3600 / degreeHours, 150, 1200);
    }

    [Fact]
    public void The_same_year_twice_gives_the_same_bytes() =>
        Assert.Equal(Canonical.Hash(Base.Value), Canonical.Hash(YearScenes.Run()));

    [Fact]
    public void Without_a_cooling_stage_fewer_hours_are_held()
    {
        ProgramDocument less = YearScenes.Program with { Cooling = YearScenes.Program.Cooling.Take(1).ToEqList() };
        YearResult r = YearScenes.Run(less);
        Assert.True(r.Held.HeldTemperatureH < Base.Value.Held.HeldTemperatureH - 20, $"{r.Held.HeldTemperatureH} of {Base.Value.Held.HeldTemperatureH}");
        Assert.True(r.Held.TooWarmH > Base.Value.Held.TooWarmH);
    }

    [Fact]
    public void Without_heat_the_house_freezes_and_burns_no_fuel()
    {
        YearResult r = YearScenes.Run(YearScenes.Program with { Heating = [] });
        Assert.Equal(0, r.FuelJ);
        Assert.True(r.Held.FrostH > 100);
        Assert.True(r.Held.TooColdH > Base.Value.Held.TooColdH + 1000);
    }

    [Fact]
    public void Without_the_curtain_the_house_burns_more()
    {
        YearResult r = YearScenes.Run(
            YearScenes.Program with
            {
                Curtain = null,
                Actuators = YearScenes.Program.Actuators.Where(a => a.Kind != ActuatorKind.Curtain).ToEqList(),
            },
            YearScenes.Plant with { Curtain = null });
        Assert.InRange(Base.Value.FuelJ / r.FuelJ, 0.5, 0.97);
    }

    [Fact]
    public void The_other_hemisphere_shifts_the_season()
    {
        YearResult south = YearScenes.Run(weather: Science.Weather.MinuteWeather.Expand(YearScenes.MakeWeather(-42)));
        Assert.True(Base.Value.Months[0].HeatJ > 3 * Base.Value.Months[6].HeatJ);
        Assert.True(south.Months[6].HeatJ > 3 * south.Months[0].HeatJ);
    }

    [Fact]
    public void A_dearer_fuel_moves_the_cost_and_nothing_else()
    {
        Tariffs dear = YearScenes.Input.Tariffs with { FuelPerJoule = 2 * YearScenes.Input.Tariffs.FuelPerJoule };
        YearResult r = YearScenes.Run(input: YearScenes.Input with { Tariffs = dear });
        Assert.Equal(Base.Value.FuelJ, r.FuelJ);
        Assert.Equal(Base.Value.Cost + Base.Value.FuelJ * YearScenes.Input.Tariffs.FuelPerJoule, r.Cost, 1e-6 * r.Cost);
    }

    [Fact]
    public void Motors_run_and_start()
    {
        MotorCounters fan = Base.Value.Motors.Single(m => m.Actuator == "A/fan-1");
        Assert.InRange(fan.RuntimeH, 50, 8000);
        Assert.InRange(fan.Starts, 50, 60_000);
        MotorCounters curtain = Base.Value.Motors.Single(m => m.Actuator == "A/curtain");
        Assert.InRange(curtain.RuntimeH, 5, 400);
    }

    [Fact]
    public void It_says_that_a_typical_year_leaves_extremes_out_and_shows_the_design_days()
    {
        Finding said = Base.Value.Report.Findings.Single(f => f.Code == "year/typical");
        Assert.Contains("extremes are not in it", said.What, StringComparison.Ordinal);
        Assert.Contains("-4 °F", said.What, StringComparison.Ordinal);
        Assert.Contains(Base.Value.Report.LeftOut, w => w.Contains("typical year", StringComparison.Ordinal));
    }

    [Fact]
    public void A_house_with_nothing_in_it_and_half_a_schedule_runs_a_year()
    {
        PlantResult bare = new("A", null, null, null, null, null, null, null, null, 0, 0, [], StageReport.Empty);
        ProgramDocument idle = YearScenes.Program with { Actuators = [], Cooling = [], Heating = [], Curtain = null, Interlocks = [] };
        CropPeriod half = YearScenes.Input.Schedule[0] with { FromWeek = 40, ToWeek = 13 };
        YearResult r = YearScenes.Run(idle, bare, input: YearScenes.Input with { Schedule = [half] });
        Assert.Equal(8760, r.Held.TotalH, 1e-9);
        Assert.Equal(0, r.HeatJ + r.FuelJ + r.PowerJ + r.WaterKg);
        Assert.InRange(r.Periods[0].Day.TotalH + r.Periods[0].Night.TotalH, 4300, 4450);
        // Shut, dry and without a crop in July it stagnates like a solar collector.
        Assert.True(r.Extremes.LowestC < -5 && r.Hours.InsideC.Max() is > 50 and < 100, r.Extremes.ToString());
        // But the hottest air at the crop is told of the months that have a crop.
        int week = r.Extremes.HighestMinute / 1440 / 7 + 1;
        Assert.True(week is >= 40 or <= 13 && r.Extremes.HighestC < r.Hours.InsideC.Max(), r.Extremes.ToString());
        Assert.Equal(r.Periods[0].Day.TooColdH + r.Periods[0].Night.TooColdH, r.Held.ColdPlantLimitH, 1e-6);
        Assert.InRange(r.EnergyClosureFraction, 0, 1e-6);
        Assert.InRange(r.WaterClosureFraction, 0, 1e-6);
    }

    // The program's real commands replayed at 5 s: the mark for a minute step is 0.1 K rms.
    [Theory]
    [InlineData(14), InlineData(195)]
    public void A_minute_is_short_enough_for_the_programs_commands(int day)
    {
        YearRun run = new(YearScenes.Input, YearScenes.Form, YearScenes.Gains, YearScenes.Plant, YearScenes.Program, YearScenes.Weather, ProgramControl.Of(YearScenes.Program));
        for (int minute = (day - 5) * 1440; minute < day * 1440; minute++)
        {
            run.Step(minute, out _);
        }

        HouseModel fine = new(run.House.Parameters);
        HouseState state = fine.NewState(15, 0.7, 10, 100_000);
        double[] saved = new double[HouseState.SavedLength];
        run.State.Save(saved);
        state.Load(saved);
        double square = 0;
        for (int minute = day * 1440; minute < (day + 5) * 1440; minute++)
        {
            run.Step(minute, out HouseForcing forcing);
            for (int i = 0; i < 12; i++)
            {
                fine.Step(state, in forcing, 5);
            }

            square += Math.Pow(run.State.AirBelowC - state.AirBelowC, 2);
        }

        Assert.InRange(Math.Sqrt(square / (5 * 1440)), 0, 0.1);
    }

    [Fact]
    public void Cancelling_stops_within_a_day_of_the_year()
    {
        using CancellationTokenSource source = new();
        int days = 0;
        Assert.Throws<OperationCanceledException>(() => YearStage.Run(
            YearScenes.Input, YearScenes.Form, YearScenes.Gains, YearScenes.Duty, YearScenes.Plant, YearScenes.Program, YearScenes.Weather,
            new Counted(() =>
            {
                days++;
                source.Cancel();
            }),
            source.Token));
        Assert.Equal(1, days);
    }

    [Theory]
    [InlineData(0, "1 January, 00:00"), InlineData(31 * 1440 + 137, "1 February, 02:17"), InlineData(525_599, "31 December, 23:59")]
    public void Minutes_have_their_date(int minute, string words) => Assert.Equal(words, YearWords.When(minute));

    // Parallel squares of side equal to their distance: 0.1998 (any radiation textbook).
    [Fact]
    public void View_factor_of_facing_squares() => Assert.Equal(0.1998, YearHouse.View(2, 2, 2), 1e-4);

    [Fact]
    public void House_parts_add_up_to_the_form()
    {
        YearHouse house = YearHouse.Build(YearScenes.Input, YearScenes.Form, YearScenes.Plant);
        double shell = house.Parameters.UpperClear.AreaM2 + house.Parameters.LowerClear.AreaM2 + house.Parameters.UpperOpaque.AreaM2 + house.Parameters.LowerOpaque.AreaM2;
        Assert.Equal(YearScenes.Form.Faces.Where(f => f.Name != Glazewright.Design.Form.FaceName.Floor).Sum(f => f.ExposedM2), shell, 0.01 * shell);
        Assert.Equal(YearScenes.Form.VolumeM3, house.Parameters.AirBelowM3 + house.Parameters.AirAboveM3, 1e-6 * YearScenes.Form.VolumeM3);
        Assert.Equal(2.2 * 7.9 * 31.7, house.Parameters.AirBelowM3, 1e-6);
    }

    private sealed class Counted(Action action) : IProgress<double>
    {
        public void Report(double value) => action();
    }
}
