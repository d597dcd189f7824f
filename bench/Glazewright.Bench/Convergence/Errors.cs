using Glazewright.Science.Light;
using Glazewright.Science.Light.Shadows;

namespace Glazewright.Bench.Convergence;

/// <summary>Errors of one fineness against its reference.</summary>
/// <param name="fineness">Rays.</param>
/// <param name="reference">The fine light.</param>
/// <param name="rest">What is not varied, for a grid.</param>
internal sealed class Errors(ScanFineness fineness, double[][] reference, Func<SunGrid, double[][]> rest)
{
    /// <summary>What they are.</summary>
    internal const string Name = "error, %; points: root of the mean square";

    /// <summary>Names of the errors, in order.</summary>
    internal static string[] Curves => [.. StudyYear.Periods.Select(p => $"{p}, mean"), .. StudyYear.Periods.Select(p => $"{p}, points")];

    internal double[] At(Func<ScanFineness, double[][]> varied, SunGrid grid) => Between(StudyLight.Add(varied(fineness), rest(grid)), reference);

    /// <summary>Per cent: |mean − reference|, and the rms over the cells of each cell's own share.</summary>
    internal static double[] Between(double[][] light, double[][] reference) =>
    [
        .. light.Zip(reference, (a, r) => 100 * Math.Abs((a.Average() / r.Average()) - 1)),
        .. light.Zip(reference, (a, r) => 100 * Math.Sqrt(a.Zip(r, (x, y) => ((x / y) - 1) * ((x / y) - 1)).Average())),
    ];
}
