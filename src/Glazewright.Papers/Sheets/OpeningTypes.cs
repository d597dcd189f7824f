using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Layout;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Sheets;

/// <summary>One kind of opening as the schedule lists it.</summary>
/// <param name="Mark">Its mark.</param>
/// <param name="Hole">One of its holes.</param>
/// <param name="Count">How many there are.</param>
/// <param name="Door">What the job says of it; null for equipment.</param>
internal sealed record OpeningType(string Mark, WallOpening Hole, int Count, Opening? Door);

/// <summary>Each kind of opening once, seen from outside at one scale, standing at its sill over the floor, with its width, height and sill.</summary>
internal static class OpeningTypes
{
    // Room beside a picture for its upright dimensions, and the least between two pictures, mm.
    private const double BesideMm = 25;
    private const double LeastWideMm = 16;
    private const int MostLines = 5;

    /// <summary>Room round the pictures, mm.</summary>
    public static Pad Pad { get; } = new(2, 6, 2, 40);

    /// <summary>The largest scale at which all stand beside each other in the room; at the smallest, as many as do.</summary>
    /// <param name="types">The kinds.</param>
    /// <param name="roomMm">Room on paper, its title left out.</param>
    /// <param name="style">Feet or metric scales.</param>
    public static (DrawingScale Scale, IReadOnlyList<OpeningType> Shown) Fit(IReadOnlyList<OpeningType> types, Box roomMm, LengthStyle style)
    {
        double highM = types.Max(t => t.Hole.VM + t.Hole.HeightM);
        DrawingScale scale = DrawingScale.Largest(style, s => s.MmPerM <= 60 && highM * s.MmPerM + Pad.Top + Pad.Bottom <= roomMm.Height && types.Sum(t => SlotMm(t, s)) + Pad.Left + Pad.Right <= roomMm.Width);
        double used = Pad.Left + Pad.Right;
        return (scale, [.. types.TakeWhile(t => (used += SlotMm(t, scale)) <= roomMm.Width)]);
    }

    /// <summary>The pictures, from x = 0, the floor at y = 0.</summary>
    public static IEnumerable<Entity> Draw(IReadOnlyList<OpeningType> types, DrawingScale scale, LengthStyle style)
    {
        double mm = 1 / scale.MmPerM;
        double x = 0;
        foreach (OpeningType t in types)
        {
            WallOpening hole = t.Hole;
            double left = x + BesideMm * mm;
            Box box = new(left, hole.VM, hole.WidthM, hole.HeightM);
            foreach (Entity e in WallView.Thing(hole with { UM = left }))
            {
                yield return e;
            }

            foreach (Entity e in Leaves(t, box, mm))
            {
                yield return e;
            }

            if (hole.Framed && hole.RoughWidthM > hole.WidthM)
            {
                double sideM = (hole.RoughWidthM - hole.WidthM) / 2;
                double lowM = hole.VM > 0 ? Math.Max(hole.VM - (hole.RoughHeightM - hole.HeightM) / 2, 0) : 0;
                yield return new Entity.Polyline(new Box(left - sideM, lowM, hole.RoughWidthM, hole.RoughHeightM).Corners(), true) { Role = Role.Hidden, Source = hole.Id };
            }

            double wide = SlotMm(t, scale) * mm;
            yield return new Entity.Polyline([new(x + 3 * mm, 0), new(x + wide - 1 * mm, 0)]) { Role = Role.Cut, Source = "floor" };
            bool Fits(double lengthM) => lengthM * scale.MmPerM > Lettering.WidthMm(LengthText.Of(lengthM, style), Face.Regular, Lettered.SmallestMm) + 1.5;
            if (Fits(hole.WidthM))
            {
                yield return new Entity.Dimensions(new(left, 0), new(1, 0), [0, hole.WidthM], -7, style) { Source = hole.Id };
            }

            if (Fits(hole.HeightM))
            {
                yield return new Entity.Dimensions(new(left, hole.VM), new(0, 1), [0, hole.HeightM], 7, style) { Source = hole.Id };
            }

            double textMm = SlotMm(t, scale) - BesideMm + 8;
            yield return new Entity.Label(new(left, -14 * mm), string.Create(CultureInfo.InvariantCulture, $"{t.Mark}  × {t.Count}"), 3) { Role = Role.Text, Face = Face.SemiBold };
            string sill = hole.VM * scale.MmPerM > 0.5 ? $"sill {LengthText.Of(hole.VM, style)}" : "";
            string size = Fits(hole.WidthM) && Fits(hole.HeightM) ? "" : $"{LengthText.Of(hole.WidthM, style)} × {LengthText.Of(hole.HeightM, style)}";
            string[] lines = [.. new[] { hole.Label, size, sill }.Where(l => l.Length > 0).SelectMany(l => TextWrap.Lines(l, Face.Regular, Lettered.SmallestMm, textMm))];
            for (int i = 0; i < Math.Min(lines.Length, MostLines); i++)
            {
                yield return new Entity.Label(new(left, (-18.5 - 4 * i) * mm), lines[i]) { Role = Role.Text, Paint = Paint.Of(Tone.Ink2) };
            }

            x += wide;
        }
    }

    // Leaves of a hinged door: a dashed line from each corner of the strike side to the middle of the hinge side (common practice: it points at the hinges).
    private static IEnumerable<Entity> Leaves(OpeningType t, Box box, double mm)
    {
        if (t.Door is not { } door || !door.Kind.IsDoor())
        {
            yield break;
        }

        int leaves = door.Kind == OpeningKind.DoubleDoor ? 2 : 1;
        if (leaves == 2)
        {
            yield return new Entity.Polyline([new(box.Left + box.Width / 2, box.Top), new(box.Left + box.Width / 2, box.Bottom)]) { Role = Role.Visible, Source = t.Hole.Id };
        }

        if (door.Kind is OpeningKind.SlidingDoor or OpeningKind.RollUpDoor)
        {
            yield break;
        }

        double middle = box.Top + box.Height / 2;
        foreach ((double hinge, double strike) in leaves == 2
            ? new[] { (box.Left, box.Left + box.Width / 2), (box.Right, box.Left + box.Width / 2) }
            : [(box.Left, box.Right)])
        {
            yield return new Entity.Polyline([new(strike, box.Top + 0.5 * mm), new(hinge, middle), new(strike, box.Bottom - 0.5 * mm)]) { Role = Role.Hidden, Source = t.Hole.Id };
        }
    }

    private static double SlotMm(OpeningType t, DrawingScale scale) => BesideMm + Math.Max(t.Hole.WidthM * scale.MmPerM, LeastWideMm) + 4;
}
