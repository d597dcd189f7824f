using System.Reflection;

namespace Glazewright.Cli.Tests.HouseRules;

/// <summary>The rooms of the code, bottom first.</summary>
public static class Rooms
{
    public static readonly string[] Names =
    [
        "Glazewright.Science", "Glazewright.Mechanics", "Glazewright.Cutting", "Glazewright.Design", "Glazewright.Papers", "Glazewright.Store", "glazewright", "glazewright-web",
    ];

    /// <summary>What each room may use.</summary>
    public static readonly IReadOnlyDictionary<string, string[]> MayUse = new Dictionary<string, string[]>
    {
        ["Glazewright.Science"] = [],
        ["Glazewright.Mechanics"] = [],
        ["Glazewright.Cutting"] = [],
        ["Glazewright.Design"] = ["Glazewright.Science", "Glazewright.Mechanics", "Glazewright.Cutting"],
        ["Glazewright.Papers"] = ["Glazewright.Science", "Glazewright.Mechanics", "Glazewright.Cutting", "Glazewright.Design"],
        ["Glazewright.Store"] = ["Glazewright.Science", "Glazewright.Mechanics", "Glazewright.Cutting", "Glazewright.Design"],
        ["glazewright"] = ["Glazewright.Science", "Glazewright.Mechanics", "Glazewright.Cutting", "Glazewright.Design", "Glazewright.Papers"],
        ["glazewright-web"] = ["Glazewright.Science", "Glazewright.Mechanics", "Glazewright.Cutting", "Glazewright.Design", "Glazewright.Papers", "Glazewright.Store"],
    };

    public static Assembly Load(string name) => Assembly.Load(new AssemblyName(name));
}
