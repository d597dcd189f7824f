using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Loads;

/// <summary>Weight density of drifted snow.</summary>
public static class SnowDensity
{
    /// <summary>γ = 0.13 pg + 14, at most 30, in pcf and psf.</summary>
    /// <param name="groundPa">Ground snow load, Pa, 0 to 15 000.</param>
    /// <returns>N/m³.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    /// <remarks>ASCE 7 eq. 7.7-1. Read.</remarks>
    public static double NPerM3(double groundPa)
    {
        Require.Within(groundPa, 0, 15_000);
        return Math.Min(30, 0.13 * groundPa / UsUnits.PaPerPsf + 14) * UsUnits.NPerM3PerPcf;
    }
}
