using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;

namespace Glazewright.Design.Body;

/// <summary>Body: gives every centre line its section and cut length.</summary>
public static class BodyStage
{
    /// <summary>Raise when results change.</summary>
    public const int Version = 2;

    private const double DegPerRad = 180 / Math.PI;

    /// <summary>Builds the members.</summary>
    /// <param name="form">Shapes.</param>
    /// <param name="frames">Frame results of the houses.</param>
    /// <returns>Members with sections and cut lengths.</returns>
    /// <exception cref="ArgumentException">A house without a frame result, or a frame without a rafter, column or purlin section.</exception>
    public static BodyResult Run(FormResult form, EqList<FrameResult> frames)
    {
        List<MemberSolid> members = [];
        List<Figure> figures = [];
        foreach (BuildingForm house in form.Buildings.Where(b => b.IsHouse))
        {
            FrameResult frame = frames.FirstOrDefault(f => f.House == house.Id)
                ?? throw new ArgumentException($"No frame result for house '{house.Id}'.", nameof(frames));
            List<MemberSolid> own = [.. house.Members.Select(m => Solid(m, house, frame))];
            members.AddRange(own);
            figures.Add(Figure.Observe(
                $"{house.Id}/body/steel-mass",
                "Frame tube",
                Unit.Kilogram,
                own.Sum(m => m.CutLengthM * m.MassPerM),
                "Sum over all members of cut length times mass per length",
                [],
                "Tube only: no plates, bolts or bracing, no framing of openings",
                new Source.FirstPrinciples("mass of the sections"),
                "Preliminary: sections are not yet reviewed by a licensed engineer."));
        }

        return new BodyResult(
            members.ToEqList(),
            new StageReport(
                figures.ToEqList(),
                [],
                ["Members stand on the dimension lines out to out of steel; connection plates and bracing are not modelled; framing around holes in walls is added when what stands in them is known."]));
    }

    private static MemberSolid Solid(MemberLine line, BuildingForm house, FrameResult frame) => Solid(line, house, frame, SectionOf(line.Role, frame));

    /// <summary>A member cut to its place: an upright of an end wall that reaches the roof ends under the rafter.</summary>
    internal static MemberSolid Solid(MemberLine line, BuildingForm house, FrameResult frame, SectionChoice section)
    {
        SectionChoice rafter = SectionOf(MemberRole.Rafter, frame);
        bool left = line.A.YM - house.Origin.YM < house.Roof.RidgeOffsetM;
        double pitch = left ? house.Roof.LeftPitch : house.Roof.RightPitch;
        double slopeRad = Math.Atan(pitch);
        double underM = rafter.DepthM / Math.Cos(slopeRad);
        (double lengthM, double angleADeg, double angleBDeg) = line.Role switch
        {
            // Under the rafter, cut to its slope; the long point is on the inside face.
            MemberRole.Column => (line.LengthM - underM + section.DepthM * pitch, 0, slopeRad * DegPerRad),

            // Post ends on the underside of the rafter, long point towards the ridge.
            MemberRole.EndPost or MemberRole.Jamb when ReachesRoof(line, house) => (line.LengthM - underM + section.WidthM / 2 * pitch, 0, slopeRad * DegPerRad),

            // Plumb cuts at eave and ridge, measured along the top face.
            MemberRole.Rafter => (line.LengthM, slopeRad * DegPerRad, slopeRad * DegPerRad),

            // Between the undersides of the rafters, each end cut to its slope; the long points are on the lower face.
            MemberRole.CollarTie => (
                line.LengthM - EndLossM(house.Roof.LeftPitch) - EndLossM(house.Roof.RightPitch), 90 - Math.Atan(house.Roof.LeftPitch) * DegPerRad, 90 - Math.Atan(house.Roof.RightPitch) * DegPerRad),
            _ => (line.LengthM, 0, 0),
        };
        // The rafter's underside lies this far inside the roof line at the tie's lower face.
        double EndLossM(double roofPitch) => ((rafter.DepthM * Math.Sqrt(1 + (roofPitch * roofPitch))) - (section.DepthM / 2)) / roofPitch;

        return new MemberSolid(
            line, house.Id, section.Section, section.DepthM, section.WidthM, section.WallM, section.MassPerM, lengthM, angleADeg, angleBDeg);
    }

    /// <summary>Whether an upright ends at the roof line, not under a sill.</summary>
    internal static bool ReachesRoof(MemberLine line, BuildingForm house) =>
        line.B.ZM > house.Roof.HeightM((line.B - house.Origin).Dot(house.AlongY), house.WidthM) - 0.02;

    // Roles the frame stage does not size take the section of their nearest kin.
    private static SectionChoice SectionOf(MemberRole role, FrameResult frame) =>
        frame.Section(role)
        ?? frame.Section(role switch
        {
            MemberRole.CollarTie => MemberRole.Rafter,
            MemberRole.EndPost => MemberRole.Column,
            MemberRole.Girt or MemberRole.Ridge or MemberRole.Eave => MemberRole.Purlin,
            _ => MemberRole.Purlin,
        })
        ?? throw new ArgumentException($"House '{frame.House}' has no section for {role}.", nameof(frame));
}
