using Glazewright.Science.Guards;

namespace Glazewright.Science.Sky;

/// <summary>Optical air mass and the pressure that scales it.</summary>
public static class AirMass
{
    /// <summary>Relative air mass.</summary>
    /// <param name="apparentZenithDeg">Refracted zenith angle, 0 to 90; below the horizon there is no air mass.</param>
    /// <returns>1 at the zenith, about 38 at the horizon.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>Kasten &amp; Young 1989, Applied Optics 28:4735.</remarks>
    public static double RelativeKastenYoung(double apparentZenithDeg)
    {
        Within.Require(apparentZenithDeg, 0, 90);
        return Kernel(apparentZenithDeg);
    }

    /// <summary>Standard atmosphere's pressure at a height.</summary>
    /// <param name="elevationM">Above sea level, m, −500 to 11 000.</param>
    /// <returns>Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>The solar field's usual form of the standard atmosphere: 100 ((44331.514 − z)/11880.516)^(1/0.1902632).</remarks>
    public static double PressureAtPa(double elevationM)
    {
        Within.Require(elevationM, -500, 11_000);
        return 100 * Math.Pow((44331.514 - elevationM) / 11880.516, 1 / 0.1902632);
    }

    internal static double Kernel(double apparentZenithDeg)
    {
        double z = Math.Clamp(apparentZenithDeg, 0, 90);
        return 1 / (Math.Cos(z * Math.PI / 180) + (0.50572 * Math.Pow(96.07995 - z, -1.6364)));
    }
}
