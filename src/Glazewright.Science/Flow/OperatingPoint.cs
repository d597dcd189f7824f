using Glazewright.Science.Guards;
using Glazewright.Science.Roots;

namespace Glazewright.Science.Flow;

/// <summary>Some fans of one kind that run side by side.</summary>
/// <param name="Curve">Their curve at the density and speed they run at.</param>
/// <param name="Count">How many run.</param>
public sealed record FanGroup(FanCurve Curve, int Count);

/// <summary>Where fans and the things in their way agree.</summary>
/// <param name="StaticPa">Static pressure across the fans, Pa.</param>
/// <param name="FlowM3PerS">Air through the house, m³/s.</param>
/// <param name="PowerW">Electrical power of the running fans, W.</param>
/// <param name="BeyondTested">At least one running fan is past its last tested point: the flow is a guess and the fan is badly used.</param>
public sealed record OperatingPoint(double StaticPa, double FlowM3PerS, double PowerW, bool BeyondTested);

/// <summary>Fans against the resistance of their path.</summary>
public static class FanSystem
{
    /// <summary>Pressure lost along a path in series.</summary>
    /// <param name="path">Pieces one after another.</param>
    /// <param name="flowM3PerS">Flow, m³/s, 0 to 1e5.</param>
    /// <param name="densityKgPerM3">Density, kg/m³, 0.5 to 1.6.</param>
    /// <returns>Loss, Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double LossPa(IReadOnlyList<AirPath> path, double flowM3PerS, double densityKgPerM3)
    {
        Within.Require(flowM3PerS, 0, 1e5);
        Within.Require(densityKgPerM3, 0.5, 1.6);
        double sumPa = 0;
        foreach (AirPath piece in path)
        {
            sumPa += piece.LossPa(flowM3PerS, densityKgPerM3);
        }

        return sumPa;
    }

    /// <summary>Air that fans side by side move at one static pressure.</summary>
    /// <param name="fans">Groups of fans.</param>
    /// <param name="staticPa">Static pressure, Pa, 0 to 10 000.</param>
    /// <returns>Their sum.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static FanOutput Together(IReadOnlyList<FanGroup> fans, double staticPa)
    {
        Within.Require(staticPa, 0, 10_000);
        double flow = 0;
        double power = 0;
        bool beyond = false;
        foreach (FanGroup group in fans)
        {
            if (group.Count <= 0)
            {
                continue;
            }

            FanOutput one = group.Curve.At(staticPa);
            flow += group.Count * one.FlowM3PerS;
            power += group.Count * one.PowerW;
            beyond |= one.BeyondTested;
        }

        return new FanOutput(flow, power, beyond);
    }

    /// <summary>Finds the operating point: the static pressure at which the fans move just the air whose loss is that pressure.</summary>
    /// <param name="fans">Running fans, their curves already at the air's density.</param>
    /// <param name="path">What the air passes, in series.</param>
    /// <param name="densityKgPerM3">Density of the air, kg/m³, 0.5 to 1.6.</param>
    /// <param name="point">The operating point; still air when no fan runs.</param>
    /// <returns>Whether the bracketed search closed (within 0.001 Pa on both curves).</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static bool TryFind(
        IReadOnlyList<FanGroup> fans, IReadOnlyList<AirPath> path, double densityKgPerM3, out OperatingPoint point)
    {
        Within.Require(densityKgPerM3, 0.5, 1.6);
        double shutOffPa = 0;
        foreach (FanGroup group in fans)
        {
            shutOffPa = group.Count > 0 ? Math.Max(shutOffPa, group.Curve.ShutOffPa) : shutOffPa;
        }

        if (shutOffPa == 0)
        {
            point = new OperatingPoint(0, 0, 0, false);
            return true;
        }

        double Gap(double staticPa)
        {
            double flow = Together(fans, staticPa).FlowM3PerS;
            double lossPa = 0;
            foreach (AirPath piece in path)
            {
                lossPa += piece.LossPa(flow, densityKgPerM3);
            }

            return staticPa - lossPa;
        }

        RootResult root = Bracketed.Find(Gap, 0, shutOffPa, 1e-9);
        FanOutput output = Together(fans, root.Argument);
        point = new OperatingPoint(root.Argument, output.FlowM3PerS, output.PowerW, output.BeyondTested);
        return root.Converged && Math.Abs(root.ResidualValue) < 1e-3;
    }
}
