namespace Glazewright.Cutting.Bars;

/// <summary>Counts of each size on one stick of one stock. Equal when both agree.</summary>
internal sealed class Pattern : IEquatable<Pattern>
{
    public Pattern(int stock, int[] counts)
    {
        Stock = stock;
        Counts = counts;
    }

    public int Stock { get; }

    public int[] Counts { get; }

    public bool Equals(Pattern? other) => other is not null && Stock == other.Stock && Counts.AsSpan().SequenceEqual(other.Counts);

    public override bool Equals(object? obj) => Equals(obj as Pattern);

    public override int GetHashCode()
    {
        HashCode hash = default;
        hash.Add(Stock);
        foreach (int count in Counts)
        {
            hash.Add(count);
        }

        return hash.ToHashCode();
    }

    /// <summary>True when another pattern of the same stock holds all these pieces and more.</summary>
    public bool IsPartOf(Pattern other)
    {
        if (other.Stock != Stock || Equals(other))
        {
            return false;
        }

        for (int i = 0; i < Counts.Length; i++)
        {
            if (Counts[i] > other.Counts[i])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>How often the pattern can be cut without making a piece too many.</summary>
    public int Repeats(int[] demand)
    {
        int repeats = int.MaxValue;
        for (int i = 0; i < Counts.Length; i++)
        {
            if (Counts[i] > 0)
            {
                repeats = Math.Min(repeats, demand[i] / Counts[i]);
            }
        }

        return repeats == int.MaxValue ? 0 : repeats;
    }
}

/// <summary>A plan in the making: patterns and how often each is cut, covering the demand.</summary>
internal sealed class Packing
{
    private readonly Dictionary<Pattern, int> index = [];
    private readonly List<Pattern> patterns = [];
    private readonly List<int> times = [];

    /// <summary>Saw set-ups: a stick that only leaves out pieces of another pattern on the same stock shares that one's.</summary>
    public int SetUps => patterns.Count(pattern => !patterns.Exists(pattern.IsPartOf));

    public IEnumerable<(Pattern Pattern, int Times)> Runs => patterns.Select((pattern, i) => (pattern, times[i]));

    public Packing Copy()
    {
        Packing copy = new();
        foreach ((Pattern pattern, int count) in Runs)
        {
            copy.Add(pattern, count);
        }

        return copy;
    }

    public void Add(Pattern pattern, int count)
    {
        if (count == 0)
        {
            return;
        }

        if (index.TryGetValue(pattern, out int at))
        {
            times[at] += count;
        }
        else
        {
            index.Add(pattern, patterns.Count);
            patterns.Add(pattern);
            times.Add(count);
        }
    }

    public void AddAll(Packing other)
    {
        foreach ((Pattern pattern, int count) in other.Runs)
        {
            Add(pattern, count);
        }
    }

    public long SticksCents(CutCase from)
    {
        long cost = 0;
        foreach ((Pattern pattern, int count) in Runs)
        {
            cost += count * from.CostCents[pattern.Stock];
        }

        return cost;
    }

    public long TotalCents(CutCase from, long setUpCents) => SticksCents(from) + (setUpCents * SetUps);

    /// <summary>Takes surplus pieces off again; each stick may then move to the cheapest stock that still holds it.</summary>
    public Packing Trimmed(CutCase to, bool mayMove = true)
    {
        int[] surplus = Array.ConvertAll(to.Demand, count => -count);
        foreach ((Pattern pattern, int count) in Runs)
        {
            for (int i = 0; i < surplus.Length; i++)
            {
                surplus[i] += pattern.Counts[i] * count;
            }
        }

        Packing trimmed = new();
        foreach ((Pattern pattern, int count) in Runs.OrderBy(run => run.Times))
        {
            int left = count;
            int whole = 0;
            while (left > 0 && whole == 0)
            {
                int[] counts = (int[])pattern.Counts.Clone();
                bool cut = false;
                for (int i = 0; i < counts.Length; i++)
                {
                    int off = Math.Min(Math.Max(0, surplus[i]), counts[i]);
                    counts[i] -= off;
                    surplus[i] -= off;
                    cut |= off > 0;
                }

                whole = cut ? 0 : left;
                if (cut)
                {
                    left--;
                    Place(pattern.Stock, counts, 1);
                }
            }

            Place(pattern.Stock, pattern.Counts, whole);
        }

        return trimmed;

        void Place(int stock, int[] counts, int sticks)
        {
            if (sticks > 0 && Array.Exists(counts, n => n > 0))
            {
                trimmed.Add(new Pattern(mayMove ? to.CheapestFor(to.Used(counts)) : stock, counts), sticks);
            }
        }
    }
}
