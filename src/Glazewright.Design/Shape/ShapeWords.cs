using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Quantities;
using Glazewright.Science.Shape;

namespace Glazewright.Design.Shape;

/// <summary>The finder's words: lengths, pitches, sides, wishes.</summary>
public static class ShapeWords
{
    private static readonly string[] s_months =
        ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

    /// <summary>A month's name.</summary>
    /// <param name="month">0 January.</param>
    /// <returns>The name.</returns>
    public static string Month(int month) => s_months[month];

    /// <summary>A length, to the inch or the centimetre.</summary>
    /// <param name="lengthM">m.</param>
    /// <param name="units">Reader's units.</param>
    /// <returns>Text.</returns>
    public static string Length(double lengthM, UnitSystem units) =>
        units == UnitSystem.Us ? FeetInches.Format(lengthM, 1) : lengthM.ToString("0.00", CultureInfo.InvariantCulture) + " m";

    /// <summary>A pitch: 6.5:12, or degrees.</summary>
    /// <param name="pitchRatio">Rise over run.</param>
    /// <param name="units">Reader's units.</param>
    /// <returns>Text.</returns>
    public static string Pitch(double pitchRatio, UnitSystem units) => units == UnitSystem.Us
        ? (pitchRatio * 12).ToString("0.#", CultureInfo.InvariantCulture) + ":12"
        : (Math.Atan(pitchRatio) * 180 / Math.PI).ToString("0.#", CultureInfo.InvariantCulture) + "°";

    /// <summary>An area.</summary>
    /// <param name="areaM2">m².</param>
    /// <param name="units">Reader's units.</param>
    /// <returns>Text.</returns>
    public static string Area(double areaM2, UnitSystem units) => Shown.Of(areaM2, Unit.SquareMetre, units).Text;

    /// <summary>The faces that are clear, with the sides' own compass words.</summary>
    /// <param name="shape">The shape.</param>
    /// <returns><c>south wall, south slope</c>; "none".</returns>
    public static string Clear(ShapeCandidate shape)
    {
        ArgumentNullException.ThrowIfNull(shape);
        (string near, string far) = Sides(shape);
        string[] faces =
        [
            .. Face(shape.Clear.NearWall, near + " wall"), .. Face(shape.Clear.NearSlope, near + " slope"),
            .. Face(shape.Clear.FarSlope, far + " slope"), .. Face(shape.Clear.FarWall, far + " wall"),
        ];
        return faces.Length == 0 ? "none" : string.Join(", ", faces);

        static string[] Face(bool clear, string name) => clear ? [name] : [];
    }

    /// <summary>Compass words of the equator's side and the other.</summary>
    /// <param name="shape">The shape.</param>
    /// <returns>Two words.</returns>
    public static (string Near, string Far) Sides(ShapeCandidate shape)
    {
        ArgumentNullException.ThrowIfNull(shape);
        double nearDeg = shape.RangeBearingDeg + (shape.IsNearLeft ? 90 : -90);
        return (Form.Compass.Word(nearDeg), Form.Compass.Word(nearDeg + 180));
    }

    /// <summary>A shape in one line.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="units">Reader's units.</param>
    /// <returns>Eaves, pitches, ridge, clear faces.</returns>
    public static string Shape(ShapeCandidate shape, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(shape);
        (string near, string far) = Sides(shape);
        GableSection s = shape.Section;
        return $"{near} eave {Length(s.NearEaveM, units)}, {Pitch(s.NearPitchRatio, units)} over {Length(s.RidgeOffsetM, units)}, ridge {Length(s.RidgeM, units)}, "
            + $"{Pitch(s.FarPitchRatio, units)} over {Length(s.WidthM - s.RidgeOffsetM, units)}, {far} eave {Length(s.FarEaveM, units)}; clear: {Clear(shape)}";
    }

    internal static string Mol(double mol) => Shown.Of(mol, Unit.MolPerSquareMetreDay, UnitSystem.Metric).Text;

    internal static string Ratio(double ratio) => ratio.ToString("0.00", CultureInfo.InvariantCulture);

    internal static string Latitude(double latitudeDeg) =>
        Math.Abs(latitudeDeg).ToString("0.0", CultureInfo.InvariantCulture) + "° " + (latitudeDeg < 0 ? "S" : "N");

    internal static string Degrees(double angleDeg) => angleDeg.ToString("0.0", CultureInfo.InvariantCulture) + "°";
}
