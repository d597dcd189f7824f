using System.Text;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Science.Weather;
using Glazewright.Store.Jobs;
using Glazewright.Store.Library;
using Glazewright.Web.Jobs;

namespace Glazewright.Web.Tests.Jobs;

/// <summary>Design-day and statistics files of the library are used by the jobs that name them; a job goes out packed with what it names, and comes in so.</summary>
public sealed class WeatherShelfTests
{
    private const string Statistics =
        "\tDesign Stat\tColdestMonth\tDB996\tDB990\tWS010c\tWS_DB996\n\tHeating\t1\t-18.5\t-15\t11\t3\n"
        + "\tDesign Stat\tHottestMonth\tDBR\tDB004\tWB_DB004\tDB010\tWB_DB010\tDB020\tWB_DB020\tWB004\tDB_WB004\tWS_DB004\n\tCooling\t7\t12\t33\t22\t31\t21.5\t30\t21\t24\t30\t4\n"
        + "\tDesign Stat\tWS010\tDBmin_mean\tDBmax_mean\tDBmin20years\tDBmax20years\n\tExtremes\t12\t-23\t36\t-28\t39\n";

    [Fact]
    public async Task A_job_takes_the_files_it_names_and_its_own_numbers_before_them()
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
        Assert.IsType<HeaderConditions.None>((await desk.Weather.FindAsync(window.Document, CancellationToken.None)).Year!.Conditions);
        Assert.True(await window.EditAsync([Edit.Typed("/site/weather/statistics", "demo-continental-42N.stat")], "statistics"));
        (WeatherYear? year, EqList<Fault> faults) = await desk.Weather.FindAsync(window.Document, CancellationToken.None);
        Assert.Empty(faults);
        Assert.Equal(-18.5, Assert.IsType<HeaderConditions.Printed>(year!.Conditions).Values.Heating996DryBulbC);
        Assert.Same(year, (await desk.Weather.FindAsync(window.Document, CancellationToken.None)).Year);

        // The design days stand before the statistics, which lend them the extreme.
        await AddAsync(desk, LibraryKind.DesignDays, "Demo-Continental-42N.ddy", DesignDays(42, "-19.5"));
        Assert.True(await window.EditAsync([Edit.Typed("/site/weather/designDays", "demo-continental-42N.ddy")], "design days"));
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
    public async Task Design_days_of_another_place_or_none_are_a_fault()
    {
        await using Desk desk = new();
        await desk.InitializeAsync();
        JobDocument document = JobDocument.Read(Desk.Example("three-lines.json"));
        await AddAsync(desk, LibraryKind.DesignDays, "far.ddy", DesignDays(27, "-19.5"));
        (WeatherYear? none, EqList<Fault> faults) = await desk.Weather.FindAsync(Named(document, "far.ddy"), CancellationToken.None);
        Assert.Null(none);
        Assert.Contains("km from the weather file's station", Assert.Single(faults).Wrong, StringComparison.Ordinal);
        Fault missing = Assert.Single((await desk.Weather.FindAsync(Named(document, "gone.ddy"), CancellationToken.None)).Faults);
        Assert.Equal("/site/weather/designDays", missing.Pointer);
        Assert.Contains("far.ddy", missing.Right, StringComparison.Ordinal);
        Assert.NotNull((await desk.Weather.FindAsync(document, CancellationToken.None)).Year);
    }

    // Two jobs on one year: what one brings in changes nothing of the other, locked or not.
    [Fact]
    public async Task Design_days_belong_to_the_jobs_that_name_them()
    {
        await using Desk desk = new();
        await desk.InitializeAsync();
        JobSession plain = await desk.WindowAsync((await desk.JobAsync()).Id);
        JobSession named = await desk.WindowAsync((await desk.JobAsync()).Id);
        Evaluated before = Of(plain);
        Assert.Equal(before, Of(named));
        await AddAsync(desk, LibraryKind.DesignDays, "demo-continental-42N.ddy", DesignDays(42, "-25.5"));
        Assert.True(await named.EditAsync([Edit.Typed("/site/weather/designDays", "demo-continental-42N.ddy")], "design days"));
        Assert.True(await plain.EditAsync([Edit.Typed("/name", "Again")], "name"));
        await Task.WhenAll(named.Settled, plain.Settled);
        Assert.Equal(before, Of(plain));
        Assert.True(Of(named).LossW > before.LossW);
        Assert.Contains("demo-continental-42N.ddy", (await desk.WindowAsync(plain.View!.Job.Id)).Offers("/site/weather/designDays").Select(o => o.Name));

        // Another file of the name does not take its place.
        LibraryAnswer.Refused refused = Assert.IsType<LibraryAnswer.Refused>(await desk.Library.AddBesideAsync(LibraryKind.DesignDays, "demo-continental-42N.ddy", Encoding.UTF8.GetBytes(DesignDays(42, "-19.5"))));
        Assert.Contains("another name", Assert.Single(refused.Wrongs), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_job_packed_with_its_files_is_the_same_job_in_another_store()
    {
        await using Desk desk = new();
        await desk.InitializeAsync();
        await AddAsync(desk, LibraryKind.DesignDays, "cold.ddy", DesignDays(42, "-25.5"));
        JobDocument document = Named(JobDocument.Read(Desk.Example("three-lines.json")), "cold.ddy");
        (IReadOnlyList<PackedFile> files, IReadOnlyList<string> missing) = await desk.Weather.FilesOfAsync(document, CancellationToken.None);
        Assert.Empty(missing);
        Assert.Equal(["demo-continental-42N.epw.gz", "cold.ddy"], files.Select(f => f.Name));

        // There, another file has the name already: both stay what they are.
        await using Desk other = new();
        await other.InitializeAsync();
        await AddAsync(other, LibraryKind.DesignDays, "cold.ddy", DesignDays(42, "-19.5"));
        (string text, IReadOnlyList<string> wrongs) = await other.Weather.TakeInAsync(new PackedJobReading.Read(document.Text, files));
        Assert.Empty(wrongs);
        string own = ((TextNode)JobDocument.Read(text).Find("/site/weather/designDays")!).Text;
        Assert.Matches("^cold-[0-9a-f]{8}[.]ddy$", own);
        Assert.Equal(-25.5, await ColdestAsync(other, JobDocument.Read(text)));
        Assert.Equal(-19.5, await ColdestAsync(other, document));
        Assert.Equal("demo-continental-42N.epw.gz", ((TextNode)JobDocument.Read(text).Find("/site/weather/file")!).Text);

        // Once more: the same file is not kept twice.
        Assert.Equal(text, (await other.Weather.TakeInAsync(new PackedJobReading.Read(document.Text, files))).Text);
    }

    [Fact]
    public async Task A_packed_job_with_a_file_that_is_none_is_refused_and_one_that_names_a_path_gives_none_out()
    {
        await using Desk desk = new();
        await desk.InitializeAsync();
        JobDocument document = Named(JobDocument.Read(Desk.Example("three-lines.json")), "cold.ddy");
        (string _, IReadOnlyList<string> wrongs) = await desk.Weather.TakeInAsync(new PackedJobReading.Read(document.Text, [new PackedFile("cold.ddy", "nothing"u8.ToArray())]));
        Assert.Contains("cold.ddy: ", Assert.Single(wrongs), StringComparison.Ordinal);
        Assert.Empty(await desk.Library.ListAsync(LibraryKind.DesignDays));
        Assert.Equal(["../../etc/passwd"], (await desk.Weather.FilesOfAsync(Named(document, "../../etc/passwd"), CancellationToken.None)).Missing);
    }

    private sealed record Evaluated(double LossW, string Label);

    private static Evaluated Of(JobSession window) =>
        new(window.View!.Light!.Houses[0].Duty.Report.Figures.Single(f => f.Id == "A/duty/heat-loss").Value, window.View.Light.Loaded.Weather.Provenance.Label);

    private static async Task<double> ColdestAsync(Desk desk, JobDocument document) =>
        Assert.IsType<HeaderConditions.Printed>((await desk.Weather.FindAsync(document, CancellationToken.None)).Year!.Conditions).Values.Heating996DryBulbC;

    private static JobDocument Named(JobDocument document, string designDays)
    {
        Assert.True(document.TryEdit([Edit.Typed("/site/weather/designDays", designDays)], out JobDocument edited, out _));
        return edited;
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
