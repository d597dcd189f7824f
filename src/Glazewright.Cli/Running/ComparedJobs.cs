using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;

namespace Glazewright.Cli.Running;

/// <summary>Whether two jobs can be held against each other: one year, one place, the same houses by their ids.</summary>
internal static class ComparedJobs
{
    /// <summary>Every reason why not.</summary>
    /// <param name="first">The first job.</param>
    /// <param name="second">The second.</param>
    /// <param name="house">The one house that is asked for, or null for all.</param>
    public static IReadOnlyList<Fault> Misfits(LoadedJob first, LoadedJob second, string? house)
    {
        List<Fault> faults = [];
        void Add(FaultKind kind, string pointer, string wrong, string right) => faults.Add(new Fault(kind, pointer, "", 0, 0, wrong, right));
        if (first.Weather.Provenance.ContentSha256 != second.Weather.Provenance.ContentSha256)
        {
            Add(FaultKind.Contradiction, "/site/weather", $"the years are two: {first.Weather.Provenance.Label} and {second.Weather.Provenance.Label}{(first.Weather.Provenance.Label == second.Weather.Provenance.Label ? " of another content" : "")}", "the same weather file, or the same normals and seed, in both jobs; or --weather FILE, which both then take");
        }

        Site one = first.Job.Site, two = second.Job.Site;
        if ((one.LatitudeDeg, one.LongitudeDeg, one.ElevationM, one.ZoneHours) != (two.LatitudeDeg, two.LongitudeDeg, two.ElevationM, two.ZoneHours))
        {
            Add(FaultKind.Contradiction, "/site", "the places are two: another latitude, longitude, elevation or zone than in the first job", "the same place in both");
        }

        string[] here = [.. first.Job.Houses.Select(h => h.Id)], there = [.. second.Job.Houses.Select(h => h.Id)];
        if (house is null)
        {
            string[] lone = [.. here.Except(there).Concat(there.Except(here))];
            if (lone.Length > 0)
            {
                Add(FaultKind.Contradiction, "/houses", $"house {string.Join(", ", lone)} stands in one of the jobs only", here.Intersect(there).Any() ? $"the same ids in both, or --house {here.Intersect(there).First()}" : "the same ids in both");
            }
        }
        else if (!here.Contains(house) || !there.Contains(house))
        {
            Add(FaultKind.NotFound, "/houses", $"{(here.Contains(house) ? "the second job" : there.Contains(house) ? "the first job" : "neither job")} has {(here.Contains(house) || there.Contains(house) ? "no" : "a")} house '{house}'", string.Join(", ", here.Intersect(there)));
        }

        return faults;
    }
}
