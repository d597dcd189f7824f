using Glazewright.Design.Year;

namespace Glazewright.Design.Rehearsals;

/// <summary>What is supposed of the house and its air from a failure on.</summary>
/// <param name="Words">In words.</param>
/// <param name="WindMs">Wind; not-a-number leaves the file's.</param>
/// <param name="Damp">Damp house (air near saturation, every surface wet), dry house, or as the year left it.</param>
/// <param name="CurtainFraction">Where the curtain stands; null leaves it to the program.</param>
internal sealed record Supposed(string Words, double WindMs, bool? Damp, double? CurtainFraction)
{
    private const double CalmMs = 0.5;
    private const double WindyMs = 8;
    private const double DampPercent = 95;
    private const double DryPercent = 40;

    /// <summary>As the year has it.</summary>
    public static readonly Supposed AsInTheFile = new("as in the file", double.NaN, null, null);

    /// <summary>Every corner of wind, damp and curtain.</summary>
    /// <param name="hasCurtain">Whether the curtain may be set.</param>
    public static Supposed[] Corners(bool hasCurtain)
    {
        List<Supposed> all = [];
        foreach (double wind in (ReadOnlySpan<double>)[CalmMs, WindyMs])
        {
            foreach (bool damp in (ReadOnlySpan<bool>)[false, true])
            {
                string words = $"{(wind == CalmMs ? "calm" : "windy")}, {(damp ? "damp" : "dry")}";
                if (!hasCurtain)
                {
                    all.Add(new Supposed(words, wind, damp, null));
                    continue;
                }

                all.Add(new Supposed($"{words}, curtain open", wind, damp, 0));
                all.Add(new Supposed($"{words}, curtain shut", wind, damp, 1));
            }
        }

        return [.. all];
    }

    /// <summary>Puts the house into the supposed state.</summary>
    /// <param name="run">The run, at the moment of the failure.</param>
    public void Begin(YearRun run)
    {
        if (Damp is { } damp)
        {
            run.Dampen(damp ? DampPercent : DryPercent, damp ? 1 : 0);
        }
    }
}
