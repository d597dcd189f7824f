using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Npgsql;

[assembly: AssemblyFixture(typeof(Glazewright.Store.Tests.Databases.PostgresServer))]

namespace Glazewright.Store.Tests.Databases;

/// <summary>A PostgreSQL server for this run: on loopback, in a folder that goes with it, never as root. Null port where the machine has no PostgreSQL.</summary>
public sealed class PostgresServer : IAsyncLifetime
{
    private static readonly string? s_programs = FindPrograms();

    private string _room = "";
    private int _port;

    /// <summary>Whether the machine has PostgreSQL.</summary>
    public static bool IsThere => s_programs is not null;

    public string Connection => $"Host=127.0.0.1;Port={_port};Database=postgres;Username=keeper";

    public async ValueTask InitializeAsync()
    {
        if (s_programs is null)
        {
            return;
        }

        _room = Directory.CreateTempSubdirectory("glazewright-postgres-").FullName;
        string data = Path.Combine(_room, "data");
        if (Environment.IsPrivilegedProcess)
        {
            await Do("chown", "postgres", _room);
        }

        using (TcpListener free = new(IPAddress.Loopback, 0))
        {
            free.Start();
            _port = ((IPEndPoint)free.LocalEndpoint).Port;
        }

        await AsKeeper("initdb", "-D", data, "-U", "keeper", "-A", "trust", "-N", "-E", "UTF8", "--locale=C");
        // What is tested is the program, not the disk: the server need not wait for it.
        await AsKeeper("pg_ctl", "-D", data, "-w", "-t", "120", "-l", Path.Combine(_room, "log"), "-o", $"-p {_port} -c listen_addresses=127.0.0.1 -c unix_socket_directories= -c fsync=off", "start");
    }

    public async ValueTask DisposeAsync()
    {
        if (_room.Length > 0)
        {
            NpgsqlConnection.ClearAllPools();
            await AsKeeper("pg_ctl", "-D", Path.Combine(_room, "data"), "-m", "immediate", "stop");
            Directory.Delete(_room, recursive: true);
        }
    }

    private static string? FindPrograms() =>
        Directory.Exists("/usr/lib/postgresql")
            ? Directory.GetDirectories("/usr/lib/postgresql").Select(d => Path.Combine(d, "bin")).Where(d => File.Exists(Path.Combine(d, "initdb"))).Order().LastOrDefault()
            : (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).FirstOrDefault(d => File.Exists(Path.Combine(d, "initdb")) && File.Exists(Path.Combine(d, "pg_ctl")));

    private static Task AsKeeper(string program, params string[] args)
    {
        string path = Path.Combine(s_programs!, program);
        return Environment.IsPrivilegedProcess ? Do("runuser", ["-u", "postgres", "--", path, .. args]) : Do(path, args);
    }

    // Output goes nowhere: a server keeps what it inherits, and a reader of it would wait for the server's end.
    private static async Task Do(string program, params string[] args)
    {
        ProcessStartInfo start = new("/bin/sh", ["-c", "exec \"$0\" \"$@\" >/dev/null 2>&1", program, .. args]) { WorkingDirectory = "/tmp" };
        using Process process = Process.Start(start)!;
        await process.WaitForExitAsync();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"{program} {string.Join(' ', args)} ended with {process.ExitCode}");
        }
    }
}
