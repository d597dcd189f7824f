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

    // NEC 240.6(A), from memory: standard ampere ratings from 60 A on.
    private static readonly double[] ServiceSizesA = [60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500, 600, 700, 800, 1000, 1200];

    // Usual standby sets, kVA (common practice).
    private static readonly double[] GeneratorKva = [6, 8, 10, 12, 14, 16, 20, 22, 25, 30, 38, 48, 60, 80, 100, 125, 150, 200, 250, 300];

    public static EqList<LoadLine> Lines(EqList<PlantResult> plants) => plants.SelectMany(p => p.Loads.Select(l => Line(p, l))).ToEqList();

    private static LoadLine Line(PlantResult plant, ElectricLoad load)
    {
        string name = load.Id[(plant.House.Length + 1)..];
        bool electricHeat = plant.Heat?.Choice.Heaters.Any(h => h.Id == load.Id && h.Electric) == true;
        bool lamps = name == "lamps";
        bool motor = !electricHeat && !lamps && name != "control";
        bool shortTime = name is "louver" or "curtain-drive" or "vent-drives";
        double sizeHp = motor && !shortTime ? MotorTable.SizeHp(load.RunningW, load.ThreePhase) ?? 0 : 0;
        double? table = sizeHp > 0 ? MotorTable.FullLoadA(sizeHp, load.VoltageV, load.ThreePhase) : null;
        bool cooling = plant.Exhaust?.Choice.Fans.Any(f => f.Entry == name || f.Entry + "-backup" == name) == true
            || name is "wet-wall-pump" or "fog-pump" or "louver" or "vent-drives";
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
            electricHeat ? "resistance, no inrush" : lamps ? "drivers, brief inrush" : motor ? "across the line" : "electronic",
            cooling ? LoadSeason.Cooling : heating ? LoadSeason.Heating : name == "filter-fan" && plant.Exhaust is not null ? LoadSeason.ExhaustOff : LoadSeason.Always,
            shortTime ? ShortTimeFraction : 1,
            currentA * (motor || electricHeat || lamps ? ContinuousRatio : 1),
            load.Backup);
    }

    public static PowerNeed Need(EqList<LoadLine> lines, Utilities lot)
    {
        double Demand(LoadSeason season) => lines.Where(l => l.CountsIn(season)).Sum(l => l.DemandFraction * l.SizingVa);
        double summerVa = Demand(LoadSeason.Cooling);
        double winterVa = Demand(LoadSeason.Heating);
        LoadSeason worst = winterVa > summerVa ? LoadSeason.Heating : LoadSeason.Cooling;
        LoadLine[] on = [.. lines.Where(l => l.CountsIn(worst))];
        double motorVa = on.Where(l => l.MotorHp > 0).Select(l => l.SizingVa / l.Count).DefaultIfEmpty(0).Max();
        double continuousVa = on.Where(l => l.Starting.StartsWith("resistance", StringComparison.Ordinal) || l.Starting.StartsWith("drivers", StringComparison.Ordinal)).Sum(l => l.SizingVa);
        double root = lot.Phase == Phase.Three ? Math.Sqrt(3) : 1;
        double demandA = (Math.Max(summerVa, winterVa) + (ContinuousRatio - 1) * (motorVa + continuousVa)) / (lot.ServiceV * root);
        LoadLine[] kept = [.. lines.Where(l => l.Backup)];
        double keptVa = kept.Sum(l => l.SizingVa);
        LoadLine? start = kept.MaxBy(l => l.StartVa - l.SizingVa / l.Count);
        double startVa = start is null ? 0 : keptVa - start.SizingVa / start.Count + start.StartVa;
        return new PowerNeed(
            lines.Sum(l => l.Count * l.RunningW),
            summerVa,
            winterVa,
            demandA,
            ServiceSizesA.FirstOrDefault(a => a >= demandA),
            lot.ServiceA,
            2 / (lot.Phase == Phase.Three ? 2 / Math.Sqrt(3) : 1) * demandA * PlantSafetyFindings.CableOhmPerM * lot.PoleDistanceM / lot.ServiceV,
            kept.Sum(l => l.Count * l.RunningW),
            keptVa,
            startVa,
            start?.Id ?? "",
            1000 * GeneratorKva.FirstOrDefault(k => 1000 * k >= startVa));
    }
}
