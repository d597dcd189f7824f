using System.Security.Cryptography;
using System.Text;
using Glazewright.Design.Document;

namespace Glazewright.Papers.Package;

/// <summary>One file of a package.</summary>
/// <param name="Name">Path inside the package, with forward slashes.</param>
/// <param name="Bytes">Size.</param>
/// <param name="Sha256">Hash of its content, lower-case hex.</param>
public sealed record ManifestEntry(string Name, long Bytes, string Sha256);

/// <summary>The list of a package's files: only files named here are ever replaced or removed.</summary>
/// <param name="Entries">The files, by name.</param>
/// <param name="Set">The reader whose set it is; empty for any other package.</param>
public sealed record PackageManifest(IReadOnlyList<ManifestEntry> Entries, string Set = "")
{
    /// <summary>Name of the manifest in the package.</summary>
    public const string FileName = "manifest.json";

    private const string Mark = "glazewrightPackage";

    /// <summary>The manifest as JSON.</summary>
    /// <returns>Text with LF line ends; the same files give the same text.</returns>
    public string Write()
    {
        StringBuilder json = new();
        json.Append("{\n  \"").Append(Mark).Append("\": 1,\n");
        if (Set.Length > 0)
        {
            json.Append("  \"for\": ").Append(JsonText.Quote(Set)).Append(",\n");
        }

        json.Append("  \"files\": [\n");
        ManifestEntry[] sorted = [.. Entries.OrderBy(e => e.Name, StringComparer.Ordinal)];
        for (int i = 0; i < sorted.Length; i++)
        {
            json.Append("    { \"name\": ").Append(JsonText.Quote(sorted[i].Name)).Append(", \"bytes\": ").Append(sorted[i].Bytes)
                .Append(", \"sha256\": \"").Append(sorted[i].Sha256).Append("\" }").Append(i + 1 < sorted.Length ? ",\n" : "\n");
        }

        return json.Append("  ]\n}\n").ToString();
    }

    /// <summary>Reads a folder's manifest.</summary>
    /// <param name="folder">Folder of the package.</param>
    /// <returns>The manifest; null when the folder has none of ours.</returns>
    public static PackageManifest? Of(string folder)
    {
        string path = Path.Combine(folder, FileName);
        if (!File.Exists(path) || new FileInfo(path).Length > 2_000_000)
        {
            return null;
        }

        JobDocument document = JobDocument.Read(File.ReadAllText(path));
        if (document.Faults.Count > 0 || document.Find("/" + Mark) is not NumberNode || document.Find("/files") is not ListNode files)
        {
            return null;
        }

        List<ManifestEntry> entries = [];
        foreach (Node item in files.Items)
        {
            if (item is ObjectNode entry && entry.Find("name") is TextNode name && IsInside(name.Text))
            {
                entries.Add(new ManifestEntry(name.Text, 0, entry.Find("sha256") is TextNode hash ? hash.Text : ""));
            }
        }

        return new PackageManifest(entries, document.Find("/for") is TextNode set ? set.Text : "");
    }

    /// <summary>The entry of a content.</summary>
    /// <param name="name">Path inside the package.</param>
    /// <param name="content">The bytes.</param>
    /// <returns>Its entry.</returns>
    public static ManifestEntry Entry(string name, ReadOnlySpan<byte> content) =>
        new(name, content.Length, Convert.ToHexStringLower(SHA256.HashData(content)));

    /// <summary>True for a path that stays inside its folder.</summary>
    /// <param name="name">Path with forward slashes.</param>
    /// <returns>False for an absolute path, a backslash, an empty part, <c>.</c> or <c>..</c>.</returns>
    public static bool IsInside(string name) =>
        name.Length is > 0 and < 200 && !name.Contains('\\', StringComparison.Ordinal) && !Path.IsPathRooted(name)
        && name.Split('/').All(part => part.Length > 0 && part is not ("." or ".."));
}
