using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Loads;

/// <summary>Snow on gables, also with unlike slopes and unlike eaves.</summary>
public static class GableSnow
{
    private const double LeastUnbalancedDeg = 2.38;
    private const double MostUnbalancedDeg = 30.2;

    /// <summary>Flat roof snow load pf = 0.7 Ce Ct Is pg.</summary>
    /// <param name="site">The site, with the edition.</param>
    /// <param name="thermalFactor">Ct, 0.8 to 1.3.</param>
    /// <returns>Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    /// <remarks>ASCE 7 eq. 7.3-1. Read.</remarks>
    public static double FlatPa(SnowSite site, double thermalFactor)
    {
        Require.Within(site.Ground.PressurePa, 0, 15_000);
        Require.Within(thermalFactor, 0.8, 1.3);
        return 0.7 * SnowFactors.Exposure(site.Roughness, site.Exposure) * thermalFactor
            * SnowFactors.Importance(site.Ground.Edition, site.Risk) * site.Ground.PressurePa;
    }

    /// <summary>Height of a leeward drift, m, before any limit by a step's height.</summary>
    /// <param name="site">The site.</param>
    /// <param name="fetchM">Length of roof the wind sweeps, m, 0 to 500.</param>
    /// <returns>m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range; for 7-22 also a winter wind fraction out of 0.1 to 0.9.</exception>
    /// <remarks>ASCE 7-16 figure 7.6-1; ASCE 7-22 eq. 7.6-1.</remarks>
    public static double DriftHeightM(SnowSite site, double fetchM)
    {
        Require.Within(fetchM, 0, 500);
        Require.Within(site.Ground.PressurePa, 0, 15_000);
        if (site.Ground.Edition == LoadEdition.Asce722)
        {
            Require.Within(site.WinterWindFraction, 0.1, 0.9);
        }

        return site.Ground.PressurePa == 0
            ? 0
            : EditionRules.Of(site.Ground.Edition).DriftHeightM(site.Ground.PressurePa, fetchM, site.Risk, site.WinterWindFraction);
    }

    /// <summary>All snow cases of a gable roof.</summary>
    /// <param name="site">The site, with the edition.</param>
    /// <param name="section">The section.</param>
    /// <param name="thermalFactor">Ct, 0.8 to 1.3.</param>
    /// <param name="leftSlippery">Whether the left slope is slippery and clear (see <see cref="SnowFactors.Slope"/>).</param>
    /// <param name="rightSlippery">Whether the right slope is.</param>
    /// <returns>The cases.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    /// <remarks>
    /// ASCE 7 sections 7.3, 7.4, 7.6.1, 7.10. Unlike slopes: each slope its own angle for Cs; the drift's fetch is the windward slope's run, its
    /// S the leeward slope's; both winds are separate cases; a slope over 7:12 gathers no drift but feeds one (engineering reading, from memory).
    /// </remarks>
    public static RoofSnow On(
        SnowSite site, GableSection section, double thermalFactor, bool leftSlippery = false, bool rightSlippery = false)
    {
        section.Check();
        LoadEdition edition = site.Ground.Edition;
        double flatPa = FlatPa(site, thermalFactor);
        double leftFactor = SnowFactors.Slope(edition, section.LeftAngleDeg, thermalFactor, leftSlippery);
        double rightFactor = SnowFactors.Slope(edition, section.RightAngleDeg, thermalFactor, rightSlippery);
        double leftPa = leftFactor * flatPa;
        double rightPa = rightFactor * flatPa;
        var cases = new List<SnowCase> { new(SnowCaseKind.Balanced, new SlopeSnow(leftPa), new SlopeSnow(rightPa)) };
        AddLowSlope(cases, site, section);
        AddRain(cases, site, section, leftPa, rightPa);
        if (Gathers(section.RightAngleDeg))
        {
            cases.Add(new SnowCase(
                SnowCaseKind.DriftedToRight, new SlopeSnow(0.3 * leftPa),
                Leeward(site, rightPa, section.LeftRunM, section.RightRunM, section.RightAngleDeg)));
        }

        if (Gathers(section.LeftAngleDeg))
        {
            cases.Add(new SnowCase(
                SnowCaseKind.DriftedToLeft,
                Leeward(site, leftPa, section.RightRunM, section.LeftRunM, section.LeftAngleDeg), new SlopeSnow(0.3 * rightPa)));
        }

        return new RoofSnow(
            edition, flatPa, SnowFactors.Exposure(site.Roughness, site.Exposure), thermalFactor,
            SnowFactors.Importance(edition, site.Risk), leftFactor, rightFactor, cases);
    }

    private static bool Gathers(double angleDeg) => angleDeg is >= LeastUnbalancedDeg and <= MostUnbalancedDeg;

    private static SlopeSnow Leeward(SnowSite site, double slopedPa, double fetchM, double runM, double angleDeg)
    {
        double driftM = DriftHeightM(site, fetchM);
        double runPerRise = 1 / Math.Tan(angleDeg * Math.PI / 180);
        double surchargePa = driftM * SnowDensity.NPerM3(site.Ground.PressurePa) / Math.Sqrt(runPerRise);
        double reachM = 8.0 / 3 * driftM * Math.Sqrt(runPerRise);
        return new SlopeSnow(slopedPa, surchargePa, Math.Min(runM, reachM));
    }

    private static void AddLowSlope(List<SnowCase> cases, SnowSite site, GableSection section)
    {
        double pa = EditionRules.Of(site.Ground.Edition).LowSlopeSnowPa(site.Ground.PressurePa, site.Risk);
        bool left = section.LeftAngleDeg < 15;
        bool right = section.RightAngleDeg < 15;
        if ((left || right) && pa > 0)
        {
            SnowCase balanced = cases[0];
            cases.Add(new SnowCase(
                SnowCaseKind.LowSlopeLeast, left ? new SlopeSnow(pa) : balanced.Left, right ? new SlopeSnow(pa) : balanced.Right));
        }
    }

    private static void AddRain(List<SnowCase> cases, SnowSite site, GableSection section, double leftPa, double rightPa)
    {
        (double surchargePa, double upToPa) = EditionRules.Of(site.Ground.Edition).RainOnSnow(site.Risk);
        double groundPa = site.Ground.PressurePa;
        bool left = section.LeftAngleDeg < section.LeftRunM / UsUnits.MPerFt / 50;
        bool right = section.RightAngleDeg < section.RightRunM / UsUnits.MPerFt / 50;
        if (groundPa > 0 && groundPa <= upToPa && (left || right))
        {
            cases.Add(new SnowCase(
                SnowCaseKind.RainOnSnow, new SlopeSnow(leftPa + (left ? surchargePa : 0)),
                new SlopeSnow(rightPa + (right ? surchargePa : 0))));
        }
    }
}
