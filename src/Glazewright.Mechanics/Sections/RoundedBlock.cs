namespace Glazewright.Mechanics.Sections;

/// <summary>
/// A solid rectangle with four round corners; a tube is one less another. Each corner takes away the spandrel between
/// the square corner and its quarter circle, whose area is (1 − π/4) r², whose centroid lies (10 − 3π)/(12 − 3π) r from each
/// side, and whose own second moment is (1/3 − π/16 − 1/(36 − 9π)) r⁴. Textbook geometry.
/// </summary>
internal static class RoundedBlock
{
    private const double SpandrelAreaFactor = 1 - Math.PI / 4;
    private const double SpandrelCentroidFactor = (10 - 3 * Math.PI) / (12 - 3 * Math.PI);
    private const double SpandrelInertiaFactor = 1.0 / 3 - Math.PI / 16 - 1 / (36 - 9 * Math.PI);

    internal static double AreaM2(double depthM, double widthM, double radiusM) =>
        depthM * widthM - 4 * SpandrelAreaFactor * radiusM * radiusM;

    internal static double InertiaM4(double depthM, double widthM, double radiusM)
    {
        double armM = depthM / 2 - SpandrelCentroidFactor * radiusM;
        double cornerM4 = SpandrelInertiaFactor * Math.Pow(radiusM, 4) + SpandrelAreaFactor * radiusM * radiusM * armM * armM;
        return widthM * depthM * depthM * depthM / 12 - 4 * cornerM4;
    }

    internal static double PlasticModulusM3(double depthM, double widthM, double radiusM)
    {
        double armM = depthM / 2 - SpandrelCentroidFactor * radiusM;
        return widthM * depthM * depthM / 4 - 4 * SpandrelAreaFactor * radiusM * radiusM * armM;
    }
}
