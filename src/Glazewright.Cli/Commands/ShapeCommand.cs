using System.CommandLine;
using Glazewright.Cli.Running;

namespace Glazewright.Cli.Commands;

/// <summary>Looks for the shape of a house.</summary>
internal static class ShapeCommand
{
    public static Command Make(Desk desk)
    {
        Argument<string> job = new("JOB") { Description = "The job document; a house's shapeWishes say what its shape is to do." };
        Option<string?> house = new("--house") { Description = "Id of the house; left out, the first.", HelpName = "ID" };
        Option<string?> to = new("--out") { Description = "Folder for the trade-off table, its picture, sections and data; left out, nothing is written.", HelpName = "DIR" };
        Option<string?> weather = CommonOptions.Weather();
        Option<int> threads = CommonOptions.Threads();
        Option<bool> json = CommonOptions.Json();
        Command command = new("shape", "Looks for the ridge, pitches, eaves and clear faces that meet a house's wishes, and says what they trade.\n\nExample: glazewright shape yard.json --house A --out shapes") { job, house, to, weather, threads, json };
        command.SetAction(parsed => ShapeRun.Run(
            desk,
            new ShapeRunWish(
                parsed.GetValue(job)!, parsed.GetValue(house), parsed.GetValue(to), parsed.GetValue(weather), parsed.GetValue(threads), parsed.GetValue(json))));
        return command;
    }
}
