using System.IO.Compression;
using System.Text;
using Glazewright.Design.Document;

namespace Glazewright.Design.Tests.Document;

/// <summary>A job and its files in one zip; a zip from a stranger is data, and no name in it leads anywhere.</summary>
public class PackedJobTests
{
    private const string Job = """{ "glazewright": 1, "site": { "weather": { "file": "yard.epw.gz" } } }""";

    [Fact]
    public void What_was_packed_is_read_again()
    {
        PackedFile[] files = [new("yard.epw.gz", new byte[] { 0x1F, 0x8B, 1 }), new("yard.ddy", "days"u8.ToArray())];
        PackedJobReading.Read read = Assert.IsType<PackedJobReading.Read>(PackedJob.Read(Zip([.. PackedJob.Entries("yard.json", Job, files).Select(e => (e.Path, e.Bytes.ToArray()))])));
        Assert.Equal(Job, read.Text);
        Assert.Equal(["yard.epw.gz", "yard.ddy"], read.Files.Select(f => f.Name));
        Assert.Equal(files[0].Content.ToArray(), read.Find("YARD.epw.gz")!.Content.ToArray());
        Assert.Null(read.Find("other.epw"));
    }

    // As a file manager packs a folder: all under its name, with litter of its own.
    [Fact]
    public void A_folder_that_was_packed_again_is_read()
    {
        PackedJobReading.Read read = Assert.IsType<PackedJobReading.Read>(PackedJob.Read(Zip(("yard/", []), ("yard/job.json", Bytes(Job)), ("yard/weather/", []), ("yard/weather/yard.epw.gz", [1]), ("yard/.DS_Store", [1]), ("__MACOSX/yard/._job.json", [1]))));
        Assert.Equal((Job, "yard.epw.gz"), (read.Text, Assert.Single(read.Files).Name));
    }

    [Theory]
    [InlineData("../yard.epw"), InlineData("weather/../../yard.epw"), InlineData("/etc/yard.epw"), InlineData("C:\\yard.epw"), InlineData("C:/yard.epw"), InlineData("..\\yard.epw"), InlineData("weather\\yard.epw")]
    [InlineData("weather/sub/yard.epw"), InlineData("weather/.epw"), InlineData("//host/yard.epw"), InlineData("yard.exe"), InlineData("weather/run.sh"), InlineData("weather/more.json"), InlineData("ya\u0001rd.epw"), InlineData("../job2.json"), InlineData("a:b.epw")]
    public void A_name_that_leads_elsewhere_or_belongs_to_no_job_is_refused(string path)
    {
        PackedJobReading.Refused refused = Assert.IsType<PackedJobReading.Refused>(PackedJob.Read(Zip(("job.json", Bytes(Job)), (path, [1]))));
        Assert.Contains("belongs to no job", Assert.Single(refused.Faults).Wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_that_leads_up_is_refused_for_all_files_alike() =>
        Assert.IsType<PackedJobReading.Refused>(PackedJob.Read(Zip(("../job.json", Bytes(Job)), ("../weather/yard.epw", [1]))));

    // 80 MB of nothing pack to some 80 kB.
    [Fact]
    public void A_bomb_is_put_out()
    {
        byte[] bomb = Zip(("job.json", Bytes(Job)), ("weather/yard.epw", new byte[40_000_000]));
        Assert.True(bomb.Length < 200_000);
        Assert.Contains("unpacks to more", Wrong(bomb), StringComparison.Ordinal);
        byte[] many = Zip(("job.json", Bytes(Job)), ("weather/a.epw", new byte[30_000_000]), ("weather/b.epw", new byte[30_000_000]), ("weather/c.epw", new byte[30_000_000]));
        Assert.Contains("unpacks to more", Wrong(many), StringComparison.Ordinal);
    }

    // The size in the header is the packer's word: a bomb that says it is small is counted as it comes.
    [Fact]
    public void A_bomb_that_lies_about_its_size_is_put_out()
    {
        byte[] bomb = Zip(("job.json", Bytes(Job)), ("weather/yard.epw", new byte[40_000_000]));
        byte[] size = BitConverter.GetBytes(40_000_000);
        int changed = 0;
        for (int i = 0; i + 4 <= bomb.Length; i++)
        {
            if (bomb.AsSpan(i, 4).SequenceEqual(size))
            {
                BitConverter.GetBytes(1000).CopyTo(bomb, i);
                changed++;
            }
        }

        Assert.True(changed > 0);
        // Either the reader stops at the size that was told, and the file is then no weather, or it is refused: never 40 MB.
        Assert.True(PackedJob.Read(bomb) is PackedJobReading.Refused || (PackedJob.Read(bomb) is PackedJobReading.Read read && read.Files.All(f => f.Content.Length <= 1000)));
    }

    [Fact]
    public void A_packed_file_within_is_refused() =>
        Assert.Contains("itself a packed file", Wrong(Zip(("job.json", Bytes(Job)), ("weather/yard.epw", Zip(("yard.epw", [1]))))), StringComparison.Ordinal);

    [Fact]
    public void There_is_one_job_and_each_file_once()
    {
        Assert.Contains("more than one .json", Wrong(Zip(("job.json", Bytes(Job)), ("other.json", Bytes(Job)))), StringComparison.Ordinal);
        Assert.Contains("twice", Wrong(Zip(("job.json", Bytes(Job)), ("weather/a.epw", [1]), ("A.epw", [2]))), StringComparison.Ordinal);
        Assert.Contains("no job document", Wrong(Zip(("weather/a.epw", [1]))), StringComparison.Ordinal);
        Assert.Contains("no job document", Wrong(Zip()), StringComparison.Ordinal);
        Assert.Contains("is no job", Wrong(Zip(("job.json", "{ \"a\": 1 }"u8.ToArray()))), StringComparison.Ordinal);
        Assert.Contains("not UTF-8", Wrong(Zip(("job.json", [0xFF, 0xFE, 0x41]))), StringComparison.Ordinal);
        Assert.IsType<PackedJobReading.Refused>(PackedJob.Read(Zip(("job.json", "<html>"u8.ToArray()))));
        Assert.Contains("holds 61 files", Wrong(Zip([("job.json", Bytes(Job)), .. Enumerable.Range(0, 60).Select(i => (FormattableString.Invariant($"weather/y{i}.epw"), new byte[] { 1 }))])), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_no_zip_or_half_a_zip_is_told()
    {
        byte[] whole = Zip(("job.json", Bytes(Job)), ("weather/yard.epw", [.. Enumerable.Range(0, 5000).Select(i => (byte)(i * 7919 >> 3))]));
        Assert.IsType<PackedJobReading.Refused>(PackedJob.Read([]));
        Assert.IsType<PackedJobReading.Refused>(PackedJob.Read("PK and no more"u8.ToArray()));
        Assert.IsType<PackedJobReading.Refused>(PackedJob.Read(whole[..(whole.Length / 2)]));
        Assert.IsType<PackedJobReading.Refused>(PackedJob.Read(new byte[PackedJob.MostPackedBytes + 1]));
        Random random = new(8);
        for (int i = 0; i < 300; i++)
        {
            byte[] spoilt = [.. whole];
            spoilt[random.Next(spoilt.Length)] ^= (byte)(1 << random.Next(8));
            // It never throws.
            Assert.NotNull(PackedJob.Read(spoilt));
        }
    }

    private static string Wrong(byte[] zip) => Assert.Single(Assert.IsType<PackedJobReading.Refused>(PackedJob.Read(zip)).Faults).Wrong;

    private static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);

    private static byte[] Zip(params (string Path, byte[] Content)[] entries)
    {
        using MemoryStream packed = new();
        using (ZipArchive archive = new(packed, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach ((string path, byte[] content) in entries)
            {
                using Stream stream = archive.CreateEntry(path, CompressionLevel.Optimal).Open();
                stream.Write(content);
            }
        }

        return packed.ToArray();
    }
}
