using Glazewright.Science.Guards;

namespace Glazewright.Science.Flow;

/// <summary>One tested point of a fan, at standard density and rated speed.</summary>
/// <param name="StaticPa">Static pressure it works against, Pa.</param>
/// <param name="FlowM3PerS">Air moved, m³/s.</param>
/// <param name="PowerW">Electrical power taken, W.</param>
public sealed record FanPoint(double StaticPa, double FlowM3PerS, double PowerW);

/// <summary>What a fan does at one static pressure.</summary>
/// <param name="FlowM3PerS">Air moved, m³/s; 0 where the fan stalls.</param>
/// <param name="PowerW">Electrical power, W.</param>
/// <param name="BeyondTested">The pressure is higher than the last tested point: a guess along the last slope.</param>
public readonly record struct FanOutput(double FlowM3PerS, double PowerW, bool BeyondTested);

/// <summary>A fan's flow against static pressure, between tested points; beyond the last, straight on down its steepest slope to no flow.</summary>
public sealed class FanCurve
{
    /// <summary>Density fan tables are given at, kg/m³.</summary>
    public const double StandardDensityKgPerM3 = 1.2;

    private readonly FanPoint[] _points;
    private readonly double _stallSlope;

    private FanCurve(FanPoint[] points)
    {
        _points = points;
        double steepest = 0;
        for (int i = 1; i < points.Length; i++)
        {
            steepest = Math.Max(steepest, (points[i - 1].FlowM3PerS - points[i].FlowM3PerS) / (points[i].StaticPa - points[i - 1].StaticPa));
        }

        _stallSlope = Math.Max(steepest, 1e-3 * points[^1].FlowM3PerS);
    }

    /// <summary>Tested points, by rising pressure.</summary>
    public ReadOnlySpan<FanPoint> Points => _points;

    /// <summary>Pressure at which the (extended) curve reaches no flow, Pa.</summary>
    public double ShutOffPa => _points[^1].StaticPa + _points[^1].FlowM3PerS / _stallSlope;

    /// <summary>Curve through tested points.</summary>
    /// <param name="points">Two or more, by rising pressure from 0 Pa, each with less flow than the one before.</param>
    /// <returns>The curve.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than two points, out of order, out of range, or flow that does not fall.</exception>
    public static FanCurve Through(IReadOnlyList<FanPoint> points)
    {
        Within.Require(points.Count, 2, 100, nameof(points));
        for (int i = 0; i < points.Count; i++)
        {
            Within.Require(points[i].StaticPa, i == 0 ? 0 : points[i - 1].StaticPa + 1e-6, 5000, nameof(points));
            Within.Require(points[i].FlowM3PerS, 1e-6, i == 0 ? 1000 : points[i - 1].FlowM3PerS * (1 - 1e-9), nameof(points));
            Within.Require(points[i].PowerW, 0, 1e6, nameof(points));
        }

        return new FanCurve([.. points]);
    }

    /// <summary>Flow and power at a static pressure.</summary>
    /// <param name="staticPa">Static pressure, Pa; below the first tested point counts as that point.</param>
    /// <returns>Flow, power, and whether it was tested there.</returns>
    /// <remarks>Straight lines between points: fan tables are too coarse to know more, and lines keep the order of the points. Total for any pressure.</remarks>
    public FanOutput At(double staticPa)
    {
        FanPoint last = _points[^1];
        if (!(staticPa <= last.StaticPa))
        {
            double flow = Math.Max(last.FlowM3PerS - _stallSlope * (staticPa - last.StaticPa), 0);
            return new FanOutput(flow, last.PowerW, true);
        }

        int i = 1;
        while (i < _points.Length - 1 && _points[i].StaticPa < staticPa)
        {
            i++;
        }

        FanPoint below = _points[i - 1];
        FanPoint above = _points[i];
        double share = Math.Clamp((staticPa - below.StaticPa) / (above.StaticPa - below.StaticPa), 0, 1);
        return new FanOutput(
            below.FlowM3PerS + share * (above.FlowM3PerS - below.FlowM3PerS),
            below.PowerW + share * (above.PowerW - below.PowerW),
            false);
    }

    /// <summary>The same fan at another speed.</summary>
    /// <param name="speedRatio">New speed over rated speed, 0.05 to 2.</param>
    /// <returns>Curve with flow × n, pressure × n², power × n³.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>Fan laws; AMCA 201, from memory. Motor and drive losses do not follow the cube at low speed.</remarks>
    public FanCurve AtSpeed(double speedRatio)
    {
        Within.Require(speedRatio, 0.05, 2);
        return Scaled(speedRatio, speedRatio * speedRatio, speedRatio * speedRatio * speedRatio);
    }

    /// <summary>The same fan in thinner or denser air.</summary>
    /// <param name="densityKgPerM3">Density of the air it moves, kg/m³, 0.5 to 1.6.</param>
    /// <returns>Curve with the same flows; pressures and powers in proportion to density.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>Fan laws; AMCA 201, from memory.</remarks>
    public FanCurve AtDensity(double densityKgPerM3)
    {
        Within.Require(densityKgPerM3, 0.5, 1.6);
        double ratio = densityKgPerM3 / StandardDensityKgPerM3;
        return Scaled(1, ratio, ratio);
    }

    private FanCurve Scaled(double flow, double pressure, double power) =>
        new([.. _points.Select(p => new FanPoint(p.StaticPa * pressure, p.FlowM3PerS * flow, p.PowerW * power))]);
}
