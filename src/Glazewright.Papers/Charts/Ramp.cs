using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Charts;

/// <summary>A run of colours from little to much, interpolated in OKLab.</summary>
/// <remarks>OKLab matrices: B. Ottosson, "A perceptual color space for image processing" (2020), from memory; the tests hold that the stops come back.</remarks>
public sealed class Ramp
{
    private readonly int[] stops;

    private Ramp(int[] stops) => this.stops = stops;

    /// <summary>Light, temperature: dark is little.</summary>
    public static Ramp Sequential { get; } = new(
        [0x1A1F48, 0x023B69, 0x005974, 0x007881, 0x069787, 0x48B481, 0x93C981, 0xCFDC93, 0xFFF0BA]);

    /// <summary>Departure from a setpoint: the middle is the page.</summary>
    public static Ramp Diverging { get; } = new(
        [0x00589C, 0x4680B9, 0x7DA7D2, 0xB5CDE7, 0xF0F0F0, 0xE2C3AF, 0xC99674, 0xAC6938, 0x864100]);

    /// <summary>The colour at a fraction of the way, 0 to 1 (held there).</summary>
    /// <returns>0xRRGGBB.</returns>
    public int At(double fraction)
    {
        double place = Math.Clamp(double.IsNaN(fraction) ? 0 : fraction, 0, 1) * (stops.Length - 1);
        int low = Math.Min((int)place, stops.Length - 2);
        double part = place - low;
        (double l0, double a0, double b0) = ToLab(stops[low]);
        (double l1, double a1, double b1) = ToLab(stops[low + 1]);
        return FromLab(l0 + part * (l1 - l0), a0 + part * (a1 - a0), b0 + part * (b1 - b0));
    }

    /// <summary>The paint of step <paramref name="step"/> of <paramref name="steps"/>, first and last at the ends of the ramp.</summary>
    public Paint Step(int step, int steps) => new Paint.Exact(At(steps <= 1 ? 0.5 : (double)step / (steps - 1)));

    private static (double L, double A, double B) ToLab(int rgb)
    {
        double r = Linear((rgb >> 16) & 0xFF);
        double g = Linear((rgb >> 8) & 0xFF);
        double b = Linear(rgb & 0xFF);
        double l = Math.Cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
        double m = Math.Cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
        double s = Math.Cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
        return (
            0.2104542553 * l + 0.7936177850 * m - 0.0040720468 * s,
            1.9779984951 * l - 2.4285922050 * m + 0.4505937099 * s,
            0.0259040371 * l + 0.7827717662 * m - 0.8086757660 * s);
    }

    private static int FromLab(double lightness, double a, double b)
    {
        double l = Cube(lightness + 0.3963377774 * a + 0.2158037573 * b);
        double m = Cube(lightness - 0.1055613458 * a - 0.0638541728 * b);
        double s = Cube(lightness - 0.0894841775 * a - 1.2914855480 * b);
        int red = Coded(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s);
        int green = Coded(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s);
        int blue = Coded(-0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s);
        return (red << 16) | (green << 8) | blue;
    }

    private static double Cube(double x) => x * x * x;

    private static double Linear(int coded)
    {
        double c = coded / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
    }

    private static int Coded(double linear)
    {
        double c = linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.Pow(linear, 1 / 2.4) - 0.055;
        return (int)Math.Round(255 * Math.Clamp(c, 0, 1));
    }
}
