using System.Text;

namespace Glazewright.Science.Weather;

/// <summary>One object of a building-simulation input text: its class, then fields.</summary>
/// <param name="Line">1-based line of its class.</param>
/// <param name="Fields">Class first; each with its line.</param>
internal sealed record InputObject(int Line, IReadOnlyList<(string Text, int Line)> Fields)
{
    public string Class => Fields[0].Text;

    public string At(int field) => field < Fields.Count ? Fields[field].Text : "";

    public int LineOf(int field) => field < Fields.Count ? Fields[field].Line : Fields[^1].Line;
}

/// <summary>
/// The open input text of whole-building simulation: fields parted by commas, an object ended by a semicolon, comments from an exclamation mark to the
/// end of the line. Layout: read in public design-day files.
/// </summary>
internal static class InputObjects
{
    /// <summary>Takes a text apart.</summary>
    /// <param name="text">Plain text with line feeds.</param>
    /// <param name="comments">Receives the comments with their lines.</param>
    /// <param name="unended">Receives an object that no semicolon ends; null when all end.</param>
    /// <returns>The objects in order.</returns>
    public static IReadOnlyList<InputObject> Of(ReadOnlySpan<byte> text, List<string> comments, out InputObject? unended)
    {
        List<InputObject> objects = [];
        List<(string, int)> fields = [];
        StringBuilder field = new();
        int fieldLine = 0;
        var lines = new TextLines(text);
        while (lines.TryNext(out ReadOnlySpan<byte> bytes))
        {
            string line = PlainText.Line(bytes);
            int comment = line.IndexOf('!', StringComparison.Ordinal);
            if (comment >= 0)
            {
                comments.Add(line[(comment + 1)..].Trim());
                line = line[..comment];
            }

            foreach (char c in line)
            {
                if (c is ',' or ';')
                {
                    fields.Add((field.ToString().Trim(), fieldLine == 0 ? lines.Number : fieldLine));
                    field.Clear();
                    fieldLine = 0;
                    if (c == ';')
                    {
                        objects.Add(new InputObject(fields[0].Item2, fields));
                        fields = [];
                    }
                }
                else
                {
                    fieldLine = fieldLine == 0 && !char.IsWhiteSpace(c) ? lines.Number : fieldLine;
                    field.Append(c);
                }
            }

            field.Append(' ');
        }

        if (field.ToString().Trim() is { Length: > 0 } rest)
        {
            fields.Add((rest, fieldLine));
        }

        unended = fields.Count > 0 ? new InputObject(fields[0].Item2, fields) : null;
        return objects;
    }
}
