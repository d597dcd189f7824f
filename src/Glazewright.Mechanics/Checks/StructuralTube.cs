using Glazewright.Mechanics.Guards;
using Glazewright.Mechanics.Sections;

namespace Glazewright.Mechanics.Checks;

/// <summary>Nominal strengths of structural tube (HSS).</summary>
/// <remarks>ANSI/AISC 360-16 (the same clauses stand in -22), chapters B, D, E, F, G. From memory, checked on published examples.</remarks>
public static class StructuralTube
{
    private const double CompressionFactor = 0.90;
    private const double AsdFactor = 1.67;

    /// <summary>Tension by yielding of the whole section; rupture belongs to the connection and is not here.</summary>
    /// <param name="section">The tube.</param>
    /// <param name="steel">The steel.</param>
    /// <returns>N. Section D2(a).</returns>
    public static Strength TensionN(TubeSection section, Steel steel) =>
        new(steel.YieldPa * section.AreaM2, 0.90, AsdFactor, StrengthLimit.Yielding);

    /// <summary>Compression: flexural buckling about the worse axis, thin walls at their effective width.</summary>
    /// <param name="section">The tube.</param>
    /// <param name="steel">The steel.</param>
    /// <param name="strongLengthM">Effective length for buckling about the strong axis (in the plane of the depth), m, 0 to 60.</param>
    /// <param name="weakLengthM">Effective length about the weak axis, m, 0 to 60.</param>
    /// <returns>N. Sections E3 and E7.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length out of range.</exception>
    public static Strength CompressionN(TubeSection section, Steel steel, double strongLengthM, double weakLengthM)
    {
        Require.Within(strongLengthM, 0, 60);
        Require.Within(weakLengthM, 0, 60);
        double criticalPa = BucklingStressPa(section, steel, strongLengthM, weakLengthM);
        double areaM2 = EffectiveAreaM2(section, steel, criticalPa);
        StrengthLimit limit = areaM2 < section.AreaM2
            ? StrengthLimit.ThinWallBuckling
            : criticalPa < 0.999 * steel.YieldPa ? StrengthLimit.FlexuralBuckling : StrengthLimit.Yielding;
        return new Strength(criticalPa * areaM2, CompressionFactor, AsdFactor, limit);
    }

    /// <summary>Slenderness KL/r of the worse axis.</summary>
    /// <param name="section">The tube.</param>
    /// <param name="strongLengthM">Effective length about the strong axis, m.</param>
    /// <param name="weakLengthM">Effective length about the weak axis, m.</param>
    /// <returns>The ratio.</returns>
    public static double SlendernessRatio(TubeSection section, double strongLengthM, double weakLengthM) =>
        Math.Max(strongLengthM / section.StrongGyrationM, weakLengthM / section.WeakGyrationM);

    /// <summary>Shear along the depth.</summary>
    /// <param name="section">The tube.</param>
    /// <param name="steel">The steel.</param>
    /// <returns>N. Sections G4 (rectangular) and G5 (round, by yielding).</returns>
    public static Strength ShearN(TubeSection section, Steel steel)
    {
        if (section.Shape is not TubeShape.Rectangular r)
        {
            return new Strength(0.6 * steel.YieldPa * section.AreaM2 / 2, 0.90, AsdFactor, StrengthLimit.Shear);
        }

        const double Kv = 5;
        double flat = (r.DepthM - 3 * r.WallM) / r.WallM;
        double first = 1.10 * Math.Sqrt(Kv * steel.ElasticPa / steel.YieldPa);
        double second = 1.37 * Math.Sqrt(Kv * steel.ElasticPa / steel.YieldPa);
        double buckling = flat <= first ? 1
            : flat <= second ? first / flat
            : 1.51 * Kv * steel.ElasticPa / (flat * flat * steel.YieldPa);
        double areaM2 = 2 * (r.DepthM - 3 * r.WallM) * r.WallM;
        return new Strength(0.6 * steel.YieldPa * areaM2 * buckling, 0.90, AsdFactor, StrengthLimit.Shear);
    }

    private static double BucklingStressPa(TubeSection section, Steel steel, double strongLengthM, double weakLengthM)
    {
        double slenderness = SlendernessRatio(section, strongLengthM, weakLengthM);
        if (slenderness == 0)
        {
            return steel.YieldPa;
        }

        double elasticPa = Math.PI * Math.PI * steel.ElasticPa / (slenderness * slenderness);
        double ratio = steel.YieldPa / elasticPa;
        return ratio <= 2.25 ? Math.Pow(0.658, ratio) * steel.YieldPa : 0.877 * elasticPa;
    }

    // E7.1: be = b (1 − c1 √(Fel/Fcr)) √(Fel/Fcr), c1 0.20 and c2 1.38 for the walls of tubes; E7.2 for round tube.
    private static double EffectiveAreaM2(TubeSection section, Steel steel, double criticalPa)
    {
        if (section.Shape is TubeShape.Round round)
        {
            double slenderness = round.DiameterM / round.WallM;
            double limit = 0.11 * steel.ElasticPa / steel.YieldPa;
            return slenderness <= limit
                ? section.AreaM2
                : section.AreaM2 * (0.038 * steel.ElasticPa / (steel.YieldPa * slenderness) + 2.0 / 3);
        }

        var tube = (TubeShape.Rectangular)section.Shape;
        double lostM = 0;
        foreach (double slenderness in (double[])[section.FlangeSlendernessRatio, section.WebSlendernessRatio])
        {
            lostM += 2 * LostWidthM(slenderness, tube.WallM, steel, criticalPa);
        }

        return section.AreaM2 - lostM * tube.WallM;
    }

    private static double LostWidthM(double slenderness, double wallM, Steel steel, double criticalPa)
    {
        double limit = 1.40 * Math.Sqrt(steel.ElasticPa / steel.YieldPa);
        if (slenderness <= limit * Math.Sqrt(steel.YieldPa / criticalPa))
        {
            return 0;
        }

        double localPa = Math.Pow(1.38 * limit / slenderness, 2) * steel.YieldPa;
        double root = Math.Sqrt(localPa / criticalPa);
        double widthM = slenderness * wallM;
        return widthM - Math.Min(widthM, widthM * (1 - 0.20 * root) * root);
    }
}
