using Glazewright.Science.Air;
using Glazewright.Science.Guards;
using Glazewright.Science.Roots;

namespace Glazewright.Science.Heat;

/// <summary>Steady condensation on the inner face of a wall or roof.</summary>
/// <param name="DrySurfaceC">Surface temperature before any water condenses, °C: decides whether it starts.</param>
/// <param name="DewPointC">Dew point of the inside air, °C.</param>
/// <param name="Wet">Whether the surface is below the dew point.</param>
/// <param name="WetSurfaceC">Surface temperature with the latent heat of condensing water, °C.</param>
/// <param name="RateKgPerM2S">Water condensing, kg/(m² s).</param>
public sealed record SteadyCondensation(
    double DrySurfaceC, double DewPointC, bool Wet, double WetSurfaceC, double RateKgPerM2S);

/// <summary>Whether, and how fast, water condenses on a cold inner face.</summary>
public static class Condensation
{
    private const double LewisNumber = 0.87;
    private const double LatentJPerKg = 2.45e6;
    private const double VapourGasConstantJPerKgK = 461.5;

    /// <summary>Inner surface temperature of a build-up.</summary>
    /// <param name="insideC">Inside air, °C, −30 to 60.</param>
    /// <param name="outsideC">Outside air, °C, −60 to 60.</param>
    /// <param name="uValueWPerM2K">U-value with its films, W/(m² K), 0.05 to 15.</param>
    /// <param name="indoorFilmWPerM2K">Its indoor film, W/(m² K), at least the U-value, to 200.</param>
    /// <returns>Surface temperature, °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double SurfaceC(double insideC, double outsideC, double uValueWPerM2K, double indoorFilmWPerM2K)
    {
        Within.Require(insideC, -30, 60);
        Within.Require(outsideC, -60, 60);
        Within.Require(uValueWPerM2K, 0.05, 15);
        Within.Require(indoorFilmWPerM2K, uValueWPerM2K, 200);
        return insideC - uValueWPerM2K / indoorFilmWPerM2K * (insideC - outsideC);
    }

    /// <summary>Steady state of a surface that may condense.</summary>
    /// <param name="inside">Inside air, −30 to 60 °C.</param>
    /// <param name="outsideC">Outside air, °C, −60 to 60.</param>
    /// <param name="uValueWPerM2K">U-value with its films, W/(m² K), 0.05 to 15.</param>
    /// <param name="indoorFilmWPerM2K">Its indoor film, W/(m² K), more than the U-value, to 200.</param>
    /// <param name="convectiveWPerM2K">The convective part of that film, which carries the vapour, W/(m² K), 0.1 to the film.</param>
    /// <returns>Dry and wet surface temperatures and the rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>
    /// Mass transfer by the Lewis relation, g = h_c/(ρ c_p Le^⅔)·(ρ_v − ρ_v,sat(T_s)), Le = 0.87 (common practice in greenhouse climate work, from
    /// memory). The latent heat warms the surface: heat in by film and condensation = heat out through the rest of the build-up.
    /// </remarks>
    public static SteadyCondensation Steady(
        AirState inside, double outsideC, double uValueWPerM2K, double indoorFilmWPerM2K, double convectiveWPerM2K)
    {
        double dryC = SurfaceC(inside.DryBulbC, outsideC, uValueWPerM2K, indoorFilmWPerM2K);
        Within.Require(convectiveWPerM2K, 0.1, indoorFilmWPerM2K);
        double dewC = inside.DewPointC;
        if (dryC >= dewC)
        {
            return new SteadyCondensation(dryC, dewC, false, dryC, 0);
        }

        double outwardWPerM2K = 1 / Math.Max(1 / uValueWPerM2K - 1 / indoorFilmWPerM2K, 1e-6);
        double Surplus(double surfaceC) =>
            indoorFilmWPerM2K * (inside.DryBulbC - surfaceC)
            + LatentJPerKg * RateKgPerM2S(inside, surfaceC, convectiveWPerM2K)
            - outwardWPerM2K * (surfaceC - outsideC);
        double wetC = Bracketed.Find(Surplus, dryC, dewC, 1e-9).Argument;
        // Warmed to the dew point or beyond there is nothing left to condense: the bracket's end says so.
        return new SteadyCondensation(dryC, dewC, true, wetC, RateKgPerM2S(inside, wetC, convectiveWPerM2K));
    }

    private static double RateKgPerM2S(AirState inside, double surfaceC, double convectiveWPerM2K)
    {
        double meanK = 273.15 + 0.5 * (inside.DryBulbC + surfaceC);
        double deficitPa = inside.VapourPressurePa - Saturation.PressurePa(surfaceC);
        double transferMPerS = convectiveWPerM2K
            / (inside.DensityKgPerM3 * inside.HeatJPerKgK * Math.Pow(LewisNumber, 2.0 / 3.0));
        return Math.Max(transferMPerS * deficitPa / (VapourGasConstantJPerKgK * meanK), 0);
    }
}
