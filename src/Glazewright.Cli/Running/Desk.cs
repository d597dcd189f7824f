namespace Glazewright.Cli.Running;

/// <summary>What a command works with: the console and the clock come in by the door.</summary>
/// <param name="Out">Answers.</param>
/// <param name="Errors">Faults, problems, progress.</param>
/// <param name="IsTerminal">True when a person watches: progress may be drawn.</param>
/// <param name="ProgramFolder">Folder of the program, where the demo's files lie.</param>
/// <param name="Cancel">Cancelled by Ctrl-C.</param>
public sealed record Desk(TextWriter Out, TextWriter Errors, bool IsTerminal, string ProgramFolder, CancellationToken Cancel);

/// <summary>What a command ends with.</summary>
public static class Exit
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>Our fault, or the machine's: a bug, a full disk.</summary>
    public const int Ours = 1;

    /// <summary>The user can mend it: faults in the job, a file that is not there, a wrong option.</summary>
    public const int Faults = 2;

    /// <summary>Stopped by Ctrl-C.</summary>
    public const int Stopped = 130;
}
