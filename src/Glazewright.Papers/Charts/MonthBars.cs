using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Charts;

/// <summary>One row of bars in a month chart.</summary>
/// <param name="Name">Its name, in the key.</param>
/// <param name="Values">Twelve values, January first, none below 0.</param>
public sealed record MonthSeries(string Name, IReadOnlyList<double> Values);

/// <summary>Bars by month, one or two to a month, with a line for what is wanted.</summary>
public static class MonthBars
{
    private static readonly string[] Months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

    /// <summary>The numbers that the chart draws.</summary>
    /// <param name="unit">Unit of the values, for the heads.</param>
    /// <param name="series">The series.</param>
    /// <param name="decimals">Digits after the point.</param>
    public static Table Numbers(string unit, IReadOnlyList<MonthSeries> series, int decimals)
    {
        string form = "#,0." + new string('0', decimals);
        return new Table(
            [new Column("Month", 20), .. series.Select(s => new Column($"{s.Name}, {unit}", 30, Along.End))],
            [.. Months.Select((m, i) => (IReadOnlyList<string>)[m, .. series.Select(s => s.Values[i].ToString(form.TrimEnd('.'), System.Globalization.CultureInfo.InvariantCulture))])]);
    }

    /// <summary>The chart.</summary>
    /// <param name="id">Short name.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="unit">Unit of the values, for the axis.</param>
    /// <param name="series">One to three series.</param>
    /// <param name="wanted">A level to compare with, and its name; or none.</param>
    /// <param name="widthMm">Width on paper, mm.</param>
    /// <param name="heightMm">Height on paper, mm.</param>
    public static Sheet Draw(
        string id, string title, string unit, IReadOnlyList<MonthSeries> series, (double Level, string Name)? wanted, double widthMm, double heightMm)
    {
        ArgumentNullException.ThrowIfNull(series);
        double most = Math.Max(series.SelectMany(s => s.Values).DefaultIfEmpty(0).Max(), wanted?.Level ?? 0);
        AxisTicks ticks = AxisTicks.Over(0, most > 0 ? most : 1, 4);
        ChartBox box = new(widthMm, heightMm, leftMm: 4 + AxisWidth(ticks), rightMm: 2, topMm: 9, bottomMm: 7);
        List<Entity> all = [.. box.ValueAxis(ticks, unit)];
        double slotMm = box.Plot.Width / 12;
        double barMm = slotMm * 0.72 / series.Count;
        for (int m = 0; m < 12; m++)
        {
            double slotLeft = box.Plot.Left + m * slotMm + slotMm * 0.14;
            for (int s = 0; s < series.Count; s++)
            {
                double top = box.Y(ticks, series[s].Values[m]);
                Box bar = new(slotLeft + s * barMm, top, barMm, box.Plot.Bottom - top);
                all.Add(new Entity.Fill([bar.Corners()], Paint.Of(Tones.Series(s))) { Role = Role.Fill });
            }

            all.Add(new Entity.Label(new(box.Plot.Left + (m + 0.5) * slotMm, box.Plot.Bottom + 5), Months[m])
            {
                Role = Role.Text,
                Along = Along.Middle,
                Paint = Paint.Of(Tone.Ink2),
            });
        }

        if (wanted is (double level, string name))
        {
            double y = box.Y(ticks, level);
            all.Add(new Entity.Polyline([new(box.Plot.Left, y), new(box.Plot.Right, y)])
            {
                Role = Role.Curve,
                Pen = new Pen(0.35, [3, 1.2], Paint.Of(Tone.Ink)),
            });

            // Named beside the unit, where no bar can lie under the words.
            double x = box.Plot.Left + Lettering.WidthMm(unit, Face.Regular, Lettered.SmallestMm) + 8;
            all.Add(new Entity.Polyline([new(x, 2), new(x + 9, 2)]) { Role = Role.Curve, Pen = new Pen(0.35, [3, 1.2], Paint.Of(Tone.Ink)) });
            all.Add(new Entity.Label(new(x + 11, 3.2), name) { Role = Role.Text });
        }

        all.AddRange(ChartKey.Row(series.Select((s, i) => (s.Name, Tones.Series(i))), new(box.Plot.Right, 3.2)));
        string said = string.Join("; ", series.Select(s => $"{s.Name}: {string.Join(", ", s.Values.Select((v, i) => $"{Months[i]} {ticks.Text(v)}"))}"));
        return new Sheet(id, title, $"{title}, {unit}. {said}.", widthMm, heightMm, [], all);
    }

    private static double AxisWidth(AxisTicks ticks) =>
        ticks.Values().Max(v => Lettering.WidthMm(ticks.Text(v), Face.Regular, Lettered.SmallestMm));
}
