using System.Runtime.CompilerServices;

namespace Glazewright.Science.Climate;

/// <summary>Resistances of leaves to vapour, s/m, after Stanghellini 1987 (thesis Wageningen; constants from memory). Kernels: total, no guards.</summary>
public static class LeafResistance
{
    private const double MostByDeficit = 5.8;

    /// <summary>Boundary layer in still air, s/m (275), and in air moved by fans (150).</summary>
    /// <param name="moving">True while circulation or exhaust fans move the air.</param>
    public static double BoundarySPerM(bool moving) => moving ? 150.0 : 275.0;

    /// <summary>Stomata: least resistance × light × carbon dioxide × vapour pressure deficit.</summary>
    /// <param name="leastSPerM">Least resistance, s/m (82).</param>
    /// <param name="absorbedWPerM2">Radiation absorbed per leaf area, W/m²; up to 1 counts as night.</param>
    /// <param name="co2Ppm">Carbon dioxide, ppm.</param>
    /// <param name="deficitPa">Leaf's saturation pressure less the air's vapour pressure, Pa.</param>
    /// <returns>The resistance as a fraction that is not yet divided, s/m: what it is over what, and what of it goes with the square of the deficit.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static (double Resistance, double Over, double BySquare) Stomatal(double leastSPerM, double absorbedWPerM2, double co2Ppm, double deficitPa)
    {
        bool day = absorbedWPerM2 > 1.0;
        double co2 = co2Ppm - 200.0;
        double byCo2 = day ? double.MinNative(1.0 + 6.1e-7 * co2 * co2, 1.5) : 1.0;
        double square = (day ? 4.3e-6 : 5.2e-6) * deficitPa * deficitPa, open = leastSPerM * (absorbedWPerM2 + 4.3) * byCo2;
        return (open * double.MinNative(1.0 + square, MostByDeficit), absorbedWPerM2 + 0.54, square < MostByDeficit - 1.0 ? open * square : 0.0);
    }

    /// <summary>Vapour conductance of a canopy before its resistances, times the pressure, so that it ÷ pressure ÷ (r_b + r_s) is kg/(s Pa) for each m² of floor: 2 LAI ρ c / (γ L) with γ = c p / (0.622 L).</summary>
    /// <param name="leafAreaIndex">Leaf area per floor area; both sides count.</param>
    /// <param name="densityKgPerM3">Density of the air among the leaves, kg/m³.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static double CanopyFactorAtPascal(double leafAreaIndex, double densityKgPerM3) => 2.0 * 0.621945 * leafAreaIndex * densityKgPerM3;
}
