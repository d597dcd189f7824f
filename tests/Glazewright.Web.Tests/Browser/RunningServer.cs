using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace Glazewright.Web.Tests.Browser;

/// <summary>The server as a user starts it, with a data folder of its own.</summary>
public sealed class RunningServer : IAsyncDisposable
{
    private readonly DirectoryInfo _data = Directory.CreateTempSubdirectory("glazewright-web-");
    private readonly int _port = FreePort();
    private Process? _process;

    /// <summary>Where it answers, without a slash at the end.</summary>
    public string Url => $"http://127.0.0.1:{_port}";

    public string Data => _data.FullName;

    /// <summary>The server's process.</summary>
    public int ProcessId => _process!.Id;

    /// <summary>Root of the repository.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>Starts it and waits until it says where it is open.</summary>
    public async Task StartAsync()
    {
        ProcessStartInfo start = new(Path.Combine(Root, "glazewright"), ["serve", "--data", _data.FullName, "--urls", Url])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        // A server built by hand spares a developer the publishing.
        if (Environment.GetEnvironmentVariable("GLAZEWRIGHT_WEB_PROGRAM") is { Length: > 0 } built)
        {
            start = new(built, start.ArgumentList.Skip(1)) { RedirectStandardOutput = true, RedirectStandardError = true };
        }

        _process = Process.Start(start)!;
        _process.ErrorDataReceived += (_, e) =>
        {
            lock (Log)
            {
                Log.Add(e.Data ?? "");
            }
        };
        _process.BeginErrorReadLine();
        using CancellationTokenSource limit = new(TimeSpan.FromMinutes(6));
        string? line = await _process.StandardOutput.ReadLineAsync(limit.Token);
        Assert.True(line?.Contains(Url, StringComparison.Ordinal), $"{line} {string.Join('\n', Log)}");
    }

    /// <summary>What it logged.</summary>
    public List<string> Log { get; } = [];

    /// <summary>Kills it without a word.</summary>
    public async Task KillAsync()
    {
        _process!.Kill(entireProcessTree: true);
        await _process.WaitForExitAsync();
    }

    public async ValueTask DisposeAsync()
    {
        if (_process is { HasExited: false })
        {
            await KillAsync();
        }

        _process?.Dispose();
        _data.Delete(recursive: true);
    }

    private static int FreePort()
    {
        using TcpListener listener = new(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static string FindRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Glazewright.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests run inside the repository.");
    }
}
