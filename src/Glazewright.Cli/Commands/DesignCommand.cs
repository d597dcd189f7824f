using System.CommandLine;
using Glazewright.Cli.Running;

namespace Glazewright.Cli.Commands;

/// <summary>Designs a job and writes its package.</summary>
internal static class DesignCommand
{
    public static Command Make(Desk desk)
    {
        Argument<string> job = CommonOptions.Job();
        Option<string> to = new("--out") { Description = "Folder for the package; it is made, or an earlier package in it is replaced.", HelpName = "DIR", Required = true };
        to.Validators.Add(result => CommonOptions.NotEmpty(result, "--out"));
        Option<string?> weather = CommonOptions.Weather();
        Option<string[]> programs = CommonOptions.Programs();
        Option<string?> date = CommonOptions.Date();
        Option<string?> reader = CommonOptions.For();
        Option<int> threads = CommonOptions.Threads();
        Option<bool> json = CommonOptions.Json();
        Command command = new("design", "Designs a job and writes its package: answers, drawings, lists, price, every figure with its working.\n\nExample: glazewright design yard.json --out yard-package") { job, to, weather, programs, date, reader, threads, json };
        command.SetAction(parsed => DesignRun.Run(
            desk,
            new DesignWish(parsed.GetValue(job)!, parsed.GetValue(to)!, parsed.GetValue(weather), parsed.GetValue(date), parsed.GetValue(threads), parsed.GetValue(json), parsed.GetValue(programs)!, CommonOptions.Reader(parsed.GetValue(reader)))));
        return command;
    }
}
