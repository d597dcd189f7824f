using Glazewright.Science.Guards;

namespace Glazewright.Science.Sky;

/// <summary>Global light split into beam and diffuse.</summary>
/// <param name="BeamNormalWm2">Direct normal, W/m².</param>
/// <param name="DiffuseHorizontalWm2">Diffuse horizontal, W/m².</param>
/// <param name="ClearnessRatio">Global over extraterrestrial horizontal.</param>
public readonly record struct BeamAndDiffuse(double BeamNormalWm2, double DiffuseHorizontalWm2, double ClearnessRatio);

/// <summary>Beam from global light by how far the air's clearness falls short of a clear sky's at that air mass: it knows the sun's height, as the diffuse share of <see cref="ErbsShare"/> does not.</summary>
/// <remarks>
/// Maxwell 1987, A quasi-physical model for converting hourly global horizontal to direct normal insolation, SERI/TR-215-3087 ("DISC"; coefficients from memory,
/// checked). Air mass: Kasten 1966 (from memory, checked). The model was fitted with a solar constant of 1370 W/m². Within 3° of the horizon all light is diffuse.
/// </remarks>
public static class DiscSplit
{
    private const double CosineFloor = 0.065;
    private const double LowSunZenithDeg = 87;
    private const double MostAirMass = 12;

    /// <summary>Splits an hour's global light.</summary>
    /// <param name="globalWm2">Global horizontal, W/m², 0 to 1600.</param>
    /// <param name="zenithDeg">Zenith angle, 0 to 180.</param>
    /// <param name="extraterrestrialNormalWm2">Outside the atmosphere, W/m², 1300 to 1450.</param>
    /// <param name="pressurePa">Air pressure, Pa, 31 000 to 120 000.</param>
    /// <returns>Beam and diffuse; global = beam cos z + diffuse.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static BeamAndDiffuse Split(double globalWm2, double zenithDeg, double extraterrestrialNormalWm2, double pressurePa)
    {
        Within.Require(globalWm2, 0, 1600);
        Within.Require(zenithDeg, 0, 180);
        Within.Require(extraterrestrialNormalWm2, 1300, 1450);
        Within.Require(pressurePa, 31_000, 120_000);
        double zenithCosine = Math.Cos(zenithDeg * Math.PI / 180);
        double clearness = Math.Clamp(globalWm2 / (extraterrestrialNormalWm2 * Math.Max(CosineFloor, zenithCosine)), 0, 1);
        if (zenithDeg > LowSunZenithDeg)
        {
            return new BeamAndDiffuse(0, globalWm2, clearness);
        }

        double airMass = Math.Min(MostAirMass, pressurePa / 101_325 / (zenithCosine + (0.15 * Math.Pow(93.885 - zenithDeg, -1.253))));
        double beamWm2 = Math.Clamp(BeamRatio(clearness, airMass) * extraterrestrialNormalWm2, 0, globalWm2 / zenithCosine);
        return new BeamAndDiffuse(beamWm2, globalWm2 - (beamWm2 * zenithCosine), clearness);
    }

    // Beam over extraterrestrial beam: that of the clear sky less what clouds and haze take.
    private static double BeamRatio(double kt, double airMass)
    {
        bool hazy = kt <= 0.6;
        double a = hazy ? 0.512 + (kt * (-1.56 + (kt * (2.286 - (2.222 * kt))))) : -5.743 + (kt * (21.77 + (kt * (-27.49 + (11.56 * kt)))));
        double b = hazy ? 0.37 + (0.962 * kt) : 41.4 + (kt * (-118.5 + (kt * (66.05 + (31.9 * kt)))));
        double c = hazy ? -0.28 + (kt * (0.932 - (2.048 * kt))) : -47.01 + (kt * (184.2 + (kt * (-222.0 + (73.81 * kt)))));
        double clear = 0.866 + (airMass * (-0.122 + (airMass * (0.0121 + (airMass * (-0.000653 + (0.000014 * airMass)))))));
        return clear - a - (b * Math.Exp(c * airMass));
    }
}
