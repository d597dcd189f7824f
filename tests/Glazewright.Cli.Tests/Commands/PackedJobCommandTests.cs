using System.IO.Compression;
using Glazewright.Cli.Running;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Document;

namespace Glazewright.Cli.Tests.Commands;

/// <summary>A job packed with its weather runs by itself, from the zip and from the folder made of it.</summary>
public sealed class PackedJobCommandTests : IDisposable
{
    private const string Weather = "demo-continental-42N.epw.gz";
    private readonly string _room = Directory.CreateTempSubdirectory("glazewright-packed-").FullName;

    public void Dispose() => Directory.Delete(_room, recursive: true);

    [Fact]
    public void It_runs_from_the_zip_from_the_folder_and_as_from_its_own_place()
    {
        string text = File.ReadAllText(Shell.Example("three-lines.json"));
        string zip = Path.Combine(_room, "yard.zip");
        Write(zip, [.. PackedJob.Entries("yard.json", text, [new PackedFile(Weather, File.ReadAllBytes(Shell.Example("weather/" + Weather)))])]);
        string folder = Path.Combine(_room, "unpacked");
        ZipFile.ExtractToDirectory(zip, folder);

        Assert.Empty(JobLoading.Load(Shell.Example("three-lines.json"), null, null, out LoadedJob? own));
        Assert.Empty(JobLoading.Load(zip, null, null, out LoadedJob? packed));
        Assert.Empty(JobLoading.Load(folder, null, null, out LoadedJob? unpacked));
        Assert.Equal(own!.Job, packed!.Job);
        Assert.Equal(own.Job, unpacked!.Job);
        Assert.All([packed, unpacked], j => Assert.Equal((own.Weather.Provenance.Label, own.Weather.Provenance.ContentSha256), (j.Weather.Provenance.Label, j.Weather.Provenance.ContentSha256)));
        Ran ran = Shell.Run("job-check", zip);
        Assert.Equal(0, ran.Exit);
        Assert.Equal(0, Shell.Run("job-check", folder).Exit);
    }

    [Fact]
    public void What_is_wrong_with_it_is_told_as_of_a_job()
    {
        string zip = Path.Combine(_room, "yard.zip");
        Write(zip, ("yard.json", File.ReadAllBytes(Shell.Example("three-lines.json"))));
        Assert.Contains("is not in the packed job", Assert.Single(JobLoading.Load(zip, null, null, out _)).Wrong, StringComparison.Ordinal);
        Write(zip, ("yard.json", File.ReadAllBytes(Shell.Example("three-lines.json"))), ("../outside.epw", new byte[] { 1 }));
        Ran ran = Shell.Run("job-check", zip);
        Assert.Equal(2, ran.Exit);
        Assert.Contains("belongs to no job", ran.Out + ran.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(_room, "..", "outside.epw")));
        File.WriteAllBytes(zip, "PK no zip"u8.ToArray());
        Assert.Equal(2, Shell.Run("job-check", zip).Exit);
    }

    [Fact]
    public void A_folder_of_none_or_several_jobs_is_told()
    {
        Assert.Contains("holds no job document", Assert.Single(JobLoading.Load(_room, null, null, out _)).Wrong, StringComparison.Ordinal);
        File.Copy(Shell.Example("three-lines.json"), Path.Combine(_room, "a.json"));
        File.WriteAllText(Path.Combine(_room, "notes.json"), "{ \"not\": \"a job\" }");
        Directory.CreateDirectory(Path.Combine(_room, "weather"));
        File.Copy(Shell.Example("weather/" + Weather), Path.Combine(_room, "weather", Weather));
        Assert.Empty(JobLoading.Load(_room, null, null, out _));
        File.Copy(Shell.Example("three-lines.json"), Path.Combine(_room, "b.json"));
        Assert.Contains("several jobs", Assert.Single(JobLoading.Load(_room, null, null, out _)).Wrong, StringComparison.Ordinal);
    }

    private static void Write(string path, params (string Path, ReadOnlyMemory<byte> Bytes)[] entries)
    {
        File.Delete(path);
        using ZipArchive archive = ZipFile.Open(path, ZipArchiveMode.Create);
        foreach ((string name, ReadOnlyMemory<byte> bytes) in entries)
        {
            using Stream stream = archive.CreateEntry(name).Open();
            stream.Write(bytes.Span);
        }
    }
}
