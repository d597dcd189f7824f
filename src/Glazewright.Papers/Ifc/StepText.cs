using System.Globalization;
using System.Text;

namespace Glazewright.Papers.Ifc;

/// <summary>Values of an exchange structure (ISO 10303-21): strings in printable ASCII with everything else as code points, reals with a point.</summary>
internal static class StepText
{
    /// <summary>The longest IfcLabel and IfcIdentifier.</summary>
    public const int MostLabel = 255;

    /// <summary>A text of any length, quoted.</summary>
    public static string Quote(string text)
    {
        StringBuilder quoted = new(text.Length + 2);
        quoted.Append('\'');
        bool coded = false;
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (rune.Value is >= 0x20 and < 0x7F)
            {
                Close();
                _ = rune.Value is '\'' or '\\' ? quoted.Append((char)rune.Value, 2) : quoted.Append((char)rune.Value);
            }
            else if (rune.IsBmp)
            {
                if (!coded)
                {
                    quoted.Append("\\X2\\");
                    coded = true;
                }

                quoted.Append(rune.Value.ToString("X4", CultureInfo.InvariantCulture));
            }
            else
            {
                Close();
                quoted.Append("\\X4\\").Append(rune.Value.ToString("X8", CultureInfo.InvariantCulture)).Append("\\X0\\");
            }
        }

        Close();
        return quoted.Append('\'').ToString();

        void Close()
        {
            if (coded)
            {
                quoted.Append("\\X0\\");
                coded = false;
            }
        }
    }

    /// <summary>A label, cut where it is longer than the standard lets it be; $ when empty.</summary>
    public static string Label(string text) => text.Length == 0 ? "$" : Quote(Cut(text));

    /// <summary>A real number: a nanometre is the last digit.</summary>
    public static string Real(double value)
    {
        string text = (Math.Round(value, 9) + 0.0).ToString("0.0########", CultureInfo.InvariantCulture);
        return text.StartsWith("-0.", StringComparison.Ordinal) && text.AsSpan(3).Trim('0').Length == 0 ? "0.0" : text;
    }

    private static string Cut(string text)
    {
        if (text.Length <= MostLabel)
        {
            return text;
        }

        int to = char.IsHighSurrogate(text[MostLabel - 2]) ? MostLabel - 2 : MostLabel - 1;
        return text[..to] + "…";
    }
}
