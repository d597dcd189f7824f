using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Text;

namespace Glazewright.Cli.Tests.Commands;

/// <summary>Ctrl-C typed at a terminal while the year runs: the program itself, in a process of its own.</summary>
public class InterruptTests
{
    private const string YearRuns = "A year, minute by minute";
    private static readonly TimeSpan s_patience = TimeSpan.FromMinutes(3);

    [Fact]
    public async Task A_year_stopped_by_ctrl_c_leaves_no_half_package()
    {
        Assert.SkipUnless(File.Exists("/usr/bin/script"), "no program here makes a terminal to type at");
        string room = Directory.CreateTempSubdirectory("glazewright-stop-").FullName;
        try
        {
            // One thread: while the year runs nothing else begins, and its words stand on the screen.
            // Whoever runs the tests in the background may have interrupts ignored, and children with them.
            string call = $"exec env --default-signal=INT dotnet '{Program()}' design '{Shell.Example("three-lines.json")}' --out '{Path.Combine(room, "out")}' --threads 1";
            ProcessStartInfo start = new("/usr/bin/script", ["--quiet", "--return", "--command", call, "/dev/null"])
            {
                RedirectStandardInput = true,
                RedirectStandardOutput = true,
                Environment = { ["TERM"] = "xterm", ["SHELL"] = "/bin/sh" },
            };
            using Process terminal = Process.Start(start)!;
            using CancellationTokenSource late = new(s_patience);
            try
            {
                StringBuilder screen = new();
                await Until(terminal, screen, YearRuns, late.Token);
                Assert.NotEmpty(Directory.GetFileSystemEntries(room)); // the package in the making and its lock lie beside the target
                Assert.False(Directory.Exists(Path.Combine(room, "out")));
                await terminal.StandardInput.WriteAsync("\u0003".AsMemory(), late.Token);
                await terminal.StandardInput.FlushAsync(late.Token);
                await Until(terminal, screen, null, late.Token);
                await terminal.WaitForExitAsync(late.Token);

                Assert.Equal(130, terminal.ExitCode);
                Assert.Contains("Stopped; nothing was changed.", screen.ToString(), StringComparison.Ordinal);
                Assert.DoesNotContain(YearRuns + ", house A: done", screen.ToString(), StringComparison.Ordinal);
                Assert.Empty(Directory.GetFileSystemEntries(room));
            }
            finally
            {
                if (!terminal.HasExited)
                {
                    terminal.Kill(entireProcessTree: true);
                }
            }
        }
        finally
        {
            Directory.Delete(room, recursive: true);
        }
    }

    // Reads what the screen shows until some words stand there, or to its end.
    private static async Task Until(Process terminal, StringBuilder screen, string? words, CancellationToken late)
    {
        char[] some = new char[4096];
        while (words is null || !screen.ToString().Contains(words, StringComparison.Ordinal))
        {
            int read = await terminal.StandardOutput.ReadAsync(some, late);
            if (read == 0)
            {
                Assert.True(words is null, $"The program ended before '{words}':\n{screen}");
                return;
            }

            screen.Append(some, 0, read);
        }
    }

    // Built beside the tests, with its native libraries.
    private static string Program()
    {
        string configuration = Path.GetFileName(Path.TrimEndingDirectorySeparator(AppContext.BaseDirectory));
        string built = Path.Combine(Shell.Root, "artifacts", "bin", "Glazewright.Cli", $"{configuration}_{RuntimeInformation.RuntimeIdentifier}", "glazewright.dll");
        return File.Exists(built) ? built : Path.Combine(AppContext.BaseDirectory, "glazewright.dll");
    }
}
