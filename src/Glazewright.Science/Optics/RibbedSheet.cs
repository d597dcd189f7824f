using Glazewright.Science.Guards;

namespace Glazewright.Science.Optics;

/// <summary>A multiwall sheet with its ribs: light along the ribs and light across them are treated apart.</summary>
/// <remarks>
/// <para>
/// Between its walls light keeps its direction. Ribs are plane plates at right angles to the walls, d/s of their spacing deep, of the walls' own make. Light that leans
/// across them by ψ (tan ψ = across over normal part of its direction) meets m = d/s · tan ψ of them: from an even distribution of places, ⌊m⌋ surely and one more with
/// the rest as chance.
/// </para>
/// <para>
/// At each rib a plain sheet's shares at the rib's own angle of incidence hold. What passes and what is mirrored both go on towards the far wall: a plate at right angles
/// to the walls turns light sideways, not back. A stated share of both is scattered (ribs are drawn thin and are never smooth), half of it back.
/// </para>
/// <para>
/// What the stated transmittance at normal incidence falls short of the walls' is the ribs' own thickness and their roots: the same share of the area at every angle,
/// thrown back. Mirrored light is counted with the light that goes straight on; further passes between the walls are counted as the first.
/// </para>
/// </remarks>
public static class RibbedSheet
{
    /// <summary>
    /// Share of the light at a rib that it scatters: our assumption, taken so that twin sheets pass some 0.8 of their stated transmittance of even diffuse light, as
    /// measured ones do (0.60 to 0.66 at 0.78 to 0.82 stated; from memory).
    /// </summary>
    public const double RibScatterFraction = 0.3;

    private const int MostRibs = 64;

    /// <summary>Shares of a beam.</summary>
    /// <param name="make">The sheet.</param>
    /// <param name="incidenceDeg">From the sheet's normal, 0 to 90.</param>
    /// <param name="acrossDeg">Between the ribs and the beam's trace on the sheet, 0 (along) to 90 (across).</param>
    /// <returns>Three fractions that sum to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range, NaN, or a stated transmittance above what the walls alone would pass.</exception>
    public static LightShares At(CoverMake.Ribbed make, double incidenceDeg, double acrossDeg)
    {
        ArgumentNullException.ThrowIfNull(make);
        Within.Require(acrossDeg, 0, 90);
        Within.Require(make.RibDepthRatio, 0, 5, nameof(make.RibDepthRatio));
        double roots = make.NominalTransmittanceFraction / SheetStack.At(0, make.Wall, make.Walls).TransmittanceFraction;
        Within.Require(roots, 0.05, 1, nameof(make.NominalTransmittanceFraction));
        LightShares walls = SheetStack.At(incidenceDeg, make.Wall, make.Walls);
        double open = walls.TransmittanceFraction * roots;
        double acrossCosine = Math.Sin(incidenceDeg * Math.PI / 180) * Math.Sin(acrossDeg * Math.PI / 180);
        LightShares rib = SheetStack.At(Math.Acos(Math.Clamp(acrossCosine, 0, 1)) * 180 / Math.PI, make.Wall, 1);
        double back = 0.5 * RibScatterFraction * (1 - rib.AbsorptanceFraction);
        double lost = back + rib.AbsorptanceFraction;
        double kept = Kept(make.RibDepthRatio * acrossCosine / Math.Max(Math.Cos(incidenceDeg * Math.PI / 180), 1e-9), lost);
        double passes = open * kept;
        double absorbed = walls.AbsorptanceFraction + (open * (1 - kept) * rib.AbsorptanceFraction / lost);
        return new LightShares(passes, 1 - passes - absorbed, absorbed);
    }

    private static double Kept(double meets, double lost)
    {
        double whole = Math.Min(Math.Floor(meets), MostRibs);
        return Math.Pow(1 - lost, whole) * (1 - (Math.Min(meets - whole, 1) * lost));
    }
}
