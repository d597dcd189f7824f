using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace Glazewright.Papers.Pdf;

/// <summary>
/// Makes a PDF's bytes depend on its content alone: PDFsharp draws font-subset tags, ids and XMP uuids by lot and dates from the
/// clock; all are of fixed length, so they are overwritten in place and no offset moves.
/// </summary>
internal static partial class PdfStamp
{
    /// <summary>The settled bytes.</summary>
    public static byte[] Settle(byte[] pdf, DateOnly? date)
    {
        // Latin-1 keeps every byte, so that offsets in the text are offsets in the file.
        string text = Encoding.Latin1.GetString(pdf);
        text = PlainDate().Replace(text, m => date is DateOnly day
            ? m.Groups[1].Value + Midnight(day, "yyyyMMdd", "000000", m.Groups[2].Value) + m.Groups[3].Value
            : new string(' ', m.Length));
        text = XmpDate().Replace(text, m => date is DateOnly day
            ? m.Groups[1].Value + Midnight(day, "yyyy-MM-dd", "T00:00:00", m.Groups[2].Value) + m.Groups[3].Value
            : new string(' ', m.Length));
        Dictionary<string, string> tags = [];
        text = SubsetTag().Replace(text, m =>
        {
            if (!tags.TryGetValue(m.Groups[1].Value, out string? tag))
            {
                tag = Letters(tags.Count);
                tags.Add(m.Groups[1].Value, tag);
            }

            return m.Value.Replace(m.Groups[1].Value, tag, StringComparison.Ordinal);
        });
        string blank = FileId().Replace(Uuid().Replace(text, m => "uuid:" + new string('0', m.Length - 5)), m => Zeros(m.Value));
        string hash = Convert.ToHexString(SHA256.HashData(Encoding.Latin1.GetBytes(blank)));
        string uuid = string.Create(
            CultureInfo.InvariantCulture,
            $"uuid:{hash[..8]}-{hash[8..12]}-{hash[12..16]}-{hash[16..20]}-{hash[20..32]}").ToLowerInvariant();
        text = Uuid().Replace(text, uuid);
        text = FileId().Replace(text, m => Filled(m.Value, hash));
        return Encoding.Latin1.GetBytes(text);
    }

    /// <summary>The day at 0:00 in the same number of characters, in universal time.</summary>
    private static string Midnight(DateOnly day, string format, string time, string old)
    {
        string start = day.ToString(format, CultureInfo.InvariantCulture) + time;
        char[] zone = [.. old[start.Length..].Select(c => char.IsAsciiDigit(c) ? '0' : c == '-' ? '+' : c)];
        return start + new string(zone);
    }

    private static string Letters(int number)
    {
        char[] letters = "AAAAAA".ToCharArray();
        for (int i = 5; i >= 0 && number > 0; i--)
        {
            letters[i] = (char)('A' + number % 26);
            number /= 26;
        }

        return new string(letters);
    }

    private static string Zeros(string id) => Filled(id, "0");

    private static string Filled(string id, string digits)
    {
        char[] filled = id.ToCharArray();
        int inside = -1;
        for (int i = 0; i < filled.Length; i++)
        {
            if (filled[i] == '<')
            {
                inside = 0;
            }
            else if (filled[i] == '>')
            {
                inside = -1;
            }
            else if (inside >= 0)
            {
                filled[i] = digits[inside++ % digits.Length];
            }
        }

        return new string(filled);
    }

    [GeneratedRegex(@"(/(?:CreationDate|ModDate)\(D:)(\d{14}[^)]*)(\))")]
    private static partial Regex PlainDate();

    [GeneratedRegex(@"(<xmp:(?:Create|Modify|Metadata)Date>)(\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d[^<]*)(</xmp:(?:Create|Modify|Metadata)Date>)")]
    private static partial Regex XmpDate();

    [GeneratedRegex(@"/([A-Z]{6})\+IBM")]
    private static partial Regex SubsetTag();

    [GeneratedRegex("uuid:[0-9a-fA-F-]{36}")]
    private static partial Regex Uuid();

    [GeneratedRegex(@"/ID\s*\[\s*<[0-9A-Fa-f]+>\s*<[0-9A-Fa-f]+>\s*\]")]
    private static partial Regex FileId();
}
