namespace Glazewright.Science.Shape;

/// <summary>How far two computations put the same things in the same order.</summary>
/// <param name="KendallTauRatio">Pairs in the same order less pairs in the other, over all pairs not tied (tau-b), −1 to 1.</param>
/// <param name="SpearmanRhoRatio">Correlation of the ranks, ties sharing their mean rank, −1 to 1.</param>
/// <param name="Count">How many things were ranked.</param>
/// <remarks>Kendall 1945, Biometrika 33:239 (tau-b); Spearman 1904, Am. J. Psychol. 15:72 (both from memory).</remarks>
public sealed record RankAgreement(double KendallTauRatio, double SpearmanRhoRatio, int Count)
{
    /// <summary>Compares two rankings given by their values.</summary>
    /// <param name="one">Values by the first computation.</param>
    /// <param name="other">Values by the second, in the same order.</param>
    /// <returns>Both measures; 0 when there is nothing to rank or one side is all ties.</returns>
    /// <exception cref="ArgumentException">Different counts.</exception>
    public static RankAgreement Of(ReadOnlySpan<double> one, ReadOnlySpan<double> other)
    {
        if (one.Length != other.Length)
        {
            throw new ArgumentException("Two rankings of the same things have equally many values.", nameof(other));
        }

        long same = 0;
        long tiedOne = 0;
        long tiedOther = 0;
        for (int i = 0; i < one.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                int a = one[i].CompareTo(one[j]);
                int b = other[i].CompareTo(other[j]);
                same += Math.Sign(a) * Math.Sign(b);
                tiedOne += a == 0 ? 1 : 0;
                tiedOther += b == 0 ? 1 : 0;
            }
        }

        double pairs = (double)one.Length * (one.Length - 1) / 2;
        double scale = Math.Sqrt((pairs - tiedOne) * (pairs - tiedOther));
        return new RankAgreement(scale > 0 ? same / scale : 0, Correlation(Ranks(one), Ranks(other)), one.Length);
    }

    private static double[] Ranks(ReadOnlySpan<double> values)
    {
        double[] ranks = new double[values.Length];
        for (int i = 0; i < values.Length; i++)
        {
            int below = 0;
            int equal = 0;
            foreach (double other in values)
            {
                below += other < values[i] ? 1 : 0;
                equal += other == values[i] ? 1 : 0;
            }

            ranks[i] = below + ((equal + 1) / 2.0);
        }

        return ranks;
    }

    private static double Correlation(double[] a, double[] b)
    {
        double meanA = a.Length == 0 ? 0 : a.Average();
        double meanB = b.Length == 0 ? 0 : b.Average();
        double ab = 0;
        double aa = 0;
        double bb = 0;
        for (int i = 0; i < a.Length; i++)
        {
            ab += (a[i] - meanA) * (b[i] - meanB);
            aa += (a[i] - meanA) * (a[i] - meanA);
            bb += (b[i] - meanB) * (b[i] - meanB);
        }

        return aa > 0 && bb > 0 ? ab / Math.Sqrt(aa * bb) : 0;
    }
}
