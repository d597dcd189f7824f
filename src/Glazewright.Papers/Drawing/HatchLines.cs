namespace Glazewright.Papers.Drawing;

/// <summary>Cuts hatch lines to an area.</summary>
public static class HatchLines
{
    /// <summary>The pieces of the pattern's lines that lie within the rings (even-odd), mm.</summary>
    /// <remarks>Lines pass through fixed places of the sheet, so areas side by side hatch alike.</remarks>
    public static IReadOnlyList<(Point2 A, Point2 B)> Of(
        IReadOnlyList<IReadOnlyList<Point2>> rings, HatchPattern pattern, double spacingMm)
    {
        ArgumentNullException.ThrowIfNull(rings);
        if (!(spacingMm >= 0.2))
        {
            throw new ArgumentOutOfRangeException(nameof(spacingMm), spacingMm, "Hatch lines stand at least 0.2 mm apart.");
        }

        List<(Point2 A, Point2 B)> pieces = [];
        switch (pattern)
        {
            case HatchPattern.Slanted:
                Add(rings, 45, spacingMm, pieces);
                break;
            case HatchPattern.Crossed:
                Add(rings, 45, spacingMm, pieces);
                Add(rings, -45, spacingMm, pieces);
                break;
            case HatchPattern.Ground:
                Add(rings, 45, 2 * spacingMm, pieces);
                break;
            case HatchPattern.Upright:
                Add(rings, 90, spacingMm, pieces);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(pattern), pattern, "No such pattern.");
        }

        return pieces;
    }

    private static void Add(
        IReadOnlyList<IReadOnlyList<Point2>> rings, double angleDeg, double spacingMm, List<(Point2 A, Point2 B)> pieces)
    {
        double angle = angleDeg * Math.PI / 180;
        Point2 along = new(Math.Cos(angle), -Math.Sin(angle));
        Point2 across = new(Math.Sin(angle), Math.Cos(angle));
        double low = double.PositiveInfinity;
        double high = double.NegativeInfinity;
        foreach (Point2 p in rings.SelectMany(r => r))
        {
            low = Math.Min(low, p.Dot(across));
            high = Math.Max(high, p.Dot(across));
        }

        List<double> crossings = [];
        for (double i = Math.Ceiling(low / spacingMm); i * spacingMm < high; i++)
        {
            double c = i * spacingMm;
            crossings.Clear();
            foreach (IReadOnlyList<Point2> ring in rings)
            {
                Crossings(ring, along, across, c, crossings);
            }

            crossings.Sort();
            for (int k = 0; k + 1 < crossings.Count; k += 2)
            {
                if (crossings[k + 1] - crossings[k] > 0.05)
                {
                    pieces.Add((crossings[k] * along + c * across, crossings[k + 1] * along + c * across));
                }
            }
        }
    }

    private static void Crossings(IReadOnlyList<Point2> ring, Point2 along, Point2 across, double c, List<double> crossings)
    {
        for (int i = 0; i < ring.Count; i++)
        {
            Point2 a = ring[i];
            Point2 b = ring[(i + 1) % ring.Count];
            double da = a.Dot(across) - c;
            double db = b.Dot(across) - c;
            if ((da < 0) != (db < 0))
            {
                double t = da / (da - db);
                crossings.Add(a.Dot(along) + t * (b - a).Dot(along));
            }
        }
    }
}
