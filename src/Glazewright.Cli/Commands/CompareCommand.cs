using System.CommandLine;
using Glazewright.Cli.Running;

namespace Glazewright.Cli.Commands;

/// <summary>Runs the same year with an edited control program, or with another plant or house, and says what changes.</summary>
internal static class CompareCommand
{
    public static Command Make(Desk desk)
    {
        Argument<string> job = new("JOB") { Description = "The job document." };
        job.Validators.Add(r => CommonOptions.NotEmpty(r, "JOB"));
        Argument<string[]> others = new("OTHER") { Description = "Another job document with the same year and house; or edited control programs (control/program-….json of a package), one for each house to compare. Left out with --edit.", Arity = ArgumentArity.ZeroOrMore };
        others.Validators.Add(r => CommonOptions.NotEmpty(r, "OTHER"));
        Option<string[]> edits = new("--edit") { Description = "A field that is otherwise in the second job, as /houses/0/equipment/heaterFire=modulating; may be given again. Alone, the second job is the first with it.", HelpName = "FIELD=VALUE", DefaultValueFactory = _ => [] };
        edits.Validators.Add(r =>
        {
            foreach (string typed in r.Tokens.Select(t => t.Value).Where(t => t.Length == 0 || t[0] != '/' || t.IndexOf('=', StringComparison.Ordinal) < 2))
            {
                r.AddError($"--edit takes a field and its value, as in /houses/0/equipment/heaterFire=modulating; '{(typed.Length > 40 ? typed[..40] + "…" : typed)}' is none.");
            }
        });
        Option<string?> house = new("--house") { Description = "Id of the one house to compare; left out, all.", HelpName = "ID" };
        Option<string?> to = new("--out") { Description = "Folder for the comparison as a report, a table and carpets; left out, nothing is written.", HelpName = "DIR" };
        Option<string?> weather = CommonOptions.Weather();
        Option<bool> json = CommonOptions.Json();
        Command command = new("compare", "Runs a house's year twice and says what changes: hours held, energy, water, cost, motor starts. The second time with an edited control program, with another job's plant or house, or with the job edited.\n\nExample: glazewright compare yard.json yard-two.json --out compared")
        {
            job, others, edits, house, to, weather, json,
        };
        command.SetAction(parsed => CompareRun.Run(
            desk,
            new CompareWish(
                parsed.GetValue(job)!, parsed.GetValue(others)!, parsed.GetValue(edits)!, parsed.GetValue(house), parsed.GetValue(to), parsed.GetValue(weather), parsed.GetValue(json))));
        return command;
    }
}
