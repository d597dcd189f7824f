using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Glazewright.Papers.Sets;

namespace Glazewright.Cli.Commands;

/// <summary>Options that several commands have.</summary>
internal static class CommonOptions
{
    /// <summary>A job document, as the command's argument.</summary>
    public static Argument<string> Job()
    {
        Argument<string> job = new("JOB") { Description = "The job document, a folder that holds one, or a packed job (.zip)." };
        job.Validators.Add(result => NotEmpty(result, "JOB"));
        return job;
    }

    /// <summary>An error when a path that was given is empty, as from an unset variable of a script.</summary>
    public static void NotEmpty(SymbolResult result, string name)
    {
        if (result.Tokens.Count > 0 && result.Tokens.Any(t => string.IsNullOrWhiteSpace(t.Value)))
        {
            result.AddError($"{name} is empty.");
        }
    }

    public static Option<bool> Json() => new("--json") { Description = "Print JSON instead of text." };

    public static Option<string?> Weather()
    {
        Option<string?> weather = new("--weather") { Description = "Weather file (EPW or TMY3, plain or .gz) in place of the job's.", HelpName = "FILE" };
        weather.Validators.Add(result => NotEmpty(result, "--weather"));
        return weather;
    }

    /// <summary>Edited control programs.</summary>
    public static Option<string[]> Programs()
    {
        Option<string[]> programs = new("--program") { Description = "An edited control program (control/program-….json of a package) in place of the one written for its house; may be given for each house.", HelpName = "FILE", DefaultValueFactory = _ => [] };
        programs.Validators.Add(result => NotEmpty(result, "--program"));
        return programs;
    }

    public static Option<string?> Date()
    {
        Option<string?> date = new("--date") { Description = "Date on the papers, as 2027-05-18, in place of the job's; without either they are undated drafts.", HelpName = "DATE" };
        date.Validators.Add(result =>
        {
            string typed = result.Tokens.Count > 0 ? result.Tokens[0].Value : "";
            if (typed.Length > 0 && !DateOnly.TryParseExact(typed, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _))
            {
                result.AddError($"--date takes year-month-day, as in 2027-05-18; '{(typed.Length > 30 ? typed[..30] + "…" : typed)}' is not a date.");
            }
        });
        return date;
    }

    /// <summary>The reader whose set is written.</summary>
    public static Option<string?> For()
    {
        string[] readers = [.. PaperReaders.All.Select(PaperReaders.Word)];
        Option<string?> reader = new("--for") { Description = $"Writes one reader's set alone, without cost or margin: {string.Join(", ", readers)}. Without it: the whole package, the contractor's.", HelpName = "READER" };
        reader.Validators.Add(result =>
        {
            string typed = result.Tokens.Count > 0 ? result.Tokens[0].Value : "";
            if (!readers.Contains(typed))
            {
                result.AddError($"--for takes one of {string.Join(", ", readers)}; '{(typed.Length > 30 ? typed[..30] + "…" : typed)}' is no reader.");
            }
        });
        return reader;
    }

    /// <summary>The reader that was typed, or null.</summary>
    public static PaperReader? Reader(string? typed) => typed is null ? null : PaperReaders.All.First(r => PaperReaders.Word(r) == typed);

    public static Option<int> Threads()
    {
        Option<int> threads = new("--threads") { Description = "Most threads; the results are the same for any number.", HelpName = "N", DefaultValueFactory = _ => Math.Clamp(Environment.ProcessorCount, 1, 64) };
        threads.Validators.Add(result =>
        {
            if (result.Tokens.Count > 0 && (!int.TryParse(result.Tokens[0].Value, NumberStyles.None, CultureInfo.InvariantCulture, out int n) || n is < 1 or > 64))
            {
                result.AddError("--threads takes a number from 1 to 64.");
            }
        });
        return threads;
    }
}
