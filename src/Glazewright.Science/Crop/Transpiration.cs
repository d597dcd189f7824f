using Glazewright.Science.Guards;

namespace Glazewright.Science.Crop;

/// <summary>Water a crop gives off, by the big-leaf balance and by the quick sizing form.</summary>
public static class Transpiration
{
    /// <summary>Latent heat of evaporation, J/kg: FAO-56's constant.</summary>
    public const double LatentJPerKg = 2.45e6;

    /// <summary>Specific heat of air in the big-leaf balance, J/(kg K).</summary>
    public const double AirHeatJPerKgK = 1010;

    /// <summary>Psychrometric constant, FAO-56 eq. 8: 0.665e-3 P.</summary>
    /// <param name="pressurePa">Barometric pressure, Pa, 50 000 to 110 000.</param>
    /// <returns>Pa/K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double PsychrometricPaPerK(double pressurePa)
    {
        Within.Require(pressurePa, 50_000, 110_000);
        return 0.665e-3 * pressurePa;
    }

    /// <summary>Latent heat flux of a canopy per square metre of ground it covers (Penman–Monteith).</summary>
    /// <param name="netRadiationWPerM2">Net radiation absorbed by the canopy, W/m² of ground, −300 to 1200.</param>
    /// <param name="airC">Air temperature, °C, −10 to 60.</param>
    /// <param name="deficitPa">Vapour pressure deficit of the air, Pa, 0 to 15 000.</param>
    /// <param name="aerodynamicSPerM">Canopy resistance to heat, s/m, 1 to 5000; leaf boundary resistance over 2 LAI.</param>
    /// <param name="surfaceSPerM">Canopy stomatal resistance, s/m, 0 to 100 000.</param>
    /// <param name="pressurePa">Barometric pressure, Pa, 50 000 to 110 000.</param>
    /// <returns>W/m² of ground; negative when dew forms.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>
    /// λE = (Δ R_n + ρ c_p D/r_a)/(Δ + γ(1 + r_s/r_a)); Monteith 1965, as used for greenhouse crops by Stanghellini 1987; from memory. ρ = 1.2 kg/m³
    /// at sea level, in proportion to pressure; Δ and γ by FAO-56 eqs 13 and 8.
    /// </remarks>
    public static double BigLeafWPerM2(
        double netRadiationWPerM2,
        double airC,
        double deficitPa,
        double aerodynamicSPerM,
        double surfaceSPerM,
        double pressurePa)
    {
        Within.Require(netRadiationWPerM2, -300, 1200);
        Within.Require(airC, -10, 60);
        Within.Require(deficitPa, 0, 15_000);
        Within.Require(aerodynamicSPerM, 1, 5000);
        Within.Require(surfaceSPerM, 0, 100_000);
        double psychrometric = PsychrometricPaPerK(pressurePa);
        double slope = Fao56.SlopeKPaPerK(airC) * 1000;
        double density = 1.2 * pressurePa / 101_300;
        return (slope * netRadiationWPerM2 + density * AirHeatJPerKgK * deficitPa / aerodynamicSPerM)
            / (slope + psychrometric * (1 + surfaceSPerM / aerodynamicSPerM));
    }

    /// <summary>Stomatal resistance of a leaf in light.</summary>
    /// <param name="absorbedWPerM2Leaf">Radiation absorbed per square metre of leaf, W/m², 0 to 600.</param>
    /// <param name="deficitPa">Leaf-to-air vapour pressure deficit, Pa, 0 to 15 000.</param>
    /// <param name="minimumSPerM">Least resistance of the species, s/m, 20 to 500; 82 is the published tomato value.</param>
    /// <returns>Resistance of one square metre of leaf, s/m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>Stanghellini 1987, light and deficit terms, CO₂ term left out; from memory.</remarks>
    public static double StomatalSPerM(double absorbedWPerM2Leaf, double deficitPa, double minimumSPerM)
    {
        Within.Require(absorbedWPerM2Leaf, 0, 600);
        Within.Require(deficitPa, 0, 15_000);
        Within.Require(minimumSPerM, 20, 500);
        double light = (absorbedWPerM2Leaf + 4.3) / (absorbedWPerM2Leaf + 0.54);
        double dryness = Math.Min(1 + 4.3e-6 * deficitPa * deficitPa, 5.8);
        return minimumSPerM * light * dryness;
    }

    /// <summary>Latent heat flux by the quick form used for sizing.</summary>
    /// <param name="solarWPerM2">Solar radiation on top of the crop, W/m², 0 to 1200.</param>
    /// <param name="deficitPa">Vapour pressure deficit of the air, Pa, 0 to 15 000.</param>
    /// <param name="leafAreaRatio">Leaf area per ground area, 0 to 10.</param>
    /// <param name="solarFactor">A, 0 to 1: 0.2 to 0.6 by species.</param>
    /// <param name="deficitWPerM2KPa">B, W/(m² kPa), 0 to 60: 10 to 30 by day, 5 to 15 by night.</param>
    /// <returns>W/m² of ground.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>λE = A (1 − exp(−0.64 LAI)) G + B LAI D; Baille, Baille and Laury 1994, Scientia Horticulturae 59:83; from memory.</remarks>
    public static double QuickWPerM2(
        double solarWPerM2, double deficitPa, double leafAreaRatio, double solarFactor, double deficitWPerM2KPa)
    {
        Within.Require(solarWPerM2, 0, 1200);
        Within.Require(deficitPa, 0, 15_000);
        Within.Require(leafAreaRatio, 0, 10);
        Within.Require(solarFactor, 0, 1);
        Within.Require(deficitWPerM2KPa, 0, 60);
        return QuickKernel(solarWPerM2, deficitPa, leafAreaRatio, solarFactor, deficitWPerM2KPa);
    }

    internal static double QuickKernel(
        double solarWPerM2, double deficitPa, double leafAreaRatio, double solarFactor, double deficitWPerM2KPa) =>
        solarFactor * (1 - Math.Exp(-0.64 * leafAreaRatio)) * solarWPerM2
            + deficitWPerM2KPa * leafAreaRatio * Math.Max(deficitPa, 0) / 1000;
}
