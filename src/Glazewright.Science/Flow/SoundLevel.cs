using Glazewright.Science.Guards;

namespace Glazewright.Science.Flow;

/// <summary>Sound levels of several sources and over a distance, dB.</summary>
/// <remarks>Energies add, and fall with the square of the distance in the open (textbooks; the divergence term of ISO 9613-2, from memory).</remarks>
public static class SoundLevel
{
    /// <summary>Level of sources together at a place.</summary>
    /// <param name="levelsDb">Each one's level there, −50 to 200 dB.</param>
    /// <returns>Their level, dB; minus infinity for none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double TogetherDb(IReadOnlyList<double> levelsDb)
    {
        double energy = 0;
        foreach (double level in levelsDb)
        {
            Within.Require(level, -50, 200);
            energy += Math.Pow(10, level / 10);
        }

        return 10 * Math.Log10(energy);
    }

    /// <summary>Level at another distance from a small source in the open.</summary>
    /// <param name="levelDb">Level at the first distance, −50 to 200 dB.</param>
    /// <param name="fromM">The first distance, m, 0.1 to 1e4.</param>
    /// <param name="toM">The other, m, 0.1 to 1e4.</param>
    /// <returns>dB.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double AtDistanceDb(double levelDb, double fromM, double toM)
    {
        Within.Require(levelDb, -50, 200);
        Within.Require(fromM, 0.1, 1e4);
        Within.Require(toM, 0.1, 1e4);
        return levelDb - 20 * Math.Log10(toM / fromM);
    }
}
