using Glazewright.Design.Contracts;

namespace Glazewright.Design.Program;

/// <summary>What the box makes of its terminals: corrections added, terminals without a sensor taken for missing whatever they carry.</summary>
internal sealed class SensorWiring
{
    private readonly int[] _add; // Missing where no sensor is

    private SensorWiring(int[] add) => _add = add;

    /// <summary>Number of readings.</summary>
    public int Count => _add.Length;

    /// <summary>The wiring of a program; null where every terminal is taken as it is.</summary>
    /// <param name="d">A program without faults.</param>
    public static SensorWiring? Of(ProgramDocument d)
    {
        if (d.Sensors is not { } sensors)
        {
            return null;
        }

        Reading[] all = Enum.GetValues<Reading>();
        int[] add = new int[all.Length];
        foreach (Reading reading in all.Where(r => !SensorPoints.IsClock(r)))
        {
            add[(int)reading] = SensorPoints.For(sensors, reading) is { } sensor
                ? (int)Math.Round(sensor.CorrectionValue * ProgramCompiler.PerUnit(reading))
                : int.MinValue;
        }

        // What nothing reads needs no sensor: the usual house, without gas or vents, then needs no second look at its terminals.
        foreach ((Reading reading, bool isRead) in new[] { (Reading.Co2, d.Co2 is not null), (Reading.Rain, d.Weather is not null) })
        {
            if (!isRead && add[(int)reading] == int.MinValue)
            {
                add[(int)reading] = 0;
            }
        }

        return add.All(a => a == 0) ? null : new SensorWiring(add);
    }

    /// <summary>Readings as the program takes them.</summary>
    /// <param name="terminals">As they come; may be shorter than <paramref name="seen"/>.</param>
    /// <param name="seen">Filled, <see cref="Count"/> long.</param>
    public void Take(ReadOnlySpan<int> terminals, Span<int> seen)
    {
        int[] add = _add;
        for (int i = 0; i < add.Length; i++)
        {
            int raw = i < terminals.Length ? terminals[i] : int.MinValue;
            seen[i] = raw == int.MinValue || add[i] == int.MinValue ? int.MinValue : (int)Math.Clamp((long)raw + add[i], -int.MaxValue, int.MaxValue);
        }
    }
}
