namespace Glazewright.Papers.Drawing;

/// <summary>Cuts hatch lines to an area.</summary>
public static class HatchLines
{
    /// <summary>The pieces of the pattern's lines that lie within the rings (even-odd), mm.</summary>
    /// <remarks>Lines pass through fixed places of the sheet, so areas side by side hatch alike.</remarks>
    public static IReadOnlyList<(Spot A, Spot B)> Of(
        IReadOnlyList<IReadOnlyList<Spot>> rings, HatchPattern pattern, double spacingMm)
    {
        ArgumentNullException.ThrowIfNull(rings);
        if (!(spacingMm >= 0.2))
        {
            throw new ArgumentOutOfRangeException(nameof(spacingMm), spacingMm, "Hatch lines stand at least 0.2 mm apart.");
        }

        List<(Spot A, Spot B)> pieces = [];
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
            case HatchPattern.Concrete:
                Strokes(rings, 15, 1.3 * spacingMm, pieces);
                Strokes(rings, 75, 1.7 * spacingMm, pieces);
                Strokes(rings, 130, 1.5 * spacingMm, pieces);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(pattern), pattern, "No such pattern.");
        }

        return pieces;
    }

    // Lines broken into short strokes, each line's set off against its neighbour's by the golden ratio, so that no rows show.
    private static void Strokes(IReadOnlyList<IReadOnlyList<Spot>> rings, double angleDeg, double spacingMm, List<(Spot A, Spot B)> pieces)
    {
        List<(Spot A, Spot B)> whole = [];
        Add(rings, angleDeg, spacingMm, whole);
        double strokeMm = 0.4 * spacingMm;
        double stepMm = 1.4 * spacingMm;
        foreach ((Spot a, Spot b) in whole)
        {
            Spot along = (b - a).Unit();
            Spot across = new(-along.Y, along.X);
            double shift = 0.618034 * Math.Round(a.Dot(across) / spacingMm) % 1 * stepMm;
            double from = a.Dot(along);
            double to = b.Dot(along);
            for (double i = Math.Ceiling((from - shift) / stepMm); i * stepMm + shift + strokeMm <= to; i++)
            {
                double at = i * stepMm + shift;
                pieces.Add((a + (at - from) * along, a + (at + strokeMm - from) * along));
            }
        }
    }

    private static void Add(
        IReadOnlyList<IReadOnlyList<Spot>> rings, double angleDeg, double spacingMm, List<(Spot A, Spot B)> pieces)
    {
        double angle = angleDeg * Math.PI / 180;
        Spot along = new(Math.Cos(angle), -Math.Sin(angle));
        Spot across = new(Math.Sin(angle), Math.Cos(angle));
        double low = double.PositiveInfinity;
        double high = double.NegativeInfinity;
        foreach (Spot p in rings.SelectMany(r => r))
        {
            low = Math.Min(low, p.Dot(across));
            high = Math.Max(high, p.Dot(across));
        }

        List<double> crossings = [];
        for (double i = Math.Ceiling(low / spacingMm); i * spacingMm < high; i++)
        {
            double c = i * spacingMm;
            crossings.Clear();
            foreach (IReadOnlyList<Spot> ring in rings)
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

    private static void Crossings(IReadOnlyList<Spot> ring, Spot along, Spot across, double c, List<double> crossings)
    {
        for (int i = 0; i < ring.Count; i++)
        {
            Spot a = ring[i];
            Spot b = ring[(i + 1) % ring.Count];
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
