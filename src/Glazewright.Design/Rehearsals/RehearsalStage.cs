using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Design.Year;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Rehearsals;

/// <summary>
/// Stage Rehearsals: named failures on the coldest night and the hottest noon that have a crop. Every corner of wind, damp and curtain is tried by the minute;
/// the harshest, the mildest and the file's own state are then run in steps of seconds, as igniting, fog and motors need.
/// </summary>
public static class RehearsalStage
{
    /// <summary>Raised when results change.</summary>
    public const int Version = 12;

    /// <summary>Step of the runs that are shown, s.</summary>
    public const double StepS = 5;

    /// <summary>Leaves of most crops are hurt by frost at once.</summary>
    private const double FrostC = 0;

    /// <summary>Leaves scorch in an hour or two (common practice: 40 to 45 °C).</summary>
    private const double ScorchC = 42;

    private const double MinuteS = 60;
    private const int Night = 120; // the curtain has stood as supposed for two hours: nothing is dumped at once
    private const int Lead = 120;
    private const int Noon = 720;
    private const int OutageMinutes = 240;
    private const int MinutesInDay = 1440;

    /// <summary>Tries the failures.</summary>
    /// <param name="input">The year's own input.</param>
    /// <param name="form">Shape of the house.</param>
    /// <param name="gains">Where the sun goes.</param>
    /// <param name="plant">Equipment.</param>
    /// <param name="program">Control program.</param>
    /// <param name="weather">The year by the minute.</param>
    /// <param name="year">The year's result from the same inputs: it holds the midnights.</param>
    /// <param name="cancel">Looked at between runs.</param>
    /// <returns>What came of them.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static RehearsalResult Run(
        YearInput input, BuildingForm form, GainTable gains, PlantResult plant, ProgramDocument program, MinuteWeather weather, YearResult year,
        CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(plant);
        ArgumentNullException.ThrowIfNull(program);
        ArgumentNullException.ThrowIfNull(year);
        House house = new(input, form, gains, plant, program, weather, year, cancel);
        return new RehearsalResult(input.House, Plans(house).Select(p => Ends(house, p)).ToEqList());
    }

    /// <summary>One failure in one state by the minute.</summary>
    internal static RehearsalRun ByTheMinute(
        string id, Supposed supposed, YearInput input, BuildingForm form, GainTable gains, PlantResult plant, ProgramDocument program, MinuteWeather weather, YearResult year)
    {
        House house = new(input, form, gains, plant, program, weather, year, default);
        return Follow(house, Plans(house).Single(p => p.Id == id), supposed, MinuteS);
    }

    private static Rehearsal Ends(House house, Plan plan)
    {
        Supposed[] corners = Supposed.Corners(plan.SetsCurtain);
        Supposed[] byHarm =
        [
            .. corners.Select(s => (State: s, Run: Follow(house, plan, s, MinuteS)))
                .OrderBy(t => t.Run.ToLimitMin ?? int.MaxValue)
                .ThenBy(t => plan.IsCold ? t.Run.WorstC : -t.Run.WorstC)
                .Select(t => t.State),
        ];
        Supposed[] shown = [Supposed.AsInTheFile, byHarm[0], byHarm[^1]];
        return new Rehearsal(
            plan.Id, plan.What, plan.Day, plan.FromMinute, plan.LimitC, plan.IsCold, corners.Length, shown.Select(s => Follow(house, plan, s, StepS)).ToEqList());
    }

    private static RehearsalRun Follow(House house, Plan plan, Supposed supposed, double stepS)
    {
        house.Cancel.ThrowIfCancellationRequested();
        Failure failure = plan.Fails(supposed);
        ProgramControl box = ProgramControl.Of(house.Program);
        YearRun run = new(house.Input, house.Form, house.Gains, house.Plant, house.Program, house.Weather, box, failure);
        run.Load(house.Year.Midnights[plan.Day]);
        int steps = (int)(MinuteS / stepS), first = plan.Day * MinutesInDay;
        for (int m = 0; m < plan.FromMinute; m++)
        {
            failure.CurtainIsSet = m >= plan.FromMinute - Lead;
            run.Minute(first + m, counts: false);
        }

        failure.IsOn = true;
        bool[] before = Sounding(box);
        string toldBy = "", does = "";
        int? told = null;
        supposed.Begin(run);
        double worst = plan.IsCold ? double.MaxValue : double.MinValue;
        int? toLimit = null;
        List<float> trace = [];
        for (int m = 0; m < plan.Minutes; m++)
        {
            for (int s = 0; s < steps; s++)
            {
                run.Step(first + plan.FromMinute + m, out _, stepS);
                double airC = run.State.AirBelowC;
                worst = plan.IsCold ? Math.Min(worst, airC) : Math.Max(worst, airC);
                toLimit ??= (plan.IsCold ? airC <= plan.LimitC : airC >= plan.LimitC) ? m : null;
            }

            if (told is null && plan.BoxRuns && FirstNew(box, before) is int alarm and >= 0)
            {
                (toldBy, told) = (box.Compiled.AlarmIds[alarm], m);
            }

            if (m == 59 && plan.Asks >= 0 && plan.BoxRuns)
            {
                does = ProgramWords.Say(box.Compiled, plan.Asks, run.Commands[plan.Asks]);
            }

            if (m % 5 == 0)
            {
                trace.Add((float)run.State.AirBelowC);
            }
        }

        return new RehearsalRun(supposed.Words, toLimit, worst, EqList.Own(trace.ToArray()), toldBy, told, does);
    }

    private static bool[] Sounding(ProgramControl box) => [.. Enumerable.Range(0, box.Compiled.AlarmIds.Count).Select(k => box.Compiled.AlarmIsOn(box.State, k))];

    private static int FirstNew(ProgramControl box, bool[] before)
    {
        for (int k = 0; k < before.Length; k++)
        {
            if (!before[k] && box.Compiled.AlarmIsOn(box.State, k))
            {
                return k;
            }
        }

        return -1;
    }

    private static List<Plan> Plans(House house)
    {
        (PlantResult plant, ProgramDocument program, MinuteWeather weather) = (house.Plant, house.Program, house.Weather);
        YearTargets targets = new(house.Input.Schedule, weather);
        int cold = DayOf(weather, targets, low: true), hot = DayOf(weather, targets, low: false);
        bool[] travels = [.. program.Actuators.Select(a => ProgramCompiler.Moves(a.Kind))];
        int heater = Largest(plant, program), pump = IndexOf(program, ActuatorKind.WetWallPump);
        int first = IndexOf(program, ActuatorKind.Curtain), second = IndexOf(program, ActuatorKind.SecondCurtain);
        int[] curtains = [.. new[] { first, second }.Where(i => i >= 0)];
        List<Plan> all = [];
        if (heater >= 0)
        {
            all.Add(Cold("heater-dead", $"{program.Actuators[heater].Id} does not light on the coldest night", s => new Dead(s, curtains, heater)));
        }

        if (IndexOf(program, ActuatorKind.BenchPipe) is int pipe and >= 0)
        {
            all.Add(Cold("boiler-dead", $"the boiler of {program.Actuators[pipe].Id} stops on the coldest night", s => new Dead(s, curtains, pipe)));
        }

        all.Add(Cold("power-out-cold", "power fails at two in the coldest night: no heat, no air, curtain and louver stay as they are", s => new Outage(s, curtains, travels)) with { BoxRuns = false });
        if (first >= 0)
        {
            all.Add(Cold("curtain-stuck", second < 0 ? "the curtain stays open on the coldest night" : "the first curtain stays open on the coldest night", s => new Dead(s, curtains, first)) with { SetsCurtain = false });
        }

        if (second >= 0)
        {
            all.Add(Cold("second-curtain-stuck", "the second curtain stays open on the coldest night", s => new Dead(s, curtains, second)) with { SetsCurtain = false });
        }

        all.Add(Cold("sensor-dead-cold", "the temperature sensor fails at two in the coldest night", s => new Deaf(s, curtains)));
        all.Add(Cold("sensor-sticks-cold", "the crop's thermometer sticks at two in the coldest night, where neither heat nor cooling is called", Wrong(Night, new WrongReading.Sticks(targets.At((cold * MinutesInDay) + Night).TemperatureC + QuietK(program, cold, heated: true)))));
        all.Add(Cold("sensor-drifts-cold", "the crop's thermometer drifts high from two in the coldest night, by 0.9 F° (0.5 K) an hour up to 9 F° (5 K)", Wrong(Night, new WrongReading.Drifts(0.5, 5))));
        all.Add(Cold("sensor-high-cold", "the crop's thermometer reads 9 F° (5 K) high from two in the coldest night", Wrong(Night, new WrongReading.Off(5))));
        all.Add(Hot("power-out-hot", "power fails at noon of the hottest day for four hours: fans and water stop, louver and curtain stay as they are", s => new Outage(s, curtains, travels)) with { BoxRuns = false });
        all.Add(Hot("sensor-sticks-hot", "the crop's thermometer sticks at noon of the hottest day, where neither cooling nor heat is called", Wrong(Noon, new WrongReading.Sticks(targets.At((hot * MinutesInDay) + Noon).TemperatureC + QuietK(program, hot, heated: false)))));
        if (pump >= 0)
        {
            all.Add(Hot("pump-dead", "the wet wall's pump stops at noon of the hottest day", s => new Dead(s, curtains, pump)));
        }

        return all;

        Func<Supposed, Failure> Wrong(int fromMinute, WrongReading how) => s => new WrongSensor(s, curtains, fromMinute, how);

        Plan Cold(string id, string what, Func<Supposed, Failure> fails) => new(id, what, cold, Night, MinutesInDay - Night, FrostC, true, curtains.Length > 0, fails) { Asks = Leads(program, program.Heating) };

        Plan Hot(string id, string what, Func<Supposed, Failure> fails) => new(id, what, hot, Noon, OutageMinutes, ScorchC, false, curtains.Length > 0, fails) { Asks = Leads(program, program.Cooling) };
    }

    // The day with a crop whose own minutes hold the coldest or hottest outside air; of all days when nothing ever grows.
    private static int DayOf(MinuteWeather weather, YearTargets targets, bool low)
    {
        int at = -1;
        bool planted = false;
        for (int minute = 0; minute < MinuteWeather.Count; minute++)
        {
            Asked ask = targets.At(minute);
            bool grows = ask.Period >= 0 && !ask.Empty;
            bool further = at < 0 || (low ? weather.DryBulbC[minute] < weather.DryBulbC[at] : weather.DryBulbC[minute] > weather.DryBulbC[at]);
            if (grows == planted ? further : grows)
            {
                (at, planted) = (minute, grows);
            }
        }

        return at / MinutesInDay;
    }

    private static int Largest(PlantResult plant, ProgramDocument program)
    {
        HeaterUnit? unit = (plant.Heat?.Choice.Heaters ?? []).OrderByDescending(h => h.OutputW).FirstOrDefault();
        return unit is null ? -1 : Enumerable.Range(0, program.Actuators.Count).FirstOrDefault(i => program.Actuators[i].Id == unit.Id, -1);
    }

    // How far from the target a reading lets go of heat (of cooling) that runs and calls for nothing else, K: half way between both thresholds, which the program's checks keep apart.
    private static double QuietK(ProgramDocument program, int day, bool heated)
    {
        ProgramPeriod p = program.Periods.First(x => ProgramChecks.Holds(x, day + 1));
        double heatK = -p.HeatBelowK - program.Heating.Select(s => heated ? s.OffAtK : s.OnAtK).DefaultIfEmpty(0).Min();
        double coolK = p.CoolAboveK + program.Cooling.Select(s => heated ? s.OnAtK : s.OffAtK).DefaultIfEmpty(0).Min();
        return (heatK + coolK) / 2;
    }

    // What the first stage drives, last: a louver opens before its fan.
    private static int Leads(ProgramDocument program, EqList<ControlStage> stages) => stages.Count == 0 ? -1
        : Enumerable.Range(0, program.Actuators.Count).FirstOrDefault(i => program.Actuators[i].Id == stages[0].Settings[^1].Actuator, -1);

    private static int IndexOf(ProgramDocument program, ActuatorKind kind) =>
        Enumerable.Range(0, program.Actuators.Count).FirstOrDefault(i => program.Actuators[i].Kind == kind, -1);

    /// <summary>What every run stands on.</summary>
    private sealed record House(
        YearInput Input, BuildingForm Form, GainTable Gains, PlantResult Plant, ProgramDocument Program, MinuteWeather Weather, YearResult Year, CancellationToken Cancel);

    /// <summary>One failure to try.</summary>
    private sealed record Plan(
        string Id, string What, int Day, int FromMinute, int Minutes, double LimitC, bool IsCold, bool SetsCurtain, Func<Supposed, Failure> Fails)
    {
        /// <summary>The box has power.</summary>
        public bool BoxRuns { get; init; } = true;

        /// <summary>Actuator whose command is told; −1 for none.</summary>
        public int Asks { get; init; } = -1;
    }
}
