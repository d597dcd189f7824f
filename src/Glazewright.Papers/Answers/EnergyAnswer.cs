using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Year;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Answers;

/// <summary>What power, fuel and water will it use, and what do they cost to run?</summary>
internal static class EnergyAnswer
{
    private const double WaterKgPerM3 = 998;

    public static QuestionAnswered? Of(PaperSource source)
    {
        YearResult[] years = [.. source.Houses.Select(h => h.Year)];
        if (years.Length == 0 || years.Any(y => y.Months.Count != 12))
        {
            return null;
        }

        Said said = new(source.Job.Units);
        double[] monthly = [.. Enumerable.Range(0, 12).Select(m => years.Sum(y => y.Months[m].Cost))];
        int worst = Enumerable.Range(0, 12).MaxBy(m => monthly[m]);
        double low = years.Sum(y => y.CostLow);
        double high = years.Sum(y => y.CostHigh);
        double waterM3 = years.Sum(y => y.WaterKg) / WaterKgPerM3;
        double gasKg = years.Sum(y => y.Co2Kg);
        string[] bought = gasKg > 0 ? ["fuel", "power", "water", "carbon dioxide"] : ["fuel", "power", "water"];
        string sentence = $"Running it costs {Said.Money(low)} to {Said.Money(high)} a year in {Said.Listed(bought)} at the tariffs of the job; the dearest month is {Said.Month(worst + 1)} with about {Said.Money(monthly[worst])}.";
        (string Sentence, BigFigure Figure)? burnt = Burnt(source, years);
        sentence += burnt?.Sentence ?? "";
        double demand = years.Sum(y => y.DemandCost(source.Job.Tariffs));
        double[] demands = [.. Enumerable.Range(0, 12).Select(m => years.Sum(y => y.Months[m].DemandCost(source.Job.Tariffs)))];
        int highest = Enumerable.Range(0, 12).MaxBy(m => demands[m]);
        if (demand > 0)
        {
            sentence += $" The demand charge is {Said.Money(demand)} of it, by the highest quarter hour of each month and house.";
        }

        double backupW = source.Houses.SelectMany(h => h.Plant.Loads).Where(l => l.Backup).Sum(l => l.Count * l.RunningW);
        List<BigFigure> figures =
        [
            new(Said.Capital(Said.Listed(bought)) + " a year", Said.Money(years.Sum(y => y.Cost)), "", $"{Said.Money(low)} to {Said.Money(high)}"),
            burnt is { } fuel ? fuel.Figure : said.Big("Heat in the fuel burnt", years.Sum(y => y.FuelJ), Unit.Joule),
            said.Big("Electric energy", years.Sum(y => y.PowerJ), Unit.ElectricJoule),
            said.Big("Sum of the houses' peak demands", years.Sum(y => y.PeakPowerW), Unit.ElectricWatt, "quarter hour each"),
            .. demand > 0
                ? (BigFigure[])[new("Demand charge a year", Said.Money(demand), "", $"most in {Said.Month(highest + 1)}: {Said.Money(demands[highest])}")]
                : [],
            said.Big("Water for cooling", waterM3, Unit.WaterCubicMetre, Wet(source)),
            said.Big("Stays on when the mains fail", backupW, Unit.ElectricWatt, "running power; starting needs more"),
        ];
        if (gasKg > 0)
        {
            figures.Add(said.Big("Carbon dioxide dosed", gasKg, Unit.Kilogram, $"{Said.Money(gasKg * source.Job.Tariffs.Co2PerKg)} of the sum"));
        }

        MonthSeries[] series = [.. source.Houses.Take(3).Select(h => new MonthSeries("house " + h.Form.Id, [.. h.Year.Months.Select(m => m.Cost)]))];
        List<Block> blocks =
        [
            new Block.Figures(figures),
            new Block.Picture(
                MonthBars.Draw("running-cost", "Running cost by month", "$", series, null, Said.WidthMm, 33),
                Said.Capital(Said.Listed(bought)) + " by month at the tariffs of the job.") { Numbers = MonthBars.Numbers("$", series, 0) },
            new Block.Paragraph($"Tariffs: {source.Job.Tariffs.FuelShown}{(source.Job.Tariffs.PriceDate.Length > 0 ? ", " + source.Job.Tariffs.PriceDate : ", undated")}. Tariffs change; the range is the spread the job states.", Quiet: true),
        ];
        return new QuestionAnswered("What does it cost to run?", $"{Said.Money(low)} to {Said.Money(high)} a year", sentence, Standing.None, blocks);
    }

    // The fuel by itself, in what it is sold in, and its season: the six months on end that burn most. Null where none is burnt.
    private static (string Sentence, BigFigure Figure)? Burnt(PaperSource source, YearResult[] years)
    {
        FuelKind kind = source.Job.Utilities.Fuel;
        double[] monthlyJ = [.. Enumerable.Range(0, 12).Select(m => years.Sum(y => y.Months[m].FuelJ))];
        double yearJ = monthlyJ.Sum();
        if (yearJ <= 0 || kind == FuelKind.None)
        {
            return null;
        }

        double SeasonJ(int from) => Enumerable.Range(from, 6).Sum(m => monthlyJ[m % 12]);
        int start = Enumerable.Range(0, 12).MaxBy(SeasonJ);
        string Amount(double joules)
        {
            (double amount, string unit) = FuelBought.Of(kind, joules, source.Job.Units);
            return string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{amount:#,0} {unit}");
        }

        string Cost(double joules) => Said.Money(joules * source.Job.Tariffs.FuelPerJoule);
        string name = Said.Capital(FuelWords.Of(kind));
        return (
            $" {name} is {Cost(yearJ)} of it: {Amount(yearJ)}.",
            new BigFigure(name + " a year", Amount(yearJ), "", $"{Cost(yearJ)}; {Said.Month(start + 1)} to {Said.Month((start + 5) % 12 + 1)}: {Amount(SeasonJ(start))}, {Cost(SeasonJ(start))}"));
    }

    private static string Wet(PaperSource source)
    {
        bool pad = source.Houses.Any(h => h.Plant.WetWall is not null), fog = source.Houses.Any(h => h.Plant.Fog is not null);
        return pad && fog ? "wet wall with bleed, and fog" : pad ? "wet wall with bleed" : fog ? "fog" : "no wet wall, no fog";
    }
}
