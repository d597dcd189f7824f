namespace Glazewright.Design.Document;

/// <summary>The known word most like a mistyped one.</summary>
public static class NearestWord
{
    /// <summary>Finds the nearest word.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="known">The words that would be right.</param>
    /// <returns>The nearest, when it differs by no more than a third of its letters (at least two); else null.</returns>
    public static string? Find(string typed, IEnumerable<string> known)
    {
        string? best = null;
        int bestDistance = int.MaxValue;
        foreach (string word in known)
        {
            int distance = Distance(Simple(typed), Simple(word));
            if (distance < bestDistance)
            {
                best = word;
                bestDistance = distance;
            }
        }

        return best is not null && bestDistance <= Math.Max(2, best.Length / 3) && bestDistance < best.Length ? best : null;
    }

    /// <summary>Letters changed, put in, left out or swapped with a neighbour to make one word the other (optimal string alignment).</summary>
    /// <param name="a">One word.</param>
    /// <param name="b">The other.</param>
    /// <returns>The count.</returns>
    public static int Distance(string a, string b)
    {
        if (a.Length > 60 || b.Length > 60)
        {
            return int.MaxValue;
        }

        int[,] d = new int[a.Length + 1, b.Length + 1];
        for (int i = 0; i <= a.Length; i++)
        {
            for (int j = 0; j <= b.Length; j++)
            {
                if (i == 0 || j == 0)
                {
                    d[i, j] = i + j;
                    continue;
                }

                int change = d[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                d[i, j] = Math.Min(change, Math.Min(d[i - 1, j], d[i, j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
                }
            }
        }

        return d[a.Length, b.Length];
    }

    private static string Simple(string word) => word.ToLowerInvariant().Replace('_', '-').Replace(' ', '-');
}
