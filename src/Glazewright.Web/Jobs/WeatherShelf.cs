using System.Collections.Concurrent;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Price;
using Glazewright.Science.Weather;
using Glazewright.Store.Library;
using Glazewright.Web.Fields;

namespace Glazewright.Web.Jobs;

/// <summary>Weather years of the library, each read once, with the design-day and statistics files that a job names: what one job brings in changes no other. A job names its year by name or by the hash of its content; no path of a job leads anywhere else.</summary>
/// <param name="library">The library.</param>
public sealed class WeatherShelf(LibraryStore library)
{
    /// <summary>The field that names a job's year.</summary>
    internal const string FilePointer = PackedJob.YearPointer;

    // A year by the minute takes some 40 MB.
    private const int MostGrounds = 3;

    private readonly ConcurrentDictionary<string, WeatherYear> _years = new();
    private readonly Lock _one = new();
    private readonly List<Ground> _grounds = [];

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
            WeatherYear year = await OfAsync(file, cancel);
            // What the job types itself stands before every file: then none is asked.
            return document.Find("/site/design") is not (null or BlankNode) ? (year, []) : await WithDesignAsync(document, file, year, cancel);
        }

        string wrong = pinned.Length > 0 ? "the library holds no weather file of this hash" : $"the weather file '{Short(named.Text)}' is not in the library";
        string right = files.Count == 0 ? "bring it in on the start page" : $"bring it in on the start page, or one of {string.Join(", ", files.Select(f => f.Name).Distinct().Take(6))}";
        return (null, [new Fault(FaultKind.NotFound, pinned.Length > 0 ? "/site/weather/sha256" : FilePointer, "", named.Place.Line, named.Place.Column, wrong, right)]);
    }

    /// <summary>What every evaluation on a year stands on: made once as long as the year is among the last few asked for.</summary>
    /// <param name="year">The year.</param>
    public Ground GroundOf(WeatherYear year)
    {
        ArgumentNullException.ThrowIfNull(year);
        lock (_one)
        {
            int at = _grounds.FindIndex(g => ReferenceEquals(g.Weather.Value, year));
            Ground ground = at >= 0 ? _grounds[at] : Ground.Of(year, CatalogueReader.Generic, PriceBook.Generic());
            if (at >= 0)
            {
                _grounds.RemoveAt(at);
            }

            _grounds.Add(ground);
            if (_grounds.Count > MostGrounds)
            {
                _grounds.RemoveAt(0);
            }

            return ground;
        }
    }

    /// <summary>Years to choose from, in words: the nearest to the site first where that is known, else by name of their place.</summary>
    /// <param name="years">The library's years.</param>
    /// <param name="document">The job.</param>
    /// <param name="units">Readers' units.</param>
    public static IReadOnlyList<Offer> Told(IReadOnlyList<(LibraryFile File, YearSummary Year)> years, JobDocument document, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(years);
        (double LatitudeDeg, double LongitudeDeg)? site = YearWords.SiteOf(document);
        return [.. years.OrderBy(y => site is { } here ? y.Year.Station.ApartKm(here.LatitudeDeg, here.LongitudeDeg) : 0).ThenBy(y => y.Year.Station.Name, StringComparer.OrdinalIgnoreCase).ThenBy(y => y.File.Name, StringComparer.Ordinal)
            .Select(y => new Offer(y.File.Name, YearWords.Of(y.File.Name, y.Year, site, units)))];
    }

    /// <summary>The library's years, each name once; no file is read for it.</summary>
    /// <param name="cancel">Cancels.</param>
    public async Task<IReadOnlyList<(LibraryFile File, YearSummary Year)>> YearsAsync(CancellationToken cancel) =>
        [.. (await library.YearsAsync(cancel)).DistinctBy(y => y.File.Name)];

    /// <summary>What can be named beside the year in a job's weather.</summary>
    /// <param name="cancel">Cancels.</param>
    /// <returns>Names of files, by the field's pointer.</returns>
    public async Task<Dictionary<string, IReadOnlyList<string>>> OffersAsync(CancellationToken cancel)
    {
        async Task<IReadOnlyList<string>> NamesAsync(LibraryKind kind) => [.. (await library.ListAsync(kind, cancel)).Select(f => f.Name).Distinct()];
        return new()
        {
            [PackedJob.DesignDaysPointer] = await NamesAsync(LibraryKind.DesignDays),
            [PackedJob.StatisticsPointer] = await NamesAsync(LibraryKind.Statistics),
        };
    }

    /// <summary>What a file is by the ending of its name; a weather year for any other.</summary>
    /// <param name="name">Its name.</param>
    public static LibraryKind KindOf(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return Path.GetExtension(name.EndsWith(".gz", StringComparison.OrdinalIgnoreCase) ? name[..^3] : name).ToLowerInvariant() switch
        {
            ".ddy" => LibraryKind.DesignDays,
            ".stat" => LibraryKind.Statistics,
            _ => LibraryKind.Weather,
        };
    }

    /// <summary>Name of a weather file, or of what stands beside it, without its endings.</summary>
    /// <param name="name">Its name.</param>
    public static string Stem(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return Path.GetFileNameWithoutExtension(name.EndsWith(".gz", StringComparison.OrdinalIgnoreCase) ? name[..^3] : name);
    }

    // The year with the files that the job names beside it is made once.
    private async Task<(WeatherYear? Year, EqList<Fault> Faults)> WithDesignAsync(JobDocument document, LibraryFile file, WeatherYear year, CancellationToken cancel)
    {
        List<Fault> faults = [];
        LibraryFile? statistics = await NamedAsync(document, LibraryKind.Statistics, PackedJob.StatisticsPointer, faults, cancel);
        LibraryFile? days = await NamedAsync(document, LibraryKind.DesignDays, PackedJob.DesignDaysPointer, faults, cancel);
        if (faults.Count > 0 || (statistics is null && days is null))
        {
            return (faults.Count > 0 ? null : year, faults.ToEqList());
        }

        string key = $"{file.Sha256} {statistics?.Sha256} {days?.Sha256}";
        if (_years.TryGetValue(key, out WeatherYear? known))
        {
            return (known, []);
        }

        WeatherYear beside = DesignValues.Beside(year, await ContentAsync(LibraryKind.Statistics, statistics, cancel), await ContentAsync(LibraryKind.DesignDays, days, cancel), faults);
        return faults.Count > 0 ? (null, faults.ToEqList()) : (_years.GetOrAdd(key, beside), []);
    }

    private async Task<LibraryFile?> NamedAsync(JobDocument document, LibraryKind kind, string pointer, List<Fault> faults, CancellationToken cancel)
    {
        if (document.Find(pointer) is not TextNode { Text.Length: > 0 } named)
        {
            return null;
        }

        IReadOnlyList<LibraryFile> files = await library.ListAsync(kind, cancel);
        LibraryFile? file = files.FirstOrDefault(f => f.Name.Equals(named.Text, StringComparison.OrdinalIgnoreCase));
        if (file is null)
        {
            string right = $"bring it in on the start page{(files.Count == 0 ? "" : $", or one of {string.Join(", ", files.Select(f => f.Name).Distinct().Take(6))}")}";
            faults.Add(new Fault(FaultKind.NotFound, pointer, "", named.Place.Line, named.Place.Column, $"the file '{Short(named.Text)}' is not in the library", right));
        }

        return file;
    }

    /// <summary>The files that a job names, out of the library, under the names it has for them.</summary>
    /// <param name="document">The job.</param>
    /// <param name="cancel">Cancels.</param>
    /// <returns>The files, and the names that the library does not hold or that no file beside a job can have.</returns>
    public async Task<(IReadOnlyList<PackedFile> Files, IReadOnlyList<string> Missing)> FilesOfAsync(JobDocument document, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(document);
        List<PackedFile> files = [];
        List<string> missing = [];
        foreach (string pointer in PackedJob.Pointers)
        {
            if (document.Find(pointer) is not TextNode { Text.Length: > 0 } named)
            {
                continue;
            }

            LibraryKind kind = pointer switch { FilePointer => LibraryKind.Weather, PackedJob.DesignDaysPointer => LibraryKind.DesignDays, _ => LibraryKind.Statistics };
            string pinned = pointer == FilePointer && document.Find("/site/weather/sha256") is TextNode { Text.Length: 64 } hash ? hash.Text.ToLowerInvariant() : "";
            byte[]? content = !PackedJob.IsPlainName(named.Text) ? null : pinned.Length > 0 ? await library.ByHashAsync(kind, pinned, cancel) : await library.ByNameAsync(kind, named.Text, cancel);
            if (content is null)
            {
                missing.Add(Short(named.Text));
            }
            else
            {
                files.Add(new PackedFile(named.Text, content));
            }
        }

        return (files, missing);
    }

    /// <summary>Takes a packed job in: the files it names come into the library, under another name where theirs is taken, and the job names them so.</summary>
    /// <param name="packed">The packed job.</param>
    /// <param name="cancel">Cancels.</param>
    /// <returns>The document to begin a job from; or what is wrong with its files, and then nothing of the job is taken.</returns>
    public async Task<(string Text, IReadOnlyList<string> Wrongs)> TakeInAsync(PackedJobReading.Read packed, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(packed);
        JobDocument document = JobDocument.Read(packed.Text);
        foreach (string pointer in PackedJob.Pointers)
        {
            // A file that the job does not name is left in the zip; one that is not in it may be in the library.
            if (document.Find(pointer) is not TextNode named || packed.Find(named.Text) is not { } file)
            {
                continue;
            }

            byte[] content = file.Content.ToArray();
            LibraryKind kind = KindOf(file.Name);
            LibraryAnswer answer = await library.AddBesideAsync(kind, named.Text, content, cancel);
            if (answer is LibraryAnswer.Refused { IsNameTaken: true })
            {
                string bare = Stem(named.Text);
                string own = $"{bare}-{Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(content))[..8]}{named.Text[bare.Length..]}";
                answer = await library.AddBesideAsync(kind, own, content, cancel);
            }

            switch (answer)
            {
                case LibraryAnswer.Refused refused:
                    return (packed.Text, [.. refused.Wrongs.Take(6).Select(w => $"{file.Name}: {w}")]);
                case LibraryAnswer.Kept kept when kept.File.Name != named.Text && document.TryEdit([Edit.Typed(pointer, kept.File.Name)], out JobDocument edited, out _):
                    document = edited;
                    break;
                default:
                    break;
            }
        }

        return (document.Text, []);
    }

    private async Task<DesignFile?> ContentAsync(LibraryKind kind, LibraryFile? file, CancellationToken cancel) =>
        file is not null && await library.ByHashAsync(kind, file.Sha256, cancel) is { } content ? new DesignFile(file.Name, content) : null;

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
