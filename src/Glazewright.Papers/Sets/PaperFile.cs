namespace Glazewright.Papers.Sets;

/// <summary>Whom a file is for.</summary>
public enum PaperReader
{
    /// <summary>The contractor alone: the only place where cost, margin and labour rates stand.</summary>
    Contractor,

    /// <summary>The grower who buys.</summary>
    Grower,

    /// <summary>The plan reviewer or the licensed engineer.</summary>
    Reviewer,

    /// <summary>Shop and crew.</summary>
    Shop,

    /// <summary>The technician who programs and commissions the control box.</summary>
    Controls,

    /// <summary>Other trades: those who plan and build what is not ours, by their own programs.</summary>
    Trades,

    /// <summary>Everyone on the job.</summary>
    Everyone,
}

/// <summary>A file of the package.</summary>
/// <param name="Path">Path in the package, with forward slashes.</param>
/// <param name="Reader">Whom it is for.</param>
/// <param name="Title">What it is.</param>
/// <param name="Bytes">Its content.</param>
public sealed record PaperFile(string Path, PaperReader Reader, string Title, ReadOnlyMemory<byte> Bytes);
