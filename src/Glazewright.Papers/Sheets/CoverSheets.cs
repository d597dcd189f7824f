using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Takeoff;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>Sheets and panels of a house where they lie, with their joints and shop marks: roof, side walls and end walls each on a sheet.</summary>
public static class CoverSheets
{
    private static readonly Pad Round = new(16, 4, 6, 13);

    /// <summary>Both roof slopes in their own plane.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="house">Which house.</param>
    /// <param name="number">Sheet number.</param>
    public static Sheet Roof(PaperSource source, HouseResults house, string number)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(house);
        return Draw(source, house, number, "roof-cover-", "roof covering", [FaceName.RoofLeft, FaceName.RoofRight]);
    }

    /// <summary>Both side walls from outside.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="house">Which house.</param>
    /// <param name="number">Sheet number.</param>
    public static Sheet Sides(PaperSource source, HouseResults house, string number)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(house);
        return Draw(source, house, number, "side-cover-", "side wall covering", [FaceName.Left, FaceName.Right]);
    }

    /// <summary>Both end walls from outside.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="house">Which house.</param>
    /// <param name="number">Sheet number.</param>
    public static Sheet Ends(PaperSource source, HouseResults house, string number)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(house);
        return Draw(source, house, number, "end-cover-", "end wall covering", [FaceName.End1, FaceName.End2]);
    }

    private static Sheet Draw(PaperSource source, HouseResults house, string number, string id, string what, FaceName[] faces)
    {
        BuildingForm b = house.Form;
        SheetDraft draft = new(source, id + b.Id, $"House {b.Id}: {what}", number);
        FaceView[] views = [.. faces.Select(f => new FaceView(b, f))];
        HashSet<string> zones = [.. views.SelectMany(v => v.Face.Zones).Select(z => z.Id)];
        SheetPiece[] bought = [.. source.Takeoff.Sheets.Where(s => zones.Contains(s.Zone))];
        Table schedule = Schedule(views, bought, draft.Style);
        Table areas = Areas(source, views);
        double stripMm = Math.Min(Math.Max(TableSetting.HeightMm(schedule), TableSetting.HeightMm(areas)) + 9.5, (views[0].IsEnd ? 0.5 : 0.42) * draft.Room.Height);
        Box room = draft.Room with { Height = draft.Room.Height - stripMm };
        EqList<CoverPiece> pieces = CoverPlaces.Of(b, source.Form, source.Houses.Select(h => h.Layout).ToEqList(), source.Job.Units);
        (DrawingScale scale, IReadOnlyList<Box> boxes) = views[0].IsEnd ? Beside(room, views, draft.Style) : Stack(room, views, draft.Style);
        for (int i = 0; i < views.Length; i++)
        {
            FaceView view = views[i];
            Box inner = boxes[i] with { Height = boxes[i].Height - SheetDraft.TitleMm };
            Box window = SheetDraft.Window(inner, view.Extent, Round, scale);
            string title = $"{ElevationSheet.Title(view.Name)}, faces {SheetStyle.Facing(b, view.Name)}{(view.IsRoof ? ", in its own plane" : "")}, from outside";
            draft.Add($"cover-{i + 1}", title, boxes[i], window, scale, (s, _) => Face(house, view, pieces, bought, s.MmPerM, draft.Style), withBar: i == views.Length - 1);
        }

        double y = room.Bottom + 3;
        draft.Table("Pieces, as on the cut list", MemberSchedule.Cut(schedule, stripMm - 9), new(draft.Room.Left, y));
        draft.Table("Areas, openings taken out", MemberSchedule.Cut(areas, stripMm - 9), new(draft.Room.Left + schedule.WidthMm + 6, y));
        return draft.Done(
            $"{Said.Capital(what)} of {b.Name}: {bought.Sum(p => p.Count).ToString(CultureInfo.InvariantCulture)} sheets and panels.", SheetStyle.Preliminary,
            "Ribs run up the slope; ultraviolet face out; the narrow piece lies where drawn; lengths with what is trimmed in place. Stop in wind; fall through sheet kills.");
    }

    private static (DrawingScale Scale, IReadOnlyList<Box> BoxesMm) Beside(Box room, FaceView[] views, LengthStyle style)
    {
        double halfMm = room.Width / 2 - 2;
        DrawingScale scale = DrawingScale.Largest(
            style, s => views.All(v => v.Extent.Width * s.MmPerM + Round.Left + Round.Right <= halfMm && v.Extent.Height * s.MmPerM + Round.Top + Round.Bottom + SheetDraft.TitleMm <= room.Height));
        return (scale, [room with { Width = halfMm }, room with { Left = room.Left + halfMm + 4, Width = halfMm }]);
    }

    private static (DrawingScale Scale, IReadOnlyList<Box> BoxesMm) Stack(Box room, FaceView[] views, LengthStyle style)
    {
        double Row(FaceView v, DrawingScale s) => v.Extent.Height * s.MmPerM + Round.Top + Round.Bottom + SheetDraft.TitleMm;
        DrawingScale scale = DrawingScale.Largest(style, s => views.All(v => v.Extent.Width * s.MmPerM + Round.Left + Round.Right <= room.Width) && views.Sum(v => Row(v, s)) <= room.Height);
        double spare = Math.Max(0, (room.Height - views.Sum(v => Row(v, scale))) / views.Length);
        List<Box> boxes = [];
        double y = room.Top;
        foreach (FaceView v in views)
        {
            double tall = v == views[^1] ? room.Bottom - y : Row(v, scale) + spare;
            boxes.Add(new Box(room.Left, y, room.Width, tall));
            y += tall;
        }

        return (scale, boxes);
    }

    private static List<Entity> Face(HouseResults house, FaceView view, EqList<CoverPiece> pieces, SheetPiece[] bought, double mmPerM, LengthStyle style)
    {
        List<Entity> all = [.. view.Coverings()];
        (Box Box, string Id)[] holes = [.. view.Holes(house).Select(h => (h.Box, h.Hole.Id))];
        TakenRoom taken = new();
        foreach ((Box box, string _) in holes)
        {
            taken.Add(new Box(box.Left * mmPerM, -box.Bottom * mmPerM, box.Width * mmPerM, box.Height * mmPerM));
        }

        List<(IReadOnlyList<Spot> Ring, string Mark, string Zone)> marked = [];
        foreach (CoverZone zone in view.Face.Zones)
        {
            foreach (CoverPiece piece in pieces.Where(p => p.Zone == zone.Id))
            {
                IReadOnlyList<Point2> ring = Clip(zone.Outline, piece.FromUM, piece.FromUM + piece.WidthM, piece.FromVM, piece.FromVM + piece.ReachM);
                if (ring.Count < 3)
                {
                    continue;
                }

                IReadOnlyList<Spot> drawn = view.Ring(ring);
                all.Add(new Entity.Polyline(drawn, true) { Role = Role.Beyond, Source = zone.Id + "/piece" });
                string mark = bought.Where(s => s.Zone == zone.Id).OrderBy(s => Math.Abs(s.LengthM - piece.LengthM) + Math.Abs(s.TrimmedWidthM - piece.WidthM)).FirstOrDefault()?.Mark ?? "";
                marked.Add((drawn, mark, zone.Id));
            }
        }

        all.AddRange(view.Openings(house, Role.Beyond, Role.Beyond));
        foreach ((IReadOnlyList<Spot> ring, string mark, string zone) in marked.Where(m => m.Mark.Length > 0))
        {
            Box box = SitePlan.Bounds(ring);
            double wide = Lettering.WidthMm(mark, Fonts.Face.Regular, Lettered.SmallestMm);
            (double widthMm, double highMm) = (box.Width * mmPerM, box.Height * mmPerM);
            bool lying = widthMm > wide + 1.2;
            if (!lying && (widthMm < Lettered.SmallestMm + 1 || highMm < wide + 2) || highMm < Lettered.SmallestMm + 1)
            {
                continue;
            }

            foreach (double up in (double[])[0.5, 0.7, 0.3, 0.2, 0.85, 0.12])
            {
                Spot at = new(box.Left + box.Width / 2, box.Top + up * box.Height);
                Box room = TakenRoom.Round(mmPerM * new Spot(at.X, -at.Y), lying ? wide : Lettered.SmallestMm, lying ? Lettered.SmallestMm : wide);
                Spot half = 0.55 / mmPerM * new Spot(room.Width, room.Height);
                bool whole = ((Spot[])[at + half, at - half, new(at.X + half.X, at.Y - half.Y), new(at.X - half.X, at.Y + half.Y)]).All(c => CoverLetters.Inside(ring, c));
                if (whole && taken.Take(room))
                {
                    all.Add(new Entity.Label(at, mark) { Role = Role.Text, Along = Along.Middle, Across = Across.Middle, AngleDeg = lying ? 0 : 90, Source = zone + "/piece" });
                    break;
                }
            }
        }

        all.Add(new Entity.Polyline(view.Ring(view.Face.Outline), true) { Role = Role.Visible, Source = view.Face.Id });
        Box extent = view.Extent;
        double[] joints = [.. pieces.Where(p => view.Face.Zones.Any(z => z.Id == p.Zone)).SelectMany(p => (double[])[view.At(p.FromUM, 0).X, view.At(p.FromUM + p.WidthM, 0).X])
            .Concat([0, extent.Width]).Select(x => Math.Round(x, 4)).Distinct().Order()];
        bool chained = joints.Length > 2 && joints.Zip(joints.Skip(1)).Count(p => (p.Second - p.First) * mmPerM < Lettering.WidthMm(LengthText.Of(p.Second - p.First, style), Fonts.Face.Regular, Lettered.SmallestMm) + 1.4) < 2;
        all.Add(new Entity.Dimensions(new(0, 0), new(1, 0), chained ? joints : [0, extent.Width], -6, style) { Source = view.Face.Id });
        all.Add(new Entity.Dimensions(new(0, 0), new(0, 1), [0, view.IsEnd ? view.Face.Outline.Where(p => p.UM < 1e-6 == !view.IsTurned || view.IsTurned && p.UM > extent.Width - 1e-6).Max(p => p.VM) : extent.Height], 7, style) { Source = view.Face.Id });
        return all;
    }

    private static Table Schedule(FaceView[] views, SheetPiece[] bought, LengthStyle style)
    {
        string Where(string zone) => Place(views.First(v => v.Face.Zones.Any(z => z.Id == zone)).Name, zone);

        return new Table(
            [new("Mark", 16), new("Covering", 74), new("Width × length", 44), new("Count", 16, Along.End), new("Where", 60)],
            [
                .. bought.GroupBy(p => (p.Mark, p.CoverKind, p.LengthM, p.TrimmedWidthM)).OrderBy(g => g.Key.Mark, StringComparer.Ordinal).Select(g => (IReadOnlyList<string>)
                [
                    g.Key.Mark, Name(g.Key.CoverKind), $"{LengthText.Of(g.Key.TrimmedWidthM, style)} × {LengthText.Of(g.Key.LengthM, style)}",
                    g.Sum(p => p.Count).ToString(CultureInfo.InvariantCulture), string.Join(", ", g.Select(p => $"{Where(p.Zone)} × {p.Count.ToString(CultureInfo.InvariantCulture)}")),
                ]),
            ]);
    }

    /// <summary>Where a zone of the covering lies, in words.</summary>
    internal static string Place(BuildingForm b, string zone) => b.Faces.FirstOrDefault(f => f.Id == zone || f.Zones.Any(z => z.Id == zone)) is { } face ? Place(face.Name, zone) : zone;

    private static string Place(FaceName face, string zone) => ElevationSheet.Title(face) + (zone.EndsWith("/pony", StringComparison.Ordinal) ? ", pony wall" : "");

    /// <summary>A kind of covering in words.</summary>
    internal static string Name(string kind) => CoverLook.Of(new Design.Brief.CoverChoice(kind, 1, 1, 0)).Name;

    private static Table Areas(PaperSource source, FaceView[] views)
    {
        Said said = new(source.Job.Units);
        return new Table(
            [new("Face", 42), new("Covering", 74), new("Net area", 26, Along.End), new("Bought as", 32)],
            [
                .. views.SelectMany(v => v.Face.Zones.Select(z => (IReadOnlyList<string>)
                [
                    ElevationSheet.Title(v.Name) + (z.Id.EndsWith("/pony", StringComparison.Ordinal) ? ", pony wall" : ""), CoverLook.Of(z.Cover).Name, said.Text(z.NetM2, Unit.SquareMetre),
                    CoverBuying.Of(z.Cover.Kind, source.Job.Units).Form switch { CoverForm.Sheet => "sheets, drawn", CoverForm.Panel => "panels, drawn", CoverForm.Glass => "glass by area", _ => "film by area" },
                ])),
            ]);
    }

    /// <summary>The part of a convex outline in an upright box.</summary>
    internal static IReadOnlyList<Point2> Clip(EqList<Point2> outline, double fromUM, double toUM, double fromVM, double toVM)
    {
        List<Point2> ring = [.. outline];
        foreach ((Func<Point2, double> inside, int _) in new (Func<Point2, double>, int)[] { (p => p.UM - fromUM, 0), (p => toUM - p.UM, 1), (p => p.VM - fromVM, 2), (p => toVM - p.VM, 3) })
        {
            List<Point2> kept = [];
            for (int i = 0; i < ring.Count; i++)
            {
                Point2 a = ring[i];
                Point2 b = ring[(i + 1) % ring.Count];
                (double da, double db) = (inside(a), inside(b));
                if (da >= 0)
                {
                    kept.Add(a);
                }

                if (da >= 0 != db >= 0)
                {
                    double t = da / (da - db);
                    kept.Add(new Point2(a.UM + t * (b.UM - a.UM), a.VM + t * (b.VM - a.VM)));
                }
            }

            ring = kept;
        }

        return ring;
    }
}
