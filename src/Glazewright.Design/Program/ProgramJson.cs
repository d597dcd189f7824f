using System.Reflection;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Program;

/// <summary>What came of reading a program file.</summary>
public abstract record ProgramReading
{
    private ProgramReading()
    {
    }

    /// <summary>Read, and it compiles.</summary>
    /// <param name="Document">The program.</param>
    public sealed record Read(ProgramDocument Document) : ProgramReading;

    /// <summary>Every fault, of form and of sense.</summary>
    /// <param name="Faults">The faults.</param>
    public sealed record Refused(EqList<Fault> Faults) : ProgramReading;
}

/// <summary>The program as a JSON file the technician edits. Numbers are SI with the unit in the key (<c>onAtK</c>, <c>minOnS</c>).</summary>
public static class ProgramJson
{
    /// <summary>Version of the form, under the key <c>glazewrightProgram</c>.</summary>
    public const int FormVersion = 1;

    internal const string VersionKey = "glazewrightProgram";

    /// <summary>Writes a program; its report is left out.</summary>
    /// <param name="document">The program.</param>
    /// <returns>Indented JSON, LF line ends, the same text for equal programs.</returns>
    public static string Write(ProgramDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteNumber(VersionKey, FormVersion);
            Fields(json, document);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static void Fields(Utf8JsonWriter json, object record)
    {
        foreach (ParameterInfo parameter in ProgramShape.Shown(record.GetType()))
        {
            PropertyInfo property = record.GetType().GetProperty(parameter.Name!)!;
            object? value = property.GetValue(record);
            if (value is null && property.IsDefined(typeof(LeftOutWhenNoneAttribute)))
            {
                continue;
            }

            json.WritePropertyName(ProgramShape.Key(parameter));
            Value(json, value, Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType);
        }
    }

    private static void Value(Utf8JsonWriter json, object? value, Type declared)
    {
        switch (value)
        {
            case null:
                json.WriteNullValue();
                break;
            case string text:
                json.WriteStringValue(text);
                break;
            case bool yes:
                json.WriteBooleanValue(yes);
                break;
            case int whole:
                json.WriteNumberValue(whole);
                break;
            case double number:
                json.WriteNumberValue(number);
                break;
            case Enum word:
                json.WriteStringValue(ProgramShape.Kebab(word.ToString()));
                break;
            case System.Collections.IEnumerable list:
                json.WriteStartArray();
                foreach (object? item in list)
                {
                    Value(json, item, ProgramShape.ElementOf(declared)!);
                }

                json.WriteEndArray();
                break;
            default:
                json.WriteStartObject();
                if (declared.IsAbstract)
                {
                    json.WriteString("kind", ProgramShape.Kebab(value.GetType().Name));
                }

                Fields(json, value);
                json.WriteEndObject();
                break;
        }
    }

    /// <summary>Reads a program file: comments and trailing commas are accepted; unknown keys, wrong types and everything the compiler finds are faults.</summary>
    /// <param name="text">The file.</param>
    /// <returns>The program, or all faults.</returns>
    public static ProgramReading Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        JsonDocument tree;
        try
        {
            tree = JsonDocument.Parse(text, new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true, MaxDepth = 32 });
        }
        catch (JsonException slip)
        {
            return new ProgramReading.Refused(
            [
                new Fault(
                    FaultKind.NotJson, string.Empty, string.Empty, (int)(slip.LineNumber ?? 0) + 1, (int)(slip.BytePositionInLine ?? 0) + 1,
                    "this is not a JSON document", "a JSON object that starts with \"glazewrightProgram\": 1"),
            ]);
        }

        using (tree)
        {
            var reader = new ProgramFieldReader();
            object? document = reader.Root(tree.RootElement);
            if (reader.Faults.Count == 0 && document is ProgramDocument program)
            {
                EqList<Fault> sense = ProgramChecks.Of(program);
                return sense.Count == 0 ? new ProgramReading.Read(program) : new ProgramReading.Refused(sense);
            }

            return new ProgramReading.Refused(reader.Faults.ToEqList());
        }
    }
}
