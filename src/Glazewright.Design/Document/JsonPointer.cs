using System.Globalization;

namespace Glazewright.Design.Document;

/// <summary>JSON pointers (RFC 6901): <c>/houses/0/width</c>; ~ in a key is written ~0, / is written ~1.</summary>
public static class JsonPointer
{
    /// <summary>The pointer to a key or index inside another pointer's value.</summary>
    /// <param name="pointer">The outer pointer.</param>
    /// <param name="key">Key, or index in digits.</param>
    /// <returns>The inner pointer.</returns>
    public static string Append(string pointer, string key) =>
        $"{pointer}/{key.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal)}";

    /// <summary>The keys of a pointer, outermost first.</summary>
    /// <param name="pointer">Empty, or starting with a slash.</param>
    /// <returns>The keys; null when the text is not a pointer.</returns>
    public static string[]? Keys(string pointer) =>
        pointer.Length == 0 ? [] : pointer[0] != '/' ? null
        : [.. pointer[1..].Split('/').Select(k => k.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal))];

    /// <summary>The node a pointer leads to, or null.</summary>
    /// <param name="root">The document.</param>
    /// <param name="pointer">The pointer.</param>
    /// <returns>The node, or null when nothing is there.</returns>
    public static Node? Find(Node root, string pointer)
    {
        Node? node = Keys(pointer) is null ? null : root;
        foreach (string key in Keys(pointer) ?? [])
        {
            node = node is null ? null : Step(node, key);
        }

        return node;
    }

    /// <summary>One step of a pointer.</summary>
    internal static Node? Step(Node node, string key) => node switch
    {
        ObjectNode o => o.Find(key),
        ListNode list when int.TryParse(key, NumberStyles.None, CultureInfo.InvariantCulture, out int index) && index < list.Items.Count => list.Items[index],
        _ => null,
    };
}
