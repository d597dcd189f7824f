using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;
using Glazewright.Science.Flow;
using static Glazewright.Design.Plant.PlantWords;

namespace Glazewright.Design.Choices;

/// <summary>Each quantity the job fixes, against what is asked of it and what we would have chosen.</summary>
internal static class FixedChoices
{
    public static IEnumerable<FixedChoice> Of(
        PlantInput input, BuildingForm form, DutyResult duty, PlantResult plant, PlantResult ours, Catalogue catalogue)
    {
        EquipmentChoice e = input.Equipment;
        if (e.ExhaustFixed.Count > 0 && plant.Exhaust is { } fans)
        {
            double flow = fans.Choice.Wet[^1].FlowM3PerS;
            yield return new FixedChoice(
                "Fans: " + Counted(fans.Choice.Fans.Select(f => f.Entry)),
                Text($"{Cfm(duty.VentilationM3PerS)} cfm"),
                Text($"{Cfm(flow)} cfm at {InWg(fans.Choice.Wet[^1].StaticPa)} in. w.g."),
                flow / Math.Max(duty.VentilationM3PerS, 0.01) - 1,
                ours.Exhaust is { } x ? Text($"{Counted(x.Choice.Fans.Select(f => f.Entry))}: {Cfm(x.Choice.Wet[^1].FlowM3PerS)} cfm") : "none");
        }

        if (e.WetWallWidthM > 0 && plant.WetWall is { } pad)
        {
            double most = catalogue.Pads.First(p => p.Id == pad.Choice.Entry).MostFaceMs;
            double faceMs = plant.Exhaust!.Choice.Wet[^1].FlowM3PerS / (pad.Choice.WidthM * pad.Choice.HeightM);
            yield return new FixedChoice(
                Text($"Wet wall {pad.Choice.WidthM / 0.3048:0.0} × {pad.Choice.HeightM / 0.3048:0.0} ft"),
                Text($"at most {Fpm(most)} fpm"),
                Text($"{Fpm(faceMs)} fpm, all fans on; {100 * pad.Choice.Effectiveness:0} % effective{(pad.Choice.MostFans is { } served ? Text($" with {served} of them") : "")}"),
                most / faceMs - 1,
                ours.WetWall is { } x ? Text($"{x.Choice.Entry}, {x.Choice.WidthM / 0.3048:0.0} × {x.Choice.HeightM / 0.3048:0.0} ft, with the fans we would take") : "none");
        }

        if (e.FogNozzles > 0 && plant.Fog is { } fog)
        {
            yield return new FixedChoice(
                Text($"{fog.Choice.Nozzles} fog nozzles"),
                Text($"{Gph(fog.Choice.KgPerS * fog.Choice.EvaporatedFraction / Math.Max(1 + fog.Margin, 0.01))} gal/h evaporated"),
                Text($"{Gph(fog.Choice.KgPerS * fog.Choice.EvaporatedFraction)} gal/h{(fog.Choice.Cooling is { } hot && hot.WaterKgPerS < 0.99 * fog.Choice.KgPerS * fog.Choice.EvaporatedFraction ? Text($", of which the hottest day's air takes up {Gph(hot.WaterKgPerS)}") : "")}"),
                fog.Margin,
                ours.Fog is { } x ? Text($"{x.Choice.Nozzles} nozzles") : "none");
        }

        if (e.HeatersFixed.Count > 0 && plant.Heat is { } heat)
        {
            double needW = HeatAsked.Of(duty, plant.Pressure).NeedW;
            double heatW = heat.Choice.Heaters.Sum(h => h.OutputW) + e.BenchPipeW;
            yield return new FixedChoice(
                "Heaters: " + Counted(heat.Choice.Heaters.Select(h => h.Entry)),
                Text($"{KBtu(needW)} kBtu/h"),
                Text($"{KBtu(heatW)} kBtu/h; with the largest dead {FloorF(heat.Choice.OneOutHoldsOpenC)}"),
                heat.Margin,
                ours.Heat is { } x ? Counted(x.Choice.Heaters.Select(h => h.Entry)) : "none");
        }

        if (e.CirculationFixed.Count > 0 && plant.Circulation is { } air)
        {
            double need = Circulation.FlowM3PerS(Math.Max(form.FloorAreaM2, 1));
            yield return new FixedChoice(
                Text($"{air.Count} circulation fan{(air.Count == 1 ? "" : "s")}"),
                Text($"{Cfm(need)} cfm, 2 cfm a square foot"),
                Text($"{Cfm(air.Count * air.FlowEachM3PerS)} cfm, {Mph(air.CropSpeedMs)} mph around the loop"),
                air.Count * air.FlowEachM3PerS / need - 1,
                ours.Circulation is { } x ? Text($"{x.Count}") : "none");
        }

        if (e.CurtainHeightM > 0 && plant.Curtain is { } cloth)
        {
            double mostM = Math.Min(form.Roof.LeftEaveM, form.Roof.RightEaveM);
            yield return new FixedChoice(
                Text($"Curtain at {cloth.HeightM / 0.3048:0.0} ft"),
                Text($"under the lower eave, {mostM / 0.3048:0.0} ft"),
                cloth.HeightM <= mostM ? "closes from wall to wall" : Text($"{(cloth.HeightM - mostM) / 0.0254:0} in too high: it cannot close"),
                mostM / cloth.HeightM - 1,
                ours.Curtain is { } x ? Text($"{x.HeightM / 0.3048:0.0} ft") : "none");
        }

        if (e.BenchPipeW > 0 && plant.Heat is null)
        {
            HeatAsked asked = HeatAsked.Of(duty, plant.Pressure);
            yield return new FixedChoice(
                Text($"Bench pipe, {plant.BenchPipeM / 0.3048:N0} ft"),
                Text($"{KBtu(asked.NeedW)} kBtu/h"),
                Text($"{KBtu(e.BenchPipeW)} kBtu/h: {FloorF(Math.Min(duty.Conditions.Heating996C + e.BenchPipeW / asked.LossWPerK, duty.NightTargetC))} with the curtain open; with its boiler dead {FloorF(Math.Min(duty.Conditions.Heating996C, duty.NightTargetC))}"),
                e.BenchPipeW / Math.Max(asked.NeedW, 1) - 1,
                ours.Heat is { } x ? Counted(x.Choice.Heaters.Select(h => h.Entry)) : "none");
        }

        if (plant.Vents is { } vents)
        {
            VentAir passed = VentAir.Of(vents, form, duty.Air.Summer.DryBulbC);
            yield return new FixedChoice(
                Text($"Vents: {Sqft(vents.RoofM2)} ft² roof, {Sqft(vents.SideM2)} ft² side"),
                plant.Exhaust is null ? Text($"{Cfm(duty.VentilationM3PerS)} cfm") : "beside the fans, for mild days",
                Text($"{Cfm(passed.BothM3PerS)} cfm at 7 F° and 4.5 mph"),
                plant.Exhaust is null ? passed.BothM3PerS / Math.Max(duty.VentilationM3PerS, 0.01) - 1 : null,
                ours.Exhaust is { } x ? Counted(x.Choice.Fans.Select(f => f.Entry)) : "none");
        }

        if (e.DehumidifierW > 0 && plant.Dehumidifier is { } dryer)
        {
            yield return new FixedChoice(
                Text($"Dehumidifier, {e.DehumidifierW / 1000:0.0} kW"),
                Text($"{duty.NightMoistureKgPerS * 3600 / 0.45359237:0.0} lb/h on the drying night"),
                Text($"{dryer.WaterKgPerS * 3600 / 0.45359237:0.0} lb/h"),
                dryer.WaterKgPerS / Math.Max(duty.NightMoistureKgPerS, 1e-9) - 1,
                Text($"{duty.NightMoistureKgPerS * 3600 / OtherKinds.WaterKgPerKwh:0.0} kW"));
        }

        if (plant.Co2 is { } gas)
        {
            double needKgPerS = gas.DoseKgPerS / OtherKinds.Co2SpareRatio;
            yield return new FixedChoice(
                Text($"Carbon dioxide, {gas.TargetPpm:#,0} ppm"),
                Text($"{needKgPerS * 3600 / 0.45359237:0.0} lb/h in full light"),
                Text($"valve of {gas.DoseKgPerS * 3600 / 0.45359237:0.0} lb/h, house shut"),
                OtherKinds.Co2SpareRatio - 1,
                "sized by us: the level is the job's wish");
        }

        if (e.LampW > 0)
        {
            double cropM2 = Math.Max(form.FloorAreaM2 * input.Schedule.Select(p => p.PlantedFraction).DefaultIfEmpty(0).Max(), 1);
            double umol = e.LampW * plant.LampUmolPerJ / cropM2;
            double hours = input.Schedule.Select(p => p.LampHours).DefaultIfEmpty(0).Max();
            yield return new FixedChoice(
                Text($"{plant.LampCount} lamps, {e.LampW / 1000:0.0} kW"),
                "what the light map says is lacking",
                Text($"{umol:0} µmol/m²s over the crop{(hours > 0 ? Text($", {umol * hours * 3600e-6:0.0} mol/m² in {hours:0.#} h") : "")}"),
                null,
                "not sized by us: it is the job's wish");
        }

        if (plant.Oscillating is { } swept)
        {
            yield return new FixedChoice(
                Text($"{swept.Count} oscillating fan{(swept.Count == 1 ? "" : "s")}"),
                Text($"{swept.Needed} for this floor"),
                Text($"{Sqft(swept.Count * swept.CoveredEachM2)} ft² at {Mph(OscillatingPlant.PeakMs)} mph while the jet passes"),
                (double)swept.Count / Math.Max(swept.Needed, 1) - 1,
                Text($"{swept.Needed}"));
        }

        if (e.UpperFans is { Count: > 0 } && plant.Upper is { } upper)
        {
            yield return new FixedChoice(
                Text($"{upper.Count} upper fan{(upper.Count == 1 ? "" : "s")}: {upper.Entry}"),
                Text($"{Cfm(upper.NeededM3PerS)} cfm above the drawn shade"),
                Text($"{Cfm(upper.FlowM3PerS)} cfm"),
                upper.NeededM3PerS > 0 ? upper.FlowM3PerS / upper.NeededM3PerS - 1 : null,
                ours.Upper is { } x ? Text($"{x.Count} × {x.Entry}") : "none");
        }

        if (plant.InsectClothM2 > 0)
        {
            yield return new FixedChoice(
                Text($"Insect cloth, {100 * e.InsectScreenPorosityFraction:0} % open{(e.InsectScreen is { Length: > 0 } pest && pest != "none" ? ", against " + pest : "")}"),
                "0.03 in. w.g. when clean",
                Text($"{Sqft(plant.InsectClothM2)} ft² of cloth"),
                null,
                "sized by us: the pest is the job's wish");
        }

        if (e.PositivePressurePa > 0 && plant.Pressure is { } pressure)
        {
            yield return new FixedChoice(
                "Positive pressure",
                Text($"{InWg(e.PositivePressurePa)} in. w.g."),
                Text($"{InWg(pressure.HeldPa)} in. w.g. in calm air; fails at {Mph(pressure.FailsAtWindMs)} mph"),
                pressure.HeldPa / e.PositivePressurePa - 1,
                "not sized by us: it is the job's wish");
        }
    }

    private static string Counted(IEnumerable<string> entries) =>
        string.Join(", ", entries.GroupBy(e => e).Select(g => Text($"{g.Count()} × {g.Key}")));
}
