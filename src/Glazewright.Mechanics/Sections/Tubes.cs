using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Sections;

/// <summary>Makes tubes from their sizes.</summary>
public static class Tubes
{
    // 490 lb/ft³, the density behind the printed nominal weights.
    private const double SteelDensityKgPerM3 = 490 * 16.018463373960142;

    /// <summary>Wall used for strength of structural tube over the wall ordered (AISC 360 B4.2, A500 and the like). Read.</summary>
    public const double StructuralWallFactor = 0.93;

    /// <summary>Outside corner radius over the design wall, the value that gives back the printed property tables.</summary>
    public const double CornerRadiusFactor = 2.0;

    /// <summary>A square or rectangular structural tube (HSS).</summary>
    /// <param name="name">Its name.</param>
    /// <param name="depthM">Outside depth, m, 0.02 to 1.</param>
    /// <param name="widthM">Outside width, m, 0.02 to 1.</param>
    /// <param name="nominalWallM">Wall as ordered, m; strength uses 0.93 of it.</param>
    /// <returns>The tube with its properties.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A size out of range, or a wall thicker than a fifth of the smaller side.</exception>
    public static TubeSection Structural(string name, double depthM, double widthM, double nominalWallM)
    {
        double wallM = StructuralWallFactor * nominalWallM;
        return Rectangular(name, TubeStandard.Structural, depthM, widthM, wallM, CornerRadiusFactor * wallM, nominalWallM);
    }

    /// <summary>A square or rectangular structural tube whose design wall is given, as the property tables list it.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="depthM">Outside depth, m, 0.02 to 1.</param>
    /// <param name="widthM">Outside width, m, 0.02 to 1.</param>
    /// <param name="designWallM">Design wall, m.</param>
    /// <returns>The tube with its properties.</returns>
    /// <exception cref="ArgumentOutOfRangeException">As <see cref="Structural"/>.</exception>
    public static TubeSection StructuralOfDesignWall(string name, double depthM, double widthM, double designWallM) =>
        Rectangular(
            name, TubeStandard.Structural, depthM, widthM, designWallM, CornerRadiusFactor * designWallM,
            designWallM / StructuralWallFactor);

    /// <summary>A square or rectangular tube of gauge sheet; the wall is bare metal, without zinc.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="depthM">Outside depth, m, 0.02 to 1.</param>
    /// <param name="widthM">Outside width, m, 0.02 to 1.</param>
    /// <param name="bareWallM">Bare metal thickness, m.</param>
    /// <param name="outerRadiusM">Outside corner radius, m; null takes twice the wall.</param>
    /// <returns>The tube with its properties.</returns>
    /// <exception cref="ArgumentOutOfRangeException">As <see cref="Structural"/>.</exception>
    public static TubeSection Gauge(string name, double depthM, double widthM, double bareWallM, double? outerRadiusM = null) =>
        Rectangular(
            name, TubeStandard.Gauge, depthM, widthM, bareWallM, outerRadiusM ?? CornerRadiusFactor * bareWallM, bareWallM);

    /// <summary>A round tube.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="standard">Structural (strength uses 0.93 of the wall) or gauge (the whole bare wall).</param>
    /// <param name="diameterM">Outside diameter, m, 0.02 to 1.</param>
    /// <param name="orderedWallM">Wall as ordered, m.</param>
    /// <returns>The tube with its properties.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A size out of range.</exception>
    public static TubeSection Round(string name, TubeStandard standard, double diameterM, double orderedWallM)
    {
        Require.Within(diameterM, 0.02, 1);
        Require.Within(orderedWallM, 0.0005, diameterM / 5);
        double wallM = standard == TubeStandard.Structural ? StructuralWallFactor * orderedWallM : orderedWallM;
        double insideM = diameterM - 2 * wallM;
        double areaM2 = Math.PI / 4 * (diameterM * diameterM - insideM * insideM);
        double inertiaM4 = Math.PI / 64 * (Math.Pow(diameterM, 4) - Math.Pow(insideM, 4));
        double elasticM3 = 2 * inertiaM4 / diameterM;
        double plasticM3 = (Math.Pow(diameterM, 3) - Math.Pow(insideM, 3)) / 6;
        double massKgPerM = SteelDensityKgPerM3 * Math.PI * (diameterM - orderedWallM) * orderedWallM;
        return new TubeSection(
            name, new TubeShape.Round(diameterM, wallM), standard, areaM2, inertiaM4, inertiaM4, elasticM3, elasticM3,
            plasticM3, plasticM3, 2 * inertiaM4, massKgPerM);
    }

    private static TubeSection Rectangular(
        string name, TubeStandard standard, double depthM, double widthM, double wallM, double outerRadiusM, double orderedWallM)
    {
        Require.Within(depthM, 0.02, 1);
        Require.Within(widthM, 0.02, 1);
        Require.Within(orderedWallM, 0.0005, Math.Min(depthM, widthM) / 5);
        Require.Within(outerRadiusM, wallM, Math.Min(depthM, widthM) / 2);
        double insideDepthM = depthM - 2 * wallM;
        double insideWidthM = widthM - 2 * wallM;
        double insideRadiusM = outerRadiusM - wallM;
        double areaM2 = RoundedBlock.AreaM2(depthM, widthM, outerRadiusM)
            - RoundedBlock.AreaM2(insideDepthM, insideWidthM, insideRadiusM);
        double strongM4 = RoundedBlock.InertiaM4(depthM, widthM, outerRadiusM)
            - RoundedBlock.InertiaM4(insideDepthM, insideWidthM, insideRadiusM);
        double weakM4 = RoundedBlock.InertiaM4(widthM, depthM, outerRadiusM)
            - RoundedBlock.InertiaM4(insideWidthM, insideDepthM, insideRadiusM);
        double strongPlasticM3 = RoundedBlock.PlasticModulusM3(depthM, widthM, outerRadiusM)
            - RoundedBlock.PlasticModulusM3(insideDepthM, insideWidthM, insideRadiusM);
        double weakPlasticM3 = RoundedBlock.PlasticModulusM3(widthM, depthM, outerRadiusM)
            - RoundedBlock.PlasticModulusM3(insideWidthM, insideDepthM, insideRadiusM);
        return new TubeSection(
            name, new TubeShape.Rectangular(depthM, widthM, wallM, outerRadiusM), standard, areaM2, strongM4, weakM4,
            2 * strongM4 / depthM, 2 * weakM4 / widthM, strongPlasticM3, weakPlasticM3,
            TorsionM4(depthM, widthM, wallM, outerRadiusM), MassKgPerM(depthM, widthM, orderedWallM));
    }

    private static double TorsionM4(double depthM, double widthM, double wallM, double outerRadiusM)
    {
        double middleRadiusM = outerRadiusM - wallM / 2;
        double enclosedM2 = (depthM - wallM) * (widthM - wallM) - (4 - Math.PI) * middleRadiusM * middleRadiusM;
        double perimeterM = 2 * (depthM + widthM - 2 * wallM) - 2 * (4 - Math.PI) * middleRadiusM;
        return 4 * enclosedM2 * enclosedM2 * wallM / perimeterM;
    }

    private static double MassKgPerM(double depthM, double widthM, double orderedWallM)
    {
        double outerM = CornerRadiusFactor * orderedWallM;
        double areaM2 = RoundedBlock.AreaM2(depthM, widthM, outerM)
            - RoundedBlock.AreaM2(depthM - 2 * orderedWallM, widthM - 2 * orderedWallM, outerM - orderedWallM);
        return SteelDensityKgPerM3 * areaM2;
    }
}
