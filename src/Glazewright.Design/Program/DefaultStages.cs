using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;

namespace Glazewright.Design.Program;

/// <summary>Actuators and stages written from the plant. Times and distances are common practice unless the plant says otherwise.</summary>
internal sealed class DefaultStages
{
    private const double CoolSpanK = 1.0;
    private const double DeadbandK = 0.5;
    private const double HeatStepK = 0.6;
    private const double BandK = 2; // narrower starts the lag heater less often, wider is calmer (docs/methods/control-program.md)
    private const int ResetS = 900;
    private const int MostFanStages = 8;
    private const int MostHeaterStages = 6;
    private readonly string _house;
    private readonly PlantResult _plant;
    private readonly List<Actuator> _actuators = [];

    public DefaultStages(PlantResult plant)
    {
        _house = plant.House;
        _plant = plant;
        AddActuators();
    }

    public EqList<Actuator> Actuators => _actuators.ToEqList();

    public IEnumerable<string> OfKind(ActuatorKind kind) => _actuators.Where(a => a.Kind == kind).Select(a => a.Id);

    private ExhaustPlant? Exhaust => _plant.Exhaust?.Choice;

    private void AddActuators()
    {
        if (Exhaust is { } exhaust)
        {
            Add("louver", ActuatorKind.Louver, 0, 0, Whole(exhaust.LouverTravelS, 60));
            foreach (FanUnit fan in exhaust.Fans)
            {
                string group = exhaust.Fans.Count(f => f.Entry == fan.Entry) > 1 ? fan.Entry : string.Empty;
                _actuators.Add(new Actuator(fan.Id, ActuatorKind.Fan, 60, 120, 0, group));
            }
        }

        AddIf(_plant.Vents is { RoofM2: > 0 }, "roof-vent", ActuatorKind.RoofVent, 0, 0, Whole(_plant.Vents?.TravelS ?? 0, 180));
        AddIf(_plant.Vents is { SideM2: > 0 }, "side-vent", ActuatorKind.SideVent, 0, 0, Whole(_plant.Vents?.TravelS ?? 0, 180));
        AddIf(_plant.WetWall is not null, "wet-wall-pump", ActuatorKind.WetWallPump, 120, 180, 0);
        AddIf(_plant.Fog is not null, "fog", ActuatorKind.Fog, 0, 0, 0);
        AddIf(_plant.BenchPipeW > 0, "bench-pipe", ActuatorKind.BenchPipe, 120, 120, 0);
        // A burner needs its purge and its flue warm; an electric heater only spares its contactor.
        foreach (HeaterUnit heater in _plant.Heat?.Choice.Heaters ?? [])
        {
            _actuators.Add(new Actuator(
                heater.Id, ActuatorKind.Heater, heater.Electric ? 60 : 180, heater.Electric ? 60 : 180, 0, string.Empty,
                heater.Part is { } part ? Math.Round(part.LeastFraction, 4) : null));
        }

        AddIf(_plant.Curtain is not null, "curtain", ActuatorKind.Curtain, 0, 0, Whole(_plant.Curtain?.TravelS ?? 0, 240));
        AddIf(_plant.SecondCurtain is not null, "second-curtain", ActuatorKind.SecondCurtain, 0, 0, Whole(_plant.SecondCurtain?.TravelS ?? 0, 240));
        AddIf(_plant.Upper is not null, "upper-fans", ActuatorKind.UpperFan, 60, 120, 0);
        AddIf(_plant.Circulation is { Count: > 0 } || _plant.Oscillating is not null, "circulation", ActuatorKind.Circulation, 60, 60, 0);
        AddIf(_plant.Pressure is not null, "pressure-fan", ActuatorKind.PressureFan, 60, 60, 0);
        AddIf(_plant.LampW > 0, "lamps", ActuatorKind.Lamps, 600, 600, 0);
        AddIf(_plant.Dehumidifier is not null, "dehumidifier", ActuatorKind.Dehumidifier, 300, 300, 0);
        AddIf(_plant.Co2 is not null, "co2-valve", ActuatorKind.Co2Valve, 30, 30, 0);
    }

    private static int Whole(double seconds, int otherwise) => seconds > 0.5 ? (int)Math.Round(seconds) : otherwise;

    private void Add(string name, ActuatorKind kind, int minOnS, int minOffS, int travelS) =>
        _actuators.Add(new Actuator($"{_house}/{name}", kind, minOnS, minOffS, travelS, string.Empty));

    private void AddIf(bool has, string name, ActuatorKind kind, int minOnS, int minOffS, int travelS)
    {
        if (has)
        {
            Add(name, kind, minOnS, minOffS, travelS);
        }
    }

    /// <summary>
    /// Vents first where there are any, then louver and fans one by one, then the wet wall's pump. Fog cools last behind a wet wall that does not hold the design day alone; without
    /// one it comes on with as many fans as it was sized for, before the rest.
    /// </summary>
    public EqList<ControlStage> Cooling()
    {
        var stages = new List<(int DelayS, bool Water, EqList<ActuatorSetting> Settings)>();
        string[] vents = [.. OfKind(ActuatorKind.RoofVent), .. OfKind(ActuatorKind.SideVent)];
        if (vents.Length > 0)
        {
            stages.Add((60, false, [.. vents.Select(v => new ActuatorSetting(v, 0.4))]));
            stages.Add((120, false, [.. vents.Select(v => new ActuatorSetting(v, 1))]));
        }

        string[] louver = [.. OfKind(ActuatorKind.Louver)];
        string[] fans = [.. OfKind(ActuatorKind.Fan)];
        string[] pumps = [.. OfKind(ActuatorKind.WetWallPump)];
        FogCooling? cooling = _plant.Fog?.Choice.Cooling;
        string[] fog = pumps.Length == 0 || cooling is not null ? [.. OfKind(ActuatorKind.Fog)] : [];
        // With a pad too small for all fans the water comes on with as many as it serves; the others are for when no water runs.
        int served = _plant.WetWall?.Choice.MostFans ?? fans.Length;
        string[][] groups = [.. Grouped(fans[..served], MostFanStages), .. Grouped(fans[served..], MostFanStages)];
        int running = 0;
        bool fogged = false;
        void Spray()
        {
            stages.AddRange(fog.Select(f => (120, false, (EqList<ActuatorSetting>)[new ActuatorSetting(f, 1)])));
            fogged = true;
        }

        // A pad takes minutes to wet and to dry: water that stops half a kelvin below where it came on swings the house by kelvins (docs/methods/control-program.md).
        void Wet() => stages.AddRange(pumps.Select(pump => (120, true, (EqList<ActuatorSetting>)[new ActuatorSetting(pump, 1)])));

        for (int k = 0; k < groups.Length; k++)
        {
            stages.Add((60 + 60 * k, false, [.. louver.Select(l => new ActuatorSetting(l, 1)), .. groups[k].Select(fan => new ActuatorSetting(fan, 1))]));
            running += groups[k].Length;
            if (running == served)
            {
                Wet();
            }

            if (!fogged && pumps.Length == 0 && cooling is not null && running >= cooling.FansOn)
            {
                Spray();
            }
        }

        if (fans.Length == 0)
        {
            Wet();
        }

        if (!fogged)
        {
            Spray();
        }

        // All stages within little more than a kelvin, so that the last is on before the held band is left; their deadbands overlap.
        double stepK = Math.Clamp(CoolSpanK / Math.Max(1, stages.Count - 1), 0.2, 0.6);
        return stages.Select((s, k) =>
        {
            double on = Math.Round(0.2 + stepK * k, 2);
            return new ControlStage(FormattableString.Invariant($"cool-{k + 1}"), on, Math.Round(s.Water ? Math.Min(on - DeadbandK, 0) : on - DeadbandK, 2), s.DelayS, s.Settings);
        }).ToEqList();
    }

    /// <summary>
    /// Units in stage order, one a stage as long as there are few; many share stages, for with a stage each the last would come on kelvins from the target.
    /// Later stages take the unit more: the first stays small.
    /// </summary>
    private static string[][] Grouped(string[] units, int mostStages)
    {
        int count = Math.Min(units.Length, mostStages);
        return [.. Enumerable.Range(0, count).Select(k => units[(k * units.Length / count)..((k + 1) * units.Length / count)])];
    }

    /// <summary>
    /// The bench pipe leads, then the heaters one by one. What keeps them apart is their threshold, not a wait: air that cools a kelvin a minute would in a wait of three minutes call
    /// them all at once, and they would overshoot together. All low fires come on before the first high one; a burner that modulates is driven by its stage.
    /// </summary>
    public EqList<ControlStage> Heating()
    {
        Dictionary<string, PartFire> part = (_plant.Heat?.Choice.Heaters ?? []).Where(h => h.Part is not null).ToDictionary(h => h.Id, h => h.Part!, StringComparer.Ordinal);
        string[] pipe = [.. OfKind(ActuatorKind.BenchPipe)], heaters = [.. OfKind(ActuatorKind.Heater)];
        ActuatorSetting[][] steps =
        [
            .. pipe.Select(p => (ActuatorSetting[])[new(p, 1)]),
            .. Grouped(heaters, MostHeaterStages).Select(g => (ActuatorSetting[])[.. g.Select(id => new ActuatorSetting(id, part.GetValueOrDefault(id) is { TwoStage: true } low ? Math.Round(low.LeastFraction, 4) : 1))]),
            .. Grouped([.. heaters.Where(id => part.GetValueOrDefault(id) is { TwoStage: true })], MostHeaterStages / 2).Select(g => (ActuatorSetting[])[.. g.Select(id => new ActuatorSetting(id, 1))]),
        ];
        bool Modulates(ActuatorSetting s) => part.GetValueOrDefault(s.Actuator) is { TwoStage: false };
        // A house of on-off heaters is never more than its usual steps from the threshold; low and high fires share that span.
        double stepK = steps.Length > MostHeaterStages ? Math.Round(HeatStepK * MostHeaterStages / steps.Length, 2) : HeatStepK;
        return steps.Select((settings, k) =>
        {
            double on = Math.Round(stepK * k, 2);
            return new ControlStage(
                FormattableString.Invariant($"heat-{k + 1}"), on, Math.Round(on - 0.9, 2), 0, [.. settings], settings.All(Modulates) ? new Modulation(BandK, ResetS, 0.05) : null);
        }).ToEqList();
    }

    /// <summary>Drying by a little outside air: a vent ajar, or the first fan; the heat follows by its own stages.</summary>
    public HumidityControl Humidity()
    {
        string[] vents = [.. OfKind(ActuatorKind.RoofVent)];
        string? fan = OfKind(ActuatorKind.Fan).FirstOrDefault();
        // A dehumidifier dries without throwing warm air out: where there is one, it does it alone.
        string[] dryers = [.. OfKind(ActuatorKind.Dehumidifier)];
        EqList<ActuatorSetting> drying = dryers.Length > 0 ? [.. dryers.Select(x => new ActuatorSetting(x, 1))]
            : vents.Length > 0 ? [.. vents.Select(v => new ActuatorSetting(v, 0.15))]
            : fan is not null ? [.. OfKind(ActuatorKind.Louver).Select(l => new ActuatorSetting(l, 1)), new ActuatorSetting(fan, 1)]
            : [];
        EqList<ActuatorSetting> fogging = OfKind(ActuatorKind.Fog).Select(f => new ActuatorSetting(f, 1)).ToEqList();

        // A single-speed fan changes the air in three minutes: in cold air it chills the house more than it dries it. There the louver a third open lets out as much as the heaters can
        // warm; twenty minutes at a time, for each turn is a stroke of its motor (docs/methods/control-program.md has what it brings).
        string[] louver = [.. OfKind(ActuatorKind.Louver)];
        bool inTurns = dryers.Length == 0 && vents.Length == 0 && fan is not null && louver.Length > 0;
        return new HumidityControl(
            5, 4, drying, vents.Length > 0 ? -5 : inTurns ? 8 : 2, 6, 4, 100 * FogSizing.DampestFraction, fogging, 40, 20, dryers.Length > 0 ? null : inTurns ? 0.4 : 0,
            inTurns ? new PurgeRule(1200, 60, 0.2, [.. louver.Select(l => new ActuatorSetting(l, 0.35))]) : null);
    }

    // Lamps may warm the house past its target with the curtain drawn; without them a drawn curtain that opens is heat lost to a heater's last degree.
    private WarmGap ForHeat => new(_plant.LampW > 0 ? 0.3 : 0, 0.2, 0.5);

    public CurtainControl? Curtain() => OfKind(ActuatorKind.Curtain).FirstOrDefault() is { } id
        // Where a cloth of its own shades, this one keeps to the nights.
        ? new CurtainControl(id, 15, 12, 700, 1.0, _plant.SecondCurtain is { Purpose: CurtainPurpose.Shade } ? 0 : 0.6, 0.04, 0.05, 120, true, Warm: ForHeat)
        : null;

    /// <summary>
    /// The second curtain by its purpose. Every cloth is worth drawing in a really cold night, as a second stage below 5 °C; shade by strong light when cooling has begun, sooner than a
    /// cloth meant for the nights; a blackout keeps its hours (common practice).
    /// </summary>
    public CurtainControl? SecondCurtain()
    {
        if (_plant.SecondCurtain is not { } cloth || OfKind(ActuatorKind.SecondCurtain).FirstOrDefault() is not { } id)
        {
            return null;
        }

        return cloth.Purpose switch
        {
            CurtainPurpose.Shade => new CurtainControl(id, 15, 5, 600, 0.5, 0.95, 0.04, 0.05, 120, true),
            CurtainPurpose.Blackout => new CurtainControl(id, 15, 5, 700, 1, 0, 0.04, 0.05, 120, true, new DarkHours(cloth.DarkFrom!, cloth.DarkTo!), ForHeat),
            _ => new CurtainControl(id, 15, 5, 700, 1, 0, 0.04, 0.05, 120, true, Warm: ForHeat),
        };
    }

    /// <summary>Held back in cold air: our choice; a fan of the usual size changes the air in three to four minutes.</summary>
    public ColdAirRule? ColdAir() =>
        Exhaust is null ? null : new ColdAirRule(2, 10, 0.8, OfKind(ActuatorKind.RoofVent).Concat(OfKind(ActuatorKind.SideVent)).Any() ? 3 : 1, 15, 85);

    /// <summary>Dosing from 100 W/m² outside (common practice: while assimilation pays), not while fans or vents are asked for.</summary>
    public Co2Control? Co2() => _plant.Co2 is { } gas && OfKind(ActuatorKind.Co2Valve).FirstOrDefault() is { } valve
        ? new Co2Control(valve, gas.TargetPpm, 60, 100, [.. OfKind(ActuatorKind.Fan), .. OfKind(ActuatorKind.RoofVent), .. OfKind(ActuatorKind.SideVent)])
        : null;

    /// <summary>
    /// Vents in wind and rain (common practice): ajar from about 18 mph, shut from about 34 mph, long before what the frame is proved for, for a vent in a gust is a sail on a long lever; a roof vent
    /// ajar in rain, a side vent under its eave not held back by it.
    /// </summary>
    public EqList<WeatherLimit>? Weather()
    {
        EqList<WeatherLimit> limits =
        [
            .. OfKind(ActuatorKind.RoofVent).Select(v => new WeatherLimit([v], 8, 0.3, 15, 0.1, 600)),
            .. OfKind(ActuatorKind.SideVent).Select(v => new WeatherLimit([v], 8, 0.3, 15, 1, 600)),
        ];
        return limits.Count == 0 ? null : limits;
    }

    /// <summary>From 5 K over outside (common practice: before the cloth warms the crop), while half of the curtain or more is drawn.</summary>
    public UpperAirControl? UpperAir() => OfKind(ActuatorKind.UpperFan).FirstOrDefault() is { } fans && OfKind(ActuatorKind.Curtain).Any()
        ? new UpperAirControl(fans, 5, 2, 0.5)
        : null;

    /// <summary>Suction that says something is stuck: 60 Pa (common practice: from about there folded panels and doors pull), or a quarter above what the fans themselves draw with everything open.</summary>
    public double SuctionLimitPa => Math.Max(60, 5 * Math.Ceiling(1.25 * (Exhaust?.Wet.Select(w => w.StaticPa).DefaultIfEmpty(0).Max() ?? 0) / 5));

    public LouverGuard? Guard() => Exhaust is null ? null : new LouverGuard($"{_house}/louver", 1, 30, SuctionLimitPa, 600);

    /// <summary>
    /// Every fan needs the louver open and proved; the pump needs a fan; the filter fan is another mode than exhaust; vents and fans never draw against each other; and no heater burns while the house is under suction.
    /// </summary>
    public EqList<Interlock> Interlocks()
    {
        var list = new List<Interlock>();
        string[] fans = [.. OfKind(ActuatorKind.Fan)];
        string[] heat = [.. OfKind(ActuatorKind.Heater)];
        foreach (string fan in fans)
        {
            list.AddRange(OfKind(ActuatorKind.Louver).Select(l => new Interlock.OnlyWith(fan, l)));
            list.Add(new Interlock.NeedsLouverProof(fan));
            list.AddRange(heat.Select(h => new Interlock.NotBoth(h, fan)));
            list.AddRange(OfKind(ActuatorKind.PressureFan).Select(p => new Interlock.NotBoth(fan, p)));
            list.AddRange(OfKind(ActuatorKind.Dehumidifier).Select(x => new Interlock.NotBoth(fan, x)));
            list.AddRange(OfKind(ActuatorKind.RoofVent).Concat(OfKind(ActuatorKind.SideVent)).Select(v => new Interlock.NotBoth(fan, v)));
        }

        foreach (string upper in OfKind(ActuatorKind.UpperFan))
        {
            list.AddRange(heat.Select(h => new Interlock.NotBoth(h, upper)));
            list.AddRange(OfKind(ActuatorKind.PressureFan).Select(p => new Interlock.NotBoth(upper, p)));
        }

        if (fans.Length > 0)
        {
            list.AddRange(OfKind(ActuatorKind.WetWallPump).Select(p => new Interlock.OnlyWithAny(p, fans.ToEqList())));
            if (_plant.WetWall?.Choice.MostFans is { } most)
            {
                list.AddRange(OfKind(ActuatorKind.WetWallPump).Select(p => new Interlock.OnlySoMany(p, fans.ToEqList(), most)));
            }
        }

        return list.ToEqList();
    }

    public EqList<BackgroundRule> Background()
    {
        EqList<string> fans = OfKind(ActuatorKind.Fan).ToEqList();
        EqList<string> open = [.. fans, .. OfKind(ActuatorKind.UpperFan), .. OfKind(ActuatorKind.RoofVent), .. OfKind(ActuatorKind.SideVent)];
        return
        [
            .. OfKind(ActuatorKind.Circulation).Select(c => new BackgroundRule(c, 1, fans, 0)),
            .. OfKind(ActuatorKind.PressureFan).Select(p => new BackgroundRule(p, 1, open, _plant.Pressure?.FailsAtWindMs ?? 0)),
        ];
    }
}
