using Glazewright.Design.Document;

namespace Glazewright.Web.Jobs;

/// <summary>A job that came with the program.</summary>
/// <param name="Name">As its document says.</param>
/// <param name="Text">The document.</param>
public sealed record ExampleJob(string Name, string Text);

/// <summary>The jobs that came with the program.</summary>
/// <param name="folder">Where they lie.</param>
public sealed class ExampleJobs(string folder)
{
    /// <summary>All of them, by name.</summary>
    public IReadOnlyList<ExampleJob> All { get; } =
    [
        .. (Directory.Exists(folder) ? Directory.EnumerateFiles(folder, "*.json") : [])
            .Select(File.ReadAllText).Select(text => new ExampleJob(NameOf(text), text)).Where(e => e.Name.Length > 0).OrderBy(e => e.Name, StringComparer.Ordinal),
    ];

    private static string NameOf(string text) => JobDocument.Read(text).Find("/name") is TextNode name ? name.Text : "";
}
