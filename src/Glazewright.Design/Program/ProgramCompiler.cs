using System.Numerics;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Program;

/// <summary>What came of compiling a program.</summary>
public abstract record ProgramCompilation
{
    private ProgramCompilation()
    {
    }

    /// <summary>It can run.</summary>
    /// <param name="Program">The compiled program.</param>
    public sealed record Ready(CompiledProgram Program) : ProgramCompilation;

    /// <summary>It cannot; every fault with its place in the document.</summary>
    /// <param name="Faults">The faults.</param>
    public sealed record Faulty(EqList<Fault> Faults) : ProgramCompilation;
}

/// <summary>From the document to flat arrays, or to its faults.</summary>
public static class ProgramCompiler
{
    /// <summary>Most actuators one program can have.</summary>
    public const int MostActuators = 64;

    /// <summary>Checks and compiles.</summary>
    /// <param name="document">The program.</param>
    /// <returns>Ready to run, or all faults at once.</returns>
    public static ProgramCompilation Compile(ProgramDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        EqList<Fault> faults = ProgramChecks.Of(document);
        return faults.Count > 0 ? new ProgramCompilation.Faulty(faults) : new ProgramCompilation.Ready(Build(document));
    }

    private static CompiledProgram Build(ProgramDocument d)
    {
        var index = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (Actuator a in d.Actuators)
        {
            index.Add(a.Id, index.Count);
        }

        int n = index.Count;
        var partners = new ulong[n];
        var losers = new ulong[n];
        var owners = new List<int>();
        var needs = new List<ulong>();
        var limits = new List<CompiledProgram.LimitPart>();
        ulong proof = 0;
        foreach (Interlock interlock in d.Interlocks)
        {
            switch (interlock)
            {
                case Interlock.NotBoth both:
                    partners[index[both.Winner]] |= 1UL << index[both.Loser];
                    partners[index[both.Loser]] |= 1UL << index[both.Winner];
                    losers[index[both.Winner]] |= 1UL << index[both.Loser];
                    break;
                case Interlock.OnlyWith with:
                    owners.Add(index[with.Actuator]);
                    needs.Add(1UL << index[with.Needs]);
                    break;
                case Interlock.OnlyWithAny any:
                    owners.Add(index[any.Actuator]);
                    needs.Add(Mask(any.NeedsAny, index));
                    break;
                case Interlock.OnlySoMany few:
                    limits.Add(new CompiledProgram.LimitPart(index[few.Actuator], Mask(few.Counted, index), few.Most));
                    break;
                case Interlock.NeedsLouverProof needsProof:
                    proof |= 1UL << index[needsProof.Actuator];
                    break;
            }
        }

        int[] byOwner = [.. Enumerable.Range(0, owners.Count).OrderBy(c => owners[c])];
        int heatAt = CompiledProgram.ColumnOf(n) * CompiledProgram.ActuatorParts + d.Cooling.Count * CompiledProgram.PerStage;
        int alarmAt = heatAt + d.Heating.Count * CompiledProgram.PerStage;
        HumidityControl h = d.Humidity;
        return new CompiledProgram
        {
            House = d.House,
            Actuators = d.Actuators,
            AlarmIds = [.. d.Alarms.Select(a => a.Id), "no-temperature-inside", "temperature-inside-stuck", "thermometers-disagree"],
            PeriodIds = d.Periods.Select(p => p.Id).ToEqList(),
            Kinds = [.. d.Actuators.Select(a => a.Kind)],
            MinOnMs = [.. d.Actuators.Select(a => a.MinOnS * 1000)],
            MinOffMs = [.. d.Actuators.Select(a => a.MinOffS * 1000)],
            TravelMs = [.. d.Actuators.Select(a => a.TravelS * 1000)],
            FirstCoolOn = d.Cooling.Select(s => Centi(s.OnAtK)).DefaultIfEmpty(int.MaxValue).Min(),
            FirstHeatOn = d.Heating.Select(s => Centi(s.OnAtK)).DefaultIfEmpty(int.MaxValue).Min(),
            CoolOn = [.. d.Cooling.Select(s => Centi(s.OnAtK))],
            CoolOff = [.. d.Cooling.Select(s => Centi(s.OffAtK))],
            CoolDelayMs = [.. d.Cooling.Select(s => s.DelayS * 1000)],
            CoolSettings = [.. d.Cooling.Select(s => SettingsOf(s.Settings, index))],
            HeatOn = [.. d.Heating.Select(s => Centi(s.OnAtK))],
            HeatOff = [.. d.Heating.Select(s => Centi(s.OffAtK))],
            HeatDelayMs = [.. d.Heating.Select(s => s.DelayS * 1000)],
            HeatSettings = [.. d.Heating.Select(s => SettingsOf(s.Settings, index))],
            HeatModulation = [.. d.Heating.Select(s => s.Modulates is { } m
                ? new CompiledProgram.ModulationPart(Math.Max(1, Centi(m.BandK)), m.ResetS * 1000, LevelOf(m.DeadbandFraction), (Centi(s.OnAtK) + Centi(s.OffAtK)) / 2)
                : default)],
            Modulates = d.Heating.Any(s => s.Modulates is not null),
            LeastMask = MaskOf(d, a => a.LeastFraction is not null),
            LeastLevel = [.. d.Actuators.Select(a => Math.Max(1, LevelOf(a.LeastFraction ?? 0)))],
            Order = [.. InterlockChecks.Order(d)!.Select(id => index[id])],
            Partners = partners,
            Losers = losers,
            NeedOwner = [.. byOwner.Select(c => owners[c])],
            NeedMask = [.. byOwner.Select(c => needs[c])],
            NeedStart = [.. Enumerable.Range(0, n + 1).Select(i => owners.Count(o => o < i))],
            OwnerMask = owners.Aggregate(0UL, (all, i) => all | 1UL << i),
            WinnerMask = Enumerable.Range(0, n).Aggregate(0UL, (all, i) => losers[i] == 0 ? all : all | 1UL << i),
            Limits = [.. limits],
            HeatAt = heatAt,
            AlarmAt = alarmAt,
            ExtrasAt = alarmAt + (d.Alarms.Count + CompiledProgram.OwnAlarms) * CompiledProgram.PerAlarm,
            NeededMask = needs.Aggregate(0UL, (all, mask) => all | mask),
            MovingMask = MaskOf(d, a => Moves(a.Kind)),
            FogMask = MaskOf(d, a => a.Kind == ActuatorKind.Fog),
            PumpMask = MaskOf(d, a => a.Kind == ActuatorKind.WetWallPump),
            Cold = d.ColdAir is { } cold
                ? new CompiledProgram.ColdPart(Centi(cold.FromK), Centi(cold.FullK), Centi(cold.RaiseK), cold.StagesWhenCold, Centi(cold.NoWaterBelowC), cold.NoWaterAbovePercent is double damp ? (int)Math.Round(10 * damp) : int.MaxValue)
                : new CompiledProgram.ColdPart(0, int.MaxValue, 0, int.MaxValue, int.MinValue, int.MaxValue),
            ProofMask = d.Guard is null ? 0 : proof,
            FansWithoutProof = d.Guard?.FansWithoutProof ?? 0,
            GuardLouver = d.Guard is { } g ? index[g.Louver] : -1,
            GuardGraceMs = d.Guard is { } grace ? (grace.GraceS + d.Actuators[index[grace.Louver]].TravelS) * 1000 : 0,
            GuardLimit = d.Guard is { } limit ? (int)Math.Round(limit.LimitPa * 10) : int.MaxValue,
            GuardLockMs = (d.Guard?.LockS ?? 0) * 1000,
            RotationMasks = [.. d.Actuators.Where(a => a.RotationGroup.Length > 0).Select(a => a.RotationGroup).Distinct()
                .Select(group => MaskOf(d, a => a.RotationGroup == group)).Where(mask => BitOperations.PopCount(mask) > 1)],
            Background = [.. (d.Background ?? []).Select(b => new CompiledProgram.BackgroundPart(
                index[b.Actuator], LevelOf(b.LevelFraction), Mask(b.RestsWith, index), (int)Math.Round(b.RestsAboveWindMs * 100)))],
            PeriodOfDay = PeriodsByDay(d),
            Periods = [.. d.Periods.Select(PeriodOf)],
            Humidity = new CompiledProgram.HumidityPart(
                PerMille(h.DryAbovePercent), PerMille(h.DryDeadbandPercent), SettingsOf(h.Drying, index), Centi(h.DryOnlyAboveOutsideC),
                DriesByOutsideAir(d),
                PerMille(h.FogBelowPercent), PerMille(h.FogDeadbandPercent), PerMille(h.FogCeilingPercent), SettingsOf(h.Fogging, index), h.FogOnS * 1000, h.FogOffS * 1000,
                Centi(h.DryHeatK ?? 0), (h.Purge?.OnS ?? 0) * 1000, ((h.Purge?.OnS ?? 0) + (h.Purge?.PauseS ?? 0)) * 1000, Centi(h.Purge?.LeastBelowK ?? 0), SettingsOf(h.Purge?.Settings ?? [], index)),
            Curtain = CurtainOf(d.Curtain, index),
            SecondCurtain = CurtainOf(d.SecondCurtain, index),
            Lamps = d.Lamps is { } l
                ? new CompiledProgram.LampPart(index[l.Actuator], [.. l.HoursByPeriod.Select(x => (int)Math.Round(x * 60))], (int)Math.Round(l.OffAboveLightWm2))
                : null,
            Co2 = d.Co2 is { } gas
                ? new CompiledProgram.Co2Part(
                    index[gas.Actuator], (int)Math.Round(gas.TargetPpm), (int)Math.Round(gas.DeadbandPpm), (int)Math.Round(gas.OnlyAboveLightWm2), Mask(gas.RestsWith, index))
                : null,
            UpperAir = d.UpperAir is { } upper
                ? new CompiledProgram.UpperAirPart(index[upper.Actuator], Centi(upper.OnAboveOutsideK), Centi(upper.DeadbandK), LevelOf(upper.DrawnFraction))
                : null,
            Weather = [.. (d.Weather ?? []).Select(w => new CompiledProgram.WeatherPart(
                Mask(w.Actuators, index), Centi(w.WindMs), LevelOf(w.InWindFraction), Centi(w.StormMs), LevelOf(w.InRainFraction), w.CalmS * 1000))],
            Alarms = [.. d.Alarms.Select(AlarmOf)],
            Wiring = SensorWiring.Of(d),
            FewestReadings = d.Alarms.Select(a => (int)a.Reading).Append((int)Reading.Sunset).Max() + 1,
        };
    }

    internal static bool DriesByOutsideAir(ProgramDocument d) => d.Humidity.Drying.Any(s => d.Actuators.Any(
        a => a.Id == s.Actuator && a.Kind is ActuatorKind.Fan or ActuatorKind.RoofVent or ActuatorKind.SideVent or ActuatorKind.Louver));

    internal static bool Moves(ActuatorKind kind) =>
        kind is ActuatorKind.Louver or ActuatorKind.Curtain or ActuatorKind.SecondCurtain or ActuatorKind.RoofVent or ActuatorKind.SideVent;

    /// <summary>How many units of the reading make one of the unit people write (K, %, m/s, Pa).</summary>
    internal static double PerUnit(Reading reading) => reading switch
    {
        Reading.InsideTemperature or Reading.SecondTemperature or Reading.UpperTemperature or Reading.OutsideTemperature or Reading.Wind => 100,
        Reading.InsideHumidity or Reading.OutsideHumidity or Reading.StaticPressure => 10,
        _ => 1,
    };

    private static int Centi(double x) => (int)Math.Round(x * 100);

    private static int PerMille(double percent) => (int)Math.Round(percent * 10);

    private static int LevelOf(double fraction) => (int)Math.Round(fraction * 10_000);

    private static ulong Mask(EqList<string> ids, Dictionary<string, int> index)
    {
        ulong mask = 0;
        foreach (string id in ids)
        {
            mask |= 1UL << index[id];
        }

        return mask;
    }

    private static ulong MaskOf(ProgramDocument d, Func<Actuator, bool> takes)
    {
        ulong mask = 0;
        for (int i = 0; i < d.Actuators.Count; i++)
        {
            mask |= takes(d.Actuators[i]) ? 1UL << i : 0;
        }

        return mask;
    }

    private static CompiledProgram.Settings SettingsOf(EqList<ActuatorSetting> settings, Dictionary<string, int> index) =>
        new([.. settings.Select(s => index[s.Actuator])], [.. settings.Select(s => LevelOf(s.LevelFraction))]);

    private static CompiledProgram.PeriodPart PeriodOf(ProgramPeriod p) => new(
        Centi(p.Day.TemperatureC), PerMille(p.Day.HumidityPercent), Centi(p.Night.TemperatureC), PerMille(p.Night.HumidityPercent),
        MarkOf(p.DayStarts), MarkOf(p.DayEnds), p.RampMinutes * 60_000, Centi(p.CoolAboveK), Centi(p.HeatBelowK),
        (int)Math.Round(1000 * (p.Day.VpdKPa ?? 0)), (int)Math.Round(1000 * (p.Night.VpdKPa ?? 0)));

    private static CompiledProgram.CurtainPart? CurtainOf(CurtainControl? c, Dictionary<string, int> index) => c is null ? null : new CompiledProgram.CurtainPart(
        index[c.Actuator], (int)Math.Round(c.DrawBelowLightWm2), Centi(c.DrawBelowOutsideC), (int)Math.Round(c.ShadeAboveLightWm2), Centi(c.ShadeAboveInsideK),
        LevelOf(c.ShadeFraction), LevelOf(c.GapFraction), Math.Max(1, LevelOf(c.OpenStepFraction)), c.OpenStepS * 1000, c.HoldOpenOnSnow,
        c.Dark is { } from ? MarkOf(from.From) : default, c.Dark is { } to ? MarkOf(to.To) : default, c.Dark is not null,
        LevelOf(c.Warm?.MostFraction ?? 0), Centi(c.Warm?.PastK ?? 0), Centi(c.Warm?.DeadbandK ?? 0));

    private static CompiledProgram.MarkPart MarkOf(DayMark mark) => mark switch
    {
        DayMark.Clock clock => new(0, clock.Minute * 60_000),
        DayMark.Sunrise rise => new(1, rise.OffsetMinutes * 60_000),
        DayMark.Sunset set => new(2, set.OffsetMinutes * 60_000),
        _ => default,
    };

    private static CompiledProgram.AlarmPart AlarmOf(Alarm alarm)
    {
        double scale = PerUnit(alarm.Reading);
        return new(
            (int)alarm.Reading,
            alarm.Low is double low ? (int)Math.Round(low * scale) : int.MinValue,
            alarm.High is double high ? (int)Math.Round(high * scale) : int.MaxValue,
            alarm.DelayS * 1000);
    }

    private static byte[] PeriodsByDay(ProgramDocument d)
    {
        var byDay = new byte[366];
        for (int p = d.Periods.Count - 1; p >= 0; p--)
        {
            for (int day = 1; day <= 365; day++)
            {
                if (ProgramChecks.Holds(d.Periods[p], day))
                {
                    byDay[day] = (byte)p;
                }
            }
        }

        return byDay;
    }
}
