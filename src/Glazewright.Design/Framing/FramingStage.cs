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
    public const int Version = 2;

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

        List<FramedOpening> openings = [];
        List<OpeningCheck> checks = [];
        List<MemberSolid> girts = [];
        List<Finding> weak = [];
        foreach ((FaceName face, FramedWall w) in walls)
        {
            Girts(input.Frame, site, house, frame, face, w, girts, checks, weak);
        }

        EqList<MemberSolid> members = FramedMembers.Of(house, frame, before, walls).Concat(girts).ToEqList();
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

        return new FramingResult(house.Id, members, openings.ToEqList(), checks.ToEqList(), FramingWorkings.Report(input, house, frame, before, members, walls, checks, weak));
    }

    // One tube a wall, enough for its longest span in the corner zone.
    private static void Girts(
        FrameInput input, FrameLoadSite site, BuildingForm house, FrameResult frame, FaceName face, FramedWall w, List<MemberSolid> members, List<OpeningCheck> checks, List<Finding> weak)
    {
        SectionChoice side = frame.Section(MemberRole.Girt) ?? frame.Section(MemberRole.Purlin)!;
        double pitch = Math.Max(house.Roof.LeftPitch, house.Roof.RightPitch);
        double underM = (frame.Section(MemberRole.Rafter)?.DepthM ?? 0) * Math.Sqrt(1 + pitch * pitch);
        List<EndGirt> girts = EndGirts.Of(
            house, face, w.Wall, w.Grid.Sticks, i => ((TubeShape.Rectangular)w.Uses[i]!.Section.Shape).WidthM, input.Choice.PurlinSpacingM, side.WidthM, underM);
        if (girts.Count == 0)
        {
            return;
        }

        double longM = girts.Max(g => g.SpanM);
        (SpanUse Use, double WindPa) Of(TubeSection s) => SecondaryMembers.Girt(
            input, site, s, input.Choice.PurlinSpacingM, longM, FrameLoadSite.WallPa(house, face), nearCorner: true, $"{house.Face(face).Id}/girt");
        (TubeSection section, SpanUse use) = FrameSizing.Span(input.Choice.PurlinSection, s => Of(s).Use);
        members.AddRange(EndGirts.Members(house, frame, face, girts, section, use));
        EndGirt longest = girts.MaxBy(g => g.SpanM);
        checks.Add(new OpeningCheck(
            longest.Id, MemberRole.Girt, face, section.Name, longM, Of(section).WindPa, use.Combination, use.UseFraction, use.DeflectionUse,
            use.DeflectionUse > use.UseFraction ? "deflection (simple span)"
                : section.Standard == Mechanics.Sections.TubeStandard.Structural ? "AISC 360-16 F7, G4, H1 (simple span)" : "AISI S100 C3, C5 (simple span)"));
        if (Math.Max(use.UseFraction, use.DeflectionUse) > 1)
        {
            weak.Add(new Finding(
                "framing/girt-overworked", Severity.Miss, longest.Id,
                $"The girts of {(face == FaceName.End1 ? "end 1" : "end 2")} are not enough for wind in the corner zone: {section.Name} over {FrameWords.Feet(longM)} is used {(100 * Math.Max(use.UseFraction, use.DeflectionUse)).ToString("0", System.Globalization.CultureInfo.InvariantCulture)} %.",
                "A stronger purlin section, closer girts, or more posts.", FramingWorkings.Aisc));
        }
    }
}
