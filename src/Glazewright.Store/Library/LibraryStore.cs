using System.Security.Cryptography;
using Microsoft.EntityFrameworkCore;

namespace Glazewright.Store.Library;

/// <summary>Kinds of files that jobs stand on.</summary>
public enum LibraryKind
{
    /// <summary>A weather year.</summary>
    Weather,

    /// <summary>A catalogue of generic equipment.</summary>
    Catalogue,

    /// <summary>A price book: the contractor's own.</summary>
    PriceBook,
}

/// <summary>A file of the library.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Name">Its name.</param>
/// <param name="Sha256">Hash of its content, lower-case hex: what a job pins.</param>
/// <param name="AtUtc">When it came in.</param>
public sealed record LibraryFile(LibraryKind Kind, string Name, string Sha256, DateTimeOffset AtUtc);

/// <summary>The files that jobs stand on, kept by the hash of their content: what a job was computed with stays.</summary>
/// <param name="door">The store.</param>
/// <param name="clock">Tells the time.</param>
public sealed class LibraryStore(StoreDoor door, TimeProvider clock)
{
    /// <summary>Puts a file in; the same content is there once, under its first name.</summary>
    /// <param name="kind">What it is.</param>
    /// <param name="name">Its name.</param>
    /// <param name="content">Its bytes.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<LibraryFile> AddAsync(LibraryKind kind, string name, byte[] content, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(content);
        string hash = Convert.ToHexStringLower(SHA256.HashData(content));
        await using StoreContext context = door.Context();
        if (await Find(context, kind, hash, cancel) is { } there)
        {
            return Of(there);
        }

        LibraryRow row = new() { Kind = kind.ToString(), Sha256 = hash, Name = name, AtMs = clock.GetUtcNow().ToUnixTimeMilliseconds(), Content = content };
        context.Library.Add(row);
        await context.SaveChangesAsync(cancel);
        return Of(row);
    }

    /// <summary>Files of a kind, the newest first.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<IReadOnlyList<LibraryFile>> ListAsync(LibraryKind kind, CancellationToken cancel = default)
    {
        string word = kind.ToString();
        await using StoreContext context = door.Context();
        var rows = await context.Library.AsNoTracking().Where(r => r.Kind == word).OrderByDescending(r => r.AtMs).ThenBy(r => r.Sha256)
            .Select(r => new { r.Name, r.Sha256, r.AtMs }).ToArrayAsync(cancel);
        return [.. rows.Select(r => new LibraryFile(kind, r.Name, r.Sha256, DateTimeOffset.FromUnixTimeMilliseconds(r.AtMs)))];
    }

    /// <summary>The newest file of a name, or null.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="name">Its name.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<byte[]?> ByNameAsync(LibraryKind kind, string name, CancellationToken cancel = default)
    {
        string word = kind.ToString();
        await using StoreContext context = door.Context();
        return await context.Library.AsNoTracking().Where(r => r.Kind == word && r.Name == name).OrderByDescending(r => r.AtMs).Select(r => r.Content).FirstOrDefaultAsync(cancel);
    }

    /// <summary>The file of a hash, or null.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="sha256">Hash of its content.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<byte[]?> ByHashAsync(LibraryKind kind, string sha256, CancellationToken cancel = default)
    {
        await using StoreContext context = door.Context();
        return (await Find(context, kind, sha256, cancel))?.Content;
    }

    private static Task<LibraryRow?> Find(StoreContext context, LibraryKind kind, string hash, CancellationToken cancel)
    {
        string word = kind.ToString();
        return context.Library.AsNoTracking().FirstOrDefaultAsync(r => r.Kind == word && r.Sha256 == hash, cancel);
    }

    private static LibraryFile Of(LibraryRow row) => new(Enum.Parse<LibraryKind>(row.Kind), row.Name, row.Sha256, DateTimeOffset.FromUnixTimeMilliseconds(row.AtMs));
}
