namespace Glazewright.Design.Behaviour;

/// <summary>The steps that tables go by: round ones in the job's units.</summary>
internal static class Steps
{
    private const double MphMs = 0.44704;
    private const double InchM = 0.0254;

    /// <summary>Winds, m/s: 0 to 25 mph by fives, or 0 to 10 m/s by twos.</summary>
    public static double[] WindsMs(bool metric) => metric ? [0, 2, 4, 6, 8, 10] : [.. new[] { 0, 5, 10, 15, 20, 25 }.Select(mph => mph * MphMs)];

    /// <summary>Gaps of a curtain, m: drawn, a hand, a foot, two; or 0, 100, 300 and 600 mm.</summary>
    public static double[] GapsM(bool metric) => metric ? [0, 0.1, 0.3, 0.6] : [.. new[] { 0, 4, 12, 24 }.Select(inches => inches * InchM)];
}
