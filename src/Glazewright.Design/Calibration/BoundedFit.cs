namespace Glazewright.Design.Calibration;

/// <summary>Least squares between bounds: Levenberg's damped steps on scaled sizes, clamped to their ranges.</summary>
/// <remarks>
/// Marquardt 1963, J. SIAM 11:431 (from memory). A size that a step pushes against its bound is held there for the rest of that step and the others are solved without it. The slopes
/// are differences over a given share of the range; runs of one slope are apart from each other, so threads change the time and never the result.
/// </remarks>
internal static class BoundedFit
{
    private const int MostRounds = 25;
    /// <summary>Slopes over this share of a range where misses change smoothly with the sizes.</summary>
    public const double SmoothSlopeFraction = 0.01;

    /// <summary>And where assumed thermostats switch on the computed air and make them ragged: over a hundredth the search followed the rags and was still falling after its last round (choice).</summary>
    public const double RaggedSlopeFraction = 0.1;

    private const double Enough = 2e-5; // relative fall of the sum at which it is done

    /// <summary>Where the search ended.</summary>
    /// <param name="Values">The sizes.</param>
    /// <param name="Residuals">Residuals there.</param>
    /// <param name="Slopes">Slope of every residual by every size, per unit of the size's whole range.</param>
    /// <param name="Rounds">Rounds taken.</param>
    /// <param name="Settled">False when the rounds ran out.</param>
    internal sealed record Ended(double[] Values, double[] Residuals, double[][] Slopes, int Rounds, bool Settled);

    /// <summary>Searches.</summary>
    /// <param name="start">Start values.</param>
    /// <param name="least">Least values.</param>
    /// <param name="most">Most values.</param>
    /// <param name="residualsOf">Residuals of some sizes; called from several threads.</param>
    /// <param name="threads">Most threads.</param>
    /// <param name="told">Told the round and the sum of squares.</param>
    /// <param name="slopeFraction">Share of each range over which slopes are taken.</param>
    public static Ended Search(
        double[] start, double[] least, double[] most, Func<double[], double[]> residualsOf, int threads, Action<int, double> told, double slopeFraction = SmoothSlopeFraction)
    {
        double[] at = [.. start.Select((v, i) => Math.Clamp(v, least[i], most[i]))];
        double[] residuals = residualsOf(at);
        double sum = Sum(residuals), damping = 1e-2;
        double[][] slopes = [];
        for (int round = 1; ; round++)
        {
            told(round, sum);
            slopes = Slopes(at, least, most, residuals, residualsOf, threads, slopeFraction);
            bool better = false;
            double before = sum;
            for (int attempt = 0; attempt < 6 && !better; attempt++)
            {
                double[] next = Step(at, least, most, residuals, slopes, damping);
                double[] there = residualsOf(next);
                double sumThere = Sum(there);
                if (sumThere < sum)
                {
                    (at, residuals, sum, better) = (next, there, sumThere, true);
                    damping = Math.Max(damping / 5, 1e-6);
                }
                else
                {
                    damping *= 5;
                }
            }

            bool settled = !better || before - sum < Enough * before;
            if (settled || round == MostRounds)
            {
                // Slopes where it ended, for the confidence.
                return new Ended(at, residuals, better ? Slopes(at, least, most, residuals, residualsOf, threads, slopeFraction) : slopes, round, settled);
            }
        }
    }

    private static double Sum(double[] residuals)
    {
        double sum = 0;
        foreach (double r in residuals)
        {
            sum += r * r;
        }

        return double.IsFinite(sum) ? sum : double.MaxValue;
    }

    private static double[][] Slopes(double[] at, double[] least, double[] most, double[] residuals, Func<double[], double[]> residualsOf, int threads, double slopeFraction)
    {
        double[][] slopes = new double[at.Length][];
        Parallel.For(0, at.Length, new ParallelOptions { MaxDegreeOfParallelism = Math.Max(1, threads) }, k =>
        {
            double range = most[k] - least[k], step = slopeFraction * range;
            step = at[k] + step > most[k] ? -step : step;
            double[] moved = (double[])at.Clone();
            moved[k] += step;
            double[] there = residualsOf(moved), slope = new double[residuals.Length];
            for (int i = 0; i < slope.Length; i++)
            {
                slope[i] = (there[i] - residuals[i]) / step * range;
            }

            slopes[k] = slope;
        });
        return slopes;
    }

    private static double[] Step(double[] at, double[] least, double[] most, double[] residuals, double[][] slopes, double damping)
    {
        List<int> free = [.. Enumerable.Range(0, at.Length)];
        while (true)
        {
            double[,] normal = NormalMatrix.Of(slopes, free);
            double[] right = new double[free.Count];
            for (int a = 0; a < free.Count; a++)
            {
                double dot = 0;
                for (int i = 0; i < residuals.Length; i++)
                {
                    dot += slopes[free[a]][i] * residuals[i];
                }

                right[a] = -dot;
                normal[a, a] += damping * normal[a, a] + 1e-12;
            }

            double[] way = NormalMatrix.Solve(normal, right);
            int blocked = -1;
            for (int a = 0; a < free.Count; a++)
            {
                int k = free[a];
                bool pushesOut = (way[a] < 0 && at[k] <= least[k]) || (way[a] > 0 && at[k] >= most[k]);
                blocked = pushesOut ? a : blocked;
            }

            if (blocked >= 0)
            {
                free.RemoveAt(blocked);
                if (free.Count > 0)
                {
                    continue;
                }

                return (double[])at.Clone();
            }

            double[] next = (double[])at.Clone();
            for (int a = 0; a < free.Count; a++)
            {
                int k = free[a];
                next[k] = Math.Clamp(at[k] + way[a] * (most[k] - least[k]), least[k], most[k]);
            }

            return next;
        }
    }
}
