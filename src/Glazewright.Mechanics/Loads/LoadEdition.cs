namespace Glazewright.Mechanics.Loads;

/// <summary>
/// The edition of the load standard a number belongs to: a closed set. A ground snow load of one edition is not a ground snow load of another:
/// 7-16 maps are service level with a 1.6 factor, 7-22 maps are strength level, one for each risk category.
/// </summary>
public enum LoadEdition
{
    /// <summary>ASCE/SEI 7-16.</summary>
    Asce716,

    /// <summary>ASCE/SEI 7-22.</summary>
    Asce722,
}

/// <summary>Risk category of a building (ASCE 7 table 1.5-1).</summary>
public enum RiskCategory
{
    /// <summary>Low hazard to life: a growing house that only staff enter.</summary>
    I,

    /// <summary>Ordinary: customers, pupils, the public.</summary>
    II,

    /// <summary>Substantial hazard.</summary>
    III,

    /// <summary>Essential.</summary>
    IV,
}

/// <summary>Roughness of the ground around, for snow exposure (ASCE 7 table 7.3-1).</summary>
public enum SurfaceRoughness
{
    /// <summary>Town, wood.</summary>
    B,

    /// <summary>Open country.</summary>
    C,

    /// <summary>Flat, unobstructed, water.</summary>
    D,

    /// <summary>Above the tree line in windswept mountains.</summary>
    AboveTreeLine,

    /// <summary>Alaska, no trees within two miles.</summary>
    Treeless,
}

/// <summary>How much the roof itself stands in the wind (ASCE 7 table 7.3-1).</summary>
public enum RoofExposure
{
    /// <summary>No shelter on any side.</summary>
    Fully,

    /// <summary>Everything that is neither of the others.</summary>
    Partially,

    /// <summary>Tight in among conifers.</summary>
    Sheltered,
}

/// <summary>Wind exposure category (ASCE 7 section 26.7).</summary>
public enum WindExposure
{
    /// <summary>Town, wood.</summary>
    B,

    /// <summary>Open country.</summary>
    C,

    /// <summary>Flat, unobstructed, water.</summary>
    D,
}

/// <summary>How strength is compared with load.</summary>
public enum DesignMethod
{
    /// <summary>Load and resistance factors.</summary>
    Lrfd,

    /// <summary>Allowable strength.</summary>
    Asd,
}
