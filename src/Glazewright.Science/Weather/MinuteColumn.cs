using System.Runtime.CompilerServices;

namespace Glazewright.Science.Weather;

/// <summary>
/// One quantity of a weather year by the minute. Columns that are read together stand side by side in memory, eight numbers a minute: who goes through the year minute by minute
/// then walks along one piece of memory, not along eight.
/// </summary>
public readonly struct MinuteColumn
{
    /// <summary>Columns that stand side by side.</summary>
    internal const int Together = 8;

    private readonly double[] rows;
    private readonly int at;

    internal MinuteColumn(double[] rows, int at)
    {
        this.rows = rows;
        this.at = at;
    }

    /// <summary>Minutes.</summary>
    public int Length => rows.Length / Together;

    /// <summary>The value of a minute.</summary>
    /// <param name="minute">Minute of the year, from 0.</param>
    public double this[int minute]
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => rows[(minute * Together) + at];
    }

    internal void Set(int minute, double value) => rows[(minute * Together) + at] = value;

    /// <summary>The values of a stretch of minutes.</summary>
    /// <param name="from">First minute.</param>
    /// <param name="into">As many as it is long.</param>
    public void CopyTo(int from, Span<double> into)
    {
        for (int i = 0; i < into.Length; i++)
        {
            into[i] = this[from + i];
        }
    }

    /// <summary>All values in their order.</summary>
    public IEnumerable<double> All()
    {
        for (int minute = 0; minute < Length; minute++)
        {
            yield return this[minute];
        }
    }
}
