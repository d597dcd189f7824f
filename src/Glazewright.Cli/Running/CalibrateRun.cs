using System.Globalization;
using System.IO.Compression;
using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Calibration;
using Glazewright.Design.Calibration.Reading;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Price;
using Glazewright.Papers.Calibration;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Package;

namespace Glazewright.Cli.Running;

/// <summary>What a calibration is asked for.</summary>
/// <param name="Logs">Files of the log.</param>
/// <param name="ColumnsPath">Column map.</param>
/// <param name="JobPath">Job document, or null.</param>
/// <param name="House">House id, or null for the first.</param>
/// <param name="SizesPath">An earlier calibration, or null to fit.</param>
/// <param name="OutPath">Folder for files, or null for none.</param>
/// <param name="WeatherPath">Weather file in place of the job's, or null.</param>
/// <param name="Threads">Most threads.</param>
/// <param name="Json">JSON instead of text.</param>
internal sealed record CalibrateWish(
    IReadOnlyList<string> Logs, string ColumnsPath, string? JobPath, string? House, string? SizesPath, string? OutPath, string? WeatherPath, int Threads, bool Json);

/// <summary>Reads, fits, scores, writes, tells.</summary>
internal static class CalibrateRun
{
    private const long LongestBytes = 400_000_000;

    public static int Run(Desk desk, CalibrateWish wish)
    {
        if (!TryText(wish.ColumnsPath, "--columns", out string mapText, out Fault? unread))
        {
            return Refusal.Of(desk, wish.Json, wish.ColumnsPath, [unread!]);
        }

        ReadOutcome<ColumnMap> read = ColumnMapReader.Read(mapText);
        if (read.Faults.Count > 0 || read.Value is not { } map)
        {
            return Refusal.Of(desk, wish.Json, wish.ColumnsPath, read.Faults);
        }

        EqList<GivenSize> given = [];
        if (wish.SizesPath is not null)
        {
            EqList<Fault> wrong = TryText(wish.SizesPath, "--sizes", out string sizesText, out Fault? lost) ? CalibrationJson.Sizes(sizesText, out given) : [lost!];
            if (wrong.Count > 0)
            {
                return Refusal.Of(desk, wish.Json, wish.SizesPath, wrong);
            }
        }

        if (!TryJob(desk, wish, out JobHouse? job, out UnitSystem units, out int refused))
        {
            return refused;
        }

        List<Fault> faults = [];
        List<string> texts = [];
        foreach (string path in wish.Logs)
        {
            if (TryText(path, "LOG", out string text, out Fault? lost))
            {
                texts.Add(text);
            }
            else
            {
                faults.Add(lost!);
            }
        }

        HouseLog? log = null;
        if (faults.Count == 0)
        {
            faults.AddRange(LogReader.Read(map, texts, out log));
        }

        if (log is not null)
        {
            faults.AddRange(Calibrator.Faults(map, log, job, given));
        }

        return faults.Count > 0 ? Refusal.Of(desk, wish.Json, wish.ColumnsPath, faults) : Fit(desk, wish, map, log!, job, given, units);
    }

    private static int Fit(Desk desk, CalibrateWish wish, ColumnMap map, HouseLog log, JobHouse? job, EqList<GivenSize> given, UnitSystem units)
    {
        OutputFolder? folder = null;
        if (wish.OutPath is not null && !OutputFolder.TryOpen(wish.OutPath, out folder, out OutputProblem? problem))
        {
            return Refusal.Of(desk, wish.Json, problem);
        }

        using (folder)
        {
            CalibrationResult? result = null;
            int count = 0;
            int exit = Watching.Run(desk, wish.Json, say =>
            {
                result = Calibrator.Run(map, log, job, given, wish.Threads, say, desk.Cancel);
                return folder is null ? Exit.Done : Write(desk, wish, folder, result, units, out count);
            });
            if (exit != Exit.Done)
            {
                return exit;
            }

            desk.Out.Write(wish.Json ? CalibrationJson.Of(result!) : CalibrationText.Of(result!));
            if (!wish.Json && folder is not null)
            {
                desk.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{count} files in {wish.OutPath}."));
            }

            return Exit.Done;
        }
    }

    private static int Write(Desk desk, CalibrateWish wish, OutputFolder folder, CalibrationResult result, UnitSystem units, out int count)
    {
        count = 0;
        try
        {
            foreach ((string path, ReadOnlyMemory<byte> bytes) in CalibrationFiles.Of(result, units == UnitSystem.Us ? SheetSize.Letter : SheetSize.A4))
            {
                folder.Add(path, bytes.Span);
                count++;
            }
        }
        catch (OutputProblemException e)
        {
            return Refusal.Of(desk, wish.Json, e.Problem);
        }

        return folder.TryFinish(out OutputProblem? late) ? Exit.Done : Refusal.Of(desk, wish.Json, late);
    }

    private static bool TryJob(Desk desk, CalibrateWish wish, out JobHouse? job, out UnitSystem units, out int refused)
    {
        job = null;
        units = UnitSystem.Metric;
        refused = Exit.Done;
        if (wish.JobPath is null)
        {
            if (wish.House is not null)
            {
                refused = Refusal.Of(desk, wish.Json, wish.ColumnsPath, [new Fault(FaultKind.Usage, "", "", 0, 0, "--house names a house and no job is given", "--job with the house's job document")]);
            }

            return wish.House is null;
        }

        IReadOnlyList<Fault> faults = JobLoading.Load(wish.JobPath, wish.WeatherPath, null, out LoadedJob? loaded);
        if (loaded is null)
        {
            refused = Refusal.Of(desk, wish.Json, wish.JobPath, faults);
            return false;
        }

        House? house = wish.House is null ? loaded.Job.Houses[0] : loaded.Job.Houses.FirstOrDefault(h => h.Id == wish.House);
        if (house is null)
        {
            string ids = string.Join(", ", loaded.Job.Houses.Select(h => h.Id));
            refused = Refusal.Of(desk, wish.Json, wish.JobPath, [new Fault(FaultKind.NotFound, "/houses", "", 0, 0, $"the job has no house '{wish.House}'", ids)]);
            return false;
        }

        Evaluation evaluation = new(loaded.Job, Ground.Of(loaded.Weather, CatalogueReader.Generic, PriceBook.Generic()), new StageRunner(64), desk.Cancel);
        job = JobHouse.Of(evaluation, house.Id);
        units = loaded.Job.Units;
        return true;
    }

    private static bool TryText(string path, string option, out string text, out Fault? fault)
    {
        text = "";
        fault = null;
        try
        {
            FileInfo file = new(path);
            if (!file.Exists)
            {
                fault = new Fault(FaultKind.NotFound, "", "", 0, 0, $"{option}: there is no file '{path}'", "the path of a file that is there");
                return false;
            }

            if (file.Length > LongestBytes)
            {
                fault = new Fault(FaultKind.OutOfRange, "", "", 0, 0, $"{option}: '{path}' is far too large", "a log of at most 400 MB");
                return false;
            }

            using Stream stream = path.EndsWith(".gz", StringComparison.OrdinalIgnoreCase) ? new GZipStream(file.OpenRead(), CompressionMode.Decompress) : file.OpenRead();
            using StreamReader reader = new(stream);
            text = reader.ReadToEnd();
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or InvalidDataException)
        {
            fault = new Fault(FaultKind.NotFound, "", "", 0, 0, $"{option}: '{path}' cannot be read: {e.Message}", "a file that you may read, .gz only if it is one");
            return false;
        }
    }
}
