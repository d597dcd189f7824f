namespace Glazewright.Science.Weather;

/// <summary>
/// A seeded stream of numbers, the same on every machine: SplitMix64 (Steele, Lea, Flood 2014, "Fast splittable pseudorandom number generators"; constants from memory).
/// </summary>
internal struct SeededChance(ulong seed)
{
    private ulong _state = seed;

    /// <summary>Next 64 bits.</summary>
    public ulong NextBits()
    {
        _state += 0x9E3779B97F4A7C15;
        ulong z = _state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    /// <summary>Uniform in [0, 1).</summary>
    public double NextUniform() => (NextBits() >> 11) * (1.0 / 9007199254740992.0);

    /// <summary>Normal deviate as the sum of twelve uniforms less six: only additions, so the same bits everywhere; its tails end at ±6, which a year of days never misses.</summary>
    public double NextNormal()
    {
        double sum = -6;
        for (int i = 0; i < 12; i++)
        {
            sum += NextUniform();
        }

        return sum;
    }
}
