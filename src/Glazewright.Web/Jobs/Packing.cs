using System.IO.Compression;

namespace Glazewright.Web.Jobs;

/// <summary>Files as one.</summary>
internal static class Packing
{
    /// <summary>Packs files, the same bytes for the same files.</summary>
    /// <param name="files">Path and content of each.</param>
    public static byte[] Zip(IEnumerable<(string Path, ReadOnlyMemory<byte> Bytes)> files)
    {
        using MemoryStream packed = new();
        using (ZipArchive archive = new(packed, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach ((string path, ReadOnlyMemory<byte> bytes) in files)
            {
                ZipArchiveEntry entry = archive.CreateEntry(path, CompressionLevel.Fastest);
                // The earliest time an archive can hold: it comes from nobody's clock.
                entry.LastWriteTime = new DateTimeOffset(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);
                using Stream stream = entry.Open();
                stream.Write(bytes.Span);
            }
        }

        return packed.ToArray();
    }
}
