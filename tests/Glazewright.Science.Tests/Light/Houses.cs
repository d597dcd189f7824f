using Glazewright.Science.Light;
using Glazewright.Science.Optics;

namespace Glazewright.Science.Tests.Light;

/// <summary>Houses for the tests: a gable house with unequal slopes along x.</summary>
internal static class Houses
{
    internal static readonly FaceCovering.CropPlane Crop = new(0.2);

    internal static FaceCovering.Clear Clear(string id, double frameFraction = 0.08)
    {
        GenericCovers.TryFind(id, out GenericCover? cover);
        return new FaceCovering.Clear(cover!.Optics(CoverCondition.InUse), frameFraction, 0.5);
    }

    /// <summary>A cover that lets everything through.</summary>
    internal static FaceCovering.Clear Open { get; } = new(
        CoverOptics.FromTable([.. Enumerable.Repeat(new LightShares(1, 0, 0), CoverOptics.Entries)], 0), 0, 0);

    /// <summary>Length along x, width along y; the left side is y = 0.</summary>
    internal static List<EnclosureFace> Gable(
        double length, double width, double leftEave, double rightEave, double ridgeY, double ridgeZ,
        FaceCovering left, FaceCovering right, FaceCovering roofLeft, FaceCovering roofRight, FaceCovering ends, FaceCovering floor)
    {
        Vector3d P(double x, double y, double z) => new(x, y, z);
        return
        [
            new("left", [P(0, 0, 0), P(length, 0, 0), P(length, 0, leftEave), P(0, 0, leftEave)], left, []),
            new("right", [P(length, width, 0), P(0, width, 0), P(0, width, rightEave), P(length, width, rightEave)], right, []),
            new("roof-left", [P(0, 0, leftEave), P(length, 0, leftEave), P(length, ridgeY, ridgeZ), P(0, ridgeY, ridgeZ)], roofLeft, []),
            new("roof-right", [P(length, width, rightEave), P(0, width, rightEave), P(0, ridgeY, ridgeZ), P(length, ridgeY, ridgeZ)], roofRight, []),
            new("end1", [P(0, width, 0), P(0, 0, 0), P(0, 0, leftEave), P(0, ridgeY, ridgeZ), P(0, width, rightEave)], ends, []),
            new("end2", [P(length, 0, 0), P(length, width, 0), P(length, width, rightEave), P(length, ridgeY, ridgeZ), P(length, 0, leftEave)], ends, []),
            new("floor", [P(0, 0, 0), P(0, width, 0), P(length, width, 0), P(length, 0, 0)], floor, []),
        ];
    }

    /// <summary>All clear, unequal, the case most tests use.</summary>
    internal static Enclosure Usual() => Enclosure.Of(Gable(
        30, 8, 2.3, 2.9, 5.2, 4.9, Clear("polycarbonate-8-twin"), Clear("polycarbonate-8-twin"), Clear("polycarbonate-16-triple"), Clear("polycarbonate-16-triple"), Clear("polycarbonate-8-twin"), Crop));

    /// <summary>Opaque on the right side, a door in the left wall.</summary>
    internal static Enclosure HalfOpaque()
    {
        var panel = new FaceCovering.Opaque(0.7);
        List<EnclosureFace> faces = Gable(
            30, 8, 2.3, 2.9, 5.2, 4.9, Clear("polycarbonate-8-twin"), panel, Clear("polycarbonate-16-triple"), panel, Clear("polycarbonate-8-twin"), Crop);
        faces[0] = faces[0] with
        {
            Patches =
            [
                new EnclosurePatch(
                    "door", [new(4, 0, 0), new(5.2, 0, 0), new(5.2, 0, 2.1), new(4, 0, 2.1)], new FaceCovering.Opaque(0.5)),
            ],
        };
        return Enclosure.Of(faces);
    }

    internal static readonly CurtainPlane Curtain = new(2.1, 0.45, 0.35, 0.30, 0.7);
}
