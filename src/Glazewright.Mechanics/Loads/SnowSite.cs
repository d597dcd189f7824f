namespace Glazewright.Mechanics.Loads;

/// <summary>A ground snow load. The edition is part of the quantity.</summary>
/// <param name="PressurePa">Ground snow load pg, Pa, 0 to 15 000.</param>
/// <param name="Edition">The edition whose map or study it comes from.</param>
public sealed record GroundSnow(double PressurePa, LoadEdition Edition);

/// <summary>What the site says about snow.</summary>
/// <param name="Ground">Ground snow load with its edition.</param>
/// <param name="Risk">Risk category of the building.</param>
/// <param name="Roughness">Ground roughness.</param>
/// <param name="Exposure">How the roof stands in the wind.</param>
/// <param name="WinterWindFraction">
/// Winter wind parameter W2 of 7-22, the fraction of winter with wind over 10 mph, 0.2 to 0.7; 7-16 does not use it.
/// </param>
public sealed record SnowSite(
    GroundSnow Ground, RiskCategory Risk, SurfaceRoughness Roughness, RoofExposure Exposure, double WinterWindFraction);
