using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Year;

/// <summary>Stage Year: one house run by its own program through a weather year, 525,600 steps of a minute.</summary>
public static class YearStage
{
    /// <summary>Raised when results change.</summary>
    public const int Version = 28;

    /// <summary>Runs the year.</summary>
    /// <param name="input">The job's part.</param>
    /// <param name="form">Shape of the house.</param>
    /// <param name="gains">Where the sun goes.</param>
    /// <param name="duty">Design days, shown beside the typical year.</param>
    /// <param name="plant">Equipment.</param>
    /// <param name="program">Control program.</param>
    /// <param name="weather">The year by the minute.</param>
    /// <param name="progress">Told the share done, once a day; may be null.</param>
    /// <param name="cancel">Looked at once a simulated day.</param>
    /// <returns>What the year brought.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static YearResult Run(
        YearInput input,
        BuildingForm form,
        GainTable gains,
        DutyResult duty,
        PlantResult plant,
        ProgramDocument program,
        MinuteWeather weather,
        IProgress<double>? progress,
        CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(input);
        YearRun run = new(input, form, gains, plant, program, weather, ProgramControl.Of(program));
        run.Go(progress, cancel);
        YearMonth[] months = [.. run.Months.Select((m, i) => Month(m, run.Held.Month(i).JointlyFraction, i, input.Tariffs))];
        double cost = months.Sum(m => m.Cost);
        int worst = 1 + Array.IndexOf(months, months.MaxBy(m => m.Cost));
        double coldestC = double.MaxValue, hottestC = double.MinValue;
        foreach (double outsideC in weather.DryBulbC.All())
        {
            coldestC = Math.Min(coldestC, outsideC);
            hottestC = Math.Max(hottestC, outsideC);
        }

        YearResult result = new(
            input.House,
            input.Weather,
            input.Synthetic,
            run.Held.Year().Hours(),
            input.Schedule.Select((p, i) => new PeriodCounters(p.Id, run.Held.Period(i, true).Hours(), run.Held.Period(i, false).Hours())).ToEqList(),
            new YearExtremes(
                run.LowestC, run.LowestMinute, run.HighestC, run.HighestMinute, weather.DryBulbC[run.LowestMinute], weather.DryBulbC[run.HighestMinute],
                coldestC, hottestC),
            months.ToEqList(),
            run.Plant.Motors(),
            new HourColumns(
                EqList.Own(run.Column(0)), EqList.Own(run.Column(1)), EqList.Own(run.Column(2)), EqList.Own(run.Column(3)), EqList.Own(run.Column(4)),
                EqList.Own(run.Column(5)), EqList.Own(run.Column(6)), EqList.Own(run.Column(7)), EqList.Own(run.Column(8)),
                EqList.Own(run.Column(9)), run.SecondCurtain is { } second ? EqList.Own(second) : null),
            months.Sum(m => m.HeatJ),
            months.Sum(m => m.FuelJ),
            months.Sum(m => m.PowerJ),
            months.Max(m => m.PeakPowerW),
            months.Sum(m => m.WaterKg),
            run.TranspiredKg,
            run.CondensedKg,
            cost,
            cost * (1 - input.Tariffs.SpreadFraction),
            cost * (1 + input.Tariffs.SpreadFraction),
            worst,
            run.HeatTurnedJ > 0 ? run.HeatMissedJ / run.HeatTurnedJ : 0,
            run.WaterTurnedKg > 0 ? run.WaterMissedKg / run.WaterTurnedKg : 0,
            run.Midnights.ToEqList(),
            StageReport.Empty,
            months.Sum(m => m.Co2Kg),
            run.DriedKg);
        return result with { Report = YearWorkings.Report(result, run, input, duty, plant, program) };
    }

    private static YearMonth Month(MonthTally m, double heldJointlyFraction, int month, Tariffs tariffs)
    {
        double use = m.FuelJ * tariffs.FuelPerJoule + m.PowerJ * tariffs.PowerPerJoule + m.WaterKg / 1000 * tariffs.WaterPerM3 + m.Co2Kg * tariffs.Co2PerKg;
        int days = CommonYear.DaysIn(month + 1);
        var counted = new YearMonth(m.HeatJ, m.FuelJ, m.PowerJ, m.PeakW, m.WaterKg, use, heldJointlyFraction, m.LightMol / days, m.LampMol / days, m.Co2Kg);
        return counted with { Cost = use + counted.DemandCost(tariffs) };
    }
}
