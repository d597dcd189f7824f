using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Charts;

/// <summary>Outlines of the marked cells of a grid, as closed rings that a filled area can be made of.</summary>
/// <remarks>One outline for a whole region leaves no seams between its cells, whatever draws it.</remarks>
public static class GridOutline
{
    /// <summary>Rings round all marked cells, holes as rings of their own (even-odd), in grid steps.</summary>
    /// <param name="columns">Columns of the grid.</param>
    /// <param name="rows">Rows of the grid.</param>
    /// <param name="isMarked">Whether the cell (column, row) is marked.</param>
    public static IReadOnlyList<IReadOnlyList<Spot>> Of(int columns, int rows, Func<int, int, bool> isMarked)
    {
        ArgumentNullException.ThrowIfNull(isMarked);
        bool Marked(int c, int r) => c >= 0 && r >= 0 && c < columns && r < rows && isMarked(c, r);
        int wide = columns + 1;

        // Bit d of a corner says that an edge leaves it in direction d (0 right, 1 up, 2 left, 3 down), marked cell on the left.
        byte[] leaving = new byte[wide * (rows + 1)];
        for (int c = 0; c < columns; c++)
        {
            for (int r = 0; r < rows; r++)
            {
                if (!Marked(c, r))
                {
                    continue;
                }

                Leave(c, r, 0, !Marked(c, r - 1));
                Leave(c + 1, r, 1, !Marked(c + 1, r));
                Leave(c + 1, r + 1, 2, !Marked(c, r + 1));
                Leave(c, r + 1, 3, !Marked(c - 1, r));
            }
        }

        List<IReadOnlyList<Spot>> rings = [];
        for (int corner = 0; corner < leaving.Length; corner++)
        {
            while (leaving[corner] != 0)
            {
                rings.Add(Walk(leaving, wide, corner));
            }
        }

        return rings;

        void Leave(int c, int r, int direction, bool isEdge)
        {
            if (isEdge)
            {
                leaving[r * wide + c] |= (byte)(1 << direction);
            }
        }
    }

    private static List<Spot> Walk(byte[] leaving, int wide, int start)
    {
        List<Spot> ring = [];
        int corner = start;
        int came = -1;
        do
        {
            int direction = Next(leaving[corner], came);
            if (direction != came)
            {
                ring.Add(new Spot(corner % wide, corner / wide));
            }

            leaving[corner] &= (byte)~(1 << direction);
            corner += direction switch { 0 => 1, 1 => wide, 2 => -1, _ => -wide };
            came = direction;
        }
        while (corner != start);

        return ring;
    }

    /// <summary>Of the ways out of a corner the leftmost, so that cells which only touch at a corner stay apart.</summary>
    private static int Next(byte ways, int came)
    {
        int first = came < 0 ? 0 : came + 1;
        for (int turn = 0; turn < 4; turn++)
        {
            int direction = (first - turn + 8) % 4;
            if ((ways & (1 << direction)) != 0)
            {
                return direction;
            }
        }

        throw new InvalidOperationException("An outline that enters a corner also leaves it.");
    }
}
