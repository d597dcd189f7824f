using Glazewright.Papers.Fonts;
using PdfSharp.Drawing;
using PdfSharp.Fonts;

namespace Glazewright.Papers.Pdf;

/// <summary>Gives PDFsharp the embedded faces.</summary>
/// <remarks>
/// PDFsharp keeps its resolver in a static switch that can only be set before the first font. It is set here, under a lock, and
/// not in the programs, because every program and every test that writes a PDF needs the same one and none may have another.
/// </remarks>
internal sealed class PdfFonts : IFontResolver
{
    private const string Family = "Glazewright lettering";
    private static readonly Lock Gate = new();

    /// <summary>The font of a face with capitals of a height.</summary>
    public static XFont Font(Face face, double capHeightMm)
    {
        lock (Gate)
        {
            GlobalFontSettings.FontResolver ??= new PdfFonts();
        }

        double sizePt = PdfBookWriter.PtPerMm * Lettering.EmMm(face, capHeightMm);
        return new XFont(Family, sizePt, face == Face.SemiBold ? XFontStyleEx.Bold : XFontStyleEx.Regular);
    }

    /// <inheritdoc/>
    public byte[]? GetFont(string faceName) => FontFiles.Bytes(Enum.Parse<Face>(faceName));

    /// <inheritdoc/>
    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        new((isBold ? Face.SemiBold : Face.Regular).ToString());
}
