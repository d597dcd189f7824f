using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Duty;
using Glazewright.Science.Air;
using Glazewright.Science.Flow;

namespace Glazewright.Design.Plant;

/// <summary>What is asked of the fog.</summary>
/// <param name="HumidityKgPerS">Water that must evaporate to keep a dry sunny day as damp as wished, kg/s.</param>
/// <param name="Cooling">Fog that cools the hottest design day; null where fans and wet wall hold it alone, and without fans.</param>
internal sealed record FogAsked(double HumidityKgPerS, FogCooling? Cooling)
{
    public static readonly FogAsked Nothing = new(0, null);

    /// <summary>The larger of both, kg/s evaporated.</summary>
    public double NeedKgPerS => Math.Max(HumidityKgPerS, Cooling?.WaterKgPerS ?? 0);

    /// <summary>What the larger of both is for.</summary>
    public string For => Cooling is { } c && c.WaterKgPerS >= HumidityKgPerS
        ? c.Reached ? "on the hottest design day" : "on the hottest design day, which is what its air can take"
        : "to keep a dry sunny day as damp as wished";
}

/// <summary>Sizes fog by the wish: so much water, with so many fans, that the hottest air of the design day stays below what is wished.</summary>
internal static class FogSizing
{
    /// <summary>Fog brings no air above this humidity: drops stop evaporating and wet the crop (common practice: 85 to 95 %). The control program's ceiling is the same.</summary>
    public const double DampestFraction = 0.92;

    /// <summary>Water asked for when as many nozzles may be had as it takes.</summary>
    public static FogAsked Asked(PlantInput input, DutyResult duty, AirState outside, ExhaustRun? fans, WetWallPlant? pad) =>
        new(HumidityKgPerS(input, duty), Cooling(duty, outside, fans, pad, 100));

    /// <summary>The nozzles chosen or fixed, and what they do on the hottest design day.</summary>
    public static FogPlant Of(PlantInput input, DutyResult duty, AirState outside, ExhaustRun? fans, WetWallPlant? pad, Catalogue catalogue, FogAsked asked)
    {
        EquipmentChoice e = input.Equipment;
        FogEntry fog = e.FogEntry.Length > 0
            ? Pick.ById(catalogue.Fogs, e.FogEntry, f => f.Id, $"{input.Pointer}/equipment/fog")
            : catalogue.Fogs[0];
        int nozzles = e.FogNozzles > 0
            ? e.FogNozzles
            : Math.Max((int)Math.Ceiling(asked.NeedKgPerS / (fog.NozzleKgPerS * fog.EvaporatedFraction) - 1e-9), 1);
        double water = nozzles * fog.NozzleKgPerS;
        return new FogPlant(
            fog.Id, nozzles, water, fog.EvaporatedFraction, fog.PressurePa, PumpPower.ShaftW(water / 998, fog.PressurePa, fog.PumpEfficiency),
            asked.Cooling is null ? null : Cooling(duty, outside, fans, pad, water * fog.EvaporatedFraction));
    }

    /// <summary>
    /// Fog with as many fans as it takes: of the stages that hold the wish the one with the least water, of those that do not the coolest. Behind a wet wall all fans run that it serves.
    /// </summary>
    private static FogCooling? Cooling(DutyResult duty, AirState outside, ExhaustRun? fans, WetWallPlant? pad, double mostKgPerS)
    {
        // Without fans nobody knows the air that carries the damp away: then fog is counted to moisten alone.
        if (fans is null)
        {
            return null;
        }

        AirState inlet = DesignDayAir.Inlet(outside, pad);
        double wishC = duty.Air.HottestWishC;
        (int FansOn, double FlowM3PerS)[] stages = pad?.Running(fans.Wet) is { } running ? [(running.FansOn, running.FlowM3PerS)]
            : [.. fans.Dry.Select(p => (p.FansOn, p.FlowM3PerS))];
        FogCooling? best = null;
        foreach ((int on, double asked) in stages.Reverse())
        {
            double flow = Math.Clamp(asked, 0.01, 1e4);
            FogHeld held = FogHold.Least(inlet, flow, duty.Air.Load, wishC, mostKgPerS, DampestFraction);
            if (held is { WaterKgPerS: <= 0, Reached: true } && best is null)
            {
                // All fans hold it without water.
                return null;
            }

            var here = new FogCooling(on, flow, held.WaterKgPerS, held.WaterKgPerS > 0 ? held.IntakeKgPerS / held.WaterKgPerS : 0, held.Run.HottestC, held.Run.DampestFraction, wishC, held.Reached);
            if (best is null || (here.Reached == best.Reached ? here.Reached ? here.WaterKgPerS < best.WaterKgPerS : here.HottestC < best.HottestC : here.Reached))
            {
                best = here;
            }
        }

        return best;
    }

    /// <summary>First-stage air of a dry sunny day (20 °C, dew point 2 °C: common practice) brought to the dampest day target, less the crop's own.</summary>
    private static double HumidityKgPerS(PlantInput input, DutyResult duty)
    {
        AirState dryDay = AirState.FromDewPoint(20, 2, duty.PressurePa);
        double flow = 0.25 * duty.VentilationM3PerS;
        double ratio = input.Schedule.Where(p => p.Day.HumidityAtTargetPercent > 0)
            .Select(p => AirState.FromRelativeHumidity(
                Math.Clamp(p.Day.TemperatureC, -20, 50), Math.Clamp(p.Day.HumidityAtTargetPercent / 100, 0, 1), duty.PressurePa).HumidityRatio)
            .DefaultIfEmpty(0).Max();
        return Math.Max(flow / dryDay.VolumeM3PerKg * (ratio - dryDay.HumidityRatio) - duty.TranspirationKgPerS, 0);
    }
}
