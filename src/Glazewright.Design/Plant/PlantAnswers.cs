using Glazewright.Design.Contracts;

namespace Glazewright.Design.Plant;

/// <summary>Each system against what is asked of it: met with a margin, or missed with what limits it.</summary>
internal static class PlantAnswers
{
    public static Answer<ExhaustPlant> Exhaust(PlantFacts f, ExhaustPlant plant)
    {
        double flow = plant.Wet[^1].FlowM3PerS;
        (string name, double lossPa) = f.Tightest();
        return Pick.Judge(
            plant,
            flow / f.NeededM3PerS - 1,
            PlantWords.ExhaustLimit(f, plant.Wet[^1], name, lossPa));
    }

    public static Answer<WetWallPlant> WetWall(PlantFacts f, WetWallPlant plant)
    {
        double most = f.Intake!.Pad!.MostFaceMs;
        return Pick.Judge(plant, most / Math.Max(f.AllFansFaceMs, 0.02) - 1, PlantWords.PadLimit(f.AllFansFaceMs, most, f.Intake.PadM2, f.RatedM3PerS, f.Intake.Pad.Kind.RatedFaceMPerS));
    }

    public static Answer<FogPlant> Fog(PlantFacts f, FogPlant plant)
    {
        double evaporated = plant.KgPerS * plant.EvaporatedFraction;
        return f.FogAsked.NeedKgPerS > 0
            ? Pick.Judge(plant, evaporated / f.FogAsked.NeedKgPerS - 1, PlantWords.FogLimit(evaporated, f.FogAsked))
            : new Answer<FogPlant>.Met(plant, 0);
    }

    public static Answer<HeatPlant> Heat(PlantFacts f, HeatPlant plant)
    {
        double needW = f.HeatAsked.NeedW;
        return needW > 0
            ? Pick.Judge(plant, f.HeatW / needW - 1, PlantWords.HeatLimit(f.HeatW, f.Duty, f.HeatAsked))
            : new Answer<HeatPlant>.Met(plant, 0);
    }
}
