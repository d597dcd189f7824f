using System.IO.Compression;
using System.Text;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Document;

/// <summary>A file that a job stands on, in a packed job.</summary>
/// <param name="Name">Its name, without folders.</param>
/// <param name="Content">Its bytes, as they were brought in.</param>
public sealed record PackedFile(string Name, ReadOnlyMemory<byte> Content);

/// <summary>
/// A job document and the weather, design-day and statistics files it names, packed as one zip: the job at the top, the others in the folder <c>weather</c>.
/// Unpacked it is a folder that runs by itself. It is read in memory alone: no name in it ever becomes a path, and nothing is unpacked beyond the limits.
/// </summary>
public static class PackedJob
{
    /// <summary>Most bytes of the packed file.</summary>
    public const int MostPackedBytes = 20_000_000;

    private const string WeatherFolder = "weather/";
    private const int MostEntries = 40;
    private const int MostFileBytes = 32_000_000;
    private const int MostAllBytes = 64_000_000;
    private static readonly string[] s_endings = [".epw", ".csv", ".ddy", ".stat"];

    /// <summary>Whether bytes begin as a zip does.</summary>
    /// <param name="content">The bytes.</param>
    public static bool IsZip(ReadOnlySpan<byte> content) => content.StartsWith("PK"u8);

    /// <summary>The field that names the weather file.</summary>
    public const string YearPointer = "/site/weather/file";

    /// <summary>The field that names the design-day file.</summary>
    public const string DesignDaysPointer = "/site/weather/designDays";

    /// <summary>The field that names the statistics file.</summary>
    public const string StatisticsPointer = "/site/weather/statistics";

    /// <summary>Fields of a job that name files beside it.</summary>
    public static IReadOnlyList<string> Pointers { get; } = [YearPointer, DesignDaysPointer, StatisticsPointer];

    /// <summary>Names and contents as they stand in the zip.</summary>
    /// <param name="jobName">Name of the job's file.</param>
    /// <param name="text">The document as typed.</param>
    /// <param name="files">The files it names.</param>
    public static IEnumerable<(string Path, ReadOnlyMemory<byte> Bytes)> Entries(string jobName, string text, IEnumerable<PackedFile> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        return files.Select(f => (WeatherFolder + f.Name, f.Content)).Prepend((jobName, Encoding.UTF8.GetBytes(text)));
    }

    /// <summary>Whether a name is one of a file beside the job: no folders, nothing hidden, an ending that is known.</summary>
    /// <param name="name">The name.</param>
    public static bool IsPlainName(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        string bare = name.EndsWith(".gz", StringComparison.OrdinalIgnoreCase) ? name[..^3] : name;
        return name.Length is > 0 and <= 120 && name[0] is not ('.' or ' ') && !name.Any(c => char.IsControl(c) || c is '/' or '\\' or ':' or '*' or '?' or '"' or '<' or '>' or '|')
            && s_endings.Any(e => bare.Length > e.Length && bare.EndsWith(e, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>Reads a packed job; never throws for what it holds.</summary>
    /// <param name="content">The zip.</param>
    public static PackedJobReading Read(byte[] content)
    {
        ArgumentNullException.ThrowIfNull(content);
        if (content.Length > MostPackedBytes)
        {
            return Refused("the packed file is far too large for a job", "a zip of a job document and its weather file");
        }

        try
        {
            using ZipArchive archive = new(new MemoryStream(content, writable: false), ZipArchiveMode.Read);
            ZipArchiveEntry[] entries = [.. archive.Entries.Where(e => !IsLitter(e.FullName))];
            return entries.Length > MostEntries ? Refused($"the packed file holds {entries.Length} files", "a zip of a job document and the few files it names") : Of(entries);
        }
        catch (Exception e) when (e is InvalidDataException or IOException or NotSupportedException or ArgumentException)
        {
            return Refused("the packed file cannot be opened: " + e.Message.TrimEnd('.'), "a zip of a job document and its weather file");
        }
    }

    private static PackedJobReading Of(ZipArchiveEntry[] entries)
    {
        string top = Top(entries);
        long all = 0;
        string? text = null;
        List<PackedFile> files = [];
        foreach (ZipArchiveEntry entry in entries)
        {
            string path = entry.FullName[top.Length..];
            if (path.Length == 0 || path == WeatherFolder)
            {
                continue;
            }

            bool isJob = path.EndsWith(".json", StringComparison.OrdinalIgnoreCase) && !path.Contains('/', StringComparison.Ordinal) && !path.Contains('\\', StringComparison.Ordinal);
            string name = path.StartsWith(WeatherFolder, StringComparison.Ordinal) ? path[WeatherFolder.Length..] : path;
            if (!isJob && !IsPlainName(name))
            {
                return Refused($"the packed file holds '{Shown(entry.FullName)}', which belongs to no job", "a job document (.json) at the top, beside it or in the folder \"weather\" the weather files it names (.epw, .csv, .ddy, .stat, plain or .gz)");
            }

            if (entry.IsEncrypted)
            {
                return Refused($"'{Shown(name)}' is locked with a password", "a zip without one");
            }

            if (Content(entry, Math.Min(MostFileBytes, MostAllBytes - all)) is not { } bytes)
            {
                return Refused($"'{Shown(name)}' unpacks to more than a job's files may have", "files of some megabytes, no more than 64 MB together");
            }

            all += bytes.Length;
            if (IsZip(bytes))
            {
                return Refused($"'{Shown(name)}' is itself a packed file", "the files themselves");
            }

            if (isJob)
            {
                if (text is not null)
                {
                    return Refused("the packed file holds more than one .json", "one job document");
                }

                if (TextOf(bytes) is not { } read)
                {
                    return Refused($"'{Shown(name)}' is not UTF-8 text", "a job document, JSON in UTF-8");
                }

                text = read;
            }
            else if (files.Exists(f => f.Name.Equals(name, StringComparison.OrdinalIgnoreCase)))
            {
                return Refused($"the packed file holds '{Shown(name)}' twice", "each file once");
            }
            else
            {
                files.Add(new PackedFile(name, bytes));
            }
        }

        if (text is null)
        {
            return Refused("the packed file holds no job document", "a job document (.json) at the top of the zip");
        }

        JobDocument document = JobDocument.Read(text);
        return document.Faults.Any(f => f.Kind == FaultKind.NotJson) ? new PackedJobReading.Refused(document.Faults)
            : document.Find("/glazewright") is null ? Refused("the .json in the packed file is no job", "a JSON object as { \"glazewright\": 1, ... }")
            : new PackedJobReading.Read(text, files);
    }

    // A folder that was packed stands in its zip as a whole: all names begin with it.
    private static string Top(ZipArchiveEntry[] entries)
    {
        string first = entries.Length > 0 ? entries[0].FullName : "";
        int slash = first.IndexOf('/', StringComparison.Ordinal);
        string top = slash > 0 ? first[..(slash + 1)] : "";
        return top.Length > 0 && top is not (WeatherFolder or "../" or "./") && entries.All(e => e.FullName.StartsWith(top, StringComparison.Ordinal)) ? top : "";
    }

    private static bool IsLitter(string path) =>
        path.StartsWith("__MACOSX/", StringComparison.Ordinal) || path.Split('/')[^1] is ".DS_Store" or "Thumbs.db" or "desktop.ini";

    // What a header says of its size is not believed: bytes are counted as they come.
    private static byte[]? Content(ZipArchiveEntry entry, long most)
    {
        if (entry.Length > most)
        {
            return null;
        }

        using Stream stream = entry.Open();
        using MemoryStream content = new();
        byte[] part = new byte[65536];
        int got;
        while ((got = stream.Read(part)) > 0)
        {
            content.Write(part, 0, got);
            if (content.Length > most)
            {
                return null;
            }
        }

        return content.ToArray();
    }

    private static string? TextOf(byte[] bytes)
    {
        try
        {
            string text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes.AsSpan().StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]) ? bytes.AsSpan(3) : bytes);
            return text.Contains('\0', StringComparison.Ordinal) ? null : text;
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }

    private static string Shown(string name)
    {
        string plain = string.Concat(name.Where(c => !char.IsControl(c)));
        return plain.Length > 60 ? plain[..60] + "…" : plain;
    }

    private static PackedJobReading.Refused Refused(string wrong, string right) => new([new Fault(FaultKind.NotJson, "", "", 0, 0, wrong, right)]);
}

/// <summary>What a packed job holds. A closed case.</summary>
public abstract record PackedJobReading
{
    private PackedJobReading()
    {
    }

    /// <summary>A job and its files.</summary>
    /// <param name="Text">The document as typed.</param>
    /// <param name="Files">The files in it; whether the job names them is another matter.</param>
    public sealed record Read(string Text, IReadOnlyList<PackedFile> Files) : PackedJobReading
    {
        /// <summary>The file of a name, or null.</summary>
        /// <param name="name">The name as the job has it.</param>
        public PackedFile? Find(string name) => Files.FirstOrDefault(f => f.Name.Equals(name, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>Something else: nothing is taken.</summary>
    /// <param name="Faults">What it is not, and what would be right.</param>
    public sealed record Refused(EqList<Fault> Faults) : PackedJobReading;
}
