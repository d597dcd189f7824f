using Glazewright.Science.Guards;

namespace Glazewright.Science.Heat;

/// <summary>U-values of layered build-ups in one dimension.</summary>
/// <remarks>Resistances in series; ASHRAE Handbook—Fundamentals (2017, SI), ch. 25; from memory.</remarks>
public static class BuildUp
{
    /// <summary>Resistance of a solid layer.</summary>
    /// <param name="thicknessM">Thickness, m, 0 to 5.</param>
    /// <param name="conductivityWPerMK">Conductivity, W/(m K), 0.005 to 500.</param>
    /// <returns>Resistance, m² K/W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double LayerM2KPerW(double thicknessM, double conductivityWPerMK)
    {
        Within.Require(thicknessM, 0, 5);
        Within.Require(conductivityWPerMK, 0.005, 500);
        return thicknessM / conductivityWPerMK;
    }

    /// <summary>U-value from films and the layers between them.</summary>
    /// <param name="indoorFilmWPerM2K">Indoor film, W/(m² K), 0.5 to 200.</param>
    /// <param name="layersM2KPerW">Resistances from inside to outside, m² K/W, each 0 to 50; may be empty.</param>
    /// <param name="outdoorFilmWPerM2K">Outdoor film, W/(m² K), 0.5 to 200.</param>
    /// <returns>U-value, W/(m² K).</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double UValueWPerM2K(
        double indoorFilmWPerM2K, ReadOnlySpan<double> layersM2KPerW, double outdoorFilmWPerM2K)
    {
        Within.Require(indoorFilmWPerM2K, 0.5, 200);
        Within.Require(outdoorFilmWPerM2K, 0.5, 200);
        double resistance = 1 / indoorFilmWPerM2K + 1 / outdoorFilmWPerM2K;
        foreach (double layer in layersM2KPerW)
        {
            Within.Require(layer, 0, 50, nameof(layersM2KPerW));
            resistance += layer;
        }

        return 1 / resistance;
    }

    /// <summary>What a build-up resists by itself: its U-value without the films it was measured with.</summary>
    /// <param name="uValueWPerM2K">U-value with those films, W/(m² K), 0.05 to 8.</param>
    /// <param name="indoorFilmWPerM2K">Indoor film it was measured with, W/(m² K), 0.5 to 200.</param>
    /// <param name="outdoorFilmWPerM2K">Outdoor film it was measured with, W/(m² K), 0.5 to 200.</param>
    /// <returns>Resistance, m² K/W; 0 for a sheet thinner than its films allow.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double CoreM2KPerW(double uValueWPerM2K, double indoorFilmWPerM2K, double outdoorFilmWPerM2K)
    {
        Within.Require(uValueWPerM2K, 0.05, 8);
        Within.Require(indoorFilmWPerM2K, 0.5, 200);
        Within.Require(outdoorFilmWPerM2K, 0.5, 200);
        return Math.Max(1 / uValueWPerM2K - 1 / indoorFilmWPerM2K - 1 / outdoorFilmWPerM2K, 0);
    }
}
