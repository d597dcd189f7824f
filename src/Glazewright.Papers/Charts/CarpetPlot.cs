using System.Globalization;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Charts;

/// <summary>A class of a carpet: every value below its limit that no earlier class took.</summary>
/// <param name="Below">Upper limit (excluded).</param>
/// <param name="Name">Its name in the key.</param>
/// <param name="Paint">Its colour.</param>
/// <param name="Patterned">Hatched over the colour, so that it is told from others without colour.</param>
public sealed record CarpetClass(double Below, string Name, Paint Paint, bool Patterned = false);

/// <summary>A year as a carpet: days along, hours up, colour for the value's class.</summary>
public static class CarpetPlot
{
    private static readonly int[] MonthStarts = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];
    private static readonly string[] Months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

    private static readonly Pen Pattern = new(0.18, [], Paint.Of(Tone.Sheet));

    /// <summary>Classes of equal width over a range, coloured by a ramp, with an open class at each end where wanted.</summary>
    /// <param name="ramp">Colours.</param>
    /// <param name="low">Upper limit of the first class.</param>
    /// <param name="step">Width of a class.</param>
    /// <param name="count">How many classes.</param>
    public static IReadOnlyList<CarpetClass> Even(Ramp ramp, double low, double step, int count)
    {
        ArgumentNullException.ThrowIfNull(ramp);
        List<CarpetClass> classes = [];
        for (int i = 0; i < count; i++)
        {
            double below = i == count - 1 ? double.PositiveInfinity : low + i * step;
            string name = i == 0 ? "<" + Text(low) : i == count - 1 ? "≥" + Text(low + (count - 2) * step) : Text(low + (i - 1) * step);
            classes.Add(new CarpetClass(below, name, ramp.Step(i, count)));
        }

        return classes;
    }

    /// <summary>Where the days lie on a carpet's drawing, mm: first to last from left to right.</summary>
    /// <param name="widthMm">Width of the drawing, mm.</param>
    /// <param name="heightMm">Height of the drawing, mm.</param>
    public static Box DaysOn(double widthMm, double heightMm) => BoxOf(widthMm, heightMm).Plot;

    private static ChartBox BoxOf(double widthMm, double heightMm) => new(widthMm, heightMm, leftMm: 9, rightMm: 2, topMm: 1.5, bottomMm: 12.5);

    /// <summary>The carpet with its key.</summary>
    /// <param name="id">Short name.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="unit">Unit of the values, or empty.</param>
    /// <param name="hourly">Values by hour of the year, 24 × days; not-a-number leaves the paper bare.</param>
    /// <param name="classes">Classes from low to high.</param>
    /// <param name="widthMm">Width on paper, mm.</param>
    /// <param name="heightMm">Height on paper, mm.</param>
    /// <exception cref="ArgumentException">The values are not whole days.</exception>
    public static Sheet Draw(
        string id, string title, string unit, IReadOnlyList<double> hourly, IReadOnlyList<CarpetClass> classes, double widthMm, double heightMm)
    {
        ArgumentNullException.ThrowIfNull(hourly);
        ArgumentNullException.ThrowIfNull(classes);
        if (hourly.Count % 24 != 0 || hourly.Count == 0)
        {
            throw new ArgumentException("A carpet is made of whole days.", nameof(hourly));
        }

        ChartBox box = BoxOf(widthMm, heightMm);
        List<Entity> all = [.. Cells(box.Plot, hourly, classes)];
        all.Add(new Entity.Polyline(box.Plot.Corners(), true) { Role = Role.Frame, Pen = new Pen(0.25, [], Paint.Of(Tone.Edge)) });
        int days = hourly.Count / 24;
        foreach (int hour in (int[])[0, 6, 12, 18, 24])
        {
            double y = box.Plot.Bottom - box.Plot.Height * hour / 24;
            all.Add(new Entity.Label(new(box.Plot.Left - 1.5, y), hour.ToString("00", CultureInfo.InvariantCulture))
            {
                Role = Role.Text,
                Along = Along.End,
                Across = hour == 0 ? Across.Base : hour == 24 ? Across.Top : Across.Middle,
                Paint = Paint.Of(Tone.Ink2),
            });
        }

        if (days is 365)
        {
            for (int m = 0; m < 12; m++)
            {
                double left = box.Plot.Left + box.Plot.Width * MonthStarts[m] / days;
                double middle = box.Plot.Left + box.Plot.Width * (MonthStarts[m] + MonthStarts[m + 1]) / 2 / days;
                all.Add(new Entity.Polyline([new(left, box.Plot.Bottom), new(left, box.Plot.Bottom + 1.5)]) { Role = Role.Frame, Pen = new Pen(0.18, [], Paint.Of(Tone.Edge)) });
                all.Add(new Entity.Label(new(middle, box.Plot.Bottom + 4.6), Months[m]) { Role = Role.Text, Along = Along.Middle, Paint = Paint.Of(Tone.Ink2) });
            }
        }

        all.AddRange(Key(classes, unit, box.Plot.Left, heightMm - 1, box.Plot.Width));
        return new Sheet(id, title, Sentence(title, unit, hourly, classes), widthMm, heightMm, [], all)
        {
            Readings = [new ReadingGrid("", box.Plot, days, 24, (day, hour) => hourly[24 * day + hour], day => DayName(day, days), hour => string.Create(CultureInfo.InvariantCulture, $"{hour}–{hour + 1} h"), unit, 0)],
        };
    }

    private static string DayName(int day, int days)
    {
        int month = Array.FindLastIndex(MonthStarts, 11, m => m <= day);
        return string.Create(CultureInfo.InvariantCulture, $"{(days is 365 ? $"{day - MonthStarts[month] + 1} {Months[month]}" : $"day {day + 1}")}");
    }

    private static IEnumerable<Entity> Cells(Box plot, IReadOnlyList<double> hourly, IReadOnlyList<CarpetClass> classes)
    {
        int days = hourly.Count / 24;
        int[] classOf = [.. hourly.Select(v => ClassOf(v, classes))];
        Spot OnPaper(Spot p) => new(plot.Left + p.X * plot.Width / days, plot.Bottom - p.Y * plot.Height / 24);
        for (int c = 0; c < classes.Count; c++)
        {
            // Each class is laid over the ones below it as "this much or more", so that no gap shows between neighbours.
            IReadOnlyList<IReadOnlyList<Spot>> region = Region(cell => cell >= c);
            if (region.Count > 0)
            {
                yield return new Entity.Fill(region, classes[c].Paint) { Role = Role.Fill };
            }
        }

        for (int c = 0; c < classes.Count; c++)
        {
            if (classes[c].Patterned)
            {
                yield return new Entity.Hatch(Region(cell => cell == c), HatchPattern.Slanted, 1.4) { Pen = Pattern };
            }
        }

        IReadOnlyList<IReadOnlyList<Spot>> Region(Func<int, bool> belongs) =>
        [
            .. GridOutline.Of(days, 24, (day, hour) => belongs(classOf[24 * day + hour])).Select(r => (IReadOnlyList<Spot>)[.. r.Select(OnPaper)]),
        ];
    }

    internal static int ClassOf(double value, IReadOnlyList<CarpetClass> classes)
    {
        for (int c = 0; c < classes.Count; c++)
        {
            if (value < classes[c].Below)
            {
                return c;
            }
        }

        return double.IsNaN(value) ? -1 : classes.Count - 1;
    }

    internal static IEnumerable<Entity> Key(IReadOnlyList<CarpetClass> classes, string unit, double leftMm, double baseMm, double widthMm)
    {
        double[] widths = [.. classes.Select(c => 5.5 + Lettering.WidthMm(Lettering.Drawable(c.Name), Face.Regular, Lettered.SmallestMm))];
        double unitMm = Lettering.WidthMm(unit, Face.Regular, Lettered.SmallestMm);
        double spare = widthMm - widths.Sum() - unitMm - 3;
        double gap = Math.Clamp(spare / Math.Max(1, classes.Count), 1, 5);
        double x = leftMm;
        for (int c = 0; c < classes.Count; c++)
        {
            Box swatch = new(x, baseMm - 2.9, 4, 3.2);
            yield return new Entity.Fill([swatch.Corners()], classes[c].Paint) { Role = Role.Fill };
            if (classes[c].Patterned)
            {
                yield return new Entity.Hatch([swatch.Corners()], HatchPattern.Slanted, 1.4) { Pen = Pattern };
            }

            yield return new Entity.Polyline(swatch.Corners(), true) { Role = Role.Frame, Pen = new Pen(0.13, [], Paint.Of(Tone.Edge)) };
            yield return new Entity.Label(new(x + 5, baseMm), classes[c].Name) { Role = Role.Text };
            x += widths[c] + gap;
        }

        if (unit.Length > 0)
        {
            yield return new Entity.Label(new(x, baseMm), unit) { Role = Role.Text, Paint = Paint.Of(Tone.Ink2) };
        }
    }

    private static string Sentence(string title, string unit, IReadOnlyList<double> hourly, IReadOnlyList<CarpetClass> classes)
    {
        int[] hours = new int[classes.Count];
        foreach (double value in hourly)
        {
            int c = ClassOf(value, classes);
            if (c >= 0)
            {
                hours[c]++;
            }
        }

        string parts = string.Join(", ", classes.Select((c, i) => string.Create(CultureInfo.InvariantCulture, $"{c.Name}: {hours[i]} h")));
        return $"{title}{(unit.Length > 0 ? ", " + unit : "")}, by day and hour of the year. {parts}.";
    }

    private static string Text(double value) => value.ToString("0.##", CultureInfo.InvariantCulture).Replace("-", "−", StringComparison.Ordinal);
}
