using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;

namespace Glazewright.Design.Framing;

/// <summary>Reads a wall and its holes out of form and layout.</summary>
internal static class HoleList
{
    private const double Gravity = 9.80665;
    private const double LeastPartM = 0.1;

    /// <summary>Mass of what stands in a hole, kg/m² of it (common practice, on the heavy side): wet pads with their water, fans with shutter and guard, louvers and vents with their drive.</summary>
    internal const double WetPadKgPerM2 = 100;

    internal const double FanKgPerM2 = 60;

    internal const double LouverKgPerM2 = 30;

    /// <summary>Mass of a door leaf or window, kg/m² (5 psf; common practice).</summary>
    internal const double LeafKgPerM2 = 25;

    /// <summary>Mass of a roll-up door (curtain, coil, brackets) or a sliding leaf with its track, kg/m² (5 psf; common practice where the maker's weight is not given).</summary>
    internal const double HungKgPerM2 = 25;

    /// <summary>Clear height for the coil of a roll-up door over its head, m (18 in; common practice, the maker's drawing governs).</summary>
    private const double CoilM = 0.4572;

    internal static WallFace Of(BuildingForm house, LayoutResult layout, IReadOnlyList<MemberSolid> members, FaceName face)
    {
        Dictionary<string, MemberSolid> byId = members.ToDictionary(m => m.Line.Id);
        return Of(house, layout, face, id => (byId[id].WidthM, byId[id].DepthM));
    }

    /// <summary>Reads a wall with the sizes its posts and columns are given.</summary>
    /// <param name="house">The house.</param>
    /// <param name="layout">What stands in its walls.</param>
    /// <param name="face">The wall.</param>
    /// <param name="size">Width and depth of a post or column by its id, m.</param>
    internal static WallFace Of(BuildingForm house, LayoutResult layout, FaceName face, Func<string, (double WidthM, double DepthM)> size)
    {
        bool end = face is FaceName.End1 or FaceName.End2;
        FacePlane plane = house.Face(face).Plane;
        double lengthM = end ? house.WidthM : house.LengthM;
        List<Upright> uprights =
        [
            .. WallFraming.Posts(house, face).Select(p =>
            {
                // The first and the last frame stand inside the end walls.
                double wideM = size(p.Id).WidthM;
                return new Upright(p.Id, end ? p.UM : Math.Clamp(p.UM, wideM / 2, lengthM - wideM / 2), wideM, !end);
            }),
        ];
        if (end)
        {
            uprights.AddRange(house.Members
                .Where(m => m.Role == MemberRole.Column && Math.Abs((m.A - plane.Origin).Dot(plane.Normal)) < 0.05)
                .Select(m => (m.Id, plane.On(m.A).UM, Deep: size(m.Id).DepthM))
                .Select(m => new Upright(m.Id, Math.Clamp(m.UM, m.Deep / 2, lengthM - m.Deep / 2), m.Deep, true)));
        }

        return new WallFace(lengthM, [.. uprights.OrderBy(u => u.UM)], [.. WallFraming.Openings(house, layout, face).Where(o => o.Framed).SelectMany(o => Between(Hole(house, face, o), uprights))], Line(house, face));
    }

    // Columns of frames cannot be cut: a hole across them is framed bay by bay.
    private static IEnumerable<WallHole> Between(WallHole hole, List<Upright> uprights)
    {
        Upright[] inside = [.. uprights.Where(u => u.IsColumn && hole.Spans(u.UM - u.WidthM / 2, u.UM + u.WidthM / 2)).OrderBy(u => u.UM)];
        double[] edges = [hole.FromUM, .. inside.SelectMany(u => (double[])[u.UM - u.WidthM / 2, u.UM + u.WidthM / 2]), hole.ToUM];
        (double From, double To)[] parts = [.. edges.Chunk(2).Select(e => (e[0], e[1])).Where(e => e.Item2 - e.Item1 > LeastPartM)];
        return inside.Length == 0 || parts.Length == 0
            ? [hole]
            : parts.Select((p, i) =>
            {
                double share = (p.To - p.From) / hole.WidthM;
                return hole with
                {
                    Id = FormattableString.Invariant($"{hole.Id}/bay-{i + 1}"),
                    FromUM = p.From,
                    ToUM = p.To,
                    OnHeaderN = share * hole.OnHeaderN,
                    OnSillN = share * hole.OnSillN,
                };
            });
    }

    /// <summary>What a large door hangs on its header, kg.</summary>
    internal static double HungKg(Opening opening) => opening.HungKg ?? HungKgPerM2 * opening.WidthM * opening.HeightM;

    private static WallHole Hole(BuildingForm house, FaceName face, WallOpening o)
    {
        double fromM = o.UM - (o.RoughWidthM - o.WidthM) / 2;
        double areaM2 = o.WidthM * o.HeightM;
        string id = o.Id.Contains('/', StringComparison.Ordinal) ? o.Id : $"{house.Face(face).Id}/{o.Id}";
        (double sill, double jamb) = o.Label switch
        {
            "Door" => (0, LeafKgPerM2),
            "Double door" => (0, LeafKgPerM2 / 2),
            "Window" => (LeafKgPerM2, 0.0),
            "Vent" => (LouverKgPerM2, 0),
            _ when o.Label.StartsWith("Wet", StringComparison.Ordinal) => (WetPadKgPerM2, 0),
            _ when o.Label.StartsWith("Louver", StringComparison.Ordinal) => (LouverKgPerM2, 0),
            _ => (FanKgPerM2, 0),
        };
        OpeningForm? typed = o.IsDoor ? house.Face(face).Openings.FirstOrDefault(f => f.Opening.Id == o.Id) : null;
        if (typed?.Opening.Kind is OpeningKind.RollUpDoor or OpeningKind.SlidingDoor)
        {
            bool roll = typed.Opening.Kind == OpeningKind.RollUpDoor;
            double hungN = HungKg(typed.Opening) * Gravity;
            return new WallHole(
                id, o.Id, fromM, fromM + o.RoughWidthM, o.VM, o.VM + o.RoughHeightM, roll ? HoleFill.Jambs : HoleFill.HeadAndSill, hungN, 0, 0, o.PostsCut)
            {
                CoilM = roll ? CoilM : 0,
                AsideM = roll ? 0 : o.WidthM,
            };
        }

        return new WallHole(id, o.Id, fromM, fromM + o.RoughWidthM, o.VM, o.VM + o.RoughHeightM, HoleFill.HeadAndSill, 0, sill * areaM2 * Gravity, jamb * areaM2 * Gravity, o.PostsCut);
    }

    // Eave, ridge, eave; a side wall has one height.
    private static Point2[] Line(BuildingForm house, FaceName face)
    {
        RoofProfile roof = house.Roof;
        if (face is FaceName.Left or FaceName.Right)
        {
            double eaveM = face == FaceName.Left ? roof.LeftEaveM : roof.RightEaveM;
            return [new(0, eaveM), new(house.LengthM, eaveM)];
        }

        FacePlane plane = house.Face(face).Plane;
        bool along = plane.U.Dot(house.AlongY) > 0;
        Point2[] points = [new(0, roof.LeftEaveM), new(roof.RidgeOffsetM, roof.RidgeM), new(house.WidthM, roof.RightEaveM)];
        return along ? points : [.. points.Reverse().Select(p => new Point2(house.WidthM - p.UM, p.VM))];
    }
}
