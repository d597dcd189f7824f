namespace Glazewright.Cutting.Bars;

/// <summary>Bounded knapsack in whole numbers: the most value of pieces that fit in a room, each size at most as often as wanted.</summary>
/// <remarks>Exact. Small rooms: dynamic program over the room, counts split in powers of two. Large rooms: depth-first search with the
/// fractional bound; if that grows too long, the dynamic program after all.</remarks>
internal sealed class Knapsack
{
    private const long TableCells = 1_500_000;
    private const int SearchNodes = 400_000;
    private const int GlanceNodes = 20_000;

    private readonly int[] size;
    private readonly int[] room;
    private readonly int widest;

    public Knapsack(int[] size, int[] room)
    {
        this.size = size;
        this.room = room;
        widest = room.Max();
    }

    /// <summary>Best value for each room.</summary>
    /// <param name="value">Value of each size, 0 or more.</param>
    /// <param name="most">How often each size may be taken.</param>
    /// <returns>Value and counts for each room, in the order of the rooms.</returns>
    public (long Value, int[] Counts)[] Solve(long[] value, int[] most)
    {
        List<(int Item, int Copies)> parts = Split(value, most);
        if (IsSmall(parts))
        {
            return Table(parts, value);
        }

        (long Value, int[] Counts)[] best = new (long, int[])[room.Length];
        int[] order = Order(value, most);
        for (int j = 0; j < room.Length; j++)
        {
            if (!TrySearch(order, value, most, room[j], SearchNodes, out best[j]))
            {
                return Table(parts, value);
            }
        }

        return best;
    }

    /// <summary>A short look, only for large rooms: good values, perhaps not the best.</summary>
    /// <returns>False when the room is small enough for the exact answer at once.</returns>
    public bool TryGlance(long[] value, int[] most, out (long Value, int[] Counts)[] found)
    {
        found = [];
        if (IsSmall(Split(value, most)))
        {
            return false;
        }

        int[] order = Order(value, most);
        found = new (long, int[])[room.Length];
        for (int j = 0; j < room.Length; j++)
        {
            TrySearch(order, value, most, room[j], GlanceNodes, out found[j]);
        }

        return true;
    }

    private bool IsSmall(List<(int Item, int Copies)> parts) => (long)parts.Count * widest <= TableCells;

    private int[] Order(long[] value, int[] most) =>
        [.. Enumerable.Range(0, size.Length).Where(i => value[i] > 0 && most[i] > 0)
            .OrderByDescending(i => value[i] / (double)size[i]).ThenBy(i => i)];

    private List<(int Item, int Copies)> Split(long[] value, int[] most)
    {
        List<(int, int)> parts = [];
        for (int i = 0; i < size.Length; i++)
        {
            int left = value[i] > 0 ? Math.Min(most[i], widest / size[i]) : 0;
            for (int copies = 1; left > 0; copies *= 2)
            {
                int take = Math.Min(copies, left);
                parts.Add((i, take));
                left -= take;
            }
        }

        return parts;
    }

    private (long Value, int[] Counts)[] Table(List<(int Item, int Copies)> parts, long[] value)
    {
        long[] best = new long[widest + 1];
        bool[][] taken = new bool[parts.Count][];
        for (int p = 0; p < parts.Count; p++)
        {
            (int item, int copies) = parts[p];
            int weight = size[item] * copies;
            long gain = value[item] * copies;
            bool[] row = new bool[widest + 1];
            for (int c = widest; c >= weight; c--)
            {
                long with = best[c - weight] + gain;
                if (with > best[c])
                {
                    best[c] = with;
                    row[c] = true;
                }
            }

            taken[p] = row;
        }

        return Array.ConvertAll(room, at => (best[at], Walk(at)));

        int[] Walk(int at)
        {
            int[] counts = new int[size.Length];
            for (int p = parts.Count - 1; p >= 0; p--)
            {
                if (taken[p][at])
                {
                    (int item, int copies) = parts[p];
                    counts[item] += copies;
                    at -= size[item] * copies;
                }
            }

            return counts;
        }
    }

    private bool TrySearch(int[] order, long[] value, int[] most, int capacity, int nodeLimit, out (long Value, int[] Counts) found)
    {
        int[] smallestAfter = new int[order.Length + 1];
        smallestAfter[^1] = int.MaxValue;
        for (int k = order.Length - 1; k >= 0; k--)
        {
            smallestAfter[k] = Math.Min(smallestAfter[k + 1], size[order[k]]);
        }

        int[] counts = new int[size.Length];
        int[] best = new int[size.Length];
        long bestValue = 0;
        int nodes = 0;
        bool finished = Descend(0, capacity, 0);
        found = (bestValue, best);
        return finished;

        bool Descend(int k, int left, long soFar)
        {
            if (++nodes > nodeLimit)
            {
                return false;
            }

            if (soFar > bestValue)
            {
                bestValue = soFar;
                counts.CopyTo(best, 0);
            }

            // The room left, filled at the rate of the next size, bounds what can still come (sizes stand by falling rate).
            while (k < order.Length && left >= smallestAfter[k])
            {
                int item = order[k];
                if (soFar + (long)((Int128)left * value[item] / size[item]) <= bestValue)
                {
                    return true;
                }

                if (size[item] <= left)
                {
                    for (int take = Math.Min(most[item], left / size[item]); take >= 1; take--)
                    {
                        counts[item] = take;
                        bool went = Descend(k + 1, left - (take * size[item]), soFar + (take * value[item]));
                        counts[item] = 0;
                        if (!went)
                        {
                            return false;
                        }
                    }
                }

                k++;
            }

            return true;
        }
    }
}
