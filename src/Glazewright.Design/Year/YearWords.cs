using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;

namespace Glazewright.Design.Year;

/// <summary>What the year finds, in words.</summary>
internal static class YearWords
{
    private const double ManyHours = 50;
    private const double Shortest = 1 / 60.0; // a minute: the step of the year

    private static readonly string[] MonthNames =
        ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

    private static readonly Source Counted = new Source.FirstPrinciples("minute-by-minute count of the simulated year");

    /// <summary>Day and clock time of a minute of the year.</summary>
    /// <param name="minute">From 0.</param>
    /// <returns>Words, standard time.</returns>
    public static string When(int minute)
    {
        int day = minute / 1440, of = minute % 1440, month = YearRun.CommonYearMonth(day);
        int first = month == 0 ? 0 : Enumerable.Range(0, day).Last(d => YearRun.CommonYearMonth(d) < month) + 1;
        return Text($"{day - first + 1} {MonthNames[month]}, {of / 60:00}:{of % 60:00}");
    }

    public static IEnumerable<Finding> Findings(YearResult r, YearRun run, YearInput input, DutyResult duty, PlantResult plant, ProgramDocument program)
    {
        string house = r.House;
        HeldCounters h = r.Held;
        double share = h.TotalH > 0 ? h.HeldJointlyH / h.TotalH : 0;
        string band = Text($"±{input.Band.TemperatureK * 1.8:0.#} F° (±{input.Band.TemperatureK:0.#} K) and ±{input.Band.HumidityPercent:0} % humidity{(input.Schedule.Any(p => p.Day.VpdKPa > 0 || p.Night.VpdKPa > 0) ? Text($" (±{input.Band.VpdKPa:0.0#} kPa where a vapour pressure deficit is asked)") : string.Empty)}");
        yield return new Finding(
            "year/held", share >= 0.9 ? Severity.Note : share >= 0.7 ? Severity.Near : Severity.Miss, house,
            Text($"All targets were held within {band} for {h.HeldJointlyH:N0} of {h.TotalH:N0} h ({100 * share:0} %): temperature {Percent(h.HeldTemperatureH, h.TotalH)}, humidity {Percent(h.HeldHumidityH, h.HumidityAskedH)} of the hours it is asked for. Too warm {h.TooWarmH:N0} h, too cold {h.TooColdH:N0} h, too wet {h.TooWetH:N0} h, too dry {h.TooDryH:N0} h."),
            "", Counted);
        yield return new Finding(
            "year/typical", Severity.Note, house,
            Text($"{(r.Synthetic ? "A synthetic year made from monthly normals" : "A typical year")}: the extremes are not in it. Outside it brought {C(r.Extremes.OutsideLowestC)} to {C(r.Extremes.OutsideHighestC)}; design days are {C(duty.Conditions.Heating996C)} and {C(duty.Conditions.Cooling04C)}."),
            "Read the design days beside it.", Counted);
        yield return new Finding(
            "year/extremes", Severity.Note, house,
            Text($"Coldest inside {C(r.Extremes.LowestC)} on {When(r.Extremes.LowestMinute)} with {C(r.Extremes.OutsideAtLowestC)} outside; hottest with a crop in it {C(r.Extremes.HighestC)} on {When(r.Extremes.HighestMinute)} with {C(r.Extremes.OutsideAtHighestC)} outside."),
            "", Counted);
        if (NoSunrise(run, input) is { } sunless)
        {
            yield return sunless;
        }

        if (UntrueSensors(run.Sensors) is { Length: > 0 } untrue)
        {
            yield return new Finding(
                "year/sensors", Severity.Near, house,
                $"The program went by {string.Join(", ", untrue)}. Hours held are counted against the true air.",
                "An aspirated sensor; a correction in the program after comparing with a reference, each year for one that drifts.", Counted);
        }

        bool cools = plant.Exhaust is not null || plant.Vents is not null || plant.WetWall is not null || plant.Fog is not null;
        bool heats = plant.Heat is { Choice.Heaters.Count: > 0 } || plant.BenchPipeW > 0;
        if (!cools)
        {
            if (h.TooWarmH >= Shortest)
            {
                yield return new Finding(
                    "year/no-cooling", h.TooWarmH > ManyHours ? Severity.Miss : Severity.Near, house,
                    Text($"It was too warm for {Hours(h.TooWarmH)}, and the house has no fans, vents, wet wall or fog to cool it with."),
                    "Fans or vents.", Counted);
            }
        }
        else if (h.WarmFreeCoolingLimitH > ManyHours)
        {
            yield return new Finding(
                "year/cooling-limit", Severity.Near, house,
                Text($"For {h.WarmFreeCoolingLimitH:N0} of the {h.TooWarmH:N0} too warm hours every cooling stage was on: the plant or the outside air is the limit, not the program."),
                "More shade or flow, fog, or a warmer target in those weeks.", Counted);
        }

        if (cools && h.TooWarmH - h.WarmFreeCoolingLimitH > 4 * ManyHours)
        {
            yield return new Finding(
                "year/warm-by-program", Severity.Note, house,
                Text($"For {h.TooWarmH - h.WarmFreeCoolingLimitH:N0} too warm hours cooling had something left: thresholds, delays or interlocks held it back."),
                "Start cooling nearer to the target, or allow a wider band.", Counted);
        }

        if (!heats)
        {
            if (h.TooColdH >= Shortest)
            {
                yield return new Finding(
                    "year/no-heat", h.TooColdH > ManyHours ? Severity.Miss : Severity.Near, house,
                    Text($"It was too cold for {Hours(h.TooColdH)}, and the house has no heat."),
                    "Heaters, or a target that follows the season.", Counted);
            }
        }
        else if (h.ColdPlantLimitH > 1)
        {
            yield return new Finding(
                "year/heating-limit", h.ColdPlantLimitH > ManyHours ? Severity.Miss : Severity.Near, house,
                Text($"For {h.ColdPlantLimitH:N0} h it was too cold with every heater on."),
                $"More heat, {Cloth(plant)}, or a cooler target.", Counted);
        }

        int starts = r.Motors.Where(m => m.Actuator.StartsWith(house + "/heater-", StringComparison.Ordinal)).Select(m => m.Starts).DefaultIfEmpty(0).Max();
        bool turnsDown = plant.Heat?.Choice.Heaters.All(x => x.Electric || x.Part is { TwoStage: false }) == true;
        string part = turnsDown ? "" : " Heaters of more than one fire are asked for by heaterFire.";
        foreach (Finding worn in MotorWords.Findings(r.Motors, program, plant))
        {
            yield return worn;
        }

        if (heats && h.TooColdH - h.ColdPlantLimitH - run.ColdAfterFansH > 2 * ManyHours)
        {
            yield return new Finding(
                "year/cold-by-program", Severity.Near, house,
                Text($"For {h.TooColdH - h.ColdPlantLimitH - run.ColdAfterFansH:N0} of the {h.TooColdH:N0} too cold hours heat had something left, and no exhaust fan had just run: the air swings while stages come and go (the busiest heater starts {starts:N0} times a year), or the target jumps."),
                "Smaller or modulating first heat, later stages nearer to each other, or a ramp between night and day." + part, Counted);
        }

        if (run.ColdAfterFansH > ManyHours)
        {
            yield return new Finding(
                "year/cold-by-fans", Severity.Near, house,
                Text($"{run.ColdAfterFansH:N0} of the {h.TooColdH:N0} too cold hours fall within ten minutes of an exhaust fan: its shortest run pulls in more cold air than was wanted."),
                "A smaller first fan, a louver opened less in cold weather, or a wider band before fans start.", Counted);
        }

        if (run.Balance.HeatJ > 0 && run.WinterFanAirJ > 0.1 * run.Balance.HeatJ)
        {
            yield return new Finding(
                "year/heat-thrown-out", Severity.Near, house,
                Text($"In minutes with outside air more than 18 F° (10 K) below the target, exhaust fans carried out {run.WinterFanAirJ / 3.6e9:N0} MWh: {100 * run.WinterFanAirJ / run.Balance.HeatJ:0} % of the heat delivered. Drying and cooling by large fans in cold weather cost that much."),
                "Allow more humidity in winter, dry with a vent or a small fan, or set heating and cooling further apart.", Counted);
        }

        if (run.Snow is { OpensCurtains: true, LainH: > 0 } snow)
        {
            yield return new Finding(
                "year/snow", Severity.Note, house,
                Text($"New snow lay on the roof for {Hours(snow.LainH)}, at the most {snow.MostKgPerM2 * 0.2048:0.0} psf ({snow.MostKgPerM2:0} kg/m²) of it by this reckoning. The curtain stood open to let it melt, {Hours(snow.HeldOpenH)} of them dark and cold, when it would have been drawn for warmth."),
                "Nothing: the frame carries the code's snow load with the curtain drawn and the heat off, never less for what melts.", Counted);
        }

        if (run.Rain is { HoldsVents: true, HeldH: > 0 } rain)
        {
            string known = rain.KnownH < YearTargets.Days * 24 ? Text($" The file tells of {rain.KnownH:N0} of the year's 8,760 hours whether it rained; the rest are taken as dry.") : "";
            yield return new Finding(
                "year/rain", rain.TooWarmH > ManyHours ? Severity.Near : Severity.Note, house,
                Text($"It rained in {Hours(rain.RainedH)}, and for {Hours(rain.HeldH)} rain kept a vent from opening as far as was asked, {Hours(rain.TooWarmH)} of them too warm.{known}"),
                rain.TooWarmH > ManyHours ? "Side vents under an eave, or fans for warm rain." : "", Counted);
        }

        if (run.FilterFanJ > 0.15 * run.Balance.HeatJ && run.Balance.HeatJ > 0)
        {
            yield return new Finding(
                "year/filter-fan-heat", Severity.Near, house,
                Text($"Warming the filter fan's air takes {run.FilterFanJ / 3.6e9:N0} MWh a year, {100 * run.FilterFanJ / run.Balance.HeatJ:0} % of the heat delivered."),
                "Tighten the house and hold less pressure, rest the fan in cold weather, or count its heat when heaters are sized.", Counted);
        }

        if (h.AboveNeverH >= Shortest - 1e-9)
        {
            bool mostly = cools && run.OverWithMoreH > 0.5 * h.AboveNeverH;
            string more = cools && run.OverWithMoreH >= Shortest - 1e-9
                ? Text($" For {Hours(run.OverWithMoreH)} of it{(run.HighestOverHadMore ? ", the hottest minute among them," : "")} cooling had something left: the program's thresholds, waits and least times let it come so far.")
                : "";
            yield return new Finding(
                "year/never-above", Severity.Miss, house,
                Text($"The temperature never to be exceeded was exceeded for {Hours(h.AboveNeverH)}; the hottest of those minutes was {C(run.HighestOverC)} at {C(run.OutsideAtHighestOverC)} outside.{more}"),
                mostly ? "Start cooling nearer to the target, with shorter waits; shade, flow and a later crop help besides." : "Air enters a house no cooler than the wet bulb outside: shade, flow and a later crop help, a chiller would settle it.", Counted);
        }

        if (h.FrostH > 0)
        {
            // What happened just before most of those minutes names the cause.
            (string when, string cure) = run.FrostAfterFansH > 0.5 * h.FrostH
                ? (Text($", {Hours(run.FrostAfterFansH)} of them within ten minutes of an exhaust fan"), "Keep fans off in frost: start cooling further above a cool target, with a small fan or a vent.")
                : run.FrostAfterCurtainH > 0.5 * h.FrostH
                    ? (Text($", {Hours(run.FrostAfterCurtainH)} of them within ten minutes of the curtain's opening: the cold air above it comes down at the first gap"), "Let the curtain open later, when the sun has warmed the air above it, or in smaller steps; or warm an empty house by a few degrees before dawn.")
                    : heats && h.ColdPlantLimitH < 0.5 * h.FrostH
                        ? ("", "Heat enough is there: a target of a few degrees more, or a first heater that starts smaller or modulates.")
                        : ("", "Heat, or an empty house drained for winter.");
            yield return new Finding("year/frost", Severity.Miss, house, Text($"It froze inside for {Hours(h.FrostH)}{when}."), cure, Counted);
        }

        if (h.LeafWetH > ManyHours)
        {
            yield return new Finding(
                "year/leaf-wet", Severity.Near, house,
                Text($"Leaves were wet for {h.LeafWetH:N0} h (dew or fallen fog): disease pressure."),
                "Dry with heat and air before dawn; shorter fog pulses.", Counted);
        }

        yield return new Finding(
            "year/cost", Severity.Note, house,
            Text($"Energy{(r.Co2Kg > 0 ? ", water and carbon dioxide" : " and water")} about ${r.CostLow:N0} to ${r.CostHigh:N0} a year at the job's tariffs; dearest month {MonthNames[r.WorstMonth - 1]} (${r.Months[r.WorstMonth - 1].Cost:N0}); peak demand {r.PeakPowerW / 1000:0.0} kW{(r.DemandCost(input.Tariffs) is > 0 and double demandCost ? Text($", demand charge ${demandCost:N0} a year") : string.Empty)}."),
            "", Counted);
    }

    // Sensors of the air inside that do not tell it as it is.
    private static string[] UntrueSensors(EqList<Sensor>? sensors) =>
    [
        .. from s in sensors ?? []
           where s.Place is not (SensorPlace.Outside or SensorPlace.Equipment) && s.Quantity is (SensorQuantity.Temperature or SensorQuantity.Humidity)
           let left = s.ErrorValue + s.CorrectionValue
           let drift = s.DriftPerYearValue ?? 0
           where !s.Aspirated || Math.Abs(left) > 1e-9 || drift != 0
           select s.Id + (s.Aspirated ? string.Empty : ", which no fan draws air past")
               + (Math.Abs(left) > 1e-9 ? Text($", which reads {Amount(s.Quantity, left)} {(left > 0 ? "high" : "low")}") : string.Empty)
               + (drift != 0 ? Text($", which drifts {Amount(s.Quantity, drift)} {(drift > 0 ? "high" : "low")} by the year's end") : string.Empty),
    ];

    private static string Amount(SensorQuantity quantity, double value) =>
        quantity == SensorQuantity.Temperature ? Text($"{Math.Abs(value) * 1.8:0.#} F° ({Math.Abs(value):0.#} K)") : Text($"{Math.Abs(value):0.#} % humidity");

    private static string Cloth(PlantResult plant) =>
        plant.Curtain is null ? "a curtain" : plant.Curtain.Layers > 1 || plant.SecondCurtain is not null ? "tighter curtain edges" : "a second curtain";

    public static EqList<string> LeftOut(YearInput input, YearRun run, PlantResult plant)
    {
        List<string> words =
        [
            "A typical year leaves the extremes out; the design days stand beside it.",
            "One mean air below and one above the curtain; cold and hot spots, and the rise from intake to fans, are not counted against the targets.",
            "Freezing of condensate and dew on the outside are not followed. Snow on the roof takes no light and keeps no heat in.",
            plant.Co2 is null
                ? "Shared walls count as no loss; carbon dioxide is held at 420 ppm."
                : "Shared walls count as no loss; the breathing of crop and substrate at night is not counted in the carbon dioxide.",
            Text($"Sensors are the program's, with their lag and error, in steps of 0.2 F° (0.1 K) and 1 %; {(run.Sensors?.Any(s => (s.DriftPerYearValue ?? 0) != 0) == true ? "those that drift do so evenly from 1 January on" : "none of them is said to drift (hygrometers do, by a percent or two a year)")}, and what one without a fan reads low under a clear night sky is left out."),
        ];
        if (plant.Curtain is { Layers: > 1 } || plant.SecondCurtain is not null)
        {
            words.Add("Where two cloths are drawn they are reckoned as one with still air between them; the air between has no temperature of its own, and dew forms at their mean.");
        }

        if (run.Snow.OpensCurtains)
        {
            words.Add(run.Snow.IsRecorded
                ? "Snow on the roof is reckoned from the growing depth on the ground, melting by the heat under the roof and by thaw, for the curtain's snow rule alone: wind, sliding and sun on it are left out."
                : "The weather file records no snow: the curtain's rule to open under it is not exercised, and a snowy year burns more.");
        }

        if (run.Rain.HoldsVents)
        {
            words.Add(run.Rain.KnownH == 0
                ? "The weather file records no rain: vents are never held back by it in this year; a wet one is warmer inside."
                : Text($"Rain holds vents back for the whole of an hour that has any; the file tells of {run.Rain.KnownH:N0} of 8,760 hours whether it rained, the rest are taken as dry. It cools no covering."));
        }

        if (plant.SecondCurtain is not null)
        {
            words.Add("Both curtains are drawn from the same side; with one drawn, the other's parked bundles give no shade.");
        }

        if (plant.BenchPipeW > 0)
        {
            words.Add("Bench pipes are on or off at their stated output, warming and cooling with a lag of 40 min, from a boiler of 85 % gross efficiency.");
        }

        if (input.Synthetic)
        {
            words.Add("The year is synthetic: means, ranges and day-to-day persistence of the normals, no real sequence of weather.");
        }

        return words.ToEqList();
    }

    private static string C(double valueC) => Text($"{valueC * 1.8 + 32:0} °F ({valueC:0.0} °C)");

    // Less than an hour is told in minutes: nothing that happened is called 0 h.
    private static string Hours(double hours) => hours < 0.995 ? Text($"{Math.Max(1, Math.Round(60 * hours)):0} min") : hours < 9.95 ? Text($"{hours:0.0} h") : Text($"{hours:N0} h");

    private static string Percent(double part, double whole) => whole > 0 ? Text($"{100 * part / whole:0} %") : "–";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    /// <summary>A schedule that goes by the sun, where on some days it does not rise or set.</summary>
    private static Finding? NoSunrise(YearRun run, YearInput input)
    {
        (int dark, int light) = (run.Targets.DaysWithoutSun, run.Targets.DaysWithoutNight);
        bool bySun = input.Schedule.Any(p => p.DayStarts is not DayMark.Clock || p.DayEnds is not DayMark.Clock);
        if (!bySun || dark + light == 0)
        {
            return null;
        }

        return new Finding(
            "year/no-sunrise", Severity.Near, input.House,
            Text($"The schedule goes by sunrise and sunset, but the sun does not rise on {dark} days and does not set on {light}. On a day without sunrise both marks stand at 12:00 (from sunrise to sunset is then no time at all: the night's targets all day long); on a day without sunset they stand at 0:00 and 24:00 (the day's targets all night)."),
            "Clock times for the start and end of the day in those weeks.",
            new Source.FirstPrinciples("minutes with the sun's upper edge over a flat horizon, usual refraction"));
    }
}
