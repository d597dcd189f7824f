using System.Reflection;
using System.Text.Json;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Program;

/// <summary>From the JSON tree to records; a value that does not fit is a fault and reading goes on, so that all faults come at once.</summary>
internal sealed class ProgramFieldReader
{
    public List<Fault> Faults { get; } = [];

    public object? Root(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            Add(FaultKind.WrongType, string.Empty, $"the document is {Word(root.ValueKind)}", "an object");
            return null;
        }

        if (!root.TryGetProperty(ProgramJson.VersionKey, out JsonElement version) || version.ValueKind != JsonValueKind.Number || !version.TryGetInt32(out int number))
        {
            Add(FaultKind.Missing, "/" + ProgramJson.VersionKey, "the version of the form is not given", $"\"{ProgramJson.VersionKey}\": {ProgramJson.FormVersion}");
        }
        else if (number != ProgramJson.FormVersion)
        {
            Add(FaultKind.OutOfRange, "/" + ProgramJson.VersionKey, $"version {number} of the form is not known", $"{ProgramJson.FormVersion}");
        }

        return Record(typeof(ProgramDocument), root, string.Empty, ProgramJson.VersionKey);
    }

    private void Add(FaultKind kind, string pointer, string wrong, string right) => Faults.Add(new Fault(kind, pointer, string.Empty, 0, 0, wrong, right));

    private object? Record(Type type, JsonElement json, string pointer, string alsoKnown)
    {
        ParameterInfo[] parameters = ProgramShape.Parameters(type);
        var values = new object?[parameters.Length];
        var known = new List<string>(ProgramShape.Shown(type).Select(ProgramShape.Key));
        foreach (JsonProperty property in json.EnumerateObject())
        {
            if (!known.Contains(property.Name) && property.Name != alsoKnown)
            {
                Add(FaultKind.UnknownKey, pointer + "/" + property.Name, $"the key '{property.Name}' is not known here", "one of " + string.Join(", ", known));
            }
        }

        bool whole = true;
        for (int i = 0; i < parameters.Length; i++)
        {
            ParameterInfo p = parameters[i];
            if (p.ParameterType == typeof(StageReport))
            {
                values[i] = StageReport.Empty;
                continue;
            }

            string key = ProgramShape.Key(p);
            string at = pointer + "/" + key;
            bool given = json.TryGetProperty(key, out JsonElement value);
            if (!given || value.ValueKind == JsonValueKind.Null)
            {
                if (!ProgramShape.MayBeNull(p))
                {
                    Add(FaultKind.Missing, at, $"'{key}' is not given", Expected(p.ParameterType));
                    whole = false;
                }

                continue;
            }

            values[i] = Value(Nullable.GetUnderlyingType(p.ParameterType) ?? p.ParameterType, value, at);
            whole &= values[i] is not null;
        }

        return whole ? Activator.CreateInstance(type, values) : null;
    }

    private object? Value(Type type, JsonElement json, string pointer)
    {
        if (type == typeof(string) && json.ValueKind == JsonValueKind.String)
        {
            return json.GetString();
        }

        if (type == typeof(bool) && json.ValueKind is JsonValueKind.True or JsonValueKind.False)
        {
            return json.GetBoolean();
        }

        if (type == typeof(double) && json.ValueKind == JsonValueKind.Number)
        {
            return json.GetDouble();
        }

        if (type == typeof(int) && json.ValueKind == JsonValueKind.Number && json.TryGetInt32(out int whole))
        {
            return whole;
        }

        if (type.IsEnum && json.ValueKind == JsonValueKind.String)
        {
            foreach (object word in Enum.GetValues(type))
            {
                if (ProgramShape.Kebab(word.ToString()!) == json.GetString())
                {
                    return word;
                }
            }

            Add(FaultKind.UnknownChoice, pointer, $"'{json.GetString()}' is none of the choices", Expected(type));
            return null;
        }

        if (ProgramShape.ElementOf(type) is Type element && json.ValueKind == JsonValueKind.Array)
        {
            return List(element, json, pointer);
        }

        if (json.ValueKind == JsonValueKind.Object && !type.IsPrimitive && !type.IsEnum && type != typeof(string) && ProgramShape.ElementOf(type) is null)
        {
            return type.IsAbstract ? Case(type, json, pointer) : Record(type, json, pointer, string.Empty);
        }

        Add(FaultKind.WrongType, pointer, $"this is {Word(json.ValueKind)}", Expected(type));
        return null;
    }

    private object? List(Type element, JsonElement json, string pointer)
    {
        var items = Array.CreateInstance(element, json.GetArrayLength());
        bool whole = true;
        int i = 0;
        foreach (JsonElement item in json.EnumerateArray())
        {
            object? value = Value(element, item, FormattableString.Invariant($"{pointer}/{i}"));
            whole &= value is not null;
            if (value is not null)
            {
                items.SetValue(value, i);
            }

            i++;
        }

        return whole ? typeof(EqList).GetMethod(nameof(EqList.Own))!.MakeGenericMethod(element).Invoke(null, [items]) : null;
    }

    private object? Case(Type type, JsonElement json, string pointer)
    {
        IReadOnlyList<Type> cases = ProgramShape.Cases(type);
        string? kind = json.TryGetProperty("kind", out JsonElement word) && word.ValueKind == JsonValueKind.String ? word.GetString() : null;
        Type? chosen = cases.FirstOrDefault(c => ProgramShape.Kebab(c.Name) == kind);
        if (chosen is null)
        {
            Add(FaultKind.UnknownChoice, pointer + "/kind", kind is null ? "the kind is not given" : $"'{kind}' is none of the kinds", Expected(type));
            return null;
        }

        return Record(chosen, json, pointer, "kind");
    }

    private static string Expected(Type type)
    {
        type = Nullable.GetUnderlyingType(type) ?? type;
        return type == typeof(string) ? "a text"
            : type == typeof(bool) ? "true or false"
            : type == typeof(int) ? "a whole number"
            : type == typeof(double) ? "a number"
            : type.IsEnum ? "one of " + string.Join(", ", Enum.GetNames(type).Select(ProgramShape.Kebab))
            : ProgramShape.ElementOf(type) is not null ? "a list"
            : type.IsAbstract ? "an object with kind " + string.Join(" or ", ProgramShape.Cases(type).Select(c => ProgramShape.Kebab(c.Name)))
            : "an object with " + string.Join(", ", ProgramShape.Shown(type).Select(ProgramShape.Key));
    }

    private static string Word(JsonValueKind kind) => kind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => "a text",
        JsonValueKind.Number => "a number of another sort",
        JsonValueKind.Null => "null",
        _ => "true or false",
    };
}
