using System.Text;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Price;
using Glazewright.Science.Weather;
using Glazewright.Store.Library;
using Glazewright.Store.Tests.Databases;

namespace Glazewright.Store.Tests.Library;

public sealed class LibraryStoreTests(PostgresServer server)
{
    [Theory]
    [MemberData(nameof(Shelf.Both), MemberType = typeof(Shelf))]
    public async Task A_price_book_is_kept_by_its_content_and_found_by_hash_and_name(Kind kind)
    {
        using Shelf shelf = new(kind, server);
        CancellationToken cancel = TestContext.Current.CancellationToken;
        LibraryStore library = new(shelf.Open(), TimeProvider.System);
        byte[] book = Embedded(typeof(PriceBook), "generic-prices.json");
        byte[] dearer = Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(book) + "\n");

        LibraryFile first = Assert.IsType<LibraryAnswer.Kept>(await library.AddAsync(LibraryKind.PriceBook, "spring", book, cancel)).File;
        Assert.Equal(first, Assert.IsType<LibraryAnswer.Kept>(await library.AddAsync(LibraryKind.PriceBook, "again", book, cancel)).File);
        Assert.IsType<LibraryAnswer.Kept>(await library.AddAsync(LibraryKind.PriceBook, "summer", dearer, cancel));

        LibraryStore later = new(shelf.Open(), TimeProvider.System);
        Assert.Equal(book, await later.ByHashAsync(LibraryKind.PriceBook, first.Sha256, cancel));
        Assert.Equal(dearer, await later.ByNameAsync(LibraryKind.PriceBook, "summer", cancel));
        Assert.Equal(["spring", "summer"], (await later.ListAsync(LibraryKind.PriceBook, cancel)).Select(f => f.Name).Order());
        Assert.Empty(await later.ListAsync(LibraryKind.Catalogue, cancel));
        Assert.Null(await later.ByHashAsync(LibraryKind.Catalogue, first.Sha256, cancel));
    }

    [Theory]
    [MemberData(nameof(Shelf.Both), MemberType = typeof(Shelf))]
    public async Task Years_are_told_without_reading_their_files_and_those_of_an_older_program_are_read_once(Kind kind)
    {
        using Shelf shelf = new(kind, server);
        CancellationToken cancel = TestContext.Current.CancellationToken;
        byte[] content = await File.ReadAllBytesAsync(DemoYear(), cancel);
        YearSummary right = YearSummary.Of(Assert.IsType<WeatherReading.Read>(WeatherFile.Read(content)).Year);
        Assert.NotEmpty(right.Station.Name);
        LibraryFile kept = Assert.IsType<LibraryAnswer.Kept>(await new LibraryStore(shelf.Open(), TimeProvider.System).AddAsync(LibraryKind.Weather, "demo.epw.gz", content, cancel)).File;
        async Task CheckAsync()
        {
            (LibraryFile file, YearSummary year) = Assert.Single(await new LibraryStore(shelf.Open(), TimeProvider.System).YearsAsync(cancel));
            Assert.Equal(kept, file);
            Assert.Equal((right.Station, right.Kind), (year.Station, year.Kind));
            Assert.Equal(right.RowYears, year.RowYears);
        }

        await CheckAsync();

        // As an older program left it: no row, or one read otherwise.
        shelf.Sql("DELETE FROM library_years");
        await CheckAsync();
        shelf.Sql("UPDATE library_years SET form = 0, name = 'old', latitude_deg = 0");
        await CheckAsync();

        // The file itself is not touched any more.
        shelf.Sql(kind == Kind.Sqlite ? "UPDATE library SET content = x'00'" : "UPDATE library SET content = '\\x00'");
        await CheckAsync();
        shelf.Sql("DELETE FROM library_years");
        await Assert.ThrowsAsync<InvalidOperationException>(CheckAsync);
    }

    [Theory]
    [MemberData(nameof(Shelf.Both), MemberType = typeof(Shelf))]
    public async Task What_cannot_be_read_is_not_kept(Kind kind)
    {
        using Shelf shelf = new(kind, server);
        CancellationToken cancel = TestContext.Current.CancellationToken;
        LibraryStore library = new(shelf.Open(), TimeProvider.System);
        Assert.IsType<LibraryAnswer.Kept>(await library.AddAsync(LibraryKind.Catalogue, "generic", Embedded(typeof(CatalogueReader), "generic-catalogue.json"), cancel));
        foreach (LibraryKind each in Enum.GetValues<LibraryKind>())
        {
            Assert.NotEmpty(Assert.IsType<LibraryAnswer.Refused>(await library.AddAsync(each, "page", "<html>"u8.ToArray(), cancel)).Wrongs);
        }

        Assert.Empty(await library.ListAsync(LibraryKind.PriceBook, cancel));
        Assert.Single(await library.ListAsync(LibraryKind.Catalogue, cancel));
    }

    [Theory]
    [MemberData(nameof(Shelf.Both), MemberType = typeof(Shelf))]
    public async Task Statistics_of_a_year_are_kept_and_others_refused(Kind kind)
    {
        using Shelf shelf = new(kind, server);
        CancellationToken cancel = TestContext.Current.CancellationToken;
        LibraryStore library = new(shelf.Open(), TimeProvider.System);
        byte[] whole = Encoding.UTF8.GetBytes(
            "\tDesign Stat\tColdestMonth\tDB996\tDB990\tWS010c\tWS_DB996\n\tHeating\t1\t-18.5\t-15\t11\t3\n"
            + "\tDesign Stat\tHottestMonth\tDBR\tDB004\tWB_DB004\tDB010\tWB_DB010\tDB020\tWB_DB020\tWB004\tDB_WB004\tWS_DB004\n\tCooling\t7\t12\t33\t22\t31\t21.5\t30\t21\t24\t30\t4\n"
            + "\tDesign Stat\tWS010\tDBmin_mean\tDBmax_mean\tDBmin20years\tDBmax20years\n\tExtremes\t12\t-23\t36\t-28\t39\n");
        Assert.IsType<LibraryAnswer.Kept>(await library.AddAsync(LibraryKind.Statistics, "place.stat", whole, cancel));
        Assert.Contains("Right:", Assert.Single(Assert.IsType<LibraryAnswer.Refused>(await library.AddAsync(LibraryKind.Statistics, "place.stat", "nothing"u8.ToArray(), cancel)).Wrongs), StringComparison.Ordinal);
        Assert.Equal(whole, await library.ByNameAsync(LibraryKind.Statistics, "place.stat", cancel));
        Assert.Empty(await library.ListAsync(LibraryKind.DesignDays, cancel));
    }

    private static byte[] Embedded(Type beside, string name)
    {
        using Stream stream = beside.Assembly.GetManifestResourceStream(name)!;
        using MemoryStream copy = new();
        stream.CopyTo(copy);
        return copy.ToArray();
    }

    private static string DemoYear()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Glazewright.slnx")))
        {
            folder = folder.Parent;
        }

        return Path.Combine(folder?.FullName ?? throw new InvalidOperationException("The tests run inside the repository."), "examples", "weather", "demo-continental-42N.epw.gz");
    }
}
