using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Body;

/// <summary>The range as built things: members with their sizes; faces stay as Form made them.</summary>
/// <param name="Members">Every frame member of every house.</param>
/// <param name="Report">Figures and findings.</param>
public sealed record BodyResult(EqList<MemberSolid> Members, StageReport Report);

/// <summary>A member with its section.</summary>
/// <param name="Line">Centre line.</param>
/// <param name="House">House id.</param>
/// <param name="Section">Section name (<c>tube-4x2x0.120</c>).</param>
/// <param name="DepthM">Size in the plane of bending, m.</param>
/// <param name="WidthM">Size across it, m.</param>
/// <param name="WallM">Wall thickness, m.</param>
/// <param name="MassPerM">Mass, kg/m.</param>
/// <param name="CutLengthM">Length to cut, long point to long point, m.</param>
/// <param name="AngleADeg">Saw angle at end A, ° from square.</param>
/// <param name="AngleBDeg">Saw angle at end B, ° from square.</param>
public sealed record MemberSolid(
    MemberLine Line,
    string House,
    string Section,
    double DepthM,
    double WidthM,
    double WallM,
    double MassPerM,
    double CutLengthM,
    double AngleADeg,
    double AngleBDeg);
