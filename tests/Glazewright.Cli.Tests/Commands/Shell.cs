using Glazewright.Cli.Running;

namespace Glazewright.Cli.Tests.Commands;

/// <summary>Runs a command line in this process.</summary>
internal static class Shell
{
    public static string Root { get; } = Find();

    public static string Example(string name) => Path.Combine(Root, "examples", name);

    public static Ran Run(params string[] args) => Run(CancellationToken.None, args);

    public static Ran Run(CancellationToken cancel, params string[] args)
    {
        using StringWriter output = new() { NewLine = "\n" };
        using StringWriter errors = new() { NewLine = "\n" };
        int exit = CommandLine.Run(args, new Desk(output, errors, false, Root, cancel));
        return new Ran(exit, output.ToString(), errors.ToString());
    }

    /// <summary>Runs with a standard output that is full.</summary>
    public static Ran RunWithoutAnswer(params string[] args)
    {
        using StreamWriter output = new(new StandardStream(new FullDisk(), tells: true)) { NewLine = "\n" };
        using StringWriter errors = new() { NewLine = "\n" };
        int exit = CommandLine.Run(args, new Desk(output, errors, false, Root, CancellationToken.None));
        return new Ran(exit, "", errors.ToString());
    }

    private sealed class FullDisk : MemoryStream
    {
        public override void Write(byte[] buffer, int offset, int count) => throw new IOException("No space left on device");
    }

    private static string Find()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "Glazewright.slnx")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return folder ?? throw new InvalidOperationException("The repository's root was not found.");
    }
}

/// <summary>What came of a command line.</summary>
/// <param name="Exit">Exit code.</param>
/// <param name="Out">Standard output.</param>
/// <param name="Errors">Standard error.</param>
internal sealed record Ran(int Exit, string Out, string Errors);
