using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Loads;

/// <summary>A basic wind speed with all that belongs to it.</summary>
/// <param name="Edition">The edition whose map the speed comes from.</param>
/// <param name="SpeedMPerS">Basic wind speed, 3-second gust at 10 m, for the building's risk category, m/s, 0 to 100.</param>
/// <param name="Exposure">Exposure category.</param>
/// <param name="GroundElevationM">Ground above sea level, m, −400 to 5 000.</param>
/// <param name="TopographyFactor">Kzt, 1 on flat ground, 1 to 4.</param>
public sealed record WindSite(
    LoadEdition Edition, double SpeedMPerS, WindExposure Exposure, double GroundElevationM, double TopographyFactor = 1);

/// <summary>Velocity pressure of wind.</summary>
public static class VelocityPressure
{
    /// <summary>Kd of buildings. Read.</summary>
    public const double DirectionalityFactor = 0.85;

    /// <summary>Velocity pressure exposure coefficient Kz; below 4.6 m it stays as at 4.6 m.</summary>
    /// <param name="edition">The edition.</param>
    /// <param name="exposure">Exposure.</param>
    /// <param name="heightM">Height, m, 0 to 200.</param>
    /// <returns>Kz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    /// <remarks>ASCE 7 table 26.10-1 note 1 with table 26.11-1. Read at second hand.</remarks>
    public static double ExposureFactor(LoadEdition edition, WindExposure exposure, double heightM)
    {
        Require.Within(heightM, 0, 200);
        (double lead, double alpha, double gradientM) = EditionRules.Of(edition).Profile(exposure);
        return lead * Math.Pow(Math.Max(heightM, 4.6) / gradientM, 2 / alpha);
    }

    /// <summary>Ground elevation factor Ke = exp(−0.000119 z).</summary>
    /// <param name="groundElevationM">Ground above sea level, m, −400 to 5 000.</param>
    /// <returns>Ke.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    /// <remarks>ASCE 7 table 26.9-1 note 2. Read.</remarks>
    public static double ElevationFactor(double groundElevationM)
    {
        Require.Within(groundElevationM, -450, 5000);
        return Math.Exp(-0.000119 * groundElevationM);
    }

    /// <summary>
    /// Velocity pressure times the directionality factor: 0.613 Kz Kzt Ke V² · Kd. 7-16 counts Kd in the velocity pressure, 7-22 in the
    /// pressure; the product is the same, so this room keeps the product.
    /// </summary>
    /// <param name="site">The site.</param>
    /// <param name="heightM">Height, m, 0 to 200.</param>
    /// <returns>Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    /// <remarks>ASCE 7-16 eq. 26.10-1.SI; ASCE 7-22 eqs 26.10-1.SI and 27.3-1. Read at second hand.</remarks>
    public static double DirectedPa(WindSite site, double heightM)
    {
        Require.Within(site.SpeedMPerS, 0, 100);
        Require.Within(site.TopographyFactor, 1, 4);
        return 0.613 * ExposureFactor(site.Edition, site.Exposure, heightM) * site.TopographyFactor
            * ElevationFactor(site.GroundElevationM) * site.SpeedMPerS * site.SpeedMPerS * DirectionalityFactor;
    }
}
