using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Glazewright.Design.Program;

/// <summary>
/// The one interpreter of control programs: the year's simulation, a bench rehearsal and a controller's register map run this same step. Integers only, no allocation, any step length.
/// </summary>
/// <remarks>Rules in words: docs/methods/control-program.md. Not a safety function: high limits, flame safeguard, low water and E-stops are hard-wired outside.</remarks>
public static class ProgramInterpreter
{
    /// <summary>Timers stop counting here (about 23 days).</summary>
    internal const int LongAgoMs = 2_000_000_000;

    /// <summary>Decides what each actuator does from now until the next call.</summary>
    /// <param name="compiled">The program.</param>
    /// <param name="before">State so far, <see cref="CompiledProgram.StateLength"/> integers; may be the same memory as <paramref name="after"/>.</param>
    /// <param name="readings">Readings now, in the order of <see cref="Reading"/>; <see cref="int.MinValue"/> for a missing one.</param>
    /// <param name="dtMs">Time until the next call, ms, 1 to 86 400 000 (clamped).</param>
    /// <param name="after">State at the end of that time.</param>
    /// <param name="commands">One command an actuator. A motor's level is where it stands at the end of the time; fog's level is the share of the time it is on.</param>
    /// <returns>False when every actuator stands as it stood: no level changed, and no fog pulses.</returns>
    /// <exception cref="ArgumentException">A span too short.</exception>
    public static bool Step(
        CompiledProgram compiled, ReadOnlySpan<int> before, ReadOnlySpan<int> readings, int dtMs, Span<int> after, Span<Command> commands) =>
        Step(compiled, before, readings, dtMs, after, commands, out _);

    /// <summary>The same, and what may change the box's mind before it is asked again.</summary>
    internal static bool Step(
        CompiledProgram compiled, ReadOnlySpan<int> before, ReadOnlySpan<int> readings, int dtMs, Span<int> after, Span<Command> commands, out Outlook soon)
    {
        ArgumentNullException.ThrowIfNull(compiled);
        int n = compiled.Count, length = compiled.StateLength;
        if (before.Length < length || after.Length < length)
        {
            throw new ArgumentException("The state is too short: see StateLength.");
        }

        if (readings.Length < compiled.FewestReadings || commands.Length < n)
        {
            throw new ArgumentException("Readings or commands are too few.");
        }

        if (!Unsafe.AreSame(in MemoryMarshal.GetReference(before), in MemoryMarshal.GetReference(after)))
        {
            before[..length].CopyTo(after);
        }

        scoped ReadOnlySpan<int> seen = readings;
        if (compiled.Wiring is { } wiring)
        {
            Span<int> taken = stackalloc int[wiring.Count];
            wiring.Take(readings, taken);
            seen = taken;
        }

        Span<int> want = stackalloc int[compiled.Column];
        var run = new StepRun(compiled, seen, Math.Clamp(dtMs, 1, 86_400_000), after[..length], commands[..n], want);
        bool moved = run.Go();
        soon = run.Soon;
        return moved;
    }

    internal static int Later(int timerMs, int dtMs) => timerMs >= LongAgoMs - dtMs ? LongAgoMs : timerMs + dtMs;
}
