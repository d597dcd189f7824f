using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Npgsql;

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

    /// <summary>A store as a setting names it.</summary>
    /// <param name="setting"><c>sqlite:</c> and a path, or <c>postgres:</c> and a connection string.</param>
    /// <exception cref="FormatException">It is neither.</exception>
    /// <exception cref="StoreTooNewException">It was written by a newer program.</exception>
    public static StoreDoor Of(string setting)
    {
        ArgumentNullException.ThrowIfNull(setting);
        return setting.Split(':', 2) switch
        {
            ["sqlite", { Length: > 0 } path] => Sqlite(path),
            ["postgres", { Length: > 0 } connection] => Postgres(connection),
            _ => throw new FormatException("A store is named by 'sqlite:' and the path of its file, or by 'postgres:' and a connection string as 'Host=127.0.0.1;Database=jobs;Username=jobs'."),
        };
    }

    /// <summary>A store in a PostgreSQL database. An edit is acknowledged once its log is on the server's disk, whatever the database's own setting.</summary>
    /// <param name="connection">Connection string.</param>
    /// <exception cref="StoreTooNewException">It was written by a newer program.</exception>
    public static StoreDoor Postgres(string connection)
    {
        ArgumentException.ThrowIfNullOrEmpty(connection);
        return Open(new DbContextOptionsBuilder<StoreContext>().UseNpgsql(Durable(connection)));
    }

    private static string Durable(string connection)
    {
        NpgsqlConnectionStringBuilder builder = new(connection);
        builder.Options = $"{builder.Options} -c synchronous_commit=on".Trim();
        return builder.ToString();
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
