using System.Globalization;
using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>Like holes of one wall with one number and one line in the schedule.</summary>
/// <param name="Number">Number on the sheet.</param>
/// <param name="Members">The holes, from the wall's start.</param>
internal sealed record WallGroup(int Number, IReadOnlyList<WallOpening> Members)
{
    public WallOpening First => Members[0];
}

/// <summary>One wall seen square on: posts or columns, rod bracing, holes with jambs, headers and sills, what stands in them, dimensions and levels.</summary>
internal static class WallView
{
    public static bool IsEnd(FaceName face) => face is FaceName.End1 or FaceName.End2;

    public static double LengthM(BuildingForm b, FaceName face) => IsEnd(face) ? b.WidthM : b.LengthM;

    public static double HeightM(BuildingForm b, FaceName face) =>
        IsEnd(face) ? b.Roof.RidgeM : face == FaceName.Left ? b.Roof.LeftEaveM : b.Roof.RightEaveM;

    /// <summary>Holes of a wall in groups, numbered on from a number.</summary>
    public static List<WallGroup> Groups(HouseResults house, FaceName face, int from) =>
    [
        .. WallFraming.Openings(house.Form, house.Layout, face)
            .GroupBy(o => (o.Label, o.IsDoor, Wide: Tenth(o.WidthM), High: Tenth(o.HeightM), Sill: Tenth(o.VM), o.Framed))
            .Select((g, i) => new WallGroup(from + i, [.. g])),
    ];

    public static IEnumerable<Entity> Draw(PaperSource source, HouseResults house, FaceName face, IReadOnlyList<WallGroup> groups, double mmPerM, LengthStyle style)
    {
        BuildingForm b = house.Form;
        double wallM = LengthM(b, face);
        double eaveM = HeightM(b, face);
        WallOpening[] holes = [.. groups.SelectMany(g => g.Members)];
        IReadOnlyList<Spot> outline = IsEnd(face) ? Profile.Points(b) : [new(0, 0), new(0, eaveM), new(wallM, eaveM), new(wallM, 0)];
        List<Entity> all = [];
        IReadOnlyList<WallPost> posts = WallFraming.Posts(b, face);
        IReadOnlyList<MemberSolid> girts = GirtLines.On(source, b, face);
        all.AddRange(GirtLines.Pieces(b, face, girts));
        all.AddRange(Sticks(source, b, face, wallM));

        foreach (Bay bay in BracedBays.On(b, face))
        {
            string id = $"{b.Id}/bracing";
            all.Add(new Entity.Polyline([new(bay.FromM, 0), new(bay.ToM, eaveM)]) { Role = Role.Hidden, Source = id });
            all.Add(new Entity.Polyline([new(bay.FromM, eaveM), new(bay.ToM, 0)]) { Role = Role.Hidden, Source = id });
        }

        foreach (PlacedItem box in house.Layout.Placed.Where(p => p.Face == face && p.Kind is PlacedKind.IntakeBox or PlacedKind.ClothBox))
        {
            (double u, double wide) = IsEnd(face) ? (box.Corner.YM, box.Size.YM) : (box.Corner.XM, box.Size.XM);
            all.Add(new Entity.Polyline(new Box(u, box.Corner.ZM, wide, box.Size.ZM).Corners(), true) { Role = Role.Hidden, Source = box.Id });
        }

        foreach (PlacedItem pipe in house.Layout.Placed.Where(p => p.Face == face && p.Kind == PlacedKind.Vent))
        {
            (double u, double wide) = IsEnd(face) ? (pipe.Corner.YM, pipe.Size.YM) : (pipe.Corner.XM, pipe.Size.XM);
            all.Add(new Entity.Arc(new(u + wide / 2, pipe.Corner.ZM + pipe.Size.ZM / 2), wide / 2) { Role = Role.Equipment, Source = pipe.Id });
        }

        all.Add(new Entity.Polyline(outline, true) { Role = Role.Visible, Source = $"{b.Id}/{face}" });
        all.Add(new Entity.Polyline([new(-0.4, 0), new(wallM + 0.02, 0)]) { Role = Role.Cut, Source = "ground" });
        foreach (WallOpening hole in holes)
        {
            all.AddRange(Thing(hole));
        }

        Box[] sticks = [.. all.OfType<Entity.Polyline>().Where(e => e.Role == Role.Beyond).Select(e => SitePlan.Bounds(e.Points))];
        all.AddRange(Numbers(groups, holes, sticks, mmPerM));
        all.AddRange(GirtLines.Marks(source, b, face, girts, Taken(b, face, holes, posts, all), mmPerM));
        double chainMm = 0;
        if (groups.Count > 0)
        {
            all.AddRange(RunningDimensions.Below([0, .. groups.SelectMany(Stations), wallM], mmPerM, style, $"{b.Id}/{face}"));
            chainMm = RunningDimensions.BelowMm;
        }

        all.AddRange(RunningDimensions.Beside(
            [0, .. holes.SelectMany(h => (double[])[h.VM, h.VM + h.HeightM]), .. GirtLines.LevelsM(b, face, girts), .. IsEnd(face) ? [b.Roof.LeftEaveM, b.Roof.RightEaveM, b.Roof.RidgeM] : (double[])[eaveM]],
            wallM, mmPerM, style, $"{b.Id}/{face}"));
        List<double> chain = [0, .. posts.Select(p => p.UM).Where(u => u > 0.05 && u < wallM - 0.05), wallM];
        if (chain.Count > 2 && chain.Zip(chain.Skip(1)).All(p => (p.Second - p.First) * mmPerM > Lettering.WidthMm(LengthText.Of(p.Second - p.First, style), Face.Regular, Lettered.SmallestMm) + 1.5))
        {
            all.Add(new Entity.Dimensions(new(0, -chainMm / mmPerM), new(1, 0), chain, -6, style) { Source = $"{b.Id}/{face}/posts" });
        }

        all.Add(new Entity.Dimensions(new(0, -chainMm / mmPerM), new(1, 0), [0, wallM], -14, style) { Source = $"{b.Id}/{face}" });
        return all;
    }

    private static long Tenth(double lengthM) => (long)Math.Round(lengthM * 10_000);

    // Every edge of few pieces; of many, where they begin and end: the schedule lists the rest.
    private static IEnumerable<double> Stations(WallGroup group) => group.Members.Count <= 3
        ? group.Members.SelectMany(o => (double[])[o.UM, o.UM + o.WidthM])
        : [group.Members.Min(o => o.UM), group.Members.Max(o => o.UM + o.WidthM)];

    /// <summary>Columns, posts and what is left of them, jambs, headers and sills as the members are.</summary>
    private static IEnumerable<Entity> Sticks(PaperSource source, BuildingForm b, FaceName face, double wallM)
    {
        FacePlane plane = b.Face(face).Plane;
        foreach (MemberSolid m in source.Body.Members.Where(m => m.House == b.Id && Stands(m, face) && Math.Abs((m.Line.A - plane.Origin).Dot(plane.Normal)) < 0.05))
        {
            Point2 from = plane.On(m.Line.A);
            Point2 to = plane.On(m.Line.B);
            double half = m.WidthM / 2;
            if (Math.Abs((m.Line.B - plane.Origin).Dot(plane.Normal)) > 0.05)
            {
                continue;
            }

            bool upright = m.Line.Role is not (MemberRole.Header or MemberRole.Sill);
            double middle = upright ? Math.Clamp(from.UM, half, Math.Max(wallM - half, half)) : 0;
            Box box = upright
                ? new Box(middle - half, from.VM, m.WidthM, to.VM - from.VM)
                : new Box(Math.Min(from.UM, to.UM), from.VM - half, Math.Abs(to.UM - from.UM), m.WidthM);
            yield return new Entity.Polyline(box.Corners(), true) { Role = Role.Beyond, Source = m.Line.Id };
        }
    }

    // Where no mark of a girt may stand.
    private static List<Box> Taken(BuildingForm b, FaceName face, WallOpening[] holes, IReadOnlyList<WallPost> posts, List<Entity> drawn) =>
    [
        .. holes.Select(h => new Box(h.UM - 0.1, h.VM - 0.1, h.WidthM + 0.2, h.HeightM + 0.2)),
        .. posts.Select(p => new Box(p.UM - 0.06, 0, 0.12, p.TopM)),
        .. drawn.OfType<Entity.Arc>().Select(a => new Box(a.Centre.X - a.Radius, a.Centre.Y - a.Radius, 2 * a.Radius, 2 * a.Radius)),
    ];

    private static bool Stands(MemberSolid m, FaceName face) => m.Line.Role is MemberRole.Jamb or MemberRole.Header or MemberRole.Sill
        || m.Line.Role == (IsEnd(face) ? MemberRole.EndPost : MemberRole.Column);

    /// <summary>What stands in a hole, by its outline and sign.</summary>
    public static IEnumerable<Entity> Thing(WallOpening t)
    {
        bool pad = t.Label.StartsWith("Wet", StringComparison.Ordinal);
        yield return new Entity.Polyline(new Box(t.UM, t.VM, t.WidthM, t.HeightM).Corners(), true)
        {
            Role = t.IsDoor ? Role.Visible : Role.Equipment,
            Source = t.Id,
            Pen = pad ? new Pen(0.35, [2, 0.8], Paint.Of(Tone.Water)) : null,
        };
        if (!t.IsDoor && (t.Label.StartsWith("Fan", StringComparison.Ordinal) || t.Label.StartsWith("Upper fan", StringComparison.Ordinal)))
        {
            yield return new Entity.Arc(new(t.UM + t.WidthM / 2, t.VM + t.HeightM / 2), 0.43 * Math.Min(t.WidthM, t.HeightM)) { Role = Role.Equipment, Source = t.Id };
        }
    }

    /// <summary>A number in each hole, where it covers no edge and no other number if there is such a place.</summary>
    private static IEnumerable<Entity> Numbers(IReadOnlyList<WallGroup> groups, WallOpening[] holes, Box[] sticks, double mmPerM)
    {
        List<Box> taken = [];
        foreach (WallGroup group in groups)
        {
            string text = group.Number.ToString(CultureInfo.InvariantCulture);
            double wideM = (Lettering.WidthMm(text, Face.SemiBold, Lettered.SmallestMm) + 2) / mmPerM;
            double highM = (Lettered.SmallestMm + 2) / mmPerM;
            foreach (WallOpening hole in group.Members)
            {
                Spot best = new(hole.UM + hole.WidthM / 2, hole.VM + hole.HeightM / 2);
                double least = double.PositiveInfinity;
                foreach (double across in (double[])[0.5, 0.3, 0.7, 0.1, 0.9, 0.03, 0.97])
                {
                    foreach (double up in (double[])[0.5, 0.3, 0.7, 0.15, 0.85, 0.04, 0.96])
                    {
                        Spot at = new(hole.UM + across * hole.WidthM, hole.VM + up * hole.HeightM);
                        Box box = new(at.X - wideM / 2, at.Y - highM / 2, wideM, highM);
                        double cost = Math.Abs(across - 0.5) + Math.Abs(up - 0.5)
                            + 100 * taken.Count(o => Meets(o, box))
                            + 4 * sticks.Count(s => Meets(s, box))
                            + 10 * holes.Count(h => Crosses(new Box(h.UM, h.VM, h.WidthM, h.HeightM), box))
                            + 20 * holes.Count(h => h != hole && h.Label != hole.Label && Holds(h, at) && !Encloses(h, hole));
                        if (cost < least - 1e-9)
                        {
                            (best, least) = (at, cost);
                        }
                    }
                }

                taken.Add(new Box(best.X - wideM / 2, best.Y - highM / 2, wideM, highM));
                yield return new Entity.Label(best, text)
                {
                    Role = Role.Text,
                    Along = Along.Middle,
                    Across = Across.Middle,
                    Face = Face.SemiBold,
                    Masked = true,
                    Source = hole.Id,
                };
            }
        }
    }

    private static bool Holds(WallOpening h, Spot p) => p.X > h.UM && p.X < h.UM + h.WidthM && p.Y > h.VM && p.Y < h.VM + h.HeightM;

    private static bool Encloses(WallOpening outer, WallOpening inner) =>
        outer.UM <= inner.UM + 1e-6 && outer.UM + outer.WidthM >= inner.UM + inner.WidthM - 1e-6 && outer.VM <= inner.VM + 1e-6 && outer.VM + outer.HeightM >= inner.VM + inner.HeightM - 1e-6;

    private static bool Meets(Box a, Box b) => a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;

    // An edge of the frame runs through the box.
    private static bool Crosses(Box frame, Box box) =>
        Meets(frame, box) && !(box.Left > frame.Left && box.Right < frame.Right && box.Top > frame.Top && box.Bottom < frame.Bottom);
}
