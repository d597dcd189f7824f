using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Charts;

/// <summary>The plotting area of a chart and its scales.</summary>
internal sealed class ChartBox(double widthMm, double heightMm, double leftMm, double rightMm, double topMm, double bottomMm)
{
    /// <summary>The plotting area, mm.</summary>
    public Box Plot { get; } = new(leftMm, topMm, widthMm - leftMm - rightMm, heightMm - topMm - bottomMm);

    /// <summary>Height on paper of a value, held inside the plot.</summary>
    public double Y(AxisTicks ticks, double value) =>
        Plot.Bottom - Plot.Height * Math.Clamp((value - ticks.Low) / (ticks.High - ticks.Low), 0, 1);

    /// <summary>Grid lines, their numbers and the unit over them.</summary>
    public IEnumerable<Entity> ValueAxis(AxisTicks ticks, string unit)
    {
        foreach (double value in ticks.Values())
        {
            double y = Y(ticks, value);
            bool foot = value == ticks.Low;
            yield return new Entity.Polyline([new(Plot.Left, y), new(Plot.Right, y)])
            {
                Role = Role.Grid,
                Pen = foot ? new Pen(0.25, [], Paint.Of(Tone.Edge)) : Pens.Of(Role.Grid),
            };
            yield return new Entity.Label(new(Plot.Left - 1.5, y), ticks.Text(value))
            {
                Role = Role.Text,
                Along = Along.End,
                Across = Across.Middle,
                Paint = Paint.Of(Tone.Ink2),
            };
        }

        yield return new Entity.Label(new(0.5, 3.2), unit) { Role = Role.Text, Paint = Paint.Of(Tone.Ink2) };
    }
}

/// <summary>The key of a chart with several series.</summary>
internal static class ChartKey
{
    /// <summary>Swatches and names in a row that ends at a point on the baseline, mm.</summary>
    public static IEnumerable<Entity> Row(IEnumerable<(string Name, Tone Tone)> entries, Spot endMm)
    {
        double x = endMm.X;
        foreach ((string name, Tone tone) in entries.Reverse())
        {
            double width = Lettering.WidthMm(Lettering.Drawable(name), Face.Regular, Lettered.SmallestMm);
            yield return new Entity.Label(new(x, endMm.Y), name) { Role = Role.Text, Along = Along.End };
            Box swatch = new(x - width - 4.6, endMm.Y - 2.5, 3, 2.5);
            yield return new Entity.Fill([swatch.Corners()], Paint.Of(tone)) { Role = Role.Fill };
            x -= width + 9;
        }
    }
}
