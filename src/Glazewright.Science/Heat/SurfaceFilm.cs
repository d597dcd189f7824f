using Glazewright.Science.Guards;

namespace Glazewright.Science.Heat;

/// <summary>Combined (convection and long-wave) surface films for steady heat loss.</summary>
/// <remarks>
/// ASHRAE Handbook—Fundamentals (2009, SI), ch. 26, table 1, emittance 0.90; from memory. Between the tabulated slopes and wind speeds we
/// interpolate. Films for the minute-by-minute house are other laws and live with the dynamic model.
/// </remarks>
public static class SurfaceFilm
{
    /// <summary>Film of a vertical surface in still air, W/(m² K).</summary>
    public const double StillVerticalWPerM2K = 8.29;

    /// <summary>Winter outdoor film at 6.7 m/s (15 mph), W/(m² K).</summary>
    public const double WinterOutdoorWPerM2K = 34.0;

    /// <summary>Indoor film in still air by slope and direction of heat.</summary>
    /// <param name="tiltDeg">Slope from horizontal, 0 to 90°.</param>
    /// <param name="heatUp">Heat flows upward (a roof in winter) rather than downward.</param>
    /// <returns>Film, W/(m² K).</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double IndoorWPerM2K(double tiltDeg, bool heatUp)
    {
        Within.Require(tiltDeg, 0, 90);
        double flat = heatUp ? 9.26 : 6.13;
        double half = heatUp ? 9.09 : 7.50;
        return tiltDeg <= 45
            ? flat + (half - flat) * tiltDeg / 45
            : half + (StillVerticalWPerM2K - half) * (tiltDeg - 45) / 45;
    }

    /// <summary>Outdoor film by wind speed at the surface.</summary>
    /// <param name="windMPerS">Wind, m/s, 0 to 40.</param>
    /// <returns>Film, W/(m² K): 8.29 still, 22.7 at 3.4 m/s, 34.0 at 6.7 m/s, straight lines between and beyond.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double OutdoorWPerM2K(double windMPerS)
    {
        Within.Require(windMPerS, 0, 40);
        return windMPerS <= 3.4
            ? StillVerticalWPerM2K + (22.7 - StillVerticalWPerM2K) * windMPerS / 3.4
            : 22.7 + (WinterOutdoorWPerM2K - 22.7) * (windMPerS - 3.4) / 3.3;
    }
}
