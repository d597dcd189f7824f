using System.Text;
using System.Text.Unicode;

namespace Glazewright.Science.Weather;

/// <summary>Text files as they come from any system: marks, two-byte letters and old line ends are turned into plain bytes with line feeds, line for line.</summary>
internal static class PlainText
{
    /// <summary>Turns a text into single-byte text (ASCII with UTF-8 or Latin-1 names) with line feeds.</summary>
    /// <param name="bytes">The opened file.</param>
    /// <returns>The text without its mark.</returns>
    public static byte[] Of(byte[] bytes)
    {
        byte[] text = bytes switch
        {
            [0xEF, 0xBB, 0xBF, ..] => bytes[3..],
            [0xFF, 0xFE, ..] => Narrow(bytes[2..], Encoding.Unicode),
            [0xFE, 0xFF, ..] => Narrow(bytes[2..], Encoding.BigEndianUnicode),
            // Every key and number is ASCII: its zero byte tells the order even without a mark.
            [not 0, 0, not 0, 0, ..] => Narrow(bytes, Encoding.Unicode),
            [0, not 0, 0, not 0, ..] => Narrow(bytes, Encoding.BigEndianUnicode),
            _ => bytes,
        };
        if (text.AsSpan().IndexOf((byte)'\n') < 0 && text.AsSpan().IndexOf((byte)'\r') >= 0)
        {
            text = [.. text];
            text.AsSpan().Replace((byte)'\r', (byte)'\n');
        }

        return text;
    }

    /// <summary>A line as text: UTF-8 when it is valid, else Latin-1, the two that weather files come in.</summary>
    /// <param name="line">Bytes of the line.</param>
    /// <returns>The text.</returns>
    public static string Line(ReadOnlySpan<byte> line) => Utf8.IsValid(line) ? Encoding.UTF8.GetString(line) : Encoding.Latin1.GetString(line);

    private static byte[] Narrow(byte[] wide, Encoding encoding) => Encoding.UTF8.GetBytes(encoding.GetString(wide));
}
