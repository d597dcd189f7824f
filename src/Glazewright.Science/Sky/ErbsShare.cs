using Glazewright.Science.Guards;

namespace Glazewright.Science.Sky;

/// <summary>Diffuse share from the clearness index: what a synthetic year's hours are split by.</summary>
/// <remarks>Erbs, Klein, Duffie 1982, Solar Energy 28:293 (coefficients from memory, checked). Accepted models differ by 20 % in the beam at middle clearness.</remarks>
public static class ErbsShare
{
    /// <summary>Share of the global light that is diffuse.</summary>
    /// <param name="clearnessRatio">Global over extraterrestrial on the level, 0 to 2.</param>
    /// <returns>0.165 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double DiffuseFraction(double clearnessRatio)
    {
        Within.Require(clearnessRatio, 0, 2);
        double kt = clearnessRatio;
        return kt switch
        {
            <= 0.22 => 1 - (0.09 * kt),
            <= 0.80 => 0.9511 + (kt * (-0.1604 + (kt * (4.388 + (kt * (-16.638 + (kt * 12.336))))))),
            _ => 0.165,
        };
    }
}
