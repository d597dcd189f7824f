using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Year;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Exchange;
using Glazewright.Papers.Reports;

namespace Glazewright.Papers.Days;

/// <summary>A day cell by cell along the house: a picture, a table and what they say.</summary>
public static class AlongReport
{
    private const int MinutesAPicture = 10;

    /// <summary>The chapter.</summary>
    /// <param name="day">The day.</param>
    /// <param name="units">Units of the reader.</param>
    /// <returns>Blocks for the day's report.</returns>
    public static IReadOnlyList<Block> Blocks(DetailDay day, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(day);
        Said said = new(units);
        return
        [
            new Block.NewPage(),
            new Block.Heading(1, "Along the house"),
            new Block.Paragraph(Sentence(day, units)),
            new Block.Picture(Draw(day, units, Said.WidthMm), $"Air at the crop in {day.Cells.Count} cells of {said.Text(day.CellLengthM, Unit.Metre)}, the intake's end at the bottom ({(day.IntakeAtEnd2 ? "end 2" : "end 1")}); the program's sensor hangs in cell {day.SensorCell + 1}."),
            new Block.TableOf(Table(day, units)),
            new Block.Paragraph($"Steps of {day.StepS:0} s, so that pulses of fog, ignition and the travel of motors are seen one by one. All cells start the day as the year's house was at midnight; shell, sun, leaks and fog are spread evenly along it, the end walls too; a heater's heat evenly as far as its throw.", Quiet: true),
        ];
    }

    /// <summary>The day in a sentence or two.</summary>
    /// <param name="day">The day.</param>
    /// <param name="units">Units of the reader.</param>
    public static string Sentence(DetailDay day, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(day);
        int worst = Enumerable.Range(0, 1440).MaxBy(m => Spread(day, m));
        double[] at = [.. day.Cells.Select(c => c.AirC[worst])];
        double rms = Math.Sqrt(Enumerable.Range(0, 1440).Average(m => Math.Pow(day.Cells.Average(c => c.AirC[m]) - day.Whole.Minutes[m].InsideC, 2)));
        string Degrees(double c) => Shown.Of(c, Unit.Celsius, units).Text;
        string Apart(double k) => units == UnitSystem.Us ? FormattableString.Invariant($"{1.8 * k:0.0} °F") : FormattableString.Invariant($"{k:0.0} K");
        return FormattableString.Invariant(
            $"At {DayReport.Clock(worst)} the house is least even: {Degrees(at.Min())} in cell {Array.IndexOf(at, at.Min()) + 1} and {Degrees(at.Max())} in cell {Array.IndexOf(at, at.Max()) + 1}, {Apart(at.Max() - at.Min())} apart; over the whole day {Apart(Enumerable.Range(0, 1440).Average(m => Spread(day, m)))} on the mean. The mean of all cells differs from the year's one-piece house by {Apart(rms)} (root of the mean square).");
    }

    /// <summary>Every minute and cell.</summary>
    /// <param name="day">The day.</param>
    /// <returns>CSV, SI: one row a minute, two columns a cell.</returns>
    public static string Minutes(DetailDay day)
    {
        ArgumentNullException.ThrowIfNull(day);
        CsvText table = new(["minute", .. Enumerable.Range(1, day.Cells.Count).SelectMany(c => new[] { FormattableString.Invariant($"cell_{c}_c"), FormattableString.Invariant($"cell_{c}_rh_percent") })]);
        for (int m = 0; m < 1440; m++)
        {
            table.Cell(DayReport.Clock(m));
            foreach (DetailCell cell in day.Cells)
            {
                table.Cell(cell.AirC[m], 2).Cell(cell.RhPercent[m], 1);
            }

            table.End();
        }

        return table.ToString();
    }

    /// <summary>Every command by the second.</summary>
    /// <param name="day">The day.</param>
    /// <returns>CSV.</returns>
    public static string Commands(DetailDay day)
    {
        ArgumentNullException.ThrowIfNull(day);
        CsvText table = new("from", "to", "equipment", "level_fraction", "reason");
        foreach (DetailSpell s in day.Spells)
        {
            table.Cell(DayReport.ToTheSecond(s.FromS / 60)).Cell(DayReport.ToTheSecond(s.ToS / 60)).Cell(day.Whole.Actuators[s.Actuator]).Cell(s.LevelFraction, 3).Cell(s.Because).End();
        }

        return table.ToString();
    }

    private static double Spread(DetailDay day, int minute) => day.Cells.Max(c => c.AirC[minute]) - day.Cells.Min(c => c.AirC[minute]);

    private static Table Table(DetailDay day, UnitSystem units) => new(
        [
            new Column("Cell", 14, Along.End), new Column("Lowest", 26, Along.End), new Column("Mean", 26, Along.End), new Column("Highest", 26, Along.End), new Column("Mean humidity", 30, Along.End),
        ],
        [
            .. day.Cells.Select((c, i) => (IReadOnlyList<string>)
            [
                (i + 1).ToString(CultureInfo.InvariantCulture), Shown.Of(c.AirC.Min(), Unit.Celsius, units).Text, Shown.Of(c.AirC.Average(), Unit.Celsius, units).Text,
                Shown.Of(c.AirC.Max(), Unit.Celsius, units).Text, FormattableString.Invariant($"{c.RhPercent.Average():0} %"),
            ]),
        ]);

    private static Sheet Draw(DetailDay day, UnitSystem units, double widthMm)
    {
        int columns = 1440 / MinutesAPicture, rows = day.Cells.Count;
        double Of(int column, int row) => Enumerable.Range(column * MinutesAPicture, MinutesAPicture).Average(m => Shown.Of(day.Cells[row].AirC[m], Unit.Celsius, units).Value);
        double[] values = [.. Enumerable.Range(0, rows).SelectMany(r => Enumerable.Range(0, columns).Select(c => Of(c, r)))];
        double least = Math.Floor(values.Min()), step = Math.Max(1, Math.Ceiling((values.Max() - least) / 7));
        IReadOnlyList<CarpetClass> classes = CarpetPlot.Even(Ramp.Sequential, least + step, step, 7);
        double highMm = Math.Clamp(5 * rows, 24, 60);
        Box plot = new(10, 2, widthMm - 12, highMm);
        List<Entity> all = [];
        for (int k = 0; k < classes.Count; k++)
        {
            IReadOnlyList<IReadOnlyList<Spot>> region =
            [
                .. GridOutline.Of(columns, rows, (x, y) => CarpetPlot.ClassOf(values[(y * columns) + x], classes) >= k)
                    .Select(r => (IReadOnlyList<Spot>)[.. r.Select(p => new Spot(plot.Left + (p.X * plot.Width / columns), plot.Bottom - (p.Y * plot.Height / rows)))]),
            ];
            if (region.Count > 0)
            {
                all.Add(new Entity.Fill(region, classes[k].Paint) { Role = Role.Fill });
            }
        }

        all.Add(new Entity.Polyline(plot.Corners(), true) { Role = Role.Frame, Pen = new Pen(0.25, [], Paint.Of(Tone.Edge)) });
        foreach (int cell in rows > 8 ? [1, rows] : Enumerable.Range(1, rows))
        {
            all.Add(new Entity.Label(new(plot.Left - 1.5, plot.Bottom - ((cell - 0.5) * plot.Height / rows)), cell.ToString(CultureInfo.InvariantCulture))
            {
                Role = Role.Text,
                Along = Along.End,
                Across = Across.Middle,
                Paint = Paint.Of(Tone.Ink2),
            });
        }

        for (int hour = 0; hour <= 24; hour += 3)
        {
            all.Add(new Entity.Label(new(plot.Left + (plot.Width * hour / 24), plot.Bottom + 4.4), hour.ToString("00", CultureInfo.InvariantCulture))
            {
                Role = Role.Text,
                Along = hour == 0 ? Along.Start : hour == 24 ? Along.End : Along.Middle,
                Paint = Paint.Of(Tone.Ink2),
            });
        }

        double heightMm = plot.Bottom + 12;
        all.AddRange(CarpetPlot.Key(classes, Shown.Of(20, Unit.Celsius, units).Unit, plot.Left, heightMm - 1, plot.Width));
        return new Sheet("along", "Air along the house", $"Air temperature by hour and cell along the house. {Sentence(day, units)}", widthMm, heightMm, [], all);
    }
}
