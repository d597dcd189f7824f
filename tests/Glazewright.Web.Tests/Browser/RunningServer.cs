using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace Glazewright.Web.Tests.Browser;

/// <summary>The server as a user starts it, with a data folder of its own.</summary>
/// <param name="more">More of its command line; <c>{url}</c> stands for where it listens in the clear, <c>{port}</c> for its port.</param>
public sealed class RunningServer(params string[] more) : IAsyncDisposable
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
        string[] others = [.. more.Select(m => m.Replace("{port}", _port.ToString(System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal))];
        _process = Process.Start(Call(["--data", _data.FullName, .. others.Contains("--urls") ? (string[])[] : ["--urls", Url], .. others]))!;
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
        Assert.True(line?.Contains("is open at", StringComparison.Ordinal), $"{line} {string.Join('\n', Log)}");
    }

    /// <summary>Calls the program and waits for its end.</summary>
    /// <param name="arguments">Behind <c>serve</c>.</param>
    /// <param name="typed">What it reads.</param>
    public static async Task<(int Exit, string Out, string Error)> CallAsync(string[] arguments, string typed)
    {
        using Process process = Process.Start(Call(arguments))!;
        await process.StandardInput.WriteAsync(typed);
        process.StandardInput.Close();
        Task<string> told = process.StandardOutput.ReadToEndAsync();
        string error = await process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        return (process.ExitCode, await told, error);
    }

    // A server built by hand spares a developer the publishing.
    private static ProcessStartInfo Call(string[] arguments)
    {
        string? built = Environment.GetEnvironmentVariable("GLAZEWRIGHT_WEB_PROGRAM");
        return new(built is { Length: > 0 } ? built : Path.Combine(Root, "glazewright"), built is { Length: > 0 } ? arguments : ["serve", .. arguments])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
    }

    /// <summary>Its port.</summary>
    public int Port => _port;

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
