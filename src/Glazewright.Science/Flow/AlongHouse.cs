using Glazewright.Science.Air;
using Glazewright.Science.Crop;
using Glazewright.Science.Guards;

namespace Glazewright.Science.Flow;

/// <summary>What heats, cools and moistens the air on its way from inlet to fans, for the whole house.</summary>
/// <param name="SolarW">Sun kept inside (sensible and latent together), W.</param>
/// <param name="ConductanceWPerK">Faces and ground the air loses heat through, W/K.</param>
/// <param name="OutsideC">Outside air, °C.</param>
/// <param name="PlantedM2">Ground covered by crop, m².</param>
/// <param name="CropSolarWPerM2">Solar radiation on top of the crop, W/m².</param>
/// <param name="LeafAreaRatio">Leaf area per planted area.</param>
/// <param name="SolarFactor">A of the quick transpiration form.</param>
/// <param name="DeficitWPerM2KPa">B of the quick transpiration form, W/(m² kPa).</param>
public sealed record AirLoad(
    double SolarW,
    double ConductanceWPerK,
    double OutsideC,
    double PlantedM2,
    double CropSolarWPerM2,
    double LeafAreaRatio,
    double SolarFactor,
    double DeficitWPerM2KPa)
{
    /// <summary>Fog that would evaporate, sprayed evenly from inlet to fans, kg/s, 0 to 100; what saturated air cannot take up is left out.</summary>
    public double FogKgPerS { get; init; }
}

/// <summary>Air from inlet to fans.</summary>
/// <param name="Stations">States at even distances, inlet first, fans last.</param>
/// <param name="TranspirationKgPerS">Water the crop gave off, kg/s.</param>
/// <param name="CropLatentW">The heat that took, W.</param>
/// <param name="LossW">Heat lost through faces and ground, W.</param>
/// <param name="FogKgPerS">Fog the air took up, kg/s.</param>
public sealed record AirRun(
    IReadOnlyList<AirState> Stations, double TranspirationKgPerS, double CropLatentW, double LossW, double FogKgPerS = 0)
{
    /// <summary>Dampest station, relative humidity.</summary>
    public double DampestFraction => Stations.Max(s => s.RelativeHumidityFraction);

    /// <summary>Hottest station, °C.</summary>
    public double HottestC => Stations.Max(s => s.DryBulbC);
}

/// <summary>A flow that was looked for.</summary>
/// <param name="FlowM3PerS">The flow at the inlet state, m³/s; the best one when the target is out of reach.</param>
/// <param name="HottestC">Hottest air with it, °C.</param>
/// <param name="Reached">Whether the target is held.</param>
public sealed record FlowNeed(double FlowM3PerS, double HottestC, bool Reached);

/// <summary>Energy-and-moisture balance of air that moves in plug flow from inlet to fans.</summary>
/// <remarks>
/// Marched in slices: the sun warms and moistens, the crop transpires by the quick form at the slice's own deficit, fog evaporates in what room is left, both stop at saturation, faces lose heat.
/// No mixing along the house, which makes the fan end a little too hot rather than too cool. First-law balance, ours; see docs/methods/air-and-plant.md.
/// </remarks>
public static class AlongHouse
{
    /// <summary>Slices the house is marched in.</summary>
    public const int Slices = 40;

    /// <summary>Marches the air from inlet to fans.</summary>
    /// <param name="inlet">Air that enters, −60 to 60 °C.</param>
    /// <param name="flowM3PerS">Its flow, m³/s, 0.01 to 1e4.</param>
    /// <param name="load">What acts on it.</param>
    /// <returns>The run.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static AirRun March(AirState inlet, double flowM3PerS, AirLoad load)
    {
        Within.Require(inlet.DryBulbC, -60, 60);
        Within.Require(flowM3PerS, 0.01, 1e4);
        Within.Require(load.SolarW, 0, 1e9);
        Within.Require(load.ConductanceWPerK, 0, 1e8);
        Within.Require(load.PlantedM2, 0, 1e6);
        Within.Require(load.FogKgPerS, 0, 100);
        double dryKgPerS = flowM3PerS / inlet.VolumeM3PerKg;
        var stations = new AirState[Slices + 1];
        stations[0] = inlet;
        double water = 0;
        double latentW = 0;
        double lossW = 0;
        double fogTaken = 0;
        for (int i = 0; i < Slices; i++)
        {
            AirState start = stations[i];
            double cropW = Math.Min(
                Transpiration.QuickKernel(
                    load.CropSolarWPerM2,
                    Math.Max(Math.Exp(Saturation.LogPressure(start.DryBulbC)) - start.VapourPressurePa, 0),
                    load.LeafAreaRatio,
                    load.SolarFactor,
                    load.DeficitWPerM2KPa) * load.PlantedM2 / Slices,
                0.05 * dryKgPerS * Transpiration.LatentJPerKg);
            double fogW = Math.Min(load.FogKgPerS / Slices, 0.05 * dryKgPerS) * Transpiration.LatentJPerKg;
            double solarW = load.SolarW / Slices;
            double conductance = load.ConductanceWPerK / Slices;
            double capacity = dryKgPerS * start.HeatJPerKgK;
            // Exact for the wall loss within the slice, so a slow flow cannot overshoot the outside temperature.
            AirState Leave(double evaporatedW)
            {
                double settledC = load.OutsideC + (conductance > 0 ? (solarW - evaporatedW) / conductance : 0);
                double nextC = conductance > 0
                    ? settledC + (start.DryBulbC - settledC) * Math.Exp(-conductance / capacity)
                    : start.DryBulbC + (solarW - evaporatedW) / capacity;
                double ratio = start.HumidityRatio + evaporatedW / (Transpiration.LatentJPerKg * dryKgPerS);
                return new AirState(Math.Clamp(nextC, -60, 80), ratio, start.PressurePa);
            }

            AirState next = Leave(cropW + fogW);
            if (next.HumidityRatio > Saturation.RatioKernel(next.DryBulbC, next.PressurePa))
            {
                // The crop first: what is left of the room takes fog, the rest of it falls.
                (next, double mostW) = AtSaturation(Leave, cropW + fogW);
                cropW = Math.Min(cropW, mostW);
                fogW = mostW - cropW;
            }

            stations[i + 1] = next;
            water += cropW / Transpiration.LatentJPerKg;
            latentW += cropW;
            fogTaken += fogW / Transpiration.LatentJPerKg;
            lossW += solarW - cropW - fogW - capacity * (next.DryBulbC - start.DryBulbC);
        }

        return new AirRun(stations, water, latentW, lossW, fogTaken);
    }

    /// <summary>Least flow that keeps the hottest air at a temperature.</summary>
    /// <param name="inletAt">Inlet state by flow, m³/s: behind a wet wall it changes with face velocity.</param>
    /// <param name="load">What acts on the air.</param>
    /// <param name="hottestC">Highest temperature wanted, °C, −60 to 60.</param>
    /// <param name="mostM3PerS">Most flow to try, m³/s, 0.1 to 1e4.</param>
    /// <returns>The flow; or, out of reach, the flow that comes nearest.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static FlowNeed RequiredFlow(
        Func<double, AirState> inletAt, AirLoad load, double hottestC, double mostM3PerS)
    {
        Within.Require(hottestC, -60, 60);
        Within.Require(mostM3PerS, 0.1, 1e4);
        double Hottest(double flow) => March(inletAt(flow), flow, load).HottestC;
        const int Tries = 48;
        double least = Math.Max(mostM3PerS / 500, 0.01);
        double before = least;
        double best = least;
        double bestC = double.PositiveInfinity;
        for (int i = 0; i <= Tries; i++)
        {
            double flow = least * Math.Pow(mostM3PerS / least, (double)i / Tries);
            double reachedC = Hottest(flow);
            if (reachedC <= hottestC)
            {
                double needed = i == 0
                    ? flow
                    : Roots.Bracketed.Find(f => Hottest(f) - hottestC, before, flow, 1e-6).Argument;
                return new FlowNeed(needed, Hottest(needed), true);
            }

            if (reachedC < bestC)
            {
                (best, bestC) = (flow, reachedC);
            }

            before = flow;
        }

        return new FlowNeed(best, bestC, false);
    }

    /// <summary>Outside air that carries away moisture at night.</summary>
    /// <param name="moistureKgPerS">Moisture to remove, kg/s, 0 to 100.</param>
    /// <param name="inside">Inside air at the humidity wanted.</param>
    /// <param name="outside">Outside air, drier than the inside.</param>
    /// <returns>Flow of outside air at its own state, m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range, NaN, or outside air not drier.</exception>
    public static double DryingFlowM3PerS(double moistureKgPerS, AirState inside, AirState outside)
    {
        Within.Require(moistureKgPerS, 0, 100);
        Within.Require(outside.HumidityRatio, 0, inside.HumidityRatio - 1e-6);
        return moistureKgPerS / (inside.HumidityRatio - outside.HumidityRatio) * outside.VolumeM3PerKg;
    }

    private static (AirState State, double LatentW) AtSaturation(Func<double, AirState> leave, double mostW)
    {
        double lower = 0;
        double upper = mostW;
        for (int i = 0; i < 60; i++)
        {
            double middle = 0.5 * (lower + upper);
            AirState state = leave(middle);
            if (state.HumidityRatio < Saturation.RatioKernel(state.DryBulbC, state.PressurePa))
            {
                lower = middle;
            }
            else
            {
                upper = middle;
            }
        }

        return (leave(lower), lower);
    }
}
