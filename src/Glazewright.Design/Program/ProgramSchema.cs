using System.Reflection;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Glazewright.Design.Program;

/// <summary>JSON Schema (draft 2020-12) of the program file, written from the records themselves, so that it cannot fall behind them.</summary>
public static class ProgramSchema
{
    /// <summary>Writes the schema.</summary>
    /// <returns>Indented JSON, LF line ends.</returns>
    public static string Write()
    {
        var waiting = new Queue<Type>([typeof(ProgramDocument)]);
        var done = new List<Type>();
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
            json.WriteString("title", "Control program of one house");
            json.WriteString("$ref", "#/$defs/" + Name(typeof(ProgramDocument)));
            json.WriteStartObject("$defs");
            while (waiting.TryDequeue(out Type? type))
            {
                if (!done.Contains(type))
                {
                    done.Add(type);
                    json.WriteStartObject(Name(type));
                    Define(json, type, waiting);
                    json.WriteEndObject();
                }
            }

            json.WriteEndObject();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static string Name(Type type) => type.DeclaringType is { } outer ? Name(outer) + "-" + ProgramShape.Kebab(type.Name) : ProgramShape.Kebab(type.Name);

    private static void Define(Utf8JsonWriter json, Type type, Queue<Type> waiting)
    {
        if (type.IsEnum)
        {
            json.WriteStartArray("enum");
            foreach (string word in Enum.GetNames(type))
            {
                json.WriteStringValue(ProgramShape.Kebab(word));
            }

            json.WriteEndArray();
            return;
        }

        if (type.IsAbstract)
        {
            json.WriteStartArray("oneOf");
            foreach (Type one in ProgramShape.Cases(type))
            {
                waiting.Enqueue(one);
                json.WriteStartObject();
                json.WriteString("$ref", "#/$defs/" + Name(one));
                json.WriteEndObject();
            }

            json.WriteEndArray();
            return;
        }

        bool root = type == typeof(ProgramDocument);
        bool isCase = type.BaseType is { IsAbstract: true } && type.DeclaringType == type.BaseType;
        json.WriteString("type", "object");
        json.WriteBoolean("additionalProperties", false);
        json.WriteStartObject("properties");
        if (root)
        {
            Constant(json, ProgramJson.VersionKey, ProgramJson.FormVersion);
        }

        if (isCase)
        {
            json.WriteStartObject("kind");
            json.WriteString("const", ProgramShape.Kebab(type.Name));
            json.WriteEndObject();
        }

        foreach (ParameterInfo p in ProgramShape.Shown(type))
        {
            json.WriteStartObject(ProgramShape.Key(p));
            Field(json, p.ParameterType, ProgramShape.MayBeNull(p), waiting);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteStartArray("required");
        if (root)
        {
            json.WriteStringValue(ProgramJson.VersionKey);
        }

        if (isCase)
        {
            json.WriteStringValue("kind");
        }

        foreach (ParameterInfo p in ProgramShape.Shown(type).Where(p => !ProgramShape.MayBeNull(p)))
        {
            json.WriteStringValue(ProgramShape.Key(p));
        }

        json.WriteEndArray();
    }

    private static void Constant(Utf8JsonWriter json, string key, int value)
    {
        json.WriteStartObject(key);
        json.WriteNumber("const", value);
        json.WriteEndObject();
    }

    private static void Field(Utf8JsonWriter json, Type declared, bool mayBeNull, Queue<Type> waiting)
    {
        Type type = Nullable.GetUnderlyingType(declared) ?? declared;
        if (type == typeof(string) || type == typeof(bool) || type == typeof(int) || type == typeof(double))
        {
            Types(json, type == typeof(string) ? "string" : type == typeof(bool) ? "boolean" : type == typeof(int) ? "integer" : "number", mayBeNull);
        }
        else if (ProgramShape.ElementOf(type) is Type element)
        {
            Types(json, "array", mayBeNull);
            json.WriteStartObject("items");
            Field(json, element, false, waiting);
            json.WriteEndObject();
        }
        else if (mayBeNull)
        {
            waiting.Enqueue(type);
            json.WriteStartArray("anyOf");
            json.WriteStartObject();
            json.WriteString("$ref", "#/$defs/" + Name(type));
            json.WriteEndObject();
            json.WriteStartObject();
            json.WriteString("type", "null");
            json.WriteEndObject();
            json.WriteEndArray();
        }
        else
        {
            waiting.Enqueue(type);
            json.WriteString("$ref", "#/$defs/" + Name(type));
        }
    }

    private static void Types(Utf8JsonWriter json, string name, bool mayBeNull)
    {
        if (!mayBeNull)
        {
            json.WriteString("type", name);
            return;
        }

        json.WriteStartArray("type");
        json.WriteStringValue(name);
        json.WriteStringValue("null");
        json.WriteEndArray();
    }
}
