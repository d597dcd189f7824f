namespace Glazewright.Design.Document;

/// <summary>Where each key of a document belongs, worked out from its description.</summary>
public sealed class KeyPlaces
{
    private readonly List<(string Key, string Owner)> _all = [];

    private KeyPlaces()
    {
    }

    /// <summary>No keys.</summary>
    /// <returns>An empty list of places.</returns>
    public static KeyPlaces None() => new();

    /// <summary>Gathers the places of all keys.</summary>
    /// <param name="root">Description of the document.</param>
    /// <returns>The places.</returns>
    public static KeyPlaces Of(FieldShape.Group root)
    {
        ArgumentNullException.ThrowIfNull(root);
        KeyPlaces places = new();
        places.Gather(root, "");
        return places;
    }

    /// <summary>Objects that hold this very key, the nearest to a place first.</summary>
    /// <param name="key">Key, in any case.</param>
    /// <param name="from">Path of the place, as <c>houses[]</c>; empty for the document.</param>
    /// <returns>Paths; empty for the document itself.</returns>
    public IEnumerable<string> Owners(string key, string from) =>
        _all.Where(p => p.Owner != from && p.Key.Equals(key, StringComparison.OrdinalIgnoreCase)).Select(p => p.Owner).Distinct()
            .OrderByDescending(o => Shared(o, from)).ThenBy(o => o.Length).ThenBy(o => o, StringComparer.Ordinal);

    /// <summary>Keys below a place that end in a word: <c>roof.leftPitch</c> for pitch.</summary>
    /// <param name="word">The word.</param>
    /// <param name="from">Path of the place.</param>
    /// <returns>Full paths of those keys.</returns>
    public IEnumerable<string> EndingIn(string word, string from) => word.Length < 3
        ? []
        : _all.Where(p => p.Owner.StartsWith(from, StringComparison.Ordinal) && p.Owner.Length > from.Length && p.Key.Length > word.Length
                && p.Key.EndsWith(char.ToUpperInvariant(word[0]) + word[1..], StringComparison.Ordinal))
            .Select(p => Joined(p.Owner, p.Key)).Distinct();

    /// <summary>A pointer with its indices left open: <c>houses[].roof</c> for /houses/0/roof.</summary>
    /// <param name="pointer">JSON pointer.</param>
    /// <returns>The path.</returns>
    public static string PathOf(string pointer)
    {
        ArgumentNullException.ThrowIfNull(pointer);
        string path = "";
        foreach (string step in pointer.Split('/', StringSplitOptions.RemoveEmptyEntries))
        {
            path = step.All(char.IsAsciiDigit) ? path + "[]" : Joined(path, step);
        }

        return path;
    }

    private static string Joined(string owner, string key) => owner.Length == 0 ? key : owner + "." + key;

    private static int Shared(string a, string b) => a.Split('.').Zip(b.Split('.')).TakeWhile(p => p.First == p.Second).Count();

    private void Gather(FieldShape shape, string path)
    {
        switch (shape)
        {
            case FieldShape.Group group:
                foreach (FieldDescription field in group.Fields)
                {
                    _all.Add((field.Key, path));
                    Gather(field.Shape, Joined(path, field.Key));
                }

                break;
            case FieldShape.Several several:
                Gather(several.Item, path + "[]");
                break;
            case FieldShape.Either either:
                Gather(either.First, path);
                Gather(either.Second, path);
                break;
            default:
                break;
        }
    }
}
