using Glazewright.Science.Light;
using Glazewright.Science.Light.Shadows;
using Glazewright.Science.Optics;

namespace Glazewright.Bench.Convergence;

/// <summary>
/// The house of the study: 30 × 150 ft, 42° north, unequal slopes, clear to the south and at the ends, insulated panel to the north, every bar of its own. No job, so that
/// it stays the same whatever the design stages learn.
/// </summary>
internal static class StudyHouse
{
    internal const double LengthM = 45.72;
    internal const double WidthM = 9.144;
    internal const double BenchM = 0.76;

    /// <summary>Bearing of +x: no axis of symmetry falls on a node of the sun's grid.</summary>
    internal const double RangeBearingDeg = 98;

    internal const double AlbedoFraction = 0.2;

    private const double LeftEaveM = 2.4;
    private const double RightEaveM = 2.9;
    private const double RidgeYM = 6.1;
    private const double RidgeZM = 4.9;
    private const double FrameStepM = 1.8288;
    private const double JointStepM = 1.2192;

    /// <summary>Cells of the map as the product lays them: about 1.15 by 0.37 m.</summary>
    internal const int CellsAlong = 40;

    internal const int CellsAcross = 25;

    internal static Enclosure Enclosure { get; } = Make();

    /// <summary>The level plane at bench height.</summary>
    internal static ReceivingPlane Plane(int cellsAlong, int cellsAcross) => ReceivingPlane.Of(
        new(0, 0, BenchM), new(1, 0, 0), new(0, 1, 0), LengthM, WidthM, cellsAlong, cellsAcross);

    private static Enclosure Make()
    {
        GenericCovers.TryFind("polycarbonate-16-triple", out GenericCover? roof);
        GenericCovers.TryFind("polycarbonate-8-twin", out GenericCover? wall);
        var clearRoof = new FaceCovering.Clear(roof!.Optics(CoverCondition.InUse), 0, 0.5);
        var clearWall = new FaceCovering.Clear(wall!.Optics(CoverCondition.InUse), 0, 0.5);
        var panel = new FaceCovering.Opaque(0.7);
        const double l = LengthM;
        const double w = WidthM;
        return Enclosure.Of(
            [
                Face("left", clearWall, [new(0, 0, 0), new(l, 0, 0), new(l, 0, LeftEaveM), new(0, 0, LeftEaveM)]),
                Face("right", panel, [new(l, w, 0), new(0, w, 0), new(0, w, RightEaveM), new(l, w, RightEaveM)]),
                Face("roof-left", clearRoof, [new(0, 0, LeftEaveM), new(l, 0, LeftEaveM), new(l, RidgeYM, RidgeZM), new(0, RidgeYM, RidgeZM)]),
                Face("roof-right", panel, [new(l, w, RightEaveM), new(0, w, RightEaveM), new(0, RidgeYM, RidgeZM), new(l, RidgeYM, RidgeZM)]),
                Face("end1", clearWall, [new(0, w, 0), new(0, 0, 0), new(0, 0, LeftEaveM), new(0, RidgeYM, RidgeZM), new(0, w, RightEaveM)]),
                Face("end2", clearWall, [new(l, 0, 0), new(l, w, 0), new(l, w, RightEaveM), new(l, RidgeYM, RidgeZM), new(l, 0, LeftEaveM)]),
                Face("floor", new FaceCovering.CropPlane(0.1), [new(0, 0, 0), new(0, w, 0), new(l, w, 0), new(l, 0, 0)]),
            ],
            [.. Bars()]);
    }

    // Tube frames every 6 ft, sheet joints every 4 ft, purlins and eave beams the whole length.
    private static IEnumerable<ShadeBar> Bars()
    {
        var up = new Vector3d(0, 0, 1);
        var across = new Vector3d(0, 1, 0);
        for (int i = 0; i <= (int)Math.Round(LengthM / FrameStepM); i++)
        {
            double x = Math.Clamp(i * FrameStepM, 0.03, LengthM - 0.03);
            yield return ShadeBar.FourSided(new(x, 0.06, 0), new(x, 0.06, LeftEaveM), across, 0.05, 0.1);
            yield return ShadeBar.FourSided(new(x, WidthM - 0.06, 0), new(x, WidthM - 0.06, RightEaveM), across, 0.05, 0.1);
            yield return ShadeBar.FourSided(new(x, 0.06, LeftEaveM - 0.06), new(x, RidgeYM, RidgeZM - 0.07), up, 0.05, 0.1);
            yield return ShadeBar.FourSided(new(x, WidthM - 0.06, RightEaveM - 0.06), new(x, RidgeYM, RidgeZM - 0.07), up, 0.05, 0.1);
            yield return ShadeBar.FourSided(new(x, Left(3.4), 3.4), new(x, Right(3.4), 3.4), up, 0.05, 0.05);
        }

        for (int i = 1; i * JointStepM < LengthM - 0.1; i++)
        {
            double x = i * JointStepM;
            yield return ShadeBar.FourSided(new(x, 0.02, LeftEaveM - 0.02), new(x, RidgeYM, RidgeZM - 0.02), up, 0.06, 0.02);
            yield return ShadeBar.FourSided(new(x, 0.02, 0), new(x, 0.02, LeftEaveM), across, 0.06, 0.02);
        }

        foreach (double y in (double[])[0.08, 1.6, 3.1, 4.6, RidgeYM, 7.6, WidthM - 0.08])
        {
            double z = (y <= RidgeYM
                ? LeftEaveM + (y / RidgeYM * (RidgeZM - LeftEaveM))
                : RightEaveM + ((WidthM - y) / (WidthM - RidgeYM) * (RidgeZM - RightEaveM))) - 0.05;
            yield return ShadeBar.FourSided(new(0, y, z), new(LengthM, y, z), up, 0.05, 0.06);
        }
    }

    private static double Left(double z) => RidgeYM * (z - LeftEaveM) / (RidgeZM - LeftEaveM);

    private static double Right(double z) => WidthM - ((WidthM - RidgeYM) * (z - RightEaveM) / (RidgeZM - RightEaveM));

    private static EnclosureFace Face(string id, FaceCovering covering, Vector3d[] polygon) => new(id, polygon, covering, []);
}
