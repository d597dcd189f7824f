using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Brief.Reading;

/// <summary>A job with the weather it stands on, ready to be evaluated.</summary>
/// <param name="Document">As typed.</param>
/// <param name="Job">Typed.</param>
/// <param name="Weather">Its hourly year.</param>
/// <param name="Defaults">Every default used.</param>
public sealed record LoadedJob(JobDocument Document, Job Job, WeatherYear Weather, EqList<DefaultUsed> Defaults)
{
    /// <summary>Reads a job on the weather year that was found for it; where files and years are found is the caller's business.</summary>
    /// <param name="document">The document.</param>
    /// <param name="year">The year of the file it names; null when it names none, or the file is at fault.</param>
    /// <param name="weatherFaults">What is wrong with that file.</param>
    /// <param name="defaults">Every default that held, also where there are faults.</param>
    /// <param name="loaded">The job, when there are no faults.</param>
    /// <returns>Every fault of the job and its weather.</returns>
    public static EqList<Fault> Read(JobDocument document, WeatherYear? year, IReadOnlyList<Fault> weatherFaults, out EqList<DefaultUsed> defaults, out LoadedJob? loaded)
    {
        ArgumentNullException.ThrowIfNull(weatherFaults);
        loaded = null;
        ReadOutcome<Job> outcome = JobReader.Read(document, year is null ? null : SiteWeather.HintOf(year));
        defaults = outcome.Defaults;
        // A job whose weather could not be read is not also told that it lacks a latitude.
        EqList<Fault> faults = [.. weatherFaults, .. outcome.Faults.Where(f => weatherFaults.Count == 0 || f.Pointer != "/site/latitude")];
        if (faults.Count == 0 && outcome.Value is Job job)
        {
            loaded = new LoadedJob(document, job, year ?? SiteWeather.Synthetic(job.Site), outcome.Defaults);
        }

        return faults;
    }
}
