using System.Diagnostics.CodeAnalysis;
using System.Text;

namespace Glazewright.Papers.Package;

/// <summary>
/// Writes a package into a folder as a whole or not at all. It is built beside the target and swapped in by two renames; files of the user's own are
/// carried over; a swap that was interrupted is finished or undone when the folder is opened the next time.
/// </summary>
public sealed class OutputFolder : IDisposable
{
    private const int LinuxNoSpace = 28;
    private const int LinuxQuota = 122;
    private const int LinuxReadOnly = 30;
    private const int LinuxNoAccess = 13;
    private const int LinuxNameTooLong = 36;
    private const int WindowsDiskFull = 0x70;

    private readonly string _target;
    private readonly SwapNames _names;
    private readonly FileStream _lock;
    private readonly List<ManifestEntry> _entries = [];
    private readonly List<string> _kept = [];
    private bool _done;

    private readonly string _set;

    private OutputFolder(string target, SwapNames names, FileStream @lock, string set)
    {
        _set = set;
        _target = target;
        _names = names;
        _lock = @lock;
    }

    /// <summary>Where files of the earlier package that were edited by hand now lie in this one; known once the package is in its place.</summary>
    public IReadOnlyList<string> KeptCopies => _kept;

    /// <summary>Opens a target: looks whether it may be written, repairs an interrupted swap, starts the folder beside it.</summary>
    /// <param name="path">The folder the package goes to; it need not exist, its parent must or is made.</param>
    /// <param name="folder">The opened folder, when the answer is true.</param>
    /// <param name="problem">What is wrong, when it is false.</param>
    /// <param name="set">The reader whose set is written; empty for any other package.</param>
    /// <returns>True when writing may begin.</returns>
    public static bool TryOpen(string path, [NotNullWhen(true)] out OutputFolder? folder, [NotNullWhen(false)] out OutputProblem? problem, string set = "")
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        folder = null;
        FileStream? @lock = null;
        try
        {
            string target = Resolve(path);
            SwapNames names = SwapNames.Of(target);
            TargetChecks.Above(names.Parent);
            Directory.CreateDirectory(names.Parent);
            @lock = Lock(names, path);
            TargetChecks.Replaceable(names.Old, path);
            List<string> kept = SwapRepair.Run(target, names);
            TargetChecks.Of(target, path, set);
            Directory.CreateDirectory(names.Fresh);
            folder = new OutputFolder(target, names, @lock, set);
            folder._kept.AddRange(kept);
            problem = null;
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            @lock?.Dispose();
            problem = ProblemOf(e, path, HasPackage(path));
            return false;
        }
    }

    /// <summary>Adds a file to the package.</summary>
    /// <param name="name">Path inside the package, with forward slashes.</param>
    /// <param name="content">The bytes.</param>
    /// <exception cref="ArgumentException">The name leaves the package, is the manifest's, or is taken.</exception>
    /// <exception cref="OutputProblemException">The disk is full, or writing failed otherwise.</exception>
    public void Add(string name, ReadOnlySpan<byte> content)
    {
        ArgumentNullException.ThrowIfNull(name);
        if (!PackageManifest.IsInside(name) || name == PackageManifest.FileName || _entries.Exists(e => e.Name == name))
        {
            throw new ArgumentException($"'{name}' cannot be the name of a file of the package.", nameof(name));
        }

        try
        {
            string path = Path.Combine(_names.Fresh, name);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            using FileStream stream = new(path, FileMode.CreateNew, FileAccess.Write);
            stream.Write(content);
            stream.Flush(flushToDisk: false);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new OutputProblemException(ProblemOf(e, _target, HasPackage(_target)), e);
        }

        _entries.Add(PackageManifest.Entry(name, content));
    }

    /// <summary>Writes the manifest and swaps the package in.</summary>
    /// <param name="problem">What is wrong, when the answer is false: the earlier package stands as it was.</param>
    /// <returns>True when the package is in its place.</returns>
    public bool TryFinish([NotNullWhen(false)] out OutputProblem? problem)
    {
        problem = null;
        try
        {
            File.WriteAllText(Path.Combine(_names.Fresh, PackageManifest.FileName), new PackageManifest(_entries, _set).Write(), new UTF8Encoding(false));
            bool replaces = Directory.Exists(_target);
            if (replaces)
            {
                RefuseTakenNames();
                Directory.Move(_target, _names.Old);
            }

            try
            {
                Directory.Move(_names.Fresh, _target);
            }
            catch (IOException)
            {
                if (replaces)
                {
                    Directory.Move(_names.Old, _target);
                }

                throw;
            }

            _done = true;
            if (replaces)
            {
                _kept.AddRange(SwapRepair.CarryOver(_target, _names.Old));
            }

            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            problem = _done
                ? new OutputProblem(OutputProblemKind.CannotSwap, $"the package is in its place, but files could not be carried over from '{_names.Old}': {Said(e)}", "run again: the next run carries them over")
                : ProblemOf(e, _target, HasPackage(_target));
            return false;
        }
    }

    /// <summary>Drops what was not finished.</summary>
    public void Dispose()
    {
        try
        {
            if (Directory.Exists(_names.Fresh))
            {
                Directory.Delete(_names.Fresh, recursive: true);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The next opening removes it; a cleaning that fails must not hide what went before.
        }

        _lock.Dispose();
    }

    // A file that the user put in the folder is never overwritten by a new file of ours.
    private void RefuseTakenNames()
    {
        HashSet<string> ours = [.. (PackageManifest.Of(_target)?.Entries ?? []).Select(e => e.Name), PackageManifest.FileName];
        foreach (ManifestEntry entry in _entries)
        {
            string path = Path.Combine(_target, entry.Name);
            if (!ours.Contains(entry.Name) && (File.Exists(path) || Directory.Exists(path)))
            {
                throw new OutputProblemException(new OutputProblem(OutputProblemKind.NameTaken, $"'{path}' is not a file of the package, and a new file would take its place", "move it out of the folder, or write to another folder"));
            }
        }
    }

    private static FileStream Lock(SwapNames names, string path)
    {
        try
        {
            return new FileStream(names.Lock, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
        }
        catch (IOException e) when (File.Exists(names.Lock) && !IsFull(e) && e.HResult != LinuxReadOnly)
        {
            throw new OutputProblemException(new OutputProblem(OutputProblemKind.Busy, $"another run is writing '{path}'", "wait until it is done, or write to another folder"), e);
        }
    }

    private static string Resolve(string path)
    {
        string full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(path));
        FileSystemInfo? linked = Directory.Exists(full) ? Directory.ResolveLinkTarget(full, returnFinalTarget: true) : null;
        string target = linked?.FullName ?? full;
        if (Path.GetDirectoryName(target) is null)
        {
            throw new OutputProblemException(new OutputProblem(OutputProblemKind.NotAFolder, $"'{path}' is the root of the disk", "a folder of its own"));
        }

        return target;
    }

    private static bool IsFull(Exception e) => (e.HResult & 0xFFFF) is LinuxNoSpace or LinuxQuota or WindowsDiskFull;

    private static bool HasPackage(string path)
    {
        try
        {
            return PackageManifest.Of(path) is not null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    // The system's sentences bring their own full stop.
    private static string Said(Exception e) => e.Message.TrimEnd('.');

    private static OutputProblem ProblemOf(Exception e, string path, bool isThereEarlier) => e switch
    {
        OutputProblemException ours => ours.Problem,
        PathTooLongException or IOException { HResult: LinuxNameTooLong } => new(OutputProblemKind.NameTooLong, $"'{Short(path)}' has a name of {Path.GetFileName(path).Length} characters, and this disk does not take it with the few that are put round it while writing", "a shorter name"),
        UnauthorizedAccessException or IOException { HResult: LinuxReadOnly or LinuxNoAccess } => new(OutputProblemKind.NotWritable, $"'{path}' cannot be written: {Said(e)}", "a folder that you may write to"),
        _ when IsFull(e) => new(OutputProblemKind.DiskFull, $"there is no room left on the disk for '{path}'", "free some room, or write to another disk" + (isThereEarlier ? "; the earlier package is untouched" : "")),
        _ => new(OutputProblemKind.CannotSwap, $"'{path}' cannot be written: {Said(e)}", "a folder on a disk that can be written, not itself a mount point"),
    };

    private static string Short(string path) => path.Length > 60 ? path[..60] + "…" : path;
}
