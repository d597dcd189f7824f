namespace Glazewright.Mechanics.Frames;

/// <summary>
/// A symmetric matrix kept by columns from its first nonzero down to the diagonal, and its L·D·Lᵀ factors in the same
/// room. Active-column elimination; Bathe, Finite Element Procedures, ch. 8 (from memory).
/// </summary>
internal sealed class SkylineMatrix
{
    private readonly int[] firstRow;
    private readonly int[] diagonalAt;
    private readonly double[] cells;

    /// <summary>A zero matrix with the given profile.</summary>
    /// <param name="firstRow">For each column, the first row that may be nonzero.</param>
    internal SkylineMatrix(int[] firstRow)
    {
        this.firstRow = firstRow;
        diagonalAt = new int[firstRow.Length];
        int next = -1;
        for (int column = 0; column < firstRow.Length; column++)
        {
            next += column - firstRow[column] + 1;
            diagonalAt[column] = next;
        }

        cells = new double[next + 1];
    }

    internal int Size => firstRow.Length;

    internal double Diagonal(int row) => cells[diagonalAt[row]];

    internal void Add(int row, int column, double value)
    {
        if (row > column)
        {
            (row, column) = (column, row);
        }

        cells[diagonalAt[column] - (column - row)] += value;
    }

    /// <summary>Factors in place.</summary>
    /// <returns>−1 when every pivot is positive, else the row of the first pivot that is not.</returns>
    internal int Factor()
    {
        for (int column = 0; column < Size; column++)
        {
            int top = firstRow[column];
            int columnBase = diagonalAt[column] - column;
            double startDiagonal = cells[diagonalAt[column]];
            for (int row = top + 1; row < column; row++)
            {
                int from = Math.Max(firstRow[row], top);
                int rowBase = diagonalAt[row] - row;
                double sum = 0;
                for (int k = from; k < row; k++)
                {
                    sum += cells[rowBase + k] * cells[columnBase + k];
                }

                cells[columnBase + row] -= sum;
            }

            double diagonal = startDiagonal;
            for (int row = top; row < column; row++)
            {
                double unscaled = cells[columnBase + row];
                double scaled = unscaled / cells[diagonalAt[row]];
                cells[columnBase + row] = scaled;
                diagonal -= scaled * unscaled;
            }

            // A pivot that has lost twelve digits of its start is a mechanism, not stiffness.
            if (!(diagonal > 1e-12 * Math.Abs(startDiagonal)))
            {
                return column;
            }

            cells[diagonalAt[column]] = diagonal;
        }

        return -1;
    }

    /// <summary>Solves with the factors, in place.</summary>
    /// <param name="vector">Right side in, solution out.</param>
    internal void Solve(double[] vector)
    {
        for (int column = 0; column < Size; column++)
        {
            int columnBase = diagonalAt[column] - column;
            double sum = 0;
            for (int k = firstRow[column]; k < column; k++)
            {
                sum += cells[columnBase + k] * vector[k];
            }

            vector[column] -= sum;
        }

        for (int row = 0; row < Size; row++)
        {
            vector[row] /= cells[diagonalAt[row]];
        }

        for (int column = Size - 1; column >= 0; column--)
        {
            int columnBase = diagonalAt[column] - column;
            double value = vector[column];
            for (int k = firstRow[column]; k < column; k++)
            {
                vector[k] -= cells[columnBase + k] * value;
            }
        }
    }
}
