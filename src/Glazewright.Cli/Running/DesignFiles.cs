using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Science.Weather;

namespace Glazewright.Cli.Running;

/// <summary>Finds the design-day and statistics files that a job names; where it names none, those of the weather file's name beside it.</summary>
internal static class DesignFiles
{
    /// <summary>The year with their design conditions.</summary>
    /// <param name="year">The year.</param>
    /// <param name="document">The job.</param>
    /// <param name="weatherName">Name or path of the weather file.</param>
    /// <param name="open">Finds a file by name, or by path where that of the weather is one.</param>
    /// <param name="faults">What is wrong with either.</param>
    public static WeatherYear Beside(WeatherYear year, JobDocument document, string weatherName, Func<string, byte[]?> open, List<Fault> faults)
    {
        string bare = weatherName.EndsWith(".gz", StringComparison.OrdinalIgnoreCase) ? weatherName[..^3] : weatherName;
        bool isNamed = Named(document, PackedJob.DesignDaysPointer) is not null || Named(document, PackedJob.StatisticsPointer) is not null;
        int before = faults.Count;
        DesignFile? Of(string pointer, string ending)
        {
            if (!isNamed)
            {
                return Open(Path.ChangeExtension(bare, ending), PackedJob.YearPointer, open, faults) ?? Open(Path.ChangeExtension(bare, ending + ".gz"), PackedJob.YearPointer, open, faults);
            }

            int told = faults.Count;
            if (Named(document, pointer) is not { } named)
            {
                return null;
            }

            DesignFile? file = Open(named.Text, pointer, open, faults);
            if (file is null && faults.Count == told)
            {
                faults.Add(new Fault(FaultKind.NotFound, pointer, "", named.Place.Line, named.Place.Column, $"the file '{named.Text}' is not beside the job", "the file beside the job or in a folder \"weather\" there"));
            }

            return file;
        }

        WeatherYear result = DesignValues.Beside(year, Of(PackedJob.StatisticsPointer, ".stat"), Of(PackedJob.DesignDaysPointer, ".ddy"), faults);
        return faults.Count > before ? year : result;
    }

    private static TextNode? Named(JobDocument document, string pointer) =>
        document.Find(pointer) is TextNode { Text.Length: > 0 } named && named.Text.AsSpan().IndexOfAny('/', '\\') < 0 && named.Text[0] != '.' ? named : null;

    // Null where there is none, and where it cannot be read: that is told.
    private static DesignFile? Open(string name, string pointer, Func<string, byte[]?> open, List<Fault> faults)
    {
        try
        {
            return open(name) is { } content ? new DesignFile(Path.GetFileName(name), content) : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            faults.Add(new Fault(FaultKind.NotFound, pointer, "", 0, 0, $"{Path.GetFileName(name)}: it cannot be read: {e.Message}", "a file that you may read"));
            return null;
        }
    }
}
