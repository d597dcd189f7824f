namespace Glazewright.Science.Light;

/// <summary>The even sky as directions with weights.</summary>
public sealed class SkyDome
{
    private SkyDome(IReadOnlyList<SkyPatch> patches)
    {
        Directions = [.. patches.Select(p => p.Towards)];
        IrradianceFactors = [.. patches.Select(p => p.IrradianceFactor)];
    }

    /// <summary>288 directions.</summary>
    public static SkyDome Usual { get; } = new(SkyPatches.UpperHalf);

    /// <summary>96 directions, for houses that are compared.</summary>
    public static SkyDome Coarse { get; } = new(SkyPatches.Coarse);

    /// <summary>Unit vectors towards the patches.</summary>
    public IReadOnlyList<Vector3d> Directions { get; }

    /// <summary>Normal irradiance from each patch in a sky of unit horizontal irradiance.</summary>
    public IReadOnlyList<double> IrradianceFactors { get; }
}
