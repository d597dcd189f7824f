using System.CommandLine;
using System.Globalization;
using Glazewright.Cli.Running;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;

namespace Glazewright.Cli.Commands;

/// <summary>Reads a job and says what is wrong with it, or which defaults it relies on.</summary>
internal static class JobCheckCommand
{
    public static Command Make(Desk desk)
    {
        Argument<string> job = CommonOptions.Job();
        Option<string?> weather = CommonOptions.Weather();
        Option<bool> json = CommonOptions.Json();
        Command command = new("job-check", "Says every fault of a job at once, and every default it relies on.\n\nExample: glazewright job-check yard.json") { job, weather, json };
        command.SetAction(parsed => Run(desk, parsed.GetValue(job)!, parsed.GetValue(weather), parsed.GetValue(json)));
        return command;
    }

    private static int Run(Desk desk, string path, string? weatherPath, bool json)
    {
        IReadOnlyList<Fault> faults = JobLoading.Load(path, weatherPath, null, out LoadedJob? loaded);
        if (json)
        {
            desk.Out.WriteLine($"{{\n  \"faults\": {FaultLines.Json(faults)},\n  \"defaults\": {FaultLines.Json(loaded?.Defaults ?? [])}\n}}");
            return faults.Count == 0 ? Exit.Done : Exit.Faults;
        }

        if (loaded is null)
        {
            FaultLines.Write(desk.Out, path, faults);
            return Exit.Faults;
        }

        desk.Out.WriteLine($"{loaded.Job.Name}: no faults.");
        desk.Out.WriteLine($"Weather: {loaded.Weather.Provenance.Label}");
        desk.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{loaded.Defaults.Count} defaults hold:"));
        int widest = Math.Min(46, loaded.Defaults.Select(d => d.Pointer.Length).DefaultIfEmpty(0).Max());
        foreach (DefaultUsed used in loaded.Defaults)
        {
            desk.Out.WriteLine($"  {used.Pointer.PadRight(widest)}  {used.Value}");
        }

        return Exit.Done;
    }
}
