using System.Collections.Concurrent;

namespace Glazewright.Papers.Sets;

/// <summary>Makes every file of a job's package, or those of one reader's set.</summary>
public static class PaperWriter
{
    /// <summary>The whole package, the contractor's.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="cancel">Looked at between files.</param>
    /// <returns>The files in the order of the contents page, that page first. Paths are unique; the same source gives the same bytes.</returns>
    public static IReadOnlyList<PaperFile> Write(PaperSource source, CancellationToken cancel) => Write(source, null, cancel);

    /// <summary>The set of one reader: what the white lists name, nothing else.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="only">The reader, or null for the whole package.</param>
    /// <param name="cancel">Looked at between files.</param>
    /// <returns>The files in the order of the contents page, that page first.</returns>
    public static IReadOnlyList<PaperFile> Write(PaperSource source, PaperReader? only, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(source);
        IReadOnlyList<PlannedPaper> planned = PaperPlan.Of(source, only);
        byte[][] contents = new byte[planned.Count][];
        // One at a time: a thread that takes several would hold long reports that another could make.
        Parallel.ForEach(
            Partitioner.Create(Enumerable.Range(0, planned.Count), EnumerablePartitionerOptions.NoBuffering),
            new ParallelOptions { CancellationToken = cancel, TaskScheduler = TaskScheduler.Current },
            i => contents[i] = planned[i].Make());
        PaperFile[] files = [.. planned.Zip(contents, (p, bytes) => new PaperFile(p.Path, p.Title, p.Readers, bytes))];
        return [new PaperFile("contents.html", "Contents", PaperReaders.All, ContentsPage.Bytes(source, only, files)), .. files];
    }
}
