using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Plant;
using Glazewright.Science.Air;
using Glazewright.Science.Crop;
using Glazewright.Science.Flow;
using Glazewright.Science.Weather;
using static Glazewright.Design.Plant.PlantWords;

namespace Glazewright.Design.Behaviour;

/// <summary>What the season's count stands on beside the plant.</summary>
/// <param name="Duty">What Duty reads of the job.</param>
/// <param name="Gains">The house's gain table, bare.</param>
/// <param name="Year">Weather.</param>
/// <param name="HumidityBandFraction">Half width of the humidity band that counts as held, 0 to 1.</param>
public sealed record SeasonGround(DutyInput Duty, GainTable Gains, WeatherYear Year, double HumidityBandFraction);

/// <summary>Counts, month by month, the hours fans, wet wall and fog hold. Like hours are gathered in bins and each bin is marched once.</summary>
internal static class SeasonBehaviour
{
    private const double BinK = 3;
    private const double BinWm2 = 200;
    private const double DaylightWm2 = 20;
    private const double SupposedBleedFraction = 0.3;

    private readonly record struct Key(int Month, int Period, int Dry, int Dew, int Sun);

    private readonly record struct Held(bool Warm, bool Humid);

    public static SeasonResult? Of(BuildingForm form, DutyResult duty, PlantResult plant, SeasonGround ground)
    {
        if (plant.Exhaust?.Choice is not { } fans || fans.Wet.Count == 0)
        {
            return null;
        }

        double dryFlow = Math.Clamp(fans.Dry[^1].FlowM3PerS, 0.01, 1e4);
        double wetFlow = Math.Clamp(plant.FansOnDesignDay!.FlowM3PerS, 0.01, 1e4);
        double effectiveness = Math.Clamp(plant.WetWall?.Choice.Effectiveness ?? DutyStage.AssumedPadEffectiveness, 0, 1);
        double bleed = 1 + (plant.WetWall?.Choice.BleedFraction ?? SupposedBleedFraction);
        AirState summer = duty.Air.Summer;
        double sprayed = plant.Fog?.Choice.KgPerS ?? 0.5 * Fog.RoomKgPerKg(summer, FogHold.WaterC) * dryFlow / summer.VolumeM3PerKg;
        double fogFlow = plant.WetWall is null && plant.Fog?.Choice.Cooling is { FansOn: > 0 } cooling ? Math.Clamp(cooling.FlowM3PerS, 0.01, 1e4) : dryFlow;
        double taken = sprayed * (plant.Fog?.Choice.EvaporatedFraction ?? 1);
        double inward = DutyStage.InwardFraction(form);
        double faces = duty.Losses.Where(l => !l.Id.EndsWith("/infiltration", StringComparison.Ordinal)).Sum(l => l.WPerK);
        double kept = 1 - ground.Duty.ShadeFraction;
        var field = new GainField(ground.Gains, drawn: false);
        double[,] sum = new double[12, 14];
        foreach ((Key key, List<int> hours) in Bins(ground))
        {
            CropPeriod crop = ground.Duty.Schedule[key.Period];
            ClimateTarget wish = key.Sun > 0 ? crop.Day : crop.Night;
            WeatherYear year = ground.Year;
            double Mean(HourlyColumn column) => hours.Sum(h => column[h]) / hours.Count;
            double dryC = Math.Clamp(Mean(year.DryBulbC), -50, 55);
            double ratio = AirState.FromDewPoint(dryC, Math.Min(Mean(year.DewPointC), dryC), duty.PressurePa).HumidityRatio;
            var outside = new AirState(dryC, ratio, duty.PressurePa);
            SunW sun = default;
            if (key.Sun > 0)
            {
                // One hour of the bin gives the sun's place and the share of it that comes in; the bin's mean gives how much there is.
                int hour = hours[hours.Count / 2];
                sun = Mean(year.GhiWhm2) / year.GhiWhm2[hour] * CoolingHour.At(ground.Duty, field, year, hour).Sun;
            }

            double cropW = kept * sun.CropPlaneW;
            double solarW = kept * (sun.CropPlaneW + sun.FrameW + sun.OpaqueW + sun.CurtainW + inward * sun.CoverW)
                - DutyStage.StoredFraction(crop.PlantedFraction) * cropW;
            double wishC = Math.Clamp(wish.TemperatureC, 0, 45);
            double humidity = wish.HumidityAtTargetPercent / 100;
            double slope = key.Sun > 0 ? DutyStage.CropDayWPerM2KPa : DutyStage.CropNightWPerM2KPa;
            double leaf = Math.Min(crop.LeafAreaIndex, 10);
            double cropWm2 = Math.Clamp(cropW / Math.Max(form.FloorAreaM2, 1), 0, 1200);
            double planted = crop.PlantedFraction * form.FloorAreaM2;
            AirState wished = AirState.FromRelativeHumidity(wishC, Math.Clamp(humidity > 0 ? humidity : 0.7, 0.05, 0.98), duty.PressurePa);
            double latentW = planted * Transpiration.QuickWPerM2(cropWm2, wished.VapourDeficitPa, leaf, DutyStage.CropSolarFactor, slope);
            if (crop.PlantedFraction <= 0 || solarW - latentW - duty.LossWPerK * (wishC - dryC) <= 0)
            {
                continue;
            }

            var load = new AirLoad(Math.Max(solarW, 0), faces, dryC, planted, cropWm2, leaf, DutyStage.CropSolarFactor, slope);
            Held Run(AirState inlet, double flow, double fogKgPerS = 0)
            {
                AirRun run = fogKgPerS > 0 ? FogHold.All(inlet, flow, load, fogKgPerS, FogSizing.DampestFraction).Run : AlongHouse.March(inlet, flow, load);
                double rh = run.Stations.Average(s => s.RelativeHumidityFraction);
                bool warm = run.HottestC <= wishC + ground.Duty.TemperatureRiseK;
                return new Held(warm, warm && (humidity <= 0 || Math.Abs(rh - humidity) <= ground.HumidityBandFraction));
            }

            bool frost = dryC <= 5;
            double wetted = frost ? 0 : taken;
            LeavingAir leaving = frost ? new LeavingAir(dryC, ratio) : WetWall.Leaving(dryC, outside.WetBulbC, duty.PressurePa, effectiveness);
            var behind = new AirState(leaving.DryBulbC, leaving.HumidityRatio, duty.PressurePa);
            Held fan = Run(outside, dryFlow);
            Held pad = fan.Warm ? fan : Run(behind, wetFlow);
            Held fog = fan.Warm ? fan : Run(outside, fogFlow, wetted);
            Held together = fan.Warm ? fan : pad.Warm && (pad.Humid || !fog.Warm) ? pad : fog.Warm ? fog : Run(behind, wetFlow, wetted);
            double padM3 = wetFlow / outside.VolumeM3PerKg * Math.Max(behind.HumidityRatio - ratio, 0) * bleed * 3.6;
            double fogM3 = frost ? 0 : sprayed * 3.6;
            double bothM3 = pad.Warm && (pad.Humid || !fog.Warm) ? padM3 : fog.Warm ? fogM3 : padM3 + fogM3;
            int n = hours.Count;
            int at = key.Month - 1;
            double[] add =
            [
                1, dryC - behind.DryBulbC, fan.Warm ? 1 : 0, fan.Humid ? 1 : 0, 0, pad.Warm ? 1 : 0, pad.Humid ? 1 : 0, fan.Warm ? 0 : padM3,
                fog.Warm ? 1 : 0, fog.Humid ? 1 : 0, fan.Warm ? 0 : fogM3, together.Warm ? 1 : 0, together.Humid ? 1 : 0, fan.Warm ? 0 : bothM3,
            ];
            for (int i = 0; i < add.Length; i++)
            {
                sum[at, i] += n * add[i];
            }
        }

        EqList<SeasonMonth> months = Enumerable.Range(0, 12).Select(m =>
        {
            WayHeld Way(int from) => new(sum[m, from], sum[m, from + 1], sum[m, from + 2]);
            return new SeasonMonth(m + 1, sum[m, 0], sum[m, 0] > 0 ? sum[m, 1] / sum[m, 0] : 0, Way(2), Way(5), Way(8), Way(11));
        }).ToEqList();
        (SeasonWay advice, string reason) = Advise(months, duty, effectiveness);
        return new SeasonResult(plant.WetWall is not null, plant.Fog is not null, months, advice, reason, Figures(form.Id, months, dryFlow, wetFlow, effectiveness));
    }

    private static IEnumerable<(Key, List<int>)> Bins(SeasonGround ground)
    {
        var bins = new SortedDictionary<(int, int, int, int, int), List<int>>();
        WeatherYear year = ground.Year;
        CropPeriod[] schedule = [.. ground.Duty.Schedule];
        int[] periods = [.. Enumerable.Range(1, CropWeeks.Weeks).Select(w => Array.IndexOf(schedule, CropWeeks.In(ground.Duty.Schedule, w)))];
        for (int hour = 0; hour < CommonYear.Hours; hour++)
        {
            int day = hour / 24;
            double sun = year.GhiWhm2[hour];
            var key = (CommonYear.MonthOfDay(day), periods[CropWeeks.OfDay(day) - 1],
                (int)Math.Floor(year.DryBulbC[hour] / BinK), (int)Math.Floor(year.DewPointC[hour] / BinK), sun > DaylightWm2 ? 1 + (int)(sun / BinWm2) : 0);
            if (!bins.TryGetValue(key, out List<int>? list))
            {
                bins.Add(key, list = []);
            }

            list.Add(hour);
        }

        return bins.Select(b => (new Key(b.Key.Item1, b.Key.Item2, b.Key.Item3, b.Key.Item4, b.Key.Item5), b.Value));
    }

    private static (SeasonWay Way, string Reason) Advise(EqList<SeasonMonth> months, DutyResult duty, double effectiveness)
    {
        double asked = months.Sum(m => m.AskedH);
        double fans = months.Sum(m => m.Fans.HeldH);
        double pad = months.Sum(m => m.Pad.HeldH);
        double fog = months.Sum(m => m.Fog.HeldH);
        double both = months.Sum(m => m.Both.HeldH);
        AirState air = duty.Air.Summer;
        double leavingC = air.DryBulbC - effectiveness * Math.Max(air.DryBulbC - air.WetBulbC, 0);
        string day = Text($"On the cooling design day the air has {F(air.DryBulbC)} °F dry and {F(air.WetBulbC)} °F wet bulb: a wet wall brings it to {F(leavingC)} °F.");
        string counted = Text($"Of {asked:0} hours a year that ask for cooling, fans alone hold {fans:0}, with a wet wall {pad:0}, with fog {fog:0}, with both {both:0}.");
        if (asked <= 0)
        {
            return (SeasonWay.Neither, "No hour of the year asks for cooling.");
        }

        // A twentieth of the hours is worth a system; a fiftieth is not worth a second one (our judgement).
        if (both - fans < 0.05 * asked)
        {
            return (SeasonWay.Neither, Text($"Neither: water would add {both - fans:0} hours. {counted} {day}"));
        }

        return pad >= both - 0.02 * asked ? (SeasonWay.Pad, Text($"A wet wall: it holds nearly all that water can. {counted} {day}"))
            : fog >= both - 0.02 * asked ? (SeasonWay.Fog, Text($"Fog: it holds more than the wet wall. {counted} {day}"))
            : (SeasonWay.Both, Text($"Both: each alone leaves hours that the two together hold. {counted} {day}"));
    }

    private static string F(double celsius) => Text($"{celsius * 1.8 + 32:0.#}");

    private static EqList<Figure> Figures(string house, EqList<SeasonMonth> months, double dryFlow, double wetFlow, double effectiveness)
    {
        var source = new Source.FirstPrinciples("heat and moisture balance along the house, by bins of like hours");
        var working = new Working.Observed(
            "Hours of like month, crop, dry bulb, dew point (3 K) and sun (200 W/m²) are marched once from intake to fans; held: the air at the fans is no hotter than the wish and the allowed rise",
            [
                new WorkingInput("Qd", "air of all fans, pad off", $"{house}/plant/exhaust", dryFlow, Unit.CubicMetrePerSecond, source),
                new WorkingInput("Qw", "air of all fans, pad on", $"{house}/plant/exhaust", wetFlow, Unit.CubicMetrePerSecond, source),
                new WorkingInput("η", "saturation effectiveness of the pad", $"{house}/plant/wet-wall", effectiveness, Unit.None, source),
            ],
            "typical year; shade always drawn in sun; no heat from day to night");
        Figure One(string id, string label, double value, Unit unit) => new($"{house}/behaviour/season-{id}", label, value, unit, working, source, "a typical year, not the worst");
        return
        [
            One("asked", "Hours a year that ask for cooling", months.Sum(m => m.AskedH), Unit.Hour),
            One("fans", "Of these held by fans alone", months.Sum(m => m.Fans.HeldH), Unit.Hour),
            One("pad", "Of these held with a wet wall", months.Sum(m => m.Pad.HeldH), Unit.Hour),
            One("fog", "Of these held with fog", months.Sum(m => m.Fog.HeldH), Unit.Hour),
            One("both", "Of these held with wet wall and fog", months.Sum(m => m.Both.HeldH), Unit.Hour),
            One("pad-water", "Water of the wet wall in a year", months.Sum(m => m.Pad.WaterM3), Unit.WaterCubicMetre),
            One("fog-water", "Water of the fog in a year", months.Sum(m => m.Fog.WaterM3), Unit.WaterCubicMetre),
        ];
    }
}
