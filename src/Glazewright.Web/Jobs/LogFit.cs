using System.IO.Compression;
using System.Text;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Calibration;
using Glazewright.Design.Calibration.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Papers.Calibration;
using Glazewright.Papers.Drawing;

namespace Glazewright.Web.Jobs;

/// <summary>A built house of a job fitted to its log.</summary>
/// <param name="Version">The job's version.</param>
/// <param name="House">Id of the house.</param>
/// <param name="OfMap">Whether the column map gave the house by its sizes: then it is not the job's.</param>
/// <param name="Result">Fit and score.</param>
/// <param name="Zip">Report, data, hours and pictures, packed.</param>
public sealed record FittedHouse(int Version, string House, bool OfMap, CalibrationResult Result, byte[] Zip);

/// <summary>Fits until their files are fetched.</summary>
public sealed class FitShelf : JobShelf<FittedHouse>;

/// <summary>The fit of a built house to its log behind a window: one at a time, with progress, and it can be stopped. An edit does not stop it: the log is that of a house as it was built.</summary>
/// <param name="session">The window's job.</param>
/// <param name="lane">Where heavy work is done.</param>
/// <param name="shelf">Where fits lie.</param>
public sealed class LogFit(JobSession session, BehindLane lane, FitShelf shelf) : IDisposable
{
    /// <summary>Most bytes of a file of a log, unpacked.</summary>
    public const int MostLogBytes = 100_000_000;

    private readonly OneAtATime _piece = new();

    /// <summary>Something to show has changed; may come from any thread.</summary>
    public event Action? Changed
    {
        add => _piece.Moved += value;
        remove => _piece.Moved -= value;
    }

    /// <summary>How far it has come.</summary>
    public WorkView View => _piece.View;

    /// <summary>The fit of a job's house, or null.</summary>
    /// <param name="job">The job's id.</param>
    /// <param name="house">The house's id.</param>
    public FittedHouse? Find(string job, string house) => shelf.Find(job) is { } found && found.House == house ? found : null;

    /// <summary>Reads a log and fits the house to it.</summary>
    /// <param name="loaded">The job.</param>
    /// <param name="version">Its version.</param>
    /// <param name="house">Id of the house.</param>
    /// <param name="mapText">Column map.</param>
    /// <param name="logs">The log's files, in the order of the map's tables.</param>
    /// <returns>What keeps the log from being fitted; none when the fit has begun.</returns>
    public async Task<IReadOnlyList<Fault>> BeginAsync(LoadedJob loaded, int version, string house, string mapText, IReadOnlyList<string> logs)
    {
        ArgumentNullException.ThrowIfNull(loaded);
        string id = session.View!.Job.Id;
        ReadOutcome<ColumnMap> read = ColumnMapReader.Read(mapText);
        if (read.Faults.Count > 0 || read.Value is not { } map)
        {
            return read.Faults;
        }

        (IReadOnlyList<Fault> faults, HouseLog? log, JobHouse? job) = await lane.RunAsync(() => Open(loaded, house, map, logs), CancellationToken.None);
        if (faults.Count > 0 || log is null)
        {
            return faults;
        }

        SheetSize paper = loaded.Job.Units == UnitSystem.Us ? SheetSize.Letter : SheetSize.A4;
        _piece.Begin(version, papers: false, turn => lane.RunAsync(
            () =>
            {
                CalibrationResult result = Calibrator.Run(map, log, job, [], Math.Max(1, Environment.ProcessorCount / 2), turn.Say, turn.Cancel);
                FittedHouse fitted = new(version, house, job is null, result, Packing.Zip(CalibrationFiles.Of(result, paper)));
                turn.IfNewest(() => shelf.Put(id, fitted));
                return true;
            },
            turn.Cancel));
        return [];
    }

    /// <summary>Stops what is under way.</summary>
    public void Stop() => _piece.Stop();

    /// <inheritdoc/>
    public void Dispose() => _piece.Leave();

    /// <summary>A text file that was sent, plain or packed by gzip.</summary>
    /// <param name="content">Its bytes.</param>
    /// <param name="mostBytes">Most bytes unpacked.</param>
    /// <param name="text">Its text.</param>
    /// <returns>What is wrong with it; empty when nothing is.</returns>
    public static string Read(byte[] content, int mostBytes, out string text)
    {
        ArgumentNullException.ThrowIfNull(content);
        text = "";
        try
        {
            using MemoryStream sent = new(content, writable: false);
            using Stream plain = content is [0x1F, 0x8B, ..] ? new GZipStream(sent, CompressionMode.Decompress) : sent;
            using MemoryStream unpacked = new();
            byte[] part = new byte[81_920];
            for (int got; (got = plain.Read(part, 0, part.Length)) > 0;)
            {
                unpacked.Write(part, 0, got);
                if (unpacked.Length > mostBytes)
                {
                    return FormattableString.Invariant($"it is too large: at most {mostBytes / 1_000_000} MB of text are taken");
                }
            }

            text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(unpacked.GetBuffer(), 0, (int)unpacked.Length).TrimStart('\uFEFF');
            return text.Contains('\0', StringComparison.Ordinal) ? "it is not text: it holds a zero character" : "";
        }
        catch (Exception e) when (e is InvalidDataException or EndOfStreamException or DecoderFallbackException)
        {
            return e is DecoderFallbackException ? "it is not UTF-8 text" : "it is packed and cannot be unpacked";
        }
    }

    private (IReadOnlyList<Fault> Faults, HouseLog? Log, JobHouse? Job) Open(LoadedJob loaded, string house, ColumnMap map, IReadOnlyList<string> logs)
    {
        List<Fault> faults = [.. LogReader.Read(map, logs, out HouseLog? log)];
        if (log is null)
        {
            return (faults, null, null);
        }

        JobHouse? job = map.House is not null ? null : JobHouse.Of(session.Evaluate(loaded, CancellationToken.None), house);
        faults.AddRange(Calibrator.Faults(map, log, job, []));
        return (faults, log, job);
    }
}
