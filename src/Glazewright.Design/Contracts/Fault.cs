namespace Glazewright.Design.Contracts;

/// <summary>What kind of wrong an input is.</summary>
public enum FaultKind
{
    /// <summary>The text is not a JSON document at all.</summary>
    NotJson,

    /// <summary>A value of another JSON type than the field takes.</summary>
    WrongType,

    /// <summary>A bare number, or a unit of another kind.</summary>
    Unit,

    /// <summary>A number that no such thing can have.</summary>
    OutOfRange,

    /// <summary>A word that is not one of the choices.</summary>
    UnknownChoice,

    /// <summary>A key that the place does not know.</summary>
    UnknownKey,

    /// <summary>A value that must be given and is not.</summary>
    Missing,

    /// <summary>An id used twice, or a key given twice.</summary>
    Duplicate,

    /// <summary>Two values that cannot both hold.</summary>
    Contradiction,

    /// <summary>Geometry that does not fit: off its face, overlapping, outside the house.</summary>
    DoesNotFit,

    /// <summary>A reference to something that is not there (a file, an id, a catalogue entry).</summary>
    NotFound,

    /// <summary>A command line that cannot be understood: an option or argument is missing, unknown or wrong.</summary>
    Usage,
}

/// <summary>The user's wrong input: what is wrong, where, and what would be right.</summary>
/// <param name="Kind">The case.</param>
/// <param name="Pointer">JSON pointer of the place (RFC 6901); empty for the document.</param>
/// <param name="Id">The id of the thing it belongs to (house, opening), or empty.</param>
/// <param name="Line">Line in the text, from 1; 0 when the place has none.</param>
/// <param name="Column">Column in the text, from 1; 0 when the place has none.</param>
/// <param name="Wrong">What is wrong, in plain words.</param>
/// <param name="Right">What would be right.</param>
public sealed record Fault(FaultKind Kind, string Pointer, string Id, int Line, int Column, string Wrong, string Right);
