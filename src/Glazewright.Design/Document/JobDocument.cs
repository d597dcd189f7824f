using Glazewright.Design.Contracts;

namespace Glazewright.Design.Document;

/// <summary>A job as typed: the text is the truth, the tree is read from it. Edits make a new document and leave comments, order and spelling alone.</summary>
public sealed class JobDocument
{
    private JobDocument(string text, Node root, EqList<Fault> faults)
    {
        Text = text;
        Root = root;
        Faults = faults;
    }

    /// <summary>The text as typed.</summary>
    public string Text { get; }

    /// <summary>The tree; an empty object when the text is not JSON.</summary>
    public Node Root { get; }

    /// <summary>What is wrong with the text as JSON; a document with such faults has no fields.</summary>
    public EqList<Fault> Faults { get; }

    /// <summary>Reads a text; never throws for what it holds.</summary>
    /// <param name="text">JSON, comments and trailing commas allowed, at most 4 million characters.</param>
    /// <returns>The document, with its faults when the text is not JSON.</returns>
    public static JobDocument Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        Node root = TreeParser.Parse(text, out EqList<Fault> faults);
        return new JobDocument(text, root, faults);
    }

    /// <summary>The node a pointer leads to, or null.</summary>
    /// <param name="pointer">JSON pointer.</param>
    /// <returns>The node or null.</returns>
    public Node? Find(string pointer) => JsonPointer.Find(Root, pointer);

    /// <summary>Applies edits in order.</summary>
    /// <param name="edits">The edits.</param>
    /// <param name="edited">The new document; this one when an edit does not fit.</param>
    /// <param name="fault">The first edit's fault that does not fit; null when all fit.</param>
    /// <returns>True when all fit.</returns>
    public bool TryEdit(IEnumerable<Edit> edits, out JobDocument edited, out Fault? fault)
    {
        ArgumentNullException.ThrowIfNull(edits);
        edited = this;
        fault = null;
        JobDocument now = this;
        foreach (Edit edit in edits)
        {
            if (!TextPatch.TryApply(now, edit, out string text, out string wrong))
            {
                fault = new Fault(FaultKind.NotFound, edit.Pointer, "", 0, 0, wrong, "a pointer to a field, as in /houses/0/width");
                return false;
            }

            JobDocument next = Read(text);
            if (next.Faults.Count > 0)
            {
                fault = next.Faults[0] with { Pointer = edit.Pointer };
                return false;
            }

            now = next;
        }

        edited = now;
        return true;
    }
}

/// <summary>One edit of a document.</summary>
/// <param name="Pointer">Where. Missing objects on the way are made; the index behind a list's last item (or "-") appends.</param>
/// <param name="Json">The new value as JSON; null takes the field out.</param>
public sealed record Edit(string Pointer, string? Json)
{
    /// <summary>An edit that types a text into a field.</summary>
    /// <param name="pointer">Where.</param>
    /// <param name="typed">What was typed, as <c>12'6"</c>.</param>
    /// <returns>The edit.</returns>
    public static Edit Typed(string pointer, string typed) => new(pointer, JsonText.Quote(typed));

    /// <summary>An edit that takes a field out, so that its default holds again.</summary>
    /// <param name="pointer">Where.</param>
    /// <returns>The edit.</returns>
    public static Edit Removed(string pointer) => new(pointer, null);
}
