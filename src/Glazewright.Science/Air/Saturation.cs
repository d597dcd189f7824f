using Glazewright.Science.Guards;

namespace Glazewright.Science.Air;

/// <summary>Saturation of water vapour over ice and over liquid water.</summary>
/// <remarks>
/// ASHRAE Handbook—Fundamentals (2017, SI), ch. 1, eqs (5) and (6); coefficients from memory, checked against table 3 (read at second hand)
/// and a second library. The two lines cross within 0.01 Pa at the triple point, 0.01 °C, where we change over.
/// </remarks>
public static class Saturation
{
    /// <summary>Triple point of water, °C: ice at and below it, liquid above.</summary>
    public const double TriplePointC = 0.01;

    /// <summary>Ratio of the molar masses of water and dry air.</summary>
    public const double MolarMassRatio = 0.621945;

    private const double ZeroCelsiusK = 273.15;

    /// <summary>Vapour pressure over a plane surface of ice or water.</summary>
    /// <param name="temperatureC">Temperature, °C, −100 to 200.</param>
    /// <returns>Saturation pressure, Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double PressurePa(double temperatureC)
    {
        Within.Require(temperatureC, -100, 200);
        return Math.Exp(LogPressure(temperatureC));
    }

    /// <summary>How fast the saturation pressure rises with temperature.</summary>
    /// <param name="temperatureC">Temperature, °C, −100 to 200.</param>
    /// <returns>Slope, Pa/K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double SlopePaPerK(double temperatureC)
    {
        Within.Require(temperatureC, -100, 200);
        return Math.Exp(LogPressure(temperatureC)) * LogSlopePerK(temperatureC);
    }

    /// <summary>Temperature at which a vapour pressure saturates: the dew point, or the frost point at or below 0.01 °C.</summary>
    /// <param name="vapourPressurePa">Vapour pressure, Pa, 0.002 to 1 500 000.</param>
    /// <returns>Dew or frost point, °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>Newton on the logarithm, kept inside a bracket that always holds the root.</remarks>
    public static double TemperatureC(double vapourPressurePa)
    {
        Within.Require(vapourPressurePa, 0.002, 1_500_000);
        return InverseC(vapourPressurePa);
    }

    /// <summary>Humidity ratio of saturated air.</summary>
    /// <param name="temperatureC">Temperature, °C, −60 to 80.</param>
    /// <param name="pressurePa">Barometric pressure, Pa, 50 000 to 110 000.</param>
    /// <returns>Humidity ratio, kg of vapour per kg of dry air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>Ideal-gas form, eq. (20) with eq. (21); about 0.5 % below table 2, which has the enhancement factor.</remarks>
    public static double HumidityRatio(double temperatureC, double pressurePa)
    {
        Within.Require(temperatureC, -60, 80);
        Within.Require(pressurePa, 50_000, 110_000);
        return RatioKernel(temperatureC, pressurePa);
    }

    internal static double RatioKernel(double temperatureC, double pressurePa)
    {
        double vapourPa = Math.Exp(LogPressure(temperatureC));
        return MolarMassRatio * vapourPa / Math.Max(pressurePa - vapourPa, 1e-3 * pressurePa);
    }

    internal static double LogPressure(double temperatureC)
    {
        double t = temperatureC + ZeroCelsiusK;
        return temperatureC <= TriplePointC
            ? -5.6745359e3 / t + 6.3925247 + t * (-9.6778430e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 - t * 9.4840240e-13)))
                + 4.1635019 * Math.Log(t)
            : -5.8002206e3 / t + 1.3914993 + t * (-4.8640239e-2 + t * (4.1764768e-5 - t * 1.4452093e-8))
                + 6.5459673 * Math.Log(t);
    }

    internal static double LogSlopePerK(double temperatureC)
    {
        double t = temperatureC + ZeroCelsiusK;
        return temperatureC <= TriplePointC
            ? 5.6745359e3 / (t * t) - 9.6778430e-3 + t * (2 * 6.2215701e-7 + t * (3 * 2.0747825e-9 - t * 4 * 9.4840240e-13))
                + 4.1635019 / t
            : 5.8002206e3 / (t * t) - 4.8640239e-2 + t * (2 * 4.1764768e-5 - t * 3 * 1.4452093e-8)
                + 6.5459673 / t;
    }

    internal static double InverseC(double vapourPressurePa)
    {
        double target = Math.Log(vapourPressurePa);
        double lower = -100;
        double upper = 200;
        double guess = 10;
        for (int step = 0; step < 100; step++)
        {
            double error = LogPressure(guess) - target;
            if (error > 0)
            {
                upper = guess;
            }
            else
            {
                lower = guess;
            }

            double next = guess - error / LogSlopePerK(guess);
            next = next > lower && next < upper ? next : 0.5 * (lower + upper);
            if (Math.Abs(next - guess) < 1e-10)
            {
                return next;
            }

            guess = next;
        }

        return guess;
    }
}
