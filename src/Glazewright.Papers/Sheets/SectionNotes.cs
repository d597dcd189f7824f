using Glazewright.Design.Form;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>What is lettered on a cross-section: dimensions, levels, pitches, coverings, compass words, sun angles.</summary>
internal static class SectionNotes
{
    public static IEnumerable<Entity> Of(PaperSource source, HouseResults house, DrawingScale scale, bool isPicture)
    {
        BuildingForm b = house.Form;
        LengthStyle style = SheetStyle.Lengths(source.Job);
        double mm = 1 / scale.MmPerM;
        IEnumerable<Entity> notes = isPicture
            ? FewDimensions(house, style).Concat(Pitches(b, style, mm))
            : Dimensions(house, style).Concat(Levels(b, style, mm)).Concat(Pitches(b, style, mm)).Concat(Coverings(house));
        foreach (Entity entity in notes)
        {
            yield return entity;
        }

        yield return new Entity.Label(new(-2 * mm, 0), SheetStyle.Facing(b, FaceName.Left)) { Role = Role.Text, Along = Along.End, ShiftMm = new(-3, 8), Face = Face.SemiBold, Masked = true };
        yield return new Entity.Label(new(b.WidthM + 2 * mm, 0), SheetStyle.Facing(b, FaceName.Right)) { Role = Role.Text, ShiftMm = new(3, 8), Face = Face.SemiBold, Masked = true };
        IReadOnlyList<NoonSun> suns = NoonSun.Solstices(source.Job.Site.LatitudeDeg, source.Job.Site.RangeBearingDeg);
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
    private static IEnumerable<Entity> FewDimensions(HouseResults house, LengthStyle style)
    {
        BuildingForm b = house.Form;
        yield return new Entity.Dimensions(new(0, 0), new(1, 0), [0, b.WidthM], -11, style) { Source = b.Id + "/width" };
        yield return new Entity.Dimensions(new(0, 0), new(0, 1), [0, b.Roof.LeftEaveM], 8, style) { Source = b.Id + "/left" };
        yield return new Entity.Dimensions(new(0, 0), new(0, 1), [0, b.Roof.RidgeM], 16, style) { Source = b.Id + "/ridge" };
        yield return new Entity.Dimensions(new(b.WidthM, 0), new(0, 1), [0, b.Roof.RightEaveM], -8, style) { Source = b.Id + "/right" };
    }

    private static IEnumerable<Entity> Dimensions(HouseResults house, LengthStyle style)
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

    private static IEnumerable<Entity> Coverings(HouseResults house)
    {
        BuildingForm b = house.Form;
        string Name(FaceName face) => house.House.Coverings.FirstOrDefault(c => c.Face == face) is { } covering ? CoverLook.Of(covering.Cover).Name : "";
        Spot leftRoof = new(0.22 * b.Roof.RidgeOffsetM, b.Roof.LeftEaveM + 0.22 * (b.Roof.RidgeM - b.Roof.LeftEaveM));
        double run = b.WidthM - b.Roof.RidgeOffsetM;
        Spot rightRoof = new(b.WidthM - 0.22 * run, b.Roof.RightEaveM + 0.22 * (b.Roof.RidgeM - b.Roof.RightEaveM));
        (Spot Tip, Spot ToMm, string Text)[] notes =
        [
            (leftRoof, new(9, 9), Name(FaceName.RoofLeft)),
            (rightRoof, new(-9, 9), Name(FaceName.RoofRight)),
            (new(0, 0.62 * b.Roof.LeftEaveM), new(8, 3), Name(FaceName.Left)),
            (new(b.WidthM, 0.62 * b.Roof.RightEaveM), new(-8, 3), Name(FaceName.Right)),
        ];
        foreach ((Spot tip, Spot to, string text) in notes)
        {
            if (text.Length > 0)
            {
                IReadOnlyList<string> lines = TextWrap.Lines(text, Face.Regular, Lettered.SmallestMm, 34, 3);
                yield return new Entity.Leader(tip, to, string.Join('\n', lines)) { Source = b.Id + "/covering" };
            }
        }
    }
}
