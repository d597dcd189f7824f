using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Checks;

/// <summary>Forces and deflection of a simply supported span.</summary>
/// <param name="MomentNm">Largest moment, N·m.</param>
/// <param name="ShearN">Largest shear, N.</param>
/// <param name="DeflectionM">Deflection at midspan, m.</param>
public sealed record SpanResult(double MomentNm, double ShearN, double DeflectionM);

/// <summary>Simply supported spans: purlins and girts.</summary>
public static class SimpleSpan
{
    /// <summary>Even load and a point load at midspan.</summary>
    /// <param name="spanM">Span, m, 0.01 to 30.</param>
    /// <param name="lineNPerM">Even load, N/m.</param>
    /// <param name="midspanN">Point load at midspan, N.</param>
    /// <param name="elasticPa">Young's modulus, Pa.</param>
    /// <param name="inertiaM4">Second moment, m⁴.</param>
    /// <returns>wL²/8 + PL/4, wL/2 + P/2, 5wL⁴/384EI + PL³/48EI; signs follow the loads.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static SpanResult Of(double spanM, double lineNPerM, double midspanN, double elasticPa, double inertiaM4)
    {
        Require.Within(spanM, 0.01, 30);
        Require.Finite(lineNPerM);
        Require.Finite(midspanN);
        Require.Within(elasticPa, 1, 1e13);
        Require.Within(inertiaM4, 1e-15, 1);
        double ei = elasticPa * inertiaM4;
        return new SpanResult(
            lineNPerM * spanM * spanM / 8 + midspanN * spanM / 4,
            lineNPerM * spanM / 2 + midspanN / 2,
            5 * lineNPerM * Math.Pow(spanM, 4) / (384 * ei) + midspanN * Math.Pow(spanM, 3) / (48 * ei));
    }
}
