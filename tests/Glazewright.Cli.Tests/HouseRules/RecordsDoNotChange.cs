using System.Reflection;

namespace Glazewright.Cli.Tests.HouseRules;

/// <summary>Stage results are values: nothing public in Design can be set after it was made, and no list in a record is a list that compares by reference.</summary>
public class RecordsDoNotChange
{
    private static readonly Type[] Records = [.. Rooms.Load("Glazewright.Design").GetExportedTypes()
        .Where(t => t.GetMethod("<Clone>$") is not null)];

    [Fact]
    public void Nothing_is_settable_after_construction()
    {
        string[] settable = [.. Records
            .SelectMany(t => t.GetProperties())
            .Where(p => p.SetMethod is { IsPublic: true } set && !set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(System.Runtime.CompilerServices.IsExternalInit)))
            .Select(p => $"{p.DeclaringType}.{p.Name}")];
        Assert.Empty(settable);
    }

    [Fact]
    public void Stage_records_hold_no_list_that_compares_by_reference()
    {
        string[] stages = ["Brief", "Form", "Body", "GainTables", "Duty", "Plant", "Layout", "LightMaps", "Program", "Year", "Frame", "Takeoff", "Cuts", "Price"];
        string[] lists = [.. Records
            .Where(t => stages.Any(s => t.Namespace == "Glazewright.Design." + s))
            .SelectMany(t => t.GetProperties())
            .Where(p => p.PropertyType.IsArray
                || (p.PropertyType.IsGenericType && p.PropertyType.Name.StartsWith("List`", StringComparison.Ordinal))
                || p.PropertyType.Name.StartsWith("IReadOnlyList`", StringComparison.Ordinal)
                || p.PropertyType.Name.StartsWith("ImmutableArray`", StringComparison.Ordinal)
                || p.PropertyType.Name.StartsWith("Dictionary`", StringComparison.Ordinal))
            .Select(p => $"{p.DeclaringType}.{p.Name}")];
        Assert.Empty(lists);
    }
}
