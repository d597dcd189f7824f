using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Form;
using Glazewright.Science.Crop;

namespace Glazewright.Design.Plant;

/// <summary>Dehumidifier, carbon dioxide, lamps, as the year needs them.</summary>
internal static class OtherKinds
{
    /// <summary>Water a dehumidifier takes out for each kWh at 20 °C and 80 %, kg (common practice: 1.5 to 3).</summary>
    public const double WaterKgPerKwh = 2;

    /// <summary>Share of a lamp's light that reaches the crop (common practice).</summary>
    public const double LampUseFraction = 0.85;

    internal const double Co2SpareRatio = 1.5; // dosing goes by on and off: half as much again as the steady need

    public static DehumidifierPlant? DehumidifierOf(EquipmentChoice e) =>
        e.DehumidifierW > 0 ? new DehumidifierPlant(e.DehumidifierW, e.DehumidifierW * WaterKgPerKwh / 3.6e6) : null;

    /// <summary>Air changes while nothing but the filter fan moves air, 1/h: its air goes out through the leaks, which then bring none in.</summary>
    public static double ChangesPerHour(PlantInput input, BuildingForm form, PressurePlant? filter) =>
        Math.Clamp(Math.Max(input.AirtightnessPerHour, (filter?.FlowM3PerS ?? 0) * 3600 / Math.Max(form.VolumeM3, 1)), 0, 100);

    public static Co2Plant? Co2Of(PlantInput input, BuildingForm form, PressurePlant? filter, double pressurePa)
    {
        if (input.Equipment.Co2Ppm <= 0)
        {
            return null;
        }

        double planted = form.FloorAreaM2 * input.Schedule.Select(p => p.PlantedFraction).DefaultIfEmpty(0).Max();
        double need = CarbonDioxide.DoseKgPerS(
            Math.Max(form.VolumeM3, 1), ChangesPerHour(input, form, filter), input.Equipment.Co2Ppm, CarbonDioxide.OutsidePpm, Math.Min(CarbonDioxide.FullCropUptakeKgPerSM2 * planted, 10), Math.Clamp(pressurePa, 40_000, 120_000));
        return new Co2Plant(input.Equipment.Co2Ppm, Co2SpareRatio * need);
    }

    public static double LampUmolPerJ(Catalogue catalogue) => catalogue.Lamps.Count > 0 ? catalogue.Lamps[0].EfficacyUmolPerJ * LampUseFraction : 0;
}
