namespace Glazewright.Science.Light;

/// <summary>
/// Where light from one source ends, as square metres per unit of the source's irradiance: times W/m² of the source it is W. The parts sum to the
/// aperture.
/// </summary>
/// <param name="ApertureM2">Light that falls on clear faces from outside.</param>
/// <param name="CoverM2">Absorbed in the clear covers.</param>
/// <param name="CurtainM2">Absorbed in the curtain.</param>
/// <param name="CropPlaneM2">Absorbed in crop and floor.</param>
/// <param name="OpaqueM2">Absorbed in opaque walls and roof, inside.</param>
/// <param name="FrameM2">Absorbed in bars and members.</param>
/// <param name="EscapesM2">Reflected away outside or sent out again.</param>
/// <param name="OpaqueOutsideM2">Light that falls on opaque faces from outside (not part of the aperture).</param>
public readonly record struct GainRow(
    double ApertureM2,
    double CoverM2,
    double CurtainM2,
    double CropPlaneM2,
    double OpaqueM2,
    double FrameM2,
    double EscapesM2,
    double OpaqueOutsideM2)
{
    /// <summary>Sum of the parts; equals the aperture.</summary>
    public double PartsM2 => CoverM2 + CurtainM2 + CropPlaneM2 + OpaqueM2 + FrameM2 + EscapesM2;

    /// <summary>A part as a share of the aperture; 0 when nothing falls in.</summary>
    /// <param name="partM2">One of the parts.</param>
    /// <returns>0 to 1.</returns>
    public double Share(double partM2) => ApertureM2 > 0 ? partM2 / ApertureM2 : 0;

    /// <summary>Sum of two rows.</summary>
    public static GainRow operator +(GainRow a, GainRow b) => new(
        a.ApertureM2 + b.ApertureM2, a.CoverM2 + b.CoverM2, a.CurtainM2 + b.CurtainM2, a.CropPlaneM2 + b.CropPlaneM2,
        a.OpaqueM2 + b.OpaqueM2, a.FrameM2 + b.FrameM2, a.EscapesM2 + b.EscapesM2, a.OpaqueOutsideM2 + b.OpaqueOutsideM2);

    /// <summary>Multiple of a row.</summary>
    public static GainRow operator *(double k, GainRow a) => new(
        k * a.ApertureM2, k * a.CoverM2, k * a.CurtainM2, k * a.CropPlaneM2,
        k * a.OpaqueM2, k * a.FrameM2, k * a.EscapesM2, k * a.OpaqueOutsideM2);
}
