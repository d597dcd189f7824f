using Glazewright.Design.Services;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Sheets;

/// <summary>What the pipe is that runs off a view, told at the view's edge.</summary>
internal static class WaysLeaving
{
    private const double AsideMm = 1.2;
    private const double FarMm = 24;
    private const double LineMm = 0.6;
    private const double RingMm = 3.2;
    private const double OneMm = 1.5;

    private enum Edge
    {
        Left,
        Right,
        Top,
        Bottom,
    }

    /// <summary>The words, one a pipe and place.</summary>
    /// <param name="plan">The pipe.</param>
    /// <param name="window">What the view shows, model.</param>
    /// <param name="mm">A millimetre of paper in the model.</param>
    /// <param name="drawn">What the view holds already: no word over its words.</param>
    public static IEnumerable<Entity> Words(ServicePlan plan, Box window, double mm, IReadOnlyList<Entity> drawn)
    {
        List<(UtilityKind Utility, Spot At, Edge Edge)> leaving = [];
        foreach (PipePiece piece in plan.Pieces)
        {
            Spot[] way = [.. piece.Way.Select(p => SheetStyle.Flat(p) + WaysDrawn.Aside(piece.Utility, mm))];
            foreach ((Spot at, Edge edge) in way.Zip(way.Skip(1)).SelectMany(leg => Crossings(leg.First, leg.Second, window)))
            {
                if (!leaving.Exists(l => l.Utility == piece.Utility && l.Edge == edge && (l.At - at).Length() < OneMm * mm))
                {
                    leaving.Add((piece.Utility, at, edge));
                }
            }
        }

        TakenRoom taken = new();
        foreach (Entity.Label label in drawn.OfType<Entity.Label>())
        {
            taken.Add(TakenRoom.Round(OnPaper(label.At), Math.Max(2 * RingMm, 2 * Lettering.WidthMm(label.Text, label.Face, label.CapHeightMm)), 2 * RingMm));
        }

        foreach ((_, Spot at, Edge edge) in leaving)
        {
            Spot end = OnPaper(at);
            taken.Add(edge is Edge.Top or Edge.Bottom ? TakenRoom.Round(end, LineMm, 2 * FarMm) : TakenRoom.Round(end, 2 * FarMm, LineMm));
        }

        foreach ((UtilityKind utility, Spot at, Edge edge) in leaving)
        {
            string word = WaysDrawn.Means(utility);
            double wide = Lettering.WidthMm(word, Face.Regular, Lettered.SmallestMm);
            Box? free = Places(OnPaper(at), edge, wide).Where(b => b.Left > 0 && b.Top > 0 && b.Right < window.Width / mm && b.Bottom < window.Height / mm).Cast<Box?>().FirstOrDefault(b => taken.Take(b!.Value));
            if (free is { } box)
            {
                yield return new Entity.Label(new(window.Left + box.Left * mm, window.Bottom - (box.Top + Lettered.SmallestMm) * mm), word)
                {
                    Role = Role.Text,
                    Layer = utility.ToString().ToLowerInvariant(),
                    Source = "range/" + word,
                };
            }
        }

        Spot OnPaper(Spot at) => new((at.X - window.Left) / mm, (window.Bottom - at.Y) / mm);
    }

    // Beside the pipe, first near the edge, then farther in; mm from the window's corner.
    private static IEnumerable<Box> Places(Spot end, Edge edge, double wideMm)
    {
        const double high = Lettered.SmallestMm + 0.7;
        for (double inMm = AsideMm; inMm < FarMm; inMm += 1.5)
        {
            foreach (bool second in (bool[])[false, true])
            {
                double x = edge switch { Edge.Left => end.X + inMm, Edge.Right => end.X - inMm - wideMm, _ => second ? end.X - AsideMm - wideMm : end.X + AsideMm };
                double y = edge switch { Edge.Top => end.Y + inMm, Edge.Bottom => end.Y - inMm - high, _ => second ? end.Y + AsideMm : end.Y - AsideMm - high };
                yield return new Box(x, y, wideMm, high);
            }
        }
    }

    // The model's y runs up the paper. Where a leg comes in and where it goes out.
    private static IEnumerable<(Spot At, Edge Edge)> Crossings(Spot a, Spot b, Box window)
    {
        Spot run = b - a;
        double from = 0;
        double to = 1;
        Edge first = Edge.Left;
        Edge last = Edge.Left;
        foreach ((double start, double step, double low, double high, Edge atLow, Edge atHigh) in ((double, double, double, double, Edge, Edge)[])
            [(a.X, run.X, window.Left, window.Right, Edge.Left, Edge.Right), (a.Y, run.Y, window.Top, window.Bottom, Edge.Bottom, Edge.Top)])
        {
            if (Math.Abs(step) < 1e-9)
            {
                to = start <= low || start >= high ? -1 : to;
                continue;
            }

            double enters = ((step > 0 ? low : high) - start) / step;
            double leaves = ((step > 0 ? high : low) - start) / step;
            if (enters > from)
            {
                (from, first) = (enters, step > 0 ? atLow : atHigh);
            }

            if (leaves < to)
            {
                (to, last) = (leaves, step > 0 ? atHigh : atLow);
            }
        }

        if (from < to)
        {
            if (from > 0)
            {
                yield return (a + from * run, first);
            }

            if (to < 1)
            {
                yield return (a + to * run, last);
            }
        }
    }
}
