using Glazewright.Design.Contracts;
using Glazewright.Science.Air;
using Glazewright.Science.Crop;

namespace Glazewright.Design.Duty;

/// <summary>Looks whether the day's wish can be held in the design sun by outside air and water at all.</summary>
internal static class DayWish
{
    private const double DampFraction = 0.85;

    public static IEnumerable<Finding> Of(DutyFacts f)
    {
        if (f.HotCrop.Day.HumidityAtTargetPercent <= 0)
        {
            yield break;
        }

        double wishC = Math.Clamp(f.HotCrop.Day.TemperatureC, -20, 60);
        double humidity = Math.Clamp(f.HotCrop.Day.HumidityAtTargetPercent / 100, 0.05, 1);
        AirState wish = AirState.FromRelativeHumidity(wishC, humidity, f.Result.PressurePa);
        double gainW = f.Load.SolarW - f.Load.ConductanceWPerK * (wishC - f.Load.OutsideC);
        string wished = DutyFindings.Text($"{DutyFindings.C(wishC)} and {100 * humidity:0} % relative humidity");

        // Air that takes up heat and water from outside's state only gains wet bulb: below the outside's none of it comes.
        if (wish.WetBulbC < f.Outside.WetBulbC - 0.3 && gainW > 0)
        {
            double lowestC = AtRatio(f.Outside, humidity).DryBulbC;
            yield return new Finding(
                "duty/day-wish-below-wet-bulb", Severity.Near, f.Input.House,
                DutyFindings.Text($"{wished} has a wet bulb of {DutyFindings.C(wish.WetBulbC)}; on the hottest design day outside air has {DutyFindings.C(f.Outside.WetBulbC)}. Fans, wet wall and fog cannot bring the house below that: at this humidity the best possible is {DutyFindings.C(lowestC)}, before the sun adds to it."),
                "Wish for less on such days, accept more humidity, shade, or price a chiller.",
                new Source.FirstPrinciples("heat and moisture balance: the wet bulb of air only rises as it takes up heat and water"));
        }
        else if (humidity >= DampFraction && gainW > 0 && wish.HumidityRatio > f.Outside.HumidityRatio)
        {
            double water = wish.HumidityRatio - f.Outside.HumidityRatio;
            double perKg = wish.EnthalpyJPerKg - f.Outside.EnthalpyJPerKg - water * MoistAir.WaterHeatJPerKgK * 15;
            double dryKgPerS = gainW / Math.Max(perKg, 1);
            double cropKgPerS = f.Load.PlantedM2 / Transpiration.LatentJPerKg * Transpiration.QuickWPerM2(
                f.Load.CropSolarWPerM2, wish.VapourDeficitPa, Math.Min(f.HotCrop.LeafAreaIndex, 10), DutyStage.CropSolarFactor, DutyStage.CropDayWPerM2KPa);
            double leakWPerK = f.Result.LossWPerK;
            double closedC = f.Load.OutsideC + Math.Max(f.Load.SolarW - cropKgPerS * Transpiration.LatentJPerKg, 0) / Math.Max(leakWPerK, 1);
            double sprayedKgPerS = Math.Max(dryKgPerS * water - cropKgPerS, 0);
            yield return new Finding(
                "duty/damp-day-wish", Severity.Near, f.Input.House,
                DutyFindings.Text($"{wished} in the design sun: {DutyFindings.Heat(gainW)} have to leave with the air, which takes {DutyFindings.Cfm(dryKgPerS * f.Outside.VolumeM3PerKg)} cfm, and keeping that air so damp takes {sprayedKgPerS * 951:0} gal/h of fog beside what the crop gives off. With the fans off and nothing open or drawn the house would head for {closedC * 1.8 + 32:0} °F ({closedC:0} °C), at whatever humidity; floor, curtain and the day's end stop it sooner (see the year's hottest hours)."),
                "Let humidity give way while the sun is high, shade more, or size fog for it.",
                new Source.FirstPrinciples("heat and moisture balance of the whole house"));
        }
    }

    // The state of a humidity on the wet-bulb line of the outside air.
    private static AirState AtRatio(AirState outside, double humidity) =>
        AirPair.Read(AirProperty.WetBulb, outside.WetBulbC, AirProperty.RelativeHumidity, humidity, outside.PressurePa) is PairReading.Fixed { State: var state } ? state : outside;
}
