using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Science.Weather;

namespace Glazewright.Cli.Running;

/// <summary>Finds the design-day and statistics files that a job names; where it names none, those of the weather file's name beside it.</summary>
internal static class DesignFiles
{
    private const string Days = "/site/weather/designDays";
    private const string Statistics = "/site/weather/statistics";

    /// <summary>The year with their design conditions.</summary>
    /// <param name="year">The year.</param>
    /// <param name="document">The job.</param>
    /// <param name="weatherName">Name or path of the weather file.</param>
    /// <param name="open">Finds a file by name, or by path where that of the weather is one.</param>
    /// <param name="faults">What is wrong with either.</param>
    public static WeatherYear Beside(WeatherYear year, JobDocument document, string weatherName, Func<string, byte[]?> open, List<Fault> faults)
    {
        string bare = weatherName.EndsWith(".gz", StringComparison.OrdinalIgnoreCase) ? weatherName[..^3] : weatherName;
        bool isNamed = Named(document, Days) is not null || Named(document, Statistics) is not null;
        int before = faults.Count;
        DesignFile? Of(string pointer, string ending) => isNamed
            ? Named(document, pointer) is { } named ? Content([named.Text], open, faults) ?? Missing(pointer, named, faults) : null
            : Content([Path.ChangeExtension(bare, ending), Path.ChangeExtension(bare, ending + ".gz")], open, faults);
        WeatherYear result = DesignValues.Beside(year, Of(Statistics, ".stat"), Of(Days, ".ddy"), faults);
        return faults.Count > before ? year : result;
    }

    private static TextNode? Named(JobDocument document, string pointer) =>
        document.Find(pointer) is TextNode { Text.Length: > 0 } named && named.Text.AsSpan().IndexOfAny('/', '\\') < 0 && named.Text[0] != '.' ? named : null;

    private static DesignFile? Missing(string pointer, TextNode named, List<Fault> faults)
    {
        // Where it could not be read that was told.
        if (!faults.Exists(f => f.Pointer == "/site/weather/file" && f.Wrong.StartsWith(named.Text, StringComparison.Ordinal)))
        {
            faults.Add(new Fault(FaultKind.NotFound, pointer, "", named.Place.Line, named.Place.Column, $"the file '{named.Text}' is not beside the job", "the file beside the job or in a folder \"weather\" there"));
        }

        return null;
    }

    private static DesignFile? Content(string[] names, Func<string, byte[]?> open, List<Fault> faults)
    {
        foreach (string name in names)
        {
            try
            {
                if (open(name) is { } content)
                {
                    return new DesignFile(Path.GetFileName(name), content);
                }
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                faults.Add(new Fault(FaultKind.NotFound, "/site/weather/file", "", 0, 0, $"{Path.GetFileName(name)}: it cannot be read: {e.Message}", "a file that you may read"));
                return null;
            }
        }

        return null;
    }
}
