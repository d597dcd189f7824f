using System.IO.Compression;
using System.Text;
using Glazewright.Web.Jobs;

namespace Glazewright.Web.Tests.Jobs;

/// <summary>What is sent as a log's file.</summary>
public sealed class LogFilesTests
{
    [Fact]
    public void Plain_and_packed_text_is_read()
    {
        byte[] plain = Encoding.UTF8.GetBytes("\uFEFFtime;tin\n");
        Assert.Equal("", LogFit.Read(plain, 1000, out string text));
        Assert.Equal("time;tin\n", text);
        Assert.Equal("", LogFit.Read(Packed(plain), 1000, out text));
        Assert.Equal("time;tin\n", text);
    }

    [Fact]
    public void What_is_no_text_or_unpacks_to_too_much_is_told()
    {
        Assert.Contains("at most 1 MB", LogFit.Read(Packed(new byte[50_000_000]), 1_000_000, out _), StringComparison.Ordinal);
        Assert.Contains("zero", LogFit.Read([65, 0, 66], 1000, out _), StringComparison.Ordinal);
        Assert.Contains("UTF-8", LogFit.Read([0xFF, 0xFE, 0x41], 1000, out _), StringComparison.Ordinal);
        Assert.Contains("cannot be unpacked", LogFit.Read([0x1F, 0x8B, 1, 2, 3], 1000, out _), StringComparison.Ordinal);
    }

    private static byte[] Packed(byte[] content)
    {
        using MemoryStream packed = new();
        using (GZipStream zip = new(packed, CompressionLevel.Fastest))
        {
            zip.Write(content);
        }

        return packed.ToArray();
    }
}
