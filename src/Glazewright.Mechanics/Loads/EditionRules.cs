namespace Glazewright.Mechanics.Loads;

/// <summary>What differs between the editions. Two cases, both real; a third edition is a third case here.</summary>
internal abstract class EditionRules
{
    internal static EditionRules Of(LoadEdition edition) => edition switch
    {
        LoadEdition.Asce716 => Asce716Rules.Only,
        LoadEdition.Asce722 => Asce722Rules.Only,
        _ => throw new ArgumentOutOfRangeException(nameof(edition), edition, "An unknown edition."),
    };

    /// <summary>Snow importance factor on the roof load.</summary>
    internal abstract double SnowImportanceFactor(RiskCategory risk);

    /// <summary>Least roof snow for low slopes, Pa.</summary>
    internal abstract double LowSlopeSnowPa(double groundPa, RiskCategory risk);

    /// <summary>Rain-on-snow surcharge where it applies, Pa, and the largest ground snow for which it applies, Pa.</summary>
    internal abstract (double SurchargePa, double UpToGroundPa) RainOnSnow(RiskCategory risk);

    /// <summary>Height of a leeward drift, m.</summary>
    internal abstract double DriftHeightM(double groundPa, double fetchM, RiskCategory risk, double winterWindFraction);

    /// <summary>Thermal factor of a house kept warm whose roof does not let the greenhouse value in.</summary>
    internal abstract double HeatedThermalFactor(double groundPa, double roofUsR);

    /// <summary>Thermal factor of a house kept only just above freezing.</summary>
    internal abstract double CoolThermalFactor { get; }

    /// <summary>Whether the slippery line of warm roofs exists in this edition's chart.</summary>
    internal abstract bool WarmRoofsHaveSlipperyLine { get; }

    /// <summary>Power-law constants of the velocity pressure coefficient: leading number, exponent alpha, gradient height, m.</summary>
    internal abstract (double Lead, double Alpha, double GradientM) Profile(WindExposure exposure);

    /// <summary>Snow factors: principal in LRFD, companion in LRFD, in ASD.</summary>
    internal abstract (double Principal, double Companion, double Asd) SnowFactors { get; }
}
