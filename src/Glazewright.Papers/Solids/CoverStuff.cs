using System.Globalization;
using Glazewright.Science.Optics;

namespace Glazewright.Papers.Solids;

/// <summary>What a covering is made of, as a body.</summary>
/// <param name="Name">In words.</param>
/// <param name="Material">Material in a word or two.</param>
/// <param name="Clear">Light passes.</param>
/// <param name="ThicknessM">Thickness, m.</param>
/// <param name="MassKgPerM2">Mass, kg/m²; 0 when not known.</param>
public sealed record CoverStuff(string Name, string Material, bool Clear, double ThicknessM, double MassKgPerM2)
{
    /// <summary>The stuff of a covering by its short name: the first number in it is its millimetres (<c>polycarbonate-16-triple</c>).</summary>
    /// <param name="kind">Cover kind id.</param>
    /// <returns>Its stuff; a kind that is not generic is an opaque sheet of 50 mm.</returns>
    /// <remarks>Thicknesses that no name tells: double glass 4-12-4 (common practice), single sheet 1 mm, film 0.2 mm a layer without the air between (common practice).</remarks>
    public static CoverStuff Of(string kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        if (!GenericCovers.TryFind(kind, out GenericCover? known))
        {
            return new CoverStuff(kind, "Covering", false, 0.05, 0);
        }

        string[] words = kind.Split('-');
        double typedM = words.Select(w => double.TryParse(w, NumberStyles.None, CultureInfo.InvariantCulture, out double mm) ? mm / 1000 : 0).FirstOrDefault(m => m > 0);
        (string material, double thicknessM) = kind switch
        {
            "glass-4-double" => ("Glass", 0.020),
            "polycarbonate-single" => ("Polycarbonate", 0.001),
            "film-single" => ("Polyethylene film", 0.0002),
            "film-double" => ("Polyethylene film", 0.0004),
            _ => (words[0] switch { "glass" => "Glass", "polycarbonate" => "Polycarbonate", "panel" => "Insulated metal panel", _ => "Covering" }, typedM > 0 ? typedM : 0.05),
        };
        return new CoverStuff(known.Name, material, known.Make is not CoverMake.Opaque, thicknessM, known.MassKgPerM2);
    }
}
