using System.Globalization;
using System.Text;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Document;

/// <content>Words, whole numbers, flags.</content>
public sealed partial class FieldReader
{
    private const string IdPattern = "^[A-Za-z0-9][A-Za-z0-9._-]*$";

    /// <summary>Reads free text.</summary>
    /// <param name="key">Key.</param>
    /// <param name="default">What holds when it is left out (may be empty); null when it must be given.</param>
    /// <param name="doc">What it is for.</param>
    /// <param name="example">A text that is right.</param>
    /// <param name="longest">Greatest number of characters.</param>
    /// <returns>The text.</returns>
    public string Words(string key, string? @default, string doc, string example = "", int longest = 400)
    {
        if (IsDescribing)
        {
            Describe(key, doc, new FieldShape.Prose(longest, "", example), @default is null ? "" : JsonText.Quote(@default), "");
            return @default ?? "";
        }

        Node? node = Take(key);
        if (node is null)
        {
            return Absent(key, @default, doc, $"\"{key}\": {JsonText.Quote(example)}");
        }

        if (node is not TextNode text)
        {
            WrongType(key, node, "a text", $"\"{key}\": {JsonText.Quote(example)}");
            return "";
        }

        if (@default is { Length: > 0 } && string.IsNullOrWhiteSpace(text.Text))
        {
            Report(FaultKind.OutOfRange, At(key), node.Place, "the text is blank", $"\"{key}\": {JsonText.Quote(example)}, or leave it out");
        }
        else if (HiddenCharacter(text.Text) is string hidden)
        {
            Report(FaultKind.OutOfRange, At(key), node.Place, $"the text holds {hidden}", "characters that are seen");
        }
        else if (text.Text.Length > longest || text.Text.Any(char.IsControl))
        {
            Report(FaultKind.OutOfRange, At(key), node.Place, text.Text.Length > longest ? $"{Text(text.Text.Length)} characters are too many" : "the text holds control characters", $"at most {Text(longest)} plain characters");
        }

        return text.Text;
    }

    /// <summary>Reads the id of this object.</summary>
    /// <param name="default">What holds when it is left out.</param>
    /// <param name="doc">What it is for.</param>
    /// <returns>Letters, digits, dots, dashes and underscores, at most 24.</returns>
    public string IdText(string @default, string doc)
    {
        if (IsDescribing)
        {
            Describe("id", doc, new FieldShape.Prose(24, IdPattern, @default), JsonText.Quote(@default), "");
            return @default;
        }

        Node? node = Take("id");
        if (node is null)
        {
            return Absent("id", @default, doc, "");
        }

        string text = node is TextNode t ? t.Text : "";
        if (text.Length is 0 or > 24 || !char.IsAsciiLetterOrDigit(text[0]) || !text.All(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '-' or '_'))
        {
            Report(node is TextNode ? FaultKind.OutOfRange : FaultKind.WrongType, At("id"), node.Place, "an id has letters, digits, dots and dashes, at most 24", $"\"id\": {JsonText.Quote(@default)}");
            return @default;
        }

        return text;
    }

    /// <summary>Reads one of the words of an enumeration: <c>HeadHouse</c> is typed head-house.</summary>
    /// <typeparam name="T">Enumeration.</typeparam>
    /// <param name="key">Key.</param>
    /// <param name="default">What holds when it is left out; null when it must be given.</param>
    /// <param name="doc">What it is for.</param>
    /// <param name="words">Words that differ from the names.</param>
    /// <returns>The value.</returns>
    public T Choice<T>(string key, T? @default, string doc, params ReadOnlySpan<(T Value, string Word)> words)
        where T : struct, Enum
    {
        T[] values = Enum.GetValues<T>();
        string[] typed = new string[values.Length];
        for (int i = 0; i < values.Length; i++)
        {
            typed[i] = WordOf(values[i], words);
        }

        string? defaultWord = @default is T d ? typed[Array.IndexOf(values, d)] : null;
        string chosen = Word(key, typed, defaultWord, doc);
        int index = Array.IndexOf(typed, chosen);
        return values[Math.Max(index, 0)];
    }

    /// <summary>Reads one of some words (a catalogue entry, a section).</summary>
    /// <param name="key">Key.</param>
    /// <param name="allowed">The words.</param>
    /// <param name="default">What holds when it is left out; null when it must be given. It may be empty.</param>
    /// <param name="doc">What it is for.</param>
    /// <param name="meanings">What each word means, in the words' order; left out where they speak for themselves.</param>
    /// <returns>The word, spelled as allowed.</returns>
    public string Word(string key, IReadOnlyList<string> allowed, string? @default, string doc, IReadOnlyList<string>? meanings = null)
    {
        if (IsDescribing)
        {
            FieldShape shape = new FieldShape.Choice(allowed.Select((w, i) => new ChoiceWord(w, meanings?[i] ?? "")).ToEqList());
            Describe(key, doc, shape, @default is null or "" ? "" : JsonText.Quote(@default), @default is "" ? "the program chooses" : "");
            return @default ?? allowed[0];
        }

        Node? node = Take(key);
        if (node is null)
        {
            if (@default is not "")
            {
                return Absent(key, @default, doc, Advice("", allowed));
            }

            NoteDefault(key, "the program chooses", doc);
            return "";
        }

        if (node is not TextNode text)
        {
            WrongType(key, node, "a word", Advice("", allowed));
            return allowed[0];
        }

        string? match = allowed.FirstOrDefault(w => Loose(w) == Loose(text.Text));
        if (match is null)
        {
            string shown = text.Text.Length > 40 ? text.Text[..40] + "…" : text.Text;
            Report(FaultKind.UnknownChoice, At(key), node.Place, $"\"{shown}\" is not one of the words for \"{key}\"", Advice(text.Text, allowed));
        }

        return match ?? allowed[0];
    }

    /// <summary>Reads a whole number.</summary>
    /// <param name="key">Key.</param>
    /// <param name="least">Smallest.</param>
    /// <param name="most">Largest.</param>
    /// <param name="default">What holds when it is left out; null when it must be given.</param>
    /// <param name="doc">What it is for.</param>
    /// <returns>The number.</returns>
    public int Whole(string key, int least, int most, int? @default, string doc)
    {
        string right = $"a whole number from {Text(least)} to {Text(most)}";
        if (IsDescribing)
        {
            Describe(key, doc, new FieldShape.Whole(least, most), @default is int d ? Text(d) : "", "");
            return @default ?? least;
        }

        Node? node = Take(key);
        if (node is null)
        {
            string held = Absent(key, @default is int d ? Text(d) : null, doc, $"\"{key}\": {right}");
            return held.Length == 0 ? least : @default ?? least;
        }

        string? typed = node switch { NumberNode n => n.Typed, TextNode t => t.Text.Trim(), _ => null };
        if (typed is null)
        {
            WrongType(key, node, "a whole number", right);
            return least;
        }

        if (!int.TryParse(typed, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int value) || value < least || value > most)
        {
            Report(FaultKind.OutOfRange, At(key), node.Place, $"{(typed.Length > 30 ? typed[..30] + "…" : typed)} is not {right}", right);
            return least;
        }

        return value;
    }

    /// <summary>Reads a whole number that may be left blank.</summary>
    /// <param name="key">Key.</param>
    /// <param name="least">Smallest.</param>
    /// <param name="most">Largest.</param>
    /// <param name="blank">What happens when it is blank, in words.</param>
    /// <param name="doc">What it is for.</param>
    /// <returns>The number, or null when blank.</returns>
    public int? WholeOrBlank(string key, int least, int most, string blank, string doc)
    {
        if (IsDescribing)
        {
            Describe(key, doc, new FieldShape.Whole(least, most), "", blank);
            return null;
        }

        if (Take(key) is null)
        {
            _session.Defaults.Add(new DefaultUsed(At(key), blank, doc));
            return null;
        }

        return Whole(key, least, most, null, doc);
    }

    /// <summary>Reads true or false.</summary>
    /// <param name="key">Key.</param>
    /// <param name="default">What holds when it is left out.</param>
    /// <param name="doc">What it is for.</param>
    /// <returns>The flag.</returns>
    public bool Flag(string key, bool @default, string doc)
    {
        string word = @default ? "true" : "false";
        if (IsDescribing)
        {
            Describe(key, doc, new FieldShape.Flag(), word, "");
            return @default;
        }

        switch (Take(key))
        {
            case null:
                Absent(key, word, doc, "");
                return @default;
            case FlagNode flag:
                return flag.IsTrue;
            case Node other:
                WrongType(key, other, "true or false", "true or false, without quotes");
                return @default;
        }
    }

    private string Absent(string key, string? @default, string doc, string right)
    {
        if (@default is null)
        {
            Missing(key, right);
            return "";
        }

        _session.Defaults.Add(new DefaultUsed(At(key), @default.Length == 0 ? "blank" : @default, doc));
        return @default;
    }

    private static string Advice(string typed, IReadOnlyList<string> allowed)
    {
        string? nearest = NearestWord.Find(typed, allowed);
        string all = string.Join(", ", allowed.Take(16)) + (allowed.Count > 16 ? ", …" : "");
        return nearest is null ? all : $"did you mean \"{nearest}\"? ({all})";
    }

    // These would turn round what is read on paper, or cannot be written into a file at all. Joiners and plain direction marks are part of some scripts.
    private static string? HiddenCharacter(string text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            if (char.IsHighSurrogate(c) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
            {
                i++;
            }
            else if (char.IsSurrogate(c))
            {
                return string.Create(CultureInfo.InvariantCulture, $"half of a character (U+{(int)c:X4})");
            }
            else if (c is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069'))
            {
                return string.Create(CultureInfo.InvariantCulture, $"a mark that turns the reading direction (U+{(int)c:X4})");
            }
            else if (c is '\u2028' or '\u2029' or '\uFEFF' or (>= '\uFFF9' and <= '\uFFFB') or '\uFFFE' or '\uFFFF')
            {
                return string.Create(CultureInfo.InvariantCulture, $"a character that is not seen (U+{(int)c:X4})");
            }
        }

        return null;
    }

    private static string Loose(string word) => word.Replace(" ", "", StringComparison.Ordinal).Replace("-", "", StringComparison.Ordinal).Replace("_", "", StringComparison.Ordinal).ToLowerInvariant();

    private static string WordOf<T>(T value, ReadOnlySpan<(T Value, string Word)> words)
        where T : struct, Enum
    {
        foreach ((T named, string word) in words)
        {
            if (named.Equals(value))
            {
                return word;
            }
        }

        StringBuilder kebab = new();
        foreach (char c in value.ToString())
        {
            kebab.Append(kebab.Length > 0 && (char.IsUpper(c) || (char.IsDigit(c) && !char.IsDigit(kebab[^1]))) ? "-" : "").Append(char.ToLowerInvariant(c));
        }

        return kebab.ToString();
    }
}
