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
