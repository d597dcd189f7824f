using System.Runtime.CompilerServices;
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
    private const double PipeLagS = 2500; // 28 mm pipe: 2.7 kJ/K of water and steel a metre over 1.06 W/K (0.09 m² at 12 W/m²K)
    private const double BoilerEfficiency = 0.85; // of the boiler behind bench pipes, gross (common practice)

    private readonly EqList<Actuator> actuators;
    private readonly Motor[] motors;
    private readonly double pipeW, curtainDriveW, secondDriveW, pumpW, fogPumpW, fogKgPerS, fogEfficiency, pressureW, pressureM3PerS, fullLampW, fullStirW;
    private readonly double roofVentM2, sideVentM2, louverM2, doorM2, curtainCovers, secondCovers;
    private readonly double[] flow, flowWet, power, powerWet, effectiveness, staticPa;
    private readonly int fanCount, mostWithWater;
    private readonly bool hasLouver;
    private readonly double upperM3PerS, upperW;
    private readonly double dryerFullW, dryerKgPerS, doseFullKgPerS;
    private Means means; // over the last step
    private bool settled; // no motor is on its way
    private double padWet, pipeNowW, goneOnS;
    private double stepOfSharesS, padShare, pipeShare; // what a step of that length brings of the way

    public YearPlant(ProgramDocument program, PlantResult plant, YearHouse house)
    {
        actuators = program.Actuators;
        pipeW = plant.BenchPipeW;
        curtainDriveW = plant.Curtain?.DriveW ?? 0;
        secondDriveW = plant.SecondCurtain?.DriveW ?? 0;
        pumpW = plant.WetWall?.Choice.PumpW ?? 0;
        fogPumpW = plant.Fog?.Choice.PumpW ?? 0;
        fogKgPerS = plant.Fog?.Choice.KgPerS ?? 0;
        fogEfficiency = plant.Fog?.Choice.EvaporatedFraction ?? 0;
        upperM3PerS = plant.Upper?.FlowM3PerS ?? 0;
        upperW = plant.Upper is { } upper ? upper.Count * (upper.PowerEachW + upper.InletMotorW) : 0;
        pressureW = plant.Pressure?.PowerW ?? 0;
        pressureM3PerS = plant.Pressure?.FlowM3PerS ?? 0;
        fullLampW = plant.LampW;
        fullStirW = plant.Circulation is { } stir ? stir.Count * stir.PowerEachW : 0;
        fullStirW += plant.Oscillating is { } swept ? swept.Count * swept.PowerEachW : 0;
        roofVentM2 = plant.Vents?.PassingRoofM2 ?? 0;
        sideVentM2 = plant.Vents?.PassingSideM2 ?? 0;
        louverM2 = plant.Exhaust?.Choice.LouverFreeM2 ?? 0;
        dryerFullW = plant.Dehumidifier?.PowerW ?? 0;
        dryerKgPerS = plant.Dehumidifier?.WaterKgPerS ?? 0;
        doseFullKgPerS = plant.Co2?.DoseKgPerS ?? 0;
        doorM2 = house.DoorM2;
        curtainCovers = house.CurtainCovers;
        secondCovers = house.SecondCovers;
        motors = new Motor[actuators.Count];
        ExhaustPlant? exhaust = plant.Exhaust?.Choice;
        fanCount = exhaust?.Fans.Count ?? 0;
        mostWithWater = program.Interlocks.OfType<Interlock.OnlySoMany>()
            .Where(few => actuators.Any(a => a.Id == few.Actuator && a.Kind == ActuatorKind.WetWallPump)).Select(few => few.Most).DefaultIfEmpty(fanCount).Min();
        hasLouver = actuators.Any(a => a.Kind == ActuatorKind.Louver);
        flow = Points(exhaust?.Dry, p => p.FlowM3PerS);
        power = Points(exhaust?.Dry, p => p.PowerW);
        staticPa = Points(exhaust?.Dry, p => p.StaticPa);
        flowWet = Points(exhaust?.Wet, p => p.FlowM3PerS);
        powerWet = Points(exhaust?.Wet, p => p.PowerW);
        effectiveness = new double[fanCount + 1];
        if (plant.WetWall?.Choice is { } pad)
        {
            for (int n = 1; n <= fanCount; n++)
            {
                effectiveness[n] = pad.EffectivenessAt(flowWet[n] / Math.Max(flowWet[Math.Min(pad.MostFans ?? fanCount, fanCount)], 1e-6));
            }
        }

        Dictionary<string, HeaterUnit> heaters = (plant.Heat?.Choice.Heaters ?? []).ToDictionary(h => h.Id, StringComparer.Ordinal);
        for (int i = 0; i < motors.Length; i++)
        {
            ref Motor motor = ref motors[i];
            motor.Kind = actuators[i].Kind;
            motor.TravelS = actuators[i].TravelS;
            if (heaters.TryGetValue(actuators[i].Id, out HeaterUnit? unit))
            {
                motor.HeatW = unit.OutputW;
                motor.FuelW = unit.Electric ? 0 : unit.OutputW / Math.Max(unit.EfficiencyFraction, 0.1);
                motor.PowerW = unit.FanW + (unit.Electric ? unit.OutputW : 0);
                motor.Part = unit.Part;
                motor.FullEfficiency = Math.Max(unit.EfficiencyFraction, 0.1);
            }

            // Fog pulses and stops near saturation by its own rules: it does not keep the others from being at their fullest.
            motor.FullLevel = motor.Kind == ActuatorKind.Fog
                ? -1
                : program.Cooling.SelectMany(s => s.Settings).Where(s => s.Actuator == actuators[i].Id).Select(s => s.LevelFraction).DefaultIfEmpty(-1).Max() - 0.01;
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

    /// <summary>Second curtain, mean of the minute; 0 without one.</summary>
    public double SecondCurtainFraction { get; private set; }

    /// <summary>Wet wall or fog, share of the minute on.</summary>
    public double CoolingFraction { get; private set; }

    /// <summary>Lamps, W electric.</summary>
    public double LampW { get; private set; }

    /// <summary>Carbon dioxide dosed, kg/s.</summary>
    public double DoseKgPerS { get; private set; }

    /// <summary>True while every cooling stage stands at its full level.</summary>
    public bool AllCooling { get; private set; }

    /// <summary>True while every heater is on.</summary>
    public bool AllHeating { get; private set; }

    /// <summary>True while the louver's end switch proves it open, or the house has none.</summary>
    public bool LouverOpen { get; private set; }

    /// <summary>Acts on the commands for one step.</summary>
    /// <param name="commands">In the program's order of actuators.</param>
    /// <param name="moved">False when they ask what was asked in the step before.</param>
    /// <param name="stepS">Step, s.</param>
    /// <param name="doorsOpen">Doors stand open.</param>
    /// <param name="f">The equipment fields are set.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Act(ReadOnlySpan<Command> commands, bool moved, double stepS, bool doorsOpen, ref HouseForcing f)
    {
        // Told what it was told before, and nothing on its way: all goes on as it went.
        if (moved || !settled)
        {
            Follow(commands, stepS);
        }
        else
        {
            goneOnS += stepS;
        }

        if (stepS != stepOfSharesS)
        {
            (stepOfSharesS, padShare, pipeShare) = (stepS, Math.Min(1, stepS / PadWettingS), stepS / (PipeLagS + stepS));
        }

        ref readonly Means m = ref means;
        padWet = Lagged(padWet, m.Pump, padShare);
        // The boiler heats the pipe; the pipe, as it warms and cools, the house.
        pipeNowW = Lagged(pipeNowW, m.Pipe, pipeShare);
        double heat = m.Heat + pipeNowW;
        f.FanBelowM3PerS = FlowM3PerS;
        f.PadEffectiveness = padWet * m.PadAtFlow;
        f.FogKgPerS = m.Fog * fogKgPerS;
        f.FogEfficiency = fogEfficiency;
        f.HeatW = heat;
        f.HeatRadiantFraction = pipeNowW > 0 ? PipeRadiant * pipeNowW / heat : 0;
        f.HeatAboveFraction = 0.15 - 0.12 * m.Circulation;
        f.LampW = LampW + m.StirW;
        f.LampRadiantFraction = LampW > 0 ? LampRadiant * LampW / (LampW + m.StirW) : 0;
        f.DryingKgPerS = m.Dryer * dryerKgPerS;
        f.CirculationFraction = m.Circulation;
        f.PositivePressureM3PerS = m.Pressure * pressureM3PerS;
        f.UpperAirM3PerS = m.Upper * upperM3PerS;
        f.RoofVentM2 = m.Roof * roofVentM2;
        f.SideVentM2 = m.Side * sideVentM2 + (m.Fans > 0 ? 0 : m.Louver * louverM2) + (doorsOpen ? doorM2 : 0);
        f.CurtainClosedFraction = m.Curtain * curtainCovers;
        f.SecondCurtainClosedFraction = m.SecondCurtain * secondCovers;
        HeatW = heat;
    }

    private void Follow(ReadOnlySpan<Command> commands, double stepS)
    {
        CountGoneOn();
        Means m = default;
        double louverAt = 0;
        bool allCooling = true, allFans = true, allHeating = true, anyHeater = false;
        settled = true;
        Motor[] all = motors;
        for (int i = 0; i < all.Length && i < commands.Length; i++)
        {
            ref Motor motor = ref all[i];
            int asked = commands[i].Level;
            double level = asked <= 0 ? 0 : asked >= 10_000 ? 1 : asked / 10_000.0;
            double ranShare = 0, mean = motor.TravelS > 0 ? Travel(ref motor, level, stepS, out ranShare) : Switch(ref motor, level, stepS, commands[i].Reason);
            settled &= motor.TravelS <= 0 || !motor.Moving;
            if (motor.Kind == ActuatorKind.Fan)
            {
                allFans &= level >= motor.FullLevel;
            }
            else
            {
                allCooling &= level >= motor.FullLevel;
            }

            switch (motor.Kind)
            {
                case ActuatorKind.Fan:
                    m.Fans += mean;
                    break;
                case ActuatorKind.Louver:
                    m.Louver = Math.Max(m.Louver, mean);
                    louverAt = Math.Max(louverAt, motor.Position);
                    break;
                case ActuatorKind.WetWallPump:
                    m.Pump = Math.Max(m.Pump, mean);
                    break;
                case ActuatorKind.Fog:
                    m.Fog = Math.Max(m.Fog, mean);
                    break;
                case ActuatorKind.Heater:
                    m.Heat += mean * motor.HeatW;
                    if (motor.Part is { } part && mean > 0)
                    {
                        m.Fuel += mean * motor.HeatW / part.EfficiencyAt(mean, motor.FullEfficiency);
                        m.Electric += motor.PowerW;
                    }
                    else
                    {
                        m.Fuel += mean * motor.FuelW;
                        m.Electric += mean * motor.PowerW;
                    }

                    allHeating &= level > 0.99;
                    anyHeater = true;
                    break;
                case ActuatorKind.BenchPipe:
                    m.Pipe = mean * pipeW;
                    allHeating &= level > 0.99;
                    anyHeater = true;
                    break;
                case ActuatorKind.Curtain:
                    m.Curtain = mean;
                    m.Electric += ranShare * curtainDriveW;
                    break;
                case ActuatorKind.SecondCurtain:
                    m.SecondCurtain = mean;
                    m.Electric += ranShare * secondDriveW;
                    break;
                case ActuatorKind.Circulation:
                    m.Circulation = mean;
                    break;
                case ActuatorKind.PressureFan:
                    m.Pressure = mean;
                    break;
                case ActuatorKind.UpperFan:
                    m.Upper = mean;
                    break;
                case ActuatorKind.RoofVent:
                    m.Roof = mean;
                    break;
                case ActuatorKind.SideVent:
                    m.Side = mean;
                    break;
                case ActuatorKind.Dehumidifier:
                    m.Dryer = mean;
                    break;
                case ActuatorKind.Co2Valve:
                    m.Dose = mean;
                    break;
                default:
                    m.Lamps = mean;
                    break;
            }
        }

        m.Fans = Math.Min(m.Fans, fanCount);
        LouverOpen = !hasLouver || louverAt >= 0.95;
        Draw(ref m);
        LampW = m.Lamps * fullLampW;
        m.StirW = m.Circulation * fullStirW + m.Dryer * dryerFullW;
        PowerW = m.Electric + m.FanW + m.Pump * pumpW + m.Fog * fogPumpW + m.Pressure * pressureW + m.Upper * upperW + LampW + m.StirW;
        FuelW = m.Fuel + m.Pipe / BoilerEfficiency;
        DoseKgPerS = m.Dose * doseFullKgPerS;
        CurtainFraction = m.Curtain;
        SecondCurtainFraction = m.SecondCurtain;
        CoolingFraction = Math.Max(m.Pump, m.Fog);
        AllCooling = allCooling && (allFans || (m.Pump > 0 && m.Fans >= mostWithWater));
        AllHeating = allHeating || !anyHeater;
        means = m;
    }

    // The fans at their operating points, between whole numbers of fans and between dry and wet pad by shares.
    private void Draw(ref Means m)
    {
        double fans = m.Fans, pump = m.Pump;
        int n = (int)fans, next = Math.Min(n + 1, fanCount);
        double part = fans - n;
        double dry = flow[n] + part * (flow[next] - flow[n]), wet = flowWet[n] + part * (flowWet[next] - flowWet[n]);
        // Each fan needs its share of the louver; with less open the flow falls in proportion.
        double through = fans > 0 && hasLouver ? Math.Clamp(m.Louver * fanCount / fans, 0.1, 1) : 1;
        FlowM3PerS = (dry + pump * (wet - dry)) * through;
        StaticPa = staticPa[n] + part * (staticPa[next] - staticPa[n]);
        double dryW = power[n] + part * (power[next] - power[n]), wetW = powerWet[n] + part * (powerWet[next] - powerWet[n]);
        m.FanW = dryW + pump * (wetW - dryW);
        m.PadAtFlow = effectiveness[n] + part * (effectiveness[next] - effectiveness[n]);
    }

    // What ran on while nothing changed.
    private void CountGoneOn()
    {
        if (goneOnS > 0)
        {
            foreach (ref Motor motor in motors.AsSpan())
            {
                motor.RuntimeS += !motor.Moving ? 0 : motor.Part is null ? motor.Position * goneOnS : goneOnS;
            }

            goneOnS = 0;
        }
    }

    /// <summary>Heat that one heater gives now, W; 0 for other equipment.</summary>
    /// <param name="actuator">Its place in the program's order.</param>
    public double HeaterW(int actuator) => motors[actuator].Kind == ActuatorKind.Heater && motors[actuator].Moving ? motors[actuator].Position * motors[actuator].HeatW : 0;

    /// <summary>Forgets runtimes and starts, keeps positions: the spin-up is over.</summary>
    public void StartCounting()
    {
        CountGoneOn();
        foreach (ref Motor motor in motors.AsSpan())
        {
            (motor.RuntimeS, motor.Starts) = (0, 0);
        }
    }

    /// <summary>Length of a saved state.</summary>
    public int SavedLength => (2 * motors.Length) + 4;

    /// <summary>Writes positions, what moves, how wet the pad is, and what the proofs say.</summary>
    public void Save(Span<double> into)
    {
        for (int i = 0; i < motors.Length; i++)
        {
            into[i] = motors[i].Position;
            into[motors.Length + i] = !motors[i].Moving ? 0 : motors[i].TravelS <= 0 || motors[i].Opens ? 1 : -1;
        }

        (into[^4], into[^3], into[^2], into[^1]) = (pipeNowW, padWet, LouverOpen ? 1 : 0, StaticPa);
    }

    /// <summary>Reads what was written.</summary>
    public void Load(ReadOnlySpan<double> saved)
    {
        for (int i = 0; i < motors.Length; i++)
        {
            motors[i].Position = saved[i];
            (motors[i].Moving, motors[i].Opens) = (saved[motors.Length + i] != 0, saved[motors.Length + i] > 0);
        }

        settled = false;
        goneOnS = 0;
        (pipeNowW, padWet, LouverOpen, StaticPa) = (saved[^4], saved[^3], saved[^2] > 0, saved[^1]);
    }

    /// <summary>Runtime and starts of every actuator.</summary>
    public EqList<MotorCounters> Motors()
    {
        CountGoneOn();
        return actuators.Select((a, i) => new MotorCounters(a.Id, motors[i].RuntimeS / 3600, motors[i].Starts)).ToEqList();
    }

    private static double[] Points(EqList<OperatingPoint>? points, Func<OperatingPoint, double> value) =>
        [0, .. (points ?? []).OrderBy(p => p.FansOn).Select(value)];

    // Towards a goal by a share of the way; dry is dry and cold is cold, not a number too small to reckon with.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Lagged(double now, double goal, double share)
    {
        double next = now + ((goal - now) * share);
        return next > 1e-6 ? next : 0;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Switch(ref Motor motor, double level, double stepS, int reason)
    {
        if (level <= 0)
        {
            // Between two pulses of a call, for humidity or to cool, fog has not stopped.
            motor.Moving &= motor.Kind == ActuatorKind.Fog && reason is (int)ReasonCode.Fogging or (int)ReasonCode.Cooling or (int)ReasonCode.LeastTimeOn;
            motor.Position = 0;
            return 0;
        }

        motor.Starts += motor.Moving ? 0 : 1;
        motor.Moving = true;
        motor.RuntimeS += motor.Part is null ? level * stepS : stepS;
        motor.Position = level;
        return level;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Travel(ref Motor motor, double level, double stepS, out double ranShare)
    {
        double from = motor.Position, way = level - from;
        if (way == 0)
        {
            motor.Moving = false;
            ranShare = 0;
            return level;
        }

        // From rest, or the other way round. A level asked is where it stands at the end of a step: that it stays there is seen in the next.
        motor.Starts += motor.Moving && way > 0 == motor.Opens ? 0 : 1;
        (motor.Moving, motor.Opens) = (true, way > 0);
        double needS = Math.Abs(way) * motor.TravelS;
        if (needS <= stepS)
        {
            motor.Position = level;
            motor.RuntimeS += needS;
            ranShare = needS / stepS;
            return level - 0.5 * way * ranShare;
        }

        double to = from + Math.Sign(way) * stepS / motor.TravelS;
        motor.Position = to;
        motor.RuntimeS += stepS;
        ranShare = 1;
        return 0.5 * (from + to);
    }

    /// <summary>What the equipment did over a step, means of it.</summary>
    private struct Means
    {
        public double Fans, Upper, Pump, Fog, Heat, Fuel, Electric, Pipe, Circulation, Pressure, Lamps, Dryer, Dose, Louver, Roof, Side, Curtain, SecondCurtain;
        public double FanW, StirW, PadAtFlow;
    }

    /// <summary>An actuator: what it is, where it stands and how long it has run.</summary>
    private struct Motor
    {
        public ActuatorKind Kind;
        public bool Moving, Opens; // a travelling motor: on its way still, and which
        public int Starts;
        public double TravelS, Position, RuntimeS;
        public double FullLevel; // with every cooling stage on, a hundredth less; below 0 where cooling does not use it
        public double HeatW, FuelW, PowerW, FullEfficiency;
        public Catalogues.PartFire? Part; // of a burner that burns at part of its fire
    }
}
