using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Science.Flow;

namespace Glazewright.Papers.Plant;

/// <summary>Exhaust fans against the house: pressure over flow of one, two … all fans, and what intake and pad take, with the points where they meet.</summary>
public static class FanChart
{
    private const int Steps = 60;
    private const double HeightMm = 88;

    /// <summary>The picture with its numbers.</summary>
    /// <param name="house">House id.</param>
    /// <param name="plant">The exhaust plant.</param>
    /// <param name="densityKgPerM3">Density of the design day's outside air, kg/m³.</param>
    /// <param name="catalogue">Where the fans' tested points stand.</param>
    /// <param name="units">The reader's units.</param>
    /// <param name="widthMm">Width on paper, mm.</param>
    /// <returns>The picture; null where a fan is not in the catalogue, or there is none.</returns>
    public static Block.Picture? Of(string house, ExhaustPlant plant, double densityKgPerM3, Catalogue catalogue, UnitSystem units, double widthMm)
    {
        ArgumentNullException.ThrowIfNull(plant);
        ArgumentNullException.ThrowIfNull(catalogue);
        FanEntry?[] entries = [.. plant.Fans.Select(f => catalogue.Fans.FirstOrDefault(e => e.Id == f.Entry))];
        if (entries.Length == 0 || entries.Contains(null))
        {
            return null;
        }

        FanCurve[] curves = [.. entries.Select(e => FanCurve.Through(e!.Points).AtDensity(densityKgPerM3))];
        Design.Plant.OperatingPoint all = plant.Wet[^1];
        double mostPa = curves.Max(c => c.ShutOffPa);
        double Pressure(double pa) => Shown.Of(pa, Unit.Pascal, units).Value;
        double Flow(double m3PerS) => Shown.Of(m3PerS, Unit.CubicMetrePerSecond, units).Value;
        AxisTicks up = AxisTicks.Over(0, Pressure(mostPa), 5);
        AxisTicks along = AxisTicks.Over(0, Flow(curves.Sum(c => c.At(0).FlowM3PerS)), 6);
        ChartBox box = new(widthMm, HeightMm, leftMm: 14, rightMm: 4, topMm: 8, bottomMm: 12);
        Spot At(double m3PerS, double pa) => new(box.Plot.Left + box.Plot.Width * Math.Clamp((Flow(m3PerS) - along.Low) / (along.High - along.Low), 0, 1), box.Y(up, Pressure(pa)));
        List<Entity> drawn = [.. box.ValueAxis(up, "static pressure, " + Shown.Of(0, Unit.Pascal, units).Unit)];
        foreach (double value in along.Values())
        {
            double x = box.Plot.Left + box.Plot.Width * (value - along.Low) / (along.High - along.Low);
            drawn.Add(new Entity.Label(new(x, box.Plot.Bottom + 4), value.ToString("#,0", System.Globalization.CultureInfo.InvariantCulture)) { Role = Role.Text, Along = value >= along.High ? Along.End : Along.Middle, Paint = Paint.Of(Tone.Ink2) });
        }

        drawn.Add(new Entity.Label(new(box.Plot.Right, box.Plot.Bottom + 8.5), "air, " + Shown.Of(0, Unit.CubicMetrePerSecond, units).Unit) { Role = Role.Text, Along = Along.End, Paint = Paint.Of(Tone.Ink2) });
        for (int n = 1; n <= curves.Length; n++)
        {
            bool isAll = n == curves.Length;
            Spot[] line = [.. Enumerable.Range(0, Steps + 1).Select(i => mostPa * i / Steps).Select(pa => (Pa: pa, Flow: curves.Take(n).Sum(c => pa < c.ShutOffPa ? c.At(pa).FlowM3PerS : 0))).Where(p => p.Flow > 0).Select(p => At(p.Flow, p.Pa))];
            drawn.Add(new Entity.Polyline(line) { Role = Role.Curve, Pen = new Pen(isAll ? 0.5 : 0.25, isAll ? [] : [1.6, 1.2], Paint.Of(Tones.Series(0))) });
            drawn.Add(new Entity.Label(line[0] with { Y = box.Plot.Bottom - 1.4, X = line[0].X + 1.2 }, isAll ? $"all {n}" : n.ToString(System.Globalization.CultureInfo.InvariantCulture)) { Role = Role.Text, Paint = Paint.Of(Tones.Series(0)) });
        }

        // What the house takes passes through the points found with 1, 2 … fans; nothing moves at no pressure.
        drawn.Add(new Entity.Polyline([At(0, 0), .. plant.Wet.Select(p => At(p.FlowM3PerS, p.StaticPa))]) { Role = Role.Curve, Pen = new Pen(0.5, [], Paint.Of(Tones.Series(5))) });
        foreach (Design.Plant.OperatingPoint point in plant.Wet)
        {
            Spot at = At(point.FlowM3PerS, point.StaticPa);
            drawn.Add(new Entity.Fill([new Box(at.X - 0.9, at.Y - 0.9, 1.8, 1.8).Corners()], Paint.Of(Tones.Series(5))) { Role = Role.Fill });
        }

        Said said = new(units);
        string meet = $"{said.Round(all.FlowM3PerS, Unit.CubicMetrePerSecond)} at {said.Text(all.StaticPa, Unit.Pascal)}";
        Spot met = At(all.FlowM3PerS, all.StaticPa);
        drawn.Add(new Entity.Label(new(Math.Min(met.X + 2.4, box.Plot.Right - Fonts.Lettering.WidthMm(Fonts.Lettering.Drawable(meet), Fonts.Face.SemiBold, Lettered.SmallestMm)), met.Y - 1.6), meet) { Role = Role.Text, Face = Fonts.Face.SemiBold });
        string title = $"House {house}: exhaust fans against intake and pad";
        Sheet sheet = new($"fans-{house}", title, $"{title}. All {curves.Length} fans on: {meet}.", widthMm, HeightMm, [], drawn);
        return new Block.Picture(sheet, "Blue: what the fans move, thin with fewer of them on. Red: what louvers, screen and pad take; squares where they meet. Tested points of generic fans, at the density of the design day's air.")
        {
            Numbers = new Table(
                [new("Fans on", 20, Along.End), new("Air, pad running", 34, Along.End), new("Pressure", 28, Along.End), new("Air, pad dry", 34, Along.End), new("Pressure", 28, Along.End), new("Power", 24, Along.End)],
                [
                    .. plant.Wet.Select((p, i) => (IReadOnlyList<string>)
                    [
                        p.FansOn.ToString(System.Globalization.CultureInfo.InvariantCulture), said.Round(p.FlowM3PerS, Unit.CubicMetrePerSecond), said.Text(p.StaticPa, Unit.Pascal),
                        said.Round(plant.Dry[i].FlowM3PerS, Unit.CubicMetrePerSecond), said.Text(plant.Dry[i].StaticPa, Unit.Pascal), said.Text(p.PowerW, Unit.ElectricWatt),
                    ]),
                ]),
        };
    }
}
