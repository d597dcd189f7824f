namespace Glazewright.Design.Document;

/// <summary>What an unknown key was probably meant to be: one of this place shortened or mistyped, or one that belongs elsewhere.</summary>
internal static class MeantKey
{
    private const int MostNamed = 3;

    /// <summary>Finds what would be right in place of an unknown key.</summary>
    /// <param name="typed">The key.</param>
    /// <param name="freeHere">Keys of this place that are not given yet.</param>
    /// <param name="pointer">JSON pointer of this place.</param>
    /// <param name="places">Where every key belongs.</param>
    /// <returns>The words; null when nothing is like it.</returns>
    public static string? Find(string typed, IEnumerable<string> freeHere, string pointer, KeyPlaces places)
    {
        string[] here = [.. freeHere];
        // The order tells: a slip of one letter, then a shortened word, then the very word elsewhere, then what is only like it.
        string? near = NearestWord.Find(typed, here);
        string? meant = near is not null && NearestWord.Distance(typed, near) <= 1 ? near : Only(here, k => k.StartsWith(typed, StringComparison.OrdinalIgnoreCase), typed);
        if (meant is not null)
        {
            return $"did you mean \"{meant}\"?";
        }

        string from = KeyPlaces.PathOf(pointer);
        string[] below = [.. places.EndingIn(typed, from).Take(MostNamed)];
        if (below.Length > 0)
        {
            return $"did you mean {string.Join(" or ", below)}?";
        }

        string[] owners = [.. places.Owners(typed, from).Take(MostNamed)];
        if (owners.Length > 0)
        {
            return $"\"{Shown(typed)}\" belongs under {string.Join(" or ", owners.Select(o => o.Length == 0 ? "the document itself" : o))}";
        }

        meant = Only(here, k => IsSubsequence(typed, k), typed) ?? near;
        return meant is null ? null : $"did you mean \"{meant}\"?";
    }

    private static string Shown(string typed) => typed.Length > 40 ? typed[..40] + "…" : typed;

    private static string? Only(string[] keys, Func<string, bool> fits, string typed)
    {
        string[] found = typed.Length < 2 ? [] : [.. keys.Where(fits).Take(2)];
        return found.Length == 1 ? found[0] : null;
    }

    // "lng" for longitude: the letters in order, starting with the first.
    private static bool IsSubsequence(string typed, string key)
    {
        if (typed.Length < 3 || char.ToLowerInvariant(typed[0]) != char.ToLowerInvariant(key[0]))
        {
            return false;
        }

        int at = 0;
        foreach (char c in key)
        {
            at += at < typed.Length && char.ToLowerInvariant(typed[at]) == char.ToLowerInvariant(c) ? 1 : 0;
        }

        return at == typed.Length;
    }
}
