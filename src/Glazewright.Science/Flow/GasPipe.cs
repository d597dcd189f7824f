using Glazewright.Science.Guards;

namespace Glazewright.Science.Flow;

/// <summary>Low-pressure fuel gas in steel pipe.</summary>
/// <remarks>
/// The fuel gas code's low-pressure equation, D = Q^0.381 / (19.17 (ΔH / (C_r L))^0.206) with inches, ft³/h, in. w.c. and ft (from memory; it gives the code's own
/// tables 402.4, read, within 1 %). Straight pipe and a usual number of fittings; elevation and regulators are the fitter's.
/// </remarks>
public static class GasPipe
{
    /// <summary>C_r of natural gas of specific gravity 0.60.</summary>
    public const double NaturalGasRatio = 0.6094;

    /// <summary>C_r of undiluted propane.</summary>
    public const double PropaneRatio = 1.2462;

    private const double InchM = 0.0254;
    private const double FootM = 0.3048;
    private const double InWcPa = 249.08891;
    private const double CubicFootPerHourM3PerS = FootM * FootM * FootM / 3600;

    /// <summary>Gas a pipe passes for a pressure drop.</summary>
    /// <param name="insideDiameterM">Inside diameter, m, 0.005 to 0.5.</param>
    /// <param name="lengthM">Length, m, 0.3 to 2000.</param>
    /// <param name="dropPa">Pressure drop allowed, Pa, 10 to 3000.</param>
    /// <param name="gasRatio">C_r of the gas, 0.3 to 2.</param>
    /// <returns>Gas at standard conditions, m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double FlowM3PerS(double insideDiameterM, double lengthM, double dropPa, double gasRatio)
    {
        Within.Require(insideDiameterM, 0.005, 0.5);
        Within.Require(lengthM, 0.3, 2000);
        Within.Require(dropPa, 10, 3000);
        Within.Require(gasRatio, 0.3, 2);
        double slope = dropPa / InWcPa / (gasRatio * lengthM / FootM);
        return Math.Pow(19.17 * insideDiameterM / InchM * Math.Pow(slope, 0.206), 1 / 0.381) * CubicFootPerHourM3PerS;
    }
}
