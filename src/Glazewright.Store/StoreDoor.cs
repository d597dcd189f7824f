using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Glazewright.Store;

/// <summary>Opens a store: an SQLite file, or a PostgreSQL database by its connection string.</summary>
public sealed class StoreDoor
{
    private readonly DbContextOptions<StoreContext> _options;

    private StoreDoor(DbContextOptions<StoreContext> options) => _options = options;

    /// <summary>A store in an SQLite file; it and its folder are made. Every acknowledged edit is on the disk: write-ahead log, full synchronisation.</summary>
    /// <param name="path">The file.</param>
    /// <exception cref="StoreTooNewException">It was written by a newer program.</exception>
    public static StoreDoor Sqlite(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
        string connection = new SqliteConnectionStringBuilder { DataSource = path, ForeignKeys = true, DefaultTimeout = 30 }.ToString();
        return Open(new DbContextOptionsBuilder<StoreContext>().UseSqlite(connection).AddInterceptors(new FullySynchronised()));
    }

    /// <summary>A store in a PostgreSQL database.</summary>
    /// <param name="connection">Connection string.</param>
    /// <exception cref="StoreTooNewException">It was written by a newer program.</exception>
    public static StoreDoor Postgres(string connection)
    {
        ArgumentException.ThrowIfNullOrEmpty(connection);
        return Open(new DbContextOptionsBuilder<StoreContext>().UseNpgsql(connection));
    }

    internal StoreContext Context() => new(_options);

    private static StoreDoor Open(DbContextOptionsBuilder<StoreContext> builder)
    {
        StoreDoor door = new(builder.Options);
        using StoreContext context = door.Context();
        StoreSchema.BringUp(context);
        return door;
    }

    private sealed class FullySynchronised : DbConnectionInterceptor
    {
        private const string Settings = "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;";

        public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
        {
            using DbCommand command = connection.CreateCommand();
            command.CommandText = Settings;
            command.ExecuteNonQuery();
        }

        public override async Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
        {
            await using DbCommand command = connection.CreateCommand();
            command.CommandText = Settings;
            await command.ExecuteNonQueryAsync(cancellationToken);
        }
    }
}
