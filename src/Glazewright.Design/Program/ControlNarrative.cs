using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Program;

/// <summary>One part of the narrative: a heading and its lines.</summary>
/// <param name="Heading">Heading.</param>
/// <param name="Lines">Plain sentences.</param>
public sealed record NarrativePart(string Heading, EqList<string> Lines);

/// <summary>The program in plain words for technician and grower, the hard-wired safety layer listed as outside it.</summary>
public static class ControlNarrative
{
    /// <summary>Writes it.</summary>
    /// <param name="d">A program without faults.</param>
    /// <returns>Parts in reading order; SI, invariant culture.</returns>
    public static EqList<NarrativePart> Of(ProgramDocument d)
    {
        ArgumentNullException.ThrowIfNull(d);
        return
        [
            new("What is wanted", d.Periods.Select(Period).ToEqList()),
            new("Cooling, first to last", d.Cooling.Select(s => Stage(s, "above")).ToEqList()),
            new("Heating, lead first", d.Heating.Select(s => Stage(s, "below")).ToEqList()),
            new("Humidity", Humidity(d.Humidity)),
            new("Curtain, lamps, what runs when nothing else asks", Rest(d)),
            new("What forbids what", Interlocks(d)),
            new("Least times, travel, turns", d.Actuators.Select(Motor).ToEqList()),
            new("Alarms", d.Alarms.Select(Sounds).Append("No temperature at the crop for 1 min; a temperature that does not change for 12 h.").ToEqList()),
            new("When a sensor fails", [
                "Without the temperature at the crop the one above the curtain serves.",
                "Without both, the lead heater runs when it is 5 K colder outside than the heating threshold (at night if that too is unknown), the first cooling stage in sun or heat. Mend it at once.",
                "Without humidity there is no fog and no drying.",
            ]),
            new("Hard-wired, outside this program", [
                "High-limit thermostat and flame safeguard of each heater; fuel valve; CO alarm.",
                "Low-water cut-off of boiler, wet-wall sump and fog pump; relief and bleed-down of the fog line.",
                "Fan guards, disconnect in sight of each motor, emergency stops, hand-off-auto switches.",
                "Independent low and high thermostat with its own battery and dialler; wind switch of vents.",
                "This program is not a safety function. It must pass commissioning with all of these in place.",
            ]),
        ];
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static string Period(ProgramPeriod p) => Say(
        $"{p.Id}, days {p.FromDay} to {p.ToDay}: {Target(p.Day)} from {Mark(p.DayStarts)} to {Mark(p.DayEnds)}, {Target(p.Night)} for the rest, ramp {p.RampMinutes} min; cooling from {p.CoolAboveK:0.0} K above, heating from {p.HeatBelowK:0.0} K below.");

    private static string Target(ClimateTarget t) => t.HumidityPercent > 0 ? Say($"{t.TemperatureC:0.0} °C and {t.HumidityPercent:0} %") : Say($"{t.TemperatureC:0.0} °C");

    private static string Mark(DayMark mark) => mark switch
    {
        DayMark.Clock c => Say($"{c.Minute / 60:00}:{c.Minute % 60:00}"),
        DayMark.Sunrise r => Offset("sunrise", r.OffsetMinutes),
        DayMark.Sunset s => Offset("sunset", s.OffsetMinutes),
        _ => string.Empty,
    };

    private static string Offset(string name, int minutes) => minutes == 0 ? name : Say($"{Math.Abs(minutes)} min {(minutes < 0 ? "before" : "after")} {name}");

    private static string Stage(ControlStage s, string way) => Say(
        $"{s.Id}: {Settings(s.Settings)} at {s.OnAtK:0.00} K {way} the threshold for {s.DelayS} s; off at {s.OffAtK:0.00} K.");

    private static string Settings(EqList<ActuatorSetting> settings) => string.Join(
        ", ", settings.Select(s => s.LevelFraction >= 1 ? s.Actuator : Say($"{s.Actuator} {s.LevelFraction * 100:0} %")));

    private static EqList<string> Humidity(HumidityControl h)
    {
        var lines = new List<string>();
        if (h.Drying.Count > 0)
        {
            lines.Add(Say($"Drying {h.DryAbovePercent:0} % above target until {h.DryDeadbandPercent:0} % lower: {Settings(h.Drying)}; not below {h.DryOnlyAboveOutsideC:0} °C outside, nor when the outside air holds as much vapour."));
        }

        if (h.Fogging.Count > 0)
        {
            lines.Add(Say($"Fog {h.FogBelowPercent:0} % below target until {h.FogDeadbandPercent:0} % higher, pulses {h.FogOnS} s on, {h.FogOffS} s off; never above {h.FogCeilingPercent:0} %."));
        }

        return lines.Count == 0 ? ["Not controlled."] : lines.ToEqList();
    }

    private static EqList<string> Rest(ProgramDocument d)
    {
        var lines = new List<string>();
        if (d.Curtain is { } c)
        {
            lines.Add(Say($"{c.Actuator}: drawn for warmth below {c.DrawBelowLightWm2:0} W/m² and {c.DrawBelowOutsideC:0} °C outside, gap {c.GapFraction * 100:0} % while drying; drawn {c.ShadeFraction * 100:0} % for shade above {c.ShadeAboveLightWm2:0} W/m² when {c.ShadeAboveInsideK:0.0} K past the cooling threshold; opens in steps of {c.OpenStepFraction * 100:0} % every {c.OpenStepS} s{(c.HoldOpenOnSnow ? "; open while snow lies or falls" : string.Empty)}."));
        }

        if (d.Lamps is { } l)
        {
            lines.Add(Say($"{l.Actuator}: {string.Join(", ", d.Periods.Select((p, i) => Say($"{p.Id} {l.HoursByPeriod[i]:0.#} h")))} about solar noon, off above {l.OffAboveLightWm2:0} W/m²."));
        }

        lines.AddRange((d.Background ?? []).Select(b => Say($"{b.Actuator} runs unless {(b.RestsWith.Count == 0 ? "told otherwise" : string.Join(" or ", b.RestsWith) + " is asked for")}{(b.RestsAboveWindMs > 0 ? Say($", or wind above {b.RestsAboveWindMs:0.0} m/s") : string.Empty)}.")));
        if (d.ColdAir is { } cold)
        {
            lines.Add(Say($"In cold air: the cooling threshold rises by up to {cold.RaiseK:0.0} K as the outside air goes from {cold.FromK:0} to {cold.FullK:0} K below the target; beyond that only {cold.StagesWhenCold} cooling stage; no water on the wet wall below {cold.NoWaterBelowC:0} °C outside."));
        }

        return lines.Count == 0 ? ["None."] : lines.ToEqList();
    }

    private static EqList<string> Interlocks(ProgramDocument d)
    {
        var lines = new List<string>(d.Interlocks.Select(i => i switch
        {
            Interlock.NotBoth both => $"{both.Winner} and {both.Loser} never together; {both.Winner} comes first.",
            Interlock.OnlyWith with => $"{with.Actuator} only with {with.Needs}.",
            Interlock.OnlyWithAny any => $"{any.Actuator} only with {string.Join(" or ", any.NeedsAny)}.",
            Interlock.NeedsLouverProof proof => $"{proof.Actuator} only when the louver's end switch proves it open.",
            _ => string.Empty,
        }));
        if (d.Guard is { } g)
        {
            lines.Add(Say($"{g.FansWithoutProof} fan may run before that proof; if it stays away {g.GraceS} s beyond the travel and suction passes {g.LimitPa:0} Pa, all stop for {g.LockS / 60} min."));
        }

        return lines.Count == 0 ? ["Nothing."] : lines.ToEqList();
    }

    private static string Motor(Actuator a) => a.TravelS > 0
        ? Say($"{a.Id}: travels in {a.TravelS} s.")
        : Say($"{a.Id}: on at least {a.MinOnS} s, off at least {a.MinOffS} s{(a.RotationGroup.Length > 0 ? ", takes turns" : string.Empty)}.");

    private static string Sounds(Alarm a) => Say(
        $"{a.Id}: {ProgramShape.Kebab(a.Reading.ToString())} {(a.Low is double low ? Say($"below {low:0.#}") : string.Empty)}{(a.Low is not null && a.High is not null ? " or " : string.Empty)}{(a.High is double high ? Say($"above {high:0.#}") : string.Empty)} for {a.DelayS} s.");
}
