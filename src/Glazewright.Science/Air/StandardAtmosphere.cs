using Glazewright.Science.Guards;

namespace Glazewright.Science.Air;

/// <summary>Standard atmosphere by elevation, as the psychrometric tables use it.</summary>
/// <remarks>ASHRAE Handbook—Fundamentals (2017, SI), ch. 1, eqs (3) and (4); from memory, checked against table 1 (read at second hand).</remarks>
public static class StandardAtmosphere
{
    /// <summary>Pressure at sea level, Pa.</summary>
    public const double SeaLevelPa = 101_325;

    /// <summary>Barometric pressure.</summary>
    /// <param name="elevationM">Elevation above sea level, m, −1000 to 11 000.</param>
    /// <returns>Pressure, Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double PressurePa(double elevationM)
    {
        Within.Require(elevationM, -1000, 11_000);
        return SeaLevelPa * Math.Pow(1 - 2.25577e-5 * elevationM, 5.2559);
    }

    /// <summary>Air temperature.</summary>
    /// <param name="elevationM">Elevation above sea level, m, −1000 to 11 000.</param>
    /// <returns>Temperature, °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double TemperatureC(double elevationM)
    {
        Within.Require(elevationM, -1000, 11_000);
        return 15 - 0.0065 * elevationM;
    }
}
