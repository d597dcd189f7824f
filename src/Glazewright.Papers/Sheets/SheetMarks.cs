using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Sheets;

/// <summary>Marks that drawings speak to each other with: grid lines, sections, details.</summary>
internal static class SheetMarks
{
    public const double BubbleMm = 3.4;

    /// <summary>The ring with the name of a grid line.</summary>
    /// <param name="at">Its centre, in the units of the view or of paper.</param>
    /// <param name="text">The name.</param>
    /// <param name="mmPerUnit">Scale; 1 on paper.</param>
    /// <param name="source">Part.</param>
    public static IEnumerable<Entity> Bubble(Spot at, string text, double mmPerUnit, string source)
    {
        yield return new Entity.Fill([Ring(at, BubbleMm / mmPerUnit)], Paint.Of(Tone.Sheet)) { Role = Role.Fill, Source = source };
        yield return new Entity.Arc(at, BubbleMm / mmPerUnit) { Role = Role.Dimension, Source = source };
        yield return Middle(at, text, source);
    }

    /// <summary>A mark for a detail or section: its number over the sheet it stands on.</summary>
    public static IEnumerable<Entity> Detail(Spot at, string name, string sheet, double mmPerUnit, bool yUp, string source)
    {
        const double radiusMm = 5;
        double r = radiusMm / mmPerUnit;
        double up = (yUp ? 1 : -1) * 2.3 / mmPerUnit;
        yield return new Entity.Fill([Ring(at, r)], Paint.Of(Tone.Sheet)) { Role = Role.Fill, Source = source };
        yield return new Entity.Arc(at, r) { Role = Role.Frame, Source = source };
        yield return new Entity.Polyline([new(at.X - r, at.Y), new(at.X + r, at.Y)]) { Role = Role.Frame, Source = source };
        yield return Middle(at with { Y = at.Y + up }, name, source);
        yield return Middle(at with { Y = at.Y - up }, sheet, source);
    }

    /// <summary>A section mark beside a plan: the cutting line's end, an arrow the way one looks, and the mark.</summary>
    /// <param name="end">End of the cutting line, model.</param>
    /// <param name="outward">From the plan to the mark.</param>
    /// <param name="looking">The way one looks.</param>
    /// <param name="name">Name of the section.</param>
    /// <param name="sheet">Sheet it is drawn on.</param>
    /// <param name="mmPerM">Scale.</param>
    /// <param name="source">Part.</param>
    public static IEnumerable<Entity> Section(Spot end, Spot outward, Spot looking, string name, string sheet, double mmPerM, string source)
    {
        double mm = 1 / mmPerM;
        Spot centre = end + 10 * mm * outward;
        yield return new Entity.Polyline([end, end + 5 * mm * outward]) { Role = Role.Frame, Pen = new Pen(0.5, [], Paint.Of(Tone.Ink)), Source = source };
        Spot tip = centre + 8 * mm * looking;
        Spot side = new(-looking.Y, looking.X);
        yield return new Entity.Fill([[tip, centre + 5 * mm * side, centre + -5 * mm * side]], Paint.Of(Tone.Ink)) { Role = Role.Frame, Source = source };
        foreach (Entity e in Detail(centre, name, sheet, mmPerM, true, source))
        {
            yield return e;
        }
    }

    public static Spot[] Ring(Spot centre, double radius)
    {
        Spot[] ring = new Spot[24];
        for (int i = 0; i < ring.Length; i++)
        {
            double angle = 2 * Math.PI * i / ring.Length;
            ring[i] = centre + radius * new Spot(Math.Cos(angle), Math.Sin(angle));
        }

        return ring;
    }

    private static Entity.Label Middle(Spot at, string text, string source) => new(at, text)
    {
        Role = Role.Text,
        Face = Face.SemiBold,
        Along = Along.Middle,
        Across = Across.Middle,
        Source = source,
    };
}
