using Glazewright.Design.Contracts;
using Glazewright.Design.Quantities;

namespace Glazewright.Design.Program;

/// <summary>What a value of the program measures.</summary>
public enum ProgramMeasure
{
    /// <summary>Difference of temperatures, K.</summary>
    Difference,

    /// <summary>Temperature, °C.</summary>
    Temperature,

    /// <summary>Relative humidity or a difference of two, %.</summary>
    Humidity,

    /// <summary>A share of all, 0 to 1.</summary>
    Share,

    /// <summary>A length of time, s.</summary>
    Time,

    /// <summary>Light outside, W/m².</summary>
    Light,

    /// <summary>Static pressure, Pa.</summary>
    Suction,

    /// <summary>Wind, m/s.</summary>
    Wind,

    /// <summary>Gas in the air, ppm.</summary>
    Gas,

    /// <summary>A number of things.</summary>
    Count,
}

/// <summary>One value of the program that a job may change.</summary>
/// <param name="Key">Its key in the job.</param>
/// <param name="Words">What it is, in a few words.</param>
/// <param name="Measure">What it measures.</param>
/// <param name="Least">Smallest, as typed.</param>
/// <param name="Most">Largest, as typed.</param>
public sealed record ProgramField(string Key, string Words, ProgramMeasure Measure, string Least, string Most)
{
    /// <summary>The kind of quantity that is typed; null for a count.</summary>
    public QuantityKind? Kind => Measure switch
    {
        ProgramMeasure.Difference => QuantityKind.TemperatureDifference,
        ProgramMeasure.Temperature => QuantityKind.Temperature,
        ProgramMeasure.Humidity or ProgramMeasure.Share => QuantityKind.Fraction,
        ProgramMeasure.Time => QuantityKind.Duration,
        ProgramMeasure.Light => QuantityKind.PowerDensity,
        ProgramMeasure.Suction => QuantityKind.Pressure,
        ProgramMeasure.Wind => QuantityKind.Speed,
        ProgramMeasure.Gas => QuantityKind.GasFraction,
        _ => null,
    };

    /// <summary>The program's value of a quantity that was read.</summary>
    /// <param name="inside">In the kind's inside unit.</param>
    /// <returns>In the program's unit, rounded to what a control box holds; whole seconds.</returns>
    public double OfInside(double inside) => Measure switch
    {
        ProgramMeasure.Humidity => Math.Round(100 * inside, 1),
        ProgramMeasure.Time or ProgramMeasure.Count => Math.Round(inside),
        _ => Math.Round(inside, 4),
    };

    /// <summary>A value as one would type it. Light is in W/m² for everyone, as light sensors are read.</summary>
    /// <param name="value">In the program's unit.</param>
    /// <param name="units">The reader's units.</param>
    public string Text(double value, UnitSystem units) => Measure switch
    {
        ProgramMeasure.Count => QuantityFormat.Number(value, 6),
        ProgramMeasure.Time => value < 120 ? QuantityFormat.Number(value, 6) + " s" : value < 7200 ? QuantityFormat.Number(value / 60, 4) + " min" : QuantityFormat.Number(value / 3600, 4) + " h",
        ProgramMeasure.Humidity => QuantityFormat.In(QuantityKind.Fraction, value / 100, UnitFamily.Both),
        ProgramMeasure.Light => QuantityFormat.In(QuantityKind.PowerDensity, value, UnitFamily.Metric),
        _ => QuantityFormat.In(Kind!.Value, value, units == UnitSystem.Us ? UnitFamily.Customary : UnitFamily.Metric),
    };
}
