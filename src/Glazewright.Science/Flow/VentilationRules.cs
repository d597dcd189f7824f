using Glazewright.Science.Guards;

namespace Glazewright.Science.Flow;

/// <summary>Summer ventilation by the standard's factors.</summary>
/// <param name="ElevationFactor">For thinner air.</param>
/// <param name="LightFactor">For brighter or dimmer light inside.</param>
/// <param name="RiseFactor">For the rise allowed from inlet to fans.</param>
/// <param name="HouseFactor">The product of the three.</param>
/// <param name="DistanceFactor">For a short run from inlet to fans: enough air speed.</param>
/// <param name="FlowM3PerS">Base × the larger of house and distance factor × floor area, m³/s.</param>
public sealed record FactoredVentilation(
    double ElevationFactor,
    double LightFactor,
    double RiseFactor,
    double HouseFactor,
    double DistanceFactor,
    double FlowM3PerS);

/// <summary>Summer ventilation by rule.</summary>
public static class VentilationRules
{
    /// <summary>Base of the factor method: 8 cfm per ft² of floor, m/s.</summary>
    public const double BaseMPerS = 8 * 0.00508;

    private const double RatedLux = 53_800;
    private const double RatedRiseK = 7 / 1.8;

    /// <summary>The factor method.</summary>
    /// <param name="floorM2">Floor area, m², 1 to 1e6.</param>
    /// <param name="pressurePa">Barometric pressure, Pa, 50 000 to 110 000.</param>
    /// <param name="insideLux">Brightest light at the crop, lux, 1000 to 150 000; 53 800 is 5000 foot-candles.</param>
    /// <param name="riseK">Rise allowed from inlet to fans, K, 1 to 15; 3.9 is 7 °F.</param>
    /// <param name="distanceM">Inlet to fans, m, 1 to 500.</param>
    /// <returns>The factors and the flow.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>
    /// ANSI/ASABE EP406 and the trade's standard form of it; from memory. The rule knows nothing of the covering, the crop or the wall losses: an energy
    /// balance stands beside it. Other rules in print say 10 to 12 cfm/ft² with 3 to 5 more for screens or pads.
    /// </remarks>
    public static FactoredVentilation Factored(
        double floorM2, double pressurePa, double insideLux, double riseK, double distanceM)
    {
        Within.Require(floorM2, 1, 1e6);
        Within.Require(pressurePa, 50_000, 110_000);
        Within.Require(insideLux, 1000, 150_000);
        Within.Require(riseK, 1, 15);
        Within.Require(distanceM, 1, 500);
        double elevation = 101_325 / pressurePa;
        double light = insideLux / RatedLux;
        double rise = RatedRiseK / riseK;
        double house = elevation * light * rise;
        double distance = Math.Max(10 / Math.Sqrt(distanceM / 0.3048), 1);
        return new FactoredVentilation(
            elevation, light, rise, house, distance, BaseMPerS * floorM2 * Math.Max(house, distance));
    }

    /// <summary>Pad a flow needs at a face velocity.</summary>
    /// <param name="flowM3PerS">Flow, m³/s, 0 to 1e4.</param>
    /// <param name="faceMPerS">Face velocity, m/s, 0.2 to 5: 1.27 for a 4-in pad; 1.78 to 2.03 for a 6-in one, sources disagree.</param>
    /// <returns>Pad area, m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double PadAreaM2(double flowM3PerS, double faceMPerS)
    {
        Within.Require(flowM3PerS, 0, 1e4);
        Within.Require(faceMPerS, 0.2, 5);
        return flowM3PerS / faceMPerS;
    }

    /// <summary>A supplier's rule of area: 12 cfm a square foot of floor less the shade, half as much again with evaporative cooling (one page, read). For comparison only.</summary>
    /// <param name="floorM2">Floor, m², 0 to 1e6.</param>
    /// <param name="shadeFraction">Shade, 0 to 1.</param>
    /// <param name="evaporative">Pad or fog is there.</param>
    /// <returns>Flow, m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double ShadeRuleM3PerS(double floorM2, double shadeFraction, bool evaporative)
    {
        Within.Require(floorM2, 0, 1e6);
        Within.Require(shadeFraction, 0, 1);
        return 12 * CfmPerSquareFootMs * floorM2 * (1 - shadeFraction) * (evaporative ? 1.5 : 1);
    }

    /// <summary>A trade paper's flat rule: 12 cfm a square foot, 10 under a shade curtain, 3 to 5 more (4 taken) with pads or insect screen (read). For comparison only.</summary>
    /// <param name="floorM2">Floor, m², 0 to 1e6.</param>
    /// <param name="shaded">A shade curtain is drawn.</param>
    /// <param name="padOrScreen">Air comes through a pad or an insect screen.</param>
    /// <returns>Flow, m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double FlatRuleM3PerS(double floorM2, bool shaded, bool padOrScreen)
    {
        Within.Require(floorM2, 0, 1e6);
        return ((shaded ? 10 : 12) + (padOrScreen ? 4 : 0)) * CfmPerSquareFootMs * floorM2;
    }

    private const double CfmPerSquareFootMs = 0.00508;
}
