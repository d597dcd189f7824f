using Glazewright.Design.Body;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Takeoff;

namespace Glazewright.Papers.Solids;

/// <summary>Finds a member's shop mark: the one of its section, its saw angles and its length.</summary>
internal sealed class MarkFinder(EqList<ShopMark> marks)
{
    // Lengths of marks are rounded to the shop's steps, 1/16 in or 1 mm.
    private const double StepM = 0.0011;

    private readonly ILookup<(string, double, double), ShopMark> _marks = marks.ToLookup(m => (m.Section, m.AngleADeg, m.AngleBDeg));

    /// <summary>The mark; empty when none fits.</summary>
    public string Of(MemberSolid member)
    {
        double a = Math.Round(member.AngleADeg, 1);
        double b = Math.Round(member.AngleBDeg, 1);
        (double small, double large) = a <= b ? (a, b) : (b, a);
        string letter = large == 0 ? "" : member.Line.Role switch
        {
            MemberRole.Column => "C",
            MemberRole.EndPost => "E",
            MemberRole.Rafter => "R",
            MemberRole.CollarTie => "T",
            MemberRole.Jamb => "J",
            MemberRole.Header or MemberRole.Sill => "H",
            _ => "L",
        };
        return _marks[(member.Section, small, large)]
            .Where(m => m.Mark.StartsWith(letter, StringComparison.Ordinal) && Math.Abs(m.LengthM - member.CutLengthM) < StepM)
            .MinBy(m => Math.Abs(m.LengthM - member.CutLengthM))?.Mark ?? "";
    }
}
