using Glazewright.Design.Contracts;
using static Glazewright.Design.Program.ProgramMeasure;

namespace Glazewright.Design.Program;

/// <summary>Everything in a program that a job may change. Interlocks, the louver's guard and what drives what are not: for those the whole program is given as a file.</summary>
public static class ProgramParts
{
    /// <summary>The parts, in the order they are read in.</summary>
    public static IReadOnlyList<ProgramPart> All { get; } =
    [
        Stages("cooling", "Cooling stages", "Cooling stages that are changed, each by the equipment it brings on.", "fan-2", "above", d => d.Cooling, (d, s) => d with { Cooling = s }),
        Stages("heating", "Heating stages", "Heating stages that are changed, each by the equipment it brings on.", "heater-1", "below", d => d.Heating, (d, s) => d with { Heating = s },
            Way<ControlStage>("band", "a burner that modulates goes from nothing to all over", Difference, "0.5 K", "30 K", s => s.Modulates?.BandK, (s, v) => s with { Modulates = s.Modulates! with { BandK = v } }),
            Way<ControlStage>("reset", "and adds as much again for every such time that the distance stays", Time, "1 min", "24 h", s => s.Modulates?.ResetS, (s, v) => s with { Modulates = s.Modulates! with { ResetS = (int)v } }),
            Way<ControlStage>("deadband", "smaller changes of its fire are left alone", Share, "0 %", "50 %", s => s.Modulates?.DeadbandFraction, (s, v) => s with { Modulates = s.Modulates! with { DeadbandFraction = v } })),
        new ProgramPart<ProgramPeriod>(
            "periods", "Periods", "Periods of the crop schedule whose thresholds are changed; their targets stand in the schedule.", "spring",
            d => d.Periods.Select(p => (p.Id, p)),
            (d, old, p) => d with { Periods = d.Periods.Select(x => x.Id == old.Id ? p : x).ToEqList() },
            Way<ProgramPeriod>("coolAbove", "cooling starts this far above the target", Difference, "0 K", "20 K", p => p.CoolAboveK, (p, v) => p with { CoolAboveK = v }),
            Way<ProgramPeriod>("heatBelow", "heating starts this far below the target", Difference, "0 K", "20 K", p => p.HeatBelowK, (p, v) => p with { HeatBelowK = v })),
        new ProgramPart<HumidityControl>(
            "humidity", "Humidity", "Drying and fog.", "", d => [("", d.Humidity)], (d, _, h) => d with { Humidity = h },
            Way<HumidityControl>("dryAbove", "drying starts this far above the humidity target", Humidity, "0 %", "50 %", h => Dries(h, h.DryAbovePercent), (h, v) => h with { DryAbovePercent = v }),
            Way<HumidityControl>("dryDeadband", "and stops this far below where it started", Humidity, "0 %", "50 %", h => Dries(h, h.DryDeadbandPercent), (h, v) => h with { DryDeadbandPercent = v }),
            Way<HumidityControl>("dryOnlyAboveOutside", "no drying by outside air that is colder", Temperature, "-40 C", "30 C", h => Dries(h, h.DryOnlyAboveOutsideC), (h, v) => h with { DryOnlyAboveOutsideC = v }),
            Way<HumidityControl>("fogBelow", "fog starts this far below the target", Humidity, "0 %", "80 %", h => Fogs(h, h.FogBelowPercent), (h, v) => h with { FogBelowPercent = v }),
            Way<HumidityControl>("fogDeadband", "and stops this far above where it started", Humidity, "0 %", "50 %", h => Fogs(h, h.FogDeadbandPercent), (h, v) => h with { FogDeadbandPercent = v }),
            Way<HumidityControl>("fogCeiling", "never fogs above this humidity", Humidity, "0 %", "98 %", h => Fogs(h, h.FogCeilingPercent), (h, v) => h with { FogCeilingPercent = v }),
            Way<HumidityControl>("fogOn", "pulse of fog", Time, "0 s", "1 h", h => Fogs(h, h.FogOnS), (h, v) => h with { FogOnS = (int)v }),
            Way<HumidityControl>("fogOff", "pause between pulses", Time, "0 s", "1 h", h => Fogs(h, h.FogOffS), (h, v) => h with { FogOffS = (int)v }),
            Way<HumidityControl>("dryHeat", "the heating threshold rises by this while outside air dries", Difference, "0 K", "10 K", h => h.DryHeatK, (h, v) => h with { DryHeatK = v }),
            Way<HumidityControl>("purge", "in colder air outside it dries in turns: wet air goes out for so long", Time, "0 s", "1 h", h => h.Purge?.OnS, (h, v) => h with { Purge = h.Purge! with { OnS = (int)v } }),
            Way<HumidityControl>("purgePause", "pause for heating before the next turn", Time, "1 min", "24 h", h => h.Purge?.PauseS, (h, v) => h with { Purge = h.Purge! with { PauseS = (int)v } }),
            Way<HumidityControl>("purgeLeast", "a turn ends early with air this far below the heating threshold", Difference, "0 K", "10 K", h => h.Purge?.LeastBelowK, (h, v) => h with { Purge = h.Purge! with { LeastBelowK = v } })),
        Curtain("curtain", "Curtain", "When the curtain is drawn and how it opens.", d => d.Curtain, (d, c) => d with { Curtain = c }),
        Curtain("secondCurtain", "Second curtain", "The same for a second curtain that moves by itself.", d => d.SecondCurtain, (d, c) => d with { SecondCurtain = c }),
        new ProgramPart<ColdAirRule>(
            "coldAir", "In cold and damp air", "How cooling holds back while the outside air is cold, and water while it is damp.", "", d => One(d.ColdAir), (d, _, c) => d with { ColdAir = c },
            Way<ColdAirRule>("from", "the cooling threshold starts to rise with air this far below the target", Difference, "0 K", "40 K", c => c.FromK, (c, v) => c with { FromK = v }),
            Way<ColdAirRule>("full", "and has risen in full with air this far below", Difference, "0 K", "60 K", c => c.FullK, (c, v) => c with { FullK = v }),
            Way<ColdAirRule>("raise", "by this much", Difference, "0 K", "10 K", c => c.RaiseK, (c, v) => c with { RaiseK = v }),
            Way<ColdAirRule>("stages", "cooling stages that may come on beyond that", Count, "0", "64", c => c.StagesWhenCold, (c, v) => c with { StagesWhenCold = (int)v }),
            Way<ColdAirRule>("noWaterBelow", "no water on the wet wall with colder air outside", Temperature, "-20 C", "30 C", c => c.NoWaterBelowC, (c, v) => c with { NoWaterBelowC = v }),
            Way<ColdAirRule>("noWaterAbove", "no water on the wet wall with damper air outside", Humidity, "30 %", "100 %", c => c.NoWaterAbovePercent, (c, v) => c with { NoWaterAbovePercent = v })),
        new ProgramPart<WeatherLimit>(
            "weather", "Vents in wind and rain", "Vents whose limits in wind and rain are changed; a hard-wired switch stays beside them.", "roof-vent",
            d => (d.Weather ?? []).Select(w => (StageNames.Local(w.Actuators[0], d.House), w)),
            (d, old, w) => d with { Weather = d.Weather!.Select(x => x.Equals(old) ? w : x).ToEqList() },
            Way<WeatherLimit>("wind", "from this wind it opens only so far", Wind, "1 m/s", "50 m/s", w => w.WindMs, (w, v) => w with { WindMs = v }),
            Way<WeatherLimit>("inWind", "so far in wind", Share, "0 %", "100 %", w => w.InWindFraction, (w, v) => w with { InWindFraction = v }),
            Way<WeatherLimit>("storm", "from this wind it shuts", Wind, "1 m/s", "60 m/s", w => w.StormMs, (w, v) => w with { StormMs = v }),
            Way<WeatherLimit>("inRain", "so far in rain", Share, "0 %", "100 %", w => w.InRainFraction, (w, v) => w with { InRainFraction = v }),
            Way<WeatherLimit>("calm", "calmer or dry for this long before it opens again", Time, "0 s", "24 h", w => w.CalmS, (w, v) => w with { CalmS = (int)v })),
        new ProgramPart<LampControl>(
            "lamps", "Lamps", "Lamps; their hours stand in the crop schedule.", "", d => One(d.Lamps), (d, _, l) => d with { Lamps = l },
            Way<LampControl>("offAboveLight", "off above this light outside", Light, "0 W/m2", "1500 W/m2", l => l.OffAboveLightWm2, (l, v) => l with { OffAboveLightWm2 = v })),
        new ProgramPart<Co2Control>(
            "co2", "Carbon dioxide", "Dosing; its target stands with the equipment.", "", d => One(d.Co2), (d, _, c) => d with { Co2 = c },
            Way<Co2Control>("deadband", "dosing starts this far below its target", Gas, "0 ppm", "500 ppm", c => c.DeadbandPpm, (c, v) => c with { DeadbandPpm = v }),
            Way<Co2Control>("onlyAboveLight", "only above this light outside", Light, "0 W/m2", "1500 W/m2", c => c.OnlyAboveLightWm2, (c, v) => c with { OnlyAboveLightWm2 = v })),
        new ProgramPart<UpperAirControl>(
            "upperFans", "Upper fans", "Fans above the curtain.", "", d => One(d.UpperAir), (d, _, u) => d with { UpperAir = u },
            Way<UpperAirControl>("onAboveOutside", "on when the air above the curtain is this much warmer than outside", Difference, "1 K", "30 K", u => u.OnAboveOutsideK, (u, v) => u with { OnAboveOutsideK = v }),
            Way<UpperAirControl>("deadband", "off when that has fallen by this", Difference, "0 K", "20 K", u => u.DeadbandK, (u, v) => u with { DeadbandK = v }),
            Way<UpperAirControl>("drawn", "only while the curtain is drawn this far", Share, "5 %", "100 %", u => u.DrawnFraction, (u, v) => u with { DrawnFraction = v })),
        new ProgramPart<Actuator>(
            "motors", "Least times and travel", "Equipment whose least times or travel are changed.", "fan-1",
            d => d.Actuators.Select(a => (StageNames.Local(a.Id, d.House), a)),
            (d, old, a) => d with { Actuators = d.Actuators.Select(x => x.Id == old.Id ? a : x).ToEqList() },
            Way<Actuator>("minOn", "least time on", Time, "0 s", "24 h", a => Switches(a, a.MinOnS), (a, v) => a with { MinOnS = (int)v }),
            Way<Actuator>("minOff", "least time off", Time, "0 s", "24 h", a => Switches(a, a.MinOffS), (a, v) => a with { MinOffS = (int)v }),
            Way<Actuator>("travel", "time of a full travel, as measured", Time, "1 s", "1 h", a => ProgramCompiler.Moves(a.Kind) ? a.TravelS : null, (a, v) => a with { TravelS = (int)v })),
        new ProgramPart<Sensor>(
            "sensors", "Sensors", "Sensors that were compared with a reference: what the control box adds to what each reads.", "crop-temperature",
            d => (d.Sensors ?? []).Select(x => (StageNames.Local(x.Id, d.House), x)),
            (d, old, x) => d with { Sensors = d.Sensors!.Select(y => y.Id == old.Id ? x : y).ToEqList() },
            Way<Sensor>("correction", "added to the temperature it reads", Difference, "-5 K", "5 K", x => x.Quantity == SensorQuantity.Temperature ? x.CorrectionValue : null, (x, v) => x with { CorrectionValue = v }),
            Way<Sensor>("humidityCorrection", "added to the humidity it reads", Humidity, "-20 %", "20 %", x => x.Quantity == SensorQuantity.Humidity ? x.CorrectionValue : null, (x, v) => x with { CorrectionValue = v })),
        new ProgramPart<ProgramDocument>(
            "alarms", "Alarms", "Limits of the alarms, and how long before each sounds.", "", d => [("", d)], (_, _, d) => d,
            Alarm("tooColdBelow", "too cold below", Temperature, "-10 C", "50 C", "too-cold", a => a.Low, (a, v) => a with { Low = v }),
            Alarm("tooColdDelay", "too cold for", Time, "0 s", "24 h", "too-cold", a => a.DelayS, (a, v) => a with { DelayS = (int)v }),
            Alarm("tooHotAbove", "too hot above", Temperature, "0 C", "60 C", "too-hot", a => a.High, (a, v) => a with { High = v }),
            Alarm("tooHotDelay", "too hot for", Time, "0 s", "24 h", "too-hot", a => a.DelayS, (a, v) => a with { DelayS = (int)v }),
            Alarm("tooWetAbove", "too wet above", Humidity, "30 %", "100 %", "too-wet", a => a.High, (a, v) => a with { High = v }),
            Alarm("tooWetDelay", "too wet for", Time, "0 s", "24 h", "too-wet", a => a.DelayS, (a, v) => a with { DelayS = (int)v }),
            Alarm("suctionAbove", "suction too strong above", Suction, "10 Pa", "250 Pa", "suction-too-strong", a => a.High, (a, v) => a with { High = v }),
            Alarm("suctionDelay", "suction too strong for", Time, "0 s", "24 h", "suction-too-strong", a => a.DelayS, (a, v) => a with { DelayS = (int)v })),
    ];

    /// <summary>A part by its key.</summary>
    /// <param name="key">Its key.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such part.</exception>
    public static ProgramPart Of(string key) => All.FirstOrDefault(p => p.Key == key) ?? throw new ArgumentOutOfRangeException(nameof(key), key, "No such part of the program.");

    private static ProgramPart<T>.Way Way<T>(string key, string words, ProgramMeasure measure, string least, string most, Func<T, double?> of, Func<T, double, T> with)
        where T : class => new(new ProgramField(key, words, measure, least, most), of, with);

    private static ProgramPart<ControlStage> Stages(
        string key, string title, string doc, string example, string way, Func<ProgramDocument, EqList<ControlStage>> of, Func<ProgramDocument, EqList<ControlStage>, ProgramDocument> with,
        params ProgramPart<ControlStage>.Way[] more) => new(
        key, title, doc, example,
        d => StageNames.Of(of(d), d.House).Zip(of(d)),
        (d, old, s) => with(d, of(d).Select(x => x.Id == old.Id ? s : x).ToEqList()),
        [
            Way<ControlStage>("onAt", $"comes on this far {way} the threshold", Difference, "0 K", "30 K", s => s.OnAtK, (s, v) => s with { OnAtK = v }),
            Way<ControlStage>("offAt", $"goes off at this distance {way} it", Difference, "-10 K", "30 K", s => s.OffAtK, (s, v) => s with { OffAtK = v }),
            Way<ControlStage>("delay", "how long past it before it acts", Time, "0 s", "24 h", s => s.DelayS, (s, v) => s with { DelayS = (int)v }),
            .. more,
        ]);

    private static ProgramPart<CurtainControl> Curtain(string key, string title, string doc, Func<ProgramDocument, CurtainControl?> of, Func<ProgramDocument, CurtainControl, ProgramDocument> with) => new(
        key, title, doc, "", d => One(of(d)), (d, _, c) => with(d, c),
        Way<CurtainControl>("drawBelowLight", "drawn for warmth in less light outside", Light, "0 W/m2", "1500 W/m2", c => c.DrawBelowLightWm2, (c, v) => c with { DrawBelowLightWm2 = v }),
        Way<CurtainControl>("drawBelowOutside", "and in colder air outside", Temperature, "-40 C", "40 C", c => c.DrawBelowOutsideC, (c, v) => c with { DrawBelowOutsideC = v }),
        Way<CurtainControl>("shadeAboveLight", "drawn for shade in more light outside", Light, "0 W/m2", "1500 W/m2", c => c.ShadeAboveLightWm2, (c, v) => c with { ShadeAboveLightWm2 = v }),
        Way<CurtainControl>("shadeAboveInside", "and inside this far past the cooling threshold", Difference, "-10 K", "20 K", c => c.ShadeAboveInsideK, (c, v) => c with { ShadeAboveInsideK = v }),
        Way<CurtainControl>("shade", "how far it is drawn for shade", Share, "0 %", "100 %", c => c.ShadeFraction, (c, v) => c with { ShadeFraction = v }),
        Way<CurtainControl>("gap", "gap left while drying at night", Share, "0 %", "50 %", c => c.GapFraction, (c, v) => c with { GapFraction = v }),
        Way<CurtainControl>("openStep", "opens in steps of", Share, "0.1 %", "100 %", c => c.OpenStepFraction, (c, v) => c with { OpenStepFraction = v }),
        Way<CurtainControl>("openWait", "wait between the steps", Time, "0 s", "1 h", c => c.OpenStepS, (c, v) => c with { OpenStepS = (int)v }),
        Way<CurtainControl>("warmGap", "drawn at night it opens at most this far to let heat go", Share, "0 %", "100 %", c => c.Warm?.MostFraction, (c, v) => c with { Warm = c.Warm! with { MostFraction = v } }),
        Way<CurtainControl>("warmGapPast", "heat is let go so from this far past the cooling threshold", Difference, "0 K", "20 K", c => c.Warm?.PastK, (c, v) => c with { Warm = c.Warm! with { PastK = v } }));

    private static ProgramPart<ProgramDocument>.Way Alarm(string key, string words, ProgramMeasure measure, string least, string most, string id, Func<Alarm, double?> of, Func<Alarm, double, Alarm> with) =>
        Way<ProgramDocument>(
            key, words, measure, least, most,
            d => d.Alarms.FirstOrDefault(a => a.Id == id) is { } alarm ? of(alarm) : null,
            (d, v) => d with { Alarms = d.Alarms.Select(a => a.Id == id ? with(a, v) : a).ToEqList() });

    private static IEnumerable<(string Name, T Thing)> One<T>(T? thing)
        where T : class => thing is null ? [] : [("", thing)];

    private static double? Dries(HumidityControl humidity, double value) => humidity.Drying.Count > 0 ? value : null;

    private static double? Fogs(HumidityControl humidity, double value) => humidity.Fogging.Count > 0 ? value : null;

    private static double? Switches(Actuator actuator, double value) => ProgramCompiler.Moves(actuator.Kind) ? null : value;
}
