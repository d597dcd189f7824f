using Glazewright.Design.Body;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Framing;

/// <summary>Framing of the holes in a house's walls: always preliminary.</summary>
/// <param name="House">House id.</param>
/// <param name="Members">All members of the house: posts and girts cut where holes are, headers, sills and jambs added.</param>
/// <param name="Openings">What frames each hole.</param>
/// <param name="Checks">Each header, sill, jamb, post and stub.</param>
/// <param name="Report">Figures and findings.</param>
public sealed record FramingResult(
    string House, EqList<MemberSolid> Members, EqList<FramedOpening> Openings, EqList<OpeningCheck> Checks, StageReport Report);

/// <summary>What frames a hole: ids of members.</summary>
/// <param name="Id">Id of the hole in its wall's list.</param>
/// <param name="Face">Wall.</param>
/// <param name="Header">Header.</param>
/// <param name="Sill">Sill; empty for a door.</param>
/// <param name="LeftJamb">Nearer jamb: a jamb, or the post or column that serves as one.</param>
/// <param name="RightJamb">The other.</param>
public sealed record FramedOpening(string Id, FaceName Face, string Header, string Sill, string LeftJamb, string RightJamb);

/// <summary>Check of one stick of a wall.</summary>
/// <param name="Id">Member.</param>
/// <param name="Role">Role.</param>
/// <param name="Face">Wall.</param>
/// <param name="Section">Tube.</param>
/// <param name="SpanM">Simple span, m.</param>
/// <param name="WindPa">Wind on its own area, Pa.</param>
/// <param name="Combination">Governing combination.</param>
/// <param name="StrengthFraction">Demand over strength.</param>
/// <param name="DeflectionFraction">Deflection over its limit.</param>
/// <param name="Clause">Check, with clause.</param>
public sealed record OpeningCheck(
    string Id, MemberRole Role, FaceName Face, string Section, double SpanM, double WindPa, string Combination, double StrengthFraction, double DeflectionFraction, string Clause)
{
    /// <summary>The larger of strength and deflection.</summary>
    public double UseFraction => Math.Max(StrengthFraction, DeflectionFraction);
}
