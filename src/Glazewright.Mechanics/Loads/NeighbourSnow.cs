using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Loads;

/// <summary>A drift against a step: triangular, highest at the step.</summary>
/// <param name="HeightM">Height at the step, m.</param>
/// <param name="PeakPa">Surcharge at the step, Pa.</param>
/// <param name="ReachM">Horizontal reach, m.</param>
public sealed record StepDrift(double HeightM, double PeakPa, double ReachM);

/// <summary>Snow slid onto a lower roof.</summary>
/// <param name="LineNPerM">Slid weight per metre of eave, N/m.</param>
/// <param name="PressurePa">Spread on the lower roof, Pa.</param>
/// <param name="ReachM">Horizontal reach from the upper eave, m.</param>
public sealed record SlidSnow(double LineNPerM, double PressurePa, double ReachM);

/// <summary>Snow that one building sends to its neighbour.</summary>
public static class NeighbourSnow
{
    /// <summary>Drift on a lower roof in the lee of a higher one that stands against it or a gap away.</summary>
    /// <param name="site">The site.</param>
    /// <param name="lowerRoofPa">Balanced snow on the lower roof, Pa.</param>
    /// <param name="upperFetchM">Length of the upper roof across the step, m.</param>
    /// <param name="stepM">Upper eave above the lower roof, m.</param>
    /// <param name="gapM">Clear gap, m; 0 when they touch.</param>
    /// <returns>The drift; all zero when the step is too low, or the gap is 20 ft or six steps wide.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    /// <remarks>ASCE 7 sections 7.7.1 (read in a worked example) and 7.7.2 (from memory).</remarks>
    public static StepDrift LeewardDrift(SnowSite site, double lowerRoofPa, double upperFetchM, double stepM, double gapM)
    {
        Require.Within(lowerRoofPa, 0, 20_000);
        Require.Within(stepM, 0, 60);
        Require.Within(gapM, 0, 1000);
        double densityNPerM3 = SnowDensity.NPerM3(site.Ground.PressurePa);
        double balancedM = lowerRoofPa / densityNPerM3;
        double clearM = stepM - balancedM;
        if (clearM < 0.2 * balancedM || clearM <= 0 || gapM >= 20 * UsUnits.MPerFt || gapM >= 6 * stepM)
        {
            return new StepDrift(0, 0, 0);
        }

        double fullM = GableSnow.DriftHeightM(site, upperFetchM);
        if (gapM > 0)
        {
            double acrossM = Math.Min(fullM, (6 * stepM - gapM) / 6);
            return new StepDrift(acrossM, acrossM * densityNPerM3, Math.Min(6 * fullM, 6 * stepM - gapM));
        }

        double heightM = Math.Min(fullM, clearM);
        double reachM = fullM <= clearM ? 4 * fullM : Math.Min(4 * fullM * fullM / clearM, 8 * clearM);
        return new StepDrift(heightM, heightM * densityNPerM3, reachM);
    }

    /// <summary>Snow that slides from an upper slope onto a lower roof: 0.4 pf W per metre of eave, spread on 15 ft less the gap.</summary>
    /// <param name="flatPa">Flat roof snow of the upper roof, Pa.</param>
    /// <param name="upperRunM">Eave to ridge of the upper slope, horizontal m.</param>
    /// <param name="upperAngleDeg">Its slope, degrees.</param>
    /// <param name="slippery">Whether it is slippery.</param>
    /// <param name="gapM">Clear gap, m.</param>
    /// <returns>The slid snow; all zero for a flat slope or a gap over 15 ft.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    /// <remarks>ASCE 7 section 7.9. From memory.</remarks>
    public static SlidSnow Slid(double flatPa, double upperRunM, double upperAngleDeg, bool slippery, double gapM)
    {
        Require.Within(flatPa, 0, 20_000);
        Require.Within(upperRunM, 0, 100);
        Require.Within(upperAngleDeg, 0, 90);
        Require.Within(gapM, 0, 1000);
        double leastDeg = Math.Atan((slippery ? 0.25 : 2.0) / 12) * 180 / Math.PI;
        double widthM = 15 * UsUnits.MPerFt;
        if (upperAngleDeg <= leastDeg || gapM >= widthM)
        {
            return new SlidSnow(0, 0, 0);
        }

        double lineNPerM = 0.4 * flatPa * upperRunM;
        double reachM = widthM - gapM;
        return new SlidSnow(lineNPerM * reachM / widthM, lineNPerM / widthM, reachM);
    }
}
