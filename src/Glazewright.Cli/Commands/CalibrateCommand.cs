using System.CommandLine;
using Glazewright.Cli.Running;
using Glazewright.Design.Calibration.Reading;

namespace Glazewright.Cli.Commands;

/// <summary>Fits a built house to its log and scores it.</summary>
internal static class CalibrateCommand
{
    public static Command Make(Desk desk)
    {
        Argument<string[]> logs = new("LOG") { Description = "Logged data of the built house, CSV plain or .gz, in the order of the map's tables.", Arity = ArgumentArity.OneOrMore };
        logs.Validators.Add(r => CommonOptions.NotEmpty(r, "LOG"));
        Option<string> columns = new("--columns") { Description = "Column map: which column is what (glazewright columns-schema).", HelpName = "MAP", Required = true };
        columns.Validators.Add(r => CommonOptions.NotEmpty(r, "--columns"));
        Option<string?> job = new("--job") { Description = "Job document of the house; left out, the map gives the house by its sizes.", HelpName = "JOB" };
        job.Validators.Add(r => CommonOptions.NotEmpty(r, "--job"));
        Option<string?> house = new("--house") { Description = "Id of the house; left out, the first.", HelpName = "ID" };
        Option<string?> sizes = new("--sizes") { Description = "calibration.json of an earlier run: nothing is fitted, its sizes are scored on this log.", HelpName = "FILE" };
        sizes.Validators.Add(r => CommonOptions.NotEmpty(r, "--sizes"));
        Option<string?> to = new("--out") { Description = "Folder for report, data and pictures; left out, nothing is written.", HelpName = "DIR" };
        Option<string?> weather = CommonOptions.Weather();
        Option<int> threads = CommonOptions.Threads();
        Option<bool> json = CommonOptions.Json();
        Command command = new("calibrate", "Fits a built house to its log on some weeks, and scores it on the others: air, humidity, night loss, vents, pad and fan, each against its mark.\n\nExample: glazewright calibrate log.csv --columns log.columns.json --job yard.json --house A --out fitted")
        {
            logs, columns, job, house, sizes, to, weather, threads, json,
        };
        command.SetAction(parsed => CalibrateRun.Run(
            desk,
            new CalibrateWish(
                parsed.GetValue(logs)!, parsed.GetValue(columns)!, parsed.GetValue(job), parsed.GetValue(house), parsed.GetValue(sizes), parsed.GetValue(to), parsed.GetValue(weather),
                parsed.GetValue(threads), parsed.GetValue(json))));
        return command;
    }
}

/// <summary>Prints the column map's JSON Schema.</summary>
internal static class ColumnsSchemaCommand
{
    public static Command Make(Desk desk)
    {
        Option<bool> json = CommonOptions.Json();
        Command command = new("columns-schema", "Prints the JSON Schema of a column map for calibrate, with what each field is for, its range, examples and default.\n\nExample: glazewright columns-schema > columns.schema.json") { json };
        command.SetAction(_ =>
        {
            desk.Out.Write(ColumnMapReader.Schema());
            return Exit.Done;
        });
        return command;
    }
}
