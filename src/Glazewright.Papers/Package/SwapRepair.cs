namespace Glazewright.Papers.Package;

/// <summary>Brings a swap that was interrupted to an end.</summary>
internal static class SwapRepair
{
    /// <summary>
    /// Three places where a run can have died: before the first rename (drop the unfinished folder), between the two (put the earlier package back),
    /// after the second (carry the user's files over and drop the earlier package).
    /// </summary>
    public static void Run(string target, SwapNames names)
    {
        if (Directory.Exists(names.Old))
        {
            if (Directory.Exists(target))
            {
                CarryOver(target, names.Old);
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
    }

    /// <summary>Moves files that are not the earlier package's into the new one, then drops the earlier package.</summary>
    public static void CarryOver(string target, string old)
    {
        HashSet<string> ours = [.. (PackageManifest.Of(old)?.Entries ?? []).Select(e => e.Name), PackageManifest.FileName];
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
    }
}
