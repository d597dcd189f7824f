using Glazewright.Design.Body;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Design.Layout;
using Glazewright.Mechanics.Sections;

namespace Glazewright.Design.Framing;

/// <summary>Openings: headers, sills and jambs around what stands in the walls, sized by wind and weight; posts and girts cut where holes are.</summary>
public static class FramingStage
{
    /// <summary>Raise when results change.</summary>
    public const int Version = 1;

    internal static readonly FaceName[] Walls = [FaceName.End1, FaceName.End2, FaceName.Left, FaceName.Right];

    /// <summary>Frames the holes of one house.</summary>
    /// <param name="input">What Framing reads of the job.</param>
    /// <param name="house">Its form.</param>
    /// <param name="frame">Its sections.</param>
    /// <param name="body">Members of all houses, before holes.</param>
    /// <param name="layout">What stands in the walls.</param>
    /// <returns>Members, checks, findings.</returns>
    public static FramingResult Run(FramingInput input, BuildingForm house, FrameResult frame, BodyResult body, LayoutResult layout)
    {
        FrameLoadSite site = FrameLoadSite.Of(input.Frame, house);
        MemberSolid[] before = [.. body.Members.Where(m => m.House == house.Id)];
        TubeSection post = TubeNames.Of(before.FirstOrDefault(m => m.Line.Role == MemberRole.EndPost)?.Section ?? before.First(m => m.Line.Role == MemberRole.Column).Section);
        List<(FaceName Face, FramedWall Wall)> walls = [];
        foreach (FaceName face in Walls)
        {
            WallFace wall = HoleList.Of(house, layout, before, face);
            if (wall.Holes.Count > 0 || face is FaceName.End1 or FaceName.End2)
            {
                walls.Add((face, WallSizing.Of(input.Frame, site, wall, house.Face(face).Id, post, FrameLoadSite.WallPa(house, face), Math.Min(house.LengthM, house.WidthM))));
            }
        }

        EqList<MemberSolid> members = FramedMembers.Of(house, frame, before, walls).ToEqList();
        List<FramedOpening> openings = [];
        List<OpeningCheck> checks = [];
        foreach ((FaceName face, FramedWall w) in walls)
        {
            for (int h = 0; h < w.Wall.Holes.Count; h++)
            {
                int sill = w.Grid.Across(h, false);
                openings.Add(new FramedOpening(
                    w.Wall.Holes[h].OpeningId, face, w.Grid.Sticks[w.Grid.Across(h, true)].Id, sill < 0 ? "" : w.Grid.Sticks[sill].Id,
                    w.Grid.Sticks[w.Grid.Beside[h].Left].Id, w.Grid.Sticks[w.Grid.Beside[h].Right].Id));
            }

            for (int i = 0; i < w.Grid.Sticks.Count; i++)
            {
                if (w.Uses[i] is { } u)
                {
                    checks.Add(new OpeningCheck(
                        w.Grid.Sticks[i].Id, FramedMembers.Role(w.Grid.Sticks[i].Kind), face, u.Section.Name, u.SpanM, u.Demand.WindPa, u.Combination, u.StrengthUse, u.DeflectionUse,
                        u.DeflectionUse > u.StrengthUse ? "deflection (simple span)" : "AISC 360-16 E3, F7, G4, H1 (simple span)"));
                }
            }
        }

        return new FramingResult(house.Id, members, openings.ToEqList(), checks.ToEqList(), FramingWorkings.Report(input, house, frame, before, members, walls));
    }
}
