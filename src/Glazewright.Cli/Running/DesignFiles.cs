using System.Globalization;
using System.Security.Cryptography;
using Glazewright.Design.Contracts;
using Glazewright.Science.Weather;

namespace Glazewright.Cli.Running;

/// <summary>
/// Design conditions beside a weather file, of the same name: first the design-day file (.ddy), then the statistics file (.stat), then the weather file's own header.
/// The weather's label tells which, and so keeps the stages' keys apart.
/// </summary>
internal static class DesignFiles
{
    /// <summary>A design-day file of a station farther off is another climate: the same limit as between place and station.</summary>
    private const double FarthestKm = 300;

    private const string Pointer = "/site/weather/file";

    public static WeatherYear Beside(WeatherYear year, string weatherPath, List<Fault> faults)
    {
        string bare = weatherPath.EndsWith(".gz", StringComparison.OrdinalIgnoreCase) ? weatherPath[..^3] : weatherPath;
        int before = faults.Count;
        DesignConditions? statistics = Content(bare, ".stat", faults) is var (statPath, stat) ? Statistics(statPath, stat, faults) : null;
        DesignConditions? beneath = statistics ?? (year.Conditions as HeaderConditions.Printed)?.Values;
        WeatherYear result = year;
        if (Content(bare, ".ddy", faults) is var (dayPath, days) && Days(dayPath, days, year, faults) is { } read)
        {
            // The extremes stand only in this file's comments: where those are gone the next file's serve.
            result = Taken(year, read with { MeanAnnualMinC = read.MeanAnnualMinC ?? beneath?.MeanAnnualMinC }, "the design-day file", dayPath, days);
        }
        else if (statistics is not null && Content(bare, ".stat", faults) is var (path, content))
        {
            result = Taken(year, statistics, "the statistics file", path, content);
        }

        return faults.Count > before ? year : result;
    }

    private static WeatherYear Taken(WeatherYear year, DesignConditions values, string kind, string path, byte[] content) => year with
    {
        Conditions = new HeaderConditions.Printed(values, $"{kind} {Path.GetFileName(path)}"),
        Provenance = year.Provenance with
        {
            Label = string.Create(CultureInfo.InvariantCulture, $"{year.Provenance.Label}, design values of {Path.GetFileName(path)} ({values.Edition}, {values.Heating996DryBulbC} to {values.Cooling04DryBulbC} °C, sha256 {Convert.ToHexStringLower(SHA256.HashData(content))[..8]}…)"),
        },
    };

    private static DesignConditions? Statistics(string path, byte[] content, List<Fault> faults)
    {
        switch (StatisticsFile.Read(content))
        {
            case HeaderConditions.Printed printed:
                return printed.Values;
            case HeaderConditions.Unreadable unreadable:
                faults.Add(Wrong(path, "", unreadable.Why, "a whole statistics file, none of that name, or the design conditions typed in the job"));
                return null;
            default:
                return null;
        }
    }

    private static DesignConditions? Days(string path, byte[] content, WeatherYear year, List<Fault> faults)
    {
        switch (DesignDayFile.Read(content))
        {
            case DesignFileReading.Read read when read.Station is { } place && ApartKm(place, year.Station) is > FarthestKm and var apartKm:
                faults.Add(Wrong(path, "", string.Create(CultureInfo.InvariantCulture, $"its place is {apartKm:N0} km from the weather file's station"), "the design-day file of the same station"));
                return null;
            case DesignFileReading.Read read:
                return read.Values;
            case DesignFileReading.Refused refused:
                faults.AddRange(refused.Problems.Select(p => Wrong(path, JobLoading.Place(p), p.What, p.Right)));
                return null;
            default:
                return null;
        }
    }

    private static double ApartKm(DesignPlace place, WeatherStation station)
    {
        const double Rad = Math.PI / 180;
        double cosine = Math.Sin(place.LatitudeDeg * Rad) * Math.Sin(station.LatitudeDeg * Rad)
            + Math.Cos(place.LatitudeDeg * Rad) * Math.Cos(station.LatitudeDeg * Rad) * Math.Cos((place.LongitudeDeg - station.LongitudeDeg) * Rad);
        return 6371 * Math.Acos(Math.Clamp(cosine, -1, 1));
    }

    private static (string Path, byte[] Content)? Content(string bare, string ending, List<Fault> faults)
    {
        string? path = new[] { Path.ChangeExtension(bare, ending), Path.ChangeExtension(bare, ending + ".gz") }.FirstOrDefault(File.Exists);
        try
        {
            return path is null ? null : (path, File.ReadAllBytes(path));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            faults.Add(Wrong(path!, "", "it cannot be read: " + e.Message, "a file that you may read"));
            return null;
        }
    }

    private static Fault Wrong(string path, string place, string what, string right) =>
        new(FaultKind.NotFound, Pointer, "", 0, 0, $"{Path.GetFileName(path)}{place}: {what}", right);
}
