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
    /// <summary>The settled bytes, which are the given ones: no second copy of a long paper is made.</summary>
    public static byte[] Settle(byte[] pdf, DateOnly? date)
    {
        // Latin-1 keeps every byte, so that places in the text are places in the file. It is read only: what is found is overwritten in the bytes.
        string text = Encoding.Latin1.GetString(pdf);
        Date(PlainDate(), "yyyyMMdd", "000000");
        Date(XmpDate(), "yyyy-MM-dd", "T00:00:00");
        Dictionary<string, string> tags = [];
        foreach (Match m in SubsetTag().Matches(text))
        {
            if (!tags.TryGetValue(m.Groups[1].Value, out string? tag))
            {
                tag = Letters(tags.Count);
                tags.Add(m.Groups[1].Value, tag);
            }

            Put(m.Groups[1].Index, tag);
        }

        Match[] uuids = Uuid().Matches(text).ToArray(), ids = FileId().Matches(text).ToArray();
        foreach (Match m in uuids)
        {
            Put(m.Index, "uuid:" + new string('0', m.Length - 5));
        }

        foreach (Match m in ids)
        {
            Put(m.Index, Filled(m.Value, "0"));
        }

        string hash = Convert.ToHexString(SHA256.HashData(pdf));
        string uuid = string.Create(
            CultureInfo.InvariantCulture,
            $"uuid:{hash[..8]}-{hash[8..12]}-{hash[12..16]}-{hash[16..20]}-{hash[20..32]}").ToLowerInvariant();
        foreach (Match m in uuids)
        {
            Put(m.Index, uuid);
        }

        foreach (Match m in ids)
        {
            Put(m.Index, Filled(m.Value, hash));
        }

        return pdf;

        void Date(Regex written, string format, string time)
        {
            foreach (Match m in written.Matches(text))
            {
                Put(m.Index, date is DateOnly day
                    ? m.Groups[1].Value + Midnight(day, format, time, m.Groups[2].Value) + m.Groups[3].Value
                    : new string(' ', m.Length));
            }
        }

        void Put(int at, string instead) => Encoding.Latin1.GetBytes(instead, pdf.AsSpan(at));
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
