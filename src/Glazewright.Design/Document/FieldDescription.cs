using Glazewright.Design.Contracts;
using Glazewright.Design.Quantities;

namespace Glazewright.Design.Document;

/// <summary>A field of the job document: what it is for and what may stand in it. Forms, the schema and the guide are made from these.</summary>
/// <param name="Key">Its key; empty for the item of a list.</param>
/// <param name="Doc">What it is for, one sentence.</param>
/// <param name="Shape">What may stand in it.</param>
/// <param name="Default">JSON of what holds when it is left out; empty when it is required or stays blank.</param>
/// <param name="Blank">What a blank field means; empty when it is not left blank.</param>
public sealed record FieldDescription(string Key, string Doc, FieldShape Shape, string Default, string Blank)
{
    /// <summary>True when the field has to be given.</summary>
    public bool IsRequired => Default.Length == 0 && Blank.Length == 0;
}

/// <summary>A word that may be chosen.</summary>
/// <param name="Word">As typed.</param>
/// <param name="Doc">What it means; may be empty.</param>
public sealed record ChoiceWord(string Word, string Doc);

/// <summary>What may stand in a field. A closed set of cases.</summary>
public abstract record FieldShape
{
    private FieldShape()
    {
    }

    /// <summary>A quantity as text.</summary>
    /// <param name="Kind">What it measures.</param>
    /// <param name="Least">Smallest, as typed.</param>
    /// <param name="Most">Largest, as typed.</param>
    public sealed record Measure(QuantityKind Kind, string Least, string Most) : FieldShape;

    /// <summary>One of some words.</summary>
    /// <param name="Words">The words.</param>
    public sealed record Choice(EqList<ChoiceWord> Words) : FieldShape;

    /// <summary>Free text.</summary>
    /// <param name="Longest">Greatest number of characters.</param>
    /// <param name="Pattern">Regular expression it must match; empty for any.</param>
    /// <param name="Example">A text that is right.</param>
    public sealed record Prose(int Longest, string Pattern, string Example) : FieldShape;

    /// <summary>A whole number.</summary>
    /// <param name="Least">Smallest.</param>
    /// <param name="Most">Largest.</param>
    public sealed record Whole(int Least, int Most) : FieldShape;

    /// <summary>true or false.</summary>
    public sealed record Flag : FieldShape;

    /// <summary>An object with fields.</summary>
    /// <param name="Fields">Its fields.</param>
    public sealed record Group(EqList<FieldDescription> Fields) : FieldShape;

    /// <summary>A list.</summary>
    /// <param name="Item">What stands in it.</param>
    /// <param name="Fewest">Fewest items.</param>
    /// <param name="Most">Most items.</param>
    public sealed record Several(FieldShape Item, int Fewest, int Most) : FieldShape;

    /// <summary>Either of two.</summary>
    /// <param name="First">One.</param>
    /// <param name="Second">The other.</param>
    public sealed record Either(FieldShape First, FieldShape Second) : FieldShape;
}

/// <summary>A default that held because the job does not say.</summary>
/// <param name="Pointer">JSON pointer of the field that would override it.</param>
/// <param name="Value">What held, as one would type it; what the program does, for a field left blank.</param>
/// <param name="Doc">What the field is for.</param>
public sealed record DefaultUsed(string Pointer, string Value, string Doc);

/// <summary>What came of reading a tree: a value when there are no faults.</summary>
/// <typeparam name="T">The typed record.</typeparam>
/// <param name="Value">The value; the type's default when there are faults.</param>
/// <param name="Faults">Every fault, in the order of the document's reading.</param>
/// <param name="Defaults">Every default that held.</param>
public sealed record ReadOutcome<T>(T? Value, EqList<Fault> Faults, EqList<DefaultUsed> Defaults);

/// <summary>A word, or a list in its place.</summary>
/// <typeparam name="T">Item of the list.</typeparam>
/// <param name="Word">The word; empty when a list was given.</param>
/// <param name="Items">The list; empty when a word was given.</param>
public sealed record WordOrList<T>(string Word, EqList<T> Items);
