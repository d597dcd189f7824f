using System.Collections.Concurrent;
using System.Reflection;
using System.Text;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Program;

/// <summary>How the program's records look as JSON: constructor parameters in camel case, words in kebab case, closed cases by their <c>kind</c>. The report is not part of the file.</summary>
internal static class ProgramShape
{
    private static readonly ConcurrentDictionary<Type, ParameterInfo[]> s_parameters = new();
    private static readonly NullabilityInfoContext s_nullability = new();

    public static ParameterInfo[] Parameters(Type record) => s_parameters.GetOrAdd(record, t =>
        [.. t.GetConstructors().OrderByDescending(c => c.GetParameters().Length).First().GetParameters()]);

    public static IEnumerable<ParameterInfo> Shown(Type record) => Parameters(record).Where(p => p.ParameterType != typeof(StageReport));

    public static string Key(ParameterInfo parameter) => char.ToLowerInvariant(parameter.Name![0]) + parameter.Name[1..];

    public static bool MayBeNull(ParameterInfo parameter)
    {
        if (Nullable.GetUnderlyingType(parameter.ParameterType) is not null)
        {
            return true;
        }

        lock (s_nullability)
        {
            return s_nullability.Create(parameter).ReadState == NullabilityState.Nullable;
        }
    }

    public static Type? ElementOf(Type type) => type.IsGenericType && type.GetGenericTypeDefinition() == typeof(EqList<>) ? type.GetGenericArguments()[0] : null;

    /// <summary>The cases of a closed case, by their words; empty for a plain record.</summary>
    public static IReadOnlyList<Type> Cases(Type type) => type.IsAbstract ? [.. type.GetNestedTypes().Where(t => t.BaseType == type)] : [];

    /// <summary>RoofVent → roof-vent.</summary>
    public static string Kebab(string name)
    {
        var text = new StringBuilder();
        foreach (char c in name)
        {
            if (char.IsUpper(c) && text.Length > 0)
            {
                text.Append('-');
            }

            text.Append(char.ToLowerInvariant(c));
        }

        return text.ToString();
    }
}
