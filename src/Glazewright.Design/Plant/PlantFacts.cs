using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Science.Air;
using Glazewright.Science.Flow;

namespace Glazewright.Design.Plant;

/// <summary>What Plant computed on the way, for answers, workings and findings.</summary>
internal sealed record PlantFacts(
    PlantInput Input,
    BuildingForm Form,
    DutyResult Duty,
    Catalogue Catalogue,
    AirState Outside,
    double NeededM3PerS,
    Intake? Intake,
    ExhaustRun? Run,
    WetWallPlant? WetWall,
    FogPlant? Fog,
    FogAsked FogAsked,
    HeatPlant? Heat,
    CurtainPlant? Curtain,
    CirculationPlant? Circulation,
    double DragAreaM2,
    PressurePlant? Pressure,
    int PressureFans,
    bool PressureBeyond,
    VentPlant? Vents,
    EqList<ElectricLoad> Loads,
    CurtainPlant? SecondCurtain,
    UpperFanPlant? Upper)
{
    /// <summary>What the heaters are asked for.</summary>
    public HeatAsked HeatAsked { get; } = HeatAsked.Of(Duty, Pressure);

    /// <summary>Heat of all heaters and bench pipe, W.</summary>
    public double HeatW => (Heat?.Heaters.Sum(h => h.OutputW) ?? 0) + Input.Equipment.BenchPipeW;

    /// <summary>Air speed through the pad with all fans on, m/s; 0 without one.</summary>
    public double AllFansFaceMs => Run is null || Intake?.Pad is null ? 0 : Run.Wet[^1].FlowM3PerS / Intake.PadM2;

    /// <summary>Air behind the pad on the design day at the effectiveness it really has, °C; outside air without one.</summary>
    public double IntakeC => Outside.DryBulbC - (WetWall?.Effectiveness ?? 0) * (Outside.DryBulbC - Outside.WetBulbC);

    /// <summary>How far the hottest design day's air warms on its way at a flow, K: marched through the house as everywhere else.</summary>
    public double RiseK(double flowM3PerS)
    {
        AirState inlet = DesignDayAir.Inlet(Outside, WetWall);
        return AlongHouse.March(inlet, Math.Clamp(flowM3PerS, 0.01, 1e4), Duty.Air.Load with { OutsideC = Outside.DryBulbC }).HottestC - inlet.DryBulbC;
    }

    /// <summary>What the fans are rated for: their tables at 25 Pa (0.10 in w.g.), m³/s.</summary>
    public double RatedM3PerS => Run?.Fans.Sum(e => Science.Flow.FanCurve.Through(e.Points).At(24.908891).FlowM3PerS) ?? 0;

    /// <summary>The piece of the intake path that takes the most pressure with all fans on, and what it takes.</summary>
    public (string Name, double LossPa) Tightest()
    {
        double flow = Run!.Wet[^1].FlowM3PerS;
        return Intake!.Wet(0)
            .Select(p => (p.Name, p.Path.LossPa(flow, Outside.DensityKgPerM3)))
            .MaxBy(p => p.Item2);
    }
}
