using System.CommandLine;

namespace Glazewright.Cli.Commands;

/// <summary>Options that several commands have.</summary>
internal static class CommonOptions
{
    public static Option<bool> Json() => new("--json") { Description = "Print JSON instead of text." };

    public static Option<string?> Weather() => new("--weather") { Description = "Weather file (EPW or TMY3, plain or .gz) in place of the job's.", HelpName = "FILE" };
}
