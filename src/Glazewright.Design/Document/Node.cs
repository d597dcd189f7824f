using Glazewright.Design.Contracts;

namespace Glazewright.Design.Document;

/// <summary>Where a node stands in the text.</summary>
/// <param name="Start">Offset of its first character.</param>
/// <param name="End">Offset behind its last character.</param>
/// <param name="Line">Line from 1; 0 for a node that no text holds.</param>
/// <param name="Column">Column from 1; 0 for a node that no text holds.</param>
public readonly record struct Place(int Start, int End, int Line, int Column)
{
    /// <summary>A node that no text holds: a default.</summary>
    public static Place Nowhere => default;
}

/// <summary>A JSON value as typed, with its place. A closed set of cases.</summary>
/// <param name="Place">Where it stands.</param>
public abstract record Node(Place Place)
{
    /// <summary>What it is, for a fault: "a list", "a number".</summary>
    public abstract string Called { get; }
}

/// <summary>A key and its value.</summary>
/// <param name="Key">The key, escapes resolved.</param>
/// <param name="KeyPlace">Where the key stands, quotes included.</param>
/// <param name="Value">The value.</param>
public sealed record Member(string Key, Place KeyPlace, Node Value);

/// <summary>Keys and values, in the order typed.</summary>
/// <param name="Members">The members; of equal keys the reader keeps the first.</param>
/// <param name="Place">Where it stands.</param>
public sealed record ObjectNode(EqList<Member> Members, Place Place) : Node(Place)
{
    /// <summary>An object with nothing in it, in no text.</summary>
    public static ObjectNode Empty { get; } = new([], Place.Nowhere);

    /// <inheritdoc/>
    public override string Called => "an object { }";

    /// <summary>The value at a key, or null when the key is not there.</summary>
    /// <param name="key">The key.</param>
    /// <returns>The value or null.</returns>
    public Node? Find(string key)
    {
        foreach (Member member in Members)
        {
            if (member.Key == key)
            {
                return member.Value;
            }
        }

        return null;
    }
}

/// <summary>A list.</summary>
/// <param name="Items">The items.</param>
/// <param name="Place">Where it stands.</param>
public sealed record ListNode(EqList<Node> Items, Place Place) : Node(Place)
{
    /// <inheritdoc/>
    public override string Called => "a list [ ]";
}

/// <summary>A text in quotes.</summary>
/// <param name="Text">The text, escapes resolved.</param>
/// <param name="Place">Where it stands, quotes included.</param>
public sealed record TextNode(string Text, Place Place) : Node(Place)
{
    /// <inheritdoc/>
    public override string Called => "a text";
}

/// <summary>A number, kept as typed: 1.50 stays 1.50.</summary>
/// <param name="Typed">The characters.</param>
/// <param name="Place">Where it stands.</param>
public sealed record NumberNode(string Typed, Place Place) : Node(Place)
{
    /// <inheritdoc/>
    public override string Called => "a number";
}

/// <summary>true or false.</summary>
/// <param name="IsTrue">Which.</param>
/// <param name="Place">Where it stands.</param>
public sealed record FlagNode(bool IsTrue, Place Place) : Node(Place)
{
    /// <inheritdoc/>
    public override string Called => "true or false";
}

/// <summary>null: a field left blank on purpose.</summary>
/// <param name="Place">Where it stands.</param>
public sealed record BlankNode(Place Place) : Node(Place)
{
    /// <inheritdoc/>
    public override string Called => "null";
}
