using Glazewright.Design.Contracts;
using Glazewright.Design.Document;

namespace Glazewright.Cli.Running;

/// <summary>Where a job lies and the files it names are looked for: beside its file, in a folder that holds one job, or in one zip with them. Names of files in a zip never become paths.</summary>
internal abstract class JobPlace
{
    private const int LongestFileBytes = 16_000_000;

    /// <summary>The document as typed.</summary>
    public string Text { get; private init; } = "";

    /// <summary>What stands beside the job, in words of a fault: "beside the job".</summary>
    public abstract string Beside { get; }

    /// <summary>Opens what a path leads to.</summary>
    /// <param name="path">A job document, a folder of one, or a packed job.</param>
    /// <param name="place">The place; null with a fault.</param>
    /// <returns>What is wrong.</returns>
    public static IReadOnlyList<Fault> Open(string path, out JobPlace? place)
    {
        place = null;
        try
        {
            if (Directory.Exists(path))
            {
                string[] jobs = [.. Directory.EnumerateFiles(path, "*.json").Where(IsJob).Order(StringComparer.Ordinal).Take(3)];
                return jobs.Length == 1 ? Open(jobs[0], out place)
                    : [NotFound(jobs.Length == 0 ? $"the folder '{path}' holds no job document" : $"the folder '{path}' holds several jobs", jobs.Length == 0 ? "a folder with one job document in it, or the path of a job document" : $"one of them, as {jobs[0]}")];
            }

            FileInfo file = new(path);
            if (!file.Exists)
            {
                return [NotFound($"there is no file '{path}'", "the path of a job document")];
            }

            if (file.Length > PackedJob.MostPackedBytes)
            {
                return [TooLarge(path)];
            }

            byte[] content = File.ReadAllBytes(path);
            if (PackedJob.IsZip(content))
            {
                switch (PackedJob.Read(content))
                {
                    case PackedJobReading.Read read:
                        place = new Packed(read) { Text = read.Text };
                        return [];
                    case PackedJobReading.Refused refused:
                        return refused.Faults;
                }
            }

            if (content.Length > LongestFileBytes)
            {
                return [TooLarge(path)];
            }

            using StreamReader reader = new(new MemoryStream(content));
            place = new Folder(Path.GetDirectoryName(Path.GetFullPath(path)) ?? ".") { Text = reader.ReadToEnd() };
            return [];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return [NotFound($"'{path}' cannot be read: {e.Message}", "a file that you may read")];
        }
    }

    /// <summary>Whether a path leads to a job; false for what cannot be read or is none.</summary>
    /// <param name="path">The path.</param>
    public static bool IsJob(string path) =>
        Open(path, out JobPlace? place).Count == 0 && JobDocument.Read(place!.Text) is { } document && document.Faults.All(f => f.Kind != FaultKind.NotJson) && document.Find("/glazewright") is not null;

    /// <summary>A file by its name.</summary>
    /// <param name="name">Its name, without folders.</param>
    /// <returns>Its content, or null where there is none such.</returns>
    /// <exception cref="IOException">It is there and cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public abstract byte[]? Find(string name);

    private static Fault TooLarge(string path) => new(FaultKind.NotJson, "", "", 0, 0, $"'{path}' is far too large for a job document", "a JSON file of some kilobytes");

    private static Fault NotFound(string wrong, string right) => new(FaultKind.NotFound, "", "", 0, 0, wrong, right);

    private sealed class Folder(string folder) : JobPlace
    {
        public override string Beside => "beside the job";

        public override byte[]? Find(string name) =>
            new[] { Path.Combine(folder, name), Path.Combine(folder, "weather", name), Path.Combine(folder, "..", "weather", name) }.FirstOrDefault(File.Exists) is { } path ? File.ReadAllBytes(path) : null;
    }

    private sealed class Packed(PackedJobReading.Read read) : JobPlace
    {
        public override string Beside => "in the packed job";

        public override byte[]? Find(string name) => read.Find(name)?.Content.ToArray();
    }
}
