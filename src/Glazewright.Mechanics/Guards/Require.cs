using System.Runtime.CompilerServices;

namespace Glazewright.Mechanics.Guards;

/// <summary>Range guards for this room's public doors. Written so that NaN fails.</summary>
public static class Require
{
    /// <summary>Requires a value inside a closed range.</summary>
    /// <param name="value">The argument, in its own unit.</param>
    /// <param name="atLeast">Lowest allowed value.</param>
    /// <param name="atMost">Highest allowed value.</param>
    /// <param name="name">Filled by the compiler.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    public static void Within(
        double value, double atLeast, double atMost, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!(value >= atLeast && value <= atMost))
        {
            throw new ArgumentOutOfRangeException(name, value, $"Must lie in {atLeast:R} to {atMost:R}.");
        }
    }

    /// <summary>Requires a finite number.</summary>
    /// <param name="value">The argument.</param>
    /// <param name="name">Filled by the compiler.</param>
    /// <exception cref="ArgumentOutOfRangeException">NaN or infinite.</exception>
    public static void Finite(double value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(name, value, "Must be finite.");
        }
    }
}
