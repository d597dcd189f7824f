using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Form;
using Glazewright.Science.Crop;

namespace Glazewright.Design.Plant;

/// <summary>Dehumidifier, carbon dioxide, lamps, as the year needs them.</summary>
internal static class OtherKinds
{
    private const double WaterKgPerKwh = 2; // at 20 °C and 80 % (common practice: 1.5 to 3)
    private const double OutsidePpm = 420;
    private const double NoonUptakeKgPerSM2 = 5e-3 / 3600; // a full crop (common practice)
    private const double SpareRatio = 1.5; // dosing goes by on and off: half as much again as the steady need
    private const double LampUseFraction = 0.85; // of a lamp's light that reaches the crop (common practice)

    public static DehumidifierPlant? DehumidifierOf(EquipmentChoice e) =>
        e.DehumidifierW > 0 ? new DehumidifierPlant(e.DehumidifierW, e.DehumidifierW * WaterKgPerKwh / 3.6e6) : null;

    public static Co2Plant? Co2Of(PlantInput input, BuildingForm form)
    {
        if (input.Equipment.Co2Ppm <= 0)
        {
            return null;
        }

        double planted = form.FloorAreaM2 * input.Schedule.Select(p => p.PlantedFraction).DefaultIfEmpty(0).Max();
        double need = CarbonDioxide.DoseKgPerS(
            Math.Max(form.VolumeM3, 1), Math.Clamp(input.AirtightnessPerHour, 0, 100), input.Equipment.Co2Ppm, OutsidePpm, Math.Min(NoonUptakeKgPerSM2 * planted, 10));
        return new Co2Plant(input.Equipment.Co2Ppm, SpareRatio * need);
    }

    public static double LampUmolPerJ(Catalogue catalogue) => catalogue.Lamps.Count > 0 ? catalogue.Lamps[0].EfficacyUmolPerJ * LampUseFraction : 0;
}
