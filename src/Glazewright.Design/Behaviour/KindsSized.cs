using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;
using Glazewright.Science.Climate;
using Glazewright.Science.Crop;
using Glazewright.Science.Flow;
using static Glazewright.Design.Plant.PlantWords;

namespace Glazewright.Design.Behaviour;

/// <summary>Vents, pipe, lamps, CO₂, dehumidifier: sized simply but physically.</summary>
internal static class KindsSized
{
    public static IEnumerable<KindSized> Of(PlantInput input, BuildingForm form, DutyResult duty, PlantResult plant, Catalogue catalogue)
    {
        EquipmentChoice e = input.Equipment;
        double lowEaveM = Math.Min(form.Roof.LeftEaveM, form.Roof.RightEaveM);
        double roofM2 = plant.Vents is { } v ? v.RoofM2 : 0.15 * form.FloorAreaM2;
        double sideM2 = plant.Vents is { } w ? w.SideM2 : 0.15 * form.FloorAreaM2;
        double passing = plant.Vents?.ScreenedFraction ?? VentAir.ScreenedFraction(e.InsectScreenPorosityFraction);
        VentAir air = VentAir.Of(passing * roofM2, passing * sideM2, form, duty.Air.Summer.DryBulbC);
        yield return new KindSized(
            "Roof and side vents",
            plant.Vents is not null,
            air.Alone
                ? Text($"{Sqft(Math.Max(roofM2, sideM2))} ft² in the {(roofM2 > 0 ? "roof" : "side")} alone: air comes and goes by the same openings")
                : Text($"{Sqft(roofM2)} ft² in the roof, {Sqft(sideM2)} ft² in the side{(plant.Vents is null ? ", 15 % of the floor each" : "")}"),
            Text($"{Cfm(air.StackM3PerS)} cfm by warmth alone at 7 F° (4 K), {Cfm(air.WindM3PerS)} cfm by a 4.5 mph wind alone, {Cfm(air.BothM3PerS)} cfm together: {100 * air.BothM3PerS / Math.Max(duty.VentilationM3PerS, 0.01):0} % of what the design day asks"),
            "Wind closes or tears them: the program holds them back by wind and rain; screens take half the air.");
        double pipeW = e.BenchPipeW > 0 ? e.BenchPipeW : duty.HeatLossDrawnW;
        yield return new KindSized(
            "Hot-water pipe",
            e.BenchPipeW > 0,
            Text($"{pipeW / catalogue.Pipes[0].OutputWPerM / 0.3048:N0} ft of {catalogue.Pipes[0].Name}"),
            Text($"{KBtu(pipeW)} kBtu/h{(e.BenchPipeW > 0 ? "" : ", the design night with the curtain drawn")}"),
            "Scalding water at hand height: guard or lower it; relief, low-water cut-off, drain-down.");
        if (catalogue.Lamps.Count > 0)
        {
            LampEntry lamp = catalogue.Lamps[0];
            double cropM2 = Math.Max(form.FloorAreaM2 * input.Schedule.Select(p => p.PlantedFraction).DefaultIfEmpty(0).Max(), 1);
            double lampW = e.LampW > 0 ? e.LampW : 100 * cropM2 / (lamp.EfficacyUmolPerJ * OtherKinds.LampUseFraction);
            double umol = lampW * lamp.EfficacyUmolPerJ * OtherKinds.LampUseFraction / cropM2;
            yield return new KindSized(
                "Lamps",
                e.LampW > 0,
                Text($"{Math.Ceiling(lampW / lamp.PowerW):0} of {lamp.Name}, {lampW / 1000:0.0} kW"),
                Text($"{umol:0} µmol/m²s over the crop, {umol * 3600 * 16 / 1e6:0.0} mol/m² in 16 h; {KBtu(lampW)} kBtu/h of heat in the house"),
                "Clear of the curtain's clearance; glare and glow to neighbours.");
        }

        if (plant.SecondCurtain is null && plant.Curtain is null or { Layers: < 2 })
        {
            double curtainM = plant.Curtain?.HeightM ?? lowEaveM - 0.15;
            double above = DutyStage.Above(duty.Losses, form, curtainM);
            int next = (plant.Curtain?.Layers ?? 0) + 1;
            double drawn = duty.LossWPerK - above + DutyStage.CurtainedWPerK(above, form.FloorAreaM2, next);
            yield return new KindSized(
                next == 1 ? "A curtain" : "A second curtain",
                false,
                Text($"{Sqft(SmallSystems.WidthAtM(form, curtainM) * form.LengthM)} ft² of cloth and a drive"),
                Text($"saves {100 * (1 - drawn / duty.LossDrawnWPerK):0} % of the night's heat beyond what is drawn now"),
                "Flame-spread class, clearances and fire break as for the first.");
        }

        double planted = form.FloorAreaM2 * input.Schedule.Select(p => p.PlantedFraction).DefaultIfEmpty(0).Max();
        double ppm = plant.Co2?.TargetPpm ?? 1000;
        double aired = plant.Exhaust is { } x ? x.Choice.Wet[0].FlowM3PerS / form.VolumeM3 * 3600 : plant.Vents is not null ? air.BothM3PerS / form.VolumeM3 * 3600 : 2;
        double need = plant.Co2?.DoseKgPerS / OtherKinds.Co2SpareRatio ?? CarbonDioxide.DoseKgPerS(form.VolumeM3, OtherKinds.ChangesPerHour(input, form, plant.Pressure), ppm, CarbonDioxide.OutsidePpm, Math.Min(CarbonDioxide.FullCropUptakeKgPerSM2 * planted, 10), Math.Clamp(duty.PressurePa, 40_000, 120_000));
        yield return new KindSized(
            "CO₂ dosing",
            plant.Co2 is not null,
            Text($"{need * 3600 / 0.45359237:0.0} lb/h taken at noon, by a valve of {OtherKinds.Co2SpareRatio * need * 3600 / 0.45359237:0.0} lb/h"),
            Text($"{ppm:#,0} ppm with vents and fans shut; half an hour of {aired:0} air changes an hour {(plant.Exhaust is not null ? "by the first fan" : plant.Vents is not null ? "through the vents" : "through doors")} leaves {CarbonDioxide.AfterPpm(ppm, CarbonDioxide.OutsidePpm, Math.Clamp(aired, 0, 100), 0.5):0} ppm"),
            "CO₂ suffocates without warning: alarm at 5,000 ppm, off with exhaust, no dosing while people work in a closed house.");
        double litres = plant.Dehumidifier is { } dryer ? dryer.WaterKgPerS * 3600 : duty.NightMoistureKgPerS * 3600;
        yield return new KindSized(
            "Dehumidifier",
            plant.Dehumidifier is not null,
            Text($"{litres / 0.45359237:0.0} lb/h, about {litres / OtherKinds.WaterKgPerKwh:0.0} kW"),
            Text($"{(plant.Dehumidifier is null ? "the crop's moisture" : Text($"{duty.NightMoistureKgPerS * 3600 / 0.45359237:0.0} lb/h of the crop's moisture to take"))} on the drying night, without warm air thrown out; {KBtu(litres / OtherKinds.WaterKgPerKwh * 1000 + litres / 3600 * 2.45e6)} kBtu/h of heat back to the house"),
            "Condensate to the drain; coils ice up in cold air.");
    }
}
