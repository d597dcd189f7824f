namespace Glazewright.Science.Light;

/// <summary>The even sky as directions with weights.</summary>
public static class SkyDome
{
    /// <summary>Unit vectors towards the patches.</summary>
    public static IReadOnlyList<Vector3d> Directions { get; } = [.. SkyPatches.UpperHalf.Select(p => p.Towards)];

    /// <summary>Normal irradiance from each patch in a sky of unit horizontal irradiance.</summary>
    public static IReadOnlyList<double> IrradianceFactors { get; } = [.. SkyPatches.UpperHalf.Select(p => p.IrradianceFactor)];
}
