using Glazewright.Science.Guards;

namespace Glazewright.Science.Air;

/// <summary>A property of moist air that may be given.</summary>
public enum AirProperty
{
    /// <summary>Dry bulb, °C.</summary>
    DryBulb,

    /// <summary>Thermodynamic wet bulb, °C.</summary>
    WetBulb,

    /// <summary>Dew point (frost point at or below 0.01 °C), °C.</summary>
    DewPoint,

    /// <summary>Relative humidity, a fraction.</summary>
    RelativeHumidity,

    /// <summary>Humidity ratio, kg/kg dry air.</summary>
    HumidityRatio,

    /// <summary>Vapour pressure, Pa.</summary>
    VapourPressure,

    /// <summary>Vapour pressure deficit against saturation at the dry bulb, Pa.</summary>
    VapourDeficit,

    /// <summary>Enthalpy, J/kg dry air.</summary>
    Enthalpy,

    /// <summary>Volume, m³/kg dry air.</summary>
    Volume,

    /// <summary>Density of the moist air, kg/m³.</summary>
    Density,
}

/// <summary>What two properties say. A closed case.</summary>
public abstract record PairReading
{
    private PairReading()
    {
    }

    /// <summary>They fix one state.</summary>
    public sealed record Fixed(AirState State) : PairReading;

    /// <summary>They fix none.</summary>
    /// <param name="Problem">Why.</param>
    public sealed record Fault(PairProblem Problem) : PairReading;
}

/// <summary>Why two properties fix no state.</summary>
public enum PairProblem
{
    /// <summary>Both are given by the same one thing, the vapour in the air: no temperature follows.</summary>
    SayTheSame,

    /// <summary>Their lines run almost along each other, so that the last digit of a reading moves the state by kelvins.</summary>
    RunAlongEachOther,

    /// <summary>A value that no air has: not a number, below absolute zero, a negative pressure or humidity.</summary>
    NoSuchValue,

    /// <summary>More vapour than saturated air holds: a wet bulb or dew point above the dry bulb, a humidity above 100 %.</summary>
    BeyondSaturation,

    /// <summary>Less than no vapour: a wet bulb lower than bone-dry air has.</summary>
    DrierThanDry,

    /// <summary>The state lies outside −60 to 80 °C.</summary>
    OutOfRange,
}

/// <summary>
/// Any pair of properties that fixes a state of moist air, at any barometric pressure. With the dry bulb every other property does. Without it, two do
/// when their lines cross once: one of {dew point, humidity ratio, vapour pressure} with any other, and any two of {wet bulb, relative humidity,
/// deficit, enthalpy, volume, density} but wet bulb with enthalpy and volume with density, which run along each other.
/// </summary>
/// <remarks>Each property but the dry bulb is a line humidity ratio = W(dry bulb), by ASHRAE Handbook—Fundamentals (2017, SI), ch. 1, as in <see cref="MoistAir"/>; two lines are crossed by bisection.</remarks>
public static class AirPair
{
    private const double LowestC = -60;
    private const double HighestC = 80;

    /// <summary>Whether two properties can fix a state at all.</summary>
    /// <param name="first">One property.</param>
    /// <param name="second">Another.</param>
    /// <returns>The problem, or null when they can.</returns>
    public static PairProblem? Problem(AirProperty first, AirProperty second)
    {
        if (first == second || (IsVapour(first) && IsVapour(second)))
        {
            return PairProblem.SayTheSame;
        }

        return Is(first, second, AirProperty.WetBulb, AirProperty.Enthalpy) || Is(first, second, AirProperty.Volume, AirProperty.Density)
            ? PairProblem.RunAlongEachOther
            : null;
    }

    /// <summary>The state that two properties fix.</summary>
    /// <param name="first">One property.</param>
    /// <param name="firstValue">Its value, in the property's unit.</param>
    /// <param name="second">Another.</param>
    /// <param name="secondValue">Its value.</param>
    /// <param name="pressurePa">Barometric pressure, Pa, 50 000 to 110 000.</param>
    /// <returns>The state, or why there is none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Pressure out of range or NaN.</exception>
    public static PairReading Read(AirProperty first, double firstValue, AirProperty second, double secondValue, double pressurePa)
    {
        Within.Require(pressurePa, 50_000, 110_000);
        if (Problem(first, second) is { } never)
        {
            return new PairReading.Fault(never);
        }

        if (!AirLine.Exists(first, firstValue, pressurePa) || !AirLine.Exists(second, secondValue, pressurePa))
        {
            return new PairReading.Fault(PairProblem.NoSuchValue);
        }

        if (AirLine.MoreThanSaturated(first, firstValue) || AirLine.MoreThanSaturated(second, secondValue))
        {
            return new PairReading.Fault(PairProblem.BeyondSaturation);
        }

        if (second == AirProperty.DryBulb)
        {
            (first, firstValue, second, secondValue) = (second, secondValue, first, firstValue);
        }

        return first == AirProperty.DryBulb
            ? firstValue is >= LowestC and <= HighestC
                ? At(firstValue, AirLine.Ratio(second, secondValue, firstValue, pressurePa), pressurePa)
                : new PairReading.Fault(PairProblem.OutOfRange)
            : Crossed(first, firstValue, second, secondValue, pressurePa);
    }

    private static PairReading Crossed(AirProperty first, double firstValue, AirProperty second, double secondValue, double pressurePa)
    {
        double Apart(double dryBulbC) => AirLine.Ratio(first, firstValue, dryBulbC, pressurePa) - AirLine.Ratio(second, secondValue, dryBulbC, pressurePa);
        double lower = LowestC;
        double upper = HighestC;
        double atLower = Apart(lower);
        double atUpper = Apart(upper);
        if (atLower == 0 && atUpper == 0)
        {
            return new PairReading.Fault(PairProblem.SayTheSame);
        }

        if (Math.Sign(atLower) * Math.Sign(atUpper) > 0)
        {
            return new PairReading.Fault(PairProblem.OutOfRange);
        }

        while (upper - lower > 1e-11)
        {
            double middle = 0.5 * (lower + upper);
            if (middle <= lower || middle >= upper)
            {
                break;
            }

            if (Math.Sign(Apart(middle)) == Math.Sign(atLower))
            {
                lower = middle;
            }
            else
            {
                upper = middle;
            }
        }

        double dryBulbC = 0.5 * (lower + upper);

        // Of two lines the one that changes less with temperature gives the humidity ratio more exactly.
        double a = AirLine.Ratio(first, firstValue, dryBulbC, pressurePa);
        return At(dryBulbC, a, pressurePa);
    }

    private static PairReading At(double dryBulbC, double ratio, double pressurePa)
    {
        double saturated = Saturation.RatioKernel(dryBulbC, pressurePa);
        double slack = 1e-7 * saturated + 1e-12;
        return ratio > saturated + slack ? new PairReading.Fault(PairProblem.BeyondSaturation)
            : !(ratio >= -slack) ? new PairReading.Fault(PairProblem.DrierThanDry)
            : new PairReading.Fixed(new AirState(dryBulbC, Math.Clamp(ratio, 0, saturated), pressurePa));
    }

    private static bool IsVapour(AirProperty property) =>
        property is AirProperty.DewPoint or AirProperty.HumidityRatio or AirProperty.VapourPressure;

    private static bool Is(AirProperty first, AirProperty second, AirProperty a, AirProperty b) =>
        (first == a && second == b) || (first == b && second == a);
}
