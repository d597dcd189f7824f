using Glazewright.Design.Body;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Mechanics.Sections;

namespace Glazewright.Design.Framing;

/// <summary>Members of a house with its holes framed.</summary>
internal static class FramedMembers
{
    private const double LeastPieceM = 0.1;

    internal static MemberRole Role(StickKind kind) => kind switch
    {
        StickKind.Jamb => MemberRole.Jamb,
        StickKind.Header => MemberRole.Header,
        StickKind.Sill => MemberRole.Sill,
        StickKind.Column => MemberRole.Column,
        _ => MemberRole.EndPost,
    };

    internal static IEnumerable<MemberSolid> Of(BuildingForm house, FrameResult frame, IReadOnlyList<MemberSolid> before, IReadOnlyList<(FaceName Face, FramedWall Wall)> walls)
    {
        HashSet<string> cut = [.. walls.SelectMany(w => w.Wall.Wall.Holes).SelectMany(h => h.PostsCut)];
        foreach (MemberSolid m in before.Where(m => !cut.Contains(m.Line.Id)))
        {
            (FaceName Face, FramedWall Wall) wall = walls.FirstOrDefault(w => w.Wall is not null && m.Line.Role == MemberRole.Girt && On(m.Line, house.Face(w.Face).Plane));
            foreach (MemberSolid piece in wall.Wall is null ? [m] : Girt(m, house, frame, house.Face(wall.Face).Plane, wall.Wall))
            {
                yield return piece;
            }
        }

        foreach ((FaceName face, FramedWall wall) in walls)
        {
            FacePlane plane = house.Face(face).Plane;
            for (int i = 0; i < wall.Grid.Sticks.Count; i++)
            {
                Stick s = wall.Grid.Sticks[i];
                if (wall.Uses[i] is { } use && s.Kind != StickKind.Post)
                {
                    yield return Solid(house, frame, plane, wall, s, use);
                }
            }
        }
    }

    /// <summary>Where a stick really begins and ends: at the faces of what it leans on.</summary>
    internal static (double FromM, double ToM) Cut(FramedWall wall, Stick s)
    {
        IReadOnlyList<Stick> sticks = wall.Grid.Sticks;
        double Across(int on) => wall.Uses[on] is { } u ? ((TubeShape.Rectangular)u.Section.Shape).WidthM : 0;
        return s.IsUpright
            ? (s.FromM + (s.StartOn >= 0 && sticks[s.StartOn].Kind == StickKind.Header ? Across(s.StartOn) : 0),
               s.ToM - (s.EndOn >= 0 && sticks[s.EndOn].Kind == StickKind.Sill ? Across(s.EndOn) : 0))
            : (s.FromM + sticks[s.StartOn].WidthM / 2, s.ToM - sticks[s.EndOn].WidthM / 2);
    }

    /// <summary>Middle of a horizontal: headers lie over their hole, sills under it.</summary>
    internal static double MiddleVM(Stick s, StickUse use) =>
        s.AtM + (s.Kind == StickKind.Header ? 0.5 : -0.5) * ((TubeShape.Rectangular)use.Section.Shape).WidthM;

    private static MemberSolid Solid(BuildingForm house, FrameResult frame, FacePlane plane, FramedWall wall, Stick s, StickUse use)
    {
        (double from, double to) = Cut(wall, s);

        // Jambs of a side wall end under the eave member.
        if (s.IsUpright && s.EndOn < 0 && plane.Normal.Dot(house.AlongY) is > 0.5 or < -0.5)
        {
            to -= frame.Section(MemberRole.Purlin)?.DepthM ?? 0;
        }

        (Point3 a, Point3 b) = s.IsUpright
            ? (plane.At(new(s.AtM, from)), plane.At(new(s.AtM, to)))
            : (plane.At(new(from, MiddleVM(s, use))), plane.At(new(to, MiddleVM(s, use))));
        var shape = (TubeShape.Rectangular)use.Section.Shape;
        SectionChoice section = new(
            Role(s.Kind), use.Section.Name, shape.DepthM, shape.WidthM, TubeNames.OrderedWallM(use.Section), use.Section.MassKgPerM, false, new Answer<double>.Met(use.Use, 0));
        return BodyStage.Solid(new MemberLine(s.Id, Role(s.Kind), a, b), house, frame, section);
    }

    private static bool On(MemberLine line, FacePlane plane) =>
        Math.Abs((line.A - plane.Origin).Dot(plane.Normal)) < 0.05 && Math.Abs((line.B - plane.Origin).Dot(plane.Normal)) < 0.05;

    // A girt ends at the jambs of the holes it would cross, and where it would lie in a header or sill.
    private static IEnumerable<MemberSolid> Girt(MemberSolid girt, BuildingForm house, FrameResult frame, FacePlane plane, FramedWall wall)
    {
        Point2 a = plane.On(girt.Line.A);
        Point2 b = plane.On(girt.Line.B);
        bool turned = a.UM > b.UM;
        (double from, double to) = turned ? (b.UM, a.UM) : (a.UM, b.UM);
        List<(double FromM, double ToM)> gaps = [];
        for (int h = 0; h < wall.Wall.Holes.Count; h++)
        {
            WallHole hole = wall.Wall.Holes[h];
            double low = hole.FootVM - (hole.HasSill ? Wide(wall.Grid.Across(h, false)) : 0);
            double high = hole.HeadVM + Wide(wall.Grid.Across(h, true));
            if (a.VM + girt.WidthM / 2 < low + 0.001 || a.VM - girt.WidthM / 2 > high - 0.001)
            {
                continue;
            }

            bool beside = a.VM > hole.FootVM && a.VM < hole.HeadVM;
            Stick header = wall.Grid.Sticks[wall.Grid.Across(h, true)];
            gaps.Add(beside
                ? (Edge(wall.Grid.Beside[h].Left, -1), Edge(wall.Grid.Beside[h].Right, 1))
                : (header.FromM, header.ToM));
        }

        if (!gaps.Exists(g => g.FromM < to && g.ToM > from))
        {
            return [girt];
        }

        List<MemberSolid> pieces = [];
        double at = from;
        foreach ((double gapFrom, double gapTo) in gaps.Where(g => g.FromM < to && g.ToM > from).OrderBy(g => g.FromM).Append((to, to)))
        {
            if (gapFrom - at > LeastPieceM)
            {
                string id = FormattableString.Invariant($"{girt.Line.Id}/part-{pieces.Count + 1}");
                pieces.Add(BodyStage.Solid(
                    new MemberLine(id, MemberRole.Girt, plane.At(new(at, a.VM)), plane.At(new(gapFrom, a.VM))), house, frame, frame.Section(MemberRole.Girt) ?? frame.Section(MemberRole.Purlin)!));
            }

            at = Math.Max(at, gapTo);
        }

        return pieces;

        double Wide(int stick) => stick < 0 ? 0 : ((TubeShape.Rectangular)wall.Uses[stick]!.Section.Shape).WidthM;
        double Edge(int stick, int side) => wall.Grid.Sticks[stick].AtM + side * wall.Grid.Sticks[stick].WidthM / 2;
    }
}
