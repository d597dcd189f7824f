using Glazewright.Science.Guards;

namespace Glazewright.Science.Flow;

/// <summary>Power of pumps.</summary>
public static class PumpPower
{
    /// <summary>Shaft power of a pump.</summary>
    /// <param name="flowM3PerS">Water, m³/s, 0 to 10.</param>
    /// <param name="pressurePa">Pressure rise, Pa, 0 to 5e7.</param>
    /// <param name="efficiency">Pump efficiency, 0.05 to 1.</param>
    /// <returns>Power, W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>Q Δp/η; the trade's gpm × psi / 1714 is the same in horsepower.</remarks>
    public static double ShaftW(double flowM3PerS, double pressurePa, double efficiency)
    {
        Within.Require(flowM3PerS, 0, 10);
        Within.Require(pressurePa, 0, 5e7);
        Within.Require(efficiency, 0.05, 1);
        return flowM3PerS * pressurePa / efficiency;
    }
}
