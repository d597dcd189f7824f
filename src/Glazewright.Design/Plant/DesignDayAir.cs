using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Science.Air;
using Glazewright.Science.Flow;

namespace Glazewright.Design.Plant;

/// <summary>Air of a design day with a given plant.</summary>
/// <param name="FansOn">Fans running; 0 without fans.</param>
/// <param name="FlowM3PerS">Outside air, m³/s at its own state.</param>
/// <param name="Inlet">What enters the house, before any fog.</param>
/// <param name="Run">The air on its way, behind the fog at the intake.</param>
/// <param name="Fog">Fog that evaporates; null without fog that cools.</param>
public sealed record DesignDayRun(int FansOn, double FlowM3PerS, AirState Inlet, AirRun Run, FogHeld? Fog)
{
    /// <summary>Fog that evaporates, kg/s.</summary>
    public double FogKgPerS => Fog?.WaterKgPerS ?? 0;
}

/// <summary>Air of a hot day with a given plant: through the wet wall, then marched through the house while fog evaporates in it.</summary>
internal static class DesignDayAir
{
    /// <summary>Behind the wet wall where there is one and it does not freeze.</summary>
    public static AirState Inlet(AirState outside, WetWallPlant? pad)
    {
        if (pad is null || outside.DryBulbC <= 0)
        {
            return outside;
        }

        LeavingAir behind = WetWall.Leaving(outside.DryBulbC, outside.WetBulbC, outside.PressurePa, Math.Clamp(pad.Effectiveness, 0, 1));
        return new AirState(behind.DryBulbC, behind.HumidityRatio, outside.PressurePa);
    }

    /// <summary>
    /// The day with all fans, or with as many as the pad serves; with fog that cools, with as many fans as it was sized for, and no more water than keeps the wish. Fog that only moistens is off in such sun.
    /// </summary>
    public static DesignDayRun Of(AirState outside, DutyResult duty, EqList<OperatingPoint> wet, WetWallPlant? pad, FogPlant? fog)
    {
        OperatingPoint? fans = wet.Count == 0 ? null : pad?.Running(wet) ?? wet[^1];
        AirState inlet = Inlet(outside, pad);
        AirLoad load = duty.Air.Load with { OutsideC = outside.DryBulbC };
        if (fog?.Cooling is { } cooling && outside.DryBulbC > 0)
        {
            double fogged = Math.Clamp(cooling.FlowM3PerS, 0.01, 1e4);
            FogHeld held = FogHold.Least(inlet, fogged, load, cooling.WishC, fog.KgPerS * fog.EvaporatedFraction, FogSizing.DampestFraction);
            return new DesignDayRun(cooling.FansOn, fogged, inlet, held.Run, held);
        }

        double flow = Math.Clamp(fans?.FlowM3PerS ?? duty.VentilationM3PerS, 0.01, 1e4);
        return new DesignDayRun(fans?.FansOn ?? 0, flow, inlet, AlongHouse.March(inlet, flow, load), null);
    }
}
