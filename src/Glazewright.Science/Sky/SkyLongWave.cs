using Glazewright.Science.Guards;

namespace Glazewright.Science.Sky;

/// <summary>Long-wave emissivity of the sky and what follows from it.</summary>
public static class SkyLongWave
{
    /// <summary>Stefan–Boltzmann constant, W/m²K⁴ (CODATA 2018, exact by definition of the SI, rounded).</summary>
    public const double StefanBoltzmann = 5.670374419e-8;

    private const double ZeroC = 273.15;

    /// <summary>Emissivity from dew point and cloud, as weather files carry it.</summary>
    /// <param name="dewPointC">−70 to 40 °C.</param>
    /// <param name="opaqueCoverTenths">0 (clear) to 10 (overcast).</param>
    /// <returns>Emissivity seen from the ground against air temperature, 0 to 1.1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>
    /// Clark &amp; Allen 1978, Proc. 2nd National Passive Solar Conference, with Walton's (NBSIR 83-2655) cloud polynomial; the dew point's zero is
    /// taken as 273 K. On clear nights below 8 °C dew point it is 0.02 to 0.04 too high (see docs/methods/sun-and-light.md).
    /// </remarks>
    public static double ClarkAllenEmissivity(double dewPointC, double opaqueCoverTenths)
    {
        Within.Require(dewPointC, -70, 40);
        Within.Require(opaqueCoverTenths, 0, 10);
        double n = opaqueCoverTenths;
        return (0.787 + (0.764 * Math.Log((dewPointC + 273.15) / 273)))
            * (1 + (n * (0.0224 + (n * (-0.0035 + (n * 0.00028))))));
    }

    /// <summary>Clear-sky emissivity, colder than Clark–Allen's in dry air: for frost risk and heater sizing.</summary>
    /// <param name="dewPointC">−70 to 40 °C.</param>
    /// <returns>0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>Berdahl &amp; Martin 1984, Solar Energy 32:663, without the hour and pressure terms (from memory).</remarks>
    public static double BerdahlMartinClearEmissivity(double dewPointC)
    {
        Within.Require(dewPointC, -70, 40);
        double d = dewPointC / 100;
        return 0.711 + (0.56 * d) + (0.73 * d * d);
    }

    /// <summary>Long-wave light from the sky on a horizontal plane.</summary>
    /// <param name="emissivityFraction">0 to 1.2.</param>
    /// <param name="airC">−80 to 60 °C.</param>
    /// <returns>W/m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double InfraredWm2(double emissivityFraction, double airC)
    {
        Within.Require(emissivityFraction, 0, 1.2);
        Within.Require(airC, -80, 60);
        double t = airC + ZeroC;
        return emissivityFraction * StefanBoltzmann * t * t * t * t;
    }

    /// <summary>Temperature of a black sky that sends as much.</summary>
    /// <param name="infraredWm2">20 to 800 W/m².</param>
    /// <returns>°C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double TemperatureC(double infraredWm2)
    {
        Within.Require(infraredWm2, 20, 800);
        return Math.Sqrt(Math.Sqrt(infraredWm2 / StefanBoltzmann)) - ZeroC;
    }

    /// <summary>Sky temperature from air temperature alone; 1.5 to 7 K colder than Clark–Allen: for comparison.</summary>
    /// <param name="airC">−80 to 60 °C.</param>
    /// <returns>°C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>Swinbank 1963, Q. J. R. Meteorol. Soc. 89:339: 0.0552 T^1.5.</remarks>
    public static double SwinbankC(double airC)
    {
        Within.Require(airC, -80, 60);
        double t = airC + ZeroC;
        return (0.0552 * t * Math.Sqrt(t)) - ZeroC;
    }
}
