using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Science.Shape;

namespace Glazewright.Design.Shape;

/// <summary>Which of the four long faces are clear, counted from the equator's side.</summary>
/// <param name="NearWall">Wall that faces the equator.</param>
/// <param name="NearSlope">Slope that faces it.</param>
/// <param name="FarSlope">The other slope.</param>
/// <param name="FarWall">The other wall.</param>
public sealed record ClearFaces(bool NearWall, bool NearSlope, bool FarSlope, bool FarWall);

/// <summary>A shape that the finder looked at.</summary>
/// <param name="Roof">Eaves, ridge, pitches, on the house's own left and right.</param>
/// <param name="Section">The same, counted from the equator's side.</param>
/// <param name="Clear">Clear faces.</param>
/// <param name="Coverings">What covers the two walls and the two slopes.</param>
/// <param name="IsNearLeft">The equator's side is the left one.</param>
/// <param name="RangeBearingDeg">Bearing of +x.</param>
public sealed record ShapeCandidate(
    RoofProfile Roof, GableSection Section, ClearFaces Clear, EqList<FaceCovering> Coverings, bool IsNearLeft, double RangeBearingDeg);

/// <summary>A wish that a shape can miss.</summary>
[Flags]
public enum ShapeWish
{
    /// <summary>None.</summary>
    None = 0,

    /// <summary>Noon sun up the far wall.</summary>
    NoonReach = 1,

    /// <summary>Clear slopes steep enough to shed.</summary>
    Shed = 2,

    /// <summary>Glazing area.</summary>
    Glazing = 4,

    /// <summary>Light of the dark month.</summary>
    DarkMonth = 8,

    /// <summary>Evenness of the dark month.</summary>
    Evenness = 16,
}

/// <summary>A shape with what the two-dimensional section says of it.</summary>
/// <param name="Shape">The shape.</param>
/// <param name="WinterMolPerM2Day">Mean bench light in the dark month.</param>
/// <param name="WinterEvennessRatio">Darkest over mean across the house, the same month.</param>
/// <param name="SummerMolPerM2Day">Mean bench light in the bright month.</param>
/// <param name="GlazingM2">Clear area, walls, slopes and ends.</param>
/// <param name="CoverWPerK">Heat that the covering loses per kelvin: areas times practice U, floor left out.</param>
/// <param name="NoonReachM">How far up the far wall the noon sun of the wish's date reaches, m; 0 for not at all.</param>
/// <param name="Missed">Wishes missed.</param>
/// <param name="ShortfallRatio">Sum of how far each is missed, by its own size.</param>
public sealed record ShapeScore(
    ShapeCandidate Shape,
    double WinterMolPerM2Day,
    double WinterEvennessRatio,
    double SummerMolPerM2Day,
    double GlazingM2,
    double CoverWPerK,
    double NoonReachM,
    ShapeWish Missed,
    double ShortfallRatio);

/// <summary>Light of a shape in the full map.</summary>
/// <param name="MonthMolPerM2Day">Twelve means.</param>
/// <param name="MonthEvennessRatio">Twelve darkest over mean.</param>
public sealed record ShapeFullLight(EqList<double> MonthMolPerM2Day, EqList<double> MonthEvennessRatio);

/// <summary>Computes the full map of a shape.</summary>
/// <param name="shape">The shape.</param>
/// <param name="cancel">Looked at while it works.</param>
/// <returns>Its light.</returns>
public delegate ShapeFullLight ShapeRecheck(ShapeCandidate shape, CancellationToken cancel);

/// <summary>A shape that the full map looked at again.</summary>
/// <param name="Score">By the section.</param>
/// <param name="SummerShadeHours">Hours of the bright month above the shade level, by the section.</param>
/// <param name="Full">By the full map; null when it was not asked.</param>
public sealed record ShapeCheck(ShapeScore Score, double SummerShadeHours, ShapeFullLight? Full);
