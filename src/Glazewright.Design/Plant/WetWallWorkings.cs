using Glazewright.Design.Contracts;
using Glazewright.Science.Flow;
using static Glazewright.Design.Plant.PlantWorkings;

namespace Glazewright.Design.Plant;

/// <summary>Water, bleed, sump, pump and pressure of a wet wall.</summary>
internal static class WetWallWorkings
{
    public static void Add(PlantFacts f, List<Figure> figures)
    {
        if (f.WetWall is not { } pad)
        {
            return;
        }

        string house = f.Input.House;
        string running = PlantWords.Running(pad, f.Run!.Fans.Count);
        figures.Add(Figure.Observe(
            $"{house}/plant/pad-evaporation", "Water the pad evaporates on the design day", Unit.KilogramPerSecond, pad.EvaporationKgPerS,
            "Dry air through the pad × rise of its humidity ratio along the wet-bulb line",
            [
                Input("dry_bulb", "Outside", f.Outside.DryBulbC, Unit.Celsius),
                Input("wet_bulb", "Wet bulb", f.Outside.WetBulbC, Unit.Celsius),
                Input("flow", $"Air, {running}", pad.Running(f.Run.Wet).FlowM3PerS, Unit.CubicMetrePerSecond),
                Input("effectiveness", "Effectiveness", pad.Effectiveness, Unit.Fraction),
            ],
            char.ToUpperInvariant(running[0]) + running[1..], new Source.Standard("ASHRAE Handbook—Fundamentals 2017, ch. 1", "eqs (33), (26)", Source.Mark.FromMemory)));
        Term evaporation = Term.Of("evaporation", figures[^1]);
        Term hardness = Term.Of("hardness", "Hardness, mg/L", f.Input.Utilities.HardnessMgPerL, Unit.None, new Source.Given("/utilities/hardness"));
        Term limit = Term.Of("limit", "Hardness the sump may reach, mg/L", SmallSystems.PadHardnessLimitMgPerL, Unit.None, new Source.CommonPractice("about 800 mg/L before a pad scales"));
        figures.Add(Figure.Derive(
            $"{house}/plant/pad-bleed", "Bleed over evaporation", Unit.Fraction,
            Term.Min(Term.Max(hardness / Term.Max(limit - hardness, 1.0), 0.1), 1.0), Balance));
        figures.Add(Figure.Derive(
            $"{house}/plant/pad-make-up", "Water the wet wall draws on the design day", Unit.KilogramPerSecond,
            evaporation * (1.0 + Term.Of("bleed", figures[^1])), Balance));
        Term width = Term.Of("width", "Pad width", pad.WidthM, Unit.Metre, Balance);
        figures.Add(Figure.Derive(
            $"{house}/plant/pad-sump", "Sump", Unit.WaterCubicMetre,
            Term.Of("per_area", "Sump for a square metre of pad, m", f.Intake!.Pad!.SumpMPerM2, Unit.None, new Source.Catalogue(pad.Entry))
                * width * Term.Of("height", "Pad height", pad.HeightM, Unit.Metre, Balance),
            new Source.CommonPractice("0.8 to 1.0 gal a square foot of pad")));
        figures.Add(Figure.Derive(
            $"{house}/plant/pad-water", "Water over the pad", Unit.KilogramPerSecond,
            998.0 * Term.Of("per_width", "Water for a metre of width, m²/s", f.Intake.Pad.WaterM3PerSPerM, Unit.None, new Source.Catalogue(pad.Entry)) * width,
            new Source.CommonPractice("0.5 gal/min a foot of width over a pad of 4 in, 0.8 over one of 6 in")));
        figures.Add(Figure.Derive(
            $"{house}/plant/pad-pump", "Wet wall pump", Unit.ElectricWatt,
            9.81 * Term.Of("water", figures[^1])
                * Term.Of("head", "Head of the pump", f.Intake.Pad.PumpHeadM, Unit.Metre, new Source.Catalogue(pad.Entry))
                / Term.Of("efficiency", "Wire to water", f.Intake.Pad.PumpEfficiency, Unit.Fraction, new Source.Catalogue(pad.Entry)),
            Balance));
        PadKind kind = f.Intake.Pad.Kind;
        figures.Add(Figure.Derive(
            $"{house}/plant/pad-loss", "Pressure the air loses through the pad", Unit.Pascal,
            Term.Of("rated_loss", "Loss at the rated face speed, 1.2 kg/m³", kind.LossAtRatedPa, Unit.Pascal, new Source.Catalogue(pad.Entry))
                * Term.Pow(
                    Term.Of("speed", "Face speed through the pad", pad.FaceSpeedMs, Unit.MetrePerSecond, Balance)
                        / Term.Of("rated", "Rated face speed", kind.RatedFaceMPerS, Unit.MetrePerSecond, new Source.Catalogue(pad.Entry)),
                    kind.LossExponentRatio)
                * (Term.Of("density", "Density of outside air, kg/m³", f.Outside.DensityKgPerM3, Unit.None, Balance) / 1.2),
            new Source.CommonPractice("loss of a corrugated pad rises with face speed to the power 1.75")));
    }
}
