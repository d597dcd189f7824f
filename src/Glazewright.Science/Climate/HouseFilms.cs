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

    /// <summary>Roughness multiplier of painted metal panels and doors: the class "smooth" (table of Walton 1981).</summary>
    public const double SmoothRoughnessFactor = 1.11;

    /// <summary>Roughness multiplier of concrete: "medium rough" of the same table.</summary>
    public const double ConcreteRoughnessFactor = 1.52;

    /// <summary>Roughness multiplier of brick, and of timber siding in Standard 140-2020: "rough" of the same table.</summary>
    public const double RoughRoughnessFactor = 1.67;

    /// <summary>Forced part of the film on smooth faces of a low building, all sides together: mean of windward 3.26 v^0.89 and leeward 3.55 v^0.617; a flat roof is windward whatever the wind.</summary>
    /// <param name="slopeCosine">Cosine of the slope, 1 flat roof to 0 wall; flat from 0.98.</param>
    /// <param name="windMPerS">Wind at the face, m/s, not negative.</param>
    /// <remarks>Yazdanian and Klems 1994 with the coefficients of Booten et al. 2012 for the wind at the face; read in an open engineering reference. The mean: choice.</remarks>
    public static double ForcedOnSmoothFaceWPerM2K(double slopeCosine, double windMPerS)
    {
        double windward = 3.26 * Elementary.Pow(windMPerS, 0.89);
        return slopeCosine >= FlatCosine ? windward : 0.5 * (windward + 3.55 * Elementary.Pow(windMPerS, 0.617));
    }

    /// <summary>Factor of ΔT^⅓ for the still part of the film on an outer face that looks up or sideways.</summary>
    /// <param name="slopeCosine">Cosine of the slope, 1 flat roof to 0 wall.</param>
    /// <param name="isWarmer">Whether the face is warmer than the air.</param>
    /// <remarks>Walton 1983 after ASHRAE's plates: warmer 9.482 / (7.283 − cos s), colder 1.810 / (1.382 + cos s); a wall 1.30 and 1.31. Read in the same reference.</remarks>
    public static double StillOutsideFactor(double slopeCosine, bool isWarmer) => isWarmer ? 9.482 / (7.283 - slopeCosine) : 1.810 / (1.382 + slopeCosine);

    /// <summary>Outer film of opaque faces: h = h_still + R (h_smooth − h_still), h_smooth = √(h_still² + h_forced²).</summary>
    /// <param name="stillWPerM2K">Still part, not negative.</param>
    /// <param name="forcedWPerM2K">Forced part on a smooth face, not negative.</param>
    /// <param name="roughnessFactor">R, 1 glass to 2.17 stucco.</param>
    /// <remarks>The DOE-2 convection model (Lawrence Berkeley Laboratory 1994), R after Walton 1981; read in the same reference.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double OpaqueOuterWPerM2K(double stillWPerM2K, double forcedWPerM2K, double roughnessFactor) =>
        stillWPerM2K + roughnessFactor * (Math.Sqrt(stillWPerM2K * stillWPerM2K + forcedWPerM2K * forcedWPerM2K) - stillWPerM2K);

    /// <summary>Outer film of opaque faces by temperatures and wind.</summary>
    /// <param name="faceAboveAirK">Face temperature less air temperature, K.</param>
    /// <param name="slopeCosine">Cosine of the slope, 1 flat roof to 0 wall.</param>
    /// <param name="windMPerS">Wind at the face, m/s, not negative.</param>
    /// <param name="roughnessFactor">1 glass to 2.17 stucco.</param>
    public static double OpaqueOuterWPerM2K(double faceAboveAirK, double slopeCosine, double windMPerS, double roughnessFactor) => OpaqueOuterWPerM2K(
        StillOutsideFactor(slopeCosine, faceAboveAirK > 0.0) * Elementary.Cbrt(Math.Abs(faceAboveAirK)), ForcedOnSmoothFaceWPerM2K(slopeCosine, windMPerS), roughnessFactor);

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

    /// <summary>Slopes from here on count as flat.</summary>
    internal const double FlatCosine = 0.98;

    private const double LewisToTwoThirds = 0.911; // 0.87^(2/3)
}
