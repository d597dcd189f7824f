using System.CommandLine;
using Glazewright.Cli.Running;

namespace Glazewright.Cli.Commands;

/// <summary>Designs the demo job that comes with the program.</summary>
internal static class DemoCommand
{
    private const string Job = "two-ridge-herb-yard.json";

    public static Command Make(Desk desk)
    {
        Option<string> to = new("--out") { Description = "Folder for the package.", HelpName = "DIR", DefaultValueFactory = _ => "out" };
        to.Validators.Add(result => CommonOptions.NotEmpty(result, "--out"));
        Option<string?> date = CommonOptions.Date();
        Option<string?> reader = CommonOptions.For();
        Option<int> threads = CommonOptions.Threads();
        Option<bool> json = CommonOptions.Json();
        Command command = new("demo", "Designs the demo job, a herb grower's two houses and head house at 42 N, and writes its package.\n\nExample: glazewright demo --out herb-yard") { to, date, reader, threads, json };
        command.SetAction(parsed => DesignRun.Run(
            desk,
            new DesignWish(Path.Combine(desk.ProgramFolder, "examples", Job), parsed.GetValue(to)!, null, parsed.GetValue(date), parsed.GetValue(threads), parsed.GetValue(json), [], CommonOptions.Reader(parsed.GetValue(reader)))));
        return command;
    }
}
