using System.Globalization;
using Glazewright.Mechanics.Guards;
using Glazewright.Mechanics.Sections;

namespace Glazewright.Design.Frame;

/// <summary>
/// The generic tubes, named by size in inches: <c>tube-4x2x0.120</c> is 4 in deep, 2 in wide, wall 0.120 in. Walls of 0.120 in and more are structural
/// tube; thinner ones are rolled of gauge sheet and the wall is bare metal.
/// </summary>
public static class TubeNames
{
    private const string Prefix = "tube-";
    private const double LeastStructuralWallIn = 0.1195;

    /// <summary>Tubes tried when a frame member is to be sized.</summary>
    public static IReadOnlyList<string> FrameList { get; } =
    [
        "tube-2x2x0.120", "tube-3x2x0.120", "tube-3x3x0.120", "tube-4x2x0.120", "tube-4x3x0.120", "tube-4x4x0.120", "tube-4x2x0.188", "tube-4x3x0.188",
        "tube-4x4x0.188", "tube-5x3x0.188", "tube-6x2x0.188", "tube-6x3x0.188", "tube-6x4x0.188", "tube-8x4x0.188", "tube-6x4x0.250", "tube-8x4x0.250",
        "tube-8x6x0.250", "tube-10x6x0.250", "tube-10x6x0.375",
    ];

    /// <summary>Tubes tried when a purlin or girt is to be sized.</summary>
    public static IReadOnlyList<string> PurlinList { get; } =
    [
        "tube-1.5x1.5x0.075", "tube-2x2x0.075", "tube-2x2x0.105", "tube-2x2x0.120", "tube-3x2x0.105", "tube-3x2x0.120", "tube-3x3x0.120", "tube-4x2x0.120",
        "tube-4x3x0.120", "tube-4x4x0.120", "tube-4x4x0.188", "tube-5x5x0.188", "tube-6x4x0.188",
    ];

    /// <summary>Reads a name.</summary>
    /// <param name="name"><c>tube-DxWxT</c> in inches; numbers with a point, or a fraction as <c>3/16</c>.</param>
    /// <param name="section">The tube.</param>
    /// <returns>False when the name is none, or its sizes cannot be (sides 1 to 16 in, wall 0.03 in to a fifth of the smaller side).</returns>
    public static bool TryRead(string name, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out TubeSection? section)
    {
        section = null;
        if (!name.StartsWith(Prefix, StringComparison.Ordinal))
        {
            return false;
        }

        string[] parts = name[Prefix.Length..].Split('x');
        if (parts.Length != 3 || !Inches(parts[0], out double depthIn) || !Inches(parts[1], out double widthIn) || !Inches(parts[2], out double wallIn)
            || !(depthIn is >= 1 and <= 16 && widthIn is >= 1 and <= 16 && wallIn >= 0.03 && wallIn <= Math.Min(depthIn, widthIn) / 5))
        {
            return false;
        }

        (double depthM, double widthM, double wallM) = (depthIn * UsUnits.MPerIn, widthIn * UsUnits.MPerIn, wallIn * UsUnits.MPerIn);
        section = wallIn >= LeastStructuralWallIn
            ? Tubes.Structural(name, depthM, widthM, wallM)
            : Tubes.Gauge(name, depthM, widthM, wallM);
        return true;
    }

    /// <summary>A tube whose name is known to be good.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>The tube.</returns>
    /// <exception cref="ArgumentException">Not a name of a tube.</exception>
    public static TubeSection Of(string name) =>
        TryRead(name, out TubeSection? section) ? section : throw new ArgumentException($"'{name}' is not the name of a tube.", nameof(name));

    /// <summary>Wall as ordered, m (the section carries the wall that strength counts on).</summary>
    /// <param name="section">The tube.</param>
    /// <returns>m.</returns>
    public static double OrderedWallM(TubeSection section) => section.Standard == TubeStandard.Structural
        ? section.Shape.WallM / Tubes.StructuralWallFactor
        : section.Shape.WallM;

    private static bool Inches(string text, out double value)
    {
        string[] fraction = text.Split('/');
        if (fraction.Length == 2 && Plain(fraction[0], out double top) && Plain(fraction[1], out double bottom) && bottom > 0)
        {
            value = top / bottom;
            return true;
        }

        value = 0;
        return fraction.Length == 1 && Plain(text, out value);
    }

    private static bool Plain(string text, out double value) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value);
}
