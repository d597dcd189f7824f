using Glazewright.Design.Document;
using Glazewright.Design.Quantities;

namespace Glazewright.Web.Fields;

/// <summary>What "along" and "across the ridges" are on the compass, for fields that place things by them.</summary>
public static class CompassHelp
{
    private const double UsualBearingDeg = 90;
    private static readonly string[] s_winds = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"];

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
            "x" => $"More is to the {Wind(bearing)}, less to the {Wind(bearing + 180)}.",
            "y" => $"More is to the {Wind(bearing - 90)}, less to the {Wind(bearing + 90)}.",
            "sizeX" => $"{Capital(Wind(bearing + 180))} to {Wind(bearing)}.",
            "sizeY" => $"{Capital(Wind(bearing + 90))} to {Wind(bearing - 90)}.",
            _ => "",
        };
    }

    // Of eight winds the nearest.
    private static string Wind(double bearingDeg) => s_winds[(int)Math.Round(((bearingDeg % 360 + 360) % 360) / 45) % 8];

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];
}
