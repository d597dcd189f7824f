using Glazewright.Design.Program;

namespace Glazewright.Design.Year;

/// <summary>The program's interpreter as the year's control box, with its memory.</summary>
internal sealed class ProgramControl
{
    private int[] next; // what it would remember after a step that is only tried

    private ProgramControl(CompiledProgram compiled)
    {
        Compiled = compiled;
        State = new int[compiled.StateLength];
        next = new int[compiled.StateLength];
        compiled.Rest(State);
    }

    public CompiledProgram Compiled { get; }

    /// <summary>What the box remembers between two steps.</summary>
    public int[] State { get; private set; }

    /// <summary>A control box at rest that runs a program.</summary>
    /// <param name="program">A program without faults: those are told when it is read or edited.</param>
    /// <exception cref="ArgumentException">A program with faults.</exception>
    public static ProgramControl Of(ProgramDocument program) => ProgramCompiler.Compile(program) switch
    {
        ProgramCompilation.Ready ready => new ProgramControl(ready.Program),
        ProgramCompilation.Faulty faulty => throw new ArgumentException(
            "The program cannot run: " + string.Join("; ", faulty.Faults.Select(f => $"{f.Pointer}: {f.Wrong}")), nameof(program)),
        _ => throw new ArgumentOutOfRangeException(nameof(program)),
    };

    /// <summary>One step of the box.</summary>
    /// <returns>False when all stands as it stood.</returns>
    public bool Step(ReadOnlySpan<int> readings, int stepMs, Span<Command> commands)
    {
        bool moved = Try(readings, stepMs, commands, out _);
        Accept();
        return moved;
    }

    /// <summary>Tries a step: what it asks, and what may change its mind; nothing is remembered until <see cref="Accept"/>.</summary>
    /// <returns>False when all stands as it stood.</returns>
    public bool Try(ReadOnlySpan<int> readings, int stepMs, Span<Command> commands, out Outlook soon) =>
        ProgramInterpreter.Step(Compiled, State, readings, stepMs, next, commands, out soon);

    /// <summary>What was tried last becomes what it remembers.</summary>
    public void Accept() => (State, next) = (next, State);
}
