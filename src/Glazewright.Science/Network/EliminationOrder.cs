namespace Glazewright.Science.Network;

/// <summary>Which node is eliminated when, and where each number of the factor lies: found once for a network's shape.</summary>
internal sealed class EliminationOrder
{
    private EliminationOrder(int[] nodeOfRow, int[] rowOfNode, int[] laterStart, int[] laterRow)
    {
        NodeOfRow = nodeOfRow;
        RowOfNode = rowOfNode;
        LaterStart = laterStart;
        LaterRow = laterRow;

        List<int> targets = [];
        for (int k = 0; k < nodeOfRow.Length; k++)
        {
            for (int i = laterStart[k]; i < laterStart[k + 1]; i++)
            {
                for (int j = laterStart[k]; j < laterStart[k + 1]; j++)
                {
                    targets.Add(PlaceOf(laterRow[i], laterRow[j]));
                }
            }
        }

        UpdateTarget = [.. targets];
    }

    /// <summary>Node eliminated at each row.</summary>
    public int[] NodeOfRow { get; }

    /// <summary>Row of each node, −1 for boundaries.</summary>
    public int[] RowOfNode { get; }

    /// <summary>Where each row's later neighbours begin in <see cref="LaterRow"/>; one more at the end.</summary>
    public int[] LaterStart { get; }

    /// <summary>Rows met later that a row is coupled to, fill-in included, ascending.</summary>
    public int[] LaterRow { get; }

    /// <summary>Places hit by the updates of the elimination, in the order they are done.</summary>
    public int[] UpdateTarget { get; }

    /// <summary>Number of solved nodes.</summary>
    public int RowCount => NodeOfRow.Length;

    /// <summary>Length of the array that holds pivots, rows of U and columns of L.</summary>
    public int MatrixLength => NodeOfRow.Length + 2 * LaterRow.Length;

    /// <summary>Place of a matrix entry in that array.</summary>
    public int PlaceOf(int row, int column)
    {
        if (row == column)
        {
            return row;
        }

        int earlier = Math.Min(row, column);
        int place = Array.BinarySearch(LaterRow, LaterStart[earlier], LaterStart[earlier + 1] - LaterStart[earlier], Math.Max(row, column));
        return RowCount + place + (row > column ? LaterRow.Length : 0);
    }

    /// <summary>Least degree first, the lower index on a tie, so that the order depends on nothing but the drawing.</summary>
    public static EliminationOrder Find(bool[] isBoundary, List<(int From, int To, bool Advection)> links)
    {
        SortedSet<int>[] neighbours = [.. isBoundary.Select(_ => new SortedSet<int>())];
        foreach ((int from, int to, _) in links)
        {
            if (!isBoundary[from] && !isBoundary[to])
            {
                neighbours[from].Add(to);
                neighbours[to].Add(from);
            }
        }

        List<int> nodeOfRow = [];
        List<int[]> laterNodes = [];
        SortedSet<int> left = [.. Enumerable.Range(0, isBoundary.Length).Where(n => !isBoundary[n])];
        while (left.Count > 0)
        {
            int best = left.MinBy(n => neighbours[n].Count);
            int[] around = [.. neighbours[best]];
            foreach (int a in around)
            {
                neighbours[a].Remove(best);
                neighbours[a].UnionWith(around.Where(b => b != a));
            }

            left.Remove(best);
            nodeOfRow.Add(best);
            laterNodes.Add(around);
        }

        int[] rowOfNode = new int[isBoundary.Length];
        Array.Fill(rowOfNode, -1);
        for (int row = 0; row < nodeOfRow.Count; row++)
        {
            rowOfNode[nodeOfRow[row]] = row;
        }

        int[] start = new int[nodeOfRow.Count + 1];
        List<int> later = [];
        for (int row = 0; row < nodeOfRow.Count; row++)
        {
            later.AddRange(laterNodes[row].Select(n => rowOfNode[n]).Order());
            start[row + 1] = later.Count;
        }

        return new EliminationOrder([.. nodeOfRow], rowOfNode, start, [.. later]);
    }
}
