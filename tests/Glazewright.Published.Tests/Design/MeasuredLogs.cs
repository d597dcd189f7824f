using System.IO.Compression;
using Glazewright.Design.Calibration;
using Glazewright.Design.Calibration.Reading;
using Glazewright.Design.Contracts;

namespace Glazewright.Published.Tests.Design;

/// <summary>
/// Logs of built houses and the column maps that read them. The data lie outside the repository (their licences do not let us ship them, or have not been read); without them a check is skipped, loudly. The maps hold
/// no data: headings, units, clocks, and what the sets' own descriptions say of floor, pipes and lamps.
/// </summary>
internal static class MeasuredLogs
{
    /// <summary>Reads a map of ours.</summary>
    public static ColumnMap Map(string name)
    {
        using Stream stream = typeof(MeasuredLogs).Assembly.GetManifestResourceStream($"{name}.columns.json") ?? throw new ArgumentException($"No map '{name}'.", nameof(name));
        using StreamReader reader = new(stream);
        var outcome = ColumnMapReader.Read(reader.ReadToEnd());
        Assert.Empty(outcome.Faults);
        return outcome.Value!;
    }

    /// <summary>Reads a log, or skips the test.</summary>
    public static HouseLog Read(ColumnMap map, params string[] files)
    {
        EqList<Fault> faults = LogReader.Read(map, Texts(files), out HouseLog? log);
        Assert.Empty(faults);
        return log!;
    }

    /// <summary>The files' texts, or skips the test.</summary>
    public static IReadOnlyList<string> Texts(params string[] files) => [.. files.Select(Text)];

    private static string Text(string name)
    {
        string path = "";
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null && path.Length == 0; at = at.Parent)
        {
            string candidate = Path.Combine([at.FullName, "shared", "cases", "measured", .. name.Split('/')]);
            path = File.Exists(candidate) ? candidate : "";
        }

        Assert.SkipWhen(path.Length == 0, $"shared/cases/measured/{name} is not here: this check against a measured house was NOT made.");
        using StreamReader reader = new(new GZipStream(File.OpenRead(path), CompressionMode.Decompress));
        return reader.ReadToEnd();
    }
}
