namespace Glazewright.Design.Contracts;

/// <summary>What sort of thing is wrong in a job document.</summary>
public enum FaultKind
{
    /// <summary>The text is not JSON (a comma missing, a quote not closed).</summary>
    NotJson,

    /// <summary>The document is longer or deeper than is read.</summary>
    TooBig,

    /// <summary>The document's version is missing, or newer than this program.</summary>
    Version,

    /// <summary>The same key stands twice in one object.</summary>
    DuplicateKey,

    /// <summary>A key that means nothing here.</summary>
    UnknownKey,

    /// <summary>A field that has no default was left out.</summary>
    Missing,

    /// <summary>A list where a text belongs, and the like.</summary>
    WrongType,

    /// <summary>A quantity, time or date that cannot be read: no unit, a unit of another kind.</summary>
    Unreadable,

    /// <summary>Read, but outside the sensible range.</summary>
    OutOfRange,

    /// <summary>Not one of the words allowed here.</summary>
    NotAChoice,

    /// <summary>A list with too few or too many entries.</summary>
    WrongCount,

    /// <summary>The same id given to two things.</summary>
    DuplicateId,

    /// <summary>A name that points to nothing in the job.</summary>
    UnknownName,

    /// <summary>Eaves, ridge and pitches that do not meet.</summary>
    DoesNotClose,

    /// <summary>Two things in one place, or two periods at one time.</summary>
    Overlap,

    /// <summary>Something outside the face, house or lot it belongs to.</summary>
    DoesNotFit,

    /// <summary>Two fields that contradict each other.</summary>
    Conflict,
}

/// <summary>The user's bad news: one thing wrong in a job document, with its place and what would be right.</summary>
/// <param name="Kind">What sort of thing is wrong.</param>
/// <param name="Pointer">JSON pointer (RFC 6901) to the field; empty for the whole document.</param>
/// <param name="Id">Path id of the part meant (<c>A/door-1</c>), or empty.</param>
/// <param name="Line">Line in the text as typed, from 1; 0 when the field is not in the text.</param>
/// <param name="Column">Column in that line, from 1; 0 when the field is not in the text.</param>
/// <param name="Wrong">What is wrong, in words.</param>
/// <param name="Right">What would be right, in words.</param>
public sealed record Fault(FaultKind Kind, string Pointer, string Id, int Line, int Column, string Wrong, string Right);
