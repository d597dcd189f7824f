using Glazewright.Science.Maths;

namespace Glazewright.Science.Climate;

/// <summary>
/// Air drawn along a house as a plug: it enters at one end and comes to an equilibrium with its surroundings with N transfer units on the way
/// (N = Σ G / (ṁ c)). With T_e the equilibrium, T(x) = T_in + (T_e − T_in)(1 − e^(−N x)); the mean and the end follow, so a model that
/// carries the mean also knows both ends. N → ∞ is a well-mixed room, N → 0 a straight line.
/// </summary>
public static class PadToFan
{
    /// <summary>Rise at the fans over the mean rise: 1 (mixed) to 2 (straight line).</summary>
    /// <param name="transferUnits">N, ≥ 0.</param>
    public static double EndOverMean(double transferUnits)
    {
        if (!(transferUnits < 50.0))
        {
            return 1.0 + 1.0 / (Math.Max(transferUnits, 50.0) - 1.0); // e^(−50) is nothing beside 1
        }

        if (transferUnits < 1e-3)
        {
            return 2.0 - Math.Max(transferUnits, 0.0) / 3.0;
        }

        double gone = 1.0 - Elementary.Exp(-transferUnits);
        return gone / (1.0 - gone / transferUnits);
    }

    /// <summary>Rise at a place over the mean rise.</summary>
    /// <param name="transferUnits">N, ≥ 0.</param>
    /// <param name="alongFraction">0 at the intake, 1 at the fans.</param>
    public static double PlaceOverMean(double transferUnits, double alongFraction)
    {
        double n = Math.Min(Math.Max(transferUnits, 1e-3), 50.0);
        double gone = 1.0 - Elementary.Exp(-n);
        return (1.0 - Elementary.Exp(-n * alongFraction)) / (1.0 - gone / n);
    }
}
