namespace Glazewright.Papers.Package;

/// <summary>Why a package cannot be put where it was asked for.</summary>
public enum OutputProblemKind
{
    /// <summary>The target is a file or a link to nothing, or lies below one.</summary>
    NotAFolder,

    /// <summary>The target holds files and no package of ours, or one whose manifest is damaged.</summary>
    NotOurs,

    /// <summary>The target holds a package for another reader: what the user keeps there would go with it.</summary>
    OtherReader,

    /// <summary>The target's name is longer than the disk takes.</summary>
    NameTooLong,

    /// <summary>No right to write there.</summary>
    NotWritable,

    /// <summary>No room on the disk.</summary>
    DiskFull,

    /// <summary>Another run writes the same package now.</summary>
    Busy,

    /// <summary>A file of the user's own stands where a file of the package belongs.</summary>
    NameTaken,

    /// <summary>The folder cannot be renamed: a mount point, or open elsewhere.</summary>
    CannotSwap,
}

/// <summary>A package that could not be written. The earlier package, if there was one, is untouched.</summary>
/// <param name="Kind">What sort.</param>
/// <param name="Wrong">What is wrong.</param>
/// <param name="Right">What would be right.</param>
public sealed record OutputProblem(OutputProblemKind Kind, string Wrong, string Right);

/// <summary>Thrown inside the writing of a package and answered as an <see cref="OutputProblem"/> at its door.</summary>
public sealed class OutputProblemException : IOException
{
    /// <summary>A problem on its way to the door.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="cause">What the system said.</param>
    public OutputProblemException(OutputProblem problem, Exception? cause = null)
        : base(problem.Wrong, cause) => Problem = problem;

    /// <summary>The problem.</summary>
    public OutputProblem Problem { get; }
}
