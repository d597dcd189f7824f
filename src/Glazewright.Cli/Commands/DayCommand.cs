using System.CommandLine;
using Glazewright.Cli.Running;

namespace Glazewright.Cli.Commands;

/// <summary>Shows one day of a house's year, minute by minute.</summary>
internal static class DayCommand
{
    public static Command Make(Desk desk)
    {
        Argument<string> job = new("JOB") { Description = "The job document." };
        job.Validators.Add(r => CommonOptions.NotEmpty(r, "JOB"));
        Option<string?> house = new("--house") { Description = "Id of the house; left out, the first.", HelpName = "ID" };
        Option<string> day = new("--day") { Description = "The day as 07-14, or coldest or hottest: the day of the year's extreme.", HelpName = "DAY", DefaultValueFactory = _ => "coldest" };
        Option<string?> to = new("--out") { Description = "Folder for the day as a report, its minutes and its commands; left out, nothing is written.", HelpName = "DIR" };
        Option<bool> along = new("--along") { Description = "Look closely too: cells along the house, steps of 5 seconds." };
        Option<string?> weather = CommonOptions.Weather();
        Option<string[]> programs = CommonOptions.Programs();
        Option<bool> json = CommonOptions.Json();
        Command command = new("day", "Runs one day of a house's year again: what the air did, what each piece of equipment was told, and why.\n\nExample: glazewright day yard.json --house A --day coldest --out cold-day") { job, house, day, to, along, weather, programs, json };
        command.SetAction(parsed => DayRun.Run(
            desk,
            new DayWish(
                parsed.GetValue(job)!, parsed.GetValue(house), parsed.GetValue(day)!, parsed.GetValue(to), parsed.GetValue(weather), parsed.GetValue(json),
                parsed.GetValue(programs)!, parsed.GetValue(along))));
        return command;
    }
}
