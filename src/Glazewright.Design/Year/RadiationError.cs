using System.Runtime.CompilerServices;
using Glazewright.Science.Climate;
using Glazewright.Science.Maths;

namespace Glazewright.Design.Year;

/// <summary>What sun does to a thermometer or hygrometer in a shield that no fan draws air through.</summary>
/// <remarks>
/// Nakamura and Mahrt 2005 (J. Atmos. Oceanic Technol. 22, 1046–1058): reads high by 0.13 + 373.40 X, X = S / (ρ c T u), for a thermistor in a multiplate shield over grass (coefficients read
/// second-hand, in a meteorological library that quotes them). Below X = 10⁻⁴ they hold for nothing and none is taken; slower air than 0.3 m/s is taken as 0.3 m/s, about the least of such a
/// shield's trials (our choice). What such a sensor reads low under a clear night sky is left out.
/// </remarks>
internal static class RadiationError
{
    /// <summary>Air is taken as at least this fast, m/s.</summary>
    public const double LeastSpeedMs = 0.3;

    private const double LeastX = 1e-4;
    private const double OffsetK = 0.13;
    private const double SlopeK = 373.40;
    private const double KelvinC = 273.15;

    /// <summary>How far it reads high.</summary>
    /// <param name="sunWm2">Sunlight on the level where it hangs, W/m².</param>
    /// <param name="airC">Air, °C.</param>
    /// <param name="speedMs">Air past it, m/s.</param>
    /// <param name="pressurePa">Pressure, Pa.</param>
    /// <returns>K.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double OfK(double sunWm2, double airC, double speedMs, double pressurePa)
    {
        double x = sunWm2 / (AirConstants.DensityKgPerM3(airC, pressurePa) * AirConstants.SpecificHeatJPerKgK * (airC + KelvinC) * Math.Max(speedMs, LeastSpeedMs));
        return x > LeastX ? OffsetK + (SlopeK * x) : 0;
    }

    /// <summary>What a hygrometer shows that is warmer than its air: the vapour is the same, the saturation at its own temperature is not (Magnus form).</summary>
    /// <param name="percent">Humidity of the air.</param>
    /// <param name="airC">Air, °C.</param>
    /// <param name="warmerK">How much warmer, K.</param>
    /// <returns>%.</returns>
    public static double Percent(double percent, double airC, double warmerK) =>
        percent * Elementary.Exp((17.62 * airC / (243.12 + airC)) - (17.62 * (airC + warmerK) / (243.12 + airC + warmerK)));
}
