using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Science.Weather;

namespace Glazewright.Cli.Running;

/// <summary>Finds the design-day and statistics files of a weather file's name beside it.</summary>
internal static class DesignFiles
{
    public static WeatherYear Beside(WeatherYear year, string weatherPath, List<Fault> faults)
    {
        string bare = weatherPath.EndsWith(".gz", StringComparison.OrdinalIgnoreCase) ? weatherPath[..^3] : weatherPath;
        int before = faults.Count;
        WeatherYear result = DesignValues.Beside(year, Content(bare, ".stat", faults), Content(bare, ".ddy", faults), faults);
        return faults.Count > before ? year : result;
    }

    private static DesignFile? Content(string bare, string ending, List<Fault> faults)
    {
        string? path = new[] { Path.ChangeExtension(bare, ending), Path.ChangeExtension(bare, ending + ".gz") }.FirstOrDefault(File.Exists);
        try
        {
            return path is null ? null : new DesignFile(Path.GetFileName(path), File.ReadAllBytes(path));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            faults.Add(new Fault(FaultKind.NotFound, "/site/weather/file", "", 0, 0, $"{Path.GetFileName(path)}: it cannot be read: {e.Message}", "a file that you may read"));
            return null;
        }
    }
}
