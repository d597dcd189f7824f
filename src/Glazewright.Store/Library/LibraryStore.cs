using System.Security.Cryptography;
using System.Text;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Price;
using Glazewright.Science.Weather;
using Microsoft.EntityFrameworkCore;

namespace Glazewright.Store.Library;

/// <summary>Kinds of files that jobs stand on.</summary>
public enum LibraryKind
{
    /// <summary>A weather year.</summary>
    Weather,

    /// <summary>A catalogue of generic equipment.</summary>
    Catalogue,

    /// <summary>A price book: the contractor's own.</summary>
    PriceBook,

    /// <summary>Design days of a weather station (.ddy): used by the jobs that name them.</summary>
    DesignDays,

    /// <summary>Statistics of a weather year (.stat), likewise.</summary>
    Statistics,
}

/// <summary>A file of the library.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Name">Its name.</param>
/// <param name="Sha256">Hash of its content, lower-case hex: what a job pins. Of a weather year, of its unpacked text.</param>
/// <param name="AtUtc">When it came in.</param>
public sealed record LibraryFile(LibraryKind Kind, string Name, string Sha256, DateTimeOffset AtUtc);

/// <summary>What became of a file brought to the library. A closed case.</summary>
public abstract record LibraryAnswer
{
    private LibraryAnswer()
    {
    }

    /// <summary>It is in the library.</summary>
    /// <param name="File">The file, under the name it first came in by.</param>
    public sealed record Kept(LibraryFile File) : LibraryAnswer;

    /// <summary>It is not such a file: nothing is kept.</summary>
    /// <param name="Wrongs">What is wrong, each with what would be right where that is known.</param>
    /// <param name="IsNameTaken">Whether the file is right and only its name is another's.</param>
    public sealed record Refused(IReadOnlyList<string> Wrongs, bool IsNameTaken = false) : LibraryAnswer;
}

/// <summary>The files that jobs stand on, kept by the hash of their content: what a job was computed with stays.</summary>
/// <param name="door">The store.</param>
/// <param name="clock">Tells the time.</param>
public sealed class LibraryStore(StoreDoor door, TimeProvider clock)
{
    /// <summary>Reads a file and puts it in if it is what it should be; the same content is there once, under its first name.</summary>
    /// <param name="kind">What it is.</param>
    /// <param name="name">Its name.</param>
    /// <param name="content">Its bytes.</param>
    /// <param name="cancel">Cancels.</param>
    public Task<LibraryAnswer> AddAsync(LibraryKind kind, string name, byte[] content, CancellationToken cancel = default) => AddAsync(kind, name, content, keepsNames: false, cancel);

    /// <summary>The same, and refused where another file of its kind has the name: a job that names that one would take this one from now on.</summary>
    /// <param name="kind">What it is.</param>
    /// <param name="name">Its name.</param>
    /// <param name="content">Its bytes.</param>
    /// <param name="cancel">Cancels.</param>
    public Task<LibraryAnswer> AddBesideAsync(LibraryKind kind, string name, byte[] content, CancellationToken cancel = default) => AddAsync(kind, name, content, keepsNames: true, cancel);

    private async Task<LibraryAnswer> AddAsync(LibraryKind kind, string name, byte[] content, bool keepsNames, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(content);
        if (!TryRead(kind, content, out string hash, out string[] wrongs, out WeatherYear? year))
        {
            return new LibraryAnswer.Refused(wrongs);
        }

        await using StoreContext context = door.Context();
        if (await Find(context, kind, hash, cancel) is { } there)
        {
            return new LibraryAnswer.Kept(Of(there));
        }

        string word = kind.ToString();
        if (keepsNames && await context.Library.AnyAsync(r => r.Kind == word && r.Name == name, cancel))
        {
            return new LibraryAnswer.Refused(["another file in the library has this name, and jobs that name it go on with that one. Right: this file under another name"], IsNameTaken: true);
        }

        LibraryRow row = new() { Kind = word, Sha256 = hash, Name = name, AtMs = clock.GetUtcNow().ToUnixTimeMilliseconds(), Content = content };
        context.Library.Add(row);
        await context.SaveChangesAsync(cancel);
        if (year is not null)
        {
            await YearSummaries.KeepAsync(context, hash, YearSummary.Of(year), cancel);
        }

        return new LibraryAnswer.Kept(Of(row));
    }

    /// <summary>Files of a kind, the newest first.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<IReadOnlyList<LibraryFile>> ListAsync(LibraryKind kind, CancellationToken cancel = default)
    {
        string word = kind.ToString();
        await using StoreContext context = door.Context();
        var rows = await context.Library.AsNoTracking().Where(r => r.Kind == word).OrderByDescending(r => r.AtMs).ThenBy(r => r.Sha256)
            .Select(r => new { r.Name, r.Sha256, r.AtMs }).ToArrayAsync(cancel);
        return [.. rows.Select(r => new LibraryFile(kind, r.Name, r.Sha256, DateTimeOffset.FromUnixTimeMilliseconds(r.AtMs)))];
    }

    /// <summary>The weather years, the newest first, with what one chooses them by: kept beside them, so that no file is read for it. Those of an older program are read once.</summary>
    /// <param name="cancel">Cancels.</param>
    /// <exception cref="InvalidOperationException">A file that was read when it came in can no longer be.</exception>
    public async Task<IReadOnlyList<(LibraryFile File, YearSummary Year)>> YearsAsync(CancellationToken cancel = default)
    {
        IReadOnlyList<LibraryFile> files = await ListAsync(LibraryKind.Weather, cancel);
        await using StoreContext context = door.Context();
        Dictionary<string, YearSummary> known = await YearSummaries.AllAsync(context, cancel);
        foreach (LibraryFile file in files.Where(f => !known.ContainsKey(f.Sha256)))
        {
            byte[] content = await ByHashAsync(LibraryKind.Weather, file.Sha256, cancel) ?? throw new InvalidOperationException($"The library lost {file.Name}.");
            YearSummary year = WeatherFile.Read(content) is WeatherReading.Read read ? YearSummary.Of(read.Year) : throw new InvalidOperationException($"The library's {file.Name} can no longer be read.");
            await YearSummaries.KeepAsync(context, file.Sha256, year, cancel);
            known[file.Sha256] = year;
        }

        return [.. files.Select(f => (f, known[f.Sha256]))];
    }

    /// <summary>The newest file of a name, or null.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="name">Its name.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<byte[]?> ByNameAsync(LibraryKind kind, string name, CancellationToken cancel = default)
    {
        string word = kind.ToString();
        await using StoreContext context = door.Context();
        return await context.Library.AsNoTracking().Where(r => r.Kind == word && r.Name == name).OrderByDescending(r => r.AtMs).Select(r => r.Content).FirstOrDefaultAsync(cancel);
    }

    /// <summary>The file of a hash, or null.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="sha256">Hash of its content.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<byte[]?> ByHashAsync(LibraryKind kind, string sha256, CancellationToken cancel = default)
    {
        await using StoreContext context = door.Context();
        return (await Find(context, kind, sha256, cancel))?.Content;
    }

    private static bool TryRead(LibraryKind kind, byte[] content, out string hash, out string[] wrongs, out WeatherYear? year)
    {
        year = null;
        hash = Convert.ToHexStringLower(SHA256.HashData(content));
        wrongs = [];
        switch (kind)
        {
            case LibraryKind.Weather:
                WeatherReading reading = WeatherFile.Read(content);
                year = (reading as WeatherReading.Read)?.Year;
                hash = year?.Provenance.ContentSha256.ToLowerInvariant() ?? hash;
                wrongs = reading is WeatherReading.Refused refused ? [.. refused.Problems.Select(p => $"{p.What}. Right: {p.Right}")] : [];
                break;
            case LibraryKind.Catalogue:
                wrongs = CatalogueReader.TryRead(Encoding.UTF8.GetString(content), out _, out string? fault) ? [] : [fault];
                break;
            case LibraryKind.DesignDays:
                wrongs = DesignDayFile.Read(content) switch
                {
                    DesignFileReading.Read => [],
                    DesignFileReading.Refused bad => [.. bad.Problems.Select(p => $"{p.What}. Right: {p.Right}")],
                    _ => ["there are no design days in it. Right: a design-day file (.ddy) with the yearly heating and cooling days"],
                };
                break;
            case LibraryKind.Statistics:
                wrongs = StatisticsFile.Read(content) switch
                {
                    HeaderConditions.Printed => [],
                    HeaderConditions.Unreadable unreadable => [$"{unreadable.Why}. Right: a whole statistics file (.stat)"],
                    _ => ["there are no design conditions in it. Right: a whole statistics file (.stat)"],
                };
                break;
            default:
                try
                {
                    PriceBook.Read(new MemoryStream(content));
                }
                catch (FormatException e)
                {
                    wrongs = [e.Message];
                }

                break;
        }

        return wrongs.Length == 0;
    }

    private static Task<LibraryRow?> Find(StoreContext context, LibraryKind kind, string hash, CancellationToken cancel)
    {
        string word = kind.ToString();
        return context.Library.AsNoTracking().FirstOrDefaultAsync(r => r.Kind == word && r.Sha256 == hash, cancel);
    }

    private static LibraryFile Of(LibraryRow row) => new(Enum.Parse<LibraryKind>(row.Kind), row.Name, row.Sha256, DateTimeOffset.FromUnixTimeMilliseconds(row.AtMs));
}
