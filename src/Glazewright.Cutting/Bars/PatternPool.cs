using System.Collections;

namespace Glazewright.Cutting.Bars;

/// <summary>Patterns seen so far, each once, in the order they came: the order must not hang on hash codes, which differ from run to run.</summary>
internal sealed class PatternPool : IEnumerable<Pattern>
{
    private readonly HashSet<Pattern> known = [];
    private readonly List<Pattern> patterns = [];

    public void AddAll(IEnumerable<Pattern> more)
    {
        foreach (Pattern pattern in more)
        {
            if (known.Add(pattern))
            {
                patterns.Add(pattern);
            }
        }
    }

    public IEnumerator<Pattern> GetEnumerator() => patterns.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
