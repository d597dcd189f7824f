namespace Glazewright.Cutting.Bars;

/// <summary>A cutting problem reduced to bin packing: distinct sizes with their kerf inside, rooms, and costs per stick.</summary>
/// <remarks>Reduction for the n − 1 rule: room + kerf, size + kerf (exact). Sizes are divided by their common divisor, rooms rounded down.</remarks>
internal sealed class CutCase
{
    private CutCase(int[] size, int[] demand, int[] room, long[] costCents)
    {
        Size = size;
        Demand = demand;
        Room = room;
        CostCents = costCents;
        long step = 0;
        foreach (long cost in costCents)
        {
            step = Gcd(step, cost);
        }

        StepCents = step;
    }

    /// <summary>Distinct sizes, largest first.</summary>
    public int[] Size { get; }

    /// <summary>Pieces of each size.</summary>
    public int[] Demand { get; }

    /// <summary>Room on a stick of each stock.</summary>
    public int[] Room { get; }

    /// <summary>Price and handling of a stick of each stock.</summary>
    public long[] CostCents { get; }

    /// <summary>Every plan costs a multiple of this.</summary>
    public long StepCents { get; }

    public bool IsEmpty => Array.TrueForAll(Demand, count => count == 0);

    public static CutCase From(int[] size, int[] demand, int[] room, long[] costCents)
    {
        int divisor = 0;
        foreach (int value in size)
        {
            divisor = (int)Gcd(divisor, value);
        }

        divisor = Math.Max(1, divisor);
        return new CutCase(
            Array.ConvertAll(size, value => value / divisor), demand, Array.ConvertAll(room, value => value / divisor), costCents);
    }

    /// <summary>The same sizes and sticks with other counts.</summary>
    public CutCase With(int[] demand) => new(Size, demand, Room, CostCents);

    /// <summary>Rounds a bound up to the next cost a plan can have.</summary>
    public long RoundUp(long boundCents) => (boundCents + StepCents - 1) / StepCents * StepCents;

    /// <summary>Least cost by length alone.</summary>
    public long LengthBoundCents()
    {
        Int128 total = 0;
        for (int i = 0; i < Size.Length; i++)
        {
            total += (Int128)Size[i] * Demand[i];
        }

        if (total == 0)
        {
            return 0;
        }

        Int128 least = Int128.MaxValue;
        for (int j = 0; j < Room.Length; j++)
        {
            if (Room[j] > 0)
            {
                least = Int128.Min(least, ((total * CostCents[j]) + Room[j] - 1) / Room[j]);
            }
        }

        return RoundUp((long)least);
    }

    /// <summary>Fewest patterns that could show every size once: no stick shows more different sizes than the smallest ones that fit together.</summary>
    public int PatternBound()
    {
        int widest = Room.Max();
        int kinds = 0;
        int used = 0;
        int most = 0;
        for (int i = Size.Length - 1; i >= 0; i--)
        {
            if (Demand[i] == 0)
            {
                continue;
            }

            kinds++;
            used += Size[i];
            most = used <= widest ? kinds : most;
        }

        return kinds == 0 ? 0 : (kinds + Math.Max(1, most) - 1) / Math.Max(1, most);
    }

    /// <summary>More of a pattern than its most wanted size could ask for is of no use.</summary>
    public int MostTimes(Pattern column)
    {
        int most = 0;
        for (int i = 0; i < Demand.Length; i++)
        {
            if (column.Counts[i] > 0)
            {
                most = Math.Max(most, (Demand[i] + column.Counts[i] - 1) / column.Counts[i]);
            }
        }

        return most;
    }

    /// <summary>Room that a pattern takes.</summary>
    public int Used(int[] counts)
    {
        int used = 0;
        for (int i = 0; i < counts.Length; i++)
        {
            used += counts[i] * Size[i];
        }

        return used;
    }

    /// <summary>The cheapest stock that holds this much, or −1.</summary>
    public int CheapestFor(int used)
    {
        int best = -1;
        for (int j = 0; j < Room.Length; j++)
        {
            if (Room[j] >= used && (best < 0 || CostCents[j] < CostCents[best]))
            {
                best = j;
            }
        }

        return best;
    }

    private static long Gcd(long a, long b)
    {
        while (b != 0)
        {
            (a, b) = (b, a % b);
        }

        return a;
    }
}
