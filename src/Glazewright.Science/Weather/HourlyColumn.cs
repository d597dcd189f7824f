namespace Glazewright.Science.Weather;

/// <summary>8,760 hourly values of one quantity, not to be changed. A missing hour holds NaN and is counted.</summary>
public sealed class HourlyColumn : IEquatable<HourlyColumn>
{
    private readonly double[] _values;

    /// <summary>Copies the values.</summary>
    /// <param name="values">8,760 values in the quantity's own unit; NaN where the file has none.</param>
    /// <exception cref="ArgumentException">Another count.</exception>
    public HourlyColumn(ReadOnlySpan<double> values)
    {
        if (values.Length != CommonYear.Hours)
        {
            throw new ArgumentException($"A year has {CommonYear.Hours} hours, not {values.Length}.", nameof(values));
        }

        _values = values.ToArray();
        foreach (double value in _values)
        {
            MissingCount += double.IsNaN(value) ? 1 : 0;
        }
    }

    /// <summary>A column without a single value.</summary>
    public static HourlyColumn Unknown { get; } = new([.. Enumerable.Repeat(double.NaN, CommonYear.Hours)]);

    /// <summary>How many hours have no value.</summary>
    public int MissingCount { get; }

    /// <summary>True when every hour has a value.</summary>
    public bool IsComplete => MissingCount == 0;

    /// <summary>Value of an hour; NaN when missing.</summary>
    /// <param name="hour">0 to 8,759.</param>
    public double this[int hour] => _values[hour];

    /// <summary>All hours in order.</summary>
    public ReadOnlySpan<double> Span => _values;

    /// <summary>Same values, hour by hour.</summary>
    public bool Equals(HourlyColumn? other) => other is not null && _values.AsSpan().SequenceEqual(other._values);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as HourlyColumn);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(_values[0], _values[4380], _values[8759], MissingCount);
}
