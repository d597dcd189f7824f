using System.Globalization;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;

namespace Glazewright.Bench.Convergence;

/// <summary>A sweep on two logarithmic scales: curves with their points, the slopes of theory beside them, the program's own setting marked.</summary>
internal sealed class LogLogPlot
{
    private const double WidthMm = 190;
    private const double HeightMm = 115;
    private const double NamePitchMm = 5;

    /// <summary>A screen without the house's letters takes wider ones.</summary>
    private const double LetteringRoom = 1.22;

    /// <summary>Where a mean's error happens to cross zero it falls out of any scale; the foot of the picture, %.</summary>
    private const double LeastPercent = 0.001;

    private static readonly double[][] Dashes = [[], [3, 1], [1, 1], [5, 1, 1, 1], [7, 1.5], [2, 2]];

    private readonly Sweep sweep;
    private readonly Box plot;
    private readonly (double Low, double High) count;
    private readonly (double Low, double High) error;

    private LogLogPlot(Sweep sweep)
    {
        this.sweep = sweep;
        double[] errors = [.. sweep.Levels.SelectMany(l => l.Values).Where(v => v > 1e-9)];
        count = (sweep.Levels[0].Count / 1.25, sweep.Levels[^1].Count * 1.25);
        error = (Math.Max(LeastPercent, errors.Min() / 1.5), errors.Max() * 2.5);
        double names = sweep.Curves.Select((_, c) => Lettering.WidthMm(Name(c), Face.Regular, Lettered.SmallestMm)).Max();
        plot = new(17, 22, WidthMm - 17 - 8 - (LetteringRoom * names), 76);
    }

    internal static Sheet Draw(Sweep sweep) => new LogLogPlot(sweep).Sheet();

    private Sheet Sheet()
    {
        bool errorsBelow = sweep.Levels.Any(l => l.Values.Any(v => v < error.Low));
        List<Entity> all =
        [
            new Entity.Label(new(4, 7), sweep.Title, 3) { Role = Role.Text, Face = Face.SemiBold },
            new Entity.Label(new(4, 13.5), $"{sweep.ErrorName}{(errorsBelow ? " (marks on the foot are smaller yet)" : "")}") { Role = Role.Text, Paint = Paint.Of(Tone.Ink2) },
            new Entity.Label(new((plot.Left + plot.Right) / 2, plot.Bottom + 12), $"N = {sweep.CountName}")
            {
                Role = Role.Text, Along = Along.Middle, Paint = Paint.Of(Tone.Ink2),
            },
        ];
        all.AddRange(Grid());
        all.AddRange(Used());
        all.AddRange(sweep.Guides.SelectMany(Guide));
        for (int c = 0; c < sweep.Curves.Count; c++)
        {
            all.AddRange(Curve(c));
        }

        all.AddRange(Names());
        string said = string.Join("; ", sweep.Curves.Select((name, c) => string.Create(
            CultureInfo.InvariantCulture, $"{name}: from {sweep.Levels[0].Values[c]:0.###} to {sweep.Levels[^1].Values[c]:0.####}, fitted slope {sweep.Slope(c):0.00}")));
        return new Sheet(
            sweep.Id, sweep.Title, $"{sweep.ErrorName}, against {sweep.CountName}, both scales logarithmic. {said}. The program uses {Number(sweep.UsedCount)}.",
            WidthMm, HeightMm, [], all);
    }

    private IEnumerable<Entity> Grid()
    {
        foreach (double v in Ticks(count))
        {
            yield return Line(Role.Grid, Pens.Of(Role.Grid), new(X(v), plot.Top), new(X(v), plot.Bottom));
            yield return new Entity.Label(new(X(v), plot.Bottom + 5), Number(v)) { Role = Role.Text, Along = Along.Middle, Paint = Paint.Of(Tone.Ink2) };
        }

        foreach (double v in Ticks(error))
        {
            yield return Line(Role.Grid, Pens.Of(Role.Grid), new(plot.Left, Y(v)), new(plot.Right, Y(v)));
            yield return new Entity.Label(new(plot.Left - 1.5, Y(v)), Number(v)) { Role = Role.Text, Along = Along.End, Across = Across.Middle, Paint = Paint.Of(Tone.Ink2) };
        }

        yield return new Entity.Polyline(plot.Corners(), true) { Role = Role.Frame, Pen = new Pen(0.25, [], Paint.Of(Tone.Edge)) };
    }

    private IEnumerable<Entity> Used()
    {
        double x = X(sweep.UsedCount);
        yield return Line(Role.Centre, new Pen(0.35, [], Paint.Of(Tone.Accent)), new(x, plot.Top), new(x, plot.Bottom));
        yield return new Entity.Label(new(x, plot.Top - 1.6), $"the program: {Number(sweep.UsedCount)}")
        {
            Role = Role.Text,
            Face = Face.SemiBold,
            Along = Along.Middle,
            Paint = Paint.Of(Tone.Accent),
        };
    }

    // From above the highest first point down, as far as the frame.
    private IEnumerable<Entity> Guide((double Slope, string Words) guide)
    {
        double first = sweep.Levels[0].Count;
        double start = 1.7 * sweep.Levels[0].Values.Max();
        double last = Math.Min(sweep.Levels[^1].Count, first * Math.Pow(start / (1.1 * error.Low), 1 / guide.Slope));
        double end = start * Math.Pow(last / first, -guide.Slope);
        yield return Line(Role.Curve, new Pen(0.25, [1.2, 1.2], Paint.Of(Tone.Ink2)), new(X(first), Y(start)), new(X(last), Y(end)));
        double at = first * Math.Pow(last / first, 0.78);
        yield return new Entity.Label(new Spot(X(at), Y(start * Math.Pow(at / first, -guide.Slope))) + new Spot(1.5, -1.2), guide.Words)
        {
            Role = Role.Text,
            Masked = true,
            Paint = Paint.Of(Tone.Ink2),
        };
    }

    private IEnumerable<Entity> Curve(int c)
    {
        Paint paint = Paint.Of(Tones.Series(c));
        Spot[] points = [.. sweep.Levels.Select(l => new Spot(X(l.Count), Y(l.Values[c])))];
        yield return new Entity.Polyline(points) { Role = Role.Curve, Pen = new Pen(0.4, Dashes[c % Dashes.Length], paint) };
        foreach (Spot p in points)
        {
            yield return new Entity.Fill([Mark(p, c)], paint) { Role = Role.Fill };
        }
    }

    private static Spot[] Mark(Spot at, int c)
    {
        (int corners, double turn) = c switch { 0 => (24, 0.0), 1 => (4, 0.0), 2 => (3, 0.5 * Math.PI), 3 => (4, 0.25 * Math.PI), 4 => (3, -0.5 * Math.PI), _ => (6, 0.0) };
        return [.. Enumerable.Range(0, corners).Select(i => at + (1.1 * new Spot(Math.Cos(turn + (2 * Math.PI * i / corners)), -Math.Sin(turn + (2 * Math.PI * i / corners)))))];
    }

    // Names at the ends of their curves, with the fitted slope, pushed apart where they would touch.
    private IEnumerable<Entity> Names()
    {
        (int Curve, double Y)[] ends = [.. Enumerable.Range(0, sweep.Curves.Count).Select(c => (c, Y(sweep.Levels[^1].Values[c]))).OrderBy(e => e.Item2).ThenBy(e => e.c)];
        double free = plot.Top;
        for (int i = 0; i < ends.Length; i++)
        {
            double y = Math.Max(free, Math.Min(ends[i].Y, plot.Bottom - ((ends.Length - 1 - i) * NamePitchMm)));
            free = y + NamePitchMm;
            int c = ends[i].Curve;
            yield return new Entity.Fill([Mark(new(plot.Right + 3.2, y), c)], Paint.Of(Tones.Series(c))) { Role = Role.Fill };
            yield return new Entity.Label(new(plot.Right + 5.4, y), Name(c))
            {
                Role = Role.Text,
                Across = Across.Middle,
                Paint = Paint.Of(Tones.Series(c)),
            };
        }

        yield return new Entity.Label(new(plot.Right + 5.4, plot.Top - 1.6), "(fitted slope in brackets)") { Role = Role.Text, Paint = Paint.Of(Tone.Ink2) };
    }

    private string Name(int c) => string.Create(CultureInfo.InvariantCulture, $"{sweep.Curves[c]} ({sweep.Slope(c):0.0})");

    private double X(double v) => plot.Left + (plot.Width * Part(v, count));

    private double Y(double v) => plot.Bottom - (plot.Height * Part(v, error));

    private static double Part(double v, (double Low, double High) on) =>
        Math.Clamp(Math.Log(Math.Max(v, on.Low) / on.Low) / Math.Log(on.High / on.Low), 0, 1);

    private static IEnumerable<double> Ticks((double Low, double High) on)
    {
        double[] leads = Math.Log10(on.High / on.Low) switch { > 3.5 => [1], > 2.2 => [1, 3], _ => [1, 2, 5] };
        for (int power = (int)Math.Floor(Math.Log10(on.Low)); power <= Math.Log10(on.High); power++)
        {
            foreach (double lead in leads)
            {
                double v = lead * Math.Pow(10, power);
                if (v >= on.Low && v <= on.High)
                {
                    yield return v;
                }
            }
        }
    }

    private static string Number(double v) => v >= 1000 ? v.ToString("#,0", CultureInfo.InvariantCulture) : v.ToString("0.######", CultureInfo.InvariantCulture);

    private static Entity.Polyline Line(Role role, Pen pen, Spot from, Spot to) => new([from, to]) { Role = role, Pen = pen };
}
