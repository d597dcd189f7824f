using Glazewright.Design.Contracts;

namespace Glazewright.Web.Fields;

/// <summary>A fault as it stands at its field in a page, where nobody writes JSON: a missing key is an empty field there, and a line of the document is its value.</summary>
public static class FaultWords
{
    /// <summary>What is wrong, as a sentence.</summary>
    /// <param name="fault">The fault.</param>
    public static string Wrong(Fault fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        return IsEmptyField(fault) ? "This is not given yet." : fault.Wrong.EndsWith('?') ? fault.Wrong : fault.Wrong + ".";
    }

    /// <summary>What would be right.</summary>
    /// <param name="fault">The fault.</param>
    public static string Right(Fault fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        string line = $"\"{Key(fault)}\": ";
        return IsEmptyField(fault) && fault.Right.StartsWith(line, StringComparison.Ordinal) ? Value(fault.Right[line.Length..]) : fault.Right;
    }

    private static bool IsEmptyField(Fault fault) => fault.Kind == FaultKind.Missing && fault.Wrong == $"\"{Key(fault)}\" is missing";

    private static string Key(Fault fault) => fault.Pointer[(fault.Pointer.LastIndexOf('/') + 1)..];

    // "12'6\"" in the quotes of JSON is 12'6"; a range of two such texts stays as it is.
    private static string Value(string json)
    {
        string inner = json.Length > 1 && json[0] == '"' && json[^1] == '"' ? json[1..^1] : json;
        string plain = inner.Replace("\\\"", "", StringComparison.Ordinal);
        return plain.Contains('"', StringComparison.Ordinal) ? json : inner.Replace("\\\"", "\"", StringComparison.Ordinal).Replace("\\\\", "\\", StringComparison.Ordinal);
    }
}
