using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Framing;
using Glazewright.Design.Layout;
using Glazewright.Design.Takeoff;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Solids;

/// <summary>
/// The whole range as solids: what building models and pictures in three dimensions are made of. Steel stands inside the faces of Form, as the light stage
/// has it, and the covering outside them.
/// </summary>
/// <param name="Name">Name of the job.</param>
/// <param name="BearingDeg">Bearing of the range's x, clockwise from true north, °.</param>
/// <param name="Buildings">Houses, then link buildings.</param>
public sealed record RangeSolids(string Name, double BearingDeg, EqList<BuildingSolids> Buildings)
{
    /// <summary>The solids of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="form">Shapes.</param>
    /// <param name="body">Members with their sizes.</param>
    /// <param name="layouts">Equipment of each house; a house without one stands empty.</param>
    /// <param name="marks">Shop marks; none leaves members without.</param>
    /// <returns>The solids: the same results give the same solids.</returns>
    public static RangeSolids Of(Job job, FormResult form, BodyResult body, EqList<LayoutResult> layouts, EqList<ShopMark> marks)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(body);
        ArgumentNullException.ThrowIfNull(layouts);
        ArgumentNullException.ThrowIfNull(marks);
        MarkFinder finder = new(marks);
        return new RangeSolids(job.Name, job.Site.RangeBearingDeg, form.Buildings.Select(b => new BuildingSolids(b, Parts(b))
        {
            Joints = b.IsHouse ? FrameJoints.Of(b, body.Members) : [],
            Braced = b.IsHouse ? FrameJoints.Braced(b) : [],
        }).ToEqList());

        EqList<SolidPart> Parts(BuildingForm building)
        {
            House? house = job.Houses.FirstOrDefault(h => h.Id == building.Id);
            LayoutResult layout = layouts.FirstOrDefault(l => l.House == building.Id) ?? new LayoutResult(building.Id, [], 0, StageReport.Empty);
            IReadOnlyList<SolidPart> members = [.. MemberSolids.Of(building, body.Members, finder)];
            return EqList.Create<SolidPart>(
            [
                .. GroundSolids.Of(building, house?.Frame, members),
                .. members,
                .. CoverSolids.Of(building, layout),
                .. EquipmentSolids.Of(building, layout),
            ]);
        }
    }

    /// <summary>The solids of everything the papers are made from.</summary>
    /// <param name="source">What the stages said.</param>
    /// <returns>The solids.</returns>
    public static RangeSolids Of(PaperSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return Of(source.Job, source.Form, source.Body, source.Houses.Select(h => h.Layout).ToEqList(), source.Takeoff.Marks);
    }
}
