using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Charts;

/// <summary>A curve of a strip chart.</summary>
/// <param name="Name">Its name, lettered at its end.</param>
/// <param name="Values">Values at equal steps; not-a-number breaks the curve.</param>
public sealed record Strip(string Name, IReadOnlyList<double> Values);

/// <summary>Curves over time at equal steps, named at their ends, with a band for what is wanted.</summary>
public static class StripChart
{
    private static readonly double[][] Dashes = [[], [3, 1], [1, 1], [5, 1, 1, 1], [7, 1.5], [2, 2]];

    /// <summary>The chart.</summary>
    /// <param name="id">Short name.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="unit">Unit of the values.</param>
    /// <param name="strips">Up to six curves of the same length.</param>
    /// <param name="band">The range wanted, with its name; or none.</param>
    /// <param name="timeMarks">Texts along the time axis at fractions 0 to 1 of it.</param>
    /// <param name="widthMm">Width on paper, mm.</param>
    /// <param name="heightMm">Height on paper, mm.</param>
    /// <param name="stepName">A step in words, where the values can be pointed at on a page; null for a picture alone.</param>
    public static Sheet Draw(
        string id,
        string title,
        string unit,
        IReadOnlyList<Strip> strips,
        (double Low, double High, string Name)? band,
        IReadOnlyList<(double Fraction, string Text)> timeMarks,
        double widthMm,
        double heightMm,
        Func<int, string>? stepName = null)
    {
        ArgumentNullException.ThrowIfNull(strips);
        ArgumentNullException.ThrowIfNull(timeMarks);
        double[] known = [.. strips.SelectMany(s => s.Values).Where(double.IsFinite)];
        double low = Math.Min(known.DefaultIfEmpty(0).Min(), band?.Low ?? double.PositiveInfinity);
        double high = Math.Max(known.DefaultIfEmpty(1).Max(), band?.High ?? double.NegativeInfinity);
        AxisTicks ticks = AxisTicks.Over(low, high, 4);
        double names = strips.Select(s => Lettering.WidthMm(Lettering.Drawable(s.Name), Face.Regular, Lettered.SmallestMm)).DefaultIfEmpty(0).Max();
        double numbers = ticks.Values().Max(v => Lettering.WidthMm(ticks.Text(v), Face.Regular, Lettered.SmallestMm));
        ChartBox box = new(widthMm, heightMm, leftMm: 4 + numbers, rightMm: names + 3, topMm: 6.5, bottomMm: 7);
        List<Entity> all = [];
        if (band is (double bandLow, double bandHigh, string bandName))
        {
            double top = box.Y(ticks, bandHigh);
            Box wanted = new(box.Plot.Left, top, box.Plot.Width, Math.Max(0.3, box.Y(ticks, bandLow) - top));
            all.Add(new Entity.Fill([wanted.Corners()], Paint.Of(Tone.Held), 0.18) { Role = Role.Fill });
            all.Add(new Entity.Label(new(box.Plot.Right, 3.2), bandName) { Role = Role.Text, Along = Along.End, Paint = Paint.Of(Tone.Held) });
        }

        all.AddRange(box.ValueAxis(ticks, unit));
        foreach ((double fraction, string text) in timeMarks)
        {
            double x = box.Plot.Left + fraction * box.Plot.Width;
            all.Add(new Entity.Polyline([new(x, box.Plot.Bottom), new(x, box.Plot.Bottom + 1.2)]) { Role = Role.Frame, Pen = new Pen(0.18, [], Paint.Of(Tone.Edge)) });
            all.Add(new Entity.Label(new(x, box.Plot.Bottom + 5), text)
            {
                Role = Role.Text,
                Paint = Paint.Of(Tone.Ink2),
                Along = fraction <= 0.001 ? Along.Start : fraction >= 0.999 ? Along.End : Along.Middle,
            });
        }

        for (int s = 0; s < strips.Count; s++)
        {
            Pen pen = new(0.4, Dashes[s % Dashes.Length], Paint.Of(Tones.Series(s)));
            all.AddRange(Pieces(strips[s], box, ticks).Select(p => new Entity.Polyline(p) { Role = Role.Curve, Pen = pen }));
        }

        all.AddRange(EndNames(strips, box, ticks));
        return new Sheet(id, title, Sentence(title, unit, strips, ticks), widthMm, heightMm, [], all)
        {
            Readings = stepName is null ? [] : [Moments(strips, box.Plot, unit, stepName, ticks.High - ticks.Low < 200 ? 1 : 0)],
        };
    }

    // A column a step, with what every curve has there; a curve's point is the middle of its column.
    private static ReadingGrid Moments(IReadOnlyList<Strip> strips, Box plot, string unit, Func<int, string> stepName, int decimals)
    {
        int steps = strips.Max(s => s.Values.Count);
        double stepMm = plot.Width / Math.Max(1, steps - 1);
        string Told(int step) => string.Join(", ", strips.Where(s => step < s.Values.Count && double.IsFinite(s.Values[step])).Select(s => $"{s.Name} {ReadingGrid.Number(s.Values[step], decimals)} {unit}"));
        return new ReadingGrid("", new Box(plot.Left - stepMm / 2, plot.Top, plot.Width + stepMm, plot.Height), steps, 1, (_, _) => double.NaN, stepName, _ => "", unit, decimals)
        {
            Words = (step, _) => Told(step) is { Length: > 0 } told ? told : "none",
        };
    }

    private static IEnumerable<IReadOnlyList<Spot>> Pieces(Strip strip, ChartBox box, AxisTicks ticks)
    {
        List<Spot> piece = [];
        int last = Math.Max(1, strip.Values.Count - 1);
        for (int i = 0; i < strip.Values.Count; i++)
        {
            if (double.IsFinite(strip.Values[i]))
            {
                piece.Add(new Spot(box.Plot.Left + box.Plot.Width * i / last, box.Y(ticks, strip.Values[i])));
                continue;
            }

            if (piece.Count > 1)
            {
                yield return piece;
            }

            piece = [];
        }

        if (piece.Count > 1)
        {
            yield return piece;
        }
    }

    private static IEnumerable<Entity> EndNames(IReadOnlyList<Strip> strips, ChartBox box, AxisTicks ticks)
    {
        const double pitch = Lettered.SmallestMm + 1;
        (int Index, double Y)[] ends =
        [
            .. strips.Select((s, i) => (i, box.Y(ticks, s.Values.LastOrDefault(double.IsFinite, ticks.Low)))).OrderBy(e => e.Item2).ThenBy(e => e.i),
        ];
        double free = double.NegativeInfinity;
        for (int i = 0; i < ends.Length; i++)
        {
            double latest = box.Plot.Bottom - (ends.Length - 1 - i) * pitch;
            double y = Math.Max(free, Math.Min(ends[i].Y, latest));
            free = y + pitch;
            yield return new Entity.Label(new(box.Plot.Right + 1.5, y), strips[ends[i].Index].Name)
            {
                Role = Role.Text,
                Across = Across.Middle,
                Paint = Paint.Of(Tones.Series(ends[i].Index)),
            };
        }
    }

    private static string Sentence(string title, string unit, IReadOnlyList<Strip> strips, AxisTicks ticks)
    {
        string parts = string.Join("; ", strips.Where(s => s.Values.Any(double.IsFinite)).Select(s =>
            $"{s.Name} from {ticks.Text(s.Values.Where(double.IsFinite).Min())} to {ticks.Text(s.Values.Where(double.IsFinite).Max())} {unit}"));
        return $"{title}. {parts}.";
    }
}
