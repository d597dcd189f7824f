using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Price;
using Glazewright.Science.Weather;

namespace Glazewright.Cli.Running;

/// <summary>Loads a job and the weather it names: beside the job's file, in a folder "weather" there, or in one beside that folder; a folder that holds one job, or a packed job, serves as well.</summary>
public static class JobLoading
{
    /// <summary>Loads a job.</summary>
    /// <param name="path">Job file.</param>
    /// <param name="weatherPath">Weather file that takes the place of the job's; null to use the job's.</param>
    /// <param name="date">Date that takes the place of the job's; null to use the job's.</param>
    /// <param name="loaded">The job, when there are no faults.</param>
    /// <returns>Every fault of the job and its weather.</returns>
    public static IReadOnlyList<Fault> Load(string path, string? weatherPath, string? date, out LoadedJob? loaded) => Load(path, weatherPath, date, [], out loaded);

    /// <summary>Loads a job with some of its fields edited.</summary>
    /// <param name="path">Job file.</param>
    /// <param name="weatherPath">Weather file that takes the place of the job's; null to use the job's.</param>
    /// <param name="date">Date that takes the place of the job's; null to use the job's.</param>
    /// <param name="edits">Edits, in their order.</param>
    /// <param name="loaded">The job, when there are no faults.</param>
    /// <returns>Every fault of the job and its weather.</returns>
    public static IReadOnlyList<Fault> Load(string path, string? weatherPath, string? date, IReadOnlyList<Edit> edits, out LoadedJob? loaded)
    {
        loaded = null;
        IReadOnlyList<Fault> unread = JobPlace.Open(path, out JobPlace? place);
        if (place is null)
        {
            return unread;
        }

        JobDocument document = JobDocument.Read(place.Text);
        if (document.Faults.Any(f => f.Kind == FaultKind.NotJson))
        {
            return document.Faults;
        }

        if (weatherPath is not null && !WithWeather(document, weatherPath, out document, out Fault? misfit))
        {
            return [misfit!];
        }

        if (date is not null && !document.TryEdit([Edit.Typed("/date", date)], out document, out Fault? undated))
        {
            return [undated!];
        }

        if (edits.Count > 0 && !document.TryEdit(edits, out document, out Fault? unfit))
        {
            return [unfit!];
        }

        List<Fault> faults = [];
        WeatherYear? year = ReadYear(document, place, weatherPath, faults);
        EqList<Fault> found = LoadedJob.Read(document, year, faults, out _, out loaded);
        if (loaded is null)
        {
            return found;
        }

        // Whether a program with changes is one, the plant says.
        EqList<Fault> slips = new Evaluation(loaded.Job, Ground.Of(loaded.Weather, CatalogueReader.Generic, PriceBook.Generic()), new StageRunner(64), CancellationToken.None).ProgramFaults(document);
        loaded = slips.Count == 0 ? loaded : null;
        return slips;
    }

    private static bool WithWeather(JobDocument document, string weatherPath, out JobDocument edited, out Fault? fault)
    {
        string json = $"{{ \"file\": {JsonText.Quote(Path.GetFileName(weatherPath))} }}";
        return document.TryEdit([new Edit("/site/weather", json)], out edited, out fault);
    }

    private static WeatherYear? ReadYear(JobDocument document, JobPlace place, string? weatherPath, List<Fault> faults)
    {
        const string Pointer = "/site/weather/file";
        if (document.Find(Pointer) is not TextNode { Text.Length: > 0 } named || named.Text.AsSpan().IndexOfAny('/', '\\') >= 0)
        {
            return null;
        }

        byte[]? content;
        try
        {
            content = weatherPath is null ? place.Find(named.Text) : OnDisk(weatherPath);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            faults.Add(NotFound(Pointer, $"the weather file '{weatherPath ?? named.Text}' cannot be read: {e.Message}", "a file that you may read"));
            return null;
        }

        if (content is null)
        {
            faults.Add(weatherPath is null
                ? NotFound(Pointer, $"the weather file '{named.Text}' is not {place.Beside}", "the file beside the job or in a folder \"weather\" there, or --weather FILE") with { Line = named.Place.Line, Column = named.Place.Column }
                : NotFound("", Directory.Exists(weatherPath) ? $"--weather '{weatherPath}' is a folder" : $"--weather names no file: '{weatherPath}'", "--weather with the path of an EPW or TMY3 file, plain or .gz"));
            return null;
        }

        switch (WeatherFile.Read(content))
        {
            case WeatherReading.Read read when document.Find("/site/weather/sha256") is TextNode { Text.Length: 64 } hash && !hash.Text.Equals(read.Year.Provenance.ContentSha256, StringComparison.OrdinalIgnoreCase):
                faults.Add(new Fault(FaultKind.Contradiction, "/site/weather/sha256", "", hash.Place.Line, hash.Place.Column, $"the weather file '{named.Text}' has another content: {read.Year.Provenance.ContentSha256}", "the very file that was meant, or its hash"));
                return null;
            case WeatherReading.Read read:
                // What the job types itself stands before every file: then none is asked.
                return document.Find("/site/design") is not null ? read.Year : DesignFiles.Beside(read.Year, document, weatherPath ?? named.Text, weatherPath is null ? place.Find : OnDisk, faults);
            case WeatherReading.Refused refused:
                faults.AddRange(refused.Problems.Select(p => new Fault(FaultKind.NotFound, weatherPath is null ? Pointer : "", "", weatherPath is null ? named.Place.Line : 0, weatherPath is null ? named.Place.Column : 0, $"{named.Text}{DesignValues.Place(p)}: {p.What}", p.Right)));
                return null;
            default:
                return null;
        }
    }

    private static byte[]? OnDisk(string path) => File.Exists(path) ? File.ReadAllBytes(path) : null;

    private static Fault NotFound(string pointer, string wrong, string right) => new(FaultKind.NotFound, pointer, "", 0, 0, wrong, right);
}
