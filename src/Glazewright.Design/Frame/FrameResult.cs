using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Frame;

/// <summary>A first structural look at one house: always preliminary.</summary>
/// <param name="House">House id.</param>
/// <param name="Sections">Section chosen for each role.</param>
/// <param name="GroundSnowPa">Ground snow, Pa, in its edition.</param>
/// <param name="RoofSnowPa">Sloped-roof snow that governs, Pa on plan.</param>
/// <param name="ThermalFactor">Ct with its reason among the figures.</param>
/// <param name="VelocityPressurePa">qh, Pa.</param>
/// <param name="Checks">Member checks, worst first.</param>
/// <param name="Reactions">Base reactions of a typical frame, extreme values.</param>
/// <param name="NotChecked">What was not checked: stands beside every structural number.</param>
/// <param name="Report">Figures and findings.</param>
public sealed record FrameResult(
    string House,
    EqList<SectionChoice> Sections,
    double GroundSnowPa,
    double RoofSnowPa,
    double ThermalFactor,
    double VelocityPressurePa,
    EqList<MemberCheck> Checks,
    EqList<BaseReaction> Reactions,
    EqList<string> NotChecked,
    StageReport Report)
{
    /// <summary>What a typical frame puts on its bases under each basic load, unfactored: for whoever designs piers and anchors.</summary>
    public EqList<BasicReaction> ByLoad { get; init; } = [];

    /// <summary>The section a role got.</summary>
    /// <param name="role">Role.</param>
    /// <returns>The choice, or null when the role has none.</returns>
    public SectionChoice? Section(MemberRole role) => Sections.FirstOrDefault(s => s.Role == role);
}

/// <summary>Section of one role.</summary>
/// <param name="Role">Role.</param>
/// <param name="Section">Name (<c>tube-4x2x0.120</c>).</param>
/// <param name="DepthM">Size in the plane of bending, m.</param>
/// <param name="WidthM">Size across, m.</param>
/// <param name="WallM">Wall, m.</param>
/// <param name="MassPerM">Mass, kg/m.</param>
/// <param name="Fixed">Typed by the job (true) or sized here.</param>
/// <param name="Answer">Utilisation against one; missed when no section of the list does.</param>
public sealed record SectionChoice(
    MemberRole Role, string Section, double DepthM, double WidthM, double WallM, double MassPerM, bool Fixed, Answer<double> Answer);

/// <summary>One member check.</summary>
/// <param name="Id">Member (<c>A/frame/rafter-left</c>).</param>
/// <param name="Role">Role.</param>
/// <param name="Combination">Governing combination in words of the edition.</param>
/// <param name="Utilisation">Demand over capacity; preliminary.</param>
/// <param name="Clause">Check that governs, with clause.</param>
/// <param name="DeflectionM">Greatest service deflection, m.</param>
/// <param name="DeflectionRatio">Span over deflection.</param>
public sealed record MemberCheck(
    string Id, MemberRole Role, string Combination, double Utilisation, string Clause, double DeflectionM, double DeflectionRatio);

/// <summary>What a typical interior frame puts on its two bases under one basic load: first order, full stiffness, unfactored (snow and wind at the level their edition gives them).</summary>
/// <param name="Load">The load in words.</param>
/// <param name="Sort">D dead, C collateral and crop, Lr roof live, S snow, W wind.</param>
/// <param name="Left">On the left base.</param>
/// <param name="Right">On the right base.</param>
public sealed record BasicReaction(string Load, string Sort, BaseForce Left, BaseForce Right);

/// <summary>What a column puts on its base.</summary>
/// <param name="DownN">Down, N; negative lifts.</param>
/// <param name="AcrossN">Across the house towards the right wall, N.</param>
/// <param name="MomentNm">Clockwise in the section as drawn (left wall on the left), N·m; 0 for a pinned base.</param>
public sealed record BaseForce(double DownN, double AcrossN, double MomentNm);

/// <summary>Extreme reactions at one base.</summary>
/// <param name="Side">Left or right wall.</param>
/// <param name="DownN">Greatest down, N.</param>
/// <param name="UpN">Greatest uplift, N (0 when never).</param>
/// <param name="ThrustN">Greatest horizontal, N.</param>
/// <param name="MomentNm">Greatest moment, N·m.</param>
public sealed record BaseReaction(FaceName Side, double DownN, double UpN, double ThrustN, double MomentNm);
