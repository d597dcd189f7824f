using Glazewright.Design.Brief;
using Glazewright.Design.Form;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>The plan of the whole range on its lot.</summary>
public static class RangePlan
{
    /// <summary>The sheet.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="number">Sheet number.</param>
    public static Sheet Draw(PaperSource source, string number)
    {
        ArgumentNullException.ThrowIfNull(source);
        SheetSize size = SheetStyle.Size(source.Job);
        Box room = Furniture.RoomMm(size);
        View view = ViewOf(source, new Box(room.Left, room.Top, room.Width, room.Height - 14), withLot: true);
        LengthStyle style = SheetStyle.Lengths(source.Job);
        List<Entity> paper =
        [
            .. SheetStyle.Border(source.Job, "Range plan", number, view.Scale.Text, SheetStyle.Preliminary, "Lot lines as typed in the job, not surveyed. Call the utilities before digging."),
            .. Furniture.ViewTitle(new(room.Left, room.Bottom - 7), "Range plan", view.Scale.Text, 110),
            .. Furniture.ScaleBar(new(room.Right - 80, room.Bottom - 9), view.Scale, style),
            .. Furniture.North(new(room.Right - 16, room.Top + 18), source.Job.Site.RangeBearingDeg - 90),
        ];
        return new Sheet("plan", "Range plan", Description(source), size.WidthMm, size.HeightMm, [view], paper);
    }

    /// <summary>The plan alone, as a picture for a report.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="widthMm">Width of the picture, mm.</param>
    /// <param name="heightMm">Height of the picture, mm.</param>
    public static Sheet Picture(PaperSource source, double widthMm, double heightMm)
    {
        ArgumentNullException.ThrowIfNull(source);
        View view = ViewOf(source, new Box(0, 0, widthMm, heightMm), withLot: false);
        return new Sheet(
            "plan-picture", "Range plan", Description(source), widthMm, heightMm, [view], [.. Furniture.North(new(widthMm - 13, heightMm - 13), source.Job.Site.RangeBearingDeg - 90, 6)]);
    }

    private static string Description(PaperSource source) => string.Join(
        " ",
        source.Form.Buildings.Select(b => $"{b.Name}: {LengthText.Of(b.WidthM, SheetStyle.Lengths(source.Job))} by {LengthText.Of(b.LengthM, SheetStyle.Lengths(source.Job))}."));

    private static View ViewOf(PaperSource source, Box roomMm, bool withLot)
    {
        LengthStyle style = SheetStyle.Lengths(source.Job);
        IReadOnlyList<Spot> corners = [.. source.Form.Buildings.SelectMany(PlanSymbols.Footprint), .. (withLot ? LotRing(source.Job.Lot) : null) ?? []];
        if (corners.Count == 0)
        {
            corners = [new(0, 0), new(10, 10)];
        }

        if (!withLot || LotRing(source.Job.Lot) is null)
        {
            corners = [.. corners, .. source.Form.Buildings.SelectMany(b => PlanSymbols.Reach(b, source.Houses.FirstOrDefault(h => h.Form.Id == b.Id)))];
        }

        (double lowX, double highX) = (corners.Min(c => c.X), corners.Max(c => c.X));
        (double lowY, double highY) = (corners.Min(c => c.Y), corners.Max(c => c.Y));
        double sideMm = withLot ? 26 : 17;
        // A short distance of the upper chain has its text raised over the others.
        double aboveMm = withLot ? 26 : 22;
        DrawingScale scale = DrawingScale.Choose(highX - lowX, highY - lowY, roomMm.Width - 2 * sideMm, roomMm.Height - 2 * aboveMm, style);
        double wide = roomMm.Width / scale.MmPerM;
        double tall = roomMm.Height / scale.MmPerM;
        Box window = new((lowX + highX - wide) / 2, (lowY + highY - tall) / 2, wide, tall);
        List<Entity> all = [];
        if (withLot)
        {
            Lot(all, source.Job.Lot, style, scale);
        }

        foreach (BuildingForm b in source.Form.Buildings.Reverse())
        {
            all.AddRange(PlanSymbols.Building(b, source.Houses.FirstOrDefault(h => h.Form.Id == b.Id), hung: false));
        }

        foreach (BuildingForm b in source.Form.Buildings)
        {
            Name(all, b, style, scale);
        }

        Dimensions(all, source, style, scale);
        return new View("plan", "Range plan", scale, window, new(roomMm.Left, roomMm.Top), all);
    }

    internal static IReadOnlyList<Spot>? LotRing(Lot lot) => lot.SizeXM > 0 && lot.SizeYM > 0
        ? new Box(lot.OriginXM, lot.OriginYM, lot.SizeXM, lot.SizeYM).Corners()
        : null;

    private static void Lot(List<Entity> all, Lot lot, LengthStyle style, DrawingScale scale)
    {
        if (LotRing(lot) is not IReadOnlyList<Spot> ring)
        {
            return;
        }

        all.Add(new Entity.Polyline(ring, true) { Role = Role.Lot, Source = "lot" });
        all.AddRange(SetbackLines.Of(lot, style, scale.MmPerM, isRange: true));
        all.Add(new Entity.Dimensions(new(lot.OriginXM, lot.OriginYM), new(1, 0), [0, lot.SizeXM], -14, style) { Source = "lot" });
        all.Add(new Entity.Dimensions(new(lot.OriginXM + lot.SizeXM, lot.OriginYM), new(0, 1), [0, lot.SizeYM], -14, style) { Source = "lot" });
    }

    /// <summary>A house's name and size if there is room, else the name, else the id, else nothing. Link buildings have their size in the chains beside them; what stands on the walls between would cross it.</summary>
    internal static void Name(List<Entity> all, BuildingForm b, LengthStyle style, DrawingScale scale)
    {
        IReadOnlyList<Spot> ring = PlanSymbols.Footprint(b);
        double wideMm = (ring.Max(p => p.X) - ring.Min(p => p.X)) * scale.MmPerM;
        double tallMm = (ring.Max(p => p.Y) - ring.Min(p => p.Y)) * scale.MmPerM;
        Spot middle = 0.5 * (ring[0] + ring[2]);
        string size = $"{LengthText.Of(b.WidthM, style)} × {LengthText.Of(b.LengthM, style)}";
        string name = b.IsHouse ? $"{b.Id}  {b.Name}" : b.Name;
        Entity.Label Line(string text, double capMm, Face face, double shiftMm, double angleDeg) => new(middle, text, capMm)
        {
            Role = Role.Text,
            Face = face,
            Along = Along.Middle,
            Across = Across.Middle,
            Masked = true,
            AngleDeg = angleDeg,
            ShiftMm = new(0, shiftMm),
            Source = b.Id,
        };
        double Room(string text, double capMm, Face face) => Lettering.WidthMm(Lettering.Drawable(text), face, capMm) + 2;

        if (b.IsHouse && tallMm > 10 && wideMm > Room(size, 2.5, Face.Regular))
        {
            all.Add(Line(TextWrap.Fit(name, Face.SemiBold, 3, wideMm - 2), 3, Face.SemiBold, -2.4, 0));
            all.Add(Line(size, 2.5, Face.Regular, 2.4, 0));
            return;
        }

        (double longMm, double shortMm, double turnDeg) = tallMm > wideMm ? (tallMm, wideMm, 90.0) : (wideMm, tallMm, 0.0);
        string[] shorter = [$"{b.Id}  {size}", name, b.Id];
        string? fits = shorter.Skip(b.IsHouse ? 0 : 1).FirstOrDefault(t => Room(t, 2.5, Face.Regular) <= longMm);
        if (shortMm > 3.6 && fits is not null)
        {
            all.Add(Line(fits, 2.5, Face.Regular, 0, turnDeg));
        }
    }

    /// <summary>Positions of all walls along x and along y, so that every gap is dimensioned; where they crowd, the whole length alone.</summary>
    private static void Dimensions(List<Entity> all, PaperSource source, LengthStyle style, DrawingScale scale)
    {
        FormResult form = source.Form;
        IReadOnlyList<Spot>[] rings = [.. form.Buildings.Select(PlanSymbols.Footprint)];
        if (rings.Length == 0)
        {
            return;
        }

        List<double> xs = Stations(rings.SelectMany(r => r.Select(p => p.X)), scale);
        List<double> ys = Stations(rings.Where((_, i) => form.Buildings[i].IsHouse).SelectMany(r => r.Select(p => p.Y)), scale);
        double lowX = rings.SelectMany(r => r).Min(p => p.X);
        double highY = rings.SelectMany(r => r).Max(p => p.Y);

        // Doors that swing out and equipment on the walls stand between a wall and its dimension.
        IReadOnlyList<Spot> reach = [.. form.Buildings.SelectMany(b => PlanSymbols.Reach(b, source.Houses.FirstOrDefault(h => h.Form.Id == b.Id)))];
        double BeyondMm(double byM) => Math.Max(8, byM * scale.MmPerM + 4);
        double aboveMm = BeyondMm(reach.Select(p => p.Y - highY).DefaultIfEmpty(0).Max());
        double besideMm = BeyondMm(reach.Select(p => lowX - p.X).DefaultIfEmpty(0).Max());
        all.Add(new Entity.Dimensions(new(0, highY), new(1, 0), xs, aboveMm, style) { Source = "range" });
        if (ys.Count > 1)
        {
            all.Add(new Entity.Dimensions(new(lowX, 0), new(0, 1), ys, besideMm, style) { Source = "range" });
        }
    }

    private static List<double> Stations(IEnumerable<double> values, DrawingScale scale)
    {
        List<double> kept = [];
        foreach (double value in values.Order())
        {
            if (kept.Count == 0 || value - kept[^1] > 0.05)
            {
                kept.Add(value);
            }
        }

        // Two short ones side by side still find room in a second row; more would climb off the paper.
        int crowded = kept.Zip(kept.Skip(1)).Count(p => (p.Second - p.First) * scale.MmPerM < 13);
        bool tight = kept.Count > 3 && kept.Zip(kept.Skip(2)).Any(p => (p.Second - p.First) * scale.MmPerM < 13);
        return crowded > 2 || tight ? [kept[0], kept[^1]] : kept;
    }
}
