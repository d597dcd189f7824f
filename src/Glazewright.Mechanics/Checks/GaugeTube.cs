using Glazewright.Mechanics.Guards;
using Glazewright.Mechanics.Sections;

namespace Glazewright.Mechanics.Checks;

/// <summary>Nominal strengths of tube formed of gauge sheet.</summary>
/// <remarks>
/// AISI S100 (2012 numbering): C4 with B2.1 for compression, C3.1.1 with full walls and C3.1.3 for bending, C3.2 for shear.
/// Formulae read at second hand. Rectangular tube whose walls are not fully effective in bending is not covered.
/// </remarks>
public static class GaugeTube
{
    private const double Poisson = 0.3;

    /// <summary>Compression, walls at their effective width at the buckling stress.</summary>
    /// <param name="section">The tube.</param>
    /// <param name="steel">The steel.</param>
    /// <param name="strongLengthM">Effective length about the strong axis, m, 0 to 60.</param>
    /// <param name="weakLengthM">Effective length about the weak axis, m, 0 to 60.</param>
    /// <returns>N; φ 0.85, Ω 1.80.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length out of range.</exception>
    public static Strength CompressionN(TubeSection section, Steel steel, double strongLengthM, double weakLengthM)
    {
        Require.Within(strongLengthM, 0, 60);
        Require.Within(weakLengthM, 0, 60);
        double slenderness = StructuralTube.SlendernessRatio(section, strongLengthM, weakLengthM);
        double stressPa = steel.YieldPa;
        if (slenderness > 0)
        {
            double elasticPa = Math.PI * Math.PI * steel.ElasticPa / (slenderness * slenderness);
            double squared = steel.YieldPa / elasticPa;
            stressPa = squared <= 2.25 ? Math.Pow(0.658, squared) * steel.YieldPa : 0.877 / squared * steel.YieldPa;
        }

        double areaM2 = section.AreaM2;
        if (section.Shape is TubeShape.Rectangular tube)
        {
            areaM2 -= 2 * tube.WallM * (LostM(tube.WallM, section.FlangeSlendernessRatio, steel, stressPa, 4)
                + LostM(tube.WallM, section.WebSlendernessRatio, steel, stressPa, 4));
        }

        StrengthLimit limit = areaM2 < section.AreaM2 ? StrengthLimit.ThinWallBuckling
            : stressPa < 0.999 * steel.YieldPa ? StrengthLimit.FlexuralBuckling : StrengthLimit.Yielding;
        return new Strength(stressPa * areaM2, 0.85, 1.80, limit);
    }

    /// <summary>Whether the walls are fully effective in bending at yield, so that <see cref="BendingNM"/> covers the tube.</summary>
    /// <param name="section">The tube.</param>
    /// <param name="steel">The steel.</param>
    /// <param name="strong">True for the strong axis.</param>
    public static bool CoversBending(TubeSection section, Steel steel, bool strong)
    {
        if (section.Shape is TubeShape.Round)
        {
            return section.WebSlendernessRatio <= 0.441 * steel.ElasticPa / steel.YieldPa;
        }

        double flange = strong ? section.FlangeSlendernessRatio : section.WebSlendernessRatio;
        double web = strong ? section.WebSlendernessRatio : section.FlangeSlendernessRatio;
        double wallM = section.Shape.WallM;
        return LostM(wallM, flange, steel, steel.YieldPa, 4) == 0 && LostM(wallM, web, steel, steel.YieldPa, 24) == 0;
    }

    /// <summary>Bending: first yield of fully effective rectangular tube (closed tube of these lengths does not buckle sideways); round tube by its own rule.</summary>
    /// <param name="section">The tube.</param>
    /// <param name="steel">The steel.</param>
    /// <param name="strong">True for the strong axis.</param>
    /// <returns>N·m; φ 0.95, Ω 1.67. Only good where <see cref="CoversBending"/>.</returns>
    public static Strength BendingNM(TubeSection section, Steel steel, bool strong)
    {
        double modulusM3 = strong ? section.StrongElasticModulusM3 : section.WeakElasticModulusM3;
        double yieldNM = steel.YieldPa * modulusM3;
        if (section.Shape is not TubeShape.Round)
        {
            return new Strength(yieldNM, 0.95, 1.67, StrengthLimit.Yielding);
        }

        double ratio = steel.ElasticPa / steel.YieldPa;
        double slenderness = section.WebSlendernessRatio;
        double nominal = slenderness <= 0.0714 * ratio ? 1.25 * yieldNM
            : slenderness <= 0.318 * ratio ? (0.970 + 0.020 * ratio / slenderness) * yieldNM
            : 0.328 * ratio / slenderness * yieldNM;
        return new Strength(
            nominal, 0.95, 1.67, slenderness <= 0.0714 * ratio ? StrengthLimit.Yielding : StrengthLimit.LocalBuckling);
    }

    /// <summary>Shear along the depth.</summary>
    /// <param name="section">The tube.</param>
    /// <param name="steel">The steel.</param>
    /// <returns>N; φ 0.95, Ω 1.60.</returns>
    public static Strength ShearN(TubeSection section, Steel steel)
    {
        if (section.Shape is not TubeShape.Rectangular)
        {
            return new Strength(0.6 * steel.YieldPa * section.AreaM2 / 2, 0.95, 1.60, StrengthLimit.Shear);
        }

        const double Kv = 5.34;
        double web = section.WebSlendernessRatio;
        double root = Math.Sqrt(steel.ElasticPa * Kv / steel.YieldPa);
        double stressPa = web <= root ? 0.60 * steel.YieldPa
            : web <= 1.51 * root ? 0.60 * Math.Sqrt(steel.ElasticPa * Kv * steel.YieldPa) / web
            : 0.904 * steel.ElasticPa * Kv / (web * web);
        double areaM2 = 2 * web * section.Shape.WallM * section.Shape.WallM;
        return new Strength(stressPa * areaM2, 0.95, 1.60, StrengthLimit.Shear);
    }

    // B2.1: λ = √(f/Fcr), Fcr = k π² E / (12 (1 − μ²)) (t/w)², ρ = (1 − 0.22/λ)/λ past 0.673.
    private static double LostM(double wallM, double flatRatio, Steel steel, double stressPa, double plateFactor)
    {
        if (flatRatio == 0)
        {
            return 0;
        }

        double localPa = plateFactor * Math.PI * Math.PI * steel.ElasticPa / (12 * (1 - Poisson * Poisson)) / (flatRatio * flatRatio);
        double lambda = Math.Sqrt(stressPa / localPa);
        // The two branches do not quite meet: just past 0.673 the formula gives 1.0002.
        double kept = lambda <= 0.673 ? 1 : Math.Min(1, (1 - 0.22 / lambda) / lambda);
        return (1 - kept) * flatRatio * wallM;
    }
}
