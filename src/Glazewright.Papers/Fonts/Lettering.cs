using System.Text;

namespace Glazewright.Papers.Fonts;

/// <summary>Measures lettering: every writer uses these widths, so a text box is the same size in SVG, PDF and on the screen.</summary>
public static class Lettering
{
    /// <summary>What stands in for a character that the font cannot draw.</summary>
    public const char Substitute = '?';

    private static readonly Lazy<TrueTypeMetrics> Regular = new(() => TrueTypeMetrics.Read(FontFiles.Bytes(Face.Regular)));
    private static readonly Lazy<TrueTypeMetrics> SemiBold = new(() => TrueTypeMetrics.Read(FontFiles.Bytes(Face.SemiBold)));

    /// <summary>The metrics of a face.</summary>
    public static TrueTypeMetrics Metrics(Face face) => face == Face.SemiBold ? SemiBold.Value : Regular.Value;

    /// <summary>Font size in mm whose capitals stand <paramref name="capHeightMm"/> high.</summary>
    public static double EmMm(Face face, double capHeightMm) => capHeightMm / Metrics(face).CapHeightEm;

    /// <summary>Width in mm of one line of text whose capitals stand <paramref name="capHeightMm"/> high.</summary>
    public static double WidthMm(string text, Face face, double capHeightMm)
    {
        ArgumentNullException.ThrowIfNull(text);
        TrueTypeMetrics metrics = Metrics(face);
        double widthEm = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            widthEm += metrics.Draws(rune.Value) ? metrics.AdvanceEm(rune.Value) : metrics.AdvanceEm(Substitute);
        }

        return widthEm * capHeightMm / metrics.CapHeightEm;
    }

    /// <summary>The characters of a text that one of the faces lacks, each once, in their order; what <see cref="Drawable"/> drops without a trace is not among them.</summary>
    public static IEnumerable<Rune> Undrawable(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.EnumerateRunes()
            .Where(r => !IsSpace(r) && !IsSilent(r) && !(Metrics(Face.Regular).Draws(r.Value) && Metrics(Face.SemiBold).Draws(r.Value)))
            .Distinct();
    }

    /// <summary>
    /// The text as it can be lettered: line ends and tabs become spaces, control and direction marks vanish, and each
    /// character that the font lacks becomes one <see cref="Substitute"/> (an emoji of several parts becomes one box).
    /// </summary>
    public static string Drawable(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        TrueTypeMetrics metrics = Metrics(Face.Regular);
        StringBuilder drawn = new(text.Length);
        bool lastMissed = false;
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (IsSpace(rune))
            {
                drawn.Append(' ');
                lastMissed = false;
            }
            else if (IsSilent(rune))
            {
                continue;
            }
            else if (metrics.Draws(rune.Value))
            {
                drawn.Append(rune.ToString());
                lastMissed = false;
            }
            else if (!lastMissed)
            {
                drawn.Append(Substitute);
                lastMissed = true;
            }
        }

        return drawn.ToString();
    }

    private static bool IsSpace(Rune rune) => rune.Value is '\t' or '\n' or '\r' or 0x2028 or 0x2029;

    private static bool IsSilent(Rune rune) => !IsSpace(rune) && (Rune.IsControl(rune) || Rune.GetUnicodeCategory(rune) is System.Globalization.UnicodeCategory.Format);
}
