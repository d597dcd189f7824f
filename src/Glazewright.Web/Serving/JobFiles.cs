using Glazewright.Design.Document;
using Glazewright.Papers.Sets;
using Glazewright.Store.Jobs;
using Glazewright.Web.Jobs;

namespace Glazewright.Web.Serving;

/// <summary>Files that leave the server by a link.</summary>
internal static class JobFiles
{
    /// <summary>The word for the contractor's whole package.</summary>
    public const string Whole = "contractor";

    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/files/{id}/job.json", async (string id, JobStore store, CancellationToken cancel) =>
        {
            if (await store.FindAsync(id, cancel) is not { } job)
            {
                return NotThere("There is no such job.");
            }

            (string name, byte[] content) = JobFile.Write(job);
            return Results.File(content, "application/json", name);
        });
        routes.MapGet("/files/{id}/job.zip", async (string id, JobStore store, WeatherShelf weather, CancellationToken cancel) =>
        {
            if (await store.FindAsync(id, cancel) is not { } job)
            {
                return NotThere("There is no such job.");
            }

            (string name, byte[] content) = JobFile.Write(job);
            (IReadOnlyList<PackedFile> files, IReadOnlyList<string> missing) = await weather.FilesOfAsync(JobDocument.Read(job.Text), cancel);
            return missing.Count > 0
                ? NotThere($"The job names {string.Join(", ", missing)}, which the library does not hold. Bring it in on the start page, or fetch the job file alone.")
                : Results.File(Packing.Zip(PackedJob.Entries(name, job.Text, files)), "application/zip", Path.ChangeExtension(name, ".zip"));
        });
        // An example to start one's own column map from.
        routes.MapGet("/files/column-map.json", () => Example("made-log.columns.json", "application/json"));
        routes.MapGet("/files/made-log.csv", () => Example("made-log.csv", "text/csv"));
        routes.MapGet("/files/{id}/calibration.zip", (string id, FitShelf shelf) => shelf.Find(id) is { } fitted
            ? Results.File(fitted.Zip, "application/zip", "calibration.zip")
            : NotThere("No house of this job was fitted to a log, or the fit is no longer kept. Fit it on the page Year."));
        routes.MapGet("/files/{id}/{reader}.zip", (string id, string reader, PackageShelf shelf, CancellationToken cancel) =>
        {
            if (shelf.Find(id) is not { } made)
            {
                return NotThere("The papers of this job are not made, or no longer kept. Make them on the page Papers.");
            }

            PaperReader? only = PaperReaders.All.Where(r => PaperReaders.Word(r) == reader).Select(r => (PaperReader?)r).FirstOrDefault();
            return only is null && reader != Whole
                ? NotThere("There is no such reader.")
                : Results.File(only is null ? made.Zip : Packing.Zip(PaperWriter.Write(made.Source, only, cancel).Select(f => (f.Path, f.Bytes))), "application/zip", $"{reader}-papers.zip");
        });
    }

    private static IResult Example(string name, string kind)
    {
        string path = Path.Combine(AppContext.BaseDirectory, "examples", "calibration", name);
        return File.Exists(path) ? Results.File(path, kind, name) : NotThere("The example did not come with this program.");
    }

    private static IResult NotThere(string words) => Results.Text(words, statusCode: StatusCodes.Status404NotFound);
}
