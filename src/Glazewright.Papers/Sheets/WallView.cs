using System.Globalization;
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
    private const double JambM = 0.0508;

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
        foreach (WallPost post in posts)
        {
            double wideM = source.Body.Members.FirstOrDefault(m => m.Line.Id == post.Id)?.WidthM ?? 0.1;
            all.AddRange(Post(post, wideM, holes, wallM));
        }

        foreach (WallOpening hole in holes.Where(h => h.Framed))
        {
            all.AddRange(Frame(hole, holes));
        }

        foreach (Bay bay in BracedBays.On(b, face))
        {
            string id = $"{b.Id}/bracing";
            all.Add(new Entity.Polyline([new(bay.FromM, 0), new(bay.ToM, eaveM)]) { Role = Role.Hidden, Source = id });
            all.Add(new Entity.Polyline([new(bay.FromM, eaveM), new(bay.ToM, 0)]) { Role = Role.Hidden, Source = id });
        }

        foreach (PlacedItem box in house.Layout.Placed.Where(p => p.Face == face && p.Kind == PlacedKind.IntakeBox))
        {
            (double u, double wide) = IsEnd(face) ? (box.Corner.YM, box.Size.YM) : (box.Corner.XM, box.Size.XM);
            all.Add(new Entity.Polyline(new Box(u, box.Corner.ZM, wide, box.Size.ZM).Corners(), true) { Role = Role.Hidden, Source = box.Id });
        }

        all.Add(new Entity.Polyline(outline, true) { Role = Role.Visible, Source = $"{b.Id}/{face}" });
        all.Add(new Entity.Polyline([new(-0.4, 0), new(wallM + 0.02, 0)]) { Role = Role.Cut, Source = "ground" });
        foreach (WallOpening hole in holes)
        {
            all.AddRange(Thing(hole));
        }

        Box[] sticks = [.. all.OfType<Entity.Polyline>().Where(e => e.Role == Role.Beyond).Select(e => SitePlan.Bounds(e.Points))];
        all.AddRange(Numbers(groups, holes, sticks, mmPerM));
        double chainMm = 0;
        if (groups.Count > 0)
        {
            all.AddRange(RunningDimensions.Below([0, .. groups.SelectMany(Stations), wallM], mmPerM, style, $"{b.Id}/{face}"));
            chainMm = RunningDimensions.BelowMm;
        }

        all.AddRange(RunningDimensions.Beside(
            [0, .. holes.SelectMany(h => (double[])[h.VM, h.VM + h.HeightM]), .. IsEnd(face) ? [b.Roof.LeftEaveM, b.Roof.RightEaveM, b.Roof.RidgeM] : (double[])[eaveM]],
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

    /// <summary>The pieces of a post that are left between the holes it would stand in.</summary>
    private static IEnumerable<Entity> Post(WallPost post, double wideM, WallOpening[] holes, double wallM)
    {
        double at = 0;
        double middle = Math.Clamp(post.UM, wideM / 2, Math.Max(wallM - wideM / 2, wideM / 2));
        foreach (WallOpening hole in holes.Where(h => h.PostsCut.Contains(post.Id)).OrderBy(h => h.VM))
        {
            if (hole.VM - JambM > at + 0.05)
            {
                yield return Stick(middle, at, hole.VM - JambM);
            }

            at = Math.Max(at, hole.VM + hole.HeightM + JambM);
        }

        if (post.TopM > at + 0.05)
        {
            yield return Stick(middle, at, post.TopM);
        }

        Entity.Polyline Stick(double u, double from, double to) =>
            new(new Box(u - wideM / 2, from, wideM, to - from).Corners(), true) { Role = Role.Beyond, Source = post.Id };
    }

    private static IEnumerable<Entity> Frame(WallOpening hole, WallOpening[] holes)
    {
        string id = hole.Id + "/framing";
        double half = (hole.RoughWidthM - hole.WidthM) / 2;
        double left = hole.UM - half;
        double right = left + hole.RoughWidthM;
        double head = hole.VM + hole.RoughHeightM;
        foreach (double jambM in (double[])[left - JambM, right])
        {
            // A jamb stands on the floor, or on the header of what is below it.
            double foot = holes
                .Where(h => h.Framed && h != hole && h.VM + h.HeightM <= hole.VM + 1e-6 && h.UM - JambM < jambM + JambM - 0.01 && h.UM + h.WidthM + JambM > jambM + 0.01)
                .Select(h => h.VM + h.RoughHeightM + JambM).DefaultIfEmpty(0).Max();
            yield return new Entity.Polyline(new Box(jambM, Math.Min(foot, head - JambM), JambM, head - Math.Min(foot, head - JambM)).Corners(), true) { Role = Role.Beyond, Source = id };
        }

        yield return new Entity.Polyline(new Box(left - JambM, head, hole.RoughWidthM + 2 * JambM, JambM).Corners(), true) { Role = Role.Beyond, Source = id };
        if (hole.VM > 0.05)
        {
            yield return new Entity.Polyline(new Box(left, hole.VM - JambM, hole.RoughWidthM, JambM).Corners(), true) { Role = Role.Beyond, Source = id };
        }
    }

    private static IEnumerable<Entity> Thing(WallOpening t)
    {
        bool pad = t.Label.StartsWith("Wet", StringComparison.Ordinal);
        yield return new Entity.Polyline(new Box(t.UM, t.VM, t.WidthM, t.HeightM).Corners(), true)
        {
            Role = t.IsDoor ? Role.Visible : Role.Equipment,
            Source = t.Id,
            Pen = pad ? new Pen(0.35, [2, 0.8], Paint.Of(Tone.Water)) : null,
        };
        if (!t.IsDoor && t.Label.StartsWith("Fan", StringComparison.Ordinal))
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
