using Glazewright.Design.Contracts;

namespace Glazewright.Papers.Package;

/// <summary>Brings a swap that was interrupted to an end.</summary>
internal static class SwapRepair
{
    /// <summary>
    /// Three places where a run can have died: before the first rename (drop the unfinished folder), between the two (put the earlier package back),
    /// after the second (carry the user's files over and drop the earlier package).
    /// </summary>
    /// <returns>Names of the copies of edited files that were carried over.</returns>
    public static List<string> Run(string target, SwapNames names)
    {
        List<string> kept = [];
        if (Directory.Exists(names.Old))
        {
            if (Directory.Exists(target))
            {
                kept = CarryOver(target, names.Old);
            }
            else
            {
                Directory.Move(names.Old, target);
            }
        }

        if (Directory.Exists(names.Fresh))
        {
            Directory.Delete(names.Fresh, recursive: true);
        }

        return kept;
    }

    /// <summary>
    /// Moves files that are not the earlier package's into the new one, then drops the earlier package. A file of ours that is no longer as it was written
    /// was edited by hand: it is the user's now, and lies beside the new one as <c>plan.edited.svg</c>.
    /// </summary>
    /// <returns>Names of the copies of edited files.</returns>
    public static List<string> CarryOver(string target, string old)
    {
        EqList<ManifestEntry> entries = (PackageManifest.Of(old)?.Entries ?? []).ToEqList();
        HashSet<string> ours = [.. entries.Select(e => e.Name), PackageManifest.FileName];
        List<string> kept = [];
        foreach (ManifestEntry entry in entries)
        {
            string from = Path.Combine(old, entry.Name);
            if (File.Exists(from) && PackageManifest.Entry(entry.Name, File.ReadAllBytes(from)).Sha256 != entry.Sha256)
            {
                string copy = Unused(target, old, entry.Name);
                string to = Path.Combine(target, copy);
                Directory.CreateDirectory(Path.GetDirectoryName(to)!);
                File.Move(from, to);
                kept.Add(copy);
            }
        }

        foreach (string path in Directory.EnumerateFiles(old, "*", SearchOption.AllDirectories).ToArray())
        {
            string name = Path.GetRelativePath(old, path).Replace(Path.DirectorySeparatorChar, '/');
            string to = Path.Combine(target, name);
            if (!ours.Contains(name) && !File.Exists(to))
            {
                Directory.CreateDirectory(Path.GetDirectoryName(to)!);
                File.Move(path, to);
            }
        }

        foreach (string path in Directory.EnumerateDirectories(old, "*", SearchOption.AllDirectories).ToArray())
        {
            string to = Path.Combine(target, Path.GetRelativePath(old, path));
            bool userEmpty = !Directory.EnumerateFileSystemEntries(path).Any() && !ours.Any(n => n.StartsWith(Path.GetRelativePath(old, path).Replace(Path.DirectorySeparatorChar, '/') + "/", StringComparison.Ordinal));
            if (userEmpty)
            {
                Directory.CreateDirectory(to);
            }
        }

        Directory.Delete(old, recursive: true);
        return kept;
    }

    // Neither in the new package nor among the user's files that are still to come over.
    private static string Unused(string target, string old, string name)
    {
        string ending = Path.GetExtension(name);
        string stem = name[..^ending.Length];
        for (int n = 1; ; n++)
        {
            string copy = stem + (n == 1 ? ".edited" : FormattableString.Invariant($".edited-{n}")) + ending;
            if (!File.Exists(Path.Combine(target, copy)) && !File.Exists(Path.Combine(old, copy)))
            {
                return copy;
            }
        }
    }
}
