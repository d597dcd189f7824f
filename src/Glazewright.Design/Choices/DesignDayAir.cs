using Glazewright.Design.Plant;
using Glazewright.Science.Air;
using Glazewright.Science.Flow;

namespace Glazewright.Design.Choices;

/// <summary>Air of a hot day with a given plant: through the wet wall, fogged, then marched through the house.</summary>
internal static class DesignDayAir
{
    /// <summary>Supply water of fog, °C.</summary>
    public const double WaterC = 15;

    /// <summary>Air that comes in: behind the wet wall, with the fog that can evaporate in it.</summary>
    public static AirState Inlet(AirState outside, double flowM3PerS, WetWallPlant? pad, FogPlant? fog)
    {
        AirState air = outside;
        if (pad is not null && air.DryBulbC > 0)
        {
            LeavingAir behind = WetWall.Leaving(air.DryBulbC, air.WetBulbC, air.PressurePa, Math.Clamp(pad.Effectiveness, 0, 1));
            air = new AirState(behind.DryBulbC, behind.HumidityRatio, air.PressurePa);
        }

        return fog is not null && air.DryBulbC > 0
            ? Fog.Spray(air, Math.Min(fog.KgPerS * fog.EvaporatedFraction * air.VolumeM3PerKg / Math.Max(flowM3PerS, 0.01), 0.1), WaterC).State
            : air;
    }

    /// <summary>Stations from inlet to fans.</summary>
    public static AirRun Run(AirState outside, AirLoad load, double flowM3PerS, WetWallPlant? pad, FogPlant? fog) =>
        AlongHouse.March(Inlet(outside, flowM3PerS, pad, fog), Math.Clamp(flowM3PerS, 0.01, 1e4), load with { OutsideC = outside.DryBulbC });
}
