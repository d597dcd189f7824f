using System.Globalization;
using System.Security.Cryptography;
using Glazewright.Design.Contracts;
using Glazewright.Science.Weather;
using PrintedValues = Glazewright.Science.Weather.DesignConditions;

namespace Glazewright.Design.Brief.Reading;

/// <summary>A design-day or statistics file that stands beside a weather file.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Content">Its bytes, plain or packed.</param>
public sealed record DesignFile(string Name, ReadOnlyMemory<byte> Content);

/// <summary>
/// Design conditions of a weather year: first those of the design-day file (.ddy) of its name, then of the statistics file (.stat), then of its own header.
/// The weather's label tells which, and so keeps the stages' keys apart. Where files are found is the caller's business.
/// </summary>
public static class DesignValues
{
    /// <summary>A design-day file of a station farther off is another climate: the same limit as between place and station.</summary>
    private const double FarthestKm = 300;

    private const string Pointer = "/site/weather/file";

    /// <summary>The year with the design conditions of the files beside it.</summary>
    /// <param name="year">The year.</param>
    /// <param name="statistics">Its statistics file, or null.</param>
    /// <param name="days">Its design-day file, or null.</param>
    /// <param name="faults">What is wrong with either; the year is then as it was.</param>
    public static WeatherYear Beside(WeatherYear year, DesignFile? statistics, DesignFile? days, ICollection<Fault> faults)
    {
        ArgumentNullException.ThrowIfNull(year);
        ArgumentNullException.ThrowIfNull(faults);
        int before = faults.Count;
        PrintedValues? stat = statistics is null ? null : Statistics(statistics, faults);
        PrintedValues? beneath = stat ?? (year.Conditions as HeaderConditions.Printed)?.Values;
        WeatherYear result = year;
        if (days is not null && Days(days, year, faults) is { } read)
        {
            // The extremes stand only in this file's comments: where those are gone the next file's serve.
            result = Taken(year, read with { MeanAnnualMinC = read.MeanAnnualMinC ?? beneath?.MeanAnnualMinC }, "the design-day file", days);
        }
        else if (stat is not null)
        {
            result = Taken(year, stat, "the statistics file", statistics!);
        }

        return faults.Count > before ? year : result;
    }

    /// <summary>Where in a file a problem is: " line 3 field 2".</summary>
    /// <param name="problem">The problem.</param>
    public static string Place(WeatherProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return (problem.Line, problem.Column) switch
        {
            (0, _) => "",
            (int line, 0) => string.Create(CultureInfo.InvariantCulture, $" line {line}"),
            (int line, int column) => string.Create(CultureInfo.InvariantCulture, $" line {line} field {column}"),
        };
    }

    private static WeatherYear Taken(WeatherYear year, PrintedValues values, string kind, DesignFile file) => year with
    {
        Conditions = new HeaderConditions.Printed(values, $"{kind} {file.Name}"),
        Provenance = year.Provenance with
        {
            Label = string.Create(CultureInfo.InvariantCulture, $"{year.Provenance.Label}, design values of {file.Name} ({values.Edition}, {values.Heating996DryBulbC} to {values.Cooling04DryBulbC} °C, sha256 {Convert.ToHexStringLower(SHA256.HashData(file.Content.Span))[..8]}…)"),
        },
    };

    private static PrintedValues? Statistics(DesignFile file, ICollection<Fault> faults)
    {
        switch (StatisticsFile.Read(file.Content.ToArray()))
        {
            case HeaderConditions.Printed printed:
                return printed.Values;
            case HeaderConditions.Unreadable unreadable:
                faults.Add(Wrong(file, "", unreadable.Why, "a whole statistics file, none of that name, or the design conditions typed in the job"));
                return null;
            default:
                return null;
        }
    }

    private static PrintedValues? Days(DesignFile file, WeatherYear year, ICollection<Fault> faults)
    {
        switch (DesignDayFile.Read(file.Content.ToArray()))
        {
            case DesignFileReading.Read read when read.Station is { } place && year.Station.ApartKm(place.LatitudeDeg, place.LongitudeDeg) is > FarthestKm and var apartKm:
                faults.Add(Wrong(file, "", string.Create(CultureInfo.InvariantCulture, $"its place is {apartKm:N0} km from the weather file's station"), "the design-day file of the same station"));
                return null;
            case DesignFileReading.Read read:
                return read.Values;
            case DesignFileReading.Refused refused:
                foreach (WeatherProblem problem in refused.Problems)
                {
                    faults.Add(Wrong(file, Place(problem), problem.What, problem.Right));
                }

                return null;
            default:
                return null;
        }
    }

    private static Fault Wrong(DesignFile file, string place, string what, string right) =>
        new(FaultKind.NotFound, Pointer, "", 0, 0, $"{file.Name}{place}: {what}", right);
}
