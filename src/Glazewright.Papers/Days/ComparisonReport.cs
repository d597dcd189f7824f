using Glazewright.Design.Contracts;
using Glazewright.Design.Year;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Exchange;
using Glazewright.Papers.Reports;

namespace Glazewright.Papers.Days;

/// <summary>Two years of the same weather on paper: the table of differences, what each held as a carpet, and where the air was otherwise.</summary>
public static class ComparisonReport
{
    private const double CarpetMm = 58;

    /// <summary>The report.</summary>
    /// <param name="job">Name of the job.</param>
    /// <param name="before">What the first is called.</param>
    /// <param name="after">What the second is called.</param>
    /// <param name="houses">The houses.</param>
    /// <param name="bandK">What counts as held, K either way.</param>
    /// <param name="units">Units of the reader.</param>
    /// <param name="size">Paper.</param>
    /// <returns>A chapter a house.</returns>
    public static Report Of(string job, string before, string after, IReadOnlyList<ComparedHouse> houses, double bandK, UnitSystem units, SheetSize size)
    {
        ArgumentNullException.ThrowIfNull(houses);
        List<Block> blocks =
        [
            new Block.Opening(job, "The same year twice", [$"Weather: {(houses.Count > 0 ? houses[0].Before.Weather : "none")}", "Predicted by a model; a typical year leaves the extremes out, and so do both"]),
        ];
        foreach (ComparedHouse house in houses)
        {
            blocks.Add(new Block.Heading(1, $"House {house.House}"));
            blocks.AddRange(house.Notes.Select(n => (Block)new Block.Paragraph(n)));
            IReadOnlyList<Sheet> carpets = Carpets(house, before, after, bandK, units);
            blocks.AddRange(carpets.Select(c => (Block)new Block.Picture(c, c.Title + ": days along, hours up (standard time), hourly means.")));
            blocks.Add(new Block.TableOf(Rows(house, before, after, units)));
        }

        return new Report($"{job}: two years compared", "The same weather year twice", $"{job} · compared", null, size, blocks);
    }

    /// <summary>The carpets: what each year held, and how much warmer the second was.</summary>
    /// <param name="house">The house.</param>
    /// <param name="before">What the first is called.</param>
    /// <param name="after">What the second is called.</param>
    /// <param name="bandK">What counts as held, K either way.</param>
    /// <param name="units">Units of the reader.</param>
    /// <returns>None for years without hours.</returns>
    public static IReadOnlyList<Sheet> Carpets(ComparedHouse house, string before, string after, double bandK, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(house);
        Sheet? one = ClimateAnswer.Carpet(house.Before, bandK, units, Said.WidthMm, CarpetMm), two = ClimateAnswer.Carpet(house.After, bandK, units, Said.WidthMm, CarpetMm);
        if (one is null || two is null)
        {
            return [];
        }

        bool us = units == UnitSystem.Us;
        double factor = us ? 1.8 : 1, step = us ? 1 : 0.5;
        EqList<float> was = house.Before.Hours.InsideC, now = house.After.Hours.InsideC;
        double[] warmer = [.. Enumerable.Range(0, was.Count).Select(h => factor * (now[h] - was[h]))];
        string unit = us ? "F°" : "K";
        Sheet change = CarpetPlot.Draw($"change-{house.House}", $"House {house.House}: air at the crop, {after} less {before}", unit, warmer, Departures(step), Said.WidthMm, CarpetMm);
        return
        [
            one with { Id = $"held-{house.House}-1", Title = $"{one.Title}, {before}" },
            two with { Id = $"held-{house.House}-2", Title = $"{two.Title}, {after}" },
            change with { Readings = [.. change.Readings.Select(r => r.In(1, unit, 1))] },
        ];
    }

    // Seven classes about nothing: the middle one is the page.
    private static IReadOnlyList<CarpetClass> Departures(double step) => CarpetPlot.Even(Ramp.Diverging, -2.5 * step, step, 7);

    /// <summary>The table of differences as data.</summary>
    /// <param name="houses">The houses.</param>
    /// <returns>CSV, metric units; a motor that one side lacks has an empty cell there.</returns>
    public static string Csv(IReadOnlyList<ComparedHouse> houses)
    {
        ArgumentNullException.ThrowIfNull(houses);
        CsvText table = new("house", "value", "label", "unit", "first", "second");
        foreach (ComparedHouse h in houses)
        {
            foreach (ComparedValue r in h.Rows)
            {
                table.Cell(h.House).Cell(r.Id).Cell(r.Label).Cell(Shown.Of(r.BeforeValue, r.Unit, UnitSystem.Metric).Unit);
                Side(r, r.BeforeValue, 1);
                Side(r, r.AfterValue, 2);
                table.End();
            }
        }

        return table.ToString();

        void Side(ComparedValue row, double value, int side)
        {
            if (row.OnlyIn > 0 && row.OnlyIn != side)
            {
                table.Cell("");
            }
            else
            {
                table.Cell(Shown.Of(value, row.Unit, UnitSystem.Metric).Value, 4);
            }
        }
    }

    private static Table Rows(ComparedHouse house, string before, string after, UnitSystem units) => new(
        [new("", 70), new(before, 28, Along.End), new(after, 28, Along.End), new("change", 28, Along.End), new("", 16)],
        [
            .. house.Rows.Select(r => (r, ComparedWords.Of(r, units))).Select(x => (IReadOnlyList<string>)[x.r.Label, x.Item2.Before, x.Item2.After, x.Item2.Change, x.Item2.Verdict]),
        ]);
}
