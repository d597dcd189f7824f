using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Science.Crop;

namespace Glazewright.Design.Program;

/// <summary>Everything that can be wrong with a program document, each with its place.</summary>
internal static class ProgramChecks
{
    internal const int LongestS = 86_400;

    public static EqList<Fault> Of(ProgramDocument d)
    {
        var faults = new List<Fault>();
        var known = new HashSet<string>(StringComparer.Ordinal);
        Actuators(d, known, faults);
        Periods(d, faults);
        Stages(d.Cooling, "/cooling", known, faults);
        Stages(d.Heating, "/heating", known, faults);
        Modulation(d, faults);
        Crossing(d, faults);
        Humidity(d, known, faults);
        RuleChecks.Add(d, known, faults);
        Alarms(d, faults);
        InterlockChecks.Add(d, known, faults);
        SensorChecks.Add(d, faults);
        return faults.ToEqList();
    }

    public static bool Holds(ProgramPeriod p, int day) =>
        p.FromDay <= p.ToDay ? day >= p.FromDay && day <= p.ToDay : day >= p.FromDay || day <= p.ToDay;

    internal static void Add(List<Fault> faults, FaultKind kind, string pointer, string wrong, string right) =>
        faults.Add(new Fault(kind, pointer, string.Empty, 0, 0, wrong, right));

    internal static void Range(List<Fault> faults, string pointer, double value, double least, double most, string what)
    {
        if (!(value >= least && value <= most))
        {
            Add(faults, FaultKind.OutOfRange, pointer, FormattableString.Invariant($"{what} is {value}"), FormattableString.Invariant($"{least} to {most}"));
        }
    }

    internal static void Known(List<Fault> faults, HashSet<string> known, string pointer, string id)
    {
        if (!known.Contains(id))
        {
            Add(faults, FaultKind.NotFound, pointer, $"there is no actuator '{id}' in this house", known.Count == 0 ? "the house has no actuators" : "one of " + string.Join(", ", known));
        }
    }

    private static void Actuators(ProgramDocument d, HashSet<string> known, List<Fault> faults)
    {
        if (d.Actuators.Count > ProgramCompiler.MostActuators)
        {
            Add(faults, FaultKind.OutOfRange, "/actuators", $"{d.Actuators.Count} actuators", $"at most {ProgramCompiler.MostActuators}: split the house into two programs");
        }

        for (int i = 0; i < d.Actuators.Count; i++)
        {
            Actuator a = d.Actuators[i];
            string at = $"/actuators/{i}";
            if (a.Id.Length == 0 || !known.Add(a.Id))
            {
                Add(faults, FaultKind.Duplicate, at + "/id", $"actuator id '{a.Id}' is empty or used twice", "one id an actuator");
            }

            Range(faults, at + "/minOnS", a.MinOnS, 0, LongestS, "least time on, s,");
            Range(faults, at + "/minOffS", a.MinOffS, 0, LongestS, "least time off, s,");
            Range(faults, at + "/travelS", a.TravelS, 0, 3600, "travel, s,");
            if (a.LeastFraction is double least)
            {
                Range(faults, at + "/leastFraction", least, 0.05, 1, "least level");
                if (a.Kind != ActuatorKind.Heater)
                {
                    Add(faults, FaultKind.Contradiction, at + "/leastFraction", $"'{a.Id}' is no heater and has a least fire", "heaters only");
                }
            }

            if (ProgramCompiler.Moves(a.Kind) && (a.MinOnS > 0 || a.MinOffS > 0))
            {
                Add(faults, FaultKind.Contradiction, at, $"'{a.Id}' is a motor that moves and has least times on or off", "travel only");
            }
        }
    }

    private static void Periods(ProgramDocument d, List<Fault> faults)
    {
        if (d.Periods.Count is 0 or > 200)
        {
            Add(faults, FaultKind.Missing, "/periods", $"{d.Periods.Count} periods", "1 to 200, covering the year");
            return;
        }

        for (int i = 0; i < d.Periods.Count; i++)
        {
            ProgramPeriod p = d.Periods[i];
            string at = $"/periods/{i}";
            Range(faults, at + "/fromDay", p.FromDay, 1, 365, "first day");
            Range(faults, at + "/toDay", p.ToDay, 1, 365, "last day");
            Range(faults, at + "/day/temperatureC", p.Day.TemperatureC, -10, 50, "day temperature, °C,");
            Range(faults, at + "/night/temperatureC", p.Night.TemperatureC, -10, 50, "night temperature, °C,");
            Range(faults, at + "/day/humidityPercent", p.Day.HumidityPercent, 0, 100, "day humidity, %,");
            Range(faults, at + "/night/humidityPercent", p.Night.HumidityPercent, 0, 100, "night humidity, %,");
            Deficit(faults, at + "/day", p.Day);
            Deficit(faults, at + "/night", p.Night);
            Range(faults, at + "/rampMinutes", p.RampMinutes, 0, 360, "ramp, min,");
            Range(faults, at + "/coolAboveK", p.CoolAboveK, 0, 20, "distance to cooling, K,");
            Range(faults, at + "/heatBelowK", p.HeatBelowK, 0, 20, "distance to heating, K,");
            Mark(faults, at + "/dayStarts", p.DayStarts);
            Mark(faults, at + "/dayEnds", p.DayEnds);
            if (p.DayStarts.Equals(p.DayEnds))
            {
                Add(faults, FaultKind.Contradiction, at + "/dayEnds", "day ends when it starts: the day has a gap or no night", "two different marks");
            }
        }

        for (int day = 1; day <= 365; day++)
        {
            int count = d.Periods.Count(p => Holds(p, day));
            if (count != 1)
            {
                Add(faults, FaultKind.Contradiction, "/periods", count == 0 ? $"no period holds on day {day} of the year" : $"{count} periods hold on day {day} of the year", "each day in one period");
                return;
            }
        }
    }

    private static void Deficit(List<Fault> faults, string at, ClimateTarget target)
    {
        if (target.VpdKPa is not double deficit)
        {
            return;
        }

        Range(faults, at + "/vpdKPa", deficit, 0.1, 6, "vapour pressure deficit, kPa,");
        if (target.HumidityPercent > 0)
        {
            Add(faults, FaultKind.Contradiction, at + "/vpdKPa", "a humidity and a vapour pressure deficit are both asked", "one of the two: humidityPercent 0, or no vpdKPa");
        }

        double mostKPa = target.TemperatureC is >= -10 and <= 50 ? Fao56.SaturationKPa(target.TemperatureC) : double.MaxValue;
        if (deficit >= mostKPa)
        {
            Add(
                faults, FaultKind.Contradiction, at + "/vpdKPa", FormattableString.Invariant($"air of {target.TemperatureC:0.#} °C without any water has a deficit of {mostKPa:0.00} kPa, and {deficit:0.##} kPa is asked"),
                FormattableString.Invariant($"well below {mostKPa:0.0} kPa"));
        }
    }

    internal static void Mark(List<Fault> faults, string pointer, DayMark mark)
    {
        switch (mark)
        {
            case DayMark.Clock clock:
                Range(faults, pointer, clock.Minute, 0, 1439, "minute of the day");
                break;
            case DayMark.Sunrise rise:
                Range(faults, pointer, rise.OffsetMinutes, -720, 720, "offset, min,");
                break;
            case DayMark.Sunset set:
                Range(faults, pointer, set.OffsetMinutes, -720, 720, "offset, min,");
                break;
        }
    }

    private static void Stages(EqList<ControlStage> stages, string pointer, HashSet<string> known, List<Fault> faults)
    {
        for (int i = 0; i < stages.Count; i++)
        {
            ControlStage s = stages[i];
            string at = $"{pointer}/{i}";
            Range(faults, at + "/onAtK", s.OnAtK, 0, 30, "on at, K,");
            Range(faults, at + "/offAtK", s.OffAtK, -10, 30, "off at, K,");
            Range(faults, at + "/delayS", s.DelayS, 0, LongestS, "delay, s,");
            if (!(s.OffAtK < s.OnAtK))
            {
                Add(faults, FaultKind.Contradiction, at + "/offAtK", $"stage '{s.Id}' goes off where it comes on: it would chatter", "below onAtK");
            }

            if (s.Settings.Count == 0)
            {
                Add(faults, FaultKind.Missing, at + "/settings", $"stage '{s.Id}' drives nothing", "at least one actuator");
            }

            Settings(faults, known, at + "/settings", s.Settings);
        }
    }

    private static void Modulation(ProgramDocument d, List<Fault> faults)
    {
        foreach ((EqList<ControlStage> stages, string pointer) in new[] { (d.Cooling, "/cooling"), (d.Heating, "/heating") })
        {
            for (int i = 0; i < stages.Count; i++)
            {
                if (stages[i].Modulates is not { } m)
                {
                    continue;
                }

                string at = $"{pointer}/{i}/modulates";
                Range(faults, at + "/bandK", m.BandK, 0.5, 30, "band, K,");
                Range(faults, at + "/deadbandFraction", m.DeadbandFraction, 0, 0.5, "deadband");
                if (m.ResetS != 0)
                {
                    Range(faults, at + "/resetS", m.ResetS, 60, LongestS, "reset, s,");
                }

                foreach (ActuatorSetting s in stages[i].Settings.Where(s => d.Actuators.Any(a => a.Id == s.Actuator && a.LeastFraction is null)))
                {
                    Add(faults, FaultKind.Contradiction, at, $"stage '{stages[i].Id}' modulates '{s.Actuator}', which has no least fire: it is on or off", "heaters with a leastFraction, or no modulates");
                }
            }
        }
    }

    private static void Settings(List<Fault> faults, HashSet<string> known, string pointer, EqList<ActuatorSetting> settings)
    {
        for (int i = 0; i < settings.Count; i++)
        {
            Known(faults, known, $"{pointer}/{i}/actuator", settings[i].Actuator);
            Range(faults, $"{pointer}/{i}/levelFraction", settings[i].LevelFraction, 0, 1, "level");
        }
    }

    /// <summary>Heating must let go before cooling comes on, or they drive each other.</summary>
    private static void Crossing(ProgramDocument d, List<Fault> faults)
    {
        if (d.Heating.Count == 0 || d.Cooling.Count == 0)
        {
            return;
        }

        double heatLetsGoK = -d.Heating.Min(s => s.OffAtK);
        double coolComesOnK = d.Cooling.Min(s => s.OnAtK);
        double coolLetsGoK = d.Cooling.Min(s => s.OffAtK);
        for (int i = 0; i < d.Periods.Count; i++)
        {
            ProgramPeriod p = d.Periods[i];
            if (heatLetsGoK - p.HeatBelowK >= p.CoolAboveK + coolComesOnK || coolLetsGoK + p.CoolAboveK <= -p.HeatBelowK - d.Heating.Min(s => s.OnAtK))
            {
                Add(
                    faults, FaultKind.Contradiction, $"/periods/{i}",
                    FormattableString.Invariant($"setpoints cross in '{p.Id}': heating lets go at {heatLetsGoK - p.HeatBelowK:+0.0;-0.0} K of the target, cooling comes on at {p.CoolAboveK + coolComesOnK:+0.0;-0.0} K and lets go at {coolLetsGoK + p.CoolAboveK:+0.0;-0.0} K"),
                    "raise coolAboveK or heatBelowK, or narrow the stages' deadbands");
            }
        }
    }

    private static void Humidity(ProgramDocument d, HashSet<string> known, List<Fault> faults)
    {
        HumidityControl h = d.Humidity;
        Settings(faults, known, "/humidity/drying", h.Drying);
        Settings(faults, known, "/humidity/fogging", h.Fogging);
        Range(faults, "/humidity/dryAbovePercent", h.DryAbovePercent, 0, 50, "drying above, %,");
        Range(faults, "/humidity/dryDeadbandPercent", h.DryDeadbandPercent, 0, 50, "drying deadband, %,");
        Range(faults, "/humidity/fogBelowPercent", h.FogBelowPercent, 0, 80, "fog below, %,");
        Range(faults, "/humidity/fogDeadbandPercent", h.FogDeadbandPercent, 0, 50, "fog deadband, %,");
        Range(faults, "/humidity/fogCeilingPercent", h.FogCeilingPercent, 0, 98, "fog ceiling, %,");
        Range(faults, "/humidity/fogOnS", h.FogOnS, 0, 3600, "fog pulse, s,");
        Range(faults, "/humidity/fogOffS", h.FogOffS, 0, 3600, "fog pause, s,");
        if (h.DryHeatK is { } lift)
        {
            Range(faults, "/humidity/dryHeatK", lift, 0, 10, "heat while drying, K,");
            if (d.Periods.FirstOrDefault(p => lift > 0 && p.CoolAboveK + p.HeatBelowK > 0 && lift >= p.CoolAboveK + p.HeatBelowK) is { } p)
            {
                Add(faults, FaultKind.Contradiction, "/humidity/dryHeatK", $"in {p.Id} heating while drying would begin above where cooling begins", FormattableString.Invariant($"below {p.CoolAboveK + p.HeatBelowK:0.##} K, the distance of the two thresholds"));
            }
        }

        if (h.Purge is { } purge)
        {
            Settings(faults, known, "/humidity/purge/settings", purge.Settings);
            Range(faults, "/humidity/purge/onS", purge.OnS, 0, 3600, "purge, s,");
            Range(faults, "/humidity/purge/pauseS", purge.PauseS, 60, 86_400, "heat after a purge, s,");
            Range(faults, "/humidity/purge/leastBelowK", purge.LeastBelowK, 0, 10, "end of a purge below the heating threshold, K,");
        }

        if (h.Fogging.Count > 0 && h.FogDeadbandPercent - h.FogBelowPercent >= h.DryAbovePercent - h.DryDeadbandPercent)
        {
            Add(faults, FaultKind.Contradiction, "/humidity", "fogging stops above where drying stops: they would drive each other", "fogBelow − fogDeadband above dryDeadband − dryAbove");
        }
    }

    internal static void Kind(ProgramDocument d, List<Fault> faults, string pointer, string id, ActuatorKind kind)
    {
        if (d.Actuators.FirstOrDefault(a => a.Id == id) is { } a && a.Kind != kind)
        {
            Add(faults, FaultKind.Contradiction, pointer, $"'{id}' is a {a.Kind}", $"a {kind}");
        }
    }

    private static void Alarms(ProgramDocument d, List<Fault> faults)
    {
        if (d.Alarms.Count > CompiledProgram.MostAlarms)
        {
            Add(faults, FaultKind.OutOfRange, "/alarms", $"{d.Alarms.Count} alarms", $"at most {CompiledProgram.MostAlarms}");
        }

        var ids = new HashSet<string>(StringComparer.Ordinal);
        for (int i = 0; i < d.Alarms.Count; i++)
        {
            Alarm a = d.Alarms[i];
            Range(faults, $"/alarms/{i}/delayS", a.DelayS, 0, LongestS, "delay, s,");
            if (!ids.Add(a.Id))
            {
                Add(faults, FaultKind.Duplicate, $"/alarms/{i}/id", $"alarm id '{a.Id}' is used twice", "one id an alarm");
            }

            if (a.Low is null && a.High is null)
            {
                Add(faults, FaultKind.Missing, $"/alarms/{i}", $"alarm '{a.Id}' has no limit", "low, high or both");
            }

            if (a.Low is double low && a.High is double high && !(low < high))
            {
                Add(faults, FaultKind.Contradiction, $"/alarms/{i}", $"alarm '{a.Id}' always sounds: low is not below high", "low below high");
            }
        }
    }
}
