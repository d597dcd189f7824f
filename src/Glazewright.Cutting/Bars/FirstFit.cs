namespace Glazewright.Cutting.Bars;

/// <summary>First fit decreasing: the largest piece left goes on the first stick that takes it. Every other method must beat it.</summary>
internal static class FirstFit
{
    /// <summary>The best of first fit over each choice of the stock that is opened, sticks then moved to the cheapest stock that holds them.</summary>
    public static Packing Best(CutCase of)
    {
        Packing? best = null;
        for (int open = 0; open < of.Room.Length; open++)
        {
            Packing next = Fill(of, open);
            if (best is null || next.SticksCents(of) < best.SticksCents(of))
            {
                best = next;
            }
        }

        return best ?? new Packing();
    }

    private static Packing Fill(CutCase of, int open)
    {
        List<int[]> sticks = [];
        List<int> room = [];
        for (int i = 0; i < of.Size.Length; i++)
        {
            int size = of.Size[i];
            int left = of.Demand[i];
            for (int s = 0; s < sticks.Count && left > 0; s++)
            {
                int take = Math.Min(left, room[s] / size);
                sticks[s][i] += take;
                room[s] -= take * size;
                left -= take;
            }

            int stock = of.Room[open] >= size ? open : of.CheapestFor(size);
            while (left > 0)
            {
                int take = Math.Min(left, of.Room[stock] / size);
                int[] counts = new int[of.Size.Length];
                counts[i] = take;
                sticks.Add(counts);
                room.Add(of.Room[stock] - (take * size));
                left -= take;
            }
        }

        Packing packing = new();
        foreach (int[] counts in sticks)
        {
            packing.Add(new Pattern(of.CheapestFor(of.Used(counts)), counts), 1);
        }

        return packing;
    }
}
