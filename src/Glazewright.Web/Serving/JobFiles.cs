using Glazewright.Store.Jobs;

namespace Glazewright.Web.Serving;

/// <summary>Files that leave the server by a link.</summary>
internal static class JobFiles
{
    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapGet("/files/{id}/job.json", async (string id, JobStore store, CancellationToken cancel) =>
        {
            if (await store.FindAsync(id, cancel) is not { } job)
            {
                return Results.Text("There is no such job.", statusCode: StatusCodes.Status404NotFound);
            }

            (string name, byte[] content) = JobFile.Write(job);
            return Results.File(content, "application/json", name);
        });
}
