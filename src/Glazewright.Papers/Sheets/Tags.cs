using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Sheets;

/// <summary>Ringed marks with a line to what they are of, each where it covers no other.</summary>
internal static class Tags
{
    private const double RadiusMm = 3;

    private static readonly (double X, double Y)[] Tries =
        [(0, -6), (6, -3), (-6, -3), (0, 6), (6, 3), (-6, 3), (9, 0), (-9, 0), (12, -6), (-12, -6), (12, 6), (-12, 6), (0, -12), (0, 12), (18, 0), (-18, 0), (18, -9), (-18, -9), (18, 9), (-18, 9)];

    /// <summary>The marks that find a place.</summary>
    /// <param name="tags">What to mark, in order of precedence.</param>
    /// <param name="mmPerM">Scale.</param>
    /// <param name="room">Where marks may stand, model; null for anywhere.</param>
    public static IEnumerable<Entity> Draw(IEnumerable<Tag> tags, double mmPerM, Box? room = null)
    {
        double mm = 1 / mmPerM;
        List<Spot> taken = [];
        List<Entity> rings = [];
        foreach ((Spot at, string text, string source, bool onlyAhead) in tags)
        {
            Spot? free = Tries.Where(t => !onlyAhead || t.X >= 0)
                .Select(t => (Spot?)(at + mm * new Spot(t.X, t.Y)))
                .FirstOrDefault(s => taken.TrueForAll(o => (o - s!.Value).Length() > (2 * RadiusMm + 0.4) * mm) && IsIn(room, s!.Value));
            if (free is not Spot place)
            {
                continue;
            }

            taken.Add(place);
            yield return new Entity.Polyline([at, place]) { Role = Role.Dimension, Source = source };
            rings.Add(new Entity.Fill([SheetMarks.Ring(place, RadiusMm * mm)], Paint.Of(Tone.Sheet)) { Role = Role.Fill, Source = source });
            rings.Add(new Entity.Arc(place, RadiusMm * mm) { Role = Role.Dimension, Source = source });
            rings.Add(new Entity.Label(place, text) { Role = Role.Text, Face = Face.SemiBold, Along = Along.Middle, Across = Across.Middle, Source = source });
        }

        // Rings over all lines, so that no line runs through a mark.
        foreach (Entity ring in rings)
        {
            yield return ring;
        }
    }
    private static bool IsIn(Box? room, Spot s) => room is not { } r || (s.X > r.Left && s.X < r.Right && s.Y > r.Top && s.Y < r.Bottom);
}

/// <summary>A mark to set.</summary>
/// <param name="At">What it is of, model.</param>
/// <param name="Text">At most three letters.</param>
/// <param name="Source">Part.</param>
/// <param name="OnlyAhead">Keep it from lying before the part, along x.</param>
internal readonly record struct Tag(Spot At, string Text, string Source, bool OnlyAhead = false);
