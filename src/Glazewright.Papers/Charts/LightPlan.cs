using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Charts;

/// <summary>A grid of values over a floor plan, in classes of a ramp.</summary>
public static class LightPlan
{
    /// <summary>The picture, true to the plan's proportions.</summary>
    /// <param name="id">Short name.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="unit">Unit of the values.</param>
    /// <param name="columns">Grid points along.</param>
    /// <param name="rows">Grid points across.</param>
    /// <param name="values">Values, along fastest, first row at the bottom.</param>
    /// <param name="classes">Classes from low to high.</param>
    /// <param name="proportionRatio">Length of the plan over its width.</param>
    /// <param name="widthMm">Width on paper, mm.</param>
    /// <exception cref="ArgumentException">The values do not fill the grid.</exception>
    public static Sheet Draw(
        string id, string title, string unit, int columns, int rows, IReadOnlyList<double> values, IReadOnlyList<CarpetClass> classes, double proportionRatio, double widthMm)
    {
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(classes);
        if (values.Count != columns * rows || values.Count == 0)
        {
            throw new ArgumentException("The values do not fill the grid.", nameof(values));
        }

        double planMm = Math.Clamp(widthMm / proportionRatio, 14, 80);
        double wideMm = Math.Min(widthMm, planMm * proportionRatio);
        Box plot = new(0.5, 0.5, wideMm - 1, planMm);
        List<Entity> all = [];
        for (int c = 0; c < classes.Count; c++)
        {
            IReadOnlyList<IReadOnlyList<Spot>> region =
            [
                .. GridOutline.Of(columns, rows, (x, y) => CarpetPlot.ClassOf(values[y * columns + x], classes) >= c)
                    .Select(r => (IReadOnlyList<Spot>)[.. r.Select(p => new Spot(plot.Left + p.X * plot.Width / columns, plot.Bottom - p.Y * plot.Height / rows))]),
            ];
            if (region.Count > 0)
            {
                all.Add(new Entity.Fill(region, classes[c].Paint) { Role = Role.Fill });
            }
        }

        all.Add(new Entity.Polyline(plot.Corners(), true) { Role = Role.Frame, Pen = new Pen(0.25, [], Paint.Of(Tone.Edge)) });
        double height = planMm + 7;
        all.AddRange(CarpetPlot.Key(classes, unit, plot.Left, height - 1, widthMm));
        double mean = values.Average();
        string said = FormattableString.Invariant($"{title}: mean {mean:0.0}, least {values.Min():0.0}, most {values.Max():0.0} {unit}.");
        return new Sheet(id, title, said, widthMm, height, [], all) { Readings = [ReadingGrid.Plain("", plot, columns, rows, values, unit, 1)] };
    }
}
