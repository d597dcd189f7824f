using System.Globalization;
using System.Text;
using Glazewright.Design.Contracts;
using Glazewright.Design.Quantities;

namespace Glazewright.Design.Document;

/// <summary>Writes field descriptions as JSON Schema, draft 2020-12 (json-schema.org; from memory), so that an editor can offer keys and words.</summary>
public static class SchemaWriter
{
    /// <summary>Writes a schema.</summary>
    /// <param name="root">The fields.</param>
    /// <param name="title">Its title.</param>
    /// <returns>JSON, LF line ends.</returns>
    public static string Write(FieldShape.Group root, string title)
    {
        ArgumentNullException.ThrowIfNull(root);
        StringBuilder json = new();
        json.Append("{\n  \"$schema\": \"https://json-schema.org/draft/2020-12/schema\",\n  \"title\": ").Append(JsonText.Quote(title)).Append(",\n");
        Body(json, root, mayBeNull: false, 1);
        json.Append("\n}\n");
        return json.ToString();
    }

    private static void Field(StringBuilder json, FieldDescription field, int depth)
    {
        Indent(json, depth).Append(JsonText.Quote(field.Key)).Append(": {\n");
        Indent(json, depth + 1).Append("\"description\": ").Append(JsonText.Quote(Description(field))).Append(",\n");
        if (field.Default.Length > 0)
        {
            Indent(json, depth + 1).Append("\"default\": ").Append(field.Default).Append(",\n");
        }

        Body(json, field.Shape, !field.IsRequired, depth + 1);
        json.Append('\n');
        Indent(json, depth).Append('}');
    }

    private static string Description(FieldDescription field)
    {
        string range = field.Shape is FieldShape.Measure m ? $" {Capital(KindWords.Of(m.Kind).Name)}, {m.Least} to {m.Most}." : "";
        string left = field.Blank.Length > 0 ? $" Left out: {field.Blank}." : "";
        return field.Doc + range + left;
    }

    private static void Body(StringBuilder json, FieldShape shape, bool mayBeNull, int depth)
    {
        switch (shape)
        {
            case FieldShape.Measure measure:
                Types(json, measure.Kind == QuantityKind.Ratio ? ["string", "number"] : ["string"], mayBeNull, depth).Append(",\n");
                Indent(json, depth).Append("\"examples\": [").AppendJoin(", ", KindWords.Of(measure.Kind).Examples.Select(JsonText.Quote)).Append(']');
                break;
            case FieldShape.Choice choice:
                Indent(json, depth).Append("\"enum\": [").AppendJoin(", ", choice.Words.Select(w => JsonText.Quote(w.Word))).Append(mayBeNull ? ", null]" : "]");
                break;
            case FieldShape.Prose words:
                Types(json, ["string"], mayBeNull, depth).Append(",\n");
                Indent(json, depth).Append("\"maxLength\": ").Append(Text(words.Longest));
                if (words.Pattern.Length > 0)
                {
                    Indent(json.Append(",\n"), depth).Append("\"pattern\": ").Append(JsonText.Quote(words.Pattern));
                }

                if (words.Example.Length > 0)
                {
                    Indent(json.Append(",\n"), depth).Append("\"examples\": [").Append(JsonText.Quote(words.Example)).Append(']');
                }

                break;
            case FieldShape.Whole whole:
                Types(json, ["integer"], mayBeNull, depth).Append(",\n");
                Indent(json, depth).Append("\"minimum\": ").Append(Text(whole.Least)).Append(",\n");
                Indent(json, depth).Append("\"maximum\": ").Append(Text(whole.Most));
                break;
            case FieldShape.Flag:
                Types(json, ["boolean"], mayBeNull, depth);
                break;
            case FieldShape.Group group:
                Group(json, group, mayBeNull, depth);
                break;
            case FieldShape.Several several:
                Types(json, ["array"], mayBeNull, depth).Append(",\n");
                Indent(json, depth).Append("\"minItems\": ").Append(Text(several.Fewest)).Append(",\n");
                Indent(json, depth).Append("\"maxItems\": ").Append(Text(several.Most)).Append(",\n");
                Indent(json, depth).Append("\"items\": {\n");
                Body(json, several.Item, mayBeNull: false, depth + 1);
                Indent(json.Append('\n'), depth).Append('}');
                break;
            case FieldShape.Either either:
                Indent(json, depth).Append("\"anyOf\": [\n");
                Branch(json, either.First, mayBeNull, depth + 1).Append(",\n");
                Branch(json, either.Second, mayBeNull: false, depth + 1).Append('\n');
                Indent(json, depth).Append(']');
                break;
        }
    }

    private static StringBuilder Branch(StringBuilder json, FieldShape shape, bool mayBeNull, int depth)
    {
        Indent(json, depth).Append("{\n");
        Body(json, shape, mayBeNull, depth + 1);
        return Indent(json.Append('\n'), depth).Append('}');
    }

    private static void Group(StringBuilder json, FieldShape.Group group, bool mayBeNull, int depth)
    {
        Types(json, ["object"], mayBeNull, depth).Append(",\n");
        Indent(json, depth).Append("\"additionalProperties\": false");
        EqList<FieldDescription> required = group.Fields.Where(f => f.IsRequired).ToEqList();
        if (required.Count > 0)
        {
            Indent(json.Append(",\n"), depth).Append("\"required\": [").AppendJoin(", ", required.Select(f => JsonText.Quote(f.Key))).Append(']');
        }

        Indent(json.Append(",\n"), depth).Append("\"properties\": {\n");
        for (int i = 0; i < group.Fields.Count; i++)
        {
            Field(json, group.Fields[i], depth + 1);
            json.Append(i + 1 < group.Fields.Count ? ",\n" : "\n");
        }

        Indent(json, depth).Append('}');
    }

    private static StringBuilder Types(StringBuilder json, string[] types, bool mayBeNull, int depth)
    {
        string[] all = mayBeNull ? [.. types, "null"] : types;
        Indent(json, depth).Append("\"type\": ");
        return all.Length == 1 ? json.Append(JsonText.Quote(all[0])) : json.Append('[').AppendJoin(", ", all.Select(JsonText.Quote)).Append(']');
    }

    private static StringBuilder Indent(StringBuilder json, int depth) => json.Append(' ', 2 * depth);

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
