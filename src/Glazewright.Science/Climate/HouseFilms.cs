using System.Runtime.CompilerServices;
using Glazewright.Science.Maths;

namespace Glazewright.Science.Climate;

/// <summary>Published films of greenhouses, W/(m² K) of the surface. Kernels: total, no guards; sources in docs/methods/climate-model.md.</summary>
public static class HouseFilms
{
    /// <summary>Outer cover in wind.</summary>
    /// <param name="law">Which law.</param>
    /// <param name="windMPerS">Wind at the house, m/s, not negative.</param>
    /// <remarks>Bot 1983 (gabled: 2.8 + 1.2 v below 4 m/s, 2.5 v^0.8 above), Papadakis et al. 1992 (tunnel: 0.95 + 6.76 v^0.49); both from memory.</remarks>
    public static double OuterWPerM2K(OuterWindLaw law, double windMPerS) =>
        law == OuterWindLaw.Tunnel ? 0.95 + 6.76 * Elementary.Pow(windMPerS, 0.49)
        : windMPerS < 4.0 ? 2.8 + 1.2 * windMPerS : 2.5 * Elementary.Pow(windMPerS, 0.8);

    /// <summary>Under a roof or a cloth: warm air below a cold surface overturns, below a warm one it lies still.</summary>
    /// <param name="airAboveSurfaceK">Air temperature less surface temperature, K.</param>
    /// <param name="slopeCosine">Cosine of the slope, above 0.</param>
    /// <remarks>1.7 ΔT^⅓ (cos s)^−⅔ (Bot 1983, from memory; Nu = 0.14 Ra^⅓ gives 1.69 at 20 °C); still: 0.6 ΔT^¼.</remarks>
    public static double UnderRoofWPerM2K(double airAboveSurfaceK, double slopeCosine) => airAboveSurfaceK > 0.0
        ? 1.7 * Elementary.Cbrt(airAboveSurfaceK) / Elementary.Cbrt(slopeCosine * slopeCosine)
        : 0.6 * Math.Sqrt(Math.Sqrt(-airAboveSurfaceK));

    /// <summary>An upright surface in still air: 1.31 ΔT^⅓ (ASHRAE Fundamentals, turbulent, from memory).</summary>
    /// <param name="differenceK">Temperature difference, K, either sign.</param>
    public static double WallWPerM2K(double differenceK) => 1.31 * Elementary.Cbrt(Math.Abs(differenceK));

    /// <summary>A floor: 1.7 ΔT^⅓ when warmer than the air (Bot 1983), 1.3 ΔT^¼ when colder (de Zwart 1996); both from memory.</summary>
    /// <param name="floorAboveAirK">Floor temperature less air temperature, K.</param>
    public static double FloorWPerM2K(double floorAboveAirK) =>
        floorAboveAirK > 0.0 ? 1.7 * Elementary.Cbrt(floorAboveAirK) : 1.3 * Math.Sqrt(Math.Sqrt(-floorAboveAirK));

    /// <summary>Vapour conductance that goes with a film times the pressure, kg/(s m² Pa) · Pa for each W/(m² K): the Lewis relation with Le 0.87, 0.622 / (Le^⅔ c).</summary>
    internal const double VapourPerFilmAtPascal = 0.621945 / (LewisToTwoThirds * AirConstants.SpecificHeatJPerKgK);

    private const double LewisToTwoThirds = 0.911; // 0.87^(2/3)
}
