namespace Glazewright.Papers.Drawing;

/// <summary>Two pieces of lettering that lie over each other, or one that leaves the paper.</summary>
/// <param name="First">One text.</param>
/// <param name="Second">The other, or empty when the first leaves the paper or its window.</param>
public sealed record TextClash(string First, string Second);

/// <summary>Looks for lettering that cannot be read where it stands.</summary>
public static class TextClashes
{
    private const double TouchMm = 0.15;

    /// <summary>All clashes of a page: overlapping text boxes, boxes off the paper, boxes cut by their view's window.</summary>
    public static IReadOnlyList<TextClash> On(Page page)
    {
        ArgumentNullException.ThrowIfNull(page);
        List<TextClash> clashes = [];
        List<(string Text, IReadOnlyList<Spot> Corners)> boxes = [];
        foreach (MarkGroup group in page.Groups)
        {
            Box room = group.ClipMm ?? new Box(0, 0, page.WidthMm, page.HeightMm);
            foreach (Mark.Words words in group.Marks.OfType<Mark.Words>())
            {
                IReadOnlyList<Spot> corners = words.Corners();
                if (corners.Any(c => c.X < room.Left - TouchMm || c.X > room.Right + TouchMm || c.Y < room.Top - TouchMm || c.Y > room.Bottom + TouchMm))
                {
                    clashes.Add(new TextClash(words.Text, ""));
                }

                boxes.Add((words.Text, corners));
            }
        }

        for (int i = 0; i < boxes.Count; i++)
        {
            for (int j = i + 1; j < boxes.Count; j++)
            {
                if (Overlap(boxes[i].Corners, boxes[j].Corners))
                {
                    clashes.Add(new TextClash(boxes[i].Text, boxes[j].Text));
                }
            }
        }

        return clashes;
    }

    /// <summary>
    /// Lettering that a line runs through, and lettering laid over equipment that is not its own. A patch of paper between line and text clears edges,
    /// rays and dimension lines, but hides equipment. Numbers of up to three letters may stand on equipment.
    /// </summary>
    public static IReadOnlyList<TextClash> OnLines(Page page)
    {
        ArgumentNullException.ThrowIfNull(page);
        List<TextClash> clashes = [];
        foreach (MarkGroup group in page.Groups)
        {
            for (int w = 0; w < group.Marks.Count; w++)
            {
                if (group.Marks[w] is not Mark.Words words)
                {
                    continue;
                }

                IReadOnlyList<Spot> box = Shrunk(words.Corners());
                for (int l = 0; l < group.Marks.Count; l++)
                {
                    Mark line = group.Marks[l];
                    if (line.Role is Role.Equipment or Role.Cut or Role.Visible or Role.Dimension or Role.Lot && Runs(line, box)
                        && (line.Role == Role.Equipment ? words.Text.Length > 3 || !Cleared(group.Marks, l, w, box) : !Cleared(group.Marks, l, w, box)))
                    {
                        clashes.Add(new TextClash(words.Text, $"{line.Role} {line.Source}"));
                        break;
                    }
                }
            }
        }

        return clashes;
    }

    private static IReadOnlyList<Spot> Shrunk(IReadOnlyList<Spot> corners)
    {
        Spot middle = 0.5 * (corners[0] + corners[2]);
        double shareOf(Spot a, Spot b) => Math.Max(1 - 0.6 / Math.Max((b - a).Length(), 0.61), 0);
        Spot half = 0.5 * shareOf(corners[0], corners[1]) * (corners[1] - corners[0]);
        Spot up = 0.5 * shareOf(corners[1], corners[2]) * (corners[2] - corners[1]);
        return [middle - half - up, middle + half - up, middle + half + up, middle - half + up];
    }

    // A full area laid after the line and before the text, with the whole text on it.
    private static bool Cleared(IReadOnlyList<Mark> marks, int line, int words, IReadOnlyList<Spot> box)
    {
        for (int i = line + 1; i < words; i++)
        {
            if (marks[i] is Mark.Area { OpacityFraction: >= 1 } area && area.Rings.Count == 1 && box.All(c => Inside(area.Rings[0], c)))
            {
                return true;
            }
        }

        return false;
    }

    private static bool Runs(Mark mark, IReadOnlyList<Spot> box)
    {
        IReadOnlyList<Spot> points = mark switch
        {
            Mark.Lines lines => lines.Closed ? [.. lines.Points, lines.Points[0]] : lines.Points,
            Mark.Curve curve =>
            [
                .. Enumerable.Range(0, 49).Select(i => (curve.StartDeg + curve.SweepDeg * i / 48) * Math.PI / 180)
                    .Select(a => curve.Centre + curve.RadiusMm * new Spot(Math.Cos(a), -Math.Sin(a))),
            ],
            _ => [],
        };
        for (int i = 0; i + 1 < points.Count; i++)
        {
            if (Inside(box, points[i]) || Enumerable.Range(0, box.Count).Any(e => Cross(points[i], points[i + 1], box[e], box[(e + 1) % box.Count])))
            {
                return true;
            }
        }

        return false;
    }

    private static bool Inside(IReadOnlyList<Spot> ring, Spot p)
    {
        bool inside = false;
        for (int i = 0, j = ring.Count - 1; i < ring.Count; j = i++)
        {
            if (ring[i].Y > p.Y != ring[j].Y > p.Y && p.X < (ring[j].X - ring[i].X) * (p.Y - ring[i].Y) / (ring[j].Y - ring[i].Y) + ring[i].X)
            {
                inside = !inside;
            }
        }

        return inside;
    }

    private static bool Cross(Spot a, Spot b, Spot c, Spot d)
    {
        static double Side(Spot p, Spot q, Spot r) => (q.X - p.X) * (r.Y - p.Y) - (q.Y - p.Y) * (r.X - p.X);
        return Side(a, b, c) * Side(a, b, d) < 0 && Side(c, d, a) * Side(c, d, b) < 0;
    }

    /// <summary>Whether two convex four-cornered boxes share more than an edge (separating axes).</summary>
    private static bool Overlap(IReadOnlyList<Spot> a, IReadOnlyList<Spot> b) =>
        !Parted(a, b, a) && !Parted(a, b, b);

    private static bool Parted(IReadOnlyList<Spot> a, IReadOnlyList<Spot> b, IReadOnlyList<Spot> sides)
    {
        for (int i = 0; i < 2; i++)
        {
            Spot axis = (sides[i + 1] - sides[i]).Unit();
            (double lowA, double highA) = Span(a, axis);
            (double lowB, double highB) = Span(b, axis);
            if (highA <= lowB + TouchMm || highB <= lowA + TouchMm)
            {
                return true;
            }
        }

        return false;
    }

    private static (double Low, double High) Span(IReadOnlyList<Spot> box, Spot axis)
    {
        double low = double.PositiveInfinity;
        double high = double.NegativeInfinity;
        foreach (Spot corner in box)
        {
            low = Math.Min(low, corner.Dot(axis));
            high = Math.Max(high, corner.Dot(axis));
        }

        return (low, high);
    }
}
