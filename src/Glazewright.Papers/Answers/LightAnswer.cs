using Glazewright.Design.Contracts;
using Glazewright.Design.LightMaps;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Answers;

/// <summary>How much light reaches the crop?</summary>
internal static class LightAnswer
{
    public static QuestionAnswered? Of(PaperSource source, HouseResults house)
    {
        LightMap light = house.Light;
        if (light.Months.Count != 12 || light.OutsideMolPerM2Day.Count != 12)
        {
            return null;
        }

        Said said = new(source.Job.Units);
        double wish = house.House.Schedule.Select(p => p.LightWishMolPerM2Day).DefaultIfEmpty(0).Max();
        int darkest = Enumerable.Range(0, 12).MinBy(m => light.Months[m].MeanMolPerM2Day);
        LightMonth dark = light.Months[darkest];
        string month = Said.Month(darkest + 1);
        double gets = light.OutsideMolPerM2Day[darkest] > 0 ? dark.MeanMolPerM2Day / light.OutsideMolPerM2Day[darkest] : 0;
        string sentence = FormattableString.Invariant($"In {month}, the darkest month, the crop in house {house.Form.Id} gets {dark.MeanMolPerM2Day:0.0} mol/m² a day, {Said.Percent(gets)} % of the light outside; the darkest place gets {dark.LeastMolPerM2Day:0.0}.");
        Standing standing = Standing.None;
        if (wish > 0)
        {
            int enough = light.Months.Count(m => m.MeanMolPerM2Day >= wish);
            standing = enough == 12 ? Standing.Held : enough >= 9 ? Standing.Near : Standing.Miss;
            sentence += FormattableString.Invariant($" The {wish:0} mol/m² a day the crop lives on is there in {enough} of 12 months.");
        }

        List<Block> blocks =
        [
            new Block.Figures([
                said.Big($"Light at the crop in {month}", dark.MeanMolPerM2Day, Unit.MolPerSquareMetreDay, wish > 0 ? FormattableString.Invariant($"wanted {wish:0}") : "", standing),
                new($"Evenness in {month}", FormattableString.Invariant($"{dark.EvennessRatio:0.00}"), "", "darkest place over mean"),
                said.Big("Light at the crop in June", light.Months[5].MeanMolPerM2Day, Unit.MolPerSquareMetreDay),
            ]),
            new Block.Picture(
                MonthBars.Draw(
                    "light-" + house.Form.Id,
                    $"Light by month in house {house.Form.Id}",
                    "mol/m² a day",
                    [new MonthSeries("outside", light.OutsideMolPerM2Day), new MonthSeries("at the crop", [.. light.Months.Select(m => m.MeanMolPerM2Day)])],
                    wish > 0 ? (wish, "the crop lives on this") : null,
                    Said.WidthMm,
                    54),
                $"House {house.Form.Id}: daily light by month (mean of each month)."),
        ];
        if (Map(house, darkest) is Sheet map)
        {
            blocks.Add(new Block.Picture(map, $"House {house.Form.Id}: where the light falls in {month}; plan as on the range plan."));
        }

        if (light.Report.LeftOut.Count > 0)
        {
            blocks.Add(new Block.Paragraph("Not in these numbers: " + string.Join(" ", light.Report.LeftOut), Quiet: true));
        }

        return new QuestionAnswered($"How much light is there in house {house.Form.Id}?", FormattableString.Invariant($"{dark.MeanMolPerM2Day:0.0} mol/m² a day in {month}{(wish > 0 ? FormattableString.Invariant($", {wish:0} wanted") : "")}"), sentence, standing, blocks);
    }

    private static Sheet? Map(HouseResults house, int month)
    {
        LightMap light = house.Light;
        EqList<double> points = light.Months[month].PointMolPerM2Day;
        if (points.Count == 0 || points.Count != light.CountX * light.CountY)
        {
            return null;
        }

        AxisTicks ticks = AxisTicks.Over(points.Min(), points.Max() + 1e-6, 6);
        IReadOnlyList<double> limits = ticks.Values();
        List<CarpetClass> classes = [];
        for (int i = 1; i < limits.Count; i++)
        {
            double below = i == limits.Count - 1 ? double.PositiveInfinity : limits[i];
            classes.Add(new CarpetClass(below, $"{ticks.Text(limits[i - 1])}–{ticks.Text(limits[i])}", Ramp.Sequential.Step(i - 1, limits.Count - 1)));
        }

        return LightPlan.Draw(
            $"light-map-{house.Form.Id}", $"Light in house {house.Form.Id} in {Said.Month(month + 1)}", "mol/m² a day", light.CountX, light.CountY, points, classes, house.Form.LengthM / house.Form.WidthM, Said.WidthMm);
    }
}
