using Glazewright.Design.Brief.Reading;
using Glazewright.Cli.Running;
using Glazewright.Science.Weather;

namespace Glazewright.Cli.Tests.Pipeline;

/// <summary>Design conditions come from the design-day file, else the statistics file, of the weather file's name beside it; the job's own numbers ask neither.</summary>
public class StatisticsBesideWeatherTests
{
    private const string Statistics =
        "\tDesign Stat\tColdestMonth\tDB996\tDB990\tWS010c\tWS_DB996\n\tHeating\t1\t-18.5\t-15\t11\t3\n"
        + "\tDesign Stat\tHottestMonth\tDBR\tDB004\tWB_DB004\tDB010\tWB_DB010\tDB020\tWB_DB020\tWB004\tDB_WB004\tWS_DB004\n\tCooling\t7\t12\t33\t22\t31\t21.5\t30\t21\t24\t30\t4\n"
        + "\tDesign Stat\tWS010\tDBmin_mean\tDBmax_mean\tDBmin20years\tDBmax20years\n\tExtremes\t12\t-23\t36\t-28\t39\n";

    private const string Weather = "demo-continental-42N.epw.gz";

    [Fact]
    public void It_is_taken_and_told_and_changes_the_key() => InFolder((folder, job) =>
    {
        Assert.Empty(JobLoading.Load(job, null, null, out LoadedJob? without));
        Assert.IsType<HeaderConditions.None>(without!.Weather.Conditions);

        File.WriteAllText(Path.Combine(folder, "demo-continental-42N.stat"), Statistics);
        Assert.Empty(JobLoading.Load(job, null, null, out LoadedJob? with));
        Assert.Equal(-18.5, Printed(with).Values.Heating996DryBulbC);
        Assert.Contains("demo-continental-42N.stat", with!.Weather.Provenance.Label, StringComparison.Ordinal);
        Assert.NotEqual(without.Weather.Provenance.Label, with.Weather.Provenance.Label);
    });

    [Fact]
    public void The_design_day_file_stands_before_the_statistics_file_which_lends_it_the_extreme() => InFolder((folder, job) =>
    {
        File.WriteAllText(Path.Combine(folder, "demo-continental-42N.stat"), Statistics);
        File.WriteAllText(Path.Combine(folder, "demo-continental-42N.ddy"), DesignDays(42, "-19.5"));
        Assert.Empty(JobLoading.Load(job, null, null, out LoadedJob? with));
        Assert.Equal((-19.5, -23), (Printed(with).Values.Heating996DryBulbC, Printed(with).Values.MeanAnnualMinC));
        Assert.Contains("demo-continental-42N.ddy", Printed(with).From, StringComparison.Ordinal);
        Assert.Contains("demo-continental-42N.ddy", with!.Weather.Provenance.Label, StringComparison.Ordinal);
    });

    // What the job names stands alone; what it names must be there.
    [Fact]
    public void A_job_that_names_its_files_takes_those_and_no_others() => InFolder((folder, job) =>
    {
        string text = File.ReadAllText(job);
        File.WriteAllText(Path.Combine(folder, "demo-continental-42N.stat"), Statistics);
        File.WriteAllText(Path.Combine(folder, "cold.ddy"), DesignDays(42, "-19.5"));
        File.WriteAllText(job, text.Replace("\"" + Weather + "\"", "\"" + Weather + "\", \"designDays\": \"cold.ddy\"", StringComparison.Ordinal));
        Assert.Empty(JobLoading.Load(job, null, null, out LoadedJob? with));
        Assert.Equal((-19.5, "cold.ddy"), (Printed(with).Values.Heating996DryBulbC, Printed(with).From.Split(' ')[^1]));
        Assert.NotEqual(-23, Printed(with).Values.MeanAnnualMinC);
        File.WriteAllText(job, text.Replace("\"" + Weather + "\"", "\"" + Weather + "\", \"designDays\": \"warm.ddy\"", StringComparison.Ordinal));
        Design.Contracts.Fault fault = Assert.Single(JobLoading.Load(job, null, null, out _));
        Assert.Equal(("/site/weather/designDays", "the file 'warm.ddy' is not beside the job"), (fault.Pointer, fault.Wrong));
        File.WriteAllText(job, text.Replace("\"" + Weather + "\"", "\"" + Weather + "\", \"designDays\": \"../cold.ddy\"", StringComparison.Ordinal));
        Assert.Contains("is a path", Assert.Single(JobLoading.Load(job, null, null, out _)).Wrong, StringComparison.Ordinal);
    });

    [Fact]
    public void All_that_is_wrong_in_both_files_is_told_at_once() => InFolder((folder, job) =>
    {
        File.WriteAllText(Path.Combine(folder, "demo-continental-42N.stat"), Statistics.Replace("WB_DB004", "other", StringComparison.Ordinal));
        File.WriteAllText(Path.Combine(folder, "demo-continental-42N.ddy"), DesignDays(42, "cold").Replace("Clg 2%", "Clg 3%", StringComparison.Ordinal));
        IReadOnlyList<Design.Contracts.Fault> faults = JobLoading.Load(job, null, null, out LoadedJob? none);
        Assert.Null(none);
        Assert.Equal(3, faults.Count);
        Assert.Single(faults, f => f.Wrong.StartsWith("demo-continental-42N.stat", StringComparison.Ordinal));
        Assert.Single(faults, f => f.Wrong.StartsWith("demo-continental-42N.ddy line 3:", StringComparison.Ordinal));

        // A job that types its own conditions asks no file.
        File.WriteAllText(job, File.ReadAllText(job).Replace("\"site\": {", "\"site\": { \"design\": { \"heating996\": \"-17 C\", \"extremeMin\": \"-22 C\", \"cooling04\": \"33 C\", \"coincidentWetBulb\": \"23 C\", \"evaporation04\": \"25 C\" },", StringComparison.Ordinal));
        Assert.Empty(JobLoading.Load(job, null, null, out _));
    });

    [Fact]
    public void A_design_day_file_of_another_station_is_a_fault() => InFolder((folder, job) =>
    {
        File.WriteAllText(Path.Combine(folder, "demo-continental-42N.ddy"), DesignDays(27, "-19.5"));
        Assert.Contains("km from the weather file's station", Assert.Single(JobLoading.Load(job, null, null, out _)).Wrong, StringComparison.Ordinal);
    });

    private static HeaderConditions.Printed Printed(LoadedJob? job) => Assert.IsType<HeaderConditions.Printed>(job!.Weather.Conditions);

    private static string DesignDays(int latitudeDeg, string coldest) =>
        FormattableString.Invariant($"Site:Location, Nowhere, {latitudeDeg}, -87.92, -6, 290;\n")
        + Day("Htg 99.6% Condns DB", coldest, "-19.6") + Day("Htg 99% Condns DB", "-15", "-15.2") + Day("Clg .4% Condns DB=>MWB", "33", "22")
        + Day("Clg 1% Condns DB=>MWB", "31", "21.5") + Day("Clg 2% Condns DB=>MWB", "30", "21") + Day("Clg .4% Condns WB=>MDB", "29", "24");

    private static string Day(string name, string dryC, string wetC) =>
        $"SizingPeriod:DesignDay, Nowhere Ann {name},\n 7, 21, SummerDesignDay, {dryC}, 0, DefaultMultipliers, , Wetbulb, {wetC}, , , , , 98000., 3.5, 270, No, No, No, ASHRAEClearSky;\n";

    private static void InFolder(Action<string, string> test)
    {
        string folder = Directory.CreateTempSubdirectory("glazewright").FullName;
        try
        {
            File.Copy(Path.Combine(Examples(), "weather", Weather), Path.Combine(folder, Weather));
            string job = Path.Combine(folder, "job.json");
            File.WriteAllText(job, "{ \"glazewright\": 1, \"site\": { \"weather\": { \"file\": \"" + Weather + "\" } }, \"houses\": [ { \"id\": \"A\", \"width\": \"26 ft\", \"length\": \"60 ft\" } ] }");
            test(folder, job);
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
