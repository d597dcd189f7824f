using System.Globalization;
using System.Text;

namespace Glazewright.Design.Document;

/// <summary>Writes texts as JSON.</summary>
public static class JsonText
{
    /// <summary>A text in quotes with what JSON must have escaped; other characters stand as they are.</summary>
    /// <param name="text">Any text.</param>
    /// <returns>The JSON string.</returns>
    public static string Quote(string text)
    {
        StringBuilder quoted = new(text.Length + 2);
        quoted.Append('"');
        foreach (char c in text)
        {
            quoted.Append(c switch
            {
                '"' => "\\\"",
                '\\' => "\\\\",
                '\n' => "\\n",
                '\r' => "\\r",
                '\t' => "\\t",
                < ' ' => string.Create(CultureInfo.InvariantCulture, $"\\u{(int)c:x4}"),
                _ => c.ToString(),
            });
        }

        return quoted.Append('"').ToString();
    }
}
