using Glazewright.Design.Calibration.Reading;
using Glazewright.Design.Contracts;
using NodaTime;

namespace Glazewright.Design.Calibration;

/// <summary>Something about a log that whoever trusts the fit must know: a gap, a spike, a stuck sensor, what was assumed.</summary>
/// <param name="Code">Short stable code.</param>
/// <param name="What">What is so, and what was done.</param>
public sealed record LogNote(string Code, string What);

/// <summary>A log at even steps: every quantity that is mapped, filled where it had gaps, with a mark where it was.</summary>
public sealed class HouseLog
{
    private readonly double[]?[] _values;
    private readonly bool[] _whole;
    private readonly bool[] _starts;
    private readonly LogClock _clock;
    private readonly double _firstUtc;

    internal HouseLog(string name, LogClock clock, double firstUtc, int stepMinutes, double[]?[] values, bool[] whole, bool[] starts, EqList<LogNote> notes)
    {
        Name = name;
        _clock = clock;
        _firstUtc = firstUtc;
        StepMinutes = stepMinutes;
        _values = values;
        _whole = whole;
        _starts = starts;
        Notes = notes;
    }

    /// <summary>What the log is called.</summary>
    public string Name { get; }

    /// <summary>Step, minutes.</summary>
    public int StepMinutes { get; }

    /// <summary>Number of steps.</summary>
    public int Count => _whole.Length;

    /// <summary>What is to be known of it.</summary>
    public EqList<LogNote> Notes { get; }

    /// <summary>True where everything the house is driven by was read, not filled.</summary>
    public ReadOnlySpan<bool> Whole => _whole;

    /// <summary>True where the house begins anew after a gap too long to fill.</summary>
    public ReadOnlySpan<bool> Starts => _starts;

    /// <summary>True when a quantity is known at all.</summary>
    /// <param name="quantity">Which.</param>
    /// <returns>True when it is logged or constant.</returns>
    public bool Has(LoggedQuantity quantity) => _values[(int)quantity] is not null;

    /// <summary>Values of a quantity, inside unit; what was measured inside is not-a-number where it was not read.</summary>
    /// <param name="quantity">Which.</param>
    /// <returns>A value a step; empty when it is not known.</returns>
    public ReadOnlySpan<double> Of(LoggedQuantity quantity) => _values[(int)quantity];

    /// <summary>Local date and time of a step.</summary>
    /// <param name="step">From 0.</param>
    /// <returns>As the log's clock shows it.</returns>
    public LocalDateTime At(int step) => _clock.Local(_firstUtc + (double)step * StepMinutes);

    /// <summary>Julian day, UT, of a step.</summary>
    internal double JulianDayUt(int step) => 2_440_587.5 + (_firstUtc + (double)step * StepMinutes) / 1440;

    /// <summary>Week of a step, from 1, counted from the log's start.</summary>
    /// <param name="step">From 0.</param>
    /// <returns>1 for the first seven days.</returns>
    public int Week(int step) => (int)((long)step * StepMinutes / (7 * 1440)) + 1;
}
