namespace Glazewright.Design.Calibration;

/// <summary>The small matrices of a fit: at most six by six.</summary>
internal static class NormalMatrix
{
    /// <summary>Sum of products of slopes over all residuals, for some sizes.</summary>
    public static double[,] Of(double[][] slopes, IReadOnlyList<int> sizes)
    {
        double[,] matrix = new double[sizes.Count, sizes.Count];
        for (int a = 0; a < sizes.Count; a++)
        {
            for (int b = 0; b <= a; b++)
            {
                double dot = 0;
                double[] x = slopes[sizes[a]], y = slopes[sizes[b]];
                for (int i = 0; i < x.Length; i++)
                {
                    dot += x[i] * y[i];
                }

                matrix[a, b] = matrix[b, a] = dot;
            }
        }

        return matrix;
    }

    /// <summary>Solves by Gauss with pivots; a row without a pivot leaves its unknown at nothing.</summary>
    public static double[] Solve(double[,] matrix, double[] right)
    {
        int n = right.Length;
        double[,] m = (double[,])matrix.Clone();
        double[] r = (double[])right.Clone();
        for (int c = 0; c < n; c++)
        {
            int pivot = c;
            for (int row = c + 1; row < n; row++)
            {
                pivot = Math.Abs(m[row, c]) > Math.Abs(m[pivot, c]) ? row : pivot;
            }

            if (Math.Abs(m[pivot, c]) < 1e-300)
            {
                m[c, c] = 1;
                r[c] = 0;
                continue;
            }

            for (int k = 0; k < n && pivot != c; k++)
            {
                (m[c, k], m[pivot, k]) = (m[pivot, k], m[c, k]);
            }

            (r[c], r[pivot]) = (r[pivot], r[c]);
            for (int row = c + 1; row < n; row++)
            {
                double times = m[row, c] / m[c, c];
                for (int k = c; k < n; k++)
                {
                    m[row, k] -= times * m[c, k];
                }

                r[row] -= times * r[c];
            }
        }

        for (int row = n - 1; row >= 0; row--)
        {
            for (int k = row + 1; k < n; k++)
            {
                r[row] -= m[row, k] * r[k];
            }

            r[row] /= m[row, row];
        }

        return r;
    }

    /// <summary>The inverse; column by column.</summary>
    public static double[,] Inverse(double[,] matrix)
    {
        int n = matrix.GetLength(0);
        double[,] inverse = new double[n, n];
        for (int c = 0; c < n; c++)
        {
            double[] unit = new double[n];
            unit[c] = 1;
            double[] column = Solve(matrix, unit);
            for (int row = 0; row < n; row++)
            {
                inverse[row, c] = column[row];
            }
        }

        return inverse;
    }
}
