using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Checks;

/// <summary>A force square to a span.</summary>
/// <param name="AtM">Distance from the start, m.</param>
/// <param name="ForceN">Force, N; its sign follows the even load's.</param>
public readonly record struct SpanPoint(double AtM, double ForceN);

/// <summary>Reactions, moment and deflection of a simply supported span under an even load and forces anywhere.</summary>
/// <param name="StartN">Reaction at the start, N.</param>
/// <param name="EndN">Reaction at the end, N.</param>
/// <param name="MomentNm">Largest moment by size, N·m, with its sign.</param>
/// <param name="DeflectionM">Deflection at midspan, m.</param>
public sealed record PointSpanResult(double StartN, double EndN, double MomentNm, double DeflectionM)
{
    /// <summary>Largest shear, N: the larger reaction.</summary>
    public double ShearN => Math.Max(Math.Abs(StartN), Math.Abs(EndN));
}

/// <summary>Simply supported spans with forces anywhere: headers, and jambs that headers and sills lean on.</summary>
public static class PointLoadSpan
{
    /// <summary>Solves the span.</summary>
    /// <param name="spanM">Span, m, 0.01 to 30.</param>
    /// <param name="lineNPerM">Even load over the whole span, N/m.</param>
    /// <param name="points">Forces, each at 0 to the span.</param>
    /// <param name="elasticPa">Young's modulus, Pa.</param>
    /// <param name="inertiaM4">Second moment, m⁴.</param>
    /// <returns>Moments are exact; midspan deflection is within 2.5 % of the largest for one force anywhere.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    /// <remarks>AISC Manual table 3-23, cases 1 and 8, superposed: 5wL⁴/384EI and Pb(3L² − 4b²)/48EI with b to the nearer end. From memory.</remarks>
    public static PointSpanResult Of(double spanM, double lineNPerM, IReadOnlyList<SpanPoint> points, double elasticPa, double inertiaM4)
    {
        ArgumentNullException.ThrowIfNull(points);
        SpanResult even = SimpleSpan.Of(spanM, lineNPerM, 0, elasticPa, inertiaM4);
        double startN = lineNPerM * spanM / 2;
        double endN = startN;
        double sagM = even.DeflectionM;
        foreach (SpanPoint p in points)
        {
            Require.Within(p.AtM, 0, spanM);
            Require.Finite(p.ForceN);
            startN += p.ForceN * (1 - p.AtM / spanM);
            endN += p.ForceN * p.AtM / spanM;
            double nearM = Math.Min(p.AtM, spanM - p.AtM);
            sagM += p.ForceN * nearM * (3 * spanM * spanM - 4 * nearM * nearM) / (48 * elasticPa * inertiaM4);
        }

        double MomentAt(double xM) => startN * xM - lineNPerM * xM * xM / 2 - points.Where(p => p.AtM < xM).Sum(p => p.ForceN * (xM - p.AtM));
        double worst = 0;
        double fromM = 0;
        foreach (double toM in points.Select(p => p.AtM).Append(spanM).Order())
        {
            // Between two forces the moment turns where the shear is zero.
            double shearN = startN - points.Where(p => p.AtM <= fromM).Sum(p => p.ForceN);
            double zeroM = lineNPerM == 0 ? toM : Math.Clamp(shearN / lineNPerM, fromM, toM);
            foreach (double xM in (double[])[zeroM, toM])
            {
                double moment = MomentAt(xM);
                worst = Math.Abs(moment) > Math.Abs(worst) ? moment : worst;
            }

            fromM = toM;
        }

        return new PointSpanResult(startN, endN, worst, sagM);
    }
}
