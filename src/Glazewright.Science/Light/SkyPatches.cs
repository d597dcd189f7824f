namespace Glazewright.Science.Light;

/// <summary>A direction of the sky with its weight.</summary>
/// <param name="Towards">Unit vector.</param>
/// <param name="IrradianceFactor">Normal irradiance from here in an even sky of unit horizontal irradiance: radiance 1/π times the solid angle.</param>
internal readonly record struct SkyPatch(Vector3d Towards, double IrradianceFactor);

/// <summary>The even sky in 288 directions: Gauss–Legendre in elevation, even steps in azimuth.</summary>
internal static class SkyPatches
{
    internal const int Azimuths = 36;

    // Eight points on 0..1 (Abramowitz & Stegun, table 25.4, shifted).
    private static readonly double[] Node =
    [
        0.019855071751231884, 0.10166676129318664, 0.2372337950418355, 0.4082826787521751,
        0.5917173212478249, 0.7627662049581645, 0.8983332387068134, 0.9801449282487681,
    ];

    private static readonly double[] Weight =
    [
        0.050614268145188130, 0.11119051722668724, 0.15685332293894363, 0.18134189168918100,
        0.18134189168918100, 0.15685332293894363, 0.11119051722668724, 0.050614268145188130,
    ];

    internal static IReadOnlyList<SkyPatch> UpperHalf { get; } = Make(Azimuths);

    /// <summary>96 directions, where shares are averaged or houses compared.</summary>
    internal static IReadOnlyList<SkyPatch> Coarse { get; } = Make(12);

    /// <summary>Where the 96 stand among the 288.</summary>
    internal static IReadOnlyList<int> CoarseInUpperHalf { get; } =
        [.. Coarse.Select(c => Enumerable.Range(0, UpperHalf.Count).First(i => UpperHalf[i].Towards == c.Towards))];

    private static SkyPatch[] Make(int azimuths)
    {
        var patches = new SkyPatch[Node.Length * azimuths];
        for (int e = 0; e < Node.Length; e++)
        {
            double elevationDeg = 90 * Node[e];
            double factor = Weight[e] * (Math.PI / 2) * Math.Cos(elevationDeg * Math.PI / 180) * (2 * Math.PI / azimuths) / Math.PI;
            for (int a = 0; a < azimuths; a++)
            {
                patches[(e * azimuths) + a] = new SkyPatch(Vector3d.Towards((a + 0.5) * 360 / azimuths, elevationDeg), factor);
            }
        }

        return patches;
    }
}
