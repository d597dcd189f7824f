using Glazewright.Design.Document;
using Glazewright.Design.Form;
using Glazewright.Design.Quantities;

namespace Glazewright.Web.Fields;

/// <summary>What "along" and "across the ridges" are on the compass, for fields that place things by them.</summary>
public static class CompassHelp
{
    private const double UsualBearingDeg = 90;

    /// <summary>A sentence to stand below the field; empty for any other field.</summary>
    /// <param name="pointer">The field.</param>
    /// <param name="document">The job, for the bearing of its ridges.</param>
    public static string Of(string pointer, JobDocument document)
    {
        ArgumentNullException.ThrowIfNull(pointer);
        ArgumentNullException.ThrowIfNull(document);
        double bearing = document.Find("/site/bearing") is TextNode typed && QuantityReader.TryRead(typed.Text, QuantityKind.Angle, out Quantity angle, out _) ? angle.Inside : UsualBearingDeg;
        return pointer[(pointer.LastIndexOf('/') + 1)..] switch
        {
            "x" => $"More is to the {Compass.Word(bearing)}, less to the {Compass.Word(bearing + 180)}.",
            "y" => $"More is to the {Compass.Word(bearing - 90)}, less to the {Compass.Word(bearing + 90)}.",
            "sizeX" => $"{Capital(Compass.Word(bearing + 180))} to {Compass.Word(bearing)}.",
            "sizeY" => $"{Capital(Compass.Word(bearing + 90))} to {Compass.Word(bearing - 90)}.",
            _ => "",
        };
    }

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];
}
