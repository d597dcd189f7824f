using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.LightMaps;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Science.Weather;

namespace Glazewright.Papers.Answers;

/// <summary>How much light reaches the crop?</summary>
internal static class LightAnswer
{
    public static QuestionAnswered? Of(PaperSource source)
    {
        HouseResults[] houses = [.. source.Houses.Where(h => h.Light.Months.Count == 12 && h.Light.OutsideMolPerM2Day.Count == 12)];
        if (houses.Length == 0)
        {
            return null;
        }

        Said said = new(source.Job.Units);
        List<string> sentences = [];
        List<string> briefs = [];
        List<BigFigure> figures = [];
        int darkest = LightMap.DarkestMonth(houses[0].Light.OutsideMolPerM2Day);
        int brightest = (darkest + 6) % 12;
        string month = Said.Month(darkest + 1);
        foreach (HouseResults house in houses)
        {
            LightMonth dark = house.Light.Months[darkest];
            double gets = house.Light.OutsideMolPerM2Day[darkest] > 0 ? dark.MeanMolPerM2Day / house.Light.OutsideMolPerM2Day[darkest] : 0;
            LightWish[] wishes = [.. LightWish.Of(house.House.Schedule, house.Light.Months)];

            // Each crop is held against its own months, not against the darkest of the year.
            LightWish? worst = wishes.MinBy(w => (w.DarkestMolPerM2Day + Lamps(house, w)) / w.Period.LightWishMolPerM2Day);
            double share = worst is null ? 1 : (worst.DarkestMolPerM2Day + Lamps(house, worst)) / worst.Period.LightWishMolPerM2Day;
            Standing standing = worst is null ? Standing.None : share >= 1 ? Standing.Held : share >= 0.9 ? Standing.Near : Standing.Miss;
            sentences.Add(FormattableString.Invariant($"In {month} house {house.Form.Id} has {dark.MeanMolPerM2Day:0.0} mol/m² a day at the crop without lamps, {(house.Light.OutsideMolPerM2Day[darkest] > 0 ? $"{Said.Percent(gets)} % of the light outside" : "the sun staying down")}.")
                + string.Concat(wishes.Select(w => FormattableString.Invariant(
                    $" {Said.Capital(Crop(w))} in weeks {w.Period.FromWeek} to {w.Period.ToWeek} wants {w.Period.LightWishMolPerM2Day:0.#}: {(w.MonthsEnough == w.MonthsAsked ? "it is there in all its months" : $"it is there in {w.MonthsEnough} of its {w.MonthsAsked} months; {Said.Month(w.DarkestMonth + 1)} gives {w.DarkestMolPerM2Day:0.0}{(Lamps(house, w) > 0.05 ? FormattableString.Invariant($", and the lamps add {Lamps(house, w):0.0} in the simulated year") : "")}")}."))));
            briefs.Add(FormattableString.Invariant($"{house.Form.Id} {dark.MeanMolPerM2Day:0.0}"));
            figures.Add(said.Big(
                $"House {house.Form.Id} in {month}",
                dark.MeanMolPerM2Day,
                Unit.MolPerSquareMetreDay,
                FormattableString.Invariant($"{(worst is null ? "" : FormattableString.Invariant($"{Crop(worst)} wants {worst.Period.LightWishMolPerM2Day:0.#}, {Said.Month(worst.DarkestMonth + 1)} gives {worst.DarkestMolPerM2Day:0.0}{(Lamps(house, worst) > 0.05 ? FormattableString.Invariant($", lamps {Lamps(house, worst):0.0}") : "")}; "))}darkest place {dark.LeastMolPerM2Day:0.0}, {Said.Month(brightest + 1)} {house.Light.Months[brightest].MeanMolPerM2Day:0.0}"),
                standing));
        }

        double most = houses.Max(Wish);
        MonthSeries[] series = [new("outside", houses[0].Light.OutsideMolPerM2Day), .. houses.Take(3).Select(h => new MonthSeries("house " + h.Form.Id, [.. h.Light.Months.Select(m => m.MeanMolPerM2Day)]))];
        List<Block> blocks =
        [
            new Block.Figures(figures),
            new Block.Picture(
                MonthBars.Draw("light", "Light by month", "mol/m² a day", series, most > 0 ? (most, "the crop lives on this") : null, Said.WidthMm, 54),
                "Daily light by month outside and at the crop (mean of each month).") { Numbers = MonthBars.Numbers("mol/m² a day", series, 1) },
        ];
        foreach (HouseResults house in houses)
        {
            if (Map(house, darkest) is Sheet map)
            {
                blocks.Add(new Block.Picture(map, $"House {house.Form.Id}: where the light falls in {month}; plan as on the range plan."));
            }
        }

        return new QuestionAnswered(
            "How much light is there?", $"{string.Join(", ", briefs)} mol/m² a day in {month}", string.Join(" ", sentences), Said.Worst(figures.Select(f => f.Standing)), blocks);
    }

    // What the house's lamps gave in the year's run, mean of the days of that month in which the crop stands.
    private static double Lamps(HouseResults house, LightWish wish)
    {
        int month = wish.DarkestMonth;
        int[] days = [.. Enumerable.Range(0, 365).Where(d => CommonYear.MonthOfDay(d) == month + 1)];
        int standing = days.Count(d => CropWeeks.In(house.House.Schedule, CropWeeks.OfDay(d)) == wish.Period);
        return standing == 0 || month >= house.Year.Months.Count ? 0 : house.Year.Months[month].LampMolPerM2Day * days.Length / standing;
    }

    private static string Crop(LightWish wish) => wish.Period.Crop.Length > 0 ? wish.Period.Crop : wish.Period.Id;

    private static double Wish(HouseResults house) => house.House.Schedule.Select(p => p.LightWishMolPerM2Day).DefaultIfEmpty(0).Max();

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
