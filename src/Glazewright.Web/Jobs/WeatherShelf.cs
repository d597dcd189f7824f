using System.Collections.Concurrent;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Science.Weather;
using Glazewright.Store.Library;

namespace Glazewright.Web.Jobs;

/// <summary>Weather years of the library, each read once. A job names its year by name or by the hash of its content; no path of a job leads anywhere else.</summary>
/// <param name="library">The library.</param>
public sealed class WeatherShelf(LibraryStore library)
{
    private const string FilePointer = "/site/weather/file";
    private readonly ConcurrentDictionary<string, WeatherYear> _years = new();

    /// <summary>Finds the year that a job names.</summary>
    /// <param name="document">The job.</param>
    /// <param name="cancel">Cancels.</param>
    /// <returns>The year, or null with what is wrong; null without a fault when the job names none.</returns>
    public async Task<(WeatherYear? Year, EqList<Fault> Faults)> FindAsync(JobDocument document, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(document);
        if (document.Find(FilePointer) is not TextNode { Text.Length: > 0 } named)
        {
            return (null, []);
        }

        IReadOnlyList<LibraryFile> files = await library.ListAsync(LibraryKind.Weather, cancel);
        string pinned = document.Find("/site/weather/sha256") is TextNode { Text.Length: 64 } hash ? hash.Text.ToLowerInvariant() : "";
        if ((pinned.Length > 0 ? files.FirstOrDefault(f => f.Sha256 == pinned) : files.FirstOrDefault(f => f.Name == named.Text)) is { } file)
        {
            return (await OfAsync(file, cancel), []);
        }

        string wrong = pinned.Length > 0 ? "the library holds no weather file of this hash" : $"the weather file '{Short(named.Text)}' is not in the library";
        string right = files.Count == 0 ? "bring it in on the start page" : $"bring it in on the start page, or one of {string.Join(", ", files.Select(f => f.Name).Distinct().Take(6))}";
        return (null, [new Fault(FaultKind.NotFound, pinned.Length > 0 ? "/site/weather/sha256" : FilePointer, "", named.Place.Line, named.Place.Column, wrong, right)]);
    }

    /// <summary>The stations of the library's years.</summary>
    /// <param name="cancel">Cancels.</param>
    public async Task<IReadOnlyList<(LibraryFile File, WeatherStation Station)>> StationsAsync(CancellationToken cancel)
    {
        List<(LibraryFile, WeatherStation)> stations = [];
        foreach (LibraryFile file in (await library.ListAsync(LibraryKind.Weather, cancel)).DistinctBy(f => f.Name))
        {
            stations.Add((file, (await OfAsync(file, cancel)).Station));
        }

        return stations;
    }

    private async Task<WeatherYear> OfAsync(LibraryFile file, CancellationToken cancel)
    {
        if (_years.TryGetValue(file.Sha256, out WeatherYear? known))
        {
            return known;
        }

        byte[] content = await library.ByHashAsync(LibraryKind.Weather, file.Sha256, cancel) ?? throw new InvalidOperationException($"The library lost {file.Name}.");
        // What is in the library was read when it came in.
        return WeatherFile.Read(content) is WeatherReading.Read read ? _years.GetOrAdd(file.Sha256, read.Year) : throw new InvalidOperationException($"The library's {file.Name} can no longer be read.");
    }

    private static string Short(string text) => text.Length > 60 ? text[..60] + "…" : text;
}
