using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Science.Air;

namespace Glazewright.Papers.Plant;

/// <summary>A psychrometric chart at one barometric pressure with the ways of air on it, its states numbered.</summary>
public static class PsychrometricChart
{
    private static readonly double[] Humidities = [0.2, 0.4, 0.6, 0.8, 1];

    /// <summary>The chart.</summary>
    /// <param name="id">Short name.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="ways">Ways of air, all at one pressure; numbered through.</param>
    /// <param name="units">The reader's units.</param>
    /// <param name="widthMm">Width on paper, mm.</param>
    /// <param name="heightMm">Height on paper, mm.</param>
    /// <returns>The picture.</returns>
    /// <exception cref="ArgumentException">No way, or a way without steps.</exception>
    public static Sheet Draw(string id, string title, IReadOnlyList<AirWay> ways, UnitSystem units, double widthMm, double heightMm)
    {
        ArgumentNullException.ThrowIfNull(ways);
        AirState[] all = [.. ways.SelectMany(w => w.Steps).SelectMany(s => s.States)];
        if (all.Length == 0)
        {
            throw new ArgumentException("A chart needs a way of air.", nameof(ways));
        }

        AirScale scale = new(units);
        AxisTicks warm = AxisTicks.Over(
            scale.Temperature(Math.Max(all.Min(s => s.DryBulbC) - 2, -58)), scale.Temperature(Math.Min(all.Max(s => s.DryBulbC) + 3, 78)), 8);
        AxisTicks wet = AxisTicks.Over(0, scale.Ratio(Math.Max(1.25 * all.Max(s => s.HumidityRatio), 0.004)), 6);
        ChartBox box = new(widthMm, heightMm, leftMm: 4, rightMm: 13, topMm: 9, bottomMm: 12);
        ChartGround ground = new(box.Plot, scale, warm, wet, all[0].PressurePa);
        List<Entity> drawn = [.. ground.Axes(), .. ground.Humidities(Humidities), .. ground.WetBulbs()];
        List<Box> taken = [.. ground.Taken];
        List<string> said = [];
        int number = 0;
        foreach (AirWay way in ways)
        {
            said.Add(way.Title);
            foreach (NumberedState state in NumberedStates.Of(way, number))
            {
                said.Add(FormattableString.Invariant(
                    $"{state.Number} {state.Where}: {scale.Degrees(state.State.DryBulbC)} {scale.TemperatureUnit}, {100 * state.State.RelativeHumidityFraction:0} % relative humidity"));
            }

            foreach (AirStep step in way.Steps)
            {
                drawn.AddRange(Step(ground, step));
            }

            number += NumberedStates.Of(way, 0).Count;
        }

        number = 0;
        foreach (AirWay way in ways)
        {
            IReadOnlyList<NumberedState> states = NumberedStates.Of(way, number);
            foreach (NumberedState state in states)
            {
                drawn.AddRange(Point(ground, state, taken));
            }

            number += states.Count;
        }

        drawn.AddRange(ChartKey.Row(
            ways.SelectMany(w => w.Steps).Select(s => s.Act).Distinct().Order().Select(a => (NumberedStates.Word(a), ToneOf(a))), new(widthMm - 1, 3.6)));
        return new Sheet(id, title, $"{title}. {string.Join("; ", said)}.", widthMm, heightMm, [], drawn);
    }

    private static Tone ToneOf(AirAct act) => Tones.Series((int)act);

    private static IEnumerable<Entity> Step(ChartGround ground, AirStep step)
    {
        Spot[] way = [.. step.States.Select(ground.At)];
        Pen pen = new(0.6, [], Paint.Of(ToneOf(step.Act)));
        yield return new Entity.Polyline(way) { Role = Role.Curve, Pen = pen };
        Spot end = way[^1];
        int from = Array.FindLastIndex(way, p => (p - end).Length() > 2.5);
        if (from >= 0)
        {
            Spot u = (end - way[from]).Unit();
            Spot side = new(-u.Y, u.X);
            Spot foot = end - 2.6 * u;
            yield return new Entity.Fill([[end, foot + 0.9 * side, foot - 0.9 * side]], pen.Paint) { Role = Role.Fill };
        }
    }

    private static IEnumerable<Entity> Point(ChartGround ground, NumberedState state, List<Box> taken)
    {
        Spot at = ground.At(state.State);
        string text = FormattableString.Invariant($"{state.Number}");
        double wide = Lettering.WidthMm(text, Face.SemiBold, Lettered.SmallestMm);
        yield return new Entity.Arc(at, 0.8) { Role = Role.Curve, Pen = new Pen(0.35, [], Paint.Of(Tone.Ink)) };
        for (int ring = 0; ring < 3; ring++)
        {
            for (int turn = 0; turn < 8; turn++)
            {
                double angle = (turn * 45 + 225) * Math.PI / 180;
                Spot middle = at + (3.2 + 2.4 * ring) * new Spot(Math.Cos(angle), Math.Sin(angle));
                Box room = new(middle.X - wide / 2 - 0.6, middle.Y - 1.9, wide + 1.2, 3.8);
                if (!ground.Holds(room) || taken.Any(t => Overlap(t, room)))
                {
                    continue;
                }

                taken.Add(room);
                yield return new Entity.Label(middle, text)
                {
                    Role = Role.Text,
                    Face = Face.SemiBold,
                    Along = Along.Middle,
                    Across = Across.Middle,
                    Masked = true,
                };
                yield break;
            }
        }
    }

    private static bool Overlap(Box a, Box b) => a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;
}
