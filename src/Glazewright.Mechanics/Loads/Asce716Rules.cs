using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Loads;

/// <summary>ASCE/SEI 7-16. Snow and wind constants read at second hand; the rows marked "from memory" need print.</summary>
internal sealed class Asce716Rules : EditionRules
{
    internal static readonly Asce716Rules Only = new();

    // Table 1.5-2.
    internal override double SnowImportanceFactor(RiskCategory risk) => risk switch
    {
        RiskCategory.I => 0.8,
        RiskCategory.II => 1.0,
        RiskCategory.III => 1.1,
        _ => 1.2,
    };

    // Section 7.3.4; from memory.
    internal override double LowSlopeSnowPa(double groundPa, RiskCategory risk) =>
        SnowImportanceFactor(risk) * Math.Min(groundPa, 20 * UsUnits.PaPerPsf);

    // Section 7.10; from memory.
    internal override (double SurchargePa, double UpToGroundPa) RainOnSnow(RiskCategory risk) =>
        (5 * UsUnits.PaPerPsf, 20 * UsUnits.PaPerPsf);

    // Figure 7.6-1: 0.43 lu^(1/3) (pg + 10)^(1/4) − 1.5, feet and psf; the root of the importance factor and the 20 ft floor from memory.
    internal override double DriftHeightM(double groundPa, double fetchM, RiskCategory risk, double winterWindFraction)
    {
        double fetchFt = Math.Max(20, fetchM / UsUnits.MPerFt);
        double heightFt = 0.43 * Math.Cbrt(fetchFt) * Math.Pow(groundPa / UsUnits.PaPerPsf + 10, 0.25) - 1.5;
        return Math.Max(0, heightFt) * Math.Sqrt(SnowImportanceFactor(risk)) * UsUnits.MPerFt;
    }

    // Table 7.3-2: "all structures except as indicated".
    internal override double HeatedThermalFactor(double groundPa, double roofUsR) => 1.0;

    // Table 7.3-2: kept just above freezing.
    internal override double CoolThermalFactor => 1.1;

    internal override bool WarmRoofsHaveSlipperyLine => true;

    // Table 26.11-1, metres.
    internal override (double Lead, double Alpha, double GradientM) Profile(WindExposure exposure) => exposure switch
    {
        WindExposure.B => (2.01, 7.0, 365.76),
        WindExposure.C => (2.01, 9.5, 274.32),
        _ => (2.01, 11.5, 213.36),
    };

    internal override (double Principal, double Companion, double Asd) SnowFactors => (1.6, 0.5, 1.0);
}
