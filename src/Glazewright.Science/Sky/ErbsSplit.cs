using Glazewright.Science.Guards;

namespace Glazewright.Science.Sky;

/// <summary>Global light split into beam and diffuse.</summary>
/// <param name="BeamNormalWm2">Direct normal, W/m².</param>
/// <param name="DiffuseHorizontalWm2">Diffuse horizontal, W/m².</param>
/// <param name="ClearnessRatio">Global over extraterrestrial horizontal.</param>
public readonly record struct BeamAndDiffuse(double BeamNormalWm2, double DiffuseHorizontalWm2, double ClearnessRatio);

/// <summary>Diffuse share from the clearness index, for stations that measured only global light.</summary>
/// <remarks>
/// Erbs, Klein, Duffie 1982, Solar Energy 28:293 (coefficients from memory, checked). Accepted models differ by 20 % in the beam at middle clearness.
/// Within 3° of the horizon all light is given as diffuse, since beam over cos z has no meaning there.
/// </remarks>
public static class ErbsSplit
{
    private const double CosineFloor = 0.065;
    private const double LowSunZenithDeg = 87;

    /// <summary>Splits an hour's or a moment's global light.</summary>
    /// <param name="globalWm2">Global horizontal, W/m², 0 to 1500.</param>
    /// <param name="zenithDeg">Zenith angle, 0 to 180.</param>
    /// <param name="extraterrestrialNormalWm2">Outside the atmosphere, W/m², 1300 to 1450.</param>
    /// <returns>Beam and diffuse; global = beam cos z + diffuse.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static BeamAndDiffuse Split(double globalWm2, double zenithDeg, double extraterrestrialNormalWm2)
    {
        Within.Require(globalWm2, 0, 1500);
        Within.Require(zenithDeg, 0, 180);
        Within.Require(extraterrestrialNormalWm2, 1300, 1450);
        double zenithCosine = Math.Cos(zenithDeg * Math.PI / 180);
        double clearness = Math.Clamp(globalWm2 / (extraterrestrialNormalWm2 * Math.Max(CosineFloor, zenithCosine)), 0, 1);
        if (zenithDeg > LowSunZenithDeg)
        {
            return new BeamAndDiffuse(0, globalWm2, clearness);
        }

        double diffuseWm2 = globalWm2 * DiffuseFraction(clearness);
        return new BeamAndDiffuse((globalWm2 - diffuseWm2) / zenithCosine, diffuseWm2, clearness);
    }

    private static double DiffuseFraction(double kt) => kt switch
    {
        <= 0.22 => 1 - (0.09 * kt),
        <= 0.80 => 0.9511 + (kt * (-0.1604 + (kt * (4.388 + (kt * (-16.638 + (kt * 12.336))))))),
        _ => 0.165,
    };
}
