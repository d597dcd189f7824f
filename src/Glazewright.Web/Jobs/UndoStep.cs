using System.Globalization;
using Glazewright.Design.Document;

namespace Glazewright.Web.Jobs;

/// <summary>One step that can be undone or done again: the edits that take it back, field by field, so that what another window saved meanwhile stays.</summary>
/// <param name="What">What the step was, in words.</param>
/// <param name="Back">The edits that take it back, in order.</param>
public sealed record UndoStep(string What, IReadOnlyList<Edit> Back)
{
    /// <summary>What takes edits back.</summary>
    /// <param name="before">The document before them.</param>
    /// <param name="edits">The edits; at most one of them appends to a list.</param>
    /// <param name="after">The document as saved, which others may have added to.</param>
    /// <param name="what">What they are, in words.</param>
    public static UndoStep Of(JobDocument before, IReadOnlyList<Edit> edits, JobDocument after, string what)
    {
        ArgumentNullException.ThrowIfNull(after);
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(edits);
        List<Edit> back = [];
        JobDocument now = before;
        foreach (Edit edit in edits)
        {
            back.Add(Inverse(now, edit, after));
            now.TryEdit([edit], out now, out _);
        }

        back.Reverse();
        return new UndoStep(what, back);
    }

    private static Edit Inverse(JobDocument before, Edit edit, JobDocument after)
    {
        string pointer = edit.Pointer;
        Node? old = before.Find(pointer);
        if (old is not null)
        {
            // An item taken out of a list moves those behind it up: the list as a whole comes back.
            string above = pointer[..pointer.LastIndexOf('/')];
            return edit.Json is null && before.Find(above) is ListNode list
                ? new Edit(above, Typed(before, list))
                : new Edit(pointer, Typed(before, old));
        }

        // An appended item is the last of the list as it was saved.
        if (pointer.EndsWith("/-", StringComparison.Ordinal) && before.Find(pointer[..^2]) is ListNode && after.Find(pointer[..^2]) is ListNode { Items.Count: > 0 and int count })
        {
            return Edit.Removed(pointer[..^1] + (count - 1).ToString(CultureInfo.InvariantCulture));
        }

        // What the edit made on its way goes too: the topmost thing that was not there.
        string made = pointer;
        while (made.LastIndexOf('/') is > 0 and int at && before.Find(made[..at]) is null)
        {
            made = made[..at];
        }

        return Edit.Removed(made);
    }

    private static string Typed(JobDocument document, Node node) => document.Text[node.Place.Start..node.Place.End];
}
