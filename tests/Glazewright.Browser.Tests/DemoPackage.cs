using System.Diagnostics;

namespace Glazewright.Browser.Tests;

/// <summary>The demo's package, made once by the wrapper as a user would make it, from another folder.</summary>
public sealed class DemoPackage : IDisposable
{
    private readonly DirectoryInfo _temporary = Directory.CreateTempSubdirectory("glazewright browser ");

    public DemoPackage()
    {
        (int exit, string output) = Run(Path.Combine(Root, "glazewright"), ["demo", "--out", Folder], TimeSpan.FromMinutes(15));
        Assert.True(exit == 0, output);
    }

    /// <summary>Root of the repository.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>The package's folder.</summary>
    public string Folder => Path.Combine(_temporary.FullName, "out");

    /// <summary>Scratch folder beside it.</summary>
    public string Scratch => _temporary.FullName;

    /// <summary>The browser, or null where there is none.</summary>
    public static string? Chromium { get; } =
        new[] { "/usr/bin/chromium", "/usr/bin/chromium-browser" }.FirstOrDefault(File.Exists);

    public void Dispose() => _temporary.Delete(recursive: true);

    /// <summary>Runs a program and waits for it.</summary>
    /// <param name="program">Its path.</param>
    /// <param name="arguments">Its arguments.</param>
    /// <param name="limit">Longest time it may take.</param>
    /// <returns>Exit code, and both outputs.</returns>
    public (int Exit, string Output) Run(string program, IEnumerable<string> arguments, TimeSpan limit)
    {
        ProcessStartInfo start = new(program, arguments)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Scratch,
        };
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        Task<string> error = process.StandardError.ReadToEndAsync();
        if (!process.WaitForExit(limit))
        {
            process.Kill(entireProcessTree: true);
            return (-1, $"{program} took longer than {limit}.");
        }

        return (process.ExitCode, output.Result + error.Result);
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
