using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Mechanics.Sections;

namespace Glazewright.Design.Framing;

/// <summary>What the people of the job must hear about the framing of openings.</summary>
internal static class FramingFindings
{
    private static readonly Source Doors = new Source.CommonPractice("room for large doors");
    private static readonly Source Geometry = new Source.FirstPrinciples("geometry of the wall");

    internal static IEnumerable<Finding> Of(FrameInput input, BuildingForm house, FrameResult frame, IReadOnlyList<(FaceName Face, FramedWall Wall)> walls) =>
        walls.SelectMany(w => (Finding[])[.. Overworked(input, w.Face, w.Wall), .. Room(house, frame, w.Face, w.Wall), .. Columns(house, w.Face, w.Wall), .. LargeDoors(house, frame, w.Face, w.Wall)]);

    private static IEnumerable<Finding> Overworked(FrameInput input, FaceName face, FramedWall wall)
    {
        for (int i = 0; i < wall.Uses.Count; i++)
        {
            Stick s = wall.Grid.Sticks[i];
            if (wall.Uses[i] is not { Use: > 1 } use)
            {
                continue;
            }

            string how = Text($"{use.Section.Name} over {FrameWords.Feet(use.SpanM)} is used {100 * use.Use:0} % ({(use.DeflectionUse > use.StrengthUse ? "deflection" : "strength")})");
            bool post = s.Kind is StickKind.Post or StickKind.Stub;
            TubeSection? enough = post
                ? StickCheck.List.FirstOrDefault(t => StickCheck.Of(input, FrameLoadSite.EditionOf(input.Snow.Edition), s, t, use.Demand).Use <= 1)
                : null;
            yield return post
                ? new Finding(
                    "framing/post-overworked", Severity.Miss, s.Id, $"The post is not enough for wind on {Word(face)} and what leans on it: {how}.",
                    (enough is null ? "No tube of the list is enough for it: more posts" : $"As a post of its own {enough.Name} would do; else more posts") + ", a stronger column section (posts take the columns'), or openings elsewhere.",
                    FramingWorkings.Aisc)
                : new Finding(
                    "framing/overworked", Severity.Miss, s.Id, $"No tube of the list is enough for this {FramedMembers.Role(s.Kind).ToString().ToLowerInvariant()} of {Word(face)}: {how}.",
                    "A narrower opening, one that cuts fewer posts, a post between, or a section from the engineer.", FramingWorkings.Aisc);
        }
    }

    // Jambs, headers and sills that run into holes, and headers into the rafter.
    private static IEnumerable<Finding> Room(BuildingForm house, FrameResult frame, FaceName face, FramedWall wall)
    {
        HashSet<(string, string)> told = [];
        for (int i = 0; i < wall.Uses.Count; i++)
        {
            Stick s = wall.Grid.Sticks[i];
            if (wall.Uses[i] is not { } use || s.Kind is StickKind.Post or StickKind.Stub)
            {
                continue;
            }

            (double from, double to) = FramedMembers.Cut(wall, s);
            double half = ((TubeShape.Rectangular)use.Section.Shape).WidthM / 2;
            double middle = s.IsUpright ? s.AtM : FramedMembers.MiddleVM(s, use);
            for (int h = 0; h < wall.Wall.Holes.Count; h++)
            {
                WallHole hole = wall.Wall.Holes[h];
                (double u0, double u1, double v0, double v1) = s.IsUpright ? (middle - half, middle + half, from, to) : (from, to, middle - half, middle + half);
                bool meets = u0 < hole.ToUM - 0.003 && u1 > hole.FromUM + 0.003 && v0 < hole.HeadVM - 0.003 && v1 > hole.FootVM + 0.003;
                if (meets && s.Hole >= 0 && told.Add((wall.Wall.Holes[s.Hole].Id, hole.Id)))
                {
                    yield return new Finding(
                        "framing/no-room", Severity.Miss, hole.Id,
                        $"The {FramedMembers.Role(s.Kind).ToString().ToLowerInvariant()} of {wall.Wall.Holes[s.Hole].Id} ({use.Section.Name}) stands in this opening of {Word(face)}.",
                        Text($"Openings further apart: {FrameWords.Feet(4 * half)} from edge to edge leave room for a jamb of each."), Geometry);
                }
            }

            if (s.Kind == StickKind.Header && UnderRoofM(house, frame, face, wall, from, to) is var underM && middle + half > underM + 0.003)
            {
                yield return new Finding(
                    "framing/header-in-roof", Severity.Miss, s.Id,
                    Text($"The header of {wall.Wall.Holes[s.Hole].Id} reaches {FrameWords.Feet(middle + half)} up {Word(face)}; under the {(face is FaceName.End1 or FaceName.End2 ? "rafter" : "eave member")} there is room to {FrameWords.Feet(underM)}."),
                    "A lower opening, a place nearer the ridge, or a higher eave.", Geometry);
            }
        }
    }

    private static double UnderRoofM(BuildingForm house, FrameResult frame, FaceName face, FramedWall wall, double from, double to)
    {
        double pitch = Math.Max(house.Roof.LeftPitch, house.Roof.RightPitch);
        double deepM = face is FaceName.End1 or FaceName.End2
            ? (frame.Section(MemberRole.Rafter)?.DepthM ?? 0) * Math.Sqrt(1 + (pitch * pitch))
            : frame.Section(MemberRole.Purlin)?.DepthM ?? 0;
        return Math.Min(wall.Wall.TopM(from), wall.Wall.TopM(to)) - deepM;
    }

    private static IEnumerable<Finding> Columns(BuildingForm house, FaceName face, FramedWall wall)
    {
        if (face is FaceName.End1 or FaceName.End2)
        {
            yield break;
        }

        foreach (Opening door in house.Face(face).Openings.Select(o => o.Opening).Where(o => o.Kind.IsDoor()))
        {
            int columns = wall.Wall.Uprights.Count(u => u.IsColumn && u.UM + u.WidthM / 2 > door.OffsetM + 0.001 && u.UM - u.WidthM / 2 < door.OffsetM + door.WidthM - 0.001);
            if (columns > 0)
            {
                yield return new Finding(
                    "framing/column-in-opening", Severity.Miss, $"{house.Face(face).Id}/{door.Id}",
                    Text($"{(columns == 1 ? "A column" : Text($"{columns} columns"))} of the frame {(columns == 1 ? "stands" : "stand")} in this opening of {Word(face)}: a frame cannot be cut by a header."),
                    "Move it between two frames, make it narrower or the bays wider, or put it in an end wall.", Geometry);
            }
        }
    }

    // The coil of a roll-up door wants room under the roof, the leaf of a sliding door wall beside it.
    private static IEnumerable<Finding> LargeDoors(BuildingForm house, FrameResult frame, FaceName face, FramedWall wall)
    {
        foreach (WallHole hole in wall.Wall.Holes)
        {
            double roomM = UnderRoofM(house, frame, face, wall, hole.FromUM, hole.ToUM) - hole.HeadVM;
            if (hole.CoilM > 0 && roomM < hole.CoilM - 0.003)
            {
                yield return new Finding(
                    "framing/no-room-for-coil", Severity.Miss, hole.Id,
                    Text($"The coil of this roll-up door wants about {FrameWords.Feet(hole.CoilM)} over its head; there {(roomM > 0 ? Text($"are {FrameWords.Feet(roomM)}") : "is none")} under the roof of {Word(face)}."),
                    "A lower door, a place nearer the ridge, a higher eave, or a sliding door.", Doors);
            }

            bool Free(double from, double to) => from >= 0 && to <= wall.Wall.LengthM
                && !wall.Wall.Holes.Any(o => o != hole && o.Spans(from, to) && o.FootVM < hole.HeadVM && o.HeadVM > hole.FootVM);
            if (hole.AsideM > 0 && !Free(hole.FromUM - hole.AsideM, hole.FromUM) && !Free(hole.ToUM, hole.ToUM + hole.AsideM))
            {
                yield return new Finding(
                    "framing/no-room-to-slide", Severity.Miss, hole.Id,
                    Text($"This sliding door wants {FrameWords.Feet(hole.AsideM)} of free wall beside it; {Word(face)} has it on neither side."),
                    "Another place along the wall, a narrower door, or a roll-up door.", Doors);
            }
        }
    }

    private static string Word(FaceName face) => face switch
    {
        FaceName.End1 => "end 1",
        FaceName.End2 => "end 2",
        FaceName.Left => "the left wall",
        _ => "the right wall",
    };

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
