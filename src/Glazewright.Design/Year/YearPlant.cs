using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Science.Climate;
using Glazewright.Science.Maths;

namespace Glazewright.Design.Year;

/// <summary>Commands turned into what the equipment really does over a minute: travel, operating points, wetting of the pad, power and fuel.</summary>
internal sealed class YearPlant
{
    private const double PadWettingS = 300; // a pad is wet, or dry again, within some minutes (common practice: 5 to 10)
    private const double LampRadiant = 0.45;
    private const double PipeRadiant = 0.25;
    private const double BoilerEfficiency = 0.85; // of the boiler behind bench pipes, gross (common practice)

    private readonly EqList<Actuator> actuators;
    private readonly PlantResult plant;
    private readonly YearHouse house;
    private readonly double[] position, flow, flowWet, power, powerWet, effectiveness, staticPa;
    private readonly double[] heaterW, heaterFuelW, heaterPowerW;
    private readonly double[] runtimeS;
    private readonly int[] starts;
    private readonly bool[] moving;
    private readonly double[] fullLevel; // level of each actuator with every cooling stage on; below 0 where cooling does not use it
    private readonly int fanCount;
    private readonly bool hasLouver;
    private double padWet;

    public YearPlant(ProgramDocument program, PlantResult plant, YearHouse house)
    {
        actuators = program.Actuators;
        this.plant = plant;
        this.house = house;
        position = new double[actuators.Count];
        runtimeS = new double[actuators.Count];
        starts = new int[actuators.Count];
        moving = new bool[actuators.Count];
        fullLevel = new double[actuators.Count];
        heaterW = new double[actuators.Count];
        heaterFuelW = new double[actuators.Count];
        heaterPowerW = new double[actuators.Count];
        ExhaustPlant? exhaust = plant.Exhaust?.Choice;
        fanCount = exhaust?.Fans.Count ?? 0;
        hasLouver = actuators.Any(a => a.Kind == ActuatorKind.Louver);
        flow = Points(exhaust?.Dry, p => p.FlowM3PerS);
        power = Points(exhaust?.Dry, p => p.PowerW);
        staticPa = Points(exhaust?.Dry, p => p.StaticPa);
        flowWet = Points(exhaust?.Wet, p => p.FlowM3PerS);
        powerWet = Points(exhaust?.Wet, p => p.PowerW);
        effectiveness = new double[fanCount + 1];
        if (plant.WetWall?.Choice is { } pad)
        {
            // η = 1 − exp(−B u^−0.35), B from the plant's own point; a lower face speed wets better.
            double e = Math.Clamp(pad.Effectiveness, 0.01, 0.99), most = Math.Max(flowWet[fanCount], 1e-6);
            double b = -Elementary.Log(1 - e) * Elementary.Pow(Math.Max(pad.FaceSpeedMs, 0.05), 0.35);
            for (int n = 1; n <= fanCount; n++)
            {
                double u = Math.Max(pad.FaceSpeedMs * flowWet[n] / most, 0.05);
                effectiveness[n] = 1 - Elementary.Exp(-b * Elementary.Pow(u, -0.35));
            }
        }

        Dictionary<string, HeaterUnit> heaters = (plant.Heat?.Choice.Heaters ?? []).ToDictionary(h => h.Id, StringComparer.Ordinal);
        for (int i = 0; i < actuators.Count; i++)
        {
            if (heaters.TryGetValue(actuators[i].Id, out HeaterUnit? unit))
            {
                heaterW[i] = unit.OutputW;
                heaterFuelW[i] = unit.Electric ? 0 : unit.OutputW / Math.Max(unit.EfficiencyFraction, 0.1);
                heaterPowerW[i] = unit.FanW + (unit.Electric ? unit.OutputW : 0);
            }

            // Fog pulses and stops near saturation by its own rules: it does not keep the others from being at their fullest.
            fullLevel[i] = actuators[i].Kind == ActuatorKind.Fog
                ? -1
                : program.Cooling.SelectMany(s => s.Settings).Where(s => s.Actuator == actuators[i].Id).Select(s => s.LevelFraction).DefaultIfEmpty(-1).Max();
        }
    }

    /// <summary>Electric power, W.</summary>
    public double PowerW { get; private set; }

    /// <summary>Fuel, W gross.</summary>
    public double FuelW { get; private set; }

    /// <summary>Heat delivered, W.</summary>
    public double HeatW { get; private set; }

    /// <summary>Static pressure across the fans, Pa.</summary>
    public double StaticPa { get; private set; }

    /// <summary>Exhaust flow, m³/s.</summary>
    public double FlowM3PerS { get; private set; }

    /// <summary>Curtain, mean of the minute.</summary>
    public double CurtainFraction { get; private set; }

    /// <summary>Wet wall or fog, share of the minute on.</summary>
    public double CoolingFraction { get; private set; }

    /// <summary>True while every cooling stage stands at its full level.</summary>
    public bool AllCooling { get; private set; }

    /// <summary>True while every heater is on.</summary>
    public bool AllHeating { get; private set; }

    /// <summary>True while the louver's end switch proves it open, or the house has none.</summary>
    public bool LouverOpen { get; private set; }

    /// <summary>Acts on the commands for one step.</summary>
    /// <param name="commands">In the program's order of actuators.</param>
    /// <param name="stepS">Step, s.</param>
    /// <param name="doorsOpen">Doors stand open.</param>
    /// <param name="f">The equipment fields are set.</param>
    public void Act(ReadOnlySpan<Command> commands, double stepS, bool doorsOpen, ref HouseForcing f)
    {
        double fans = 0, pump = 0, fog = 0, heat = 0, fuel = 0, electric = 0, pipe = 0, circulation = 0, pressure = 0, lamps = 0;
        double louver = 0, roof = 0, side = 0, curtain = 0;
        bool allCooling = true, allHeating = true, anyHeater = false;
        for (int i = 0; i < actuators.Count; i++)
        {
            double level = Math.Clamp(commands[i].Level, 0, 10_000) / 10_000.0;
            Actuator a = actuators[i];
            double mean = a.TravelS > 0 ? Travel(i, level, a.TravelS, stepS) : Switch(i, level, stepS);
            allCooling &= fullLevel[i] < 0 || level >= fullLevel[i] - 0.01;
            switch (a.Kind)
            {
                case ActuatorKind.Fan:
                    fans += mean;
                    break;
                case ActuatorKind.Louver:
                    louver = Math.Max(louver, mean);
                    break;
                case ActuatorKind.WetWallPump:
                    pump = Math.Max(pump, mean);
                    break;
                case ActuatorKind.Fog:
                    fog = Math.Max(fog, mean);
                    break;
                case ActuatorKind.Heater:
                    heat += mean * heaterW[i];
                    fuel += mean * heaterFuelW[i];
                    electric += mean * heaterPowerW[i];
                    allHeating &= level > 0.99;
                    anyHeater = true;
                    break;
                case ActuatorKind.BenchPipe:
                    pipe = mean * plant.BenchPipeW;
                    allHeating &= level > 0.99;
                    anyHeater = true;
                    break;
                case ActuatorKind.Curtain:
                    curtain = mean;
                    electric += moving[i] ? plant.Curtain?.DriveW ?? 0 : 0;
                    break;
                case ActuatorKind.Circulation:
                    circulation = mean;
                    break;
                case ActuatorKind.PressureFan:
                    pressure = mean;
                    break;
                case ActuatorKind.RoofVent:
                    roof = mean;
                    break;
                case ActuatorKind.SideVent:
                    side = mean;
                    break;
                default:
                    lamps = mean;
                    break;
            }
        }

        fans = Math.Min(fans, fanCount);
        LouverOpen = !hasLouver || louver >= 0.95;
        int n = (int)fans, next = Math.Min(n + 1, fanCount);
        double part = fans - n;
        double dry = flow[n] + part * (flow[next] - flow[n]), wet = flowWet[n] + part * (flowWet[next] - flowWet[n]);
        // Each fan needs its share of the louver; with less open the flow falls in proportion.
        double through = fans > 0 && hasLouver ? Math.Clamp(louver * fanCount / fans, 0.1, 1) : 1;
        FlowM3PerS = (dry + pump * (wet - dry)) * through;
        StaticPa = staticPa[n] + part * (staticPa[next] - staticPa[n]);
        double fanPower = power[n] + part * (power[next] - power[n]);
        fanPower += pump * (powerWet[n] + part * (powerWet[next] - powerWet[n]) - fanPower);
        padWet += (pump - padWet) * Math.Min(1, stepS / PadWettingS);
        heat += pipe;
        fuel += pipe / BoilerEfficiency;
        VentPlant? vents = plant.Vents;
        double lampW = lamps * plant.LampW, stirW = circulation * (plant.Circulation is { } c ? c.Count * c.PowerEachW : 0);
        electric += fanPower + pump * (plant.WetWall?.Choice.PumpW ?? 0) + fog * (plant.Fog?.Choice.PumpW ?? 0)
            + pressure * (plant.Pressure?.PowerW ?? 0) + lampW + stirW;

        f.FanBelowM3PerS = FlowM3PerS;
        f.PadEffectiveness = padWet * (effectiveness[n] + part * (effectiveness[next] - effectiveness[n]));
        f.FogKgPerS = fog * (plant.Fog?.Choice.KgPerS ?? 0);
        f.FogEfficiency = plant.Fog?.Choice.EvaporatedFraction ?? 0;
        f.HeatW = heat;
        f.HeatRadiantFraction = heat > 0 ? PipeRadiant * pipe / heat : 0;
        f.HeatAboveFraction = 0.15 - 0.12 * circulation;
        f.LampW = lampW + stirW;
        f.LampRadiantFraction = lampW + stirW > 0 ? LampRadiant * lampW / (lampW + stirW) : 0;
        f.CirculationFraction = circulation;
        f.PositivePressureM3PerS = pressure * (plant.Pressure?.FlowM3PerS ?? 0);
        f.RoofVentM2 = roof * (vents?.RoofM2 ?? 0);
        f.SideVentM2 = side * (vents?.SideM2 ?? 0) + (fans > 0 ? 0 : louver * (plant.Exhaust?.Choice.LouverFreeM2 ?? 0)) + (doorsOpen ? house.DoorM2 : 0);
        f.CurtainClosedFraction = curtain * house.CurtainCovers;

        HeatW = heat;
        FuelW = fuel;
        PowerW = electric;
        CurtainFraction = curtain;
        CoolingFraction = Math.Max(pump, fog);
        AllCooling = allCooling;
        AllHeating = allHeating || !anyHeater;
    }

    /// <summary>Forgets runtimes and starts, keeps positions: the spin-up is over.</summary>
    public void StartCounting()
    {
        Array.Clear(runtimeS);
        Array.Clear(starts);
    }

    /// <summary>Length of a saved state.</summary>
    public int SavedLength => (2 * position.Length) + 3;

    /// <summary>Writes positions, what moves, how wet the pad is, and what the proofs say.</summary>
    public void Save(Span<double> into)
    {
        position.CopyTo(into);
        for (int i = 0; i < moving.Length; i++)
        {
            into[position.Length + i] = moving[i] ? 1 : 0;
        }

        (into[^3], into[^2], into[^1]) = (padWet, LouverOpen ? 1 : 0, StaticPa);
    }

    /// <summary>Reads what was written.</summary>
    public void Load(ReadOnlySpan<double> saved)
    {
        saved[..position.Length].CopyTo(position);
        for (int i = 0; i < moving.Length; i++)
        {
            moving[i] = saved[position.Length + i] > 0;
        }

        (padWet, LouverOpen, StaticPa) = (saved[^3], saved[^2] > 0, saved[^1]);
    }

    /// <summary>Runtime and starts of every actuator.</summary>
    public EqList<MotorCounters> Motors() =>
        actuators.Select((a, i) => new MotorCounters(a.Id, runtimeS[i] / 3600, starts[i])).ToEqList();

    private static double[] Points(EqList<OperatingPoint>? points, Func<OperatingPoint, double> value) =>
        [0, .. (points ?? []).OrderBy(p => p.FansOn).Select(value)];

    private double Switch(int i, double level, double stepS)
    {
        bool on = level > 0;
        starts[i] += on && !moving[i] ? 1 : 0;
        moving[i] = on;
        runtimeS[i] += level * stepS;
        position[i] = level;
        return level;
    }

    private double Travel(int i, double level, double travelS, double stepS)
    {
        double from = position[i], way = level - from, needS = Math.Abs(way) * travelS;
        bool moves = needS > 0;
        starts[i] += moves && !moving[i] ? 1 : 0;
        moving[i] = moves;
        if (needS <= stepS)
        {
            position[i] = level;
            runtimeS[i] += needS;
            return level - 0.5 * way * needS / stepS;
        }

        double to = from + Math.Sign(way) * stepS / travelS;
        position[i] = to;
        runtimeS[i] += stepS;
        return 0.5 * (from + to);
    }
}
