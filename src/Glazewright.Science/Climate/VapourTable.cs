using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;
using Glazewright.Science.Maths;

namespace Glazewright.Science.Climate;

/// <summary>
/// Saturation vapour pressure over water, and over ice below the triple point (0.01 °C, where both lines meet), as the year's loops need it: value and slope by cubic pieces a quarter kelvin
/// wide whose ends carry the formula's value and slope. The pieces follow the formula within 1e-8 (test: VapourTableTests).
/// </summary>
/// <remarks>ASHRAE Handbook—Fundamentals (2017, SI), ch. 1, eqs (5) and (6), after Hyland and Wexler 1983; coefficients from memory, checked against its table 3.</remarks>
public static class VapourTable
{
    // A piece begins at the triple point: the change from ice to water makes no jump.
    private const double LowestC = Air.Saturation.TriplePointC - 100.0;
    private const int PerKelvin = 4;
    private const int IcePieces = 100 * PerKelvin;
    private const int Pieces = 220 * PerKelvin;

    private static readonly Piece[] Table = Make();

    /// <summary>Saturation pressure, Pa; total: temperatures beyond −99.99 to 120.01 °C are taken at the end, NaN at the lowest.</summary>
    /// <param name="temperatureC">Temperature, °C.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double PressurePa(double temperatureC) => PressurePa(temperatureC, out _);

    /// <summary>Saturation pressure, Pa, and its slope, Pa/K.</summary>
    /// <param name="temperatureC">Temperature, °C.</param>
    /// <param name="slopePaPerK">d(pressure)/d(temperature), Pa/K.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double PressurePa(double temperatureC, out double slopePaPerK)
    {
        double at = (temperatureC - LowestC) * PerKelvin;
        at = at > 0.0 ? at : 0.0; // NaN lands on 0 too
        at = at < Pieces ? at : Pieces;
        double from = double.MinNative(Math.Floor(at), Pieces - 1), x = at - from;
        ref readonly Piece k = ref Unsafe.Add(ref MemoryMarshal.GetArrayDataReference(Table), double.ConvertToIntegerNative<int>(from));
        slopePaPerK = Math.FusedMultiplyAdd(x, Math.FusedMultiplyAdd(x, 3.0 * k.Third, 2.0 * k.Second), k.First) * PerKelvin;
        return Math.FusedMultiplyAdd(x, Math.FusedMultiplyAdd(x, Math.FusedMultiplyAdd(x, k.Third, k.Second), k.First), k.Value);
    }

    /// <summary>Saturation pressure, Pa, and its slope, Pa/K, at four temperatures side by side: what <see cref="PressurePa(double, out double)"/> gives at each.</summary>
    /// <param name="temperatureC">Temperatures, °C.</param>
    /// <param name="slopePaPerK">d(pressure)/d(temperature), Pa/K.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector256<double> PressurePa(Vector256<double> temperatureC, out Vector256<double> slopePaPerK)
    {
        Vector256<double> at = (temperatureC - Vector256.Create(LowestC)) * (double)PerKelvin;
        at = Vector256.ConditionalSelect(Vector256.GreaterThan(at, Vector256<double>.Zero), at, Vector256<double>.Zero);
        at = Vector256.ConditionalSelect(Vector256.LessThan(at, Vector256.Create((double)Pieces)), at, Vector256.Create((double)Pieces));
        Vector256<double> from = Vector256.MinNative(Vector256.Floor(at), Vector256.Create(Pieces - 1.0)), x = at - from;
        // The whole number stands in the low bits of itself plus 2^52.
        Vector256<long> piece = (from + Vector256.Create(4503599627370496.0)).AsInt64() & Vector256.Create(0xFFFL);
        ref double all = ref Unsafe.As<Piece, double>(ref MemoryMarshal.GetArrayDataReference(Table));
        Vector256<double> p0 = Row(ref all, piece.GetElement(0)), p1 = Row(ref all, piece.GetElement(1)), p2 = Row(ref all, piece.GetElement(2)), p3 = Row(ref all, piece.GetElement(3));
        Vector256<double> value, first, second, third;
        if (Avx.IsSupported)
        {
            Vector256<double> low01 = Avx.UnpackLow(p0, p1), low23 = Avx.UnpackLow(p2, p3), high01 = Avx.UnpackHigh(p0, p1), high23 = Avx.UnpackHigh(p2, p3);
            value = Avx.Permute2x128(low01, low23, 0x20);
            first = Avx.Permute2x128(high01, high23, 0x20);
            second = Avx.Permute2x128(low01, low23, 0x31);
            third = Avx.Permute2x128(high01, high23, 0x31);
        }
        else
        {
            value = Vector256.Create(p0.GetElement(0), p1.GetElement(0), p2.GetElement(0), p3.GetElement(0));
            first = Vector256.Create(p0.GetElement(1), p1.GetElement(1), p2.GetElement(1), p3.GetElement(1));
            second = Vector256.Create(p0.GetElement(2), p1.GetElement(2), p2.GetElement(2), p3.GetElement(2));
            third = Vector256.Create(p0.GetElement(3), p1.GetElement(3), p2.GetElement(3), p3.GetElement(3));
        }

        slopePaPerK = Vector256.FusedMultiplyAdd(x, Vector256.FusedMultiplyAdd(x, third * 3.0, second * 2.0), first) * (double)PerKelvin;
        return Vector256.FusedMultiplyAdd(x, Vector256.FusedMultiplyAdd(x, Vector256.FusedMultiplyAdd(x, third, second), first), value);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Row(ref double all, long piece) => Vector256.LoadUnsafe(ref all, (nuint)(piece * 4));

    /// <summary>Humidity ratio of saturated air, kg/kg dry air.</summary>
    /// <param name="temperatureC">Temperature, °C.</param>
    /// <param name="pressurePa">Barometric pressure, Pa; where water would boil the vapour is taken as 95 % of it.</param>
    public static double SaturatedHumidityRatio(double temperatureC, double pressurePa)
    {
        double vapourPa = Math.Min(PressurePa(temperatureC), 0.95 * pressurePa);
        return 0.621945 * vapourPa / (pressurePa - vapourPa);
    }

    /// <summary>Vapour pressure of air, Pa.</summary>
    /// <param name="humidityRatio">kg/kg dry air.</param>
    /// <param name="pressurePa">Barometric pressure, Pa.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double VapourPressurePa(double humidityRatio, double pressurePa) =>
        humidityRatio * pressurePa / (0.621945 + humidityRatio);

    /// <summary>
    /// Wet bulb at constant enthalpy, °C, with the specific heat and latent heat the house model uses, so that a pad neither makes nor loses heat.
    /// Newton from the dry bulb on a convex function: no step overshoots.
    /// </summary>
    /// <param name="dryBulbC">Dry bulb, °C.</param>
    /// <param name="humidityRatio">kg/kg dry air.</param>
    /// <param name="pressurePa">Barometric pressure, Pa.</param>
    /// <returns>Wet bulb, °C, not above the dry bulb.</returns>
    public static double WetBulbC(double dryBulbC, double humidityRatio, double pressurePa)
    {
        double wetC = dryBulbC;
        for (int i = 0; i < 8; i++)
        {
            double vapourPa = Math.Min(PressurePa(wetC, out double slope), 0.95 * pressurePa);
            double perPa = 0.621945 / (pressurePa - vapourPa), saturated = vapourPa * perPa;
            double saturatedSlope = slope * (perPa + saturated * perPa * (1 / 0.621945));
            double miss = AirConstants.LatentHeatJPerKg * (saturated - humidityRatio) - AirConstants.SpecificHeatJPerKgK * (dryBulbC - wetC);
            double stepK = miss / (AirConstants.LatentHeatJPerKg * saturatedSlope + AirConstants.SpecificHeatJPerKgK);
            wetC -= stepK;
            if (Math.Abs(stepK) < 1e-5)
            {
                break; // the miss that is left goes with the square of the step
            }
        }

        return Math.Min(wetC, dryBulbC);
    }

    private static double Formula(double kelvin, bool ice, out double slope)
    {
        double t = kelvin, log, logSlope;
        if (ice)
        {
            log = -5.6745359e3 / t + 6.3925247 + t * (-9.677843e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 - t * 9.484024e-13))) + 4.1635019 * Elementary.Log(t);
            logSlope = 5.6745359e3 / (t * t) - 9.677843e-3 + t * (2 * 6.2215701e-7 + t * (3 * 2.0747825e-9 - t * 4 * 9.484024e-13)) + 4.1635019 / t;
        }
        else
        {
            log = -5.8002206e3 / t + 1.3914993 + t * (-4.8640239e-2 + t * (4.1764768e-5 - t * 1.4452093e-8)) + 6.5459673 * Elementary.Log(t);
            logSlope = 5.8002206e3 / (t * t) - 4.8640239e-2 + t * (2 * 4.1764768e-5 - t * 3 * 1.4452093e-8) + 6.5459673 / t;
        }

        double pressure = Elementary.Exp(log);
        slope = pressure * logSlope;
        return pressure;
    }

    private static Piece[] Make()
    {
        Piece[] table = new Piece[Pieces];
        for (int piece = 0; piece < Pieces; piece++)
        {
            double fromC = LowestC + (double)piece / PerKelvin;
            bool ice = piece < IcePieces;
            double p0 = Formula(fromC + 273.15, ice, out double s0), p1 = Formula(fromC + 1.0 / PerKelvin + 273.15, ice, out double s1);
            s0 /= PerKelvin;
            s1 /= PerKelvin;
            table[piece] = new Piece(p0, s0, 3.0 * (p1 - p0) - 2.0 * s0 - s1, 2.0 * (p0 - p1) + s0 + s1);
        }

        return table;
    }

    [StructLayout(LayoutKind.Sequential)]
    private readonly record struct Piece(double Value, double First, double Second, double Third);
}

/// <summary>The few properties of moist air that the house model takes as constant, in one place so that heat and water books agree.</summary>
public static class AirConstants
{
    /// <summary>Specific heat per kilogram of dry air, J/(kg K), for air that carries about 8 g/kg: 1006 + 1860 × 0.0075.</summary>
    public const double SpecificHeatJPerKgK = 1020.0;

    /// <summary>Heat of evaporation near 20 °C, J/kg.</summary>
    public const double LatentHeatJPerKg = 2.4525e6;

    /// <summary>Gas constant of dry air, J/(kg K).</summary>
    public const double GasConstantJPerKgK = 287.042;

    /// <summary>Density of the dry air in moist air, kg/m³, vapour neglected (−1 % at 16 g/kg).</summary>
    /// <param name="temperatureC">Temperature, °C.</param>
    /// <param name="pressurePa">Barometric pressure, Pa.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double DensityKgPerM3(double temperatureC, double pressurePa) =>
        pressurePa / PascalPerDensity(temperatureC);

    /// <summary>Pressure of air of one kilogram a cubic metre, Pa.</summary>
    /// <param name="temperatureC">Temperature, °C.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static double PascalPerDensity(double temperatureC) => GasConstantJPerKgK * (Math.Max(temperatureC, -150.0) + 273.15);
}
