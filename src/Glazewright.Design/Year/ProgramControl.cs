using Glazewright.Design.Program;

namespace Glazewright.Design.Year;

/// <summary>The program's interpreter as the year's control box.</summary>
internal static class ProgramControl
{
    /// <summary>A control box at rest that runs a program.</summary>
    /// <param name="program">A program without faults: those are told when it is read or edited.</param>
    /// <exception cref="ArgumentException">A program with faults.</exception>
    public static YearControl Of(ProgramDocument program)
    {
        CompiledProgram compiled = ProgramCompiler.Compile(program) switch
        {
            ProgramCompilation.Ready ready => ready.Program,
            ProgramCompilation.Faulty faulty => throw new ArgumentException(
                "The program cannot run: " + string.Join("; ", faulty.Faults.Select(f => $"{f.Pointer}: {f.Wrong}")), nameof(program)),
            _ => throw new ArgumentOutOfRangeException(nameof(program)),
        };
        int[] state = new int[compiled.StateLength];
        compiled.Rest(state);
        return (readings, stepMs, commands) => ProgramInterpreter.Step(compiled, state, readings, stepMs, state, commands);
    }
}
