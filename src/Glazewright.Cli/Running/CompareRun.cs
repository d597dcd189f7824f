using System.Globalization;
using System.Text;
using System.Text.Json;
using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Price;
using Glazewright.Design.Program;
using Glazewright.Papers.Days;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Package;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Svg;

namespace Glazewright.Cli.Running;

/// <summary>What a comparison is asked for.</summary>
/// <param name="JobPath">Job document.</param>
/// <param name="Others">Edited programs, or one other job.</param>
/// <param name="Edits">Fields of the second job, as pointer=value.</param>
/// <param name="House">The one house, or null for all.</param>
/// <param name="OutPath">Folder for files, or null for none.</param>
/// <param name="WeatherPath">Weather file in place of the job's, or null.</param>
/// <param name="Json">JSON instead of text.</param>
internal sealed record CompareWish(string JobPath, IReadOnlyList<string> Others, IReadOnlyList<string> Edits, string? House, string? OutPath, string? WeatherPath, bool Json);

/// <summary>Loads, runs both years of each house, writes, tells.</summary>
internal static class CompareRun
{
    private static readonly UTF8Encoding s_utf8 = new(false);

    public static int Run(Desk desk, CompareWish wish)
    {
        string[] jobs = [.. wish.Others.Where(JobPlace.IsJob)];
        if (jobs.Length > 1 || (jobs.Length == 1 && wish.Others.Count > 1) || (wish.Others.Count == 0 && wish.Edits.Count == 0) || (wish.Others.Count > 0 && jobs.Length == 0 && wish.Edits.Count > 0))
        {
            string wrong = wish.Others.Count == 0 ? "nothing to compare with" : jobs.Length == 0 ? "edited programs and --edit together" : jobs.Length > 1 ? "more than one other job" : "another job and edited programs together";
            return Refusal.Of(desk, wish.Json, wish.JobPath, [new Fault(FaultKind.Usage, "", "", 0, 0, wrong, "one other job, or --edit, or edited programs of this job")]);
        }

        IReadOnlyList<Fault> faults = JobLoading.Load(wish.JobPath, wish.WeatherPath, null, out LoadedJob? loaded);
        if (loaded is null)
        {
            return Refusal.Of(desk, wish.Json, wish.JobPath, faults);
        }

        OutputFolder? folder = null;
        if (wish.OutPath is not null && !OutputFolder.TryOpen(wish.OutPath, out folder, out OutputProblem? problem))
        {
            return Refusal.Of(desk, wish.Json, problem);
        }

        using (folder)
        {
            return jobs.Length == 0 && wish.Edits.Count == 0 ? Programs(desk, wish, loaded, folder) : Plants(desk, wish, loaded, jobs.FirstOrDefault() ?? wish.JobPath, folder);
        }
    }

    // One plant, two programs.
    private static int Programs(Desk desk, CompareWish wish, LoadedJob loaded, OutputFolder? folder)
    {
        Ground ground = Ground.Of(loaded.Weather, CatalogueReader.Generic, PriceBook.Generic());
        StageRunner runner = new(128);
        Evaluation written = new(loaded.Job, ground, runner, desk.Cancel);
        IReadOnlyList<Fault> misfits = GivenPrograms.Read(wish.Others, written, out EqList<ProgramDocument> programs);
        string[] houses = [.. programs.Select(p => p.House).Where(h => wish.House is null || h == wish.House)];
        if (misfits.Count == 0 && houses.Length == 0)
        {
            misfits = [new Fault(FaultKind.NotFound, "/houses", "", 0, 0, $"no program is for house '{wish.House}'", string.Join(", ", programs.Select(p => p.House)))];
        }

        return misfits.Count > 0
            ? Refusal.Of(desk, wish.Json, wish.JobPath, misfits)
            : Both(desk, wish, new ComparedNames("as written", "as edited", "asWritten", "asEdited", false), written, new Evaluation(loaded.Job, ground with { Programs = programs }, runner, desk.Cancel), houses, folder);
    }

    // Two jobs on one year.
    private static int Plants(Desk desk, CompareWish wish, LoadedJob loaded, string otherPath, OutputFolder? folder)
    {
        IReadOnlyList<Fault> faults = JobLoading.Load(otherPath, wish.WeatherPath, null, [.. wish.Edits.Select(AsEdit)], out LoadedJob? other);
        if (other is not null)
        {
            faults = ComparedJobs.Misfits(loaded, other, wish.House);
        }

        if (other is null || faults.Count > 0)
        {
            return Refusal.Of(desk, wish.Json, otherPath, faults);
        }

        // What both have alike is made once.
        StageRunner runner = new(256);
        Evaluation Of(LoadedJob job) => new(job.Job, Ground.Of(job.Weather, CatalogueReader.Generic, PriceBook.Generic()), runner, desk.Cancel);
        return Both(desk, wish, new ComparedNames("first", "second", "first", "second", true), Of(loaded), Of(other), [.. loaded.Job.Houses.Select(h => h.Id).Where(h => wish.House is null || h == wish.House)], folder);
    }

    private static int Both(Desk desk, CompareWish wish, ComparedNames names, Evaluation before, Evaluation after, IReadOnlyList<string> houses, OutputFolder? folder)
    {
        List<ComparedHouse> all = [];
        int exit = Watching.Run(desk, wish.Json, say =>
        {
            foreach (string house in houses)
            {
                say($"The year of house {house}, twice");
                all.Add(ComparedHouse.Of(house, before, after, names.Plants));
            }

            return folder is null ? Exit.Done : Write(desk, wish, names, before.Job, all, folder);
        });
        if (exit == Exit.Done)
        {
            desk.Out.Write(wish.Json ? ComparisonText.Json(all, names) : ComparisonText.Of(all, names, before.Job.Units));
        }

        return exit;
    }

    private static int Write(Desk desk, CompareWish wish, ComparedNames names, Job job, List<ComparedHouse> all, OutputFolder folder)
    {
        try
        {
            string name = job.Name.Length > 0 ? job.Name : "Unnamed job";
            SheetSize size = job.Units == UnitSystem.Us ? SheetSize.Letter : SheetSize.A4;
            folder.Add("comparison.pdf", ReportSetting.Pdf(ComparisonReport.Of(name, names.Before, names.After, all, job.Band.TemperatureK, job.Units, size)));
            folder.Add("comparison.csv", s_utf8.GetBytes(ComparisonReport.Csv(all)));
            foreach (Sheet carpet in all.SelectMany(h => ComparisonReport.Carpets(h, names.Before, names.After, job.Band.TemperatureK, job.Units)))
            {
                folder.Add(carpet.Id + ".svg", SvgWriter.Bytes(carpet));
            }
        }
        catch (OutputProblemException e)
        {
            return Refusal.Of(desk, wish.Json, e.Problem);
        }

        return folder.TryFinish(out OutputProblem? late) ? Exit.Done : Refusal.Of(desk, wish.Json, late);
    }

    // A number, true, false, a list or an object goes in as such, all else as a text.
    private static Edit AsEdit(string typed)
    {
        int at = typed.IndexOf('=', StringComparison.Ordinal);
        (string pointer, string value) = (typed[..at], typed[(at + 1)..]);
        try
        {
            using JsonDocument read = JsonDocument.Parse(value);
            return new Edit(pointer, value);
        }
        catch (JsonException)
        {
            return Edit.Typed(pointer, value);
        }
    }
}

/// <summary>What the two sides are called.</summary>
/// <param name="Before">The first, in words.</param>
/// <param name="After">The second, in words.</param>
/// <param name="BeforeKey">The first in JSON.</param>
/// <param name="AfterKey">The second in JSON.</param>
/// <param name="Plants">Two jobs, not two programs of one.</param>
internal sealed record ComparedNames(string Before, string After, string BeforeKey, string AfterKey, bool Plants);
