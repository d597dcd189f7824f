using Glazewright.Design.Contracts;
using Glazewright.Design.Shape;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Shapes;

/// <summary>What shapes trade: light of the dark month along, light of the bright month up, glazing as the size and darkness of the disc.</summary>
public static class TradeOffPlot
{
    private const int MostDiscs = 240;

    /// <summary>The picture.</summary>
    /// <param name="result">What the finder found.</param>
    /// <param name="units">Reader's units.</param>
    /// <param name="widthMm">Width on paper, mm.</param>
    /// <param name="heightMm">Height on paper, mm.</param>
    /// <returns>The picture.</returns>
    public static Sheet Draw(ShapeResult result, UnitSystem units, double widthMm, double heightMm)
    {
        ArgumentNullException.ThrowIfNull(result);
        ShapeScore drawn = result.Drawn.Score;
        ShapeScore best = result.Best.Score;
        ShapeScore[] front = Thinned(result.Front);
        ShapeScore[] all = [.. front, drawn, best];
        AxisTicks along = AxisTicks.Over(all.Min(s => s.WinterMolPerM2Day), all.Max(s => s.WinterMolPerM2Day));
        AxisTicks up = AxisTicks.Over(all.Min(s => s.SummerMolPerM2Day), all.Max(s => s.SummerMolPerM2Day));
        (double least, double most) = (all.Min(s => s.GlazingM2), all.Max(s => s.GlazingM2));
        double numbers = up.Values().Max(v => Lettering.WidthMm(up.Text(v), Face.Regular, Lettered.SmallestMm));
        ChartBox box = new(widthMm, heightMm, leftMm: 4 + numbers, rightMm: 5, topMm: 16, bottomMm: 13);
        string winter = ShapeWords.Month(result.WinterMonth);
        string summer = ShapeWords.Month(result.SummerMonth);
        List<Entity> marks = [.. box.ValueAxis(up, $"{summer}, mol/m²·d")];
        foreach (double value in along.Values())
        {
            double x = X(value);
            marks.Add(new Entity.Polyline([new(x, box.Plot.Top), new(x, box.Plot.Bottom)]) { Role = Role.Grid });
            marks.Add(new Entity.Label(new(x, box.Plot.Bottom + 4.5), along.Text(value)) { Role = Role.Text, Along = Along.Middle, Paint = Paint.Of(Tone.Ink2) });
        }

        marks.Add(new Entity.Label(new(box.Plot.Left, box.Plot.Bottom + 9.5), $"{winter}, mol/m²·d on the benches, by the section") { Role = Role.Text, Paint = Paint.Of(Tone.Ink2) });
        foreach (ShapeScore s in front.OrderByDescending(s => s.GlazingM2))
        {
            marks.AddRange(Disc(At(s), s.GlazingM2));
        }

        marks.AddRange(Key());
        marks.AddRange(Marked(At(drawn), "as drawn", square: true));
        marks.AddRange(Marked(At(best), "chosen", square: false));
        string said = $"{result.Front.Count} shapes that no other beats, light by the section: {winter} {along.Text(all.Min(s => s.WinterMolPerM2Day))} to {along.Text(all.Max(s => s.WinterMolPerM2Day))}, "
            + $"{summer} {up.Text(all.Min(s => s.SummerMolPerM2Day))} to {up.Text(all.Max(s => s.SummerMolPerM2Day))} mol/m²·d, glazing {ShapeWords.Area(least, units)} to {ShapeWords.Area(most, units)}. "
            + $"As drawn: {Said(drawn)}. Chosen: {Said(best)}.";
        return new Sheet($"shape-trade-off-{result.House}", $"House {result.House}: what its shape trades", said, widthMm, heightMm, [], marks);

        double X(double value) => box.Plot.Left + (box.Plot.Width * Math.Clamp((value - along.Low) / (along.High - along.Low), 0, 1));

        Spot At(ShapeScore s) => new(X(s.WinterMolPerM2Day), box.Y(up, s.SummerMolPerM2Day));

        double Part(double areaM2) => most > least ? (areaM2 - least) / (most - least) : 0.5;

        IEnumerable<Entity> Disc(Spot at, double areaM2)
        {
            double radius = 0.7 + (1.6 * Part(areaM2));
            yield return new Entity.Fill([Ring(at, radius, 20)], new Paint.Exact(Ramp.Sequential.At(0.85 - (0.75 * Part(areaM2))))) { Role = Role.Fill };
            yield return new Entity.Arc(at, radius) { Role = Role.Curve, Pen = new Pen(0.13, [], Paint.Of(Tone.Edge)) };
        }

        IEnumerable<Entity> Key()
        {
            double x = box.Plot.Right;
            foreach (double area in (double[])[most, (least + most) / 2, least])
            {
                string text = ShapeWords.Area(area, units);
                double width = Lettering.WidthMm(Lettering.Drawable(text), Face.Regular, Lettered.SmallestMm);
                yield return new Entity.Label(new(x, 9.5), text) { Role = Role.Text, Along = Along.End };
                foreach (Entity e in Disc(new(x - width - 3.4, 8.3), area))
                {
                    yield return e;
                }

                x -= width + 9;
            }

            yield return new Entity.Label(new(x, 9.5), "glazing") { Role = Role.Text, Along = Along.End, Paint = Paint.Of(Tone.Ink2) };
        }

        IEnumerable<Entity> Marked(Spot at, string name, bool square)
        {
            const double r = 2.9;
            IReadOnlyList<Spot> ring = square
                ? [at + new Spot(-r, -r), at + new Spot(r, -r), at + new Spot(r, r), at + new Spot(-r, r)]
                : [at + new Spot(0, -1.4 * r), at + new Spot(1.4 * r, 0), at + new Spot(0, 1.4 * r), at + new Spot(-1.4 * r, 0)];
            yield return new Entity.Polyline(ring, true) { Role = Role.Curve, Pen = new Pen(0.6, [], Paint.Of(square ? Tone.Ink : Tone.Accent)) };
            bool toLeft = at.X > (box.Plot.Left + box.Plot.Right) / 2;
            double away = 5.4;
            yield return new Entity.Label(at + new Spot(toLeft ? -away : away, square ? 2.6 + r : -r), name)
            {
                Role = Role.Text,
                Along = toLeft ? Along.End : Along.Start,
                Face = Face.SemiBold,
                Masked = true,
                Paint = Paint.Of(square ? Tone.Ink : Tone.Accent),
            };
        }

        string Said(ShapeScore s) => $"{along.Text(s.WinterMolPerM2Day)} and {up.Text(s.SummerMolPerM2Day)} mol/m²·d with {ShapeWords.Area(s.GlazingM2, units)}";
    }

    private static ShapeScore[] Thinned(EqList<ShapeScore> front) => front.Count <= MostDiscs
        ? [.. front]
        : [.. Enumerable.Range(0, MostDiscs).Select(i => front[(int)((long)i * (front.Count - 1) / (MostDiscs - 1))])];

    private static Spot[] Ring(Spot centre, double radius, int corners) =>
        [.. Enumerable.Range(0, corners).Select(i => centre + (radius * new Spot(Math.Cos(2 * Math.PI * i / corners), Math.Sin(2 * Math.PI * i / corners))))];
}
