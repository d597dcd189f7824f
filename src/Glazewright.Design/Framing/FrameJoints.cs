using Glazewright.Design.Body;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;

namespace Glazewright.Design.Framing;

/// <summary>What kind of joint it is: takeoff prices by it.</summary>
public enum JointKind
{
    /// <summary>Two rafters at the ridge.</summary>
    Ridge,

    /// <summary>Column and rafter at an eave.</summary>
    Eave,

    /// <summary>Collar tie and rafter.</summary>
    Tie,

    /// <summary>Purlin, girt, ridge or eave member on a frame.</summary>
    Clip,

    /// <summary>Foot of a column, post or jamb on its pier.</summary>
    Base,

    /// <summary>End of a header, sill, jamb or post that does not stand on a pier.</summary>
    Opening,
}

/// <summary>A place where members meet. Counted and placed, not designed.</summary>
/// <param name="Id">Path id.</param>
/// <param name="Kind">What kind.</param>
/// <param name="At">Where the members' lines meet, range axes, m.</param>
/// <param name="Member">The member that is joined.</param>
/// <param name="To">What it is joined to; empty at a base, whose other side is the pier.</param>
public sealed record FrameJoint(string Id, JointKind Kind, Point3 At, string Member, string To);

/// <summary>A bay crossed by two rods. Supposed, not designed.</summary>
/// <param name="Id">Path id.</param>
/// <param name="Face">Wall or roof side.</param>
/// <param name="Rods">Both rods from end to end, range axes.</param>
public sealed record BracedBay(string Id, FaceName Face, EqList<RodLine> Rods);

/// <summary>A rod.</summary>
/// <param name="From">Lower end, m.</param>
/// <param name="To">Upper end, m.</param>
/// <param name="FromMember">Column or rafter at its lower end.</param>
/// <param name="ToMember">Column or rafter at its upper end.</param>
public sealed record RodLine(Point3 From, Point3 To, string FromMember, string ToMember)
{
    /// <summary>Its length, m.</summary>
    public double LengthM => (To - From).LengthM;
}

/// <summary>Joints and rod bracing of a house, as takeoff counts them, details tell them and the building model has them.</summary>
public static class FrameJoints
{
    private const double NearM = 1e-6;

    /// <summary>Joints of a house.</summary>
    /// <param name="house">Its shape.</param>
    /// <param name="members">Members of all houses, holes framed.</param>
    /// <returns>Frame by frame, then clips, bases and the joints of openings.</returns>
    public static EqList<FrameJoint> Of(BuildingForm house, EqList<MemberSolid> members)
    {
        ArgumentNullException.ThrowIfNull(house);
        ArgumentNullException.ThrowIfNull(members);
        MemberSolid[] own = [.. members.Where(m => m.House == house.Id)];
        Dictionary<string, MemberSolid> byId = own.ToDictionary(m => m.Line.Id);
        List<FrameJoint> joints = [];
        for (int i = 0; i < house.FrameLinesXM.Count; i++)
        {
            string frame = FormattableString.Invariant($"{house.Id}/frame-{i + 1:00}");
            if (!byId.TryGetValue($"{frame}/rafter-left", out MemberSolid? left) || !byId.TryGetValue($"{frame}/rafter-right", out MemberSolid? right))
            {
                continue;
            }

            joints.Add(new FrameJoint($"{frame}/ridge-joint", JointKind.Ridge, left.Line.B, left.Line.Id, right.Line.Id));
            joints.Add(new FrameJoint($"{frame}/eave-joint-left", JointKind.Eave, left.Line.A, left.Line.Id, $"{frame}/column-left"));
            joints.Add(new FrameJoint($"{frame}/eave-joint-right", JointKind.Eave, right.Line.A, right.Line.Id, $"{frame}/column-right"));
            if (byId.TryGetValue($"{frame}/collar-tie", out MemberSolid? tie))
            {
                joints.Add(new FrameJoint($"{frame}/tie-joint-left", JointKind.Tie, tie.Line.A, tie.Line.Id, left.Line.Id));
                joints.Add(new FrameJoint($"{frame}/tie-joint-right", JointKind.Tie, tie.Line.B, tie.Line.Id, right.Line.Id));
            }
        }

        joints.AddRange(Clips(house, own));
        joints.AddRange(own.Where(PierPlan.HasFoot).Select(m => new FrameJoint($"{m.Line.Id}/base", JointKind.Base, m.Line.A, m.Line.Id, "")));
        joints.AddRange(Openings(own));
        return joints.ToEqList();
    }

    /// <summary>Rod-braced bays of a house: two a side in walls and roof, or as many as no opening stands in the wall of.</summary>
    /// <param name="house">Its shape.</param>
    public static EqList<BracedBay> Braced(BuildingForm house)
    {
        ArgumentNullException.ThrowIfNull(house);
        MemberLine[] frames = [.. house.Members.Where(m => m.Role is MemberRole.Column or MemberRole.Rafter)];
        List<BracedBay> bays = [];

        // Rods of a roof side stand over those of its wall, so that what they carry goes on down.
        foreach ((FaceName face, FaceName wall) in ((FaceName, FaceName)[])[
            (FaceName.Left, FaceName.Left), (FaceName.Right, FaceName.Right), (FaceName.RoofLeft, FaceName.Left), (FaceName.RoofRight, FaceName.Right)])
        {
            FacePlane plane = house.Face(face).Plane;
            double highM = house.Face(face).Outline.Max(p => p.VM);
            int n = 0;
            foreach (Bay bay in BracedBays.On(house, wall))
            {
                bays.Add(new BracedBay(
                    FormattableString.Invariant($"{house.Face(face).Id}/braced-bay-{++n}"), face,
                    [
                        Rod(plane.At(new Point2(bay.FromM, 0)), plane.At(new Point2(bay.ToM, highM))),
                        Rod(plane.At(new Point2(bay.ToM, 0)), plane.At(new Point2(bay.FromM, highM))),
                    ]));
            }
        }

        return bays.ToEqList();

        RodLine Rod(Point3 from, Point3 to) => new(from, to, Nearest(from), Nearest(to));
        string Nearest(Point3 at) => frames.MinBy(m => Away(m, at))?.Id ?? "";
    }

    // A member along is clipped to each frame that it crosses or ends at; pieces that meet at a frame share its clip.
    private static IEnumerable<FrameJoint> Clips(BuildingForm house, MemberSolid[] own)
    {
        ILookup<double, MemberSolid> frames = own.Where(m => m.Line.Role is MemberRole.Column or MemberRole.Rafter).ToLookup(m => Math.Round((m.Line.A - house.Origin).Dot(house.AlongX), 6));
        foreach (MemberSolid girt in own.Where(m => m.Line.Role == MemberRole.Girt && To(m) - From(m) < NearM))
        {
            // A girt of an end wall: at both ends, to the upright or rafter there.
            MemberSolid[] near = [.. own.Where(m => m.Line.Role is MemberRole.Column or MemberRole.Rafter or MemberRole.EndPost or MemberRole.Jamb)];
            yield return new FrameJoint(girt.Line.Id + "/clip-start", JointKind.Clip, girt.Line.A, girt.Line.Id, near.MinBy(m => Away(m.Line, girt.Line.A))?.Line.Id ?? "");
            yield return new FrameJoint(girt.Line.Id + "/clip-end", JointKind.Clip, girt.Line.B, girt.Line.Id, near.MinBy(m => Away(m.Line, girt.Line.B))?.Line.Id ?? "");
        }

        foreach (var line in own.Where(m => m.Line.Role is MemberRole.Purlin or MemberRole.Girt or MemberRole.Eave or MemberRole.Ridge && To(m) - From(m) >= NearM)
            .GroupBy(m => (m.Line.Role, Y: Math.Round((m.Line.A - house.Origin).Dot(house.AlongY), 6), Z: Math.Round(m.Line.A.ZM, 6))))
        {
            for (int i = 0; i < house.FrameLinesXM.Count; i++)
            {
                double x = house.FrameLinesXM[i];
                MemberSolid? piece = line.FirstOrDefault(m => From(m) <= x + NearM && To(m) >= x - NearM);
                Point3 at = piece is null ? default : piece.Line.A + (x - From(piece)) * house.AlongX;
                MemberSolid? on = piece is null ? null : frames[Math.Round(x, 6)].MinBy(m => Away(m.Line, at));
                if (piece is not null && on is not null)
                {
                    yield return new FrameJoint(FormattableString.Invariant($"{piece.Line.Id}/clip-{i + 1:00}"), JointKind.Clip, at, piece.Line.Id, on.Line.Id);
                }
            }
        }

        double From(MemberSolid m) => Math.Min((m.Line.A - house.Origin).Dot(house.AlongX), (m.Line.B - house.Origin).Dot(house.AlongX));
        double To(MemberSolid m) => Math.Max((m.Line.A - house.Origin).Dot(house.AlongX), (m.Line.B - house.Origin).Dot(house.AlongX));
    }

    private static IEnumerable<FrameJoint> Openings(MemberSolid[] own)
    {
        foreach (MemberSolid m in own)
        {
            bool level = m.Line.Role is MemberRole.Header or MemberRole.Sill;
            bool upright = m.Line.Role is MemberRole.Jamb or MemberRole.EndPost;
            if (level || (upright && !PierPlan.HasFoot(m)))
            {
                yield return Joint(m, m.Line.A, "start");
            }

            if (level || upright)
            {
                yield return Joint(m, m.Line.B, "end");
            }
        }

        // Joined to whichever other member's line passes nearest.
        FrameJoint Joint(MemberSolid m, Point3 at, string end) => new(
            $"{m.Line.Id}/joint-{end}", JointKind.Opening, at, m.Line.Id, own.Where(o => o.Line.Id != m.Line.Id).MinBy(o => Away(o.Line, at))?.Line.Id ?? "");
    }

    private static double Away(MemberLine line, Point3 p)
    {
        Point3 along = line.B - line.A;
        double square = along.Dot(along);
        double t = square > 0 ? Math.Clamp((p - line.A).Dot(along) / square, 0, 1) : 0;
        return (p - (line.A + t * along)).LengthM;
    }
}
