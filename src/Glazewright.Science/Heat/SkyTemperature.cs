using Glazewright.Science.Guards;

namespace Glazewright.Science.Heat;

/// <summary>The temperature that a clear night sky radiates with.</summary>
/// <remarks>Berdahl and Martin 1984, Solar Energy 32, monthly form ε = 0.711 + 0.56 T_d/100 + 0.73 (T_d/100)²; from memory. Other models in use differ by 1.5 to 7 K.</remarks>
public static class SkyTemperature
{
    /// <summary>Stefan–Boltzmann constant, W/m²K⁴ (CODATA 2018, rounded).</summary>
    public const double StefanBoltzmann = 5.670374419e-8;

    /// <summary>Sky temperature without cloud.</summary>
    /// <param name="airC">Air near the ground, °C, −60 to 60.</param>
    /// <param name="dewPointC">Its dew or frost point, °C, −70 to 40.</param>
    /// <returns>Temperature, °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double ClearC(double airC, double dewPointC)
    {
        Within.Require(airC, -60, 60);
        Within.Require(dewPointC, -70, 40);
        double d = dewPointC / 100;
        return (airC + 273.15) * Math.Pow(0.711 + 0.56 * d + 0.73 * d * d, 0.25) - 273.15;
    }
}
