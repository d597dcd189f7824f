using System.CommandLine;
using Glazewright.Cli.Running;
using Glazewright.Science.Weather;

namespace Glazewright.Cli.Commands;

/// <summary>Says what is in a weather file.</summary>
internal static class WeatherCommand
{
    public static Command Make(Desk desk)
    {
        Argument<string> file = new("FILE") { Description = "EPW or TMY3 CSV file, plain or .gz." };
        file.Validators.Add(result => CommonOptions.NotEmpty(result, "FILE"));
        Option<bool> json = CommonOptions.Json();
        Command command = new("weather", "Says what is in a weather file: station, completeness, whether its radiation closes, design values, months.\n\nExample: glazewright weather yard.epw") { file, json };
        command.SetAction(parsed => Run(desk, parsed.GetValue(file)!, parsed.GetValue(json)));
        return command;
    }

    private static int Run(Desk desk, string path, bool json)
    {
        if (Directory.Exists(path))
        {
            return Refuse(desk, path, [new(WeatherProblemKind.NotAWeatherFile, 0, 0, $"'{path}' is a folder.", "The path of one EPW or TMY3 file, plain or .gz.")], json);
        }

        byte[] content;
        try
        {
            content = File.ReadAllBytes(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            IReadOnlyList<WeatherProblem> unread = [new(WeatherProblemKind.NotAWeatherFile, 0, 0, $"'{path}' cannot be read: {e.Message}", "The path of a weather file.")];
            return Refuse(desk, path, unread, json);
        }

        switch (WeatherFile.Read(content))
        {
            case WeatherReading.Read read:
                desk.Out.Write(json ? WeatherText.Json(read.Year, WeatherReport.Of(read.Year)) : WeatherText.Page(read.Year, WeatherReport.Of(read.Year)));
                return Exit.Done;
            case WeatherReading.Refused refused:
                return Refuse(desk, path, refused.Problems, json);
            default:
                return Exit.Ours;
        }
    }

    private static int Refuse(Desk desk, string path, IReadOnlyList<WeatherProblem> problems, bool json)
    {
        if (json)
        {
            desk.Out.Write(WeatherText.Json(problems));
            return Exit.Faults;
        }

        foreach (WeatherProblem p in problems)
        {
            desk.Errors.WriteLine(FormattableString.Invariant($"{path}:{(p.Line > 0 ? $"{p.Line}:" : "")}{(p.Column > 0 ? $" field {p.Column}:" : "")} {p.What} Right: {p.Right}"));
        }

        return Exit.Faults;
    }
}
