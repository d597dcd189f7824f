using Glazewright.Design.Form;
using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Sheets;

/// <summary>
/// Members of a frame in its plane with their ends as the cut list saws them: rafters plumb at eave and ridge, columns to the slope under the rafter, the tie to
/// the slopes between the rafters.
/// </summary>
internal static class FrameEnds
{
    /// <summary>The outline of a member.</summary>
    /// <param name="b">The house.</param>
    /// <param name="role">Column, rafter or tie; anything else is square.</param>
    /// <param name="from">Its foot or eave, or the left end of a tie, on the frame's line, m.</param>
    /// <param name="to">Its other end, m.</param>
    /// <param name="depthM">Its depth in the plane, m.</param>
    /// <param name="rafterM">Depth of the rafters, m.</param>
    /// <param name="isRight">Of the right half of the frame.</param>
    public static IReadOnlyList<Spot> Ring(BuildingForm b, MemberRole role, Spot from, Spot to, double depthM, double rafterM, bool isRight)
    {
        double pitch = isRight ? b.Roof.RightPitch : b.Roof.LeftPitch;
        switch (role)
        {
            case MemberRole.Rafter:
                Spot down = new(0, -Plumb(rafterM, pitch));
                return [from, to, to + down, from + down];
            case MemberRole.Column:
                double inward = isRight ? -depthM : depthM;
                double outerM = to.Y - Plumb(rafterM, pitch);
                return [from, new(from.X, outerM), new(from.X + inward, outerM + depthM * pitch), from + new Spot(inward, 0)];
            case MemberRole.CollarTie:
                // The rafters' undersides at the tie's upper and lower face.
                double In(double roofPitch, double upM) => (Plumb(rafterM, roofPitch) + upM) / Math.Max(roofPitch, 0.05);
                double half = depthM / 2, mostM = 0.45 * (to.X - from.X);
                Spot At(Spot end, double side, double roofPitch, double upM) => end + new Spot(side * Math.Min(In(roofPitch, upM), mostM), upM);
                return
                [
                    At(from, 1, b.Roof.LeftPitch, -half), At(from, 1, b.Roof.LeftPitch, half), At(to, -1, b.Roof.RightPitch, half), At(to, -1, b.Roof.RightPitch, -half),
                ];
            default:
                return Profile.Band(from, to, isRight ? depthM : -depthM);
        }
    }

    /// <summary>Depth of a sloping tube on a plumb cut, m.</summary>
    public static double Plumb(double depthM, double pitch) => depthM * Math.Sqrt(1 + pitch * pitch);
}
