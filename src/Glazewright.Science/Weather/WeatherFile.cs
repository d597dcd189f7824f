using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;

namespace Glazewright.Science.Weather;

/// <summary>The door for weather files: bytes in, a year or the list of what is wrong out.</summary>
public static class WeatherFile
{
    private const int LimitBytes = 64_000_000;

    /// <summary>Reads an EPW or TMY3 CSV file, plain or gzip, told apart by content (the name is only for messages).</summary>
    /// <param name="content">The whole file.</param>
    /// <param name="gaps">How holes may be filled; <see cref="GapRule.Short"/> when not given.</param>
    /// <returns>The year, or every problem found.</returns>
    /// <remarks>Formats, units and missing codes: docs/methods/weather.md.</remarks>
    public static WeatherReading Read(ReadOnlySpan<byte> content, GapRule? gaps = null)
    {
        if (content.IsEmpty)
        {
            return Refuse(WeatherWords.Empty());
        }

        byte[] bytes = content.ToArray();
        if (bytes.Length > 2 && bytes[0] == 0x1F && bytes[1] == 0x8B)
        {
            if (!TryOpen(bytes, out bytes, out WeatherProblem? damaged))
            {
                return Refuse(damaged!);
            }
        }

        if (bytes.Length > LimitBytes)
        {
            return Refuse(WeatherWords.TooLarge(LimitBytes));
        }

        if (bytes.Length == 0)
        {
            return Refuse(WeatherWords.Empty());
        }

        string hash = Convert.ToHexStringLower(SHA256.HashData(bytes));
        ReadOnlySpan<byte> text = PlainText.Of(bytes);

        var lines = new TextLines(text);
        lines.TryNext(out ReadOnlySpan<byte> first);
        bool two = lines.TryNext(out ReadOnlySpan<byte> second);
        gaps ??= GapRule.Short;
        if (StartsWith(first, "LOCATION") || HasEpwKey(text))
        {
            return new EpwReader(hash, gaps).Read(text);
        }

        if (two && StartsWith(second, "Date (MM/DD/YYYY)"))
        {
            return new Tmy3Reader(hash, gaps).Read(text);
        }

        if (StartsWith(first, "Latitude (decimal degrees)"))
        {
            return Refuse(WeatherWords.KnownButUnread("a satellite year in the PVGIS text form"));
        }

        if (Encoding.Latin1.GetString(first).Contains("Year,Month,Day,Hour,Minute", StringComparison.Ordinal))
        {
            return Refuse(WeatherWords.KnownButUnread("a table of NSRDB columns without its station lines"));
        }

        return Refuse(WeatherWords.Unknown(Printable(first)));
    }

    private static bool HasEpwKey(ReadOnlySpan<byte> text) =>
        text[..Math.Min(text.Length, 20_000)].IndexOf("DATA PERIODS,"u8) >= 0;

    private static WeatherReading.Refused Refuse(WeatherProblem problem) => new([problem]);

    private static bool StartsWith(ReadOnlySpan<byte> line, string key) =>
        Encoding.Latin1.GetString(line[..Math.Min(line.Length, key.Length)]).Equals(key, StringComparison.OrdinalIgnoreCase);

    private static string Printable(ReadOnlySpan<byte> line)
    {
        string text = Encoding.Latin1.GetString(line[..Math.Min(line.Length, 40)]);
        return string.Concat(text.Select(c => c is >= ' ' and <= '~' ? c : '·'));
    }

    private static bool TryOpen(byte[] packed, out byte[] bytes, out WeatherProblem? problem)
    {
        using var opened = new MemoryStream();
        problem = null;
        try
        {
            using var gzip = new GZipStream(new MemoryStream(packed, writable: false), CompressionMode.Decompress);
            byte[] buffer = new byte[81_920];
            for (int read; (read = gzip.Read(buffer)) > 0;)
            {
                opened.Write(buffer, 0, read);
                if (opened.Length > LimitBytes)
                {
                    bytes = [];
                    problem = WeatherWords.TooLarge(LimitBytes);
                    return false;
                }
            }
        }
        catch (InvalidDataException)
        {
            bytes = [];
            problem = WeatherWords.Damaged();
            return false;
        }

        bytes = opened.ToArray();
        if (!LengthMatches(packed, opened.Length))
        {
            problem = WeatherWords.Damaged();
            return false;
        }

        return true;
    }

    /// <summary>The last four bytes of a gzip member are the opened length: a file cut off in the middle fails here even where the decoder stays silent.</summary>
    private static bool LengthMatches(byte[] packed, long opened) =>
        packed.Length >= 18 && BitConverter.ToUInt32(packed, packed.Length - 4) == (uint)(opened & 0xFFFFFFFF);
}

/// <summary>Lines of a byte text, ended by LF, CRLF or the end.</summary>
internal ref struct TextLines
{
    private ReadOnlySpan<byte> _rest;

    public TextLines(ReadOnlySpan<byte> text) => _rest = text;

    /// <summary>1-based number of the line last given.</summary>
    public int Number { get; private set; }

    public bool TryNext(out ReadOnlySpan<byte> line)
    {
        if (_rest.IsEmpty)
        {
            line = default;
            return false;
        }

        Number++;
        int end = _rest.IndexOf((byte)'\n');
        line = end < 0 ? _rest : _rest[..end];
        _rest = end < 0 ? default : _rest[(end + 1)..];
        if (!line.IsEmpty && line[^1] == (byte)'\r')
        {
            line = line[..^1];
        }

        return true;
    }
}
