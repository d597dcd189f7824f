using System.Data.Common;
using Microsoft.Data.Sqlite;
using Npgsql;

namespace Glazewright.Store.Tests.Databases;

public enum Kind
{
    Sqlite,
    Postgres,
}

/// <summary>An empty store of a kind for one test.</summary>
public sealed class Shelf : IDisposable
{
    private readonly string _room = Directory.CreateTempSubdirectory("glazewright-store-").FullName;
    private readonly Kind _kind;

    public Shelf(Kind kind, PostgresServer server)
    {
        _kind = kind;
        if (kind == Kind.Sqlite)
        {
            Setting = "sqlite:" + Path.Combine(_room, "in", "jobs.db");
            return;
        }

        Assert.SkipUnless(PostgresServer.IsThere, "NOT TESTED on PostgreSQL: it is not on this machine. Install Debian's package 'postgresql'.");
        string schema = Path.GetFileName(_room).ToLowerInvariant().Replace('-', '_').Replace('.', '_');
        Setting = $"postgres:{server.Connection};Search Path={schema}";
        Sql($"CREATE SCHEMA {schema}");
    }

    public static TheoryData<Kind> Both => [Kind.Sqlite, Kind.Postgres];

    public string Setting { get; }

    private string Connection => _kind == Kind.Sqlite ? $"Data Source={Setting.Split(':', 2)[1]}" : Setting.Split(':', 2)[1];

    public StoreDoor Open() => StoreDoor.Of(Setting);

    /// <summary>Runs SQL past the store; gives the first value.</summary>
    public object? Sql(string sql)
    {
        using DbConnection connection = _kind == Kind.Sqlite ? new SqliteConnection(Connection) : new NpgsqlConnection(Connection);
        connection.Open();
        using DbCommand command = connection.CreateCommand();
#pragma warning disable CA2100 // the tests' own words
        command.CommandText = sql;
#pragma warning restore CA2100
        return command.ExecuteScalar();
    }

    public void Dispose()
    {
        if (_kind == Kind.Sqlite)
        {
            using SqliteConnection ours = new(Connection);
            SqliteConnection.ClearPool(ours);
        }

        try
        {
            Directory.Delete(_room, recursive: true);
        }
        catch (IOException)
        {
            // A killed writer's file may still be held for a moment; the folder is a temporary one.
        }
    }
}
