using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Year;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Answers;

/// <summary>Will it hold the climate asked for?</summary>
internal static class ClimateAnswer
{
    private const double NeverAskedC = 98.9;
    private const double FewHours = 20;

    public static QuestionAnswered Of(PaperSource source, HouseResults house)
    {
        Said said = new(source.Job.Units);
        YearResult year = house.Year;
        HeldCounters held = year.Held;
        double share = held.TotalH > 0 ? held.HeldTemperatureH / held.TotalH : 0;
        double neverC = house.House.Schedule.Select(p => p.NeverAboveC).Where(c => c < NeverAskedC).DefaultIfEmpty(double.NaN).Min();
        string band = said.Text(source.Job.Band.TemperatureK, Unit.Kelvin);
        string sentence = $"House {house.Form.Id} is within {band} of what you asked for in {Said.Percent(share)} % of hours: too cold in {Said.Hours(held.TooColdH)}, too warm in {Said.Hours(held.TooWarmH)} of {Said.Hours(held.TotalH)}.";
        if (!double.IsNaN(neverC))
        {
            sentence += held.AboveNeverH < 0.5
                ? $" It stays below {said.Round(neverC, Unit.Celsius)}."
                : $" It is above {said.Round(neverC, Unit.Celsius)} in {Said.Hours(held.AboveNeverH)} hours{(held.AboveNeverH < FewHours ? "." : ": hot afternoons cannot be held there.")}";
        }

        string brief = $"{Said.Percent(share)} % of hours within {band}" + (double.IsNaN(neverC) ? "" : $"; {Said.Hours(held.AboveNeverH)} h above {said.Round(neverC, Unit.Celsius)}");
        List<BigFigure> figures = [new("Hours with temperature held", Said.Percent(share), "%", $"within {band} of the target; {Said.HeldFraction * 100:0} % counts as held", Said.Share(share))];
        if (held.HumidityAskedH > 0)
        {
            double humid = held.HeldHumidityH / held.HumidityAskedH;
            figures.Add(new("Hours with humidity held", Said.Percent(humid), "%", FormattableString.Invariant($"within {source.Job.Band.HumidityPercent:0} % RH{(house.House.Schedule.Any(p => p.Day.VpdKPa > 0 || p.Night.VpdKPa > 0) ? FormattableString.Invariant($" (or {source.Job.Band.VpdKPa:0.0#} kPa)") : "")} of the target"), Said.Share(humid)));
        }

        if (!double.IsNaN(neverC))
        {
            figures.Add(new($"Hours above {said.Round(neverC, Unit.Celsius)}", Said.Hours(held.AboveNeverH), "h", "you wanted none; mean air of the house: " + (year.Report.Figures.FirstOrDefault(f => f.Id == year.House + "/year/above-never-hot-end") is { } end ? $"the fan end is hotter, above it for {Said.Hours(end.Value)} h" : "no fan draws air along it"), held.AboveNeverH < 0.5 ? Standing.Held : held.AboveNeverH < 50 ? Standing.Near : Standing.Miss));
        }

        figures.Add(said.Big("Coldest air at the crop", year.Extremes.LowestC, Unit.Celsius, $"with {said.Text(year.Extremes.OutsideAtLowestC, Unit.Celsius)} outside, {When(year.Extremes.LowestMinute)}"));
        figures.Add(said.Big("Hottest air at the crop", year.Extremes.HighestC, Unit.Celsius, $"with {said.Text(year.Extremes.OutsideAtHighestC, Unit.Celsius)} outside, {When(year.Extremes.HighestMinute)}"));
        List<Block> blocks = [new Block.Figures(figures)];
        Table periods = Periods(said, house);
        if (periods.Rows.Count > 0)
        {
            blocks.Add(new Block.TableOf(periods));
        }

        if (Carpet(source, year, Said.WidthMm, 58) is Sheet carpet)
        {
            blocks.Add(new Block.Picture(carpet, $"House {house.Form.Id}: each column is a day, each row an hour (standard time); hourly means against the target of that hour."));
        }

        if (HotWeek(said, source, year) is Sheet week)
        {
            blocks.Add(new Block.Picture(week, $"House {house.Form.Id}: the week of the hottest hour."));
        }

        return new QuestionAnswered($"Will house {house.Form.Id} hold your climate?", brief, sentence, Said.Worst(figures.Select(f => f.Standing)), blocks);
    }

    private static Table Periods(Said said, HouseResults house)
    {
        string Asked(ClimateTarget target) => said.Round(target.TemperatureC, Unit.Celsius)
            + (target.VpdKPa > 0 ? FormattableString.Invariant($", {target.VpdKPa:0.0#} kPa deficit") : target.HumidityPercent > 0 ? FormattableString.Invariant($", {target.HumidityPercent:0} % RH") : "");
        string Share(HeldCounters c) => c.TotalH > 0 ? Said.Percent(c.HeldTemperatureH / c.TotalH) + " %" : "–";
        List<IReadOnlyList<string>> rows = [];
        foreach (PeriodCounters counters in house.Year.Periods)
        {
            if (house.House.Schedule.FirstOrDefault(p => p.Id == counters.Period) is not CropPeriod period)
            {
                continue;
            }

            rows.Add([
                FormattableString.Invariant($"{period.Crop}, weeks {period.FromWeek} to {period.ToWeek}"),
                Asked(period.Day),
                Share(counters.Day),
                Asked(period.Night),
                Share(counters.Night),
                $"{Said.Hours(counters.Day.TooWarmH + counters.Night.TooWarmH)} / {Said.Hours(counters.Day.TooColdH + counters.Night.TooColdH)}",
            ]);
        }

        return new Table(
            [
                new("Crop", 49), new("Asked by day", 33), new("Held", 17, Along.End), new("Asked by night", 33), new("Held", 17, Along.End), new("Too warm / cold, h", 25, Along.End),
            ],
            rows);
    }

    internal static Sheet? Carpet(PaperSource source, YearResult year, double widthMm, double heightMm) =>
        Carpet(year, source.Job.Band.TemperatureK, source.Job.Units, widthMm, heightMm);

    internal static Sheet? Carpet(YearResult year, double band, UnitSystem units, double widthMm, double heightMm)
    {
        HourColumns hours = year.Hours;
        if (hours.InsideC.Count == 0 || hours.InsideC.Count % 24 != 0 || hours.DepartureK.Count != hours.InsideC.Count)
        {
            return null;
        }

        double[] off = [.. hours.DepartureK.Select(k => (double)k)];
        Said said = new(units);
        string by = said.Text(band, Unit.Kelvin);
        CarpetClass[] classes =
        [
            new(-band - 0.05, $"colder by more than {by}", Paint.Of(Tone.Series1)),
            new(band + 0.05, "held", new Paint.Exact(0xC9DDD2)),
            new(3 * band, "warmer", new Paint.Exact(0xD9A878), true),
            new(double.PositiveInfinity, $"warmer by more than {said.Text(3 * band, Unit.Kelvin)}", Paint.Of(Tone.Miss), true),
        ];
        Sheet carpet = CarpetPlot.Draw("held-" + year.House, $"Temperature held in house {year.House}", "", off, classes, widthMm, heightMm);
        bool us = units == UnitSystem.Us;
        return carpet with { Readings = [.. carpet.Readings.Select(r => r.In(us ? 1.8 : 1, (us ? "F°" : "K") + " off the target", 1))] };
    }

    private static Sheet? HotWeek(Said said, PaperSource source, YearResult year)
    {
        HourColumns hours = year.Hours;
        if (hours.InsideC.Count < 8760 || hours.OutsideC.Count < 8760)
        {
            return null;
        }

        int firstDay = Math.Clamp(year.Extremes.HighestMinute / 1440 - 3, 0, 358);
        double[] Week(EqList<float> column) => [.. Enumerable.Range(24 * firstDay, 168).Select(h => said.Of(column[h], Unit.Celsius).Value)];
        List<(double, string)> marks = [];
        for (int day = 0; day < 7; day++)
        {
            marks.Add((day / 7.0, DayName(firstDay + day)));
        }

        return StripChart.Draw(
            "hot-week-" + year.House,
            $"The hottest week in house {year.House}",
            said.Of(0, Unit.Celsius).Unit,
            [new Strip("inside", Week(hours.InsideC)), new Strip("outside", Week(hours.OutsideC)), new Strip("asked", Week(hours.TargetC))],
            null,
            marks,
            Said.WidthMm,
            48,
            hour => FormattableString.Invariant($"{DayName(firstDay + hour / 24)} {hour % 24}–{hour % 24 + 1} h"));
    }

    private static string When(int minute) => FormattableString.Invariant($"{DayName(minute / 1440)} {minute % 1440 / 60:00}:{minute % 60:00}");

    private static string DayName(int dayFromZero) =>
        new DateOnly(2001, 1, 1).AddDays(Math.Clamp(dayFromZero, 0, 364)).ToString("d MMM", CultureInfo.InvariantCulture);
}
