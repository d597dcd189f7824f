using Glazewright.Mechanics.Guards;
using Glazewright.Mechanics.Sections;

namespace Glazewright.Mechanics.Checks;

/// <summary>Nominal bending strength of structural tube (HSS), strong or weak axis.</summary>
/// <remarks>ANSI/AISC 360-16 sections F7 (square, rectangular) and F8 (round). From memory, checked on published examples.</remarks>
public static class StructuralTubeBending
{
    private const double ResistanceFactor = 0.90;
    private const double SafetyFactor = 1.67;

    /// <summary>Bending about the strong axis.</summary>
    /// <param name="section">The tube.</param>
    /// <param name="steel">The steel.</param>
    /// <param name="unbracedM">Length between points braced against lateral buckling, m, 0 to 60.</param>
    /// <param name="momentGradientFactor">Cb, 1 to 3; 1 is safe.</param>
    /// <returns>N·m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static Strength StrongNM(TubeSection section, Steel steel, double unbracedM, double momentGradientFactor = 1)
    {
        Require.Within(unbracedM, 0, 60);
        Require.Within(momentGradientFactor, 1, 3);
        if (section.Shape is TubeShape.Round)
        {
            return Round(section, steel);
        }

        Strength local = Walls(
            section, steel, section.StrongPlasticModulusM3, section.StrongElasticModulusM3, section.FlangeSlendernessRatio,
            section.WebSlendernessRatio, StrongEffectiveModulusM3);
        double lateral = LateralNM(section, steel, unbracedM, momentGradientFactor);
        return lateral < local.NominalValue ? local with { NominalValue = lateral, Limit = StrengthLimit.LateralTorsionalBuckling } : local;
    }

    /// <summary>Bending about the weak axis, which cannot buckle sideways.</summary>
    /// <param name="section">The tube.</param>
    /// <param name="steel">The steel.</param>
    /// <returns>N·m.</returns>
    public static Strength WeakNM(TubeSection section, Steel steel) => section.Shape is TubeShape.Round
        ? Round(section, steel)
        : Walls(
            section, steel, section.WeakPlasticModulusM3, section.WeakElasticModulusM3, section.WebSlendernessRatio,
            section.FlangeSlendernessRatio, WeakEffectiveModulusM3);

    private static Strength Walls(
        TubeSection section, Steel steel, double plasticM3, double elasticM3, double flangeRatio, double webRatio,
        Func<TubeSection, double, double> effectiveModulusM3)
    {
        double root = Math.Sqrt(steel.ElasticPa / steel.YieldPa);
        double plasticNM = steel.YieldPa * plasticM3;
        double yieldNM = steel.YieldPa * elasticM3;
        double nominal = plasticNM;
        if (flangeRatio > 1.40 * root)
        {
            nominal = steel.YieldPa * effectiveModulusM3(section, EffectiveFlangeLossM(section, steel, flangeRatio));
        }
        else if (flangeRatio > 1.12 * root)
        {
            // Eq. F7-2.
            nominal = plasticNM - (plasticNM - yieldNM) * (3.57 * flangeRatio / root - 4.0);
        }

        if (webRatio > 2.42 * root)
        {
            // Eq. F7-6; a web past 5.70 √(E/Fy) is out of these rules and is told by the gaps of the member check.
            nominal = Math.Min(nominal, plasticNM - (plasticNM - yieldNM) * (0.305 * webRatio / root - 0.738));
        }

        nominal = Math.Min(nominal, plasticNM);
        return new Strength(
            nominal, ResistanceFactor, SafetyFactor, nominal < plasticNM ? StrengthLimit.LocalBuckling : StrengthLimit.Yielding);
    }

    // Eq. F7-4: be = 1.92 t √(E/Fy) (1 − 0.38/(b/t) √(E/Fy)) ≤ b.
    private static double EffectiveFlangeLossM(TubeSection section, Steel steel, double flangeRatio)
    {
        double wallM = section.Shape.WallM;
        double root = Math.Sqrt(steel.ElasticPa / steel.YieldPa);
        double effectiveM = 1.92 * wallM * root * (1 - 0.38 / flangeRatio * root);
        return Math.Max(0, flangeRatio * wallM - effectiveM);
    }

    private static double StrongEffectiveModulusM3(TubeSection section, double lossM) => EffectiveModulusM3(
        section.StrongInertiaM4, ((TubeShape.Rectangular)section.Shape).DepthM, section.Shape.WallM, lossM);

    private static double WeakEffectiveModulusM3(TubeSection section, double lossM) => EffectiveModulusM3(
        section.WeakInertiaM4, ((TubeShape.Rectangular)section.Shape).WidthM, section.Shape.WallM, lossM);

    // The lost strip is taken from both walls, which keeps the neutral axis in the middle: the safe simplification of AISC Design Example F.8B.
    private static double EffectiveModulusM3(double inertiaM4, double depthM, double wallM, double lossM)
    {
        double armM = (depthM - wallM) / 2;
        double stripM4 = lossM * wallM * wallM * wallM / 12 + lossM * wallM * armM * armM;
        return (inertiaM4 - 2 * stripM4) / (depthM / 2);
    }

    /// <summary>Unbraced lengths up to which the section goes plastic, and from which it buckles elastically: Lp and Lr of eqs F7-12 and F7-13, m.</summary>
    internal static (double PlasticM, double ElasticM) LateralLengths(TubeSection section, Steel steel)
    {
        double stiff = LateralStiffness(section, steel);
        return (
            0.13 * stiff / (steel.YieldPa * section.StrongPlasticModulusM3), 2 * stiff / (0.7 * steel.YieldPa * section.StrongElasticModulusM3));
    }

    private static double LateralStiffness(TubeSection section, Steel steel) =>
        steel.ElasticPa * section.WeakGyrationM * Math.Sqrt(section.TorsionConstantM4 * section.AreaM2);

    // Eqs F7-10 and F7-11.
    private static double LateralNM(TubeSection section, Steel steel, double unbracedM, double momentGradientFactor)
    {
        double plasticNM = steel.YieldPa * section.StrongPlasticModulusM3;
        double reducedNM = 0.7 * steel.YieldPa * section.StrongElasticModulusM3;
        double stiff = LateralStiffness(section, steel);
        (double plasticM, double elasticM) = LateralLengths(section, steel);
        if (section.WeakInertiaM4 >= section.StrongInertiaM4 || unbracedM <= plasticM)
        {
            return plasticNM;
        }

        double nominal = unbracedM <= elasticM
            ? plasticNM - (plasticNM - reducedNM) * (unbracedM - plasticM) / (elasticM - plasticM)
            : 2 * stiff / unbracedM;
        return Math.Min(plasticNM, momentGradientFactor * nominal);
    }

    // F8-1 to F8-4.
    private static Strength Round(TubeSection section, Steel steel)
    {
        double slenderness = section.WebSlendernessRatio;
        double ratio = steel.ElasticPa / steel.YieldPa;
        double plasticNM = steel.YieldPa * section.StrongPlasticModulusM3;
        double nominal = slenderness <= 0.07 * ratio ? plasticNM
            : slenderness <= 0.31 * ratio ? (0.021 * steel.ElasticPa / slenderness + steel.YieldPa) * section.StrongElasticModulusM3
            : 0.33 * steel.ElasticPa / slenderness * section.StrongElasticModulusM3;
        nominal = Math.Min(nominal, plasticNM);
        return new Strength(
            nominal, ResistanceFactor, SafetyFactor, nominal < plasticNM ? StrengthLimit.LocalBuckling : StrengthLimit.Yielding);
    }
}
