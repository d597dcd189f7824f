using Glazewright.Design.Contracts;

namespace Glazewright.Design.GainTables;

/// <summary>Where sunlight that meets a house goes, from one direction or one part of the sky. The shares sum to 1.</summary>
/// <param name="ApertureM2">Effective area, m²: watts falling on clear faces per W/m² of the source (beam-normal; for sky parts see <see cref="GainSet"/>).</param>
/// <param name="CoverShare">Absorbed in the covering.</param>
/// <param name="CurtainShare">Absorbed in the curtain.</param>
/// <param name="CropPlaneShare">Absorbed at the crop plane: canopy and floor, split by leaf area when used.</param>
/// <param name="OpaqueShare">Absorbed inside in opaque walls and opaque roof.</param>
/// <param name="FrameShare">Absorbed by frame members.</param>
/// <param name="EscapeShare">Turned away outside, or out again through the covering.</param>
public readonly record struct GainRow(
    double ApertureM2,
    double CoverShare,
    double CurtainShare,
    double CropPlaneShare,
    double OpaqueShare,
    double FrameShare,
    double EscapeShare)
{
    /// <summary>Sum of the shares: 1.</summary>
    public double ShareSum => CoverShare + CurtainShare + CropPlaneShare + OpaqueShare + FrameShare + EscapeShare;
}

/// <summary>One house's gains with the curtain in one position: the one contract between light and heat.</summary>
/// <param name="Beam">Rows by direction: azimuth bin major, elevation bin minor, in house axes (see <see cref="GainTable"/>).</param>
/// <param name="Sky">Sky dome, isotropic part, per W/m² of its horizontal irradiance (Perez: (1 − F1) times horizontal diffuse).</param>
/// <param name="Horizon">Horizon band of the sky, per W/m² of the band's irradiance on an upright wall (Perez: F2 times horizontal diffuse; may be negative).</param>
/// <param name="Ground">Ground-reflected light, per W/m² of global horizontal times albedo.</param>
public sealed record GainSet(EqList<GainRow> Beam, GainRow Sky, GainRow Horizon, GainRow Ground);

/// <summary>
/// Gain tables of one house. Beam bins: node (i, j) stands for the direction at azimuth i·step clockwise from the house's +x axis
/// seen from above, and elevation j·step; values between nodes are interpolated bilinearly (azimuth wraps).
/// </summary>
/// <param name="House">House id.</param>
/// <param name="AzimuthStepDeg">Azimuth step; divides 360.</param>
/// <param name="ElevationStepDeg">Elevation step; divides 90. Elevation nodes run 0 to 90 inclusive.</param>
/// <param name="CurtainOpen">Curtain open.</param>
/// <param name="CurtainDrawn">Curtain drawn; equal to open when there is none, and before the equipment is chosen.</param>
/// <param name="CanopyExtinctionFraction">k of 1 − exp(−k·LAI) that splits the crop plane.</param>
/// <param name="Report">Figures and findings.</param>
/// <param name="SecondDrawn">The second curtain alone drawn; null without one that moves by itself.</param>
/// <param name="BothDrawn">Both drawn.</param>
public sealed record GainTable(
    string House,
    double AzimuthStepDeg,
    double ElevationStepDeg,
    GainSet CurtainOpen,
    GainSet CurtainDrawn,
    double CanopyExtinctionFraction,
    StageReport Report,
    GainSet? SecondDrawn = null,
    GainSet? BothDrawn = null);
