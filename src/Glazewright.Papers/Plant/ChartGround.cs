using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Science.Air;

namespace Glazewright.Papers.Plant;

/// <summary>Axes and families of lines of a psychrometric chart: dry bulb along, humidity ratio up.</summary>
internal sealed class ChartGround(Box plot, AirScale scale, AxisTicks warm, AxisTicks wet, double pressurePa)
{
    private const int Pieces = 96;

    private readonly List<Box> _taken = [];

    /// <summary>Where lettering stands already.</summary>
    public IReadOnlyList<Box> Taken => _taken;

    public Spot At(AirState air) => At(air.DryBulbC, air.HumidityRatio);

    public bool Holds(Box room) => room.Left >= plot.Left && room.Right <= plot.Right && room.Top >= plot.Top && room.Bottom <= plot.Bottom;

    public IEnumerable<Entity> Axes()
    {
        foreach (double value in warm.Values())
        {
            double x = X(value);
            double topY = Y(Math.Min(scale.Ratio(Saturated(scale.Celsius(value))), wet.High));
            yield return new Entity.Polyline([new(x, plot.Bottom), new(x, topY)]) { Role = Role.Grid };
            yield return Lettering(new(x, plot.Bottom + 4.4), warm.Text(value), Along.Middle);
        }

        foreach (double value in wet.Values())
        {
            double y = Y(value);
            double left = X(Math.Clamp(scale.Temperature(SaturationC(scale.RatioOf(value))), warm.Low, warm.High));
            yield return new Entity.Polyline([new(left, y), new(plot.Right, y)]) { Role = Role.Grid };
            yield return Lettering(new(plot.Right + 1.5, y + 1.2), wet.Text(value), Along.Start);
        }

        yield return new Entity.Polyline([new(plot.Left, plot.Bottom), new(plot.Right, plot.Bottom), new(plot.Right, plot.Top)])
        {
            Role = Role.Frame,
            Pen = new Pen(0.25, [], Paint.Of(Tone.Edge)),
        };
        yield return Lettering(new(plot.Right, plot.Bottom + 9.4), $"Dry bulb, {scale.TemperatureUnit}; at the right water in the air, {scale.RatioUnit} dry air", Along.End);
        yield return Lettering(new(plot.Left, plot.Bottom + 9.4), "Barometer " + scale.Barometer(pressurePa), Along.Start);
    }

    /// <summary>Lines of equal relative humidity, lettered where they leave the chart; 1 is saturation.</summary>
    public IEnumerable<Entity> Humidities(IEnumerable<double> fractions)
    {
        foreach (double fraction in fractions)
        {
            List<Spot> line = [];
            for (int i = 0; i <= Pieces; i++)
            {
                double t = scale.Celsius(warm.Low + (warm.High - warm.Low) * i / Pieces);
                double ratio = RatioOfHumidity(t, fraction);
                if (scale.Ratio(ratio) <= wet.High)
                {
                    line.Add(At(t, ratio));
                }
            }

            if (line.Count < 2)
            {
                continue;
            }

            bool edge = fraction >= 1;
            yield return new Entity.Polyline(line)
            {
                Role = Role.Curve,
                Pen = new Pen(edge ? 0.35 : 0.18, edge ? [] : [3, 1], Paint.Of(edge ? Tone.Ink : Tone.Edge)),
            };
            string text = FormattableString.Invariant($"{100 * fraction:0} %");
            foreach (Entity label in OnLine(line, text, edge ? 0.94 : 0.88))
            {
                yield return label;
            }
        }
    }

    /// <summary>Lines of equal wet bulb, at every other step of the dry bulb's axis, above frost.</summary>
    public IEnumerable<Entity> WetBulbs()
    {
        foreach (double value in warm.Values())
        {
            double wetC = scale.Celsius(value);
            if (wetC < 0 || wetC > 40 || scale.Ratio(Saturated(wetC)) > wet.High)
            {
                continue;
            }

            List<Spot> line = [];
            double highC = scale.Celsius(warm.High);
            for (int i = 0; i <= Pieces; i++)
            {
                double t = wetC + (highC - wetC) * i / Pieces;
                double ratio = MoistAir.HumidityRatio(t, wetC, pressurePa);
                if (ratio < 0)
                {
                    break;
                }

                line.Add(At(t, ratio));
            }

            if (line.Count > 1)
            {
                yield return new Entity.Polyline(line) { Role = Role.Curve, Pen = new Pen(0.13, [1, 1], Paint.Of(Tone.Ink3)) };
            }
        }
    }

    private IEnumerable<Entity> OnLine(List<Spot> line, string text, double share)
    {
        Spot at = line[(int)(share * (line.Count - 1))];
        double wide = Fonts.Lettering.WidthMm(text, Face.Regular, Lettered.SmallestMm);
        Box room = new(at.X - wide / 2 - 0.6, at.Y - 1.9, wide + 1.2, 3.8);
        if (Holds(room) && !_taken.Any(t => t.Left < room.Right && room.Left < t.Right && t.Top < room.Bottom && room.Top < t.Bottom))
        {
            _taken.Add(room);
            yield return new Entity.Label(at, text)
            {
                Role = Role.Text,
                Along = Along.Middle,
                Across = Across.Middle,
                Masked = true,
                Paint = Paint.Of(Tone.Ink2),
            };
        }
    }

    private static Entity.Label Lettering(Spot at, string text, Along along) =>
        new(at, text) { Role = Role.Text, Along = along, Paint = Paint.Of(Tone.Ink2) };

    private double Saturated(double celsius) => Saturation.HumidityRatio(Math.Clamp(celsius, -60, 80), pressurePa);

    private double SaturationC(double ratio) => ratio <= 1e-7 ? -60 : Math.Max(MoistAir.DewPointC(ratio, pressurePa), -60);

    private double RatioOfHumidity(double celsius, double fraction) =>
        AirState.FromRelativeHumidity(Math.Clamp(celsius, -60, 80), fraction, pressurePa).HumidityRatio;

    private Spot At(double celsius, double ratio) => new(X(scale.Temperature(celsius)), Y(scale.Ratio(ratio)));

    private double X(double shown) => plot.Left + plot.Width * (shown - warm.Low) / (warm.High - warm.Low);

    private double Y(double shown) => plot.Bottom - plot.Height * (shown - wet.Low) / (wet.High - wet.Low);
}
