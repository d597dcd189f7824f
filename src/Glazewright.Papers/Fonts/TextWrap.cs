namespace Glazewright.Papers.Fonts;

/// <summary>Breaks running text into lines.</summary>
public static class TextWrap
{
    /// <summary>Lines of at most <paramref name="widthMm"/>; a word longer than a line is broken where it must be.</summary>
    /// <param name="text">One paragraph; blanks between words count once.</param>
    /// <param name="face">The face it is set in.</param>
    /// <param name="capHeightMm">Height of capitals, mm.</param>
    /// <param name="widthMm">Room for a line, mm.</param>
    /// <returns>At least one line, perhaps empty.</returns>
    public static IReadOnlyList<string> Lines(string text, Face face, double capHeightMm, double widthMm)
    {
        List<string> lines = [];
        string line = "";
        foreach (string word in Lettering.Drawable(text).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string longer = line.Length == 0 ? word : line + " " + word;
            if (Lettering.WidthMm(longer, face, capHeightMm) <= widthMm)
            {
                line = longer;
                continue;
            }

            if (line.Length > 0)
            {
                lines.Add(line);
            }

            line = BreakLong(word, face, capHeightMm, widthMm, lines);
        }

        lines.Add(line);
        return lines;
    }

    /// <summary>At most <paramref name="most"/> lines; the last ends with an ellipsis if there was more to say.</summary>
    public static IReadOnlyList<string> Lines(string text, Face face, double capHeightMm, double widthMm, int most)
    {
        IReadOnlyList<string> all = Lines(text, face, capHeightMm, widthMm);
        return all.Count <= most
            ? all
            : [.. all.Take(most - 1), Fit(all[most - 1] + " …", face, capHeightMm, widthMm)];
    }

    /// <summary>The text, cut with an ellipsis if it is wider than <paramref name="widthMm"/>.</summary>
    public static string Fit(string text, Face face, double capHeightMm, double widthMm)
    {
        string drawn = Lettering.Drawable(text);
        if (Lettering.WidthMm(drawn, face, capHeightMm) <= widthMm)
        {
            return drawn;
        }

        int keep = drawn.Length;
        while (keep > 0 && Lettering.WidthMm(drawn[..keep] + "…", face, capHeightMm) > widthMm)
        {
            keep--;
        }

        return drawn[..keep].TrimEnd() + "…";
    }

    private static string BreakLong(string word, Face face, double capHeightMm, double widthMm, List<string> lines)
    {
        while (Lettering.WidthMm(word, face, capHeightMm) > widthMm && word.Length > 1)
        {
            int keep = word.Length - 1;
            while (keep > 1 && Lettering.WidthMm(word[..keep], face, capHeightMm) > widthMm)
            {
                keep--;
            }

            lines.Add(word[..keep]);
            word = word[keep..];
        }

        return word;
    }
}
