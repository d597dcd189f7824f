using System.Text;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Science.Weather;
using Glazewright.Store.Jobs;
using Glazewright.Store.Library;
using Glazewright.Web.Jobs;

namespace Glazewright.Web.Tests.Jobs;

/// <summary>Design-day and statistics files of the library stand beside the weather year of their name.</summary>
public sealed class WeatherShelfTests
{
    private const string Statistics =
        "\tDesign Stat\tColdestMonth\tDB996\tDB990\tWS010c\tWS_DB996\n\tHeating\t1\t-18.5\t-15\t11\t3\n"
        + "\tDesign Stat\tHottestMonth\tDBR\tDB004\tWB_DB004\tDB010\tWB_DB010\tDB020\tWB_DB020\tWB004\tDB_WB004\tWS_DB004\n\tCooling\t7\t12\t33\t22\t31\t21.5\t30\t21\t24\t30\t4\n"
        + "\tDesign Stat\tWS010\tDBmin_mean\tDBmax_mean\tDBmin20years\tDBmax20years\n\tExtremes\t12\t-23\t36\t-28\t39\n";

    [Fact]
    public async Task A_job_takes_the_files_of_its_year_and_its_own_numbers_before_them()
    {
        await using Desk desk = new();
        await desk.InitializeAsync();
        StoredJob job = await desk.JobAsync();
        JobSession window = await desk.WindowAsync(job.Id);
        Assert.IsType<HeaderConditions.None>(window.View!.Light!.Loaded.Weather.Conditions);
        double LossW() => window.View!.Light!.Houses[0].Duty.Report.Figures.Single(f => f.Id == "A/duty/heat-loss").Value;
        double before = LossW();

        await AddAsync(desk, LibraryKind.Statistics, "demo-continental-42N.stat", Statistics);
        await AddAsync(desk, LibraryKind.Statistics, "elsewhere.stat", Statistics.Replace("-18.5", "-17.5", StringComparison.Ordinal));
        (WeatherYear? year, EqList<Fault> faults) = await desk.Weather.FindAsync(window.Document, CancellationToken.None);
        Assert.Empty(faults);
        Assert.Equal(-18.5, Assert.IsType<HeaderConditions.Printed>(year!.Conditions).Values.Heating996DryBulbC);
        Assert.Same(year, (await desk.Weather.FindAsync(window.Document, CancellationToken.None)).Year);

        // The design days stand before the statistics, which lend them the extreme; the next edit is answered with them.
        await AddAsync(desk, LibraryKind.DesignDays, "Demo-Continental-42N.ddy", DesignDays(42, "-19.5"));
        Assert.True(await window.EditAsync([Edit.Typed("/name", "Again")], "name"));
        await window.Settled;
        HeaderConditions.Printed printed = Assert.IsType<HeaderConditions.Printed>(window.View!.Light!.Loaded.Weather.Conditions);
        Assert.Equal((-19.5, -23), (printed.Values.Heating996DryBulbC, printed.Values.MeanAnnualMinC));
        Assert.Contains("Demo-Continental-42N.ddy", window.View.Light.Loaded.Weather.Provenance.Label, StringComparison.Ordinal);
        Assert.True(Math.Abs(LossW() / before - 1) > 0.01);

        Edit own = new("/site/design", "{ \"heating996\": \"-17 C\", \"extremeMin\": \"-22 C\", \"cooling04\": \"33 C\", \"coincidentWetBulb\": \"23 C\", \"evaporation04\": \"25 C\" }");
        Assert.True(await window.EditAsync([own], "design"));
        await window.Settled;
        Assert.IsType<HeaderConditions.None>(window.View!.Light!.Loaded.Weather.Conditions);
        Assert.Equal(-17, window.View.Light.Loaded.Job.Site.Design!.Heating996C, 9);
    }

    [Fact]
    public async Task Design_days_of_another_place_are_a_fault_until_the_right_ones_come_in()
    {
        await using Desk desk = new();
        await desk.InitializeAsync();
        JobDocument document = JobDocument.Read(Desk.Example("three-lines.json"));
        await AddAsync(desk, LibraryKind.DesignDays, "demo-continental-42N.ddy", DesignDays(27, "-19.5"));
        (WeatherYear? none, EqList<Fault> faults) = await desk.Weather.FindAsync(document, CancellationToken.None);
        Assert.Null(none);
        Assert.Contains("km from the weather file's station", Assert.Single(faults).Wrong, StringComparison.Ordinal);
        await Task.Delay(5);
        await AddAsync(desk, LibraryKind.DesignDays, "demo-continental-42N.ddy", DesignDays(42, "-19.5"));
        Assert.NotNull((await desk.Weather.FindAsync(document, CancellationToken.None)).Year);
    }

    [Theory]
    [InlineData("place.epw", LibraryKind.Weather), InlineData("place.csv.gz", LibraryKind.Weather), InlineData("place.DDY", LibraryKind.DesignDays), InlineData("place.stat.gz", LibraryKind.Statistics), InlineData("place", LibraryKind.Weather)]
    public void The_ending_of_a_name_says_what_a_file_is(string name, LibraryKind kind)
    {
        Assert.Equal(kind, WeatherShelf.KindOf(name));
        Assert.Equal("place", WeatherShelf.Stem(name));
    }

    private static async Task AddAsync(Desk desk, LibraryKind kind, string name, string text) => Assert.IsType<LibraryAnswer.Kept>(await desk.Library.AddAsync(kind, name, Encoding.UTF8.GetBytes(text)));

    private static string DesignDays(int latitudeDeg, string coldest) =>
        FormattableString.Invariant($"Site:Location, Nowhere, {latitudeDeg}, -87.92, -6, 290;\n")
        + Day("Htg 99.6% Condns DB", coldest, "-19.6") + Day("Htg 99% Condns DB", "-15", "-15.2") + Day("Clg .4% Condns DB=>MWB", "33", "22")
        + Day("Clg 1% Condns DB=>MWB", "31", "21.5") + Day("Clg 2% Condns DB=>MWB", "30", "21") + Day("Clg .4% Condns WB=>MDB", "29", "24");

    private static string Day(string name, string dryC, string wetC) =>
        $"SizingPeriod:DesignDay, Nowhere Ann {name},\n 7, 21, SummerDesignDay, {dryC}, 0, DefaultMultipliers, , Wetbulb, {wetC}, , , , , 98000., 3.5, 270, No, No, No, ASHRAEClearSky;\n";
}
