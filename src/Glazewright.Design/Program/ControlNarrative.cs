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
    /// <param name="units">Units the people of the job read. Light stays in W/m², as light sensors are read everywhere.</param>
    /// <returns>Parts in reading order; invariant culture.</returns>
    public static EqList<NarrativePart> Of(ProgramDocument d, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(d);
        Speech say = new(units == UnitSystem.Us);
        return
        [
            new("What is wanted", d.Periods.Select(p => Period(p, say)).ToEqList()),
            new("Cooling, first to last", d.Cooling.Select(s => Stage(s, "above", say)).ToEqList()),
            new("Heating, lead first", d.Heating.Select(s => Stage(s, "below", say)).ToEqList()),
            new("Humidity", Humidity(d, say)),
            new("Curtain, lamps, what runs when nothing else asks", Rest(d, say)),
            new("What forbids what", Interlocks(d, say)),
            new("Least times, travel, turns", d.Actuators.Select(Motor).ToEqList()),
            new("Alarms", d.Alarms.Select(a => Sounds(a, say)).Append("No temperature at the crop for 1 min; a temperature that does not change for 12 h"
                + (SensorPoints.For(d.Sensors, Reading.SecondTemperature) is null ? "." : Say($"; the two thermometers over the crop {say.Difference(StepRun.ApartCentiK / 100.0, 0)} apart for {StepRun.ApartMs / 60_000} min: the program goes on by the one at the crop, someone must look which is wrong."))).ToEqList()),
            new("Sensors", Sensors(d, say)),
            new("When a sensor fails", [
                Serves(d),
                $"Without any, the lead heater runs when it is {say.Difference(5, 0)} colder outside than the heating threshold (at night if that too is unknown), the first cooling stage in sun or heat. Mend it at once.",
                .. d.Humidity.Fogging.Count + d.Humidity.Drying.Count == 0 ? [] : (string[])[$"Without humidity there is no {(d.Humidity.Fogging.Count == 0 ? "drying" : d.Humidity.Drying.Count == 0 ? "fog" : "fog and no drying")}."],
            ]),
            new("By hand, and after a power cut", [
                "What is put under hand at the box stays there until it is given back, through a power cut too. Interlocks, least times and stops by sensors hold for the hand as well: only the hard-wired switches go past them.",
                "Without power nothing is told: what is switched is off, what travels stays where it is, and only the hard-wired thermostat with its own battery calls.",
                Say($"When power comes back everything begins off and motors where they stand; each machine waits its least time off, and {CompiledProgram.RestartApartMs / 1000} s longer than the one named before it, so that no two start at once."),
            ]),
            new("Hard-wired, outside this program", [
                "High-limit thermostat and flame safeguard of each heater; fuel valve; CO alarm.",
                .. WaterSafety(d),
                "Fan guards, disconnect in sight of each motor, emergency stops, hand-off-auto switches.",
                $"Independent low and high thermostat with its own battery and dialler{(Has(d, ActuatorKind.RoofVent) || Has(d, ActuatorKind.SideVent) ? "; wind and rain switch of vents, beside the program's own rule: its readings can fail" : "")}.",
                "This program is not a safety function. It must pass commissioning with all of these in place.",
            ]),
        ];
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static string Period(ProgramPeriod p, Speech say) => Say(
        $"{p.Id}, {Date(p.FromDay)} to {Date(p.ToDay)} (days {p.FromDay} to {p.ToDay} of the year): {Target(p.Day, say)} from {Mark(p.DayStarts)} to {Mark(p.DayEnds)}, {Target(p.Night, say)} for the rest, ramp {p.RampMinutes} min; cooling from {say.Difference(p.CoolAboveK, 1)} above, heating from {say.Difference(p.HeatBelowK, 1)} below.");

    private static string Date(int day) => new DateOnly(2001, 1, 1).AddDays(day - 1).ToString("d MMM", CultureInfo.InvariantCulture);

    private static string Target(ClimateTarget t, Speech say) => t.VpdKPa > 0 ? Say($"{say.Temperature(t.TemperatureC, 1)} and {t.VpdKPa:0.0#} kPa of vapour pressure deficit") : t.HumidityPercent > 0 ? Say($"{say.Temperature(t.TemperatureC, 1)} and {t.HumidityPercent:0} %") : Say($"{say.Temperature(t.TemperatureC, 1)}");

    private static string Mark(DayMark mark) => mark switch
    {
        DayMark.Clock c => Say($"{c.Minute / 60:00}:{c.Minute % 60:00}"),
        DayMark.Sunrise r => Offset("sunrise", r.OffsetMinutes),
        DayMark.Sunset s => Offset("sunset", s.OffsetMinutes),
        _ => string.Empty,
    };

    private static string Offset(string name, int minutes) => minutes == 0 ? name : Say($"{Math.Abs(minutes)} min {(minutes < 0 ? "before" : "after")} {name}");

    private static string Stage(ControlStage s, string way, Speech say) => Say(
        $"{s.Id}: {Settings(s.Settings)} at {say.Difference(s.OnAtK, 2)} {way} the threshold for {s.DelayS} s; off at {say.Difference(s.OffAtK, 2)}{(s.Modulates is { } m ? Say($"; between, from least fire up: all of it over {say.Difference(m.BandK, 1)} {way} half way between the two{(m.ResetS > 0 ? Say($", and as much again for every {m.ResetS / 60.0:0.#} min that the distance stays") : string.Empty)}, changes under {m.DeadbandFraction * 100:0} % left alone") : string.Empty)}.");

    private static string Settings(EqList<ActuatorSetting> settings) => string.Join(
        ", ", settings.Select(s => s.LevelFraction >= 1 ? s.Actuator : Say($"{s.Actuator} {s.LevelFraction * 100:0} %")));

    private static EqList<string> Humidity(ProgramDocument d, Speech say)
    {
        HumidityControl h = d.Humidity;
        var lines = new List<string>();
        if (h.Drying.Count > 0)
        {
            lines.Add(Say($"Drying {h.DryAbovePercent:0} % above target until {h.DryDeadbandPercent:0} % lower: {Settings(h.Drying)}{(h.Drying.All(x => d.Actuators.Any(a => a.Id == x.Actuator && a.Kind == ActuatorKind.Dehumidifier)) ? string.Empty : Say($"; not below {say.Temperature(h.DryOnlyAboveOutsideC, 0)} outside, nor when the outside air holds as much vapour"))}."));
        }

        if (h.Purge is { OnS: > 0 } purge)
        {
            lines.Add(Say($"In colder air outside it dries in turns, where that air holds less vapour: {Settings(purge.Settings)} for {purge.OnS} s, then shut for {purge.PauseS} s, heat on as it is needed; a turn ends early, or does not begin, {say.Difference(purge.LeastBelowK, 1)} below the heating threshold."));
        }

        if (h.DryHeatK is > 0)
        {
            lines.Add(Say($"While outside air dries, the heating threshold is {say.Difference(h.DryHeatK.Value, 1)} higher."));
        }

        if (h.Fogging.Count > 0)
        {
            lines.Add(Say($"Fog {h.FogBelowPercent:0} % below target until {h.FogDeadbandPercent:0} % higher, pulses {h.FogOnS} s on, {h.FogOffS} s off; never above {h.FogCeilingPercent:0} %."));
        }

        if (lines.Count > 0 && d.Periods.Any(p => p.Day.VpdKPa > 0 || p.Night.VpdKPa > 0))
        {
            lines.Add(Say($"A vapour pressure deficit is taken as the humidity that it means at the temperature of the moment, at least {CompiledProgram.DriestByDeficit / 10.0:0} %."));
        }

        return lines.Count == 0 ? ["Not controlled."] : lines.ToEqList();
    }

    private static EqList<string> Rest(ProgramDocument d, Speech say)
    {
        var lines = new List<string>();
        lines.AddRange(new[] { d.Curtain, d.SecondCurtain }.OfType<CurtainControl>().Select(c => Curtain(c, say)));
        if (d.Curtain is { } above && d.SecondCurtain is { } below)
        {
            lines.Add($"{below.Actuator} waits with opening while {above.Actuator} opens.");
        }

        if (d.Lamps is { } l)
        {
            lines.Add(Say($"{l.Actuator}: {string.Join(", ", d.Periods.Select((p, i) => Say($"{p.Id} {l.HoursByPeriod[i]:0.#} h")))} about solar noon, off above {l.OffAboveLightWm2:0} W/m²."));
        }

        if (d.Co2 is { } gas)
        {
            lines.Add(Say($"{gas.Actuator}: doses from {gas.TargetPpm - gas.DeadbandPpm:0} to {gas.TargetPpm:0} ppm above {gas.OnlyAboveLightWm2:0} W/m²{(gas.RestsWith.Count == 0 ? string.Empty : $", not while {string.Join(" or ", gas.RestsWith)} is asked for")}; never without a reading. Carbon dioxide suffocates without warning: alarm and valve at 5,000 ppm are hard-wired."));
        }

        if (d.UpperAir is { } upper)
        {
            lines.Add(Say($"{upper.Actuator}: on while {(d.SecondCurtain is null ? "the" : "either")} curtain is drawn {upper.DrawnFraction * 100:0} % or more and the air above it is warmer than the cooling threshold and {say.Difference(upper.OnAboveOutsideK, 1)} warmer than outside, off {say.Difference(upper.DeadbandK, 1)} below that; never without both readings. The inlets open with the fans."));
        }

        lines.AddRange((d.Background ?? []).Select(b => Say($"{b.Actuator} runs unless {(b.RestsWith.Count == 0 ? "told otherwise" : string.Join(" or ", b.RestsWith) + " is asked for")}{(b.RestsAboveWindMs > 0 ? Say($", or wind above {say.Speed(b.RestsAboveWindMs)}") : string.Empty)}.")));
        lines.AddRange((d.Weather ?? []).Select(w => Say($"{string.Join(" and ", w.Actuators)}: at most {w.InWindFraction * 100:0} % open in wind from {say.Speed(w.WindMs)} and without a wind reading, shut from {say.Speed(w.StormMs)}{(w.InRainFraction < 1 ? Say($", at most {w.InRainFraction * 100:0} % in rain") : string.Empty)}; farther again after {w.CalmS / 60.0:0.#} min of calmer weather.")));
        if (d.ColdAir is { } cold)
        {
            lines.Add(Say($"In cold air: the cooling threshold rises by up to {say.Difference(cold.RaiseK, 1)} as the outside air goes from {say.Difference(cold.FromK, 0)} to {say.Difference(cold.FullK, 0)} below the target; beyond that only {cold.StagesWhenCold} cooling stage{(Has(d, ActuatorKind.WetWallPump) ? Say($"; no water on the wet wall below {say.Temperature(cold.NoWaterBelowC, 0)} outside{(cold.NoWaterAbovePercent is double damp ? Say($", nor in outside air above {damp:0} % humidity") : string.Empty)}") : string.Empty)}."));
        }

        return lines.Count == 0 ? ["None."] : lines.ToEqList();
    }

    private static string Curtain(CurtainControl c, Speech say)
    {
        string dark = c.Dark is { } d ? $"darkens from {Mark(d.From)} to {Mark(d.To)}; " : string.Empty;
        string shade = c.ShadeFraction > 0
            ? Say($"drawn {c.ShadeFraction * 100:0} % for shade above {c.ShadeAboveLightWm2:0} W/m² when {(c.ShadeAboveInsideK < 0 ? say.Difference(-c.ShadeAboveInsideK, 1) + " below" : say.Difference(c.ShadeAboveInsideK, 1) + " past")} the cooling threshold")
            : "never for shade";
        string heat = c.Warm is { MostFraction: > 0 } warm
            ? Say($", opening in its steps up to {warm.MostFraction * 100:0} % while no heater is asked for and it is {say.Difference(warm.PastK, 1)} or more past the cooling threshold (as it is in mild air), drawn again {say.Difference(warm.DeadbandK, 1)} lower")
            : string.Empty;
        return Say($"{c.Actuator}: {dark}drawn for warmth below {c.DrawBelowLightWm2:0} W/m² and {say.Temperature(c.DrawBelowOutsideC, 0)} outside, gap {c.GapFraction * 100:0} % while drying{heat}; {shade}; opens in steps of {c.OpenStepFraction * 100:0} % every {c.OpenStepS} s{(c.HoldOpenOnSnow ? "; open while snow lies or falls" : string.Empty)}.");
    }

    private static EqList<string> Interlocks(ProgramDocument d, Speech say)
    {
        var lines = new List<string>(d.Interlocks.Select(i => i switch
        {
            Interlock.NotBoth both => $"{both.Winner} and {both.Loser} never together; {both.Winner} comes first.",
            Interlock.OnlyWith with => $"{with.Actuator} only with {with.Needs}.",
            Interlock.OnlyWithAny any => $"{any.Actuator} only with {string.Join(" or ", any.NeedsAny)}.",
            Interlock.OnlySoMany few => Say($"While {few.Actuator} is on, at most {few.Most} of {string.Join(", ", few.Counted)}."),
            Interlock.NeedsLouverProof proof => $"{proof.Actuator} only when the louver's end switch proves it open.",
            _ => string.Empty,
        }));
        if (d.Guard is { } g)
        {
            lines.Add(Say($"{g.FansWithoutProof} fan may run before that proof; if it stays away {g.GraceS} s beyond the travel and suction passes {say.Pressure(g.LimitPa)}, all stop for {g.LockS / 60} min."));
        }

        return lines.Count == 0 ? ["Nothing."] : lines.ToEqList();
    }

    private static EqList<string> Sensors(ProgramDocument d, Speech say) => d.Sensors is { } all
        ? all.Select(s => Sensor(s, say)).ToEqList()
        : ["One of each kind that the program reads, aspirated where it measures air, without correction."];

    private static string Sensor(Sensor s, Speech say)
    {
        bool air = s.Quantity is SensorQuantity.Temperature or SensorQuantity.Humidity;
        string draws = air ? s.Aspirated ? ", aspirated" : ", not aspirated: in sun it reads warm and dry" : string.Empty;
        string lag = s.LagS > 0 ? Say($", follows in {s.LagS:0} s") : string.Empty;
        string error = s.ErrorValue != 0 ? $", taken to read {Amount(s.Quantity, Math.Abs(s.ErrorValue), say)} {(s.ErrorValue > 0 ? "high" : "low")}" : string.Empty;
        string drifts = s.DriftPerYearValue is { } drift && drift != 0 ? $", taken to drift {Amount(s.Quantity, Math.Abs(drift), say)} {(drift > 0 ? "high" : "low")} in a year" : string.Empty;
        string corrected = s.CorrectionValue != 0 ? $", {Amount(s.Quantity, Math.Abs(s.CorrectionValue), say)} {(s.CorrectionValue > 0 ? "added" : "taken off")} by the box" : string.Empty;
        return $"{s.Id}: {SensorPoints.Words(s.Quantity)} {SensorPoints.Words(s.Place)}{draws}{lag}{error}{drifts}{corrected}.";
    }

    private static string Amount(SensorQuantity quantity, double value, Speech say) => quantity switch
    {
        SensorQuantity.Temperature => say.Difference(value, 1),
        SensorQuantity.Humidity => Say($"{value:0.#} % humidity"),
        SensorQuantity.Light => Say($"{value:0} W/m²"),
        SensorQuantity.Wind => say.Speed(value),
        SensorQuantity.CarbonDioxide => Say($"{value:0} ppm"),
        _ => say.Pressure(value),
    };

    private static string Serves(ProgramDocument d)
    {
        string[] others =
        [
            .. SensorPoints.For(d.Sensors, Reading.SecondTemperature) is null ? [] : (string[])["the second one"],
            .. SensorPoints.For(d.Sensors, Reading.UpperTemperature) is null ? [] : (string[])[Has(d, ActuatorKind.Curtain) || Has(d, ActuatorKind.SecondCurtain) ? "the one above the curtain" : "the one under the roof"],
        ];
        return others.Length == 0 ? "There is no other thermometer to serve in the place of the one at the crop." : $"Without the temperature at the crop {string.Join(", then ", others)} serves.";
    }

    private static bool Has(ProgramDocument d, ActuatorKind kind) => d.Actuators.Any(a => a.Kind == kind);

    // Of the water systems the house has; a boiler may be another trade's, so it is named where a pipe is.
    private static IEnumerable<string> WaterSafety(ProgramDocument d)
    {
        string[] cut = [.. Has(d, ActuatorKind.BenchPipe) ? (string[])["boiler"] : [], .. Has(d, ActuatorKind.WetWallPump) ? (string[])["wet-wall sump"] : [], .. Has(d, ActuatorKind.Fog) ? (string[])["fog pump"] : []];
        if (cut.Length > 0)
        {
            yield return $"Low-water cut-off of {(cut.Length == 1 ? cut[0] : string.Join(", ", cut[..^1]) + " and " + cut[^1])}{(Has(d, ActuatorKind.Fog) ? "; relief and bleed-down of the fog line" : string.Empty)}.";
        }
    }

    private static string Motor(Actuator a) => a.TravelS > 0
        ? Say($"{a.Id}: travels in {a.TravelS} s.")
        : Say($"{a.Id}: on at least {a.MinOnS} s, off at least {a.MinOffS} s{(a.LeastFraction is double least ? Say($", never below {least * 100:0} % while it burns") : string.Empty)}{(a.RotationGroup.Length > 0 ? ", takes turns" : string.Empty)}.");

    private static string Sounds(Alarm a, Speech say) => Say(
        $"{a.Id}: {ProgramShape.Kebab(a.Reading.ToString())} {(a.Low is double low ? $"below {say.Of(a.Reading, low)}" : string.Empty)}{(a.Low is not null && a.High is not null ? " or " : string.Empty)}{(a.High is double high ? $"above {say.Of(a.Reading, high)}" : string.Empty)} for {a.DelayS} s.");

    /// <summary>Numbers in the units the people of the job read; the box itself counts in SI.</summary>
    private sealed record Speech(bool Us)
    {
        public string Temperature(double valueC, int decimals) => Us ? Number(valueC * 1.8 + 32, decimals) + " °F" : Number(valueC, decimals) + " °C";

        public string Difference(double valueK, int decimals) => Us ? Number(valueK * 1.8, Math.Max(decimals, 1)) + " F°" : Number(valueK, decimals) + " K";

        public string Speed(double speedMs) => Us ? Number(speedMs / 0.44704, 0) + " mph" : Number(speedMs, 1) + " m/s";

        public string Pressure(double pressurePa) => Us ? Number(pressurePa / 249.08891, 2) + " in w.g." : Number(pressurePa, 0) + " Pa";

        public string Of(Reading reading, double value) => reading switch
        {
            Reading.InsideTemperature or Reading.SecondTemperature or Reading.UpperTemperature or Reading.OutsideTemperature => Temperature(value, 1),
            Reading.InsideHumidity or Reading.OutsideHumidity => Say($"{value:0.#} %"),
            Reading.Wind => Speed(value),
            Reading.StaticPressure => Pressure(value),
            Reading.Light => Say($"{value:0} W/m²"),
            _ => Say($"{value:0.#}"),
        };

        private static string Number(double value, int decimals) => (Math.Round(value, decimals) + 0.0).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }
}
