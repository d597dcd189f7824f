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

/// <summary>Made papers until they are fetched.</summary>
public sealed class PackageShelf : JobShelf<MadePackage>;
