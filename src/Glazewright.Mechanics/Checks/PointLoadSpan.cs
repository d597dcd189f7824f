using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Checks;

/// <summary>A force square to a span.</summary>
/// <param name="AtM">Distance from the start, m.</param>
/// <param name="ForceN">Force, N; its sign follows the even load's.</param>
public readonly record struct SpanPoint(double AtM, double ForceN);

/// <summary>An even load over part of a span.</summary>
/// <param name="FromM">Its start, m from the span's start.</param>
/// <param name="ToM">Its end, m.</param>
/// <param name="LineNPerM">Load, N/m.</param>
public readonly record struct SpanStrip(double FromM, double ToM, double LineNPerM);

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
    /// <summary>How far a load may reach past the end by rounding, m.</summary>
    private const double RoundingM = 1e-9;

    /// <summary>Solves a span under one even load and forces.</summary>
    /// <param name="spanM">Span, m, 0.01 to 100.</param>
    /// <param name="lineNPerM">Even load over the whole span, N/m.</param>
    /// <param name="points">Forces, each at 0 to the span.</param>
    /// <param name="elasticPa">Young's modulus, Pa.</param>
    /// <param name="inertiaM4">Second moment, m⁴.</param>
    /// <returns>Moments are exact; midspan deflection is within 2.5 % of the largest for one force anywhere.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static PointSpanResult Of(double spanM, double lineNPerM, IReadOnlyList<SpanPoint> points, double elasticPa, double inertiaM4) =>
        Of(spanM, [new SpanStrip(0, spanM, lineNPerM)], points, elasticPa, inertiaM4);

    /// <summary>Solves a span under even loads over its parts and forces.</summary>
    /// <param name="spanM">Span, m, 0.01 to 100.</param>
    /// <param name="strips">Even loads, each from 0 to the span; they may overlap.</param>
    /// <param name="points">Forces, each at 0 to the span.</param>
    /// <param name="elasticPa">Young's modulus, Pa.</param>
    /// <param name="inertiaM4">Second moment, m⁴.</param>
    /// <returns>Moments are exact; midspan deflection is within 2.5 % of the largest for one force anywhere.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    /// <remarks>
    /// Statics; deflection at midspan is the sum of Pb(3L² − 4b²)/48EI, b to the nearer end (AISC Manual table 3-23, case 8, from memory), and of its integral over
    /// each strip, which over the whole span is 5wL⁴/384EI (case 1).
    /// </remarks>
    public static PointSpanResult Of(
        double spanM, IReadOnlyList<SpanStrip> strips, IReadOnlyList<SpanPoint> points, double elasticPa, double inertiaM4)
    {
        Require.Within(spanM, 0.01, 100);
        Require.Within(elasticPa, 1, 1e13);
        Require.Within(inertiaM4, 1e-15, 1);
        ArgumentNullException.ThrowIfNull(points);
        ArgumentNullException.ThrowIfNull(strips);
        double startN = 0, endN = 0, sagM = 0;
        double ei = elasticPa * inertiaM4;
        void Add(double forceN, double atM)
        {
            startN += forceN * (1 - atM / spanM);
            endN += forceN * atM / spanM;
        }

        foreach (SpanPoint p in points)
        {
            Require.Within(p.AtM, 0, spanM + RoundingM);
            Require.Finite(p.ForceN);
            Add(p.ForceN, p.AtM);
            double nearM = Math.Min(p.AtM, spanM - p.AtM);
            sagM += p.ForceN * nearM * (3 * spanM * spanM - 4 * nearM * nearM) / (48 * ei);
        }

        foreach (SpanStrip s in strips)
        {
            Require.Within(s.FromM, 0, spanM);
            Require.Within(s.ToM, s.FromM, spanM + RoundingM);
            Require.Finite(s.LineNPerM);
            Add(s.LineNPerM * (s.ToM - s.FromM), (s.FromM + s.ToM) / 2);
            sagM += s.LineNPerM * (Influence(s.ToM) - Influence(s.FromM)) / (48 * ei);
        }

        // What a line of unit forces from the start to x adds to 48EI times the midspan deflection.
        double Influence(double xM)
        {
            double nearM = Math.Min(xM, spanM - xM);
            double side = nearM * nearM * (1.5 * spanM * spanM - nearM * nearM);
            return xM <= spanM / 2 ? side : 0.625 * spanM * spanM * spanM * spanM - side;
        }

        double MomentAt(double xM)
        {
            double ofPoints = 0, ofStrips = 0;
            foreach (SpanPoint p in points)
            {
                ofPoints += p.AtM < xM ? p.ForceN * (xM - p.AtM) : 0;
            }

            foreach (SpanStrip s in strips)
            {
                ofStrips += s.FromM < xM ? s.LineNPerM * (Math.Min(xM, s.ToM) - s.FromM) * (xM - (Math.Min(xM, s.ToM) + s.FromM) / 2) : 0;
            }

            return startN * xM - ofPoints - ofStrips;
        }

        List<double> breaks = [.. points.Select(p => p.AtM), spanM];
        foreach (SpanStrip s in strips)
        {
            breaks.Add(s.FromM);
            breaks.Add(s.ToM);
        }

        breaks.Sort();
        double worst = 0;
        double fromM = 0;
        foreach (double toM in breaks)
        {
            // Between two breaks the moment turns where the shear is zero.
            double pushedN = 0, restingN = 0, lineNPerM = 0;
            foreach (SpanPoint p in points)
            {
                pushedN += p.AtM <= fromM ? p.ForceN : 0;
            }

            foreach (SpanStrip s in strips)
            {
                restingN += s.LineNPerM * (Math.Clamp(fromM, s.FromM, s.ToM) - s.FromM);
                lineNPerM += s.FromM <= fromM && s.ToM >= toM ? s.LineNPerM : 0;
            }

            double shearN = startN - pushedN - restingN;
            Try(lineNPerM == 0 ? toM : Math.Clamp(fromM + shearN / lineNPerM, fromM, toM));
            Try(toM);
            fromM = toM;
        }

        void Try(double xM)
        {
            double moment = MomentAt(xM);
            worst = Math.Abs(moment) > Math.Abs(worst) ? moment : worst;
        }

        return new PointSpanResult(startN, endN, worst, sagM);
    }
}
