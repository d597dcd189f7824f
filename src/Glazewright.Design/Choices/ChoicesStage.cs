using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;
using Glazewright.Design.Takeoff;
using Glazewright.Science.Air;

namespace Glazewright.Design.Choices;

/// <summary>Choices: the plant beside itself with one thing changed, and what the job's fixed quantities hold.</summary>
public static class ChoicesStage
{
    /// <summary>Raise when results change.</summary>
    public const int Version = 8;

    /// <summary>Compares.</summary>
    /// <param name="asked">What Choices reads of the job.</param>
    /// <param name="form">The house's shape.</param>
    /// <param name="duty">What the design days ask.</param>
    /// <param name="plant">The plant as chosen.</param>
    /// <param name="catalogue">Equipment to choose from.</param>
    /// <returns>Fixed quantities and alternatives; sun and shade are those of the chosen plant.</returns>
    public static ChoicesResult Run(ChoicesInput asked, BuildingForm form, DutyResult duty, PlantResult plant, Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(asked);
        ArgumentNullException.ThrowIfNull(plant);
        (PlantInput input, UnitSystem units) = asked;
        EquipmentChoice chosen = AsChosen(input.Equipment, plant);
        List<Alternative> all = [Of(ChoiceKind.Chosen, "As chosen", input, chosen, units, form, duty, catalogue)];
        foreach ((ChoiceKind kind, string label, EquipmentChoice e) in Others(input, chosen, plant, duty, catalogue))
        {
            all.Add(Of(kind, label, input, e, units, form, duty, catalogue));
        }

        PlantResult? ours = IsFixed(input.Equipment) ? PlantStage.Run(input with { Equipment = Free(input.Equipment) }, form, duty, catalogue) : null;
        return new ChoicesResult(input.House, ours is null ? [] : FixedChoices.Of(input, form, duty, plant, ours, catalogue).ToEqList(), all.ToEqList());
    }

    /// <summary>The plants that the alternatives stand for, in their order, the chosen one first.</summary>
    /// <param name="asked">What Choices reads of the job.</param>
    /// <param name="form">The house's shape.</param>
    /// <param name="duty">What the design days ask.</param>
    /// <param name="plant">The plant as chosen.</param>
    /// <param name="catalogue">Equipment to choose from.</param>
    /// <returns>What each is called and how it is sized: nothing is sized before it is asked for.</returns>
    internal static IEnumerable<(string Label, Func<PlantResult> Size)> Plants(ChoicesInput asked, BuildingForm form, DutyResult duty, PlantResult plant, Catalogue catalogue)
    {
        PlantInput input = asked.Plant;
        EquipmentChoice chosen = AsChosen(input.Equipment, plant);
        yield return ("As chosen", () => plant);
        foreach ((_, string label, EquipmentChoice e) in Others(input, chosen, plant, duty, catalogue))
        {
            yield return (label, () => PlantStage.Run(input with { Equipment = e }, form, Asked(input, e, form, duty), catalogue));
        }
    }

    /// <summary>The chosen machines as if the job had fixed them: an alternative changes one thing only.</summary>
    private static EquipmentChoice AsChosen(EquipmentChoice e, PlantResult plant) => e with
    {
        ExhaustFixed = (plant.Exhaust?.Choice.Fans ?? []).GroupBy(f => f.Entry).Select(g => new FixedItem(g.Key, g.Count())).ToEqList(),
        WetWallEntry = plant.WetWall?.Choice.Entry ?? e.WetWallEntry,
        WetWallWidthM = plant.WetWall?.Choice.WidthM ?? e.WetWallWidthM,
        WetWallHeightM = plant.WetWall?.Choice.HeightM ?? e.WetWallHeightM,
        FogNozzles = plant.Fog?.Choice.Nozzles ?? e.FogNozzles,
        HeatersFixed = (plant.Heat?.Choice.Heaters ?? []).GroupBy(h => h.Entry).Select(g => new FixedItem(g.Key, g.Count())).ToEqList(),
    };

    private static bool IsFixed(EquipmentChoice e) =>
        e.ExhaustFixed.Count > 0 || e.WetWallWidthM > 0 || e.FogNozzles > 0 || e.HeatersFixed.Count > 0 || e.CirculationFixed.Count > 0 || e.CurtainHeightM > 0 || e.PositivePressurePa > 0
        || e.BenchPipeW > 0 || e.RoofVentFraction > 0 || e.SideVentFraction > 0 || e.DehumidifierW > 0 || e.Co2Ppm > 0 || e.LampW > 0 || e.OscillatingFans > 0
        || e.UpperFans is { Count: > 0 } || e.InsectScreenPorosityFraction > 0;

    // Heated by pipe alone we would take heaters; cooled by vents alone, fans.
    private static EquipmentChoice Free(EquipmentChoice e) => e with
    {
        Heaters = e.Heaters || e.BenchPipeW > 0,
        BenchPipeW = e.Heaters ? e.BenchPipeW : 0,
        Exhaust = e.Exhaust || e.RoofVentFraction > 0 || e.SideVentFraction > 0,
        UpperFans = e.UpperFans is null ? null : UpperFans.ToSize,
        ExhaustFixed = [],
        WetWallEntry = "",
        WetWallWidthM = 0,
        WetWallHeightM = 0,
        FogNozzles = 0,
        HeatersFixed = [],
        SealedCombustion = true,
        CirculationFixed = [],
        CurtainHeightM = 0,
    };

    private static IEnumerable<(ChoiceKind Kind, string Label, EquipmentChoice Equipment)> Others(
        PlantInput input, EquipmentChoice e, PlantResult plant, DutyResult duty, Catalogue catalogue)
    {
        if (plant.Exhaust?.Choice is { } exhaust)
        {
            FanUnit large = exhaust.Fans.MaxBy(f => f.DiameterM)!;
            if (exhaust.Fans.Count > 1)
            {
                yield return (ChoiceKind.Fans, "One fan fewer of the largest", e with { ExhaustFixed = Added(e.ExhaustFixed, large.Entry, -1) });
            }

            yield return (ChoiceKind.Fans, "One fan more of the largest", e with { ExhaustFixed = Added(e.ExhaustFixed, large.Entry, 1) });
            foreach ((string label, bool pad, bool fog) in ((string, bool, bool)[])[("Wet wall alone", true, false), ("Fog alone", false, true), ("Wet wall and fog", true, true), ("Neither wet wall nor fog", false, false)])
            {
                if (pad != e.WetWall || fog != e.Fog)
                {
                    yield return (ChoiceKind.Cooling, label, e with { WetWall = pad, Fog = fog });
                }
            }
        }

        if (plant.Heat?.Choice is { } heat && heat.Heaters.Count > 0)
        {
            HeaterUnit large = heat.Heaters.MaxBy(h => h.OutputW)!;
            if (heat.Heaters.Count > 1)
            {
                yield return (ChoiceKind.Heat, "One heater fewer", e with { HeatersFixed = Added(e.HeatersFixed, large.Entry, -1) });
            }

            yield return (ChoiceKind.Heat, "One heater more, for when one is dead", e with { HeatersFixed = Added(e.HeatersFixed, large.Entry, 1) });
            double needW = HeatSizing.Reserve * HeatAsked.Of(duty, plant.Pressure).NeedW;
            bool electric = heat.Heaters.All(h => h.Electric);
            List<HeaterEntry> other = [.. catalogue.Heaters.Where(h => h.Part is null && (electric ? !h.Electric && h.Sealed : h.Electric)).OrderBy(h => h.OutputW)];
            if (other.Count > 0 && (!electric || input.Utilities.Fuel != FuelKind.None))
            {
                int count = Enumerable.Range(2, 60).FirstOrDefault(n => other.Exists(h => n * h.OutputW >= needW), 61);
                HeaterEntry pick = other.Find(h => count * h.OutputW >= needW) ?? other[^1];
                yield return (ChoiceKind.Heat, electric ? "Fuel-fired heaters instead" : "Electric heaters instead", e with { HeatersFixed = [new FixedItem(pick.Id, count)] });
            }

            yield return (ChoiceKind.Heat, "Hot-water pipe from one boiler instead", e with { Heaters = false, HeatersFixed = [], BenchPipeW = needW });
        }

        for (int curtains = 0; curtains <= 2; curtains++)
        {
            if (curtains != e.Curtains)
            {
                yield return (ChoiceKind.Curtain, curtains switch { 0 => "No curtain", 1 => "One curtain", _ => "Two curtains" }, e.WithCurtains(curtains));
            }
        }
    }

    private static EqList<FixedItem> Added(EqList<FixedItem> items, string entry, int more) => items
        .Select(i => i.Entry == entry ? i with { Count = i.Count + more } : i).Where(i => i.Count > 0).ToEqList();

    private static Alternative Of(
        ChoiceKind kind, string label, PlantInput input, EquipmentChoice e, UnitSystem units, BuildingForm form, DutyResult duty, Catalogue catalogue)
    {
        DutyResult asked = Asked(input, e, form, duty);
        PlantResult plant = PlantStage.Run(input with { Equipment = e }, form, asked, catalogue);
        double flow = plant.FansOnDesignDay?.FlowM3PerS ?? 0;
        AirState hot = duty.Air.Summer;
        AirState damp = WetDay(duty);
        (double hottestC, double humidity) = flow > 0 ? Hottest(hot, duty, plant) : (0, 0);
        double wetDayC = flow > 0 ? Hottest(damp, duty, plant).HottestC : 0;
        HeatAsked heat = HeatAsked.Of(asked, plant.Pressure);
        double heatW = (plant.Heat?.Choice.Heaters.Sum(h => h.OutputW) ?? 0) + plant.BenchPipeW;
        double largestW = Math.Max(plant.Heat?.Choice.Heaters.Select(h => h.OutputW).DefaultIfEmpty(0).Max() ?? 0, plant.BenchPipeW);
        double HoldsC(double w) => Math.Min(duty.Conditions.Heating996C + w / heat.LossWPerK, duty.NightTargetC);
        double nightW = Math.Min(heat.LossDrawnWPerK * Math.Max(duty.NightTargetC - duty.Conditions.Heating996C, 0), heatW);
        double electricShare = heatW > 0 ? (plant.Heat?.Choice.Heaters.Where(h => h.Electric).Sum(h => h.OutputW) ?? 0) / heatW : 0;
        double efficiency = plant.Heat?.Choice.Heaters.Where(h => !h.Electric).Select(h => h.EfficiencyFraction).DefaultIfEmpty(Services.FluidServices.BoilerEfficiency).Min() ?? Services.FluidServices.BoilerEfficiency;
        var book = new LineBook([], units);
        EquipmentTakeoff.Book(book, plant, form);
        return new Alternative(
            kind,
            label,
            flow,
            hottestC,
            humidity,
            wetDayC,
            (plant.FansOnDesignDay?.PowerW ?? 0) + (plant.WetWall?.Choice.PumpW ?? 0) + (plant.Fog?.Choice.PumpW ?? 0),
            (plant.WetWall is { } pad ? pad.Choice.EvaporationKgPerS * (1 + pad.Choice.BleedFraction) : 0) + (plant.Fog?.Choice.KgPerS ?? 0),
            heatW,
            HoldsC(heatW),
            HoldsC(heatW - largestW),
            heat.LossDrawnWPerK * Math.Max(duty.NightTargetC - duty.Conditions.Heating996C, 0),
            nightW * (1 - electricShare) / efficiency,
            nightW * electricShare,
            book.Finish());
    }

    // What the nights ask with other curtains.
    private static DutyResult Asked(PlantInput input, EquipmentChoice e, BuildingForm form, DutyResult duty)
    {
        if (e.Curtains == input.Equipment.Curtains && e.SecondCurtain == input.Equipment.SecondCurtain)
        {
            return duty;
        }

        double curtainM = e.CurtainM(Math.Min(form.Roof.LeftEaveM, form.Roof.RightEaveM));
        double above = DutyStage.Above(duty.Losses, form, curtainM);
        double drawn = e.Curtains > 0 ? duty.LossWPerK - above + DutyStage.CurtainedWPerK(above, form.FloorAreaM2, e.Layers, e.SecondCurtain?.OpennessFraction) : duty.LossWPerK;
        return duty with { LossDrawnWPerK = drawn, HeatLossDrawnW = drawn * Math.Max(duty.NightTargetC - duty.Conditions.Heating996C, 0) };
    }

    private static AirState WetDay(DutyResult duty)
    {
        DesignCase? day = duty.Air.Days.FirstOrDefault(d => d.Label.Contains("wet bulb", StringComparison.OrdinalIgnoreCase));
        double dryC = day is null ? duty.Conditions.Evaporation04C + 4 : day.DryBulbC;
        return AirState.FromWetBulb(Math.Max(dryC, duty.Conditions.Evaporation04C), duty.Conditions.Evaporation04C, duty.PressurePa);
    }

    private static (double HottestC, double HumidityFraction) Hottest(AirState outside, DutyResult duty, PlantResult plant)
    {
        AirState hottest = DesignDayAir.Of(outside, duty, plant.Exhaust?.Choice.Wet ?? [], plant.WetWall?.Choice, plant.Fog?.Choice).Run.Stations.Reverse().MaxBy(s => Math.Round(s.DryBulbC, 1))!; // of equally hot places the one nearer the fans: the damper one
        return (hottest.DryBulbC, hottest.RelativeHumidityFraction);
    }
}
