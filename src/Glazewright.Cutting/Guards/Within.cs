using System.Runtime.CompilerServices;

namespace Glazewright.Cutting.Guards;

/// <summary>Range guards for this room's public doors (whole numbers: ticks, counts, cents).</summary>
public static class Within
{
    /// <summary>Requires a whole number inside a closed range.</summary>
    /// <param name="value">The argument, in its own unit.</param>
    /// <param name="atLeast">Lowest allowed value.</param>
    /// <param name="atMost">Highest allowed value.</param>
    /// <param name="name">Filled by the compiler.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static void Require(
        long value, long atLeast, long atMost, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (value < atLeast || value > atMost)
        {
            throw new ArgumentOutOfRangeException(name, value, $"Must lie in {atLeast} to {atMost}.");
        }
    }
}
