using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Loads;

/// <summary>Factors of the roof snow load.</summary>
public static class SnowFactors
{
    /// <summary>Exposure factor Ce.</summary>
    /// <param name="roughness">Ground roughness.</param>
    /// <param name="exposure">Roof exposure; a sheltered roof above the tree line or in treeless Alaska does not exist.</param>
    /// <returns>0.7 to 1.2.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A combination the table has not.</exception>
    /// <remarks>ASCE 7 table 7.3-1, the same in both editions. Read.</remarks>
    public static double Exposure(SurfaceRoughness roughness, RoofExposure exposure) => (roughness, exposure) switch
    {
        (SurfaceRoughness.B, RoofExposure.Fully) => 0.9,
        (SurfaceRoughness.B, RoofExposure.Partially) => 1.0,
        (SurfaceRoughness.B, RoofExposure.Sheltered) => 1.2,
        (SurfaceRoughness.C, RoofExposure.Fully) => 0.9,
        (SurfaceRoughness.C, RoofExposure.Partially) => 1.0,
        (SurfaceRoughness.C, RoofExposure.Sheltered) => 1.1,
        (SurfaceRoughness.D, RoofExposure.Fully) => 0.8,
        (SurfaceRoughness.D, RoofExposure.Partially) => 0.9,
        (SurfaceRoughness.D, RoofExposure.Sheltered) => 1.0,
        (SurfaceRoughness.AboveTreeLine or SurfaceRoughness.Treeless, RoofExposure.Fully) => 0.7,
        (SurfaceRoughness.AboveTreeLine or SurfaceRoughness.Treeless, RoofExposure.Partially) => 0.8,
        _ => throw new ArgumentOutOfRangeException(nameof(exposure), exposure, $"The table has no such roof on ground {roughness}."),
    };

    /// <summary>Snow importance factor: by risk category in 7-16, 1 in 7-22 (whose maps carry the category).</summary>
    /// <param name="edition">The edition.</param>
    /// <param name="risk">The risk category.</param>
    /// <returns>0.8 to 1.2.</returns>
    /// <remarks>ASCE 7-16 table 1.5-2. Read.</remarks>
    public static double Importance(LoadEdition edition, RiskCategory risk) => EditionRules.Of(edition).SnowImportanceFactor(risk);

    /// <summary>
    /// Slope factor Cs. A thermal factor between the charts takes the colder one. Sheet or glass counts as slippery only where snow slides off
    /// with nothing in its way and (7.4.1) a warm roof insulates well, which a heated greenhouse does not.
    /// </summary>
    /// <param name="edition">The edition.</param>
    /// <param name="angleDeg">Slope, degrees, 0 to 90.</param>
    /// <param name="thermalFactor">Ct, 0.8 to 1.3.</param>
    /// <param name="slippery">True for an unobstructed slippery roof.</param>
    /// <returns>0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    /// <remarks>ASCE 7 figure 7.4-1. Line ends read.</remarks>
    public static double Slope(LoadEdition edition, double angleDeg, double thermalFactor, bool slippery)
    {
        Require.Within(angleDeg, 0, 90);
        Require.Within(thermalFactor, 0.8, 1.3);
        EditionRules rules = EditionRules.Of(edition);
        bool warm = thermalFactor <= 1.0 + 1e-9;
        bool middle = !warm && thermalFactor <= 1.1 + 1e-9;
        double from = slippery
            ? warm ? (rules.WarmRoofsHaveSlipperyLine ? 5 : 30) : middle ? 10 : 15
            : warm ? 30 : middle ? 37.5 : 45;
        return Math.Clamp((70 - angleDeg) / (70 - from), 0, 1);
    }
}
