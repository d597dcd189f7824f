using System.Collections.Concurrent;
using Glazewright.Design.Contracts;
using Glazewright.Papers.Sets;

namespace Glazewright.Web.Jobs;

/// <summary>A file of a package, by name.</summary>
/// <param name="Path">Path in the package.</param>
/// <param name="Title">What it is.</param>
/// <param name="Bytes">Its size.</param>
/// <param name="Readers">Its white list; empty for the contractor alone.</param>
public sealed record ListedFile(string Path, string Title, int Bytes, EqList<PaperReader> Readers);

/// <summary>Papers that were made of a job.</summary>
/// <param name="Version">Version of the job.</param>
/// <param name="Source">What they were made from.</param>
/// <param name="Files">The files.</param>
/// <param name="Zip">All of them, packed.</param>
public sealed record MadePackage(int Version, PaperSource Source, IReadOnlyList<ListedFile> Files, byte[] Zip);

/// <summary>Made papers until they are fetched: the last of each job, of a few jobs. They can be made again at any time, so nothing is lost with them.</summary>
public sealed class PackageShelf
{
    private const int Most = 6;
    private readonly ConcurrentDictionary<string, MadePackage> _made = new();
    private readonly ConcurrentQueue<string> _order = new();

    /// <summary>Puts a job's papers here.</summary>
    /// <param name="job">The job's id.</param>
    /// <param name="package">The papers.</param>
    public void Put(string job, MadePackage package)
    {
        if (!_made.ContainsKey(job))
        {
            _order.Enqueue(job);
        }

        _made[job] = package;
        while (_made.Count > Most && _order.TryDequeue(out string? oldest))
        {
            _made.TryRemove(oldest, out _);
        }
    }

    /// <summary>A job's papers, or null.</summary>
    /// <param name="job">The job's id.</param>
    public MadePackage? Find(string job) => _made.GetValueOrDefault(job);
}
