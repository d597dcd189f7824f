using Glazewright.Design.Contracts;

namespace Glazewright.Papers.Sets;

/// <summary>Whom a file is for. The contractor has every file, so is never named in a white list.</summary>
public enum PaperReader
{
    /// <summary>The grower who buys.</summary>
    Grower,

    /// <summary>The plan reviewer or the licensed engineer.</summary>
    Reviewer,

    /// <summary>The shop that cuts and makes.</summary>
    Shop,

    /// <summary>The crew that erects.</summary>
    Crew,

    /// <summary>The technician who programs and commissions the control box.</summary>
    Controls,

    /// <summary>Other trades: those who plan and build what is not ours, by their own programs.</summary>
    Trades,
}

/// <summary>A file of the package.</summary>
/// <param name="Path">Path in the package, with forward slashes.</param>
/// <param name="Title">What it is.</param>
/// <param name="Readers">Its white list: whoever is not named does not get it. Empty: the contractor alone, and only there may cost, margin and labour rates stand.</param>
/// <param name="Bytes">Its content.</param>
public sealed record PaperFile(string Path, string Title, EqList<PaperReader> Readers, ReadOnlyMemory<byte> Bytes);
