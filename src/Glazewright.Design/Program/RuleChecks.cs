using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Program;

/// <summary>What can be wrong with the rules beside the stages: curtains, lamps, background, gas, upper fans, weather, cold air.</summary>
internal static class RuleChecks
{
    public static void Add(ProgramDocument d, HashSet<string> known, List<Fault> faults)
    {
        Curtain(d, d.Curtain, "/curtain", ActuatorKind.Curtain, known, faults);
        Curtain(d, d.SecondCurtain, "/secondCurtain", ActuatorKind.SecondCurtain, known, faults);
        Lamps(d, known, faults);
        Background(d, known, faults);
        Gas(d, known, faults);
        UpperAir(d, known, faults);
        Weather(d, known, faults);
        Cold(d, faults);
    }

    private static void Curtain(ProgramDocument d, CurtainControl? control, string at, ActuatorKind kind, HashSet<string> known, List<Fault> faults)
    {
        if (control is not { } c)
        {
            return;
        }

        ProgramChecks.Known(faults, known, at + "/actuator", c.Actuator);
        ProgramChecks.Kind(d, faults, at + "/actuator", c.Actuator, kind);
        ProgramChecks.Range(faults, at + "/shadeFraction", c.ShadeFraction, 0, 1, "shade");
        ProgramChecks.Range(faults, at + "/gapFraction", c.GapFraction, 0, 0.5, "gap");
        ProgramChecks.Range(faults, at + "/openStepFraction", c.OpenStepFraction, 0.001, 1, "opening step");
        ProgramChecks.Range(faults, at + "/openStepS", c.OpenStepS, 0, 3600, "wait between steps, s,");
        ProgramChecks.Range(faults, at + "/drawBelowLightWm2", c.DrawBelowLightWm2, 0, 1500, "light, W/m²,");
        if (!(c.ShadeAboveLightWm2 > c.DrawBelowLightWm2 + Math.Max(10, c.DrawBelowLightWm2 / 5)))
        {
            ProgramChecks.Add(faults, FaultKind.Contradiction, at + "/shadeAboveLightWm2", "the curtain would be drawn for shade in light that still counts as dark", "well above drawBelowLightWm2");
        }

        if (c.Warm is { } warm)
        {
            ProgramChecks.Range(faults, at + "/warm/mostFraction", warm.MostFraction, 0, 1, "opening for heat");
            ProgramChecks.Range(faults, at + "/warm/pastK", warm.PastK, 0, 20, "past the cooling threshold, K,");
            ProgramChecks.Range(faults, at + "/warm/deadbandK", warm.DeadbandK, 0.1, 20, "deadband, K,");
        }

        if (c.Dark is { } dark)
        {
            ProgramChecks.Mark(faults, at + "/dark/from", dark.From);
            ProgramChecks.Mark(faults, at + "/dark/to", dark.To);
            if (dark.From.Equals(dark.To))
            {
                ProgramChecks.Add(faults, FaultKind.Contradiction, at + "/dark/to", "the dark ends when it begins: the house would stay dark", "two different marks");
            }
        }
    }

    private static void Lamps(ProgramDocument d, HashSet<string> known, List<Fault> faults)
    {
        if (d.Lamps is not { } l)
        {
            return;
        }

        ProgramChecks.Known(faults, known, "/lamps/actuator", l.Actuator);
        ProgramChecks.Kind(d, faults, "/lamps/actuator", l.Actuator, ActuatorKind.Lamps);
        if (l.HoursByPeriod.Count != d.Periods.Count)
        {
            ProgramChecks.Add(faults, FaultKind.Contradiction, "/lamps/hoursByPeriod", $"{l.HoursByPeriod.Count} photoperiods for {d.Periods.Count} periods", "one a period");
        }

        for (int i = 0; i < l.HoursByPeriod.Count; i++)
        {
            ProgramChecks.Range(faults, $"/lamps/hoursByPeriod/{i}", l.HoursByPeriod[i], 0, 24, "photoperiod, h,");
        }
    }

    private static void Background(ProgramDocument d, HashSet<string> known, List<Fault> faults)
    {
        EqList<BackgroundRule> rules = d.Background ?? [];
        for (int i = 0; i < rules.Count; i++)
        {
            ProgramChecks.Known(faults, known, $"/background/{i}/actuator", rules[i].Actuator);
            ProgramChecks.Range(faults, $"/background/{i}/levelFraction", rules[i].LevelFraction, 0, 1, "level");
            foreach (string id in rules[i].RestsWith)
            {
                ProgramChecks.Known(faults, known, $"/background/{i}/restsWith", id);
            }
        }
    }

    private static void Gas(ProgramDocument d, HashSet<string> known, List<Fault> faults)
    {
        if (d.Co2 is not { } c)
        {
            return;
        }

        ProgramChecks.Known(faults, known, "/co2/actuator", c.Actuator);
        ProgramChecks.Kind(d, faults, "/co2/actuator", c.Actuator, ActuatorKind.Co2Valve);
        ProgramChecks.Range(faults, "/co2/targetPpm", c.TargetPpm, 300, 2000, "carbon dioxide, ppm,");
        ProgramChecks.Range(faults, "/co2/deadbandPpm", c.DeadbandPpm, 0, 500, "deadband, ppm,");
        ProgramChecks.Range(faults, "/co2/onlyAboveLightWm2", c.OnlyAboveLightWm2, 0, 1500, "light, W/m²,");
        foreach (string id in c.RestsWith)
        {
            ProgramChecks.Known(faults, known, "/co2/restsWith", id);
        }
    }

    private static void UpperAir(ProgramDocument d, HashSet<string> known, List<Fault> faults)
    {
        if (d.UpperAir is not { } u)
        {
            return;
        }

        ProgramChecks.Known(faults, known, "/upperAir/actuator", u.Actuator);
        ProgramChecks.Kind(d, faults, "/upperAir/actuator", u.Actuator, ActuatorKind.UpperFan);
        ProgramChecks.Range(faults, "/upperAir/onAboveOutsideK", u.OnAboveOutsideK, 1, 30, "difference, K,");
        ProgramChecks.Range(faults, "/upperAir/deadbandK", u.DeadbandK, 0, 20, "deadband, K,");
        ProgramChecks.Range(faults, "/upperAir/drawnFraction", u.DrawnFraction, 0.05, 1, "share drawn");
        if (d.Curtain is null)
        {
            ProgramChecks.Add(faults, FaultKind.Contradiction, "/upperAir", "upper fans that wait for a curtain, and no curtain", "a curtain, or no upperAir");
        }
    }

    private static void Weather(ProgramDocument d, HashSet<string> known, List<Fault> faults)
    {
        EqList<WeatherLimit> limits = d.Weather ?? [];
        for (int i = 0; i < limits.Count; i++)
        {
            WeatherLimit w = limits[i];
            string at = $"/weather/{i}";
            foreach (string id in w.Actuators)
            {
                ProgramChecks.Known(faults, known, at + "/actuators", id);
                if (d.Actuators.FirstOrDefault(a => a.Id == id) is { } a && !ProgramCompiler.Moves(a.Kind))
                {
                    ProgramChecks.Add(faults, FaultKind.Contradiction, at + "/actuators", $"'{id}' is on or off and cannot open only so far", "vents and other motors that move");
                }
                else if (d.Interlocks.Any(x => InterlockChecks.Needed(x).Contains(id)))
                {
                    ProgramChecks.Add(faults, FaultKind.Contradiction, at + "/actuators", $"an interlock needs '{id}' open, which wind and rain may shut", "motors that nothing needs");
                }
            }

            ProgramChecks.Range(faults, at + "/windMs", w.WindMs, 1, 50, "wind, m/s,");
            ProgramChecks.Range(faults, at + "/stormMs", w.StormMs, 1, 60, "storm, m/s,");
            ProgramChecks.Range(faults, at + "/inWindFraction", w.InWindFraction, 0, 1, "opening in wind");
            ProgramChecks.Range(faults, at + "/inRainFraction", w.InRainFraction, 0, 1, "opening in rain");
            ProgramChecks.Range(faults, at + "/calmS", w.CalmS, 0, ProgramChecks.LongestS, "calm, s,");
            if (!(w.StormMs > w.WindMs))
            {
                ProgramChecks.Add(faults, FaultKind.Contradiction, at + "/stormMs", "the storm is no stronger than the wind", "above windMs");
            }
        }
    }

    private static void Cold(ProgramDocument d, List<Fault> faults)
    {
        if (d.ColdAir is not { } c)
        {
            return;
        }

        ProgramChecks.Range(faults, "/coldAir/fromK", c.FromK, 0, 40, "distance, K,");
        ProgramChecks.Range(faults, "/coldAir/fullK", c.FullK, 0, 60, "distance, K,");
        ProgramChecks.Range(faults, "/coldAir/raiseK", c.RaiseK, 0, 10, "rise, K,");
        ProgramChecks.Range(faults, "/coldAir/stagesWhenCold", c.StagesWhenCold, 0, 64, "stages");
        ProgramChecks.Range(faults, "/coldAir/noWaterBelowC", c.NoWaterBelowC, -20, 30, "outside air, °C,");
        if (c.NoWaterAbovePercent is double damp)
        {
            ProgramChecks.Range(faults, "/coldAir/noWaterAbovePercent", damp, 30, 100, "outside humidity, %,");
        }

        if (!(c.FullK > c.FromK))
        {
            ProgramChecks.Add(faults, FaultKind.Contradiction, "/coldAir/fullK", "the rise is complete before it starts", "above fromK");
        }
    }
}
