using System.Buffers.Binary;

namespace Glazewright.Papers.Fonts;

/// <summary>
/// Reads from a TrueType file what a layout needs: which characters it draws, how wide each is, how tall its capitals are.
/// </summary>
/// <remarks>
/// Tables and fields: ISO/IEC 14496-22 (Open Font Format), <c>head</c>, <c>hhea</c>, <c>hmtx</c>, <c>OS/2</c>, <c>cmap</c>
/// formats 4 and 12; read from memory, checked in tests against the advances PdfPig finds in a written PDF.
/// </remarks>
public sealed class TrueTypeMetrics
{
    private readonly Dictionary<int, double> advanceEmByCode;

    private TrueTypeMetrics(Dictionary<int, double> advanceEmByCode, double capHeightEm, double descentEm)
    {
        this.advanceEmByCode = advanceEmByCode;
        CapHeightEm = capHeightEm;
        DescentEm = descentEm;
    }

    /// <summary>Height of capitals as a fraction of the em, 0 to 1.</summary>
    public double CapHeightEm { get; }

    /// <summary>Depth of the tails of letters below the baseline, as a positive fraction of the em.</summary>
    public double DescentEm { get; }

    /// <summary>Reads the metrics of one font file.</summary>
    /// <exception cref="InvalidDataException">A needed table is missing or cut short.</exception>
    public static TrueTypeMetrics Read(byte[] font)
    {
        ArgumentNullException.ThrowIfNull(font);
        try
        {
            int unitsPerEm = U16(font, Table(font, "head") + 18);
            int advances = U16(font, Table(font, "hhea") + 34);
            int hmtx = Table(font, "hmtx");
            int os2 = Table(font, "OS/2");
            double capEm = (double)U16(font, os2 + 88) / unitsPerEm;
            double descentEm = -(double)S16(font, os2 + 70) / unitsPerEm;
            Dictionary<int, double> widths = [];
            foreach ((int code, int glyph) in Codes(font, Table(font, "cmap")))
            {
                int row = Math.Min(glyph, advances - 1);
                widths[code] = (double)U16(font, hmtx + 4 * row) / unitsPerEm;
            }

            return new TrueTypeMetrics(widths, capEm, descentEm);
        }
        catch (IndexOutOfRangeException cut)
        {
            throw new InvalidDataException("The font file is cut short.", cut);
        }
        catch (ArgumentOutOfRangeException cut)
        {
            throw new InvalidDataException("The font file is cut short.", cut);
        }
    }

    /// <summary>Whether the font draws this Unicode code point.</summary>
    public bool Draws(int codePoint) => advanceEmByCode.ContainsKey(codePoint);

    /// <summary>Advance width of one code point as a fraction of the em; 0 for a code the font does not draw.</summary>
    public double AdvanceEm(int codePoint) => advanceEmByCode.GetValueOrDefault(codePoint);

    private static IEnumerable<(int Code, int Glyph)> Codes(byte[] font, int cmap)
    {
        int best = -1;
        int bestFormat = 0;
        for (int i = 0; i < U16(font, cmap + 2); i++)
        {
            int at = cmap + (int)U32(font, cmap + 4 + 8 * i + 4);
            int format = U16(font, at);
            if (format is 4 or 12 && format > bestFormat)
            {
                (best, bestFormat) = (at, format);
            }
        }

        return bestFormat switch
        {
            12 => Format12(font, best),
            4 => Format4(font, best),
            _ => throw new InvalidDataException("The font has no Unicode character map of format 4 or 12."),
        };
    }

    private static IEnumerable<(int Code, int Glyph)> Format12(byte[] font, int at)
    {
        uint groups = U32(font, at + 12);
        for (int g = 0; g < groups; g++)
        {
            int row = at + 16 + 12 * g;
            uint first = U32(font, row);
            uint last = U32(font, row + 4);
            uint glyph = U32(font, row + 8);
            for (uint code = first; code <= last; code++)
            {
                yield return ((int)code, (int)(glyph + code - first));
            }
        }
    }

    private static IEnumerable<(int Code, int Glyph)> Format4(byte[] font, int at)
    {
        int twiceSegments = U16(font, at + 6);
        int ends = at + 14;
        int starts = ends + twiceSegments + 2;
        int deltas = starts + twiceSegments;
        int offsets = deltas + twiceSegments;
        for (int s = 0; s < twiceSegments; s += 2)
        {
            int offset = U16(font, offsets + s);
            for (int code = U16(font, starts + s); code <= U16(font, ends + s) && code < 0xFFFF; code++)
            {
                int glyph = offset == 0
                    ? code
                    : U16(font, offsets + s + offset + 2 * (code - U16(font, starts + s)));
                if (offset == 0 || glyph != 0)
                {
                    glyph = (glyph + U16(font, deltas + s)) & 0xFFFF;
                }

                if (glyph != 0)
                {
                    yield return (code, glyph);
                }
            }
        }
    }

    private static int Table(byte[] font, string tag)
    {
        for (int i = 0; i < U16(font, 4); i++)
        {
            int row = 12 + 16 * i;
            if (font[row] == tag[0] && font[row + 1] == tag[1] && font[row + 2] == tag[2] && font[row + 3] == tag[3])
            {
                return (int)U32(font, row + 8);
            }
        }

        throw new InvalidDataException($"The font has no {tag} table.");
    }

    private static int U16(byte[] font, int at) => BinaryPrimitives.ReadUInt16BigEndian(font.AsSpan(at, 2));

    private static int S16(byte[] font, int at) => BinaryPrimitives.ReadInt16BigEndian(font.AsSpan(at, 2));

    private static uint U32(byte[] font, int at) => BinaryPrimitives.ReadUInt32BigEndian(font.AsSpan(at, 4));
}
