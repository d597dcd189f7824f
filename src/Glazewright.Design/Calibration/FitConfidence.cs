using Glazewright.Design.Contracts;

namespace Glazewright.Design.Calibration;

/// <summary>How well the training weeks tell each size: from the slopes where the search ended.</summary>
/// <remarks>
/// Covariance s² (JᵀJ)⁻¹ of the sizes that are not at a bound (any textbook). Misses of a model follow each other for hours, so there are fewer of them than steps: s² is raised by (1 + ρ)/(1 − ρ) with ρ the
/// correlation of a miss with the next one (Bayley and Hammersley 1946, from memory). It says what the log tells given the model; what the model itself has wrong is not in it.
/// </remarks>
internal static class FitConfidence
{
    private const double TwinsFrom = 0.95;
    private const double NotToldFrom = 0.5; // two standard errors over half of the range
    private const double BoundFraction = 1e-3;

    public static EqList<FittedValue> Of(SizeRange[] ranges, BoundedFit.Ended ended, int steps)
    {
        List<int> free = [.. Enumerable.Range(0, ranges.Length).Where(k => !AtBound(ranges[k], ended.Values[k]))];
        double[,] inverse = NormalMatrix.Inverse(Regular(NormalMatrix.Of(ended.Slopes, free)));
        double variance = ended.Residuals.Sum(r => r * r) / Math.Max(ended.Residuals.Length - ranges.Length, 1) * Fewer(ended.Residuals, steps);
        List<FittedValue> values = [];
        for (int k = 0; k < ranges.Length; k++)
        {
            SizeRange range = ranges[k];
            int at = free.IndexOf(k);
            if (at < 0)
            {
                values.Add(new FittedValue(range, ended.Values[k], double.NaN, SizeStanding.AtBound, "", 0));
                continue;
            }

            double span = range.MostValue - range.LeastValue, plusMinus = 2 * Math.Sqrt(Math.Max(variance * inverse[at, at], 0)) * span;
            (string twin, double together) = ("", 0.0);
            for (int other = 0; other < free.Count; other++)
            {
                double r = inverse[at, other] / Math.Sqrt(inverse[at, at] * inverse[other, other]);
                if (other != at && Math.Abs(r) > Math.Max(TwinsFrom, Math.Abs(together)))
                {
                    (twin, together) = (ranges[free[other]].Word, r);
                }
            }

            SizeStanding standing = plusMinus > NotToldFrom * span ? SizeStanding.NotTold : SizeStanding.Told;
            values.Add(new FittedValue(range, ended.Values[k], plusMinus, standing, twin, together));
        }

        return values.ToEqList();
    }

    private static bool AtBound(SizeRange range, double value) =>
        Math.Min(value - range.LeastValue, range.MostValue - value) < BoundFraction * (range.MostValue - range.LeastValue);

    // A size without any slope gets a vast uncertainty instead of none.
    private static double[,] Regular(double[,] normal)
    {
        for (int a = 0; a < normal.GetLength(0); a++)
        {
            normal[a, a] += 1e-9;
        }

        return normal;
    }

    // Air and water stand one after the other; each half is a series of its own.
    private static double Fewer(double[] residuals, int steps)
    {
        double next = 0, square = 0;
        for (int i = 0; i + 1 < residuals.Length; i++)
        {
            if (i + 1 != steps)
            {
                next += residuals[i] * residuals[i + 1];
                square += residuals[i] * residuals[i];
            }
        }

        double rho = square > 0 ? Math.Clamp(next / square, 0, 0.995) : 0;
        return (1 + rho) / (1 - rho);
    }
}
