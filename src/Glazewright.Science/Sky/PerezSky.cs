using Glazewright.Science.Guards;

namespace Glazewright.Science.Sky;

/// <summary>The sky of one moment as four plain sources; every plane's or house's gain is linear in them.</summary>
/// <param name="BeamNormalWm2">Direct sun on a plane facing it.</param>
/// <param name="CircumsolarNormalWm2">Sky light around the sun, as the irradiance of a beam from the sun's place.</param>
/// <param name="DomeWm2">Evenly bright sky, as its irradiance on the horizontal.</param>
/// <param name="HorizonWm2">Bright or dark band on the horizon, as its irradiance on an upright wall; may be negative.</param>
/// <param name="GroundWm2">Light from the ground, as its irradiance on a plane facing straight down.</param>
public readonly record struct SkySources(
    double BeamNormalWm2, double CircumsolarNormalWm2, double DomeWm2, double HorizonWm2, double GroundWm2)
{
    /// <summary>All light that comes from the sun's place, W/m² normal.</summary>
    public double FromSunWm2 => BeamNormalWm2 + CircumsolarNormalWm2;
}

/// <summary>Light on one tilted plane by where it comes from, W/m².</summary>
/// <param name="BeamWm2">Direct.</param>
/// <param name="CircumsolarWm2">Around the sun.</param>
/// <param name="DomeWm2">Even sky.</param>
/// <param name="HorizonWm2">Horizon band; may be negative.</param>
/// <param name="GroundWm2">Ground.</param>
public readonly record struct TiltedLight(
    double BeamWm2, double CircumsolarWm2, double DomeWm2, double HorizonWm2, double GroundWm2)
{
    /// <summary>Sky diffuse, never negative, W/m².</summary>
    public double SkyDiffuseWm2 => Math.Max(0, CircumsolarWm2 + DomeWm2 + HorizonWm2);

    /// <summary>All of it, W/m².</summary>
    public double TotalWm2 => BeamWm2 + SkyDiffuseWm2 + GroundWm2;
}

/// <summary>Anisotropic sky by Perez and others, and the isotropic one beside it.</summary>
/// <remarks>
/// Perez, Ineichen, Seals, Michalsky, Stewart 1990, Solar Energy 44:271, all-sites composite coefficients (read at second hand).
/// The circumsolar source is taken as a beam of strength DHI F1 / max(cos 85°, cos z), so that a/b of the model falls out of the plane's own cosine.
/// </remarks>
public static class PerezSky
{
    private const double CosineFloor = 0.08715574274765817; // cos 85°

    // Rows by upper edge of the clearness bin: edge, F11, F12, F13, F21, F22, F23.
    private static readonly double[] Bins =
    [
        1.065, -0.008, 0.588, -0.062, -0.060, 0.072, -0.022,
        1.23, 0.130, 0.683, -0.151, -0.019, 0.066, -0.029,
        1.5, 0.330, 0.487, -0.221, 0.055, -0.064, -0.026,
        1.95, 0.568, 0.187, -0.295, 0.109, -0.152, -0.014,
        2.8, 0.873, -0.392, -0.362, 0.226, -0.462, 0.001,
        4.5, 1.132, -1.237, -0.412, 0.288, -0.823, 0.056,
        6.2, 1.060, -1.600, -0.359, 0.264, -1.127, 0.131,
        double.PositiveInfinity, 0.678, -0.327, -0.250, 0.156, -1.377, 0.251,
    ];

    /// <summary>Splits a moment's light into sources, anisotropic.</summary>
    /// <param name="beamNormalWm2">Direct normal irradiance, W/m², 0 to 1500.</param>
    /// <param name="diffuseHorizontalWm2">Diffuse horizontal, W/m², 0 to 1500.</param>
    /// <param name="zenithDeg">Refracted zenith angle, 0 to 180; at night all sources are exactly zero.</param>
    /// <param name="extraterrestrialNormalWm2">Outside the atmosphere, W/m², 1300 to 1450.</param>
    /// <param name="albedoFraction">Ground reflectance, 0 to 1.</param>
    /// <returns>Sources in W/m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static SkySources Sources(
        double beamNormalWm2,
        double diffuseHorizontalWm2,
        double zenithDeg,
        double extraterrestrialNormalWm2,
        double albedoFraction)
    {
        Within.Require(beamNormalWm2, 0, 1500);
        Within.Require(diffuseHorizontalWm2, 0, 1500);
        Within.Require(zenithDeg, 0, 180);
        Within.Require(extraterrestrialNormalWm2, 1300, 1450);
        Within.Require(albedoFraction, 0, 1);
        double zenithCosine = Math.Cos(zenithDeg * Math.PI / 180);
        double globalWm2 = (beamNormalWm2 * Math.Max(0, zenithCosine)) + diffuseHorizontalWm2;
        return Kernel(
            beamNormalWm2, diffuseHorizontalWm2, globalWm2, zenithDeg, zenithCosine,
            AirMass.Kernel(zenithDeg), extraterrestrialNormalWm2, albedoFraction);
    }

    /// <summary>The same as <see cref="Sources"/> for loops: no guards, total, with air mass and global given.</summary>
    /// <param name="beamNormalWm2">W/m².</param>
    /// <param name="diffuseHorizontalWm2">W/m².</param>
    /// <param name="globalHorizontalWm2">W/m², lights the ground.</param>
    /// <param name="zenithDeg">Refracted zenith angle, degrees.</param>
    /// <param name="zenithCosine">Its cosine.</param>
    /// <param name="relativeAirMassRatio">Relative air mass.</param>
    /// <param name="extraterrestrialNormalWm2">W/m².</param>
    /// <param name="albedoFraction">0 to 1.</param>
    /// <returns>Sources in W/m².</returns>
    public static SkySources Kernel(
        double beamNormalWm2,
        double diffuseHorizontalWm2,
        double globalHorizontalWm2,
        double zenithDeg,
        double zenithCosine,
        double relativeAirMassRatio,
        double extraterrestrialNormalWm2,
        double albedoFraction)
    {
        double groundWm2 = Math.Max(0, globalHorizontalWm2) * albedoFraction;
        double beamWm2 = zenithCosine > 0 ? Math.Max(0, beamNormalWm2) : 0;
        if (!(diffuseHorizontalWm2 > 0))
        {
            return new SkySources(beamWm2, 0, 0, 0, groundWm2);
        }

        if (!(zenithCosine > 0))
        {
            return new SkySources(0, 0, diffuseHorizontalWm2, 0, groundWm2);
        }

        double z = Math.Min(zenithDeg, 90) * Math.PI / 180;
        double z3 = 1.041 * z * z * z;
        double clearness = (((diffuseHorizontalWm2 + beamWm2) / diffuseHorizontalWm2) + z3) / (1 + z3);
        double brightness = diffuseHorizontalWm2 * relativeAirMassRatio / extraterrestrialNormalWm2;
        int row = 0;
        while (clearness >= Bins[row])
        {
            row += 7;
        }

        // F1 is held at 1: beyond it the dome would turn negative (does not happen in measured skies).
        double f1 = Math.Clamp(Bins[row + 1] + (Bins[row + 2] * brightness) + (Bins[row + 3] * z), 0, 1);
        double f2 = Bins[row + 4] + (Bins[row + 5] * brightness) + (Bins[row + 6] * z);
        return new SkySources(
            beamWm2,
            diffuseHorizontalWm2 * f1 / Math.Max(CosineFloor, zenithCosine),
            diffuseHorizontalWm2 * (1 - f1),
            diffuseHorizontalWm2 * f2,
            groundWm2);
    }

    /// <summary>Sources of an evenly bright sky.</summary>
    /// <param name="beamNormalWm2">Direct normal irradiance, W/m², 0 to 1500.</param>
    /// <param name="diffuseHorizontalWm2">Diffuse horizontal, W/m², 0 to 1500.</param>
    /// <param name="globalHorizontalWm2">Global horizontal, W/m², 0 to 1500.</param>
    /// <param name="albedoFraction">0 to 1.</param>
    /// <returns>Sources in W/m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>Liu &amp; Jordan's isotropic sky.</remarks>
    public static SkySources Isotropic(
        double beamNormalWm2, double diffuseHorizontalWm2, double globalHorizontalWm2, double albedoFraction)
    {
        Within.Require(beamNormalWm2, 0, 1500);
        Within.Require(diffuseHorizontalWm2, 0, 1500);
        Within.Require(globalHorizontalWm2, 0, 1500);
        Within.Require(albedoFraction, 0, 1);
        return new SkySources(beamNormalWm2, 0, diffuseHorizontalWm2, 0, globalHorizontalWm2 * albedoFraction);
    }

    /// <summary>Light on a tilted plane.</summary>
    /// <param name="sources">The sky.</param>
    /// <param name="incidenceCosine">Cosine between sun and normal, −1 to 1; negative gives no beam.</param>
    /// <param name="tiltDeg">From horizontal, 0 to 180.</param>
    /// <returns>W/m² by part.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static TiltedLight OnPlane(SkySources sources, double incidenceCosine, double tiltDeg)
    {
        Within.Require(incidenceCosine, -1.0000001, 1.0000001);
        Within.Require(tiltDeg, 0, 180);
        double facing = Math.Max(0, incidenceCosine);
        double cosTilt = Math.Cos(tiltDeg * Math.PI / 180);
        double sinTilt = Math.Sin(tiltDeg * Math.PI / 180);
        return new TiltedLight(
            sources.BeamNormalWm2 * facing,
            sources.CircumsolarNormalWm2 * facing,
            sources.DomeWm2 * (1 + cosTilt) / 2,
            sources.HorizonWm2 * sinTilt,
            sources.GroundWm2 * (1 - cosTilt) / 2);
    }
}
