namespace Glazewright.Design.Brief;

/// <summary>Insect cloth by the pest it keeps out.</summary>
public static class InsectCloth
{
    private static readonly (string Word, double PorosityFraction)[] s_byPest =
    [
        ("thrip", 0.30), ("whitefl", 0.40), ("aphid", 0.45), ("miner", 0.55),
    ];

    /// <summary>Open share of usual cloths against a pest (common practice: the smaller the pest, the less is open; the cloth's own pressure curve goes before it).</summary>
    /// <param name="pest">The pest in words; empty or "none" for no screen. The finest cloth is taken for one that is not known.</param>
    /// <returns>0 for no screen, else 0.30 to 0.55.</returns>
    public static double PorosityFraction(string pest)
    {
        ArgumentNullException.ThrowIfNull(pest);
        if (pest.Length == 0 || pest.Equals("none", StringComparison.OrdinalIgnoreCase))
        {
            return 0;
        }

        double[] named = [.. s_byPest.Where(p => pest.Contains(p.Word, StringComparison.OrdinalIgnoreCase)).Select(p => p.PorosityFraction)];
        return named.Length == 0 ? s_byPest[0].PorosityFraction : named.Min();
    }
}
