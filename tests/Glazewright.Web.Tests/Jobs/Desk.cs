using Glazewright.Store;
using Glazewright.Store.Jobs;
using Glazewright.Store.Library;
using Glazewright.Web.Jobs;
using Glazewright.Web.Tests.Browser;

namespace Glazewright.Web.Tests.Jobs;

/// <summary>A store with the examples' weather in it, and windows on its jobs.</summary>
public sealed class Desk : IAsyncLifetime
{
    private readonly DirectoryInfo _room = Directory.CreateTempSubdirectory("glazewright-desk-");
    private readonly List<JobSession> _open = [];
    private WeatherShelf _weather = null!;

    public JobStore Store { get; private set; } = null!;

    public MadePapers Papers { get; private set; } = null!;

    public JobBell Bell { get; } = new();

    public WeatherShelf Weather => _weather;

    public LibraryStore Library { get; private set; } = null!;

    public static string Example(string name) => File.ReadAllText(Path.Combine(RunningServer.Root, "examples", name));

    public async ValueTask InitializeAsync()
    {
        StoreDoor door = StoreDoor.Sqlite(Path.Combine(_room.FullName, "jobs.db"));
        Store = new JobStore(door, TimeProvider.System);
        Papers = new MadePapers(door, TimeProvider.System);
        LibraryStore library = new(door, TimeProvider.System);
        Library = library;
        _weather = new WeatherShelf(library);
        foreach (string path in Directory.GetFiles(Path.Combine(RunningServer.Root, "examples", "weather"), "*.epw.gz"))
        {
            Assert.IsType<LibraryAnswer.Kept>(await library.AddAsync(LibraryKind.Weather, Path.GetFileName(path), await File.ReadAllBytesAsync(path)));
        }
    }

    public QuickLane Quick { get; } = new();

    public BehindLane Behind { get; } = new();

    public JobRunners Runners { get; } = new();

    /// <summary>A window without a job.</summary>
    /// <param name="alone">Whether it hears other windows only through the store, as one of another server does.</param>
    public JobSession Window(bool alone = false) => new(Store, _weather, alone ? new JobBell() : Bell, Quick, alone ? new JobRunners() : Runners);

    public async Task<StoredJob> JobAsync(string? text = null) => await Store.CreateAsync(text ?? Example("three-lines.json"), "test");

    /// <summary>A window with the job open and answered.</summary>
    /// <param name="id">The job.</param>
    /// <param name="alone">Whether it hears other windows only through the store, as one of another server does.</param>
    public async Task<JobSession> WindowAsync(string id, bool alone = false)
    {
        JobSession session = Window(alone);
        _open.Add(session);
        Assert.True(await session.OpenAsync(id));
        await session.Settled;
        return session;
    }

    public ValueTask DisposeAsync()
    {
        foreach (JobSession session in _open)
        {
            session.Dispose();
        }

        Quick.Dispose();
        Behind.Dispose();
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        _room.Delete(recursive: true);
        return ValueTask.CompletedTask;
    }
}
