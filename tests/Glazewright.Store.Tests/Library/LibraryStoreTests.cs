using System.Text;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Price;
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

    private static byte[] Embedded(Type beside, string name)
    {
        using Stream stream = beside.Assembly.GetManifestResourceStream(name)!;
        using MemoryStream copy = new();
        stream.CopyTo(copy);
        return copy.ToArray();
    }
}
