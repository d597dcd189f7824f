using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;

namespace Glazewright.Design.Services;

/// <summary>Electric load list, service and generator.</summary>
internal static class PowerServices
{
    /// <summary>Short-time motors (louvers, curtain, vents) in the demand: they run minutes an hour, not together (common practice).</summary>
    public const double ShortTimeFraction = 0.25;

    /// <summary>Conductors of motors, lamps and electric heat carry this much of the current (NEC 430.22, 210.20, 424.4: from memory).</summary>
    public const double ContinuousRatio = 1.25;

    // Usual standby sets, kVA (common practice).
    private static readonly double[] GeneratorKva = [6, 8, 10, 12, 14, 16, 20, 22, 25, 30, 38, 48, 60, 80, 100, 125, 150, 200, 250, 300];

    /// <summary>Loads of the plants, then the allowances.</summary>
    public static EqList<LoadLine> Lines(ServicesInput input, EqList<PlantResult> plants) =>
        plants.SelectMany(p => p.Loads.Select(l => Line(p, l))).Concat(AllowanceLoads.Lines(input)).ToEqList();

    private static LoadLine Line(PlantResult plant, ElectricLoad load)
    {
        string name = load.Id[(plant.House.Length + 1)..];
        LoadKind kind = plant.Heat?.Choice.Heaters.Any(h => h.Id == load.Id && h.Electric) == true ? LoadKind.ElectricHeat
            : name switch
            {
                "lamps" => LoadKind.GrowLamps,
                "control" => LoadKind.Electronics,
                "louver" or "upper-louvers" or "curtain-drive" or "second-curtain-drive" or "vent-drives" => LoadKind.ShortTimeMotor,
                _ => LoadKind.Motor,
            };
        double sizeHp = kind is LoadKind.Motor or LoadKind.ShortTimeMotor ? MotorTable.SizeHp(load.RunningW, load.ThreePhase) ?? 0 : 0;
        double? table = sizeHp > 0 ? MotorTable.FullLoadA(sizeHp, load.VoltageV, load.ThreePhase) : null;
        bool cooling = plant.Exhaust?.Choice.Fans.Any(f => f.Entry == name || f.Entry + "-backup" == name) == true
            || name is "wet-wall-pump" or "fog-pump" or "upper-fans" or "upper-louvers" or "louver" or "vent-drives";
        bool heating = plant.Heat?.Choice.Heaters.Any(h => h.Id == load.Id) == true || name == "bench-pipe";
        double currentA = table ?? load.FullLoadA;
        return new LoadLine(
            plant.House,
            load.Id,
            load.Label,
            load.Count,
            load.RunningW,
            table is null ? 0 : sizeHp,
            load.VoltageV,
            load.ThreePhase,
            currentA,
            table is not null,
            Math.Max(load.StartA, currentA),
            kind switch
            {
                LoadKind.ElectricHeat => "resistance, no inrush",
                LoadKind.GrowLamps => "drivers, brief inrush",
                LoadKind.Electronics => "electronic",
                _ => "across the line",
            },
            cooling ? LoadSeason.Cooling : heating ? LoadSeason.Heating : name == "filter-fan" && plant.Exhaust is not null ? LoadSeason.ExhaustOff : LoadSeason.Always,
            kind == LoadKind.ShortTimeMotor ? ShortTimeFraction : 1,
            ContinuousRatio * currentA,
            load.Backup,
            kind);
    }

    /// <summary>Demand of a season, VA: the sum, and the quarter more of its largest motor and of what is on for hours (NEC 430.24, 215.2).</summary>
    public static (double BaseVa, double QuarterVa) Demand(IEnumerable<LoadLine> lines, LoadSeason season)
    {
        LoadLine[] on = [.. lines.Where(l => l.CountsIn(season))];
        double motorVa = on.Where(l => l.Kind is LoadKind.Motor or LoadKind.ShortTimeMotor).Select(l => l.SizingVa / l.Count).DefaultIfEmpty(0).Max();
        return (on.Sum(l => l.DemandFraction * l.SizingVa), (ContinuousRatio - 1) * (motorVa + on.Where(l => l.Continuous).Sum(l => l.SizingVa)));
    }

    public static PowerNeed Need(EqList<LoadLine> lines, Utilities lot)
    {
        (double summerVa, double summerQuarterVa) = Demand(lines, LoadSeason.Cooling);
        (double winterVa, double winterQuarterVa) = Demand(lines, LoadSeason.Heating);
        double root = lot.Phase == Phase.Three ? Math.Sqrt(3) : 1;
        double demandA = Math.Max(summerVa + summerQuarterVa, winterVa + winterQuarterVa) / (lot.ServiceV * root);
        LoadLine[] kept = [.. lines.Where(l => l.Backup)];
        double keptVa = kept.Sum(l => l.SizingVa);
        LoadLine? start = kept.MaxBy(l => l.StartVa - l.SizingVa / l.Count);
        double startVa = start is null ? 0 : keptVa - start.SizingVa / start.Count + start.StartVa;
        return new PowerNeed(
            lines.Sum(l => l.Count * l.RunningW),
            summerVa,
            winterVa,
            demandA,
            ConductorTable.BreakersA.FirstOrDefault(a => a >= 60 && a >= demandA),
            lot.ServiceA,
            ServiceRun.Of(lot, demandA).DropFraction,
            kept.Sum(l => l.Count * l.RunningW),
            keptVa,
            startVa,
            start?.Id ?? "",
            1000 * GeneratorKva.FirstOrDefault(k => 1000 * k >= startVa));
    }
}
