using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Checks;

/// <summary>Depth a straight pier needs to hold a sideways force by the soil beside it.</summary>
/// <remarks>International Building Code section 1807.3.2 (the same text in a state code, read). Formulae are in feet and pounds; here in SI by their ratios.</remarks>
public static class PierEmbedment
{
    private const double DeepestCountedM = 12 * UsUnits.MPerFt;
    private const double DeepestM = 60;

    /// <summary>The code's A = 2.34 P / (S1 b).</summary>
    /// <param name="forceN">Sideways force, N, 0 to 1e7.</param>
    /// <param name="soilPa">Allowed sideways soil pressure at a third of the depth, Pa, over 0.</param>
    /// <param name="widthM">Width of the pier across the force, m, 0.05 to 10.</param>
    /// <returns>m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static double FactorAM(double forceN, double soilPa, double widthM)
    {
        Require.Within(forceN, 0, 1e7);
        Require.Within(soilPa, 1e-6, 1e8);
        Require.Within(widthM, 0.05, 10);
        return 2.34 * forceN / (soilPa * widthM);
    }

    /// <summary>Depth where nothing holds the pier at grade: d = A/2 (1 + √(1 + 4.36 h/A)), found for its own depth.</summary>
    /// <param name="forceN">Sideways force, N, 0 to 1e7.</param>
    /// <param name="heightM">Its height over grade, m, 0 to 100 (a moment over the force counts as height).</param>
    /// <param name="widthM">Width of the pier across the force, m, 0.05 to 10.</param>
    /// <param name="soilPaPerM">Allowed sideways soil pressure for a metre of depth, Pa/m, 1 to 1e7; counted down to 12 ft.</param>
    /// <returns>m, at most 60.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    /// <remarks>Eq. 18-1.</remarks>
    public static double FreeM(double forceN, double heightM, double widthM, double soilPaPerM)
    {
        Require.Within(heightM, 0, 100);
        Require.Within(soilPaPerM, 1, 1e7);
        return SelfConsistentM(depthM =>
        {
            double a = FactorAM(forceN, soilPaPerM * Math.Min(depthM, DeepestCountedM) / 3, widthM);
            return a == 0 ? 0 : a / 2 * (1 + Math.Sqrt(1 + 4.36 * heightM / a));
        });
    }

    /// <summary>Depth where a slab holds the pier at grade: d = √(4.25 P h / (S3 b)), found for its own depth.</summary>
    /// <param name="forceN">Sideways force, N, 0 to 1e7.</param>
    /// <param name="heightM">Its height over grade, m, 0 to 100.</param>
    /// <param name="widthM">Width of the pier across the force, m, 0.05 to 10.</param>
    /// <param name="soilPaPerM">Allowed sideways soil pressure for a metre of depth, Pa/m, 1 to 1e7; counted down to 12 ft.</param>
    /// <returns>m, at most 60.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    /// <remarks>Eq. 18-2.</remarks>
    public static double HeldAtGradeM(double forceN, double heightM, double widthM, double soilPaPerM)
    {
        Require.Within(forceN, 0, 1e7);
        Require.Within(heightM, 0, 100);
        Require.Within(widthM, 0.05, 10);
        Require.Within(soilPaPerM, 1, 1e7);
        return SelfConsistentM(depthM =>
            Math.Sqrt(4.25 * forceN * heightM / (soilPaPerM * Math.Min(depthM, DeepestCountedM) * widthM)));
    }

    /// <summary>Presumed sideways pressure for a metre of depth by the soil class its presumed bearing belongs to.</summary>
    /// <param name="bearingPa">Presumed vertical bearing, Pa, 1 to 1e6.</param>
    /// <returns>Pa/m: 100, 150, 200, 400 or 1200 psf per foot.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    /// <remarks>IBC table 1806.2. Read in a reproduction.</remarks>
    public static double PresumedSoilPaPerM(double bearingPa)
    {
        Require.Within(bearingPa, 1, 1e6);
        double psf = bearingPa / UsUnits.PaPerPsf;
        double perFoot = psf >= 11_900 ? 1200 : psf >= 3_950 ? 400 : psf >= 2_950 ? 200 : psf >= 1_950 ? 150 : 100;
        return perFoot * UsUnits.NPerM3PerPcf;
    }

    // The needed depth falls as the trial depth grows, so they cross once: halve the bracket.
    private static double SelfConsistentM(Func<double, double> neededM)
    {
        double low = 1e-6;
        double high = DeepestM;
        if (neededM(high) >= high)
        {
            return DeepestM;
        }

        for (int halving = 0; halving < 80; halving++)
        {
            double middle = (low + high) / 2;
            (low, high) = neededM(middle) > middle ? (middle, high) : (low, middle);
        }

        return high;
    }
}
