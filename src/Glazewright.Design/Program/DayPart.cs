using System.Runtime.CompilerServices;

namespace Glazewright.Design.Program;

/// <summary>The day's part of 24 hours: where it begins and how long it lasts, in any whole unit of time. One rule for the schedule and the program.</summary>
/// <param name="Start">Begin, within the day.</param>
/// <param name="Length">Length; 0 when all is night, the whole day when all is day.</param>
public readonly record struct DayPart(int Start, int Length)
{
    /// <summary>What a mark goes by.</summary>
    public enum Mark
    {
        /// <summary>The clock.</summary>
        Clock,

        /// <summary>Sunrise.</summary>
        Sunrise,

        /// <summary>Sunset.</summary>
        Sunset,
    }

    /// <summary>The part between two marks.</summary>
    /// <param name="starts">What the start goes by.</param>
    /// <param name="start">The start with its offset; may lie outside the day.</param>
    /// <param name="ends">What the end goes by.</param>
    /// <param name="end">The end with its offset.</param>
    /// <param name="whole">Length of 24 hours.</param>
    /// <remarks>
    /// Clock marks wrap over midnight. Between sunrise and sunset nothing wraps: where offsets eat a short winter day it is all night, where they reach over a
    /// polar summer's midnight all is day.
    /// </remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static DayPart Between(Mark starts, int start, Mark ends, int end, int whole)
    {
        int length = (starts, ends) switch
        {
            (Mark.Sunrise, Mark.Sunset) => Math.Clamp(end - start, 0, whole),
            (Mark.Sunset, Mark.Sunrise) => Math.Clamp(end - start + whole, 0, whole),
            _ => Wrapped(end - start, whole) is int part and > 0 ? part : whole,
        };
        return new DayPart(Wrapped(start, whole), length);
    }

    /// <summary>Whether a moment is day, and how long it has been so.</summary>
    /// <param name="clock">Moment of the day.</param>
    /// <param name="whole">Length of 24 hours.</param>
    /// <returns>Time since the last change; with nothing that changes, the longest there is.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (bool IsDay, int Since) At(int clock, int whole)
    {
        if (Length <= 0 || Length >= whole)
        {
            return (Length > 0, int.MaxValue);
        }

        int since = Wrapped(clock - Start, whole);
        return since < Length ? (true, since) : (false, since - Length);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static int Wrapped(int time, int whole) => (uint)time < (uint)whole ? time : ((time % whole) + whole) % whole;
}
