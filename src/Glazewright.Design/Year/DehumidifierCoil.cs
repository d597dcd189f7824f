using System.Runtime.CompilerServices;

namespace Glazewright.Design.Year;

/// <summary>A dehumidifier's coil in air away from its rating.</summary>
internal static class DehumidifierCoil
{
    private const double CoilKgPerKg = 0.0054; // saturated at 5 °C
    private const double RatedKgPerKg = 0.0117; // 20 °C and 80 %
    private const double Most = 1.2;

    /// <summary>What it takes out over its rating: as the air's humidity ratio stands over the coil's, its air flow being the same.</summary>
    /// <param name="humidityRatio">Air that it draws, kg/kg.</param>
    /// <returns>0, in air as dry as the coil, to 1.2.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double ShareOfRated(double humidityRatio) => Math.Clamp((humidityRatio - CoilKgPerKg) / (RatedKgPerKg - CoilKgPerKg), 0, Most);
}
