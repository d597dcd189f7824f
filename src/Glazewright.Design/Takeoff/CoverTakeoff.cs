using Glazewright.Cutting.Sheets;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using CutPiece = Glazewright.Cutting.Sheets.SheetPiece;

namespace Glazewright.Design.Takeoff;

/// <summary>Sheets, panels, their profiles, trim and screws, face by face.</summary>
internal static class CoverTakeoff
{
    private const double EdgeM = 1e-3;

    /// <summary>Places the covering of every zone and books what fixes it.</summary>
    public static EqList<SheetPiece> Book(LineBook book, TakeoffInput input, FormResult form, EqList<LayoutResult> layouts)
    {
        ShopTick tick = ShopTick.For(input.Units);
        List<(string Kind, string Zone, CoverBuying Buying, CutPiece Piece)> placed = [];
        foreach (BuildingForm building in form.Buildings)
        {
            double purlinM = input.Houses.FirstOrDefault(h => h.Id == building.Id)?.PurlinSpacingM ?? 1.2192;
            foreach (FaceForm face in building.Faces)
            {
                Hole[] openings = [.. Openings(building, face, layouts)];
                foreach (CoverZone zone in face.Zones)
                {
                    Fixings(book, building, face, zone, CoverBuying.Of(zone.Cover.Kind, input.Units), purlinM, openings);
                }
            }

            placed.AddRange(Placed(building, form, layouts, input.Units).Select(p => (p.Zone.Cover.Kind, p.Zone.Id, p.Buying, p.Piece)));
        }

        Panels(book, placed, tick);
        return Marked(placed, tick);
    }

    /// <summary>The pieces of a building where they lie, face by face and zone by zone.</summary>
    public static IEnumerable<(CoverZone Zone, CoverBuying Buying, CutPiece Piece)> Placed(BuildingForm building, FormResult form, EqList<LayoutResult> layouts, UnitSystem units)
    {
        ShopTick tick = ShopTick.For(units);
        foreach (FaceForm face in building.Faces)
        {
            Hole[] holes = [.. Openings(building, face, layouts), .. LeanedOn(building, face, form)];
            foreach (CoverZone zone in face.Zones)
            {
                CoverBuying buying = CoverBuying.Of(zone.Cover.Kind, units);
                foreach (CutPiece piece in buying.Form is CoverForm.Sheet or CoverForm.Panel ? SheetLayout.Place(ToFace(zone, holes, tick), buying.Rules) : [])
                {
                    yield return (zone, buying, piece);
                }
            }
        }
    }

    /// <summary>Openings typed for the face, and equipment placed in it where nothing was typed.</summary>
    private static List<Hole> Openings(BuildingForm building, FaceForm face, EqList<LayoutResult> layouts)
    {
        List<Hole> holes = [];
        foreach (OpeningForm opening in face.Openings)
        {
            Opening o = opening.Opening;
            holes.Add(new Hole(opening.Id, o.OffsetM, o.OffsetM + o.WidthM, o.SillM, o.SillM + o.HeightM));
        }

        bool end = face.Name is FaceName.End1 or FaceName.End2;
        foreach (PlacedItem item in layouts.Where(l => l.House == building.Id).SelectMany(l => l.Placed))
        {
            double fromM = end ? item.Corner.YM : item.Corner.XM;
            Hole hole = new(item.Id, fromM, fromM + (end ? item.Size.YM : item.Size.XM), item.Corner.ZM, item.Corner.ZM + item.Size.ZM);
            if (item.CutsCover && item.Face == face.Name && !holes.Exists(hole.Meets))
            {
                holes.Add(hole);
            }
        }

        return holes;
    }

    /// <summary>The part of a link building's wall that leans on another building: it has no covering of its own there.</summary>
    private static IEnumerable<Hole> LeanedOn(BuildingForm building, FaceForm face, FormResult form) =>
        form.Shared.Where(p => !building.IsHouse && p.FaceId == face.Id).Select(piece => new Hole(
            "", piece.Outline.Min(p => p.UM), piece.Outline.Max(p => p.UM), piece.Outline.Min(p => p.VM), piece.Outline.Max(p => p.VM)));

    private static SheetFace ToFace(CoverZone zone, Hole[] holes, ShopTick tick) => new(
        zone.Id,
        [.. zone.Outline.Select(p => new FacePoint(tick.Nearest(p.UM), tick.Nearest(p.VM)))],
        [.. holes.Select(h => new FaceOpening(tick.Nearest(h.FromUM), tick.Nearest(h.ToUM), tick.Nearest(h.FromVM), tick.Nearest(h.ToVM)))]);

    private static EqList<SheetPiece> Marked(
        List<(string Kind, string Zone, CoverBuying Buying, CutPiece Piece)> placed, ShopTick tick)
    {
        List<SheetPiece> sheets = [];
        int sheet = 0;
        int panel = 0;
        foreach (var alike in placed
            .GroupBy(p => (p.Kind, p.Piece.LengthTicks, p.Piece.WidthTicks))
            .OrderBy(g => g.First().Buying.Form)
            .ThenBy(g => g.Key.Kind, StringComparer.Ordinal)
            .ThenByDescending(g => g.Key.LengthTicks)
            .ThenByDescending(g => g.Key.WidthTicks))
        {
            CoverBuying buying = alike.First().Buying;
            string mark = buying.Form == CoverForm.Panel
                ? FormattableString.Invariant($"P-{++panel:00}")
                : FormattableString.Invariant($"S-{++sheet:00}");
            sheets.AddRange(alike.GroupBy(p => p.Zone).Select(zone => new SheetPiece(
                mark,
                alike.Key.Kind,
                zone.Key,
                buying.ModuleM,
                tick.Metres(alike.Key.LengthTicks),
                zone.Count(),
                tick.Metres(alike.Key.WidthTicks))));
        }

        return sheets.ToEqList();
    }

    /// <summary>Panels are made to length and not ripped into two: each takes its whole module.</summary>
    private static void Panels(LineBook book, List<(string Kind, string Zone, CoverBuying Buying, CutPiece Piece)> placed, ShopTick tick)
    {
        foreach (var kind in placed.Where(p => p.Buying.Form == CoverForm.Panel).GroupBy(p => p.Kind))
        {
            double moduleM = kind.First().Buying.ModuleM;
            double lengthM = kind.Sum(p => tick.Metres(p.Piece.LengthTicks));
            book.Add(ScopeSystem.Panels, LineItems.Panel(kind.Key), $"Insulated panel {kind.Key}", lengthM * moduleM, "m²",
                $"{kind.Count()} panels to length, whole modules of {book.Size(moduleM)}");
            book.Add(ScopeSystem.Panels, "panels/butyl", "Butyl in panel joints", lengthM * 2, "m", "two beads along every panel");
        }
    }

    private static void Fixings(LineBook book, BuildingForm building, FaceForm face, CoverZone zone, CoverBuying buying, double purlinM, Hole[] openings)
    {
        double widthM = zone.Outline.Max(p => p.UM) - zone.Outline.Min(p => p.UM);
        double lengthM = zone.Outline.Max(p => p.VM) - zone.Outline.Min(p => p.VM);
        double fullM2 = widthM * lengthM;
        double fill = fullM2 > 0 ? zone.GrossM2 / fullM2 : 0;
        int lines = (int)Math.Ceiling(lengthM / purlinM - 1e-9) + 1;
        double screws = Math.Ceiling(((Math.Max(0, lines - 2) * widthM / TakeoffRules.FieldScrewM) + (2 * widthM / TakeoffRules.EdgeScrewM)) * fill
            * (1 + TakeoffRules.ScrewWasteFraction));
        double jointsM = Math.Max(0, Math.Ceiling(widthM / buying.ModuleM - 1e-9) - 1) * lengthM * fill;
        double around = Perimeter(zone.Outline) * (1 + TakeoffRules.TrimWasteFraction);
        string from = zone.Id;
        switch (buying.Form)
        {
            case CoverForm.Sheet:
                book.Add(ScopeSystem.Glazing, "glazing/joint-profile", "Joint profile, cap and base", jointsM * (1 + TakeoffRules.TrimWasteFraction), "m", from);
                book.Add(ScopeSystem.Glazing, "glazing/edge-profile", "Edge profile", around, "m", from);
                book.Add(ScopeSystem.Glazing, "glazing/tape", "Solid tape at the top, vented tape at the bottom", 2 * widthM, "m", from);
                book.Add(ScopeSystem.Glazing, "glazing/screw", $"Self-drilling screw with {book.Size(0.01905)} bonded washer", screws, "each", from);
                book.Add(ScopeSystem.Glazing, "glazing/lay", "Lay and fix sheets", zone.NetM2, "m²", from);
                break;
            case CoverForm.Panel:
                book.Add(ScopeSystem.Panels, "panels/screw", "Panel screw with bonded washer", screws, "each", from);
                book.Add(ScopeSystem.Panels, "panels/trim", "Trim and closure around panel fields", around, "m", from);
                book.Add(ScopeSystem.Panels, "panels/lay", "Lay and fix panels", zone.NetM2, "m²", from);
                break;
            case CoverForm.Glass:
                book.Add(ScopeSystem.Glazing, $"glazing/{zone.Cover.Kind}", $"Glass {zone.Cover.Kind}, lites and bars", zone.NetM2, "m²", from);
                book.Add(ScopeSystem.Glazing, "glazing/lay-glass", "Glaze", zone.NetM2, "m²", from);
                break;
            default:
                book.Add(ScopeSystem.Glazing, $"glazing/{zone.Cover.Kind}", $"Film {zone.Cover.Kind} with locking profile", zone.GrossM2 * 1.1, "m²", from);
                book.Add(ScopeSystem.Glazing, "glazing/lay-film", "Pull and lock film", zone.GrossM2, "m²", from);
                break;
        }

        if (face.Name is FaceName.RoofLeft or FaceName.RoofRight)
        {
            book.Add(ScopeSystem.Panels, "panels/ridge-cap", "Ridge cap, each side", building.LengthM, "m", from);
            book.Add(ScopeSystem.Panels, "panels/gutter", "Eave gutter, also for condensate", building.LengthM, "m", from);
            book.Add(ScopeSystem.Panels, "panels/downspout", "Downspout", Math.Ceiling(building.LengthM / TakeoffRules.DownspoutM - EdgeM), "each", from);
        }

        foreach (Hole o in openings.Where(o => Inside(zone, o)))
        {
            book.Add(ScopeSystem.Panels, "panels/flashing", "Flashing and sealant at openings", 2 * (o.ToUM - o.FromUM + o.ToVM - o.FromVM), "m", o.Id);
        }
    }

    private static bool Inside(CoverZone zone, Hole o)
    {
        double midM = (o.FromVM + o.ToVM) / 2;
        return midM >= zone.Outline.Min(p => p.VM) && midM < zone.Outline.Max(p => p.VM);
    }

    private static double Perimeter(EqList<Point2> outline)
    {
        double sumM = 0;
        for (int i = 0; i < outline.Count; i++)
        {
            Point2 a = outline[i];
            Point2 b = outline[(i + 1) % outline.Count];
            sumM += Math.Sqrt(((b.UM - a.UM) * (b.UM - a.UM)) + ((b.VM - a.VM) * (b.VM - a.VM)));
        }

        return sumM;
    }

    private readonly record struct Hole(string Id, double FromUM, double ToUM, double FromVM, double ToVM)
    {
        public bool Meets(Hole other) => FromUM < other.ToUM - EdgeM && ToUM > other.FromUM + EdgeM && FromVM < other.ToVM - EdgeM && ToVM > other.FromVM + EdgeM;
    }
}
