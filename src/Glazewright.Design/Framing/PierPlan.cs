using Glazewright.Design.Body;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Framing;

/// <summary>A pier.</summary>
/// <param name="Mark">F1 under columns, F2 under end posts, F3 under jambs.</param>
/// <param name="Member">The member it stands under.</param>
/// <param name="Foot">Foot of that member, range axes.</param>
public sealed record Pier(string Mark, string Member, Point3 Foot);

/// <summary>
/// Piers of a house: one under each column and post that stands on the ground, and under each jamb that does not stand on another's: within its pier, 3 in from its
/// edge. All have the size the job gives.
/// </summary>
public static class PierPlan
{
    private const double EdgeM = 0.0762;
    private const double GroundM = 0.01;

    /// <summary>Whether a member stands on the ground.</summary>
    /// <param name="member">The member.</param>
    public static bool HasFoot(MemberSolid member)
    {
        ArgumentNullException.ThrowIfNull(member);
        return member.Line.Role is MemberRole.Column or MemberRole.EndPost or MemberRole.Jamb && member.Line.A.ZM < GroundM;
    }

    /// <summary>Piers of a house.</summary>
    /// <param name="house">House id.</param>
    /// <param name="members">Members of all houses with their holes framed.</param>
    /// <param name="diameterM">Diameter, m; 0 gives each foot its own.</param>
    /// <returns>Columns' piers, then posts', then jambs'.</returns>
    public static EqList<Pier> Of(string house, EqList<MemberSolid> members, double diameterM)
    {
        List<Pier> piers = [];
        foreach (MemberSolid m in members.Where(m => m.House == house && HasFoot(m)).OrderBy(m => m.Line.Role == MemberRole.Column ? 0 : m.Line.Role == MemberRole.EndPost ? 1 : 2))
        {
            bool jamb = m.Line.Role == MemberRole.Jamb;
            double reachM = diameterM / 2 - EdgeM - m.WidthM / 2;
            if (!jamb || !piers.Exists(p => (p.Foot - m.Line.A).LengthM < reachM))
            {
                piers.Add(new Pier(jamb ? "F3" : m.Line.Role == MemberRole.Column ? "F1" : "F2", m.Line.Id, m.Line.A));
            }
        }

        return piers.ToEqList();
    }
}
