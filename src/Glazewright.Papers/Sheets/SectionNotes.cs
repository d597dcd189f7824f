using Glazewright.Design.Brief;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>What is lettered on a cross-section: dimensions, levels, pitches, coverings, compass words, sun angles.</summary>
internal static class SectionNotes
{
    public static IEnumerable<Entity> Of(Job job, HouseLook house, DrawingScale scale, bool isPicture)
    {
        BuildingForm b = house.Form;
        LengthStyle style = SheetStyle.Lengths(job);
        double mm = 1 / scale.MmPerM;
        IEnumerable<Entity> notes = isPicture
            ? FewDimensions(house, style).Concat(Pitches(b, style, mm))
            : Dimensions(house, style).Concat(Levels(b, style, mm)).Concat(Pitches(b, style, mm)).Concat(Coverings(house, mm));
        foreach (Entity entity in notes)
        {
            yield return entity;
        }

        yield return new Entity.Label(new(-2 * mm, 0), SheetStyle.Facing(b, FaceName.Left)) { Role = Role.Text, Along = Along.End, ShiftMm = new(-3, 8), Face = Face.SemiBold, Masked = true };
        yield return new Entity.Label(new(b.WidthM + 2 * mm, 0), SheetStyle.Facing(b, FaceName.Right)) { Role = Role.Text, ShiftMm = new(3, 8), Face = Face.SemiBold, Masked = true };
        IReadOnlyList<NoonSun> suns = NoonSun.Solstices(job.Site.LatitudeDeg, job.Site.RangeBearingDeg);
        bool left = suns.Count == 0 || suns[0].FromLeft;
        double besideMm = isPicture ? 23 : 40;
        Spot at = left ? new(-besideMm * mm, b.Roof.RidgeM) : new(b.WidthM + (besideMm - 36) * mm, b.Roof.RidgeM);
        for (int s = 0; s < suns.Count; s++)
        {
            double downMm = (isPicture ? -6.5 : -9.5) + 4.6 * s;
            Pen pen = new(0.35, s == 0 ? [] : [2.5, 1.2], Paint.Of(Tone.Sun));
            Spot lineAt = at + new Spot(0, (1.25 - downMm) * mm);
            yield return new Entity.Polyline([lineAt, lineAt + new Spot(7 * mm, 0)]) { Role = Role.Light, Pen = pen };
            yield return new Entity.Label(at, FormattableString.Invariant($"noon {suns[s].Name}, {suns[s].AltitudeDeg:0.0}°")) { Role = Role.Text, Paint = Paint.Of(Tone.Sun), ShiftMm = new(8.5, downMm), Masked = true };
        }
    }

    /// <summary>What a picture has room for: widths below, eaves and ridge at the sides.</summary>
    private static IEnumerable<Entity> FewDimensions(HouseLook house, LengthStyle style)
    {
        BuildingForm b = house.Form;
        yield return new Entity.Dimensions(new(0, 0), new(1, 0), [0, b.WidthM], -11, style) { Source = b.Id + "/width" };
        yield return new Entity.Dimensions(new(0, 0), new(0, 1), [0, b.Roof.LeftEaveM], 8, style) { Source = b.Id + "/left" };
        yield return new Entity.Dimensions(new(0, 0), new(0, 1), [0, b.Roof.RidgeM], 16, style) { Source = b.Id + "/ridge" };
        yield return new Entity.Dimensions(new(b.WidthM, 0), new(0, 1), [0, b.Roof.RightEaveM], -8, style) { Source = b.Id + "/right" };
    }

    private static IEnumerable<Entity> Dimensions(HouseLook house, LengthStyle style)
    {
        BuildingForm b = house.Form;
        double pony = house.House.PonyWallM;
        yield return new Entity.Dimensions(new(0, 0), new(1, 0), [0, b.Roof.RidgeOffsetM, b.WidthM], -18, style) { Source = b.Id + "/width" };
        yield return new Entity.Dimensions(new(0, 0), new(1, 0), [0, b.WidthM], -27, style) { Source = b.Id + "/width" };
        List<double> heights = [0];
        if (pony > 0 && pony < b.Roof.LeftEaveM - 0.01)
        {
            heights.Add(pony);
        }

        heights.Add(b.Roof.LeftEaveM);
        yield return new Entity.Dimensions(new(0, 0), new(0, 1), heights, 14, style) { Source = b.Id + "/left" };
        yield return new Entity.Dimensions(new(0, 0), new(0, 1), [0, b.Roof.RidgeM], 24, style) { Source = b.Id + "/ridge" };
        yield return new Entity.Dimensions(new(b.WidthM, 0), new(0, 1), [0, b.Roof.RightEaveM], -14, style) { Source = b.Id + "/right" };
    }

    private static IEnumerable<Entity> Levels(BuildingForm b, LengthStyle style, double mm)
    {
        (double ZM, string Word)[] levels = [(0, "floor"), (b.Roof.RightEaveM, "eave"), (b.Roof.RidgeM, "ridge")];
        foreach ((double z, string word) in levels)
        {
            yield return new Entity.Level(new(b.WidthM + 20 * mm, z), LengthText.Level(z, style)) { Source = $"{b.Id}/{word}" };
        }
    }

    private static IEnumerable<Entity> Pitches(BuildingForm b, LengthStyle style, double mm)
    {
        (Spot From, Spot To, double Pitch)[] slopes =
        [
            (new(0, b.Roof.LeftEaveM), new(b.Roof.RidgeOffsetM, b.Roof.RidgeM), b.Roof.LeftPitch),
            (new(b.Roof.RidgeOffsetM, b.Roof.RidgeM), new(b.WidthM, b.Roof.RightEaveM), b.Roof.RightPitch),
        ];
        foreach ((Spot from, Spot to, double pitch) in slopes)
        {
            Spot along = (to - from).Unit();
            Spot up = new(-along.Y, along.X);
            yield return new Entity.Label(0.5 * (from + to) + 3.4 * mm * up, SheetStyle.Pitch(pitch, style))
            {
                Role = Role.Text,
                Along = Along.Middle,
                AngleDeg = Math.Atan2(along.Y, along.X) * 180 / Math.PI,
                Face = Face.SemiBold,
                Masked = true,
            };
        }
    }

    /// <summary>What covers each side, told where the note hides no equipment, bench, tie or other note.</summary>
    private static IEnumerable<Entity> Coverings(HouseLook house, double mm)
    {
        BuildingForm b = house.Form;
        string Name(FaceName face) => house.House.Coverings.FirstOrDefault(c => c.Face == face) is { } covering ? CoverLook.Of(covering.Cover).Name : "";
        double run = b.WidthM - b.Roof.RidgeOffsetM;
        Spot OnLeft(double share) => new(share * b.Roof.RidgeOffsetM, b.Roof.LeftEaveM + share * (b.Roof.RidgeM - b.Roof.LeftEaveM));
        Spot OnRight(double share) => new(b.WidthM - share * run, b.Roof.RightEaveM + share * (b.Roof.RidgeM - b.Roof.RightEaveM));
        double[] slope = [0.22, 0.35, 0.5, 0.12, 0.65];
        double[] wall = [0.62, 0.5, 0.75, 0.85, 0.4, 0.92];
        (string Text, int Side, Spot[] Tips, double[] DownMm)[] notes =
        [
            (Name(FaceName.RoofLeft), 1, [.. slope.Select(OnLeft)], [9, 14, 20]),
            (Name(FaceName.RoofRight), -1, [.. slope.Select(OnRight)], [9, 14, 20]),
            (Name(FaceName.Left), 1, [.. wall.Select(s => new Spot(0, s * b.Roof.LeftEaveM))], [3, -4, 8]),
            (Name(FaceName.Right), -1, [.. wall.Select(s => new Spot(b.WidthM, s * b.Roof.RightEaveM))], [3, -4, 8]),
        ];
        List<Box> taken = [.. InTheWay(house, mm)];
        foreach ((string text, int side, Spot[] tips, double[] downMm) in notes.Where(n => n.Text.Length > 0))
        {
            IReadOnlyList<string> lines = TextWrap.Lines(text, Face.Regular, Lettered.SmallestMm, 34, 3);
            double wideM = mm * (lines.Max(l => Lettering.WidthMm(l, Face.Regular, Lettered.SmallestMm)) + 2);
            double highM = mm * 1.7 * Lettered.SmallestMm * lines.Count;
            (Spot Tip, Spot ToMm, Box Box, double Hidden)? best = null;
            foreach ((Spot tip, double acrossMm, double down) in from reach in (double[])[8.5, 16, 26, 38] from t in tips from d in downMm select (t, reach, d))
            {
                double nearM = tip.X + side * mm * (acrossMm + 3.5);
                Box box = new(side > 0 ? nearM : nearM - wideM, tip.Y - down * mm - highM / 2, wideM, highM);
                double hidden = taken.Sum(o => CommonM2(o, box));
                if (best is null || hidden < best.Value.Hidden - 1e-12)
                {
                    best = (tip, new Spot(side * acrossMm, down), box, hidden);
                }

                if (hidden <= 0)
                {
                    break;
                }
            }

            taken.Add(best!.Value.Box);
            yield return new Entity.Leader(best.Value.Tip, best.Value.ToMm, string.Join('\n', lines)) { Source = b.Id + "/covering" };
        }
    }

    private static IEnumerable<Box> InTheWay(HouseLook house, double mm)
    {
        BuildingForm b = house.Form;
        foreach (PlacedItem p in house.Layout.Placed.Where(p => p.Face == FaceName.Floor && p.Kind is not (PlacedKind.Aisle or PlacedKind.Sensor)))
        {
            yield return new Box(p.Corner.YM - mm, p.Corner.ZM - mm, p.Size.YM + 2 * mm, p.Size.ZM + 2 * mm);
        }

        foreach (MemberLine tie in b.Members.Where(m => m.Role == MemberRole.CollarTie).Take(1))
        {
            double from = (tie.A - b.Origin).Dot(b.AlongY);
            yield return new Box(from, tie.A.ZM - 0.2, (tie.B - b.Origin).Dot(b.AlongY) - from, 0.3);
        }
    }

    private static double CommonM2(Box a, Box b) =>
        Math.Max(Math.Min(a.Right, b.Right) - Math.Max(a.Left, b.Left), 0) * Math.Max(Math.Min(a.Bottom, b.Bottom) - Math.Max(a.Top, b.Top), 0);
}
