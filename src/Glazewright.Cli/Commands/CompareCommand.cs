using System.CommandLine;
using Glazewright.Cli.Running;

namespace Glazewright.Cli.Commands;

/// <summary>Runs the same year with an edited control program and says what changes.</summary>
internal static class CompareCommand
{
    public static Command Make(Desk desk)
    {
        Argument<string> job = new("JOB") { Description = "The job document." };
        job.Validators.Add(r => CommonOptions.NotEmpty(r, "JOB"));
        Argument<string[]> programs = new("PROGRAM") { Description = "An edited control program (control/program-….json of a package), one for each house to compare.", Arity = ArgumentArity.OneOrMore };
        Option<string?> weather = CommonOptions.Weather();
        Option<bool> json = CommonOptions.Json();
        Command command = new("compare", "Runs a house's year with the program written for it and with an edited one, and says what changes: hours held, energy, water, cost, motor starts.\n\nExample: glazewright compare yard.json program-A.json") { job, programs, weather, json };
        command.SetAction(parsed => CompareRun.Run(
            desk, new CompareWish(parsed.GetValue(job)!, parsed.GetValue(programs)!, parsed.GetValue(weather), parsed.GetValue(json))));
        return command;
    }
}
