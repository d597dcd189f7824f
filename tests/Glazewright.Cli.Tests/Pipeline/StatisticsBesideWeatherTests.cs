using Glazewright.Cli.Running;
using Glazewright.Science.Weather;

namespace Glazewright.Cli.Tests.Pipeline;

/// <summary>A weather file whose header has no design values is helped by the statistics file of the same name beside it.</summary>
public class StatisticsBesideWeatherTests
{
    private const string Statistics =
        "\tDesign Stat\tColdestMonth\tDB996\tDB990\tWS010c\tWS_DB996\n\tHeating\t1\t-18.5\t-15\t11\t3\n"
        + "\tDesign Stat\tHottestMonth\tDBR\tDB004\tWB_DB004\tDB010\tWB_DB010\tDB020\tWB_DB020\tWB004\tDB_WB004\tWS_DB004\n\tCooling\t7\t12\t33\t22\t31\t21.5\t30\t21\t24\t30\t4\n"
        + "\tDesign Stat\tWS010\tDBmin_mean\tDBmax_mean\tDBmin20years\tDBmax20years\n\tExtremes\t12\t-23\t36\t-28\t39\n";

    [Fact]
    public void It_is_taken_and_told_and_changes_the_key()
    {
        string folder = Directory.CreateTempSubdirectory("glazewright").FullName;
        try
        {
            const string Weather = "demo-continental-42N.epw.gz";
            File.Copy(Path.Combine(Examples(), "weather", Weather), Path.Combine(folder, Weather));
            string job = Path.Combine(folder, "job.json");
            File.WriteAllText(job, "{ \"glazewright\": 1, \"site\": { \"weather\": { \"file\": \"" + Weather + "\" } }, \"houses\": [ { \"id\": \"A\", \"width\": \"26 ft\", \"length\": \"60 ft\" } ] }");
            Assert.Empty(JobLoading.Load(job, null, null, out LoadedJob? without));
            Assert.IsType<HeaderConditions.None>(without!.Weather.Conditions);

            File.WriteAllText(Path.Combine(folder, "demo-continental-42N.stat"), Statistics);
            Assert.Empty(JobLoading.Load(job, null, null, out LoadedJob? with));
            Assert.Equal(-18.5, Assert.IsType<HeaderConditions.Printed>(with!.Weather.Conditions).Values.Heating996DryBulbC);
            Assert.Contains("demo-continental-42N.stat", with.Weather.Provenance.Label, StringComparison.Ordinal);
            Assert.NotEqual(without.Weather.Provenance.Label, with.Weather.Provenance.Label);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static string Examples()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (Directory.Exists(Path.Combine(at.FullName, "examples", "weather")))
            {
                return Path.Combine(at.FullName, "examples");
            }
        }

        throw new DirectoryNotFoundException("examples/weather");
    }
}
