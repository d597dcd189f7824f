using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Loads;

/// <summary>ASCE/SEI 7-22. Constants read at second hand; the rows marked "from memory" need print.</summary>
internal sealed class Asce722Rules : EditionRules
{
    internal static readonly Asce722Rules Only = new();

    private static readonly double[] HeatedByGroundAtR20 = [1.20, 1.11, 1.05, 1.01, 1.00, 1.00, 1.00];
    private static readonly double[] HeatedByGroundAtR30 = [1.20, 1.17, 1.14, 1.13, 1.12, 1.11, 1.10];
    private static readonly double[] HeatedByGroundAtR40 = [1.20, 1.19, 1.17, 1.16, 1.16, 1.15, 1.15];
    private static readonly double[] HeatedByGroundAtR50 = [1.20, 1.20, 1.19, 1.19, 1.19, 1.18, 1.18];
    private static readonly double[][] HeatedByR = [HeatedByGroundAtR20, HeatedByGroundAtR30, HeatedByGroundAtR40, HeatedByGroundAtR50];

    // No factor: the map itself is drawn for each risk category.
    internal override double SnowImportanceFactor(RiskCategory risk) => 1.0;

    // Table 7.3-4.
    internal override double LowSlopeSnowPa(double groundPa, RiskCategory risk) => Math.Min(groundPa, LeastLargestPa(risk));

    // Section 7.10: 8 psf read; the ground snow up to which it applies from memory.
    internal override (double SurchargePa, double UpToGroundPa) RainOnSnow(RiskCategory risk) =>
        (8 * UsUnits.PaPerPsf, LeastLargestPa(risk));

    // Eq. 7.6-1: 1.5 √(pg^0.74 lu^0.70 W2^1.7 / γ), feet, psf, pcf; the 20 ft floor on the fetch is kept from 7-16 to the safe side.
    internal override double DriftHeightM(double groundPa, double fetchM, RiskCategory risk, double winterWindFraction)
    {
        double groundPsf = groundPa / UsUnits.PaPerPsf;
        double fetchFt = Math.Max(20, fetchM / UsUnits.MPerFt);
        double densityPcf = SnowDensity.NPerM3(groundPa) / UsUnits.NPerM3PerPcf;
        double squared = Math.Pow(groundPsf, 0.74) * Math.Pow(fetchFt, 0.70) * Math.Pow(winterWindFraction, 1.7) / densityPcf;
        return 1.5 * Math.Sqrt(squared) * UsUnits.MPerFt;
    }

    // Table 7.3-3, R 20 to 50 by ground snow 10 to 70 psf; a roof below R 20 takes the R 20 row.
    internal override double HeatedThermalFactor(double groundPa, double roofUsR)
    {
        if (roofUsR > 50)
        {
            return 1.2;
        }

        double r = (Math.Clamp(roofUsR, 20, 50) - 20) / 10;
        int low = Math.Min(2, (int)r);
        double atLow = AtGround(HeatedByR[low], groundPa);
        return atLow + (r - low) * (AtGround(HeatedByR[low + 1], groundPa) - atLow);
    }

    // The 7-22 table as read has no row for this; the unheated value is the safe side.
    internal override double CoolThermalFactor => 1.2;

    // One source says that warm roofs have only the 30–70° line; it is the safe side.
    internal override bool WarmRoofsHaveSlipperyLine => false;

    // Table 26.11-1, metres; exposure B as 7.5 in print of feet, 7.0 in one reading of the metric table: 7.5 gives the printed Kz.
    internal override (double Lead, double Alpha, double GradientM) Profile(WindExposure exposure) => exposure switch
    {
        WindExposure.B => (2.41, 7.5, 1000),
        WindExposure.C => (2.41, 9.8, 750),
        _ => (2.41, 11.5, 590),
    };

    internal override (double Principal, double Companion, double Asd) SnowFactors => (1.0, 0.3, 0.7);

    private static double LeastLargestPa(RiskCategory risk) => UsUnits.PaPerPsf * risk switch
    {
        RiskCategory.I => 25,
        RiskCategory.II => 30,
        RiskCategory.III => 35,
        _ => 40,
    };

    private static double AtGround(double[] row, double groundPa)
    {
        double place = (Math.Clamp(groundPa / UsUnits.PaPerPsf, 10, 70) - 10) / 10;
        int low = Math.Min(5, (int)place);
        return row[low] + (place - low) * (row[low + 1] - row[low]);
    }
}
