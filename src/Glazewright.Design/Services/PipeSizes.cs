using Glazewright.Science.Flow;

namespace Glazewright.Design.Services;

/// <summary>First sizes of pipes, to price from: nominal inches, schedule 40 (inside diameters of ASME B36.10, from memory).</summary>
internal static class PipeSizes
{
    /// <summary>Speed that supply pipes are sized for, m/s: 5 ft/s (common practice: no hammer, no noise).</summary>
    public const double SupplyMs = 5 * 0.3048;

    /// <summary>Fall of drains: 1/4 in a foot.</summary>
    public const double DrainFallRatio = 0.25 / 12;

    // Manning's n of plastic drains as they are in use (common practice).
    private const double Manning = 0.011;

    private static readonly (double InsideM, string Name)[] s_pipes =
    [
        (0.622 * 0.0254, "1/2 in"), (0.824 * 0.0254, "3/4 in"), (1.049 * 0.0254, "1 in"), (1.380 * 0.0254, "1-1/4 in"), (1.610 * 0.0254, "1-1/2 in"),
        (2.067 * 0.0254, "2 in"), (2.469 * 0.0254, "2-1/2 in"), (3.068 * 0.0254, "3 in"), (4.026 * 0.0254, "4 in"), (6.065 * 0.0254, "6 in"),
    ];

    /// <summary>Smallest pipe that carries a supply at <see cref="SupplyMs"/>; empty where none does.</summary>
    /// <param name="flowM3PerS">Flow, m³/s.</param>
    public static string Supply(double flowM3PerS) => First(d => Math.PI / 4 * d * d * SupplyMs >= flowM3PerS);

    /// <summary>Smallest drain of 1-1/2 in or more that carries a flow half full by Manning's equation; empty where none does.</summary>
    /// <param name="flowM3PerS">Flow, m³/s.</param>
    /// <param name="floorDrain">A floor drain runs into it: 2 in at least (plumbing codes, from memory).</param>
    public static string Drain(double flowM3PerS, bool floorDrain = false) => First(d => d > (floorDrain ? 0.05 : 0.04) && HalfFullM3PerS(d) >= flowM3PerS);

    /// <summary>Flow of a half-full drain, m³/s: A R^⅔ S^½ / n with a quarter of the diameter as hydraulic radius.</summary>
    /// <param name="insideM">Inside diameter, m.</param>
    public static double HalfFullM3PerS(double insideM) => 0.5 * Math.PI / 4 * insideM * insideM * Math.Pow(insideM / 4, 2.0 / 3) * Math.Sqrt(DrainFallRatio) / Manning;

    /// <summary>Smallest low-pressure gas pipe by the code's equation; the default where none serves.</summary>
    /// <param name="flowM3PerS">Gas, m³/s.</param>
    /// <param name="runM">Longest run of the system: each piece is sized by it.</param>
    /// <param name="dropPa">Pressure drop allowed, Pa.</param>
    /// <param name="ratio">Of the gas, see <see cref="GasPipe"/>.</param>
    public static (double InsideM, string Name) Gas(double flowM3PerS, double runM, double dropPa, double ratio) =>
        s_pipes.Where(p => p.InsideM < 0.11).FirstOrDefault(p => GasPipe.FlowM3PerS(p.InsideM, Math.Clamp(runM, 0.3, 2000), dropPa, ratio) >= flowM3PerS);

    private static string First(Func<double, bool> carries) => s_pipes.FirstOrDefault(p => carries(p.InsideM)).Name ?? "";
}
