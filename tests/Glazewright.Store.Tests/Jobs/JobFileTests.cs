using System.IO.Compression;
using System.Text;
using Glazewright.Store.Jobs;

namespace Glazewright.Store.Tests.Jobs;

public sealed class JobFileTests
{
    [Theory]
    [InlineData("{ \"glazewright\": 1, // by hand\r\n  \"name\": \"Łąka 12'-6\\\"\" }", "job-12-6")]
    [InlineData("\uFEFF{ \"glazewright\": 1, \"name\": \"../../etc/Low  Meadow\" }", "etc-low-meadow")]
    public async Task A_job_file_goes_in_and_out_byte_for_byte(string text, string name)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(text);
        JobFileReading.Read read = Assert.IsType<JobFileReading.Read>(await Read(bytes));
        string shown = Glazewright.Design.Document.JobDocument.Read(text).Find("/name") is Glazewright.Design.Document.TextNode n ? n.Text : "";
        (string file, byte[] content) = JobFile.Write(new StoredJob("1", shown, JobStatus.Draft, 1, read.Text, default));
        Assert.Equal(bytes, content);
        Assert.Equal(name.Replace("job-", shown.StartsWith('Ł') ? "ka-" : "job-", StringComparison.Ordinal) + ".json", file);
    }

    [Theory]
    [InlineData("<!doctype html><script>alert(1)</script>", "")]
    [InlineData("", "")]
    [InlineData("[1, 2]", "")]
    [InlineData("{}", "no job")]
    [InlineData("{ \"glazewright\": 1 /* \0 */ }", "zero")]
    public async Task What_is_no_job_is_refused_in_words(string text, string says)
    {
        JobFileReading.Refused refused = Assert.IsType<JobFileReading.Refused>(await Read(Encoding.UTF8.GetBytes(text)));
        Assert.All(refused.Faults, f => Assert.True(f.Wrong.Length > 0 && f.Right.Length > 0));
        Assert.Contains(says, string.Concat(refused.Faults.Select(f => f.Wrong)), StringComparison.Ordinal);
    }

    // A packed file is not unpacked, whatever it would grow to; a huge one is read no further than a job can be long.
    [Fact]
    public async Task Packed_huge_and_foreign_files_are_refused()
    {
        MemoryStream packed = new();
        using (GZipStream gzip = new(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            gzip.Write(new byte[1_000_000]);
        }

        Assert.Contains("packed", Wrong(await Read(packed.ToArray())), StringComparison.Ordinal);
        Assert.Contains("UTF-8", Wrong(await Read([0x7B, 0xFF, 0xFE, 0x7D])), StringComparison.Ordinal);

        using Endless endless = new();
        Assert.Contains("too large", Wrong(await JobFile.ReadAsync(endless, TestContext.Current.CancellationToken)), StringComparison.Ordinal);
        Assert.InRange(endless.Given, 1, 20_000_000);
    }

    private static Task<JobFileReading> Read(byte[] bytes) => JobFile.ReadAsync(new MemoryStream(bytes), TestContext.Current.CancellationToken);

    private static string Wrong(JobFileReading reading) => Assert.IsType<JobFileReading.Refused>(reading).Faults[0].Wrong;

    private sealed class Endless : MemoryStream
    {
        public long Given { get; private set; }

        public override ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
        {
            buffer.Span.Fill((byte)' ');
            Given += buffer.Length;
            return ValueTask.FromResult(buffer.Length);
        }
    }
}
