namespace Glazewright.Papers.Package;

/// <summary>Whether a package may take a place: asked before anything is computed, so that nobody waits for a swap that must fail.</summary>
internal static class TargetChecks
{
    /// <summary>Refuses a folder that would have to be made below a file or a link to nothing.</summary>
    public static void Above(string parent)
    {
        string? above = parent;
        while (above is not null && !Directory.Exists(above))
        {
            if (IsTaken(above))
            {
                throw Problem(OutputProblemKind.NotAFolder, $"'{above}' is {Called(above)}, and a folder cannot be made in it", "a folder, or a name that is not taken");
            }

            above = Path.GetDirectoryName(above);
        }
    }

    /// <summary>Refuses a target that is no folder, holds other things, or holds an earlier package that may not be replaced.</summary>
    public static void Of(string target, string path, string set)
    {
        if (!Directory.Exists(target))
        {
            if (IsTaken(target))
            {
                throw Problem(OutputProblemKind.NotAFolder, $"'{path}' is {Called(target)}", "a folder, or a name that is not taken");
            }

            return;
        }

        if (Directory.EnumerateFileSystemEntries(target).Any() && PackageManifest.Of(target) is null)
        {
            throw File.Exists(Path.Combine(target, PackageManifest.FileName))
                ? Problem(OutputProblemKind.NotOurs, $"'{path}' holds files, and its {PackageManifest.FileName} is damaged or another program's", $"the {PackageManifest.FileName} as it was written, an empty folder, or a new name")
                : Problem(OutputProblemKind.NotOurs, $"'{path}' holds files and none of our packages ({PackageManifest.FileName} is missing)", "an empty folder, a new name, or a folder that holds an earlier package");
        }

        // Edited and added files are carried over into the new package: none may reach another reader that way.
        if (PackageManifest.Of(target) is { } earlier && earlier.Set != set)
        {
            throw Problem(OutputProblemKind.OtherReader, $"'{path}' holds {(earlier.Set.Length > 0 ? $"the set for the {earlier.Set}" : "a package that is no reader's set")}, which {(set.Length > 0 ? $"the set for the {set}" : "the new package")} must not mix with", "a folder of its own for each reader");
        }

        Replaceable(target, path);
    }

    /// <summary>
    /// Refuses an earlier package with a folder that may not be emptied, such as another user's. Renaming it would succeed (that asks the parent alone) and
    /// leave it stuck half replaced. Only trying tells, for rights come from owner, lists and mounts.
    /// </summary>
    public static void Replaceable(string earlier, string path)
    {
        if (!Directory.Exists(earlier))
        {
            return;
        }

        foreach (string folder in Directory.EnumerateDirectories(earlier, "*", SearchOption.AllDirectories).Prepend(earlier))
        {
            try
            {
                using FileStream probe = new(Path.Combine(folder, ".glazewright-may-write"), FileMode.Create, FileAccess.Write, FileShare.None, 1, FileOptions.DeleteOnClose);
            }
            catch (UnauthorizedAccessException)
            {
                throw Problem(OutputProblemKind.NotWritable, $"'{path}' holds an earlier package that you may not replace: no right to write in '{folder}'", "a folder of your own, or the right to write in this one");
            }
        }
    }

    private static bool IsTaken(string path) => File.Exists(path) || new FileInfo(path).LinkTarget is not null;

    // A link to nothing counts as a file that exists on some systems: only its end tells.
    private static string Called(string path) =>
        new FileInfo(path).LinkTarget is { } to && File.ResolveLinkTarget(path, returnFinalTarget: true) is not { Exists: true }
            ? $"a link to '{to}', which does not exist"
            : "a file";

    private static OutputProblemException Problem(OutputProblemKind kind, string wrong, string right) => new(new OutputProblem(kind, wrong, right));
}
