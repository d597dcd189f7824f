namespace Glazewright.Mechanics.Loads;

/// <summary>The kinds of load a combination has a factor for.</summary>
public enum LoadKind
{
    /// <summary>Weight of the structure and covering.</summary>
    Dead,

    /// <summary>Equipment and trellised crop: counts as dead, but is left out where it would help.</summary>
    Collateral,

    /// <summary>Hanging baskets and other things that come and go.</summary>
    Live,

    /// <summary>Roof live load: people and their gear.</summary>
    RoofLive,

    /// <summary>Snow, in the edition of its ground snow load.</summary>
    Snow,

    /// <summary>Wind, strength level.</summary>
    Wind,
}

/// <summary>A combination of loads with its factors.</summary>
/// <param name="Name">How the papers print it, as "1.2D + 1.6S + 0.5W".</param>
/// <param name="Edition">The edition it belongs to.</param>
/// <param name="Method">LRFD or ASD.</param>
/// <param name="Clause">Section and number.</param>
/// <param name="DeadFactor">On dead load.</param>
/// <param name="CollateralFactor">On equipment and crop.</param>
/// <param name="LiveFactor">On live load.</param>
/// <param name="RoofLiveFactor">On roof live load.</param>
/// <param name="SnowFactor">On snow.</param>
/// <param name="WindFactor">On wind.</param>
public sealed record LoadCombination(
    string Name,
    LoadEdition Edition,
    DesignMethod Method,
    string Clause,
    double DeadFactor,
    double CollateralFactor,
    double LiveFactor,
    double RoofLiveFactor,
    double SnowFactor,
    double WindFactor)
{
    /// <summary>Factor on a kind of load.</summary>
    /// <param name="kind">The kind.</param>
    public double Of(LoadKind kind) => kind switch
    {
        LoadKind.Dead => DeadFactor,
        LoadKind.Collateral => CollateralFactor,
        LoadKind.Live => LiveFactor,
        LoadKind.RoofLive => RoofLiveFactor,
        LoadKind.Snow => SnowFactor,
        LoadKind.Wind => WindFactor,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "An unknown kind of load."),
    };

    /// <summary>Factor on a roof snow load, which must be of this combination's edition.</summary>
    /// <param name="snow">The roof snow.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="ArgumentException">The snow is of another edition: its level is another.</exception>
    public double FactorFor(RoofSnow snow) => snow.Edition == Edition
        ? SnowFactor
        : throw new ArgumentException($"Snow of {snow.Edition} in a combination of {Edition}: their levels differ.", nameof(snow));

    /// <summary>Factor on wind of a site, which must be of this combination's edition.</summary>
    /// <param name="site">The wind site.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="ArgumentException">The wind is of another edition.</exception>
    public double FactorFor(WindSite site) => site.Edition == Edition
        ? WindFactor
        : throw new ArgumentException($"Wind of {site.Edition} in a combination of {Edition}.", nameof(site));
}
