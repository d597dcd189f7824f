using System.Globalization;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Document;

namespace Glazewright.Web.Fields;

/// <summary>The job document's fields by their JSON pointer: what a page shows of a field comes from the reader that reads it.</summary>
public static class FieldMap
{
    private static readonly FieldDescription s_root = new("", "The job.", JobReader.Describe(), "", "");

    /// <summary>The field at a pointer.</summary>
    /// <param name="pointer">JSON pointer, as <c>/houses/0/width</c>.</param>
    /// <returns>Its description; an item of a list has an empty key. Null where the document knows no such field.</returns>
    public static FieldDescription? Find(string pointer)
    {
        FieldDescription? at = s_root;
        foreach (string key in JsonPointer.Keys(pointer) ?? [])
        {
            at = at is null ? null : Below(at.Shape, key);
        }

        return at;
    }

    /// <summary>Id of a field's element in a page.</summary>
    /// <param name="pointer">JSON pointer.</param>
    public static string ElementId(string pointer)
    {
        ArgumentNullException.ThrowIfNull(pointer);
        return "field" + string.Concat(pointer.Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-'));
    }

    /// <summary>A key as words: <c>leftEave</c> is "Left eave".</summary>
    /// <param name="key">The key.</param>
    public static string Words(string key)
    {
        string phrase = Phrase(key);
        return phrase.Length == 0 ? "" : char.ToUpperInvariant(phrase[0]) + phrase[1..];
    }

    // As within a sentence; what the trade writes in capitals stays so.
    private static string Phrase(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        return key switch
        {
            "co2" => "CO₂",
            "vpd" => "VPD",
            "sizeX" => "size along the ridges",
            "sizeY" => "size across the ridges",
            "x" => "along the ridges",
            "y" => "across the ridges",
            _ => string.Concat(key.Select((c, i) => char.IsAsciiLetterUpper(c) ? " " + char.ToLowerInvariant(c)
                : char.IsAsciiDigit(c) && i > 0 && char.IsAsciiLetter(key[i - 1]) ? " " + c
                : c == '-' ? " " : c.ToString())),
        };
    }

    /// <summary>Where a pointer leads, in words: "House A, roof, left eave".</summary>
    /// <param name="pointer">JSON pointer.</param>
    /// <param name="document">The job, for the ids of things in lists.</param>
    public static string Path(string pointer, JobDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        List<string> words = [];
        string at = "";
        foreach (string key in JsonPointer.Keys(pointer) ?? [])
        {
            at = JsonPointer.Append(at, key);
            if (int.TryParse(key, NumberStyles.None, CultureInfo.InvariantCulture, out int index))
            {
                string id = document.Find(at + "/id") is TextNode { Text.Length: > 0 and < 40 } typed ? typed.Text : (index + 1).ToString(CultureInfo.InvariantCulture);
                words[^1] = Singular(words[^1]) + " " + id;
            }
            else
            {
                words.Add(words.Count == 0 ? Words(key) : Phrase(key));
            }
        }

        return string.Join(", ", words);
    }

    private static string Singular(string word) => word.EndsWith("ches", StringComparison.Ordinal) ? word[..^2] : word.EndsWith('s') ? word[..^1] : word;

    private static FieldDescription? Below(FieldShape shape, string key) => shape switch
    {
        FieldShape.Group group => group.Fields.FirstOrDefault(f => f.Key == key),
        FieldShape.Several several when int.TryParse(key, NumberStyles.None, CultureInfo.InvariantCulture, out _) || key == "-" => new FieldDescription("", "", several.Item, "", ""),
        FieldShape.Either either => Below(either.First, key) ?? Below(either.Second, key),
        _ => null,
    };
}
