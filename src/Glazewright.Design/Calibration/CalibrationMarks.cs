using System.Globalization;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Calibration;

/// <summary>The marks, set before any house was looked at, and what a fitted house makes of them. None was moved afterwards.</summary>
internal static class CalibrationMarks
{
    private static readonly CultureInfo I = CultureInfo.InvariantCulture;

    public static EqList<CalibrationMark> Of(HouseLog log, ReplayHouse house, MeasuredAir m, ReplayedAir c, EqList<ScoreLine> scores)
    {
        ScoreLine all = scores[0];
        ScoreLine? sunny = scores.FirstOrDefault(s => s.Id == "sun");
        List<CalibrationMark> marks =
        [
            Under("air", "air, root mean square", all.AirRmsK, 1.5, "K", "0.00"),
            Under("air-bias", "air, mean error", Math.Abs(all.AirBiasK), 0.5, "K", "0.00"),
            new("skill", "skill against the mean by the hour of day", all.SkillRatio.ToString("0.00", I), "0.25 or more", all.SkillRatio >= 0.25 ? MarkState.Met : MarkState.Missed),
            Under("humidity", "humidity, root mean square", all.HumidityRmsPercent, 6, "% RH", "0.0"),
            Under("humidity-bias", "humidity, mean error", Math.Abs(all.HumidityBiasPercent), 3, "% RH", "0.0"),
            Under("vapour", "water in the air, root mean square", 1000 * all.VapourRmsKgPerM3, 1.65, "g/m³", "0.00"),
            Under("sun-air", "sun above 300 W/m²: air", sunny?.AirRmsK ?? double.NaN, 2, "K", "0.00"),
            Under("sun-humidity", "sun above 300 W/m²: humidity", sunny?.HumidityRmsPercent ?? double.NaN, 9, "% RH", "0.0"),
            Under("sun-vapour", "sun above 300 W/m²: water in the air", 1000 * (sunny?.VapourRmsKgPerM3 ?? double.NaN), 2.5, "g/m³", "0.00"),
        ];
        marks.AddRange(NightLoss(log, house, m, c));
        marks.AddRange(WideVents(log, house, m, c));
        marks.Add(PadAndFan(log, m, c));
        return marks.ToEqList();
    }

    private static CalibrationMark Under(string id, string name, double found, double limit, string unit, string form) => double.IsNaN(found)
        ? new CalibrationMark(id, name, "no such hours", $"{limit.ToString("0.##", I)} {unit} or less", MarkState.NoHours)
        : new CalibrationMark(id, name, $"{found.ToString(form, I)} {unit}", $"{limit.ToString("0.##", I)} {unit} or less", found <= limit ? MarkState.Met : MarkState.Missed);

    // Heat over temperature difference on nights with vents shut, by the curtains: measured air and pipes against computed.
    private static IEnumerable<CalibrationMark> NightLoss(HouseLog log, ReplayHouse house, MeasuredAir m, ReplayedAir c)
    {
        double[] before = [double.NaN, double.NaN, double.NaN];
        double[] found = [double.NaN, double.NaN, double.NaN];
        bool heatKnown = log.Has(LoggedQuantity.RailPipe);
        for (int k = 0; k < 3; k++)
        {
            double heatMeasuredW = 0, heatComputedW = 0, apartMeasuredK = 0, apartComputedK = 0;
            int count = 0;
            for (int i = 0; i < c.AirC.Length && heatKnown; i++)
            {
                double outsideC = log.Of(LoggedQuantity.OutsideTemperature)[i];
                if (!m.Counts[i] || m.Trains[i] || !CalibrationScores.Dark(log, house.Sun, i) || CalibrationScores.Vents(log, i) >= 0.02
                    || ScreenStates.Of(log, i) != (ScreenState)k || m.AirC[i] - outsideC <= 6)
                {
                    continue;
                }

                double growC = log.Has(LoggedQuantity.GrowPipe) ? log.Of(LoggedQuantity.GrowPipe)[i] : HousePipes.Off;
                heatMeasuredW += HousePipes.HeatW(house.RailWPerK, house.GrowWPerK, log.Of(LoggedQuantity.RailPipe)[i], growC, m.AirC[i]);
                heatComputedW += c.HeatW[i];
                apartMeasuredK += m.AirC[i] - outsideC;
                apartComputedK += c.AirC[i] - outsideC;
                count++;
            }

            string name = $"night loss, {ScreenStates.Name((ScreenState)k)}";
            if (count < 60)
            {
                yield return new CalibrationMark("night-loss-" + ScreenStates.Id((ScreenState)k), name, "no such hours", "within 20 % of the measured", MarkState.NoHours);
                continue;
            }

            before[k] = heatMeasuredW / apartMeasuredK / house.Parameters.FloorAreaM2;
            found[k] = heatComputedW / apartComputedK / house.Parameters.FloorAreaM2;
            bool met = Math.Abs(found[k] / before[k] - 1) <= 0.2;
            yield return new CalibrationMark(
                "night-loss-" + ScreenStates.Id((ScreenState)k), name, string.Create(I, $"{found[k]:0.0} against {before[k]:0.0} W/m²K measured ({count} steps)"), "within 20 % of the measured",
                met ? MarkState.Met : MarkState.Missed);
        }

        double[] known = [.. found.Where(x => !double.IsNaN(x))];
        yield return new CalibrationMark(
            "night-loss-order", "night loss falls with each curtain", known.Length < 2 ? "no such hours" : string.Join(" > ", known.Select(x => x.ToString("0.0", I))), "open > one > two",
            known.Length < 2 ? MarkState.NoHours : known.Zip(known.Skip(1)).All(p => p.First > p.Second) ? MarkState.Met : MarkState.Missed);
    }

    private static IEnumerable<CalibrationMark> WideVents(HouseLog log, ReplayHouse house, MeasuredAir m, ReplayedAir c)
    {
        yield return Rise("vents-wide-open", "vents wide, sun above 500 W/m², curtains open", 1.5, log, m, c, i => Wide(i) && Closed(i) < 0.05);
        yield return Rise("vents-wide-curtain", "vents wide, sun above 500 W/m², curtain drawn", 1.5, log, m, c, i => Wide(i) && Closed(i) > 0.6);

        bool Wide(int i) => house.Sun.GlobalWm2[i] > 500 && CalibrationScores.Vents(log, i) > 0.95;

        double Closed(int i) => Math.Max(
            log.Has(LoggedQuantity.Curtain) ? log.Of(LoggedQuantity.Curtain)[i] : 0, log.Has(LoggedQuantity.SecondCurtain) ? log.Of(LoggedQuantity.SecondCurtain)[i] : 0);
    }

    private static CalibrationMark PadAndFan(HouseLog log, MeasuredAir m, ReplayedAir c) => Rise(
        "pad-and-fan", "pad and fan, outside above 26 °C", 2, log, m, c,
        i => log.Of(LoggedQuantity.OutsideTemperature)[i] > 26 && (!log.Has(LoggedQuantity.Fans) || log.Of(LoggedQuantity.Fans)[i] >= 0.99), log.Has(LoggedQuantity.Fans) || log.Notes.Any(n => n.What.StartsWith("fans ", StringComparison.Ordinal)));

    private static CalibrationMark Rise(string id, string name, double limitK, HouseLog log, MeasuredAir m, ReplayedAir c, Func<int, bool> picks, bool asked = true)
    {
        double measured = 0, computed = 0;
        int count = 0;
        for (int i = 0; i < c.AirC.Length && asked; i++)
        {
            if (m.Counts[i] && !m.Trains[i] && picks(i))
            {
                measured += m.AirC[i] - log.Of(LoggedQuantity.OutsideTemperature)[i];
                computed += c.AirC[i] - log.Of(LoggedQuantity.OutsideTemperature)[i];
                count++;
            }
        }

        string limit = string.Create(I, $"inside less outside within {limitK:0.#} K of the measured");
        return count < 20
            ? new CalibrationMark(id, name, "no such hours", limit, MarkState.NoHours)
            : new CalibrationMark(
                id, name, string.Create(I, $"{computed / count:0.0} against {measured / count:0.0} K ({count} steps)"), limit, Math.Abs(computed - measured) / count <= limitK ? MarkState.Met : MarkState.Missed);
    }
}
