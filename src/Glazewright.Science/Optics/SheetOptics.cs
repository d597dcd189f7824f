namespace Glazewright.Science.Optics;

/// <summary>What becomes of light that falls on a sheet or a stack: three shares that sum to one.</summary>
/// <param name="TransmittanceFraction">Passes.</param>
/// <param name="ReflectanceFraction">Thrown back.</param>
/// <param name="AbsorptanceFraction">Kept.</param>
public readonly record struct LightShares(
    double TransmittanceFraction, double ReflectanceFraction, double AbsorptanceFraction);

/// <summary>Reflection at one smooth surface, by polarisation.</summary>
/// <param name="PerpendicularFraction">Electric field across the plane of incidence.</param>
/// <param name="ParallelFraction">Electric field in it.</param>
/// <param name="RefractionDeg">Angle inside the material, degrees.</param>
public readonly record struct SurfaceReflection(double PerpendicularFraction, double ParallelFraction, double RefractionDeg)
{
    /// <summary>Unpolarised light.</summary>
    public double MeanFraction => (PerpendicularFraction + ParallelFraction) / 2;
}
